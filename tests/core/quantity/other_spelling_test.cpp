// SPDX-License-Identifier: GPL-3.0-or-later
//
// The spellings are those of the contract, section 1.
#include "core/quantity/spelling.hpp"
#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

#include <string>

namespace clampwright::quantity {
namespace {

using test::problem_of;

struct Row {
  Kind kind;
  const char* text;
  const char* unit;
};

// clang-format off
constexpr Row k_read[] = {
    {Kind::force,       "N",       "N"},       {Kind::force,       "kN",      "kN"},
    {Kind::force,       "daN",     "daN"},     {Kind::force,       "lbf",     "lbf"},
    {Kind::force,       "kgf",     "kgf"},     {Kind::force,       "ozf",     "ozf"},
    {Kind::force,       "kp",      "kgf"},     {Kind::force,       "KN",      "kN"},
    {Kind::force,       "LBF",     "lbf"},     {Kind::force,       "n",       "N"},
    {Kind::stress,      "MPa",     "MPa"},     {Kind::stress,      "Pa",      "Pa"},
    {Kind::stress,      "kPa",     "kPa"},     {Kind::stress,      "GPa",     "GPa"},
    {Kind::stress,      "N/mm2",   "N/mm2"},   {Kind::stress,      "N/mm²",   "N/mm2"},
    {Kind::stress,      "psi",     "psi"},     {Kind::stress,      "ksi",     "ksi"},
    {Kind::stress,      "bar",     "bar"},     {Kind::stress,      "kgf/mm2", "kgf/mm2"},
    {Kind::stress,      "PSI",     "psi"},     {Kind::stress,      "gpa",     "GPa"},
    {Kind::stress,      "MPA",     "MPa"},     {Kind::stress,      "kgf/mm²", "kgf/mm2"},
    {Kind::length,      "mm",      "mm"},      {Kind::length,      "cm",      "cm"},
    {Kind::length,      "m",       "m"},       {Kind::length,      "um",      "um"},
    {Kind::length,      "µm",      "um"},      {Kind::length,      "in",      "in"},
    {Kind::length,      "ft",      "ft"},      {Kind::length,      "\"",      "in"},
    {Kind::length,      "inch",    "in"},      {Kind::length,      "MM",      "mm"},
    {Kind::length,      "IN",      "in"},      {Kind::length,      "”",       "in"},
    {Kind::angle,       "deg",     "deg"},     {Kind::angle,       "°",       "deg"},
    {Kind::angle,       "rad",     "rad"},     {Kind::angle,       "DEG",     "deg"},
    {Kind::temperature, "degC",    "degC"},    {Kind::temperature, "°C",      "degC"},
    {Kind::temperature, "degF",    "degF"},    {Kind::temperature, "°F",      "degF"},
    {Kind::temperature, "K",       "K"},       {Kind::temperature, "° C",     "degC"},
    {Kind::temperature, "DEGC",    "degC"},    {Kind::temperature, "deg F",   "degF"},
    {Kind::time,        "h",       "h"},       {Kind::time,        "min",     "min"},
    {Kind::time,        "s",       "s"},       {Kind::time,        "d",       "d"},
    {Kind::speed,       "rpm",     "rpm"},     {Kind::speed,       "RPM",     "rpm"},
};

struct RefusedRow {
  const char* text;
  const char* code;
};

constexpr RefusedRow k_refused[] = {
    {"mPa",  "ambiguous-unit"}, {"Mm",   "ambiguous-unit"}, {"M",     "ambiguous-unit"}, {"k",    "ambiguous-unit"},
    {"S",    "ambiguous-unit"}, {"mN",   "ambiguous-unit"}, {"J",     "wrong-kind"},     {"kJ",   "wrong-kind"},
    {"Wh",   "wrong-kind"},     {"kWh",  "wrong-kind"},     {"joule", "wrong-kind"},     {"cal",  "wrong-kind"},
    {"kg",   "wrong-kind"},     {"lb",   "wrong-kind"},     {"lbs",   "wrong-kind"},     {"oz",   "wrong-kind"},
    {"g",    "wrong-kind"},     {"",     "unknown-unit"},   {"foo",   "unknown-unit"},   {"N/mm", "unknown-unit"},
    {"mils", "unknown-unit"},   {"nmm2", "unknown-unit"},   {"N/m/m", "unknown-unit"},   {"°X",   "unknown-unit"},
};
// clang-format on

} // namespace

TEST(UnitSpelling, IsRead) {
  for (const Row& row : k_read) {
    const auto spelling = read_unit(row.text);
    EXPECT_EQ(spelling ? spelling->unit->name : "refused", row.unit) << row.text;
  }
}

TEST(UnitSpelling, HasTheKindOfItsUnit) {
  for (const Row& row : k_read) {
    const auto spelling = read_unit(row.text);
    EXPECT_TRUE(spelling && spelling->unit->kind == row.kind) << row.text;
  }
}

TEST(UnitSpelling, OutsideATorqueIsNeverAMassAsForce) {
  for (const Row& row : k_read) {
    const auto spelling = read_unit(row.text);
    EXPECT_TRUE(spelling && !spelling->mass_as_force) << row.text;
  }
}

TEST(UnitSpelling, IsRefusedWithItsReason) {
  for (const RefusedRow& row : k_refused)
    EXPECT_EQ(problem_of(read_unit(row.text)).code, row.code) << row.text;
}

TEST(UnitSpelling, ThatIsRefusedComesWithAHint) {
  for (const RefusedRow& row : k_refused)
    EXPECT_FALSE(problem_of(read_unit(row.text)).hint.empty()) << row.text;
}

TEST(UnitSpelling, OfEveryUnitNameReadsAsThatUnit) {
  for (const Unit& unit : all_units()) {
    const auto spelling = read_unit(unit.name);
    EXPECT_TRUE(spelling && spelling->unit == &unit) << unit.name;
  }
}

TEST(UnitSpelling, OfEverySymbolReadsAsThatUnit) {
  for (const Unit& unit : all_units()) {
    const auto spelling = read_unit(unit.symbol);
    EXPECT_TRUE(spelling && spelling->unit == &unit) << unit.symbol;
  }
}

TEST(UnitNames, BeginWithTheUnitOfTheOutput) {
  EXPECT_EQ(unit_names(Kind::torque), "N.m N.cm N.mm mN.m dN.m daN.m kN.m kgf.m kgf.cm gf.cm lbf.ft lbf.in ozf.in");
}

TEST(ExampleOfAKind, ReadsAsThatKind) {
  for (const Kind kind :
       {Kind::torque, Kind::force, Kind::stress, Kind::length, Kind::angle, Kind::temperature, Kind::time, Kind::speed})
    EXPECT_TRUE(read_quantity(example_of(kind), kind)) << kind_name(kind);
}

} // namespace clampwright::quantity
