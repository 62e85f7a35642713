// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/strengths.hpp"

#include <algorithm>
#include <optional>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/threads.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using strength::LoadBasis;
using strength::Strength;
using test::problem_of;
using testing::AllOf;
using testing::HasSubstr;

Result<Strength> strength_for(std::string_view class_name, std::string_view thread) {
  const Catalogue catalogue;
  return find_strength(catalogue, class_name, find_thread(catalogue, thread)->thread);
}

double megapascals(const std::optional<quantity::Stress>& stress) {
  return stress ? quantity::in_megapascals(*stress) : 0.0;
}

double newtons(const std::optional<quantity::Force>& force) { return force ? quantity::in_newtons(*force) : 0.0; }

struct StressRow {
  const char* name;
  const char* thread;
  double proof;
  double yield;
  const char* kind;
  double tensile;
};

struct LoadRow {
  const char* name;
  const char* thread;
  double proof;
  double tensile;
};

struct AreaRow {
  const char* name;
  const char* thread;
  double proof_N;
  double tolerance_N;
};

struct NameRow {
  const char* text;
  const char* name;
};

struct MemoryRow {
  const char* name;
  bool from_memory;
};

struct RefusedRow {
  const char* name;
  const char* thread;
  const char* code;
  const char* hint; // part of it
};

// clang-format off
// ISO 898-1:2013, Table 3 (seen second-hand), MPa.
constexpr StressRow k_metric[] = {
    {"4.6",  "M10",    225, 240,  "ReL",   400},
    {"4.8",  "M10",    310, 340,  "Rpf",   420},
    {"5.6",  "M10",    280, 300,  "ReL",   500},
    {"5.8",  "M10",    380, 420,  "Rpf",   520},
    {"6.8",  "M10",    440, 480,  "Rpf",   600},
    {"8.8",  "M10",    580, 640,  "Rp0.2", 800},
    {"8.8",  "M16",    580, 640,  "Rp0.2", 800},
    {"8.8",  "M16x1.5", 580, 640, "Rp0.2", 800},
    {"8.8",  "M18",    600, 660,  "Rp0.2", 830},
    {"8.8",  "M39",    600, 660,  "Rp0.2", 830},
    {"9.8",  "M10",    650, 720,  "Rp0.2", 900},
    {"9.8",  "M16",    650, 720,  "Rp0.2", 900},
    {"10.9", "M10",    830, 940,  "Rp0.2", 1040},
    {"12.9", "M10",    970, 1100, "Rp0.2", 1220},
    {"12.9", "M1.6",   970, 1100, "Rp0.2", 1220},
};

// SAE J429, Table 1, in psi: proof, yield, tensile. Seen second-hand; grades 4, 7 and 8.1 from memory. ASTM A574 in psi
// as well (seen second-hand, printed in ksi).
constexpr StressRow k_inch[] = {
    {"SAE 1",     "3/8-24",   33000,  36000,  "", 60000},
    {"SAE 2",     "3/4-10",   55000,  57000,  "", 74000},
    {"SAE 2",     "7/8-9",    33000,  36000,  "", 60000},
    {"SAE 4",     "3/8-24",   65000,  100000, "", 115000},
    {"SAE 5",     "1/4-20",   85000,  92000,  "", 120000},
    {"SAE 5",     "1-8",      85000,  92000,  "", 120000},
    {"SAE 5",     "1 1/8-7",  74000,  81000,  "", 105000},
    {"SAE 5",     "1 1/2-6",  74000,  81000,  "", 105000},
    {"SAE 5.1",   "#4-40",    85000,  92000,  "", 120000},
    {"SAE 5.2",   "1-8",      85000,  92000,  "", 120000},
    {"SAE 7",     "3/8-24",   105000, 115000, "", 133000},
    {"SAE 8",     "1/4-20",   120000, 130000, "", 150000},
    {"SAE 8",     "1 1/2-6",  120000, 130000, "", 150000},
    {"SAE 8.1",   "3/8-24",   120000, 130000, "", 150000},
    {"SAE 8.2",   "3/8-24",   120000, 130000, "", 150000},
    {"ASTM A574", "#0-80",    140000, 153000, "", 180000},
    {"ASTM A574", "1/2-13",   140000, 153000, "", 180000},
    {"ASTM A574", "9/16-12",  135000, 153000, "", 170000},
};

