// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/nut_strengths.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/nuts.hpp"
#include "specdb/catalogue/threads.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using strength::LoadBasis;
using test::problem_of;
using testing::HasSubstr;

strength::NutStrength nut(std::string_view nut_class, std::string_view thread) {
  const Catalogue catalogue;
  return find_nut_strength(catalogue, nut_class, find_thread(catalogue, thread)->thread).value();
}

struct Row {
  const char* nut;
  const char* thread;
  const char* style;
  double load_N;
  double within; // share of the load
  LoadBasis basis;
  bool thin;
  bool from_memory;
};

// clang-format off
constexpr Row k_rows[] = {
    // ISO 898-2:2012 table 4, second-hand; class 9 from memory.
    {"8",      "M8",          "1",     31800,  0,      LoadBasis::table,       false, false},
    {"8",      "M10",         "1",     50500,  0,      LoadBasis::table,       false, false},
    {"10",     "M12",         "1",     88500,  0,      LoadBasis::table,       false, false},
    {"9",      "M10",         "2",     54500,  0,      LoadBasis::table,       false, true},
    {"04",     "M8",          "thin",  13900,  0,      LoadBasis::table,       true,  false},
    {"05",     "M36",         "thin",  408500, 0,      LoadBasis::table,       true,  true},
    // Two styles, 225400 and 218100 N: the mark does not tell which.
    {"8",      "M20",         "2",     218100, 0,      LoadBasis::table,       false, false},
    // ISO 10684:2004 annex A, second-hand.
    {"8Z",     "M10",         "1",     42200,  0,      LoadBasis::table,       false, false},
    {"10x",    "M8",          "1",     30600,  0,      LoadBasis::table,       false, false},
    // DIN 267-4, second-hand: the nut of 0.8 d.
    {"DIN 8",  "M10",         "0.8 d", 46000,  0,      LoadBasis::table,       false, false},
    // ISO 898-6:1994: 890 MPa (style 2, memory) × 61.2 mm², 380 MPa (read) × 39.2 mm².
    {"8",      "M10x1.25",    "2",     54468,  0.001,  LoadBasis::stress_area, false, true},
    {"04",     "M8x1",        "thin",  14896,  0.001,  LoadBasis::stress_area, true,  false},
    // ISO 3506: 700 MPa × 36.6 mm².
    {"A2-70",  "M8",          "1",     25620,  0.001,  LoadBasis::stress_area, false, false},
    // SAE J995: 120 ksi × 0.0318 in² = 3816 lbf; fine 109 ksi (memory) × 0.0364 in² = 3968 lbf.
    {"SAE 5",  "1/4-20 UNC",  "1",     16974,  0.003,  LoadBasis::stress_area, false, false},
    {"gr.5",   "1/4-28 UNF",  "1",     17649,  0.003,  LoadBasis::stress_area, false, true},
};
// clang-format on

TEST(NutStrength, IsThatOfItsStandard) {
  for (const Row& row : k_rows) {
    const auto found = nut(row.nut, row.thread);
    ASSERT_TRUE(found.proof_load.has_value()) << row.nut << ' ' << row.thread;
    EXPECT_NEAR(quantity::in_newtons(*found.proof_load), row.load_N, row.within * row.load_N + 1e-6)
        << row.nut << ' ' << row.thread;
    EXPECT_EQ(found.style, row.style) << row.nut << ' ' << row.thread;
    EXPECT_EQ(found.basis, row.basis) << row.nut << ' ' << row.thread;
    EXPECT_EQ(found.thin, row.thin) << row.nut << ' ' << row.thread;
    EXPECT_EQ(found.from_memory, row.from_memory) << row.nut << ' ' << row.thread;
  }
}

TEST(NutStrength, NamesTheSourceOfLoadAndStress) {
  const auto found = nut("8", "M10");
  ASSERT_EQ(found.sources.size(), 2U);
  EXPECT_THAT(found.sources[0].title, HasSubstr("ISO 898-2"));
  EXPECT_EQ(found.sources[0].known, Known::computed);
  EXPECT_EQ(found.sources[1].known, Known::second_hand);
}

TEST(NutStrength, IsEmptyWhereTheClassHasNoFigure) {
  for (const auto& [nut_class, thread] :
       {std::pair{"8Z", "M12"}, {"8", "1/4-20 UNC"}, {"SAE 5", "M8"}, {"4", "M10"}, {"8", "M42"}, {"5Z", "M8x1"}}) {
    const auto found = nut(nut_class, thread);
    EXPECT_EQ(found.nut_class, nut_class);
    EXPECT_FALSE(found.proof_stress || found.proof_load || found.basis || found.from_memory) << nut_class;
    EXPECT_TRUE(found.sources.empty() && found.style.empty()) << nut_class;
  }
  EXPECT_TRUE(nut("04", "1/4-20 UNC").thin);
}

TEST(NutStrength, IsThereForEveryClassOfAPairing) {
  const Catalogue catalogue;
  const auto names = nut_strength_names(catalogue);
  for (const std::string& name : nut_class_names(catalogue))
    EXPECT_THAT(names, testing::Contains(name));
}

TEST(NutStrength, IsRefusedWithTheWholeList) {
  const Catalogue catalogue;
  const Problem problem = problem_of(find_nut_strength(catalogue, "wing", find_thread(catalogue, "M8")->thread));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  for (const char* name : {"04", "8Z", "SAE 8", "A2-70", "DIN 10"})
    EXPECT_THAT(problem.hint, HasSubstr(name));
}

} // namespace
} // namespace clampwright::specdb
