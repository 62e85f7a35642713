// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/wrench.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using finding::Code;
using quantity::newton_metres;
using thread::Turn;

constexpr std::chrono::year_month_day k_today{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

// 10 to 60 N·m in steps of half a newton-metre, both ways round, without a due date.
Wrench wrench() { return {"W", 10, 60, &quantity::unit_named("N.m"), 0.5, {0.04, "test"}, true, true, {}}; }

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
  const Wrench inch{"W", 10, 80, &quantity::unit_named("lbf.ft"), 1.0, {0.04, "test"}, true, true, {}};
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
  due.due = k_today;
  const WrenchSetting set = set_wrench(due, task(22), k_today);
  ASSERT_EQ(set.findings.size(), 1U);
  EXPECT_EQ(set.findings.front().code, Code::wrench_overdue);
  EXPECT_FALSE(set.suitable);
  EXPECT_TRUE(set.setting.has_value()); // what it would be set to is no secret
}

TEST(WrenchOverdue, IsSilentTheDayBefore) {
  Wrench due = wrench();
  due.due = std::chrono::sys_days(k_today) + std::chrono::days(1);
  EXPECT_TRUE(set_wrench(due, task(22), k_today).suitable);
}

} // namespace
} // namespace clampwright::tightening