// ISO 898-1:2013, Tables 4 and 5 (seen second-hand), N.
constexpr LoadRow k_printed[] = {
    {"8.8",  "M16", 91000,  125000}, // not stress times area: 91060, 125600
    {"8.8",  "M18", 115000, 159000},
    {"10.9", "M16", 130000, 163000}, // 130310, 163280
    {"12.9", "M18", 186000, 234000},
    {"4.6",  "M16", 35300,  62800},
    {"9.8",  "M16", 102000, 141000},
};

// Stress times area, by hand. M10x0.75: As = pi/4 (10 - 0.938194 x 0.75)^2 = 67.9 mm2, not printed; x 580 = 39380.
// 3/8-24: As = 0.0878 in2 (Shigley, 9th edition, Table 8-2, seen second-hand); x 85000 = 7463 lbf = 33197 N, the table
// rounded to half a unit of 878. 1 1/8-7: 0.763 in2 x 74000 = 56462 lbf = 251156 N, half a unit of 763.
// 1/2-20: 0.1599 in2 x 140000 = 22386 lbf = 99578 N, half a unit of 1599.
constexpr AreaRow k_by_area[] = {
    {"8.8",       "M10x0.75", 39380,  40},
    {"SAE 5",     "3/8-24",   33197,  25},
    {"SAE 5",     "1 1/8-7",  251156, 190},
    {"ASTM A574", "1/2-20",   99578,  50},
};

constexpr NameRow k_metric_names[] = {
    {"8.8", "8.8"}, {" 8.8 ", "8.8"}, {"class 8.8", "8.8"}, {"Class 10.9", "10.9"},
    {"A2-70", "A2-70"}, {"A2 70", "A2-70"}, {"a2-70", "A2-70"}, {"A270", "A2-70"}, {"a4_80", "A4-80"},
};

constexpr NameRow k_inch_names[] = {
    {"SAE 5", "SAE 5"}, {"sae5", "SAE 5"}, {"SAE-5", "SAE 5"}, {"Grade 5", "SAE 5"}, {"grade5", "SAE 5"},
    {"Gr.5", "SAE 5"}, {"gr. 5", "SAE 5"}, {"SAE grade 5", "SAE 5"}, {"SAE J429 Grade 5", "SAE 5"},
    {"SAE J429 8.2", "SAE 8.2"}, {"ASTM A574", "ASTM A574"}, {"astm a574", "ASTM A574"}, {"A574", "ASTM A574"},
};

// Which rows are from memory: SAE J429 grades 4, 7 and 8.1, by reference/strength/sae_j429_grades.csv.
constexpr MemoryRow k_sae[] = {
    {"SAE 1",   false}, {"SAE 2",   false}, {"SAE 4",   true}, {"SAE 5",   false}, {"SAE 5.1", false},
    {"SAE 5.2", false}, {"SAE 7",   true},  {"SAE 8",   false}, {"SAE 8.1", true}, {"SAE 8.2", false},
};

constexpr RefusedRow k_refused[] = {
    {"9.8",       "M18",     "no-such-class", "metric threads from 1.6 to 16 mm"},
    {"9.8",       "M39",     "no-such-class", "--class unknown"},
    {"8.8",       "M42",     "no-such-class", "over 16 to 39 mm"},
    {"12.9",      "M1.4",    "no-such-class", "from 1.6 to 39 mm"},
    {"SAE 5",     "M10",     "no-such-class", "unified threads"},
    {"8.8",       "3/8-24",  "no-such-class", "metric threads"},
    {"8.8",       "5/16 BSW", "no-such-class", "metric threads"},
    {"SAE 5",     "5/16 BSW", "no-such-class", "unified threads"},
    {"8.8",       "2 BA",    "no-such-class", "metric threads"},
    {"SAE 5",     "#10-32",  "no-such-class", "from 0.25 to 1 in"},
    {"SAE 5.2",   "1 1/8-7", "no-such-class", "from 0.25 to 1 in"},
    {"A2-70",     "M30",     "no-such-class", "to 24 mm"},
    {"8.9",       "M10",     "no-such-name",  "did you mean"},
    {"SAE 55",    "M10",     "no-such-name",  "SAE 5"},
    {"",          "M10",     "no-such-name",  "8.8"},
    {"dog",       "M10",     "no-such-name",  "unknown"},
    {"8.8'; --",  "M10",     "no-such-name",  "8.8"},
};
// clang-format on

