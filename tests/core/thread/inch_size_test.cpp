// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/inch_size.hpp"

#include <gtest/gtest.h>

namespace clampwright::thread {
namespace {

struct SizeRow {
  const char* text;
  double inches;
};

// clang-format off
constexpr SizeRow k_sizes[] = {
    {"1/4",    0.25},
    {"1 1/4",  1.25},
    {"5/4",    1.25},
    {"0.3125", 0.3125},
    {"1",      1.0},
    {"#0",     0.060},  // ASME B1.1: number sizes, 0.060 in and 0.013 in for each number (from memory)
    {"#10",    0.190},  // as printed for #10-32
    {"#12",    0.216},
};
// clang-format on

TEST(InchSize, IsWhatTheDesignationSays) {
  for (const SizeRow& row : k_sizes)
    EXPECT_NEAR(inch_size(row.text).value_or(0), row.inches, 1e-12) << row.text;
}

TEST(InchSize, IsNothingForAFractionOfNothingOrANumberThatEnds) {
  EXPECT_FALSE(inch_size("1/0"));
  EXPECT_FALSE(inch_size("#13"));
}

} // namespace
} // namespace clampwright::thread
