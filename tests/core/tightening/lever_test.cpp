// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/lever.hpp"

#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using quantity::in_millimetres;
using test::k;
using test::metric_thread;
using test::mu;

const thread::Thread k_m10 = metric_thread("M10", 10, 1.5);

} // namespace

// atan(0.12/cos 30°) by hand; 7.889° is also what the tightening tables are computed with.
TEST(FrictionAngle, IsThatOfTheSlopingFlank) {
  EXPECT_NEAR(quantity::in_degrees(friction_angle(k_m10, mu(0.12))), 7.888903050, 1e-8);
}

// d2/2·tan(φ + ρ′) with d2 = 9.0257214207, φ = 3.0281505696°, ρ′ = 7.8889030502°, by hand.
TEST(ThreadLever, TakesSlopeAndFrictionTogether) {
  EXPECT_NEAR(in_millimetres(thread_lever(k_m10, mu(0.12))), 0.8704331019, 1e-9);
}

TEST(ThreadLever, WithoutFrictionOnlyLifts) {
  EXPECT_NEAR(in_millimetres(thread_lever(k_m10, mu(0.0))), in_millimetres(lift_lever(k_m10)), 1e-12);
}

// 1.5/(2·π) by hand.
TEST(LiftLever, IsThePitchOverOneTurn) { EXPECT_NEAR(in_millimetres(lift_lever(k_m10)), 0.2387324146, 1e-9); }

TEST(HeadLever, IsFrictionOnTheMeanRadius) {
  EXPECT_NEAR(in_millimetres(head_lever(quantity::millimetres(12.815), mu(0.12))), 0.7689, 1e-12);
}

TEST(NutFactorLever, IsTheFactorTimesTheDiameter) {
  EXPECT_NEAR(in_millimetres(nut_factor_lever(k_m10, k(0.2))), 2.0, 1e-12);
}

// 0.16·1.5 + 0.58·9.0257214207·0.12 + 12.815/2·0.12 by hand.
TEST(RoundedLever, IsTheRuleOfThumb) {
  EXPECT_NEAR(in_millimetres(rounded_lever(k_m10, quantity::millimetres(12.815), mu(0.12), mu(0.12))), 1.6370902109,
              1e-9);
}

// VDI 2230-1 pack, pitfall 3: the rounded form lies -0.7 to +0.1 % from the exact one (computed there over table A1).
TEST(RoundedLever, StaysCloseToTheExactOne) {
  for (const double friction : {0.08, 0.10, 0.12, 0.14, 0.16, 0.20, 0.24}) {
    const double exact = in_millimetres(thread_lever(k_m10, mu(friction))) + friction * 12.815 / 2.0;
    const double rounded =
        in_millimetres(rounded_lever(k_m10, quantity::millimetres(12.815), mu(friction), mu(friction)));
    EXPECT_GT(rounded / exact - 1.0, -0.007) << friction;
    EXPECT_LT(rounded / exact - 1.0, 0.001) << friction;
  }
}

// A steeper flank wedges harder: 1/cos 30° against 1/cos 27.5° and 1/cos 23.75°.
TEST(FrictionAngle, IsSmallerOnTheFlatterFlanksOfBritishThreads) {
  thread::Thread whitworth = k_m10;
  whitworth.form = thread::Form::whitworth;
  thread::Thread ba = k_m10;
  ba.form = thread::Form::ba;
  EXPECT_LT(friction_angle(whitworth, mu(0.12)), friction_angle(k_m10, mu(0.12)));
  EXPECT_LT(friction_angle(ba, mu(0.12)), friction_angle(whitworth, mu(0.12)));
}

} // namespace clampwright::tightening