constexpr double k_psi_in_MPa = 4.4482216152605 / (0.0254 * 0.0254) / 1e6; // 0.45359237 kg, 9.80665 m/s2, 25.4 mm

TEST(Strength, HasTheMetricStressesOfTheStandard) {
  for (const StressRow& row : k_metric) {
    const auto found = strength_for(row.name, row.thread);
    ASSERT_TRUE(found.has_value()) << row.name << ' ' << row.thread << ": " << found.error().message;
    EXPECT_NEAR(megapascals(found->proof_stress), row.proof, 1e-9) << row.name << ' ' << row.thread;
    EXPECT_NEAR(megapascals(found->yield), row.yield, 1e-9) << row.name << ' ' << row.thread;
    EXPECT_NEAR(megapascals(found->tensile), row.tensile, 1e-9) << row.name << ' ' << row.thread;
    EXPECT_EQ(found->yield_kind, row.kind) << row.name << ' ' << row.thread;
  }
}

TEST(Strength, HasTheInchStressesOfTheStandard) {
  for (const StressRow& row : k_inch) {
    const auto found = strength_for(row.name, row.thread);
    ASSERT_TRUE(found.has_value()) << row.name << ' ' << row.thread << ": " << found.error().message;
    EXPECT_NEAR(megapascals(found->proof_stress), row.proof * k_psi_in_MPa, 1e-6) << row.name << ' ' << row.thread;
    EXPECT_NEAR(megapascals(found->yield), row.yield * k_psi_in_MPa, 1e-6) << row.name << ' ' << row.thread;
    EXPECT_NEAR(megapascals(found->tensile), row.tensile * k_psi_in_MPa, 1e-6) << row.name << ' ' << row.thread;
  }
}

TEST(Strength, BearsTheLoadThatIsPrinted) {
  for (const LoadRow& row : k_printed) {
    const auto found = strength_for(row.name, row.thread);
    ASSERT_TRUE(found.has_value());
    EXPECT_NEAR(newtons(found->proof_load), row.proof, 1e-6) << row.name << ' ' << row.thread;
    EXPECT_NEAR(newtons(found->tensile_load), row.tensile, 1e-6) << row.name << ' ' << row.thread;
    EXPECT_EQ(found->proof_load_basis, LoadBasis::table) << row.name << ' ' << row.thread;
  }
}

TEST(Strength, BearsStressTimesAreaWhereNothingIsPrinted) {
  for (const AreaRow& row : k_by_area) {
    const auto found = strength_for(row.name, row.thread);
    ASSERT_TRUE(found.has_value());
    EXPECT_NEAR(newtons(found->proof_load), row.proof_N, row.tolerance_N) << row.name << ' ' << row.thread;
    EXPECT_EQ(found->proof_load_basis, LoadBasis::stress_area) << row.name << ' ' << row.thread;
  }
}

// ISO 3506-1, Table 2: Rp0.2 450, Rm 700 MPa for class 70 (seen second-hand); the standard knows no proof stress.
TEST(Strength, HasNoProofIfStainless) {
  const auto found = strength_for("A2-70", "M8");
  ASSERT_TRUE(found.has_value());
  EXPECT_FALSE(found->proof_stress.has_value());
  EXPECT_FALSE(found->proof_load.has_value());
  EXPECT_FALSE(found->proof_load_basis.has_value());
  EXPECT_NEAR(megapascals(found->yield), 450, 1e-9);
  EXPECT_NEAR(megapascals(found->tensile), 700, 1e-9);
}

