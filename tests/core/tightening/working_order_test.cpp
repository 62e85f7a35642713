// SPDX-License-Identifier: GPL-3.0-or-later
//
// A working can be followed only from above to below: whatever symbol a formula takes was given a value on an earlier
// line.
#include "core/tightening/clamp.hpp"
#include "core/tightening/wanted.hpp"
#include "tests/core/cases.hpp"
#include "tests/core/working_order.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using test::used_too_early;

TorqueAnswer torque(const Case& c, const Wanted& wanted) { return torque_for(c, wanted).value(); }

} // namespace

TEST(Working, OfAClampLoadTakesNoSymbolBeforeItsValue) {
  EXPECT_EQ(used_too_early(clamp(test::m10_case(), quantity::newton_metres(45))->working), "");
}

TEST(Working, OfATorqueTakesNoSymbolBeforeItsValue) {
  EXPECT_EQ(used_too_early(torque(test::m10_case(), {Aim::preload, quantity::newtons(25000), 0}).clamp.working), "");
  EXPECT_EQ(used_too_early(torque(test::m10_case(), {Aim::proof_share, {}, 0.75}).clamp.working), "");
  EXPECT_EQ(used_too_early(torque(test::m10_case(), {Aim::yield_share, {}, 0.9}).clamp.working), "");
}

TEST(Working, OfAWaistedHollowBoltTakesNoSymbolBeforeItsValue) {
  Case c = test::m10_case();
  c.shank = quantity::millimetres(7);
  c.bore = quantity::millimetres(3);
  EXPECT_EQ(used_too_early(clamp(c, quantity::newton_metres(20))->working), "");
}

// A reduced head brings f_h into both.
TEST(Working, OfAReducedHeadTakesNoSymbolBeforeItsValue) {
  Case c = test::m10_case();
  c.strength = test::strength_08_8(58.0);
  EXPECT_EQ(used_too_early(clamp(c, quantity::newton_metres(20))->working), "");
  const Working working = torque(c, {Aim::yield_share, {}, 0.9}).clamp.working;
  EXPECT_EQ(used_too_early(working), "");
  EXPECT_TRUE(test::is_taken_after_its_value(working, "f_h"));
}

TEST(Working, ComesToTheTorqueThatIsSet) {
  const TorqueAnswer answer = torque(test::m10_case(), {Aim::yield_share, {}, 0.9});
  for (const Step& step : answer.clamp.working) {
    if (step.symbol != "T_1" && step.symbol != "T_set") continue;
    EXPECT_DOUBLE_EQ(step.value, quantity::in_newton_metres(answer.clamp.torque)) << step.symbol;
  }
}

TEST(WorkingOrder, IsCheckedByATestThatSeesAFault) {
  EXPECT_EQ(used_too_early({{"F", "", "T/l_t", 1, "N", ""}, {"l_t", "", "as given", 1, "mm", ""}}), "l_t in F = T/l_t");
}

} // namespace clampwright::tightening
