// SPDX-License-Identifier: GPL-3.0-or-later
//
// Words about a record that are refused: a sound entry, one thing of which is spoilt.
#pragma once

#include <chrono>
#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/problem/problem.hpp"

namespace clampwright::test {

// The day on which tests of the registers enter.
inline constexpr std::chrono::year_month_day k_entry_day{std::chrono::year(2026), std::chrono::November,
                                                         std::chrono::day(26)};

template<class Words>
struct WrongWords {
  const char* what;
  void (*spoil)(Words&);
  Trouble trouble;
  const char* code;
  const char* field;
  const char* says; // in message or hint
};

template<class Words>
void expect_refused(const WrongWords<Words>& row, const Problem& problem) {
  EXPECT_EQ(problem.trouble, row.trouble) << row.what;
  EXPECT_EQ(problem.code, row.code) << row.what;
  EXPECT_EQ(problem.field, row.field) << row.what;
  EXPECT_THAT(problem.message + " | " + problem.hint, testing::HasSubstr(row.says)) << row.what;
  EXPECT_FALSE(problem.hint.empty()) << row.what;
}

} // namespace clampwright::test
