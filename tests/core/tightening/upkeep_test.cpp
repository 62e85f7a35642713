// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/moment.hpp"
#include "core/tightening/upkeep.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using finding::Code;
using std::chrono::year_month_day;

year_month_day day(std::string_view text) { return calendar::stored_day(text).value(); }

Upkeep calibrated(std::string_view on) {
  Upkeep upkeep;
  upkeep.calibrated = day(on);
  return upkeep;
}

// The one code that is found, or nothing.
std::optional<Code> found(const Upkeep& upkeep, std::string_view today) {
  const auto findings = upkeep_findings("W", upkeep, day(today));
  EXPECT_LE(findings.size(), 1U);
  if (findings.empty()) return std::nullopt;
  return findings.front().code;
}

TEST(Date, IsReadAsADayOfTheCalendarAndInNoOtherForm) {
  EXPECT_EQ(calendar::write_day(day("2024-02-29")), "2024-02-29");
  for (const char* text : {"", "2025-02-29", "2026-13-01", "2026-00-10", "2026-1-1", "26-01-01", "2026/01/01",
                           "+026-01-01", "2026-01-0x", "31.12.2026"})
    EXPECT_FALSE(calendar::stored_day(text).has_value()) << text;
}

TEST(MonthsOn, EndWithAShorterMonth) {
  EXPECT_EQ(calendar::write_day(months_on(day("2026-01-31"), 1)), "2026-02-28");
  EXPECT_EQ(calendar::write_day(months_on(day("2023-11-30"), 3)), "2024-02-29");
  EXPECT_EQ(calendar::write_day(months_on(day("2026-05-10"), 12)), "2027-05-10");
}

// ISO 6789:2003: 12 months or 5000 cycles, the earlier, where the shop says nothing else.
TEST(Calibration, IsDueAfterTwelveMonthsWhereNothingElseIsSaid) {
  EXPECT_EQ(found(calibrated("2025-11-25"), "2026-11-24"), std::nullopt);
  EXPECT_EQ(found(calibrated("2025-11-25"), "2026-11-25"), Code::wrench_overdue);
}

TEST(Calibration, IsDueByTheShopsOwnMonths) {
  Upkeep upkeep = calibrated("2026-05-25");
  upkeep.months = 6;
  EXPECT_EQ(found(upkeep, "2026-11-24"), std::nullopt);
  EXPECT_EQ(found(upkeep, "2026-11-25"), Code::wrench_overdue);
}

TEST(Calibration, IsDueByItsSheetOrByMonthsWhicheverIsFirst) {
  Upkeep upkeep = calibrated("2026-01-01");
  upkeep.due = day("2026-06-01");
  EXPECT_EQ(calendar::write_day(due_day(upkeep).value()), "2026-06-01");
  upkeep.due = day("2027-06-01");
  EXPECT_EQ(calendar::write_day(due_day(upkeep).value()), "2027-01-01");
}

TEST(Calibration, IsDueByCycles) {
  Upkeep upkeep = calibrated("2026-10-01");
  upkeep.cycles = 4999;
  EXPECT_EQ(found(upkeep, "2026-11-25"), std::nullopt);
  upkeep.cycles = 5000;
  EXPECT_EQ(found(upkeep, "2026-11-25"), Code::wrench_overdue);
  upkeep.cycle_limit = 10000;
  EXPECT_EQ(found(upkeep, "2026-11-25"), std::nullopt);
  EXPECT_EQ(cycles_left(upkeep), 5000);
}

TEST(Calibration, IsUnknownWhereNoneIsOnRecord) {
  EXPECT_EQ(found({}, "2026-11-25"), Code::calibration_unknown);
  EXPECT_FALSE(due_day({}).has_value());
}

TEST(Mishap, MustBeCalibratedAway) {
  Upkeep upkeep = calibrated("2026-10-01");
  upkeep.mishap = MishapOn{Mishap::drop, day("2026-11-01")};
  const auto findings = upkeep_findings("W", upkeep, day("2026-11-25"));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings.front().code, Code::wrench_dropped);
  EXPECT_EQ(findings.front().severity, finding::Severity::stop);
  EXPECT_EQ(std::get<std::string>(findings.front().facts[1]), "dropped");
}

TEST(Retired, LeavesNothingElseToSay) {
  Upkeep upkeep = calibrated("2020-01-01");
  upkeep.mishap = MishapOn{Mishap::overload, day("2026-11-01")};
  upkeep.retired = Retired{day("2026-11-02"), "its pawl slips"};
  EXPECT_EQ(found(upkeep, "2026-11-25"), Code::wrench_retired);
}

TEST(NextDue, IsByDateWhereTheWrenchIsLittleUsed) {
  const auto next = next_due(calibrated("2026-10-01"), day("2026-11-25"), 0.1);
  ASSERT_TRUE(next.has_value());
  EXPECT_FALSE(next->by_cycles);
  EXPECT_EQ(calendar::write_day(next->day), "2027-10-01");
}

TEST(NextDue, IsNotToldWhereNothingIsKnown) {
  EXPECT_FALSE(next_due({}, day("2026-11-25"), 0).has_value());
  EXPECT_FALSE(next_due({}, day("2026-11-25"), 1e-9).has_value());
}

} // namespace
} // namespace clampwright::tightening
