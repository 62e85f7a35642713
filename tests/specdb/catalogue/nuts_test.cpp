// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/nuts.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;

struct Row {
  const char* nut;
  const char* highest; // "" for a thin nut
  Known known;
};

struct NameRow {
  const char* text;
  const char* name;
};

// clang-format off
// ISO 898-2:2012, table 2: class 8 second-hand, the others from memory; SAE J995 as a dealer describes the practice.
constexpr Row k_nuts[] = {
    {"5",     "5.8",   Known::memory},
    {"6",     "6.8",   Known::memory},
    {"8",     "8.8",   Known::second_hand},
    {"9",     "9.8",   Known::memory},
    {"10",    "10.9",  Known::memory},
    {"12",    "12.9",  Known::memory},
    {"04",    "",      Known::memory},
    {"05",    "",      Known::memory},
    {"SAE 2", "SAE 2", Known::second_hand},
    {"SAE 5", "SAE 5", Known::second_hand},
    {"SAE 8", "SAE 8", Known::second_hand},
};

constexpr NameRow k_names[] = {
    {" 8 ", "8"}, {"class 10", "10"}, {"Class 04", "04"}, {"sae5", "SAE 5"}, {"Grade 8", "SAE 8"}, {"gr.2", "SAE 2"},
};
// clang-format on

TEST(NutPairing, NamesTheHighestBolt) {
  const Catalogue catalogue;
  for (const Row& row : k_nuts) {
    const auto found = find_nut_pairing(catalogue, row.nut);
    ASSERT_TRUE(found.has_value()) << row.nut;
    EXPECT_EQ(found->nut_class, row.nut);
    EXPECT_EQ(found->highest_bolt_class.value_or(""), row.highest) << row.nut;
    EXPECT_EQ(found->source.known, row.known) << row.nut;
  }
}

TEST(NutPairing, IsKnownForTheseClasses) {
  std::vector<std::string> names;
  for (const Row& row : k_nuts)
    names.emplace_back(row.nut);
  EXPECT_EQ(nut_class_names(Catalogue()), names);
}

TEST(NutPairing, HasNoBoltForAThinNut) {
  EXPECT_FALSE(find_nut_pairing(Catalogue(), "04")->highest_bolt_class.has_value());
}

TEST(NutPairing, TellsFourFromNought) {
  EXPECT_EQ(problem_of(find_nut_pairing(Catalogue(), "4")).trouble, Trouble::no_such);
}

TEST(NutPairing, IsFoundBySpellings) {
  for (const NameRow& row : k_names) {
    const auto found = find_nut_pairing(Catalogue(), row.text);
    ASSERT_TRUE(found.has_value()) << row.text;
    EXPECT_EQ(found->nut_class, row.name) << row.text;
  }
}

TEST(NutPairing, IsRefusedWithTheWholeList) {
  const Problem problem = problem_of(find_nut_pairing(Catalogue(), "wing"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  for (const Row& row : k_nuts)
    EXPECT_THAT(problem.hint, HasSubstr(row.nut));
}

} // namespace
} // namespace clampwright::specdb
