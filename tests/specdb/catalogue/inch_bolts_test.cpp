// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bolts for buildings and aircraft, and class 3.6 of old: what is known of each, and that a joint can be asked with it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/tightening/clamp.hpp"
#include "core/tightening/wanted.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/case_question.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using finding::Code;

strength::Strength strength_for(std::string_view name, std::string_view thread) {
  const Catalogue catalogue;
  return find_strength(catalogue, name, find_thread(catalogue, thread)->thread).value();
}

struct Row {
  const char* name;
  const char* thread;
  std::optional<double> proof_ksi;
  std::optional<double> yield_ksi;
  double tensile_ksi;
  bool from_memory;
};

// clang-format off
// ASTM and the scopes of NASM6812, NAS4002 and MIL-B-8831B, second-hand or from memory as marked; 0: not given.
constexpr Row k_rows[] = {
    {"ASTM A307",    "5/8-11", std::nullopt, std::nullopt, 60,  false},
    {"A325",         "3/4-10", 85,           92,           120, false},
    {"F3125 A490",   "3/4-10", 120,          130,          150, true},
    {"ASTM A449",    "1-8",    85,           92,           120, true},
    {"a449",         "1 1/8-7", 74,          81,           105, true},
    {"A354 BD",      "1/2-13", 120,          130,          150, true},
    {"125 ksi",      "1/4-28", std::nullopt, std::nullopt, 125, false},
    {"160ksi",       "3/8-24", std::nullopt, std::nullopt, 160, false},
    {"180 ksi",      "#10-32", std::nullopt, std::nullopt, 180, false},
};

struct LoadRow {
  const char* name;
  const char* thread;
  std::optional<double> proof_lbf;
  double tensile_lbf;
  bool proof_by_table;
};

constexpr LoadRow k_loads[] = {
    // Printed by ASTM A574 (second-hand).
    {"A574",    "3/8-16",   10800,        13900,  true},
    {"A574",    "1 1/8-7",  103000,       129000, true}, // 170 ksi x 0.763 in2 would be 129710
    // Not printed: 140 and 180 ksi x 0.0878 in2.
    {"A574",    "3/8-24",   12292,        15804,  false},
    // 85 and 120 ksi x 0.334 in2.
    {"A325",    "3/4-10",   28390,        40080,  false},
    // 60 ksi x 0.226 in2.
    {"A307",    "5/8-11",   std::nullopt, 13560,  false},
    // Rated strength of AN4 (memory); 160 ksi x 0.0364 in2.
    {"125 ksi", "1/4-28",   std::nullopt, 4080,   false},
    {"160 ksi", "1/4-28",   std::nullopt, 5824,   false},
};
// clang-format on

std::optional<double> ksi(const std::optional<quantity::Stress>& stress) {
  if (!stress) return std::nullopt;
  return std::round(quantity::in_megapascals(*stress) / 6.894757293168 * 1000) / 1000;
}

TEST(InchBolts, HaveTheStressesOfTheirSpecification) {
  for (const Row& row : k_rows) {
    const auto found = strength_for(row.name, row.thread);
    EXPECT_EQ(ksi(found.proof_stress), row.proof_ksi) << row.name;
    EXPECT_EQ(ksi(found.yield), row.yield_ksi) << row.name;
    EXPECT_EQ(ksi(found.tensile), row.tensile_ksi) << row.name;
    EXPECT_EQ(found.from_memory, row.from_memory) << row.name;
  }
}

TEST(InchBolts, BearPrintedLoadsOrStressTimesArea) {
  constexpr double k_newtons = 4.4482216152605;
  for (const LoadRow& row : k_loads) {
    const auto found = strength_for(row.name, row.thread);
    EXPECT_EQ(found.proof_load.has_value(), row.proof_lbf.has_value()) << row.name << ' ' << row.thread;
    // The areas of the tables are rounded to three figures: 0.25 %.
    if (row.proof_lbf) {
      EXPECT_NEAR(quantity::in_newtons(*found.proof_load) / k_newtons, *row.proof_lbf, 0.0025 * *row.proof_lbf)
          << row.name << ' ' << row.thread;
      EXPECT_EQ(found.proof_load_basis == strength::LoadBasis::table, row.proof_by_table) << row.thread;
    }
    EXPECT_NEAR(quantity::in_newtons(*found.tensile_load) / k_newtons, row.tensile_lbf, 0.0025 * row.tensile_lbf)
        << row.name << ' ' << row.thread;
  }
}

TEST(InchBolts, AreRefusedOutsideTheirSizes) {
  const Catalogue catalogue;
  for (const auto& [name, thread] :
       {std::pair{"A325", "3/8-16"}, {"A490", "1/4-20"}, {"A307", "#10-24"}, {"125 ksi", "#8-32"}, {"160 ksi", "M6"}})
    EXPECT_FALSE(find_strength(catalogue, name, find_thread(catalogue, thread)->thread).has_value()) << name;
}

// ISO 898-1:1999, table 3, second-hand: 180, 190 and 330 MPa. M10: 180 × 58.0 = 10440 N.
TEST(OldClass, ThreePointSixIsKnown) {
  const auto found = strength_for("3.6", "M10");
  EXPECT_NEAR(quantity::in_megapascals(*found.proof_stress), 180, 1e-9);
  EXPECT_NEAR(quantity::in_megapascals(*found.yield), 190, 1e-9);
  EXPECT_NEAR(quantity::in_newtons(*found.proof_load), 10440, 10);
  EXPECT_EQ(found.sources[0].edition, "1999");
}

tightening::ClampAnswer clamped(const char* thread, const char* name) {
  CaseQuestion question;
  question.thread = thread;
  question.strength_class = name;
  question.surfaces = "dry";
  const Catalogue catalogue;
  const auto asked = resolve(catalogue, question);
  return tightening::clamp(asked.value().asked, quantity::newton_metres(10)).value();
}

bool has(const tightening::ClampAnswer& answer, Code code) {
  return std::ranges::any_of(answer.findings, [&](const auto& found) { return found.code == code; });
}

TEST(InchBolts, CanBeAskedForTheirClampLoad) {
  for (const Row& row : k_rows) {
    const auto answer = clamped(row.thread, row.name);
    ASSERT_TRUE(answer.nut_factor.has_value()) << row.name;
    EXPECT_EQ(answer.nut_factor->use_of_proof.has_value(), row.proof_ksi.has_value()) << row.name;
    EXPECT_EQ(answer.verdict == tightening::Verdict::not_known, !row.proof_ksi) << row.name;
  }
}

TEST(ApprovedData, IsAskedForWithAircraftBoltsAlone) {
  for (const Row& row : k_rows)
    EXPECT_EQ(has(clamped(row.thread, row.name), Code::approved_data), std::string_view(row.name).ends_with("ksi"))
        << row.name;
}

TEST(TorqueForAircraftBolts, NeedsTheClampLoadItself) {
  CaseQuestion question;
  question.thread = "1/4-28";
  question.strength_class = "160 ksi";
  question.surfaces = "dry";
  const Catalogue catalogue;
  const auto asked = resolve(catalogue, question).value().asked;
  for (const auto aim : {tightening::Aim::proof_share, tightening::Aim::yield_share}) {
    const Problem problem = test::problem_of(tightening::torque_for(asked, {aim, {}, 0.75}));
    EXPECT_THAT(problem.message, testing::HasSubstr("class 160 ksi has no"));
    EXPECT_THAT(problem.hint, testing::HasSubstr("--preload"));
  }
}

} // namespace
} // namespace clampwright::specdb
