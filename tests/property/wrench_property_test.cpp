// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/uncertainty.hpp"
#include "core/tightening/wrench.hpp"
#include "tests/property/random_case.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

namespace clampwright::tightening {
namespace {

using quantity::in_newton_metres;
using quantity::newton_metres;
using test::between;

constexpr std::chrono::year_month_day k_today{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

Levers any_levers() {
  return {quantity::millimetres(between(50, 1500)),
          Adaptor{quantity::millimetres(between(5, 1500)), quantity::degrees(between(-180, 180))}};
}

Wrench any_wrench() {
  const double step = between(0.01, 10);
  return {"W", step, step * between(10, 1000), &quantity::unit_named("N.m"), step, {0.04, "test"}, true, true};
}

// The rule of the lever, written out on its own: what is set, times (L + A·cos a)/L, is what is applied.
TEST(LeverRule, TurnsEverySettingIntoWhatIsApplied) {
  EXPECT_TRUE(rc::check([] {
    const Levers levers = any_levers();
    RC_PRE(check_levers(levers).has_value());
    const double torque = between(0.1, 2000);
    const double arm = quantity::in_metres(levers.arm);
    const double adaptor = quantity::in_metres(levers.adaptor->length);
    const double angle = quantity::in_degrees(levers.adaptor->angle) / 180.0 * std::numbers::pi;
    // Where the adaptor points back nearly to the hand, L + A·cos a is a small difference of two lengths.
    RC_PRE(arm + adaptor * std::cos(angle) > 1e-3 * arm);
    const double set = in_newton_metres(setting_for(newton_metres(torque), levers));
    const double applied = set * (arm + adaptor * std::cos(angle)) / arm;
    RC_ASSERT(std::abs(applied - torque) <= 1e-9 * torque);
    RC_ASSERT(std::abs(in_newton_metres(applied_by(newton_metres(set), levers)) - torque) <= 1e-12 * torque);
  }));
}

TEST(LeverRule, IsRefusedExactlyWhereTheFastenerIsNotBeforeTheHand) {
  EXPECT_TRUE(rc::check([] {
    const Levers levers = any_levers();
    RC_ASSERT(check_levers(levers).has_value() == (effective_arm(levers) >= 0.1 * levers.arm));
  }));
}

// A mark is taken only where it and what it applies lie within what scale and figure allow.
TEST(SettingWithLimits, KeepsThemAtTheFastener) {
  EXPECT_TRUE(rc::check([] {
    const Levers levers = any_levers();
    RC_PRE(check_levers(levers).has_value());
    const Wrench wrench = any_wrench();
    const quantity::Torque torque = newton_metres(between(0.1, 2000));
    const WrenchTask task{torque, torque * between(0.8, 1.0), torque * between(1.0, 1.2), {}};
    const LeverSetting set = set_wrench(wrench, task, levers, k_today);
    if (!set.setting) {
      RC_ASSERT(!set.on_scale.suitable);
      RC_ASSERT(!set.on_scale.findings.empty());
      return;
    }
    RC_ASSERT(*set.applied >= *task.low * (1 - 1e-8));
    RC_ASSERT(*set.applied <= *task.high * (1 + 1e-8));
    const double steps = *set.on_scale.setting / *wrench.step;
    RC_ASSERT(std::abs(steps - std::round(steps)) <= 1e-6 * steps);
  }));
}

// Off by half a step at the most, and never by more than the tenth that a page without limits allows.
TEST(SettingWithoutLimits, IsTheNearestMarkWithinATenth) {
  EXPECT_TRUE(rc::check([] {
    const Wrench wrench = any_wrench();
    const double torque = between(wrench.low, wrench.high - wrench.low);
    RC_PRE(torque >= wrench.low);
    const WrenchSetting set = set_wrench(wrench, {newton_metres(torque), {}, {}, {}}, k_today);
    if (!set.setting) {
      RC_ASSERT(*wrench.step > 0.1 * torque);
      return;
    }
    RC_ASSERT(std::abs(*set.setting - torque) <= *wrench.step * (0.5 + 1e-6));
    RC_ASSERT(std::abs(*set.setting - torque) <= 0.1 * torque * (1 + 1e-6));
  }));
}

TEST(Budget, SharesAddToOneAndTheWholeIsNoLessThanAnyPart) {
  EXPECT_TRUE(rc::check([] {
    const auto any = [] {
      return Influence{"x", between(1e-4, 0.5), *rc::gen::element(Spread::limits, Spread::standard), "test"};
    };
    const Budget budget = budget_of({any(), any(), any()}, any());
    double sum = 0;
    for (const BudgetLine& line : budget.lines) {
      sum += line.of_variance;
      RC_ASSERT(line.standard <= budget.load * (1 + 1e-12));
    }
    RC_ASSERT(std::abs(sum - 1) < 1e-12);
    RC_ASSERT(budget.torque <= budget.load);
  }));
}

} // namespace
} // namespace clampwright::tightening
