// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a class says beyond its stresses: the leading zero, the hardness it may reach, stainless steel.
#include <algorithm>
#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/threads.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using strength::LoadBasis;
using test::problem_of;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

Result<strength::Strength> strength_for(std::string_view class_name, std::string_view thread) {
  const Catalogue catalogue;
  return find_strength(catalogue, class_name, find_thread(catalogue, thread)->thread);
}

struct HardnessRow {
  const char* name;
  const char* thread;
  double hv;
};

// clang-format off
// ISO 898-1:2013, table 3 (second-hand). SAE J429 and ASTM A574 print Rockwell: C39 is 382 HV, C40 392, C45 446, C34
// 336, C30 302, B100 240 by ASTM E140 (from memory).
constexpr HardnessRow k_hardness[] = {
    {"4.6",       "M10",     220},
    {"6.8",       "M10",     250},
    {"8.8",       "M16",     320},
    {"8.8",       "M18",     335},
    {"9.8",       "M10",     360},
    {"10.9",      "M10",     380},
    {"12.9",      "M10",     435},
    {"08.8",      "M10",     320},
    {"012.9",     "M10",     435},
    {"SAE 2",     "3/8-24",  240},
    {"SAE 5",     "3/8-24",  336},
    {"SAE 5",     "1 1/8-7", 302},
    {"SAE 5.1",   "3/8-24",  392},
    {"SAE 8",     "3/8-24",  382},
    {"ASTM A574", "3/8-24",  446},
};
// clang-format on

TEST(LeadingZero, IsAClassBehindItsFullClass) {
  const auto names = class_names(Catalogue());
  const auto place = [&](const char* name) { return std::ranges::find(names, name) - names.begin(); };
  EXPECT_EQ(place("08.8"), place("8.8") + 1);
  EXPECT_EQ(place("010.9"), place("10.9") + 1);
  EXPECT_EQ(place("012.9"), place("12.9") + 1);
  EXPECT_THAT(names, Not(Contains("04.6")));
}

// ISO 898-1:2013, table 3, 10.9 (second-hand).
TEST(LeadingZero, KeepsTheStresses) {
  const auto found = strength_for("010.9", "M10");
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(found->class_name, "010.9");
  EXPECT_NEAR(quantity::in_megapascals(*found->proof_stress), 830, 1e-9);
  EXPECT_NEAR(quantity::in_megapascals(*found->yield), 940, 1e-9);
  EXPECT_NEAR(quantity::in_megapascals(*found->tensile), 1040, 1e-9);
}

// M10 10.9: proof load 48 100 N (ISO 898-1, table 5, second-hand), 0.8 of it by hand; ultimate load of 010.9 48 200 N
// (ISO 10642, from memory).
TEST(LeadingZero, BearsFourFifthsOfTheLoads) {
  const auto found = strength_for("010.9", "M10");
  EXPECT_DOUBLE_EQ(found->loadability, 0.8);
  EXPECT_NEAR(quantity::in_newtons(*found->proof_load), 38480, 1e-6);
  EXPECT_NEAR(quantity::in_newtons(*found->tensile_load), 48200, 1e-6);
  EXPECT_EQ(found->proof_load_basis, LoadBasis::table);
}

TEST(LeadingZero, IsNotOnAFullClass) { EXPECT_DOUBLE_EQ(strength_for("10.9", "M10")->loadability, 1.0); }

// The ultimate load of the full class is not used, so it is not named either.
TEST(LeadingZero, NamesTheShareAsFromMemory) {
  const auto found = strength_for("010.9", "M10");
  std::vector<std::string> places;
  for (const Source& source : found->sources)
    places.push_back(source.where);
  EXPECT_THAT(places, ElementsAre("Table 3", "Tables 4 and 5",
                                  "0.8 of the loads of the full class; for the proof load an estimate",
                                  "minimum ultimate tensile loads"));
  EXPECT_EQ(found->sources[2].known, Known::memory);
}

TEST(LeadingZero, IsReadLikeAnyClass) {
  for (const char* text : {"08.8", " 08.8 ", "class 08.8", "Class 08.8"})
    EXPECT_EQ(strength_for(text, "M8")->class_name, "08.8") << text;
}

TEST(LeadingZero, IsRefusedWhereTheFullClassIs) {
  const Problem problem = problem_of(strength_for("08.8", "M42"));
  EXPECT_EQ(problem.code, "no-such-class");
  EXPECT_THAT(problem.message, HasSubstr("08.8"));
  EXPECT_THAT(problem.hint, HasSubstr("over 16 to 39 mm"));
}

TEST(LeadingZero, IsNotPutBeforeEveryClass) {
  for (const char* text : {"04.6", "09.8", "008.8", "0A2-70", "0 SAE 5"})
    EXPECT_EQ(problem_of(strength_for(text, "M10")).code, "no-such-name") << text;
}

TEST(Hardness, IsTheHighestThatAClassMayReach) {
  for (const HardnessRow& row : k_hardness)
    EXPECT_EQ(strength_for(row.name, row.thread)->hardest_HV, row.hv) << row.name << ' ' << row.thread;
}

TEST(Hardness, IsNotKnownOfStainlessOrUnknownBolts) {
  EXPECT_FALSE(strength_for("A2-70", "M10")->hardest_HV);
  EXPECT_FALSE(strength_for("unknown", "M10")->hardest_HV);
}

TEST(Stainless, IsWhatIso3506Names) {
  for (const char* name : {"A2-70", "A4-80", "C1-50", "F1-45", "D4-70"})
    EXPECT_TRUE(strength_for(name, "M10")->stainless) << name;
  for (const char* name : {"8.8", "012.9", "unknown"})
    EXPECT_FALSE(strength_for(name, "M10")->stainless) << name;
  EXPECT_FALSE(strength_for("SAE 8", "3/8-24")->stainless);
}

} // namespace
} // namespace clampwright::specdb
