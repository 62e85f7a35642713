// SPDX-License-Identifier: GPL-3.0-or-later
//
// The spellings are those of the contract, section 1 ("Spellings read"): a promise of the project, not a published
// table.
#include "core/quantity/read.hpp"
#include "core/quantity/spelling.hpp"
#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

#include <string>

namespace clampwright::quantity {
namespace {

using test::problem_of;
using test::understood;

struct Row {
  const char* text;
  const char* unit;
};

std::string unit_of(const char* text) { return understood(read_quantity(std::string("24") + text)); }

bool is_mass_as_force(const char* text) {
  const auto reading = read_quantity(std::string("24 ") + text);
  return reading && reading->mass_as_force;
}

// clang-format off
constexpr Row k_names[] = {
    {"N.m",    "N.m"},    {"N.cm",   "N.cm"},   {"N.mm",   "N.mm"},   {"mN.m",   "mN.m"},
    {"dN.m",   "dN.m"},   {"daN.m",  "daN.m"},  {"kN.m",   "kN.m"},   {"kgf.m",  "kgf.m"},
    {"kgf.cm", "kgf.cm"}, {"gf.cm",  "gf.cm"},  {"lbf.ft", "lbf.ft"}, {"lbf.in", "lbf.in"},
    {"ozf.in", "ozf.in"},
};

// Old sheets and shop talk in which a mass stands for a force.
constexpr Row k_mass_spellings[] = {
    {"mkg",         "kgf.m"},  {"kgm",         "kgf.m"},  {"kg.m",          "kgf.m"},  {"kg/m",   "kgf.m"},
    {"kg.cm",       "kgf.cm"}, {"cm.kg",       "kgf.cm"}, {"ft-lb",         "lbf.ft"}, {"ft-lbs", "lbf.ft"},
    {"ftlb",        "lbf.ft"}, {"lb-ft",       "lbf.ft"}, {"in-lb",         "lbf.in"}, {"in-lbs", "lbf.in"},
    {"inlb",        "lbf.in"}, {"inlbs",       "lbf.in"}, {"foot-pounds",   "lbf.ft"}, {"oz-in",  "ozf.in"},
    {"inch-pounds", "lbf.in"}, {"foot pounds", "lbf.ft"}, {"pound-feet",    "lbf.ft"}, {"in-oz",  "ozf.in"},
    {"lbs.ft",      "lbf.ft"}, {"kgcm",        "kgf.cm"}, {"pound-inches",  "lbf.in"}, {"g.cm",   "gf.cm"},
};

// Old spellings that name a force: the pond was one.
constexpr Row k_force_spellings[] = {
    {"mkp",   "kgf.m"},  {"kpm",    "kgf.m"},  {"kp.m",   "kgf.m"},  {"m.daN",  "daN.m"}, {"mdaN", "daN.m"},
    {"m.kgf", "kgf.m"},  {"ft-lbf", "lbf.ft"}, {"in-lbf", "lbf.in"}, {"ozf-in", "ozf.in"},
    {"cmkgf", "kgf.cm"}, {"in.ozf", "ozf.in"}, {"m.N",    "N.m"},    {"m.kN",   "kN.m"},
};

// The same unit with each joint, in either order.
constexpr Row k_joints[] = {
    {"N.m",    "N.m"},    {"N·m",    "N.m"},    {"N*m",    "N.m"},    {"N-m",    "N.m"},    {"N m",    "N.m"},
    {"Nm",     "N.m"},    {"m.N",    "N.m"},    {"m·N",    "N.m"},    {"m*N",    "N.m"},    {"m-N",    "N.m"},
    {"m N",    "N.m"},    {"N · m",  "N.m"},    {"N . m",  "N.m"},    {"N ⋅ m",  "N.m"},
    {"lbf.ft", "lbf.ft"}, {"lbf·ft", "lbf.ft"}, {"lbf*ft", "lbf.ft"}, {"lbf-ft", "lbf.ft"}, {"lbf ft", "lbf.ft"},
    {"lbfft",  "lbf.ft"}, {"ft.lbf", "lbf.ft"}, {"ft·lbf", "lbf.ft"}, {"ft*lbf", "lbf.ft"}, {"ft-lbf", "lbf.ft"},
    {"ft lbf", "lbf.ft"}, {"ftlbf",  "lbf.ft"}, {"kgf m",  "kgf.m"},  {"kgfcm",  "kgf.cm"}, {"Ncm",    "N.cm"},
};

// Case that nobody can take for a prefix.
constexpr Row k_cases[] = {
    {"nm",     "N.m"},    {"NM",     "N.m"},    {"nM",     "N.m"},    {"n.m",    "N.m"},    {"knm",    "kN.m"},
    {"KNM",    "kN.m"},   {"KN.m",   "kN.m"},   {"ncm",    "N.cm"},   {"NMM",    "N.mm"},   {"DaNm",   "daN.m"},
    {"DANM",   "daN.m"},  {"KGF.M",  "kgf.m"},  {"LBF.FT", "lbf.ft"}, {"Lbf.In", "lbf.in"}, {"FT-LB",  "lbf.ft"},
    {"Ft-Lbs", "lbf.ft"}, {"IN-LB",  "lbf.in"}, {"OZ-IN",  "ozf.in"}, {"MKG",    "kgf.m"},  {"MKP",    "kgf.m"},
    {"KGM",    "kgf.m"},  {"Kg/m",   "kgf.m"},  {"CM.KG",  "kgf.cm"}, {"M.DAN",  "daN.m"},
};

// A capital or small m that may be the prefix mega or milli.
constexpr Row k_doubtful[] = {
    {"MN.m", "ambiguous-unit"}, {"MNm",  "ambiguous-unit"}, {"MN m",  "ambiguous-unit"}, {"MN·m", "ambiguous-unit"},
    {"MN.M", "ambiguous-unit"}, {"MNM",  "ambiguous-unit"}, {"m.MN",  "ambiguous-unit"}, {"mMN",  "ambiguous-unit"},
    {"mN",   "ambiguous-unit"}, {"MN",   "ambiguous-unit"}, {"mn",    "ambiguous-unit"}, {"Mn",   "ambiguous-unit"},
};
// clang-format on

} // namespace

TEST(TorqueSpelling, OfTheOutputIsRead) {
  for (const Row& row : k_names)
    EXPECT_EQ(unit_of(row.text), row.unit) << row.text;
}

TEST(TorqueSpelling, OfTheOutputNamesAForce) {
  for (const Row& row : k_names)
    EXPECT_FALSE(is_mass_as_force(row.text)) << row.text;
}

TEST(TorqueSpelling, WithAMassMeansTheForceOfThatMass) {
  for (const Row& row : k_mass_spellings)
    EXPECT_EQ(unit_of(row.text), row.unit) << row.text;
}

TEST(TorqueSpelling, WithAMassSaysSo) {
  for (const Row& row : k_mass_spellings)
    EXPECT_TRUE(is_mass_as_force(row.text)) << row.text;
}

TEST(TorqueSpelling, OfOldForceUnitsIsRead) {
  for (const Row& row : k_force_spellings)
    EXPECT_EQ(unit_of(row.text), row.unit) << row.text;
}

TEST(TorqueSpelling, OfOldForceUnitsIsNoMass) {
  for (const Row& row : k_force_spellings)
    EXPECT_FALSE(is_mass_as_force(row.text)) << row.text;
}

TEST(TorqueSpelling, TakesAnyJointAndEitherOrder) {
  for (const Row& row : k_joints)
    EXPECT_EQ(unit_of(row.text), row.unit) << row.text;
}

TEST(TorqueSpelling, IsFreeInCaseWhereNothingIsConfused) {
  for (const Row& row : k_cases)
    EXPECT_EQ(unit_of(row.text), row.unit) << row.text;
}

TEST(TorqueSpelling, IsRefusedWhereAPrefixMayBeMeant) {
  for (const Row& row : k_doubtful)
    EXPECT_EQ(problem_of(read_quantity(std::string("24 ") + row.text)).code, row.unit) << row.text;
}

// "Mn.m" has the capital of mega, as "MN.m" has; milli is a thousand million times less.
TEST(TorqueSpelling, NeverReadsACapitalMAsMilli) {
  for (const char* text : {"24 Mn.m", "24 Mnm", "24 Mn m", "24 MN.m"}) {
    const auto reading = read_quantity(text);
    EXPECT_FALSE(reading && reading->unit->name == "mN.m") << text;
  }
}

TEST(TorqueSpelling, InSmallLettersIsNeverANanometre) {
  const auto reading = read_quantity("24nm");
  ASSERT_TRUE(reading);
  EXPECT_EQ(reading->unit->kind, Kind::torque);
}

TEST(TorqueSpelling, OfMetreDecanewtonIsNotMetreKilogram) {
  EXPECT_NE(read_unit("m.daN")->unit, read_unit("mkg")->unit);
}

TEST(TorqueSpelling, WithTwoJointsInARowIsUnknown) {
  for (const char* text : {"N..m", "N.-m", "N--m", "N·.m", "ft--lb"})
    EXPECT_FALSE(read_unit(text)) << text;
}

TEST(TorqueSpelling, ThatEndsInAJointIsUnknown) {
  for (const char* text : {"N.m.", "N.m-", "Nm*", "lbf·ft·"})
    EXPECT_FALSE(read_unit(text)) << text;
}

TEST(TorqueSpelling, OfAProductThatIsNoUnitHereIsUnknown) {
  for (const char* text : {"N.ft", "kgf.mm", "lbf.m", "ozf.ft", "kN.mm", "N.m.m", "N.N", "m.m", "kg.ft"})
    EXPECT_EQ(problem_of(read_unit(text)).code, "unknown-unit") << text;
}

} // namespace clampwright::quantity
