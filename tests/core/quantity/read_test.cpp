// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/read.hpp"

#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

namespace clampwright::quantity {
namespace {

using test::problem_of;

struct Row {
  const char* text;
  double value;
  const char* unit;
};

// clang-format off
constexpr Row k_numbers[] = {
    {"24Nm",           24.0,    "N.m"},    {"24.5 N·m",      24.5,    "N.m"},    {"18 lbf.ft",     18.0,   "lbf.ft"},
    {"10mm",           10.0,    "mm"},     {"640MPa",        640.0,   "MPa"},    {"24nm",          24.0,   "N.m"},
    {".5Nm",           0.5,     "N.m"},    {"24.Nm",         24.0,    "N.m"},    {"+24Nm",         24.0,   "N.m"},
    {"1e3N",           1000.0,  "N"},      {"1.5E3 N",       1500.0,  "N"},      {"2e-3m",         0.002,  "m"},
    {"  24   Nm  ",    24.0,    "N.m"},    {"24\tNm",        24.0,    "N.m"},    {"0Nm",           0.0,    "N.m"},
    {"24\xC2\xA0Nm",   24.0,    "N.m"},    {"24\u2009N·m",   24.0,    "N.m"},    {"24\u202FNm",    24.0,   "N.m"},
    {"-40degC",        -40.0,   "degC"},   {"-40 °F",        -40.0,   "degF"},   {"−40°C",         -40.0,  "degC"},
    {"-30deg",         -30.0,   "deg"},    {"0K",            0.0,     "K"},      {"3000rpm",       3000.0, "rpm"},
    {"24h",            24.0,    "h"},      {"007Nm",         7.0,     "N.m"},    {"1e12Pa",        1e12,   "Pa"},
    {"1e-12m",         1e-12,   "m"},      {"9 lbf·ft",      9.0,     "lbf.ft"}, {"2.5 mkg",       2.5,    "kgf.m"},
};

// Inches as they are stamped on drills and bolts.
constexpr Row k_fractions[] = {
    {"1/4 in",     0.25,    "in"}, {"1/4in",    0.25,   "in"}, {"1/4\"",    0.25,    "in"}, {"3/8 in",   0.375,   "in"},
    {"1 1/2 in",   1.5,     "in"}, {"1-1/2 in", 1.5,    "in"}, {"1 1/2\"",  1.5,     "in"}, {"2 3/16in", 2.1875,  "in"},
    {"15/64 in",   0.234375, "in"}, {"11/2 in", 5.5,    "in"}, {"1/2 ft",   0.5,     "ft"}, {"1/2 mm",   0.5,     "mm"},
};

struct RefusedRow {
  const char* text;
  const char* code;
};

constexpr RefusedRow k_bad_fractions[] = {
    {"1/4 Nm",    "fraction"},     {"1/4 N",   "fraction"},     {"1 1/2 MPa", "fraction"},    {"1/2 h",   "fraction"},
    {"1/4",       "bare-number"},  {"1/0 in",  "second-value"}, {"1/ in",     "second-value"}, {"-1/4 in", "second-value"},
    {"1.5/2 in",  "second-value"}, {"1/4/2 in", "second-value"}, {"1/2 1/2 in", "second-value"},
};
// clang-format on

} // namespace

TEST(ReadQuantity, TakesTheNumber) {
  for (const Row& row : k_numbers) {
    const auto reading = read_quantity(row.text);
    ASSERT_TRUE(reading) << row.text << ": " << reading.error().message;
    EXPECT_DOUBLE_EQ(reading->value, row.value) << row.text;
  }
}

TEST(ReadQuantity, TakesTheUnit) {
  for (const Row& row : k_numbers)
    EXPECT_EQ(test::understood(read_quantity(row.text)), row.unit) << row.text;
}

TEST(ReadQuantity, TakesFractionsForLengths) {
  for (const Row& row : k_fractions) {
    const auto length = read_quantity(row.text, Kind::length);
    ASSERT_TRUE(length) << row.text << ": " << length.error().message;
    EXPECT_DOUBLE_EQ(length->value, row.value) << row.text;
    EXPECT_EQ(length->unit->name, row.unit) << row.text;
  }
}

TEST(ReadQuantity, RefusesFractionsThatAreNoLength) {
  for (const RefusedRow& row : k_bad_fractions)
    EXPECT_EQ(problem_of(read_quantity(row.text)).code, row.code) << row.text;
}

TEST(ReadQuantity, NeverTakesMinusZero) {
  const auto torque = read_quantity("-0Nm");
  EXPECT_FALSE(torque && std::signbit(torque->value));
}

// Absolute zero can be said on every scale, and is nothing but zero kelvin.
TEST(ReadQuantity, TakesAbsoluteZeroOnEveryScale) {
  for (const char* text : {"0K", "-273.15degC", "-459.67degF", "-459.67 °F"}) {
    const auto read = read_quantity(text);
    ASSERT_TRUE(read) << text << ": " << read.error().message;
    EXPECT_EQ(read->si(), 0.0) << text;
  }
}

TEST(ReadTorque, IsInNewtonMetres) { EXPECT_DOUBLE_EQ(in_newton_metres(*read_torque("12Nm")), 12.0); }

// 2.5 · 9.80665 by hand.
TEST(ReadTorque, TakesMetreKilogramsAsForces) { EXPECT_DOUBLE_EQ(in_newton_metres(*read_torque("2.5mkg")), 24.516625); }

TEST(ReadForce, IsInNewtons) { EXPECT_DOUBLE_EQ(in_newtons(*read_force("15kN")), 15000.0); }

TEST(ReadLength, IsInMillimetres) { EXPECT_DOUBLE_EQ(in_millimetres(*read_length("1 1/2 in")), 38.1); }

TEST(ReadLength, RefusesNothing) {
  for (const char* text : {"0mm", "0 in", "0/4 in", "-1mm"})
    EXPECT_NE(problem_of(read_length(text)).code, "answered") << text;
}

TEST(ReadNumber, TakesPlainNumbers) {
  EXPECT_DOUBLE_EQ(*read_number("−3"), -3.0); // the minus sign of print
  EXPECT_DOUBLE_EQ(*read_number("0.12"), 0.12);
  EXPECT_DOUBLE_EQ(*read_number(" .12 "), 0.12);
  EXPECT_DOUBLE_EQ(*read_number("-3"), -3.0);
  EXPECT_DOUBLE_EQ(*read_number("1e-1"), 0.1);
}

TEST(ReadNumber, RefusesWhatIsNoPlainNumber) {
  for (const char* text : {"", " ", "0,12", "0.12Nm", "0.1 0.2", "nan", "inf", "-inf", "0x1p3", "0.1.2", "1/4", "75%",
                           "١", "1e", "e1", "--1", "1e999", "+-1"})
    EXPECT_FALSE(read_number(text)) << text;
}

TEST(ReadNumber, NeverTakesMinusZero) {
  for (const char* text : {"-0", "-0.0", "-0e5"}) {
    EXPECT_FALSE(std::signbit(read_number(text).value())) << text;
    EXPECT_FALSE(std::signbit(read_share(text).value())) << text;
  }
}

TEST(ReadNumber, RefusesWhatCannotBeMeant) {
  for (const char* text : {"1e13", "-1e13", "1e-13", "5e-324", "1e308", "1e999", "1e-400"})
    EXPECT_EQ(problem_of(read_number(text)).code, "out-of-range") << text;
}

TEST(ReadShare, TakesAShareOfOne) {
  EXPECT_DOUBLE_EQ(*read_share("0.75"), 0.75);
  EXPECT_DOUBLE_EQ(*read_share("75%"), 0.75);
  EXPECT_DOUBLE_EQ(*read_share("75 %"), 0.75);
  EXPECT_DOUBLE_EQ(*read_share("4%"), 0.04);
  EXPECT_DOUBLE_EQ(*read_share("0%"), 0.0);
}

TEST(ReadShare, RefusesWhatIsNoShare) {
  for (const char* text : {"-0.1", "-5%", "75%%", "%", "75 percent", "0,75", "75,5%", "nan", "inf%", "75Nm", ""})
    EXPECT_FALSE(read_share(text)) << text;
}

struct PairRow {
  const char* text;
  double first_mm;
  double second_mm;
};

TEST(ReadLengthPair, TakesOneUnitForBothOrOneEach) {
  // clang-format off
  constexpr PairRow k_rows[] = {
      {"24x13mm",      24.0,  13.0}, {"24 x 13 mm",      24.0,  13.0}, {"24X13mm",       24.0,  13.0},
      {"24×13mm",      24.0,  13.0}, {"24mm x 13mm",     24.0,  13.0}, {"2.4cm x 13mm",  24.0,  13.0},
      {"1 in x 1/2 in", 25.4, 12.7}, {"24.5x13.0mm",     24.5,  13.0}, {"24mmx13mm",     24.0,  13.0},
  };
  // clang-format on
  for (const PairRow& row : k_rows) {
    const auto pair = read_length_pair(row.text);
    ASSERT_TRUE(pair) << row.text << ": " << pair.error().message;
    EXPECT_DOUBLE_EQ(in_millimetres(pair->first), row.first_mm) << row.text;
    EXPECT_DOUBLE_EQ(in_millimetres(pair->second), row.second_mm) << row.text;
  }
}

// "1x1/2in" is what is stamped on a washer's box.
TEST(ReadLengthPair, LendsTheUnitOfAFraction) {
  const auto pair = read_length_pair("1x1/2in");
  ASSERT_TRUE(pair) << pair.error().message;
  EXPECT_DOUBLE_EQ(in_millimetres(pair->first), 25.4);
}

TEST(ReadLengthPair, RefusesWhatIsNoPair) {
  for (const char* text :
       {"", "24mm", "24x", "x13mm", "24x13", "24x13x2mm", "24,5x13mm", "24x13Nm", "0x13mm", "24-13mm"})
    EXPECT_FALSE(read_length_pair(text)) << text;
}

TEST(ReadAngle, IsTheAngleThatTheCodeCallsSo) {
  EXPECT_TRUE(read_angle("15deg").value() == degrees(15));
  EXPECT_DOUBLE_EQ(in_degrees(read_angle("-30°").value()), -30.0);
  EXPECT_DOUBLE_EQ(in_radians(read_angle("0.5 rad").value()), 0.5);
  EXPECT_EQ(problem_of(read_angle("15")).code, "bare-number");
  EXPECT_EQ(problem_of(read_angle("15mm")).code, "wrong-kind");
}

TEST(ReadStress, IsAboveNothing) {
  EXPECT_DOUBLE_EQ(in_megapascals(read_stress("60MPa").value()), 60.0);
  EXPECT_EQ(problem_of(read_stress("0MPa")).code, "out-of-range");
}

} // namespace clampwright::quantity
