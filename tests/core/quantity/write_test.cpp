// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/write.hpp"

#include <gtest/gtest.h>

namespace clampwright::quantity {
namespace {

struct Row {
  double value;
  int digits;
  const char* text;
};

// clang-format off
constexpr Row k_numbers[] = {
    {24.5,       3, "24.5"},    {24.0,      3, "24"},      {24.04,      3, "24"},       {24.06,    3, "24.1"},
    {12345.0,    3, "12345"},   {12345.6,   3, "12346"},   {0.012345,   3, "0.0123"},   {0.1,      3, "0.1"},
    {1.0 / 3.0,  3, "0.333"},   {9.9996,    4, "10"},      {99.96,      3, "100"},      {1000.0,   1, "1000"},
    {0.0,        3, "0"},       {-2.5,      3, "-2.5"},    {100.0,      3, "100"},      {1e-5,     3, "0.00001"},
    {1e-7,       3, "1.00e-07"}, {1e15,     3, "1.00e+15"}, {1500.0,    2, "1500"},     {0.105,    2, "0.1"},
};
// clang-format on

} // namespace

TEST(WriteNumber, KeepsTheDigitsAskedFor) {
  for (const Row& row : k_numbers)
    EXPECT_EQ(write_number(row.value, row.digits), row.text) << row.value;
}

TEST(WriteNumber, NeverWritesMinusZero) { EXPECT_EQ(write_number(-0.0, 3), "0"); }

TEST(WriteRounded, KeepsTrailingZeros) {
  EXPECT_EQ(write_rounded(25.0, 3), "25.0");
  EXPECT_EQ(write_rounded(2.5, 4), "2.500");
  EXPECT_EQ(write_rounded(1234.5, 3), "1234");
}

// 99.96 to three digits is 100; "100.0" would claim a fourth.
TEST(WriteRounded, GivesNoMoreDigitsWhereRoundingCarriesOver) {
  EXPECT_EQ(write_rounded(99.96, 3), "100");
  EXPECT_EQ(write_rounded(9.996, 3), "10.0");
}

TEST(WriteQuantity, ShowsNumberSpaceAndSymbol) {
  EXPECT_EQ(write(newton_metres(24.5), DisplayUnits{}), "24.5 N·m");
  EXPECT_EQ(write(newtons(23500), DisplayUnits{}), "23.5 kN");
  EXPECT_EQ(write(megapascals(640), DisplayUnits{}), "640 MPa");
  EXPECT_EQ(write(millimetres(8.125), DisplayUnits{}), "8.125 mm");
}

// 45 N·m / 1.3558179483314004 = 33.19; 10 kN / 4.4482216152605 = 2248.09; 640 MPa / 6894.757 Pa = 92824; by hand.
TEST(WriteQuantity, ShowsInchUnitsWhenAskedTo) {
  const DisplayUnits units = DisplayUnits::imperial();
  EXPECT_EQ(write(newton_metres(45), units), "33.2 lbf·ft");
  EXPECT_EQ(write(newtons(10000), units), "2248 lbf");
  EXPECT_EQ(write(megapascals(640), units), "92824 psi");
  EXPECT_EQ(write(millimetres(12.7), units), "0.5 in");
}

TEST(WriteQuantity, JoinsTheDegreeSignToItsNumber) { EXPECT_EQ(write_value(60, unit_named("deg"), 3), "60°"); }

TEST(DisplayUnits, TakeThePreferredUnitOfItsKind) {
  DisplayUnits units;
  units.prefer(unit_named("kgf.m"));
  EXPECT_EQ(units.torque->name, "kgf.m");
  EXPECT_EQ(units.force->name, "kN");
}

TEST(DisplayUnits, LeaveKindsWithoutADisplayUnitAlone) {
  DisplayUnits units;
  units.prefer(unit_named("rpm"));
  EXPECT_EQ(units.torque->name, "N.m");
}

TEST(WriteBand, ShowsLowLikelyAndHigh) {
  EXPECT_EQ(write(Band<Force>{newtons(15200), newtons(21900), newtons(33000)}, DisplayUnits{}),
            "15.2 / 21.9 / 33.0 kN");
  EXPECT_EQ(write(Band<Torque>{newton_metres(1), newton_metres(2), newton_metres(3)}, DisplayUnits{}),
            "1.00 / 2.00 / 3.00 N·m");
}

TEST(WriteShare, IsInWholePerCent) {
  EXPECT_EQ(write_share(0.62), "62 %");
  EXPECT_EQ(write_share(0.625), "62 %");
  EXPECT_EQ(write_shares({0.5, 0.75, 1.25}), "50 / 75 / 125 %");
}

} // namespace clampwright::quantity
