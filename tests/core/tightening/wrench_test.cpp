// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/wrench.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using finding::Code;
using quantity::in_newton_metres;
using quantity::newton_metres;
using thread::Turn;

constexpr std::chrono::year_month_day k_today{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

// 10 to 60 N·m in steps of half a newton-metre, both ways round, of no register.
Wrench wrench() { return {"W", 10, 60, &quantity::unit_named("N.m"), 0.5, {0.04, "test"}, true, true}; }

WrenchTask task(double torque, Turn turn = Turn::clockwise) { return {newton_metres(torque), {}, {}, turn}; }

struct Row {
  double wanted;
  double mark;
};

// clang-format off
constexpr Row k_marks[] = {
    {22.0,  22.0},
    {22.2,  22.0},
    {22.3,  22.5},
    {22.25, 22.0}, // as near to both: the lower
    {10.0,  10.0},
    {60.0,  60.0},
    {10.1,  10.0},
    {59.9,  60.0},
};
// clang-format on

TEST(WrenchSetting, IsTheNearestMark) {
  for (const Row& row : k_marks) {
    const WrenchSetting set = set_wrench(wrench(), task(row.wanted), k_today);
    ASSERT_TRUE(set.setting.has_value()) << row.wanted;
    EXPECT_DOUBLE_EQ(*set.setting, row.mark) << row.wanted;
    EXPECT_TRUE(set.suitable);
  }
}

TEST(WrenchSetting, IsTheTorqueItselfOnADisplay) {
  Wrench display = wrench();
  display.step.reset();
  EXPECT_DOUBLE_EQ(*set_wrench(display, task(22.22), k_today).setting, 22.22);
}

// 42 N.m = 42/1.3558179483314004 = 30.977610 lbf.ft (pound, foot and standard gravity, exact): on a scale with steps of
// one, 31.
TEST(WrenchSetting, IsOnTheScaleOfTheWrench) {
  const Wrench inch{"W", 10, 80, &quantity::unit_named("lbf.ft"), 1.0, {0.04, "test"}, true, true};
  EXPECT_DOUBLE_EQ(*set_wrench(inch, task(42), k_today).setting, 31.0);
}

TEST(WrenchSetting, StaysWithinThePrintedLimits) {
  WrenchTask tight = task(22.3);
  tight.high = newton_metres(22.4);
  EXPECT_DOUBLE_EQ(*set_wrench(wrench(), tight, k_today).setting, 22.0);
  tight = task(22.2);
  tight.low = newton_metres(22.1);
  EXPECT_DOUBLE_EQ(*set_wrench(wrench(), tight, k_today).setting, 22.5);
}

TEST(WrenchSetting, IsNoneWhereNoMarkLiesWithinTheLimits) {
  WrenchTask tight = task(22.25);
  tight.low = newton_metres(22.2);
  tight.high = newton_metres(22.3);
  const WrenchSetting set = set_wrench(wrench(), tight, k_today);
  EXPECT_FALSE(set.setting.has_value());
  EXPECT_FALSE(set.suitable);
}

struct RefusedRow {
  const char* what;
  Wrench wrench;
  WrenchTask task;
  Code code;
};

Wrench one_way() {
  Wrench out = wrench();
  out.turns_anticlockwise = false;
  return out;
}

TEST(WrenchSetting, IsRefusedWithTheReason) {
  const RefusedRow rows[] = {
      {"below", wrench(), task(9.9), Code::below_tool_range},
      {"above", wrench(), task(60.1), Code::above_tool_range},
      {"wrong way round", one_way(), task(42, Turn::anticlockwise), Code::wrench_direction},
  };
  for (const RefusedRow& row : rows) {
    const WrenchSetting set = set_wrench(row.wrench, row.task, k_today);
    EXPECT_FALSE(set.setting.has_value()) << row.what;
    EXPECT_FALSE(set.suitable) << row.what;
    ASSERT_EQ(set.findings.size(), 1U) << row.what;
    EXPECT_EQ(set.findings.front().code, row.code) << row.what;
    EXPECT_EQ(set.findings.front().severity, finding::Severity::stop) << row.what;
  }
}

TEST(WrenchSetting, IsGivenThatWayRoundForWhichTheWrenchIsMade) {
  EXPECT_TRUE(set_wrench(one_way(), task(42), k_today).suitable);
}

TEST(WrenchOverdue, StandsFromTheDayItIsDue) {
  Wrench due = wrench();
  due.upkeep.emplace().due = k_today;
  const WrenchSetting set = set_wrench(due, task(22), k_today);
  ASSERT_EQ(set.findings.size(), 1U);
  EXPECT_EQ(set.findings.front().code, Code::wrench_overdue);
  EXPECT_FALSE(set.suitable);
  EXPECT_TRUE(set.setting.has_value()); // what it would be set to is no secret
}

TEST(WrenchOverdue, IsSilentTheDayBefore) {
  Wrench due = wrench();
  due.upkeep.emplace().due = std::chrono::sys_days(k_today) + std::chrono::days(1);
  EXPECT_TRUE(set_wrench(due, task(22), k_today).suitable);
}

TEST(WrenchSetting, SaysWhenNoMarkLiesWithinTheLimits) {
  WrenchTask tight = task(22.25);
  tight.low = newton_metres(22.2);
  tight.high = newton_metres(22.3);
  const WrenchSetting set = set_wrench(wrench(), tight, k_today);
  ASSERT_EQ(set.findings.size(), 2U); // and no wrench is that good
  EXPECT_EQ(set.findings.front().code, Code::no_mark);
  EXPECT_EQ(set.findings.back().code, Code::wrench_wider_than_limits);
}

// Without limits a tenth either way counts (TB 9-2320-279-13&P-2): of 31 N·m, 27.9 to 34.1, and 40 is none of them.
TEST(WrenchSetting, GoesPastNoTenthWhereThePageNamesNoLimits) {
  Wrench coarse = wrench();
  coarse.low = 20;
  coarse.high = 200;
  coarse.step = 20;
  const WrenchSetting set = set_wrench(coarse, task(31), k_today);
  EXPECT_FALSE(set.setting);
  ASSERT_FALSE(set.findings.empty());
  EXPECT_EQ(set.findings.front().code, Code::no_mark);
  EXPECT_EQ(set_wrench(coarse, task(37), k_today).setting, 40.0);
}

TEST(WrenchSetting, SaysThatAWrenchIsNoCloserThanTheFigure) {
  WrenchTask tight = task(22);
  tight.high = newton_metres(22.5);
  const WrenchSetting set = set_wrench(wrench(), tight, k_today);
  ASSERT_EQ(set.findings.size(), 1U);
  EXPECT_EQ(set.findings.front().code, Code::wrench_wider_than_limits);
  EXPECT_TRUE(set.suitable);
  tight.high = newton_metres(23); // 4.5 % against the 4 % of the wrench
  EXPECT_TRUE(set_wrench(wrench(), tight, k_today).findings.empty());
}

TEST(WrenchSetting, TakesAMarkThatIsTheLimitItself) {
  WrenchTask edge = task(22.4);
  edge.high = newton_metres(22.5);
  EXPECT_DOUBLE_EQ(*set_wrench(wrench(), edge, k_today).setting, 22.5);
}

TEST(WrenchSetting, IsWrittenAsTheScaleHasIt) {
  Wrench fine = wrench();
  fine.low = 0.1;
  fine.step = 0.1;
  EXPECT_EQ(*set_wrench(fine, task(0.31), k_today).setting, 0.3); // 3 · 0.1 is 0.30000000000000004
}

TEST(WrenchSetting, AsksForNoDirectionWhereNoneIsSaid) {
  WrenchTask either = task(42);
  either.turn.reset();
  EXPECT_TRUE(set_wrench(one_way(), either, k_today).suitable);
}

// Marks every half a newton-metre are a tenth of 5 N·m.
TEST(CoarseScale, IsSaidOfMarksFurtherApartThanATenth) {
  Wrench low = wrench();
  low.low = 1;
  EXPECT_TRUE(set_wrench(low, task(5), k_today).findings.empty());
  const WrenchSetting set = set_wrench(low, task(4.9), k_today);
  ASSERT_EQ(set.findings.size(), 1U);
  EXPECT_EQ(set.findings.front().code, Code::coarse_scale);
  EXPECT_TRUE(set.suitable);
}

TEST(CoarseScale, IsNotSaidOfATorqueOffTheScale) {
  const WrenchSetting set = set_wrench(wrench(), task(2.8), k_today);
  ASSERT_EQ(set.findings.size(), 1U);
  EXPECT_EQ(set.findings.front().code, Code::below_tool_range);
}

TEST(UpkeepOfAWrench, SpeaksAgainstIt) {
  Wrench dropped = wrench();
  dropped.upkeep.emplace().calibrated = k_today;
  dropped.upkeep->mishap = MishapOn{Mishap::drop, k_today};
  const WrenchSetting set = set_wrench(dropped, task(22), k_today);
  EXPECT_FALSE(set.suitable);
  EXPECT_EQ(*set.setting, 22.0);
}

const Levers k_levers{quantity::millimetres(300), Adaptor{quantity::millimetres(50), quantity::degrees(45)}};

// By hand: 300 + 50·0.70710678 = 335.355339 mm; 25·300/335.355339 = 22.364338; the nearest half is 22.5, which applies
// 22.5·335.355339/300 = 25.151650; 25 itself would apply 27.946278.
TEST(SettingThroughAnAdaptor, IsAMarkAndSaysWhatItApplies) {
  const LeverSetting set = set_wrench(wrench(), task(25), k_levers, k_today);
  EXPECT_NEAR(in_newton_metres(set.exact), 22.364338, 1e-6);
  EXPECT_EQ(*set.on_scale.setting, 22.5);
  EXPECT_NEAR(in_newton_metres(*set.applied), 25.151650, 1e-6);
  EXPECT_NEAR(in_newton_metres(set.applied_if_forgotten), 27.946278, 1e-6);
}

// The limits are those of the fastener: 25.1 there is 22.453796 on the scale, so 22.5 is too much and 22.0 is taken.
TEST(SettingThroughAnAdaptor, KeepsTheLimitsAtTheFastener) {
  WrenchTask tight = task(25);
  tight.low = newton_metres(24);
  tight.high = newton_metres(25.1);
  const LeverSetting set = set_wrench(wrench(), tight, k_levers, k_today);
  EXPECT_EQ(*set.on_scale.setting, 22.0);
  EXPECT_GE(*set.applied, *tight.low);
}

TEST(SettingThroughAnAdaptor, AppliesExactlyWhatIsWantedWithoutMarks) {
  Wrench display = wrench();
  display.step.reset();
  display.unit = &quantity::unit_named("lbf.ft");
  const LeverSetting set = set_wrench(display, task(25), k_levers, k_today);
  EXPECT_EQ(*set.applied, newton_metres(25));
  EXPECT_EQ(*set.setting, set.exact);
}

// 12 N·m through an adaptor that doubles the lever is 6 on the scale, which begins at 10.
TEST(SettingThroughAnAdaptor, IsHeldAgainstTheScaleAndNotTheJoint) {
  const Levers doubled{quantity::millimetres(300), Adaptor{quantity::millimetres(300), quantity::degrees(0)}};
  const LeverSetting set = set_wrench(wrench(), task(12), doubled, k_today);
  EXPECT_FALSE(set.setting.has_value());
  EXPECT_FALSE(set.applied.has_value());
  EXPECT_EQ(set.on_scale.findings.front().code, Code::below_tool_range);
}

} // namespace
} // namespace clampwright::tightening
