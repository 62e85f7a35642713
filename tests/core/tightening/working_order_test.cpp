// SPDX-License-Identifier: GPL-3.0-or-later
//
// A working can be followed only from above to below: whatever symbol a formula takes was given a value on an earlier
// line.
#include "core/tightening/clamp.hpp"
#include "core/tightening/wanted.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

#include <set>
#include <string>
#include <vector>

namespace clampwright::tightening {
namespace {

// The symbols in a formula; "l_t high" is one. Words of English are none, as long as no symbol is spelled like them.
std::vector<std::string> parts_of(std::string formula) {
  for (const std::string_view sign : {"·", "√", "²", "³", "(", ")", "+", "/", "-", "=", ","})
    for (std::size_t at = 0; (at = formula.find(sign, at)) != std::string::npos;)
      formula.replace(at, sign.size(), " ");
  std::vector<std::string> parts;
  std::string word;
  for (const char c : formula + " ") {
    if (c != ' ') {
      word += c;
      continue;
    }
    if ((word == "low" || word == "high") && !parts.empty())
      parts.back() += " " + word;
    else if (!word.empty())
      parts.push_back(word);
    word.clear();
  }
  return parts;
}

// The first symbol that is used before it has a value; "" if there is none.
std::string used_too_early(const Working& working) {
  std::set<std::string> all;
  for (const Step& step : working)
    all.insert(step.symbol);
  std::set<std::string> known;
  for (const Step& step : working) {
    if (step.formula.find("halving") == std::string::npos)
      for (const std::string& part : parts_of(step.formula))
        if (all.contains(part) && !known.contains(part)) return part + " in " + step.symbol + " = " + step.formula;
    known.insert(step.symbol);
  }
  return {};
}

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