TEST(Strength, IsNothingIfUnknown) {
  for (const char* name : {"unknown", "Unknown", "not known"}) {
    const auto found = strength_for(name, "M10");
    ASSERT_TRUE(found.has_value()) << name;
    EXPECT_EQ(found->class_name, "unknown");
    EXPECT_FALSE(found->proof_stress || found->yield || found->tensile) << name;
    EXPECT_FALSE(found->proof_load || found->yield_load || found->tensile_load) << name;
  }
}

TEST(Strength, IsUnknownOnEveryForm) {
  for (const char* thread : {"M9", "1/4-20", "5/16 BSW", "2 BA", "1/4 BSC"})
    EXPECT_TRUE(strength_for("unknown", thread).has_value()) << thread;
}

TEST(Strength, IsFoundBySpellingsOfMetricNames) {
  for (const NameRow& row : k_metric_names) {
    const auto found = strength_for(row.text, "M10");
    ASSERT_TRUE(found.has_value()) << row.text << ": " << found.error().hint;
    EXPECT_EQ(found->class_name, row.name) << row.text;
  }
}

TEST(Strength, IsFoundBySpellingsOfInchNames) {
  for (const NameRow& row : k_inch_names) {
    const auto found = strength_for(row.text, "3/8-24");
    ASSERT_TRUE(found.has_value()) << row.text << ": " << found.error().hint;
    EXPECT_EQ(found->class_name, row.name) << row.text;
  }
}

TEST(Strength, SaysWhichSaeGradesAreFromMemory) {
  for (const MemoryRow& row : k_sae) {
    const auto found = strength_for(row.name, "3/8-24");
    ASSERT_TRUE(found.has_value()) << row.name;
    EXPECT_EQ(found->from_memory, row.from_memory) << row.name;
  }
}

TEST(Strength, NamesWhereItsStressesAndLoadsAreFrom) {
  const auto found = strength_for("8.8", "M16");
  ASSERT_EQ(found->sources.size(), 3U);
  for (const Source& source : found->sources)
    EXPECT_THAT(source.title, HasSubstr("ISO 898-1"));
  EXPECT_EQ(found->sources[0].where, "Table 3");
}

// ISO 898-1:2013, Tables 6 and 7 (fine pitch): every load of the collection is from memory.
TEST(Strength, SaysThatPrintedFinePitchLoadsAreFromMemory) {
  const auto found = strength_for("8.8", "M8x1");
  ASSERT_EQ(found->sources.size(), 3U);
  EXPECT_EQ(found->sources[0].known, Known::second_hand);
  EXPECT_EQ(found->sources[1].known, Known::memory);
}

TEST(Strength, IsRefusedWithWhatTheClassIsFor) {
  for (const RefusedRow& row : k_refused) {
    const Problem problem = problem_of(strength_for(row.name, row.thread));
    EXPECT_EQ(problem.code, row.code) << row.name << ' ' << row.thread;
    EXPECT_EQ(problem.trouble, Trouble::no_such) << row.name << ' ' << row.thread;
    EXPECT_THAT(problem.hint, HasSubstr(row.hint)) << row.name << ' ' << row.thread;
  }
}

TEST(Strength, IsRefusedWithClassAndThread) {
  EXPECT_THAT(problem_of(strength_for("9.8", "M18")).message, AllOf(HasSubstr("9.8"), HasSubstr("M18")));
}

TEST(Classes, ComeInTheOrderOfTheStandards) {
  const auto names = class_names(Catalogue());
  const auto place = [&](const char* name) {
    return std::distance(names.begin(), std::find(names.begin(), names.end(), name));
  };
  EXPECT_EQ(place("3.6"), 0);
  EXPECT_EQ(place("4.6"), 1);
  EXPECT_LT(place("8.8"), place("10.9"));
  EXPECT_LT(place("12.9"), place("SAE 1"));
  EXPECT_LT(place("SAE 8.2"), place("ASTM A574"));
  EXPECT_LT(place("ASTM A574"), place("A2-70"));
  EXPECT_LT(place("D8-80"), place("125 ksi"));
}

} // namespace
} // namespace clampwright::specdb
