// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/friction/friction.hpp"

#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

namespace clampwright::friction {
namespace {

using test::problem_of;

struct Row {
  const char* text;
  double low;
  double likely;
  double high;
};

struct RefusedRow {
  const char* text;
  const char* code;
};

// clang-format off
constexpr Row k_bands[] = {
    {"0.12",                 0.12, 0.12, 0.12}, {"0.08..0.16",         0.08, 0.12, 0.16},
    {"0.08..0.12..0.16",     0.08, 0.12, 0.16}, {".08..0.1...2",       0.08, 0.1,  0.2},
    {" 0.08 .. 0.16 ",       0.08, 0.12, 0.16}, {"0.08..0.09..0.16",   0.08, 0.09, 0.16},
    {"0.12..0.12",           0.12, 0.12, 0.12}, {"0.1..0.1..0.2",      0.1,  0.1,  0.2},
    {"1",                    1.0,  1.0,  1.0},  {"8e-2..1.6e-1",       0.08, 0.12, 0.16},
};

constexpr RefusedRow k_refused[] = {
    {"",                     "empty"},          {"0.12..",             "empty"},
    {"..0.12",               "empty"},          {"0.08....0.16",       "empty"},
    {"0.16..0.08",           "out-of-range"},   {"0.08..0.2..0.16",    "out-of-range"},
    {"0.08..0.05..0.16",     "out-of-range"},   {"1.01",               "out-of-range"},
    {"-0.1",                 "out-of-range"},   {"0.1..1.5",           "out-of-range"},
    {"0.1..0.2..0.3..0.4",   "not-understood"}, {"0,12",               "comma"},
    {"0.12Nm",               "not-a-number"},   {"12%",                "not-a-number"},
    {"oily",                 "not-a-number"},   {"0.08-0.16",          "not-a-number"},
    {"0.08 0.16",            "not-a-number"},   {"nan",                "not-finite"},
    {"inf",                  "not-finite"},     {"0x1p-3",             "hexadecimal"},
    {"0.08..nan",            "not-finite"},     {"٠.١٢",               "foreign-digits"},
};
// clang-format on

} // namespace

TEST(FrictionBand, IsReadFromOneTwoOrThreeNumbers) {
  for (const Row& row : k_bands) {
    const auto band = read_friction_band(row.text);
    ASSERT_TRUE(band) << row.text << ": " << band.error().message;
    EXPECT_DOUBLE_EQ(band->low.value(), row.low) << row.text;
    EXPECT_DOUBLE_EQ(band->likely.value(), row.likely) << row.text;
    EXPECT_DOUBLE_EQ(band->high.value(), row.high) << row.text;
  }
}

TEST(NutFactorBand, IsReadFromOneTwoOrThreeNumbers) {
  for (const Row& row : k_bands) {
    const auto band = read_nut_factor_band(row.text);
    ASSERT_TRUE(band) << row.text << ": " << band.error().message;
    EXPECT_DOUBLE_EQ(band->low.value(), row.low) << row.text;
    EXPECT_DOUBLE_EQ(band->likely.value(), row.likely) << row.text;
    EXPECT_DOUBLE_EQ(band->high.value(), row.high) << row.text;
  }
}

TEST(FrictionBand, IsRefusedWithItsReason) {
  for (const RefusedRow& row : k_refused)
    EXPECT_EQ(problem_of(read_friction_band(row.text)).code, row.code) << row.text;
}

TEST(NutFactorBand, IsRefusedWithItsReason) {
  for (const RefusedRow& row : k_refused)
    EXPECT_EQ(problem_of(read_nut_factor_band(row.text)).code, row.code) << row.text;
}

TEST(FrictionBand, ThatIsRefusedShowsAGoodOne) {
  for (const RefusedRow& row : k_refused)
    EXPECT_TRUE(test::says(problem_of(read_friction_band(row.text)).hint, "0.08..0.16")) << row.text;
}

TEST(FrictionBand, ThatIsRefusedIsQuotedWhole) {
  EXPECT_EQ(problem_of(read_friction_band("0.16..0.08")).input, "0.16..0.08");
  EXPECT_EQ(problem_of(read_friction_band("0.08..x")).input, "0.08..x");
}

TEST(FrictionCoefficient, LiesBetweenZeroAndOne) {
  EXPECT_TRUE(FrictionCoefficient::try_make(0.0));
  EXPECT_TRUE(FrictionCoefficient::try_make(1.0));
  EXPECT_FALSE(FrictionCoefficient::try_make(-0.001));
  EXPECT_FALSE(FrictionCoefficient::try_make(1.001));
}

TEST(NutFactor, LiesAboveZeroAndNotAboveOne) {
  EXPECT_TRUE(NutFactor::try_make(0.001));
  EXPECT_TRUE(NutFactor::try_make(1.0));
  EXPECT_FALSE(NutFactor::try_make(0.0));
  EXPECT_FALSE(NutFactor::try_make(1.001));
}

TEST(FrictionCoefficient, IsNeverNotANumber) {
  EXPECT_FALSE(FrictionCoefficient::try_make(std::numeric_limits<double>::quiet_NaN()));
  EXPECT_FALSE(NutFactor::try_make(std::numeric_limits<double>::quiet_NaN()));
}

} // namespace clampwright::friction
