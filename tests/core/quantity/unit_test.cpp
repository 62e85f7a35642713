// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/unit.hpp"

#include "tests/core/ulps.hpp"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace clampwright::quantity {
namespace {

using test::ulps_apart;

// A value in a unit, and the same in the SI unit of its kind. Worked out by hand in decimals from the definitions,
// which are exact: inch 25.4 mm and pound 0.45359237 kg (international yard and pound agreement of 1959), standard
// gravity 9.80665 m/s2 (CGPM 1901), bar 10^5 Pa, zero Celsius 273.15 K; definitions from memory, products computed. The
// pound- force is 0.45359237 · 9.80665 = 4.4482216152605 N; the rest are its products with 0.0254 m, 0.3048 m and 1/16.
struct Equality {
  const char* unit;
  double value;
  double si;
};

// clang-format off
constexpr Equality k_equalities[] = {
    {"N.m",      1.0,    1.0},
    {"N.cm",     1.0,    0.01},
    {"N.mm",     1.0,    0.001},
    {"mN.m",     1.0,    0.001},
    {"dN.m",     1.0,    0.1},
    {"daN.m",    1.0,    10.0},
    {"kN.m",     1.0,    1000.0},
    {"kgf.m",    1.0,    9.80665},
    {"kgf.cm",   1.0,    0.0980665},
    {"gf.cm",    1.0,    0.0000980665},
    {"lbf.ft",   1.0,    1.3558179483314004},
    {"lbf.in",   1.0,    0.1129848290276167},
    {"ozf.in",   1.0,    0.00706155181422604375},
    {"N",        1.0,    1.0},
    {"kN",       1.0,    1000.0},
    {"daN",      1.0,    10.0},
    {"lbf",      1.0,    4.4482216152605},
    {"kgf",      1.0,    9.80665},
    {"ozf",      1.0,    0.27801385095378125},
    {"MPa",      1.0,    1000000.0},
    {"Pa",       1.0,    1.0},
    {"kPa",      1.0,    1000.0},
    {"GPa",      1.0,    1000000000.0},
    {"N/mm2",    1.0,    1000000.0},
    {"psi",      1.0,    6894.757293168361336722673445},
    {"ksi",      1.0,    6894757.293168361336722673445},
    {"bar",      1.0,    100000.0},
    {"kgf/mm2",  1.0,    9806650.0},
    {"mm",       1.0,    0.001},
    {"cm",       1.0,    0.01},
    {"m",        1.0,    1.0},
    {"um",       1.0,    0.000001},
    {"in",       1.0,    0.0254},
    {"ft",       1.0,    0.3048},
    {"deg",      180.0,  3.14159265358979323846},
    {"rad",      1.0,    1.0},
    {"degC",     20.0,   293.15},
    {"degF",     68.0,   293.15},
    {"K",        293.15, 293.15},
    {"h",        1.0,    3600.0},
    {"min",      1.0,    60.0},
    {"s",        1.0,    1.0},
    {"d",        1.0,    86400.0},
    {"rpm",      30.0,   3.14159265358979323846},
};

// What one is in another, by the same definitions.
struct Exchange {
  double value;
  const char* from;
  double result;
  const char* to;
};

constexpr Exchange k_exchanges[] = {
    {1.0,    "lbf.ft", 12.0,     "lbf.in"},
    {1.0,    "lbf.in", 16.0,     "ozf.in"},
    {1.0,    "kgf.m",  100.0,    "kgf.cm"},
    {1.0,    "kgf.m",  0.980665, "daN.m"},
    {1.0,    "ft",     12.0,     "in"},
    {1.0,    "in",     25.4,     "mm"},
    {1.0,    "ksi",    1000.0,   "psi"},
    {1.0,    "MPa",    1.0,      "N/mm2"},
    {1.0,    "bar",    0.1,      "MPa"},
    {-40.0,  "degF",   -40.0,    "degC"},
    {212.0,  "degF",   100.0,    "degC"},
    {0.0,    "degC",   273.15,   "K"},
    {1.0,    "d",      24.0,     "h"},
    {180.0,  "deg",    3.14159265358979323846, "rad"},
};
// clang-format on

constexpr double k_values[] = {1.0, 24.5, 1.0 / 3.0, 1e-9, 7.3e8, 0.1, 98765.4321};

} // namespace

TEST(Unit, EqualsItsDefinition) {
  for (const Equality& row : k_equalities)
    EXPECT_LE(ulps_apart(to_si(row.value, unit_named(row.unit)), row.si), 4U) << row.unit;
}

// Temperatures with an offset are left out: the double nearest to 293.15 K is not 20 °C to the last bit of 20.
TEST(Unit, IsReachedFromItsDefinition) {
  for (const Equality& row : k_equalities) {
    if (unit_named(row.unit).offset > 0) continue;
    EXPECT_LE(ulps_apart(from_si(row.si, unit_named(row.unit)), row.value), 4U) << row.unit;
  }
}

TEST(Unit, HasAnEqualityOfItsOwnInThisFile) {
  std::set<std::string_view> tested;
  for (const Equality& row : k_equalities)
    tested.insert(row.unit);
  EXPECT_EQ(tested.size(), all_units().size());
  for (const Unit& unit : all_units())
    EXPECT_TRUE(tested.contains(unit.name)) << unit.name;
}

// A temperature in Celsius or Fahrenheit loses digits to its offset where it is near zero; the loss is counted at the
// size of the offset, not of the value.
TEST(Unit, RoundTripsWithinFourUlp) {
  for (const Unit& unit : all_units()) {
    if (unit.offset > 0) continue;
    for (const double value : k_values)
      EXPECT_LE(ulps_apart(from_si(to_si(value, unit), unit), value), 4U) << unit.name << ' ' << value;
  }
}

TEST(Unit, OfTemperatureRoundTripsWithinFourUlpOfItsOffset) {
  for (const Unit& unit : all_units()) {
    if (!(unit.offset > 0)) continue;
    const double ulp_of_offset = 459.67 * std::numeric_limits<double>::epsilon();
    for (const double value : {-40.0, 0.0, 20.0, 150.0, 1.0 / 3.0})
      EXPECT_NEAR(from_si(to_si(value, unit), unit), value, 4.0 * ulp_of_offset) << unit.name << ' ' << value;
  }
}

TEST(Unit, ConvertsWithinFourUlp) {
  for (const Exchange& row : k_exchanges)
    EXPECT_LE(ulps_apart(convert(row.value, unit_named(row.from), unit_named(row.to)), row.result), 4U)
        << row.value << ' ' << row.from << " in " << row.to;
}

TEST(Unit, ConvertsToItselfUnchanged) {
  for (const Unit& unit : all_units())
    EXPECT_EQ(convert(0.1, unit, unit), 0.1) << unit.name;
}

TEST(Unit, HasANameOfItsOwn) {
  std::set<std::string_view> names;
  for (const Unit& unit : all_units())
    names.insert(unit.name);
  EXPECT_EQ(names.size(), all_units().size());
}

TEST(Unit, HasANameInAscii) {
  for (const Unit& unit : all_units())
    for (const char c : unit.name)
      EXPECT_TRUE(c > 0x20 && c < 0x7F) << unit.name;
}

TEST(Unit, IsOfTheMetricTorqueFirst) { EXPECT_EQ(all_units().front().name, "N.m"); }

TEST(KindName, IsWrittenForSentences) {
  EXPECT_EQ(kind_name(Kind::torque), "torque");
  EXPECT_EQ(kind_name(Kind::speed), "rotational speed");
}

} // namespace clampwright::quantity
