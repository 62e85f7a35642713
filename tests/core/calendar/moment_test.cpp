// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/moment.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/problem_of.hpp"

namespace clampwright::calendar {
namespace {

using testing::HasSubstr;

std::string shifted(std::string_view from, double minutes) {
  return write_moment(later(read_moment(from).value(), minutes));
}

TEST(Moment, ComesBackAsItWasWritten) {
  for (const char* text : {"2026-11-26 09:30", "2024-02-29 00:00", "1999-12-31 23:59"})
    EXPECT_EQ(write_moment(read_moment(text).value()), text);
  EXPECT_EQ(write_moment(read_moment(" 2026-11-26T09:30 ").value()), "2026-11-26 09:30");
}

// By the calendar: 72 h are three days, November has 30, 2028 is a leap year and 2026 is none.
TEST(Moment, MovesByTheCalendar) {
  EXPECT_EQ(shifted("2026-11-26 09:30", 72 * 60), "2026-11-29 09:30");
  EXPECT_EQ(shifted("2026-11-29 20:00", 24 * 60), "2026-11-30 20:00");
  EXPECT_EQ(shifted("2026-11-30 20:00", 6 * 60), "2026-12-01 02:00");
  EXPECT_EQ(shifted("2026-12-31 23:45", 30), "2027-01-01 00:15");
  EXPECT_EQ(shifted("2028-02-28 12:00", 24 * 60), "2028-02-29 12:00");
  EXPECT_EQ(shifted("2026-02-28 12:00", 24 * 60), "2026-03-01 12:00");
  EXPECT_EQ(shifted("2026-11-26 09:30", 0), "2026-11-26 09:30");
}

TEST(Moment, RoundsAPartOfAMinuteUp) { EXPECT_EQ(shifted("2026-11-26 09:30", 0.25), "2026-11-26 09:31"); }

// clang-format off
const std::vector<std::pair<const char*, const char*>> k_refused{
    {"",                  "no day and time"},
    {"2026-11-26",        "no day and time"},
    {"26.11.2026 09:30",  "no day and time"},
    {"2026-11-26 9:30",   "no day and time"},
    {"2026-11-26 09:30h", "no day and time"},
    {"2026-11-26_09:30",  "no day and time"},
    {"2026-02-29 09:30",  "no such day"},
    {"2026-13-01 09:30",  "no such day"},
    {"2026-00-10 09:30",  "no such day"},
    {"0026-11-26 09:30",  "no such day"},
    {"2026-11-26 24:00",  "no such time"},
    {"2026-11-26 09:60",  "no such time"},
};
// clang-format on

TEST(Moment, IsRefusedWhereNoCalendarOrClockHasIt) {
  for (const auto& [text, says] : k_refused) {
    const Problem problem = test::problem_of(read_moment(text));
    EXPECT_EQ(problem.trouble, Trouble::not_understood) << text;
    EXPECT_THAT(problem.message, HasSubstr(says)) << text;
    EXPECT_THAT(problem.hint, HasSubstr("2026-11-26 09:30")) << text;
  }
}

} // namespace
} // namespace clampwright::calendar
