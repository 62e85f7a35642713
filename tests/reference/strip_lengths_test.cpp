// SPDX-License-Identifier: GPL-3.0-or-later
//
// Lengths of engagement, with threads, limits and classes of the catalogue.
#include "core/joint/strip.hpp"
#include "specdb/catalogue/materials.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

namespace clampwright {
namespace {

using quantity::in_millimetres;

joint::StripAnswer answer(const char* designation, const char* bolt_class, double shear_MPa) {
  const auto entry = test::thread_named(designation);
  joint::StripCase asked;
  asked.thread = entry.thread;
  asked.limits = entry.limits.value();
  asked.bolt = test::strength_named(bolt_class, designation);
  asked.bolt_shear = specdb::find_bolt_shear(test::catalogue(), bolt_class);
  asked.part.shear_strength = quantity::megapascals(shear_MPa);
  asked.incomplete = joint::usual_incomplete(asked.thread);
  return joint::strip(asked);
}

double needed_mm(const char* designation, const char* bolt_class, double shear_MPa) {
  return in_millimetres(answer(designation, bolt_class, shear_MPa).needed.value());
}

struct Rule {
  const char* thread;
  const char* bolt_class;
  const char* material;
  double engagement_mm;
};

} // namespace

// The collection's section 9 (computed): M8 8.8 in 110 MPa, with 1.2 Rm, C3 and two turns.
TEST(StripLengths, AreThoseOfThePracticeText) { EXPECT_NEAR(needed_mm("M8", "8.8", 110), 20.5, 0.05); }

// By hand for 1/4-20 UNC 2A/2B, SAE 5 (120 ksi), 130 MPa: π/0.05·0.2408·(0.025 + 0.57735·0.0184) = 0.538976 in =
// 13.6900 mm; π/0.05·0.2074·(0.025 + 0.57735·0.0053) = 9.28772 mm. As = 0.0318213 in2, so the strongest bolt breaks at
// 1.2·827.371·20.5298 = 20382.9 N. R = 130·13.69/(0.6·827.371·9.28772) = 0.386, so C3 = 1.055184; 20382.9/(1.055184·
// 130·13.69) + 2·1.27 = 13.394 mm.
TEST(StripLengths, OfAnInchThreadAreThoseByHand) { EXPECT_NEAR(needed_mm("1/4-20 UNC", "SAE 5", 130), 13.3940, 1e-3); }

// STRIP-10 and 11 of the collection (second-hand): 1.5 d in softer metal, 2 d in aluminium, for M8 12 and 16 mm.
TEST(StripLengths, StandBesideThePublishedRules) {
  const auto& catalogue = test::catalogue();
  const auto rules = specdb::engagement_rules(catalogue, *specdb::find_material(catalogue, "cast-aluminium"), "8.8",
                                              test::thread_named("M8").thread);
  const auto has = [&](double length_mm) {
    for (const auto& rule : rules)
      if (std::abs(rule.over_diameter * 8.0 - length_mm) < 1e-9) return true;
    return false;
  };
  EXPECT_TRUE(has(12));
  EXPECT_TRUE(has(16));
}

// clang-format off
// Trials of a fastener catalogue, M6 to M16, 6g/6H (second-hand): class 8.8 in S235 1.0 d, in GJL-250 1.0 d, 10.9 in
// S235 1.25 d. The way of the guide, with the strongest bolt and two turns that do not bear, asks for 0.8 to 1.5 of
// these.
constexpr Rule k_trials[] = {
    {"M8",  "8.8",  "steel",              8.0},
    {"M12", "8.8",  "steel",             12.0},
    {"M10", "10.9", "steel",             12.5},
    {"M10", "8.8",  "grey-iron-gjl-250", 10.0},
};
// clang-format on

TEST(StripLengths, AreNearThoseOfTrials) {
  for (const Rule& row : k_trials) {
    const auto material = specdb::find_material(test::catalogue(), row.material).value();
    const double needed = needed_mm(row.thread, row.bolt_class, quantity::in_megapascals(*material.shear_strength));
    EXPECT_GT(needed / row.engagement_mm, 0.8) << row.thread << row.material << needed;
    EXPECT_LT(needed / row.engagement_mm, 1.6) << row.thread << row.material << needed;
  }
}

} // namespace clampwright
