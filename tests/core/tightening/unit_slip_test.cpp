// SPDX-License-Identifier: GPL-3.0-or-later
//
// Slips of the unit, found a second time by a plain loop over factors written by hand. The bolt is the M10 of
// tests/core/cases.hpp.
#include "core/tightening/unit_slip.hpp"

#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace clampwright::tightening {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

struct Factor {
  const char* unit;
  double newton_metres;
};

// Pound 0.45359237 kg, inch 25.4 mm, standard gravity 9.80665 m/s² (exact); products by hand.
// clang-format off
constexpr Factor k_factors[] = {
    {"N.m",    1.0},
    {"N.cm",   0.01},
    {"N.mm",   0.001},
    {"mN.m",   0.001},
    {"dN.m",   0.1},
    {"daN.m",  10.0},
    {"kN.m",   1000.0},
    {"kgf.m",  9.80665},
    {"kgf.cm", 0.0980665},
    {"gf.cm",  0.0000980665},
    {"lbf.ft", 1.3558179483314004},
    {"lbf.in", 0.1129848290276167},
    {"ozf.in", 0.00706155181422604},
};
// clang-format on

struct Model {
  double low_mm, likely_mm, high_mm; // torque over clamp load, at the least to the highest friction
};

// The levers at μ 0.08, 0.12, 0.16 and K·d at K 0.12, 0.18, 0.22.
constexpr Model k_by_friction{1.1714321684, 1.6393331019, 2.1082782791};
constexpr Model k_by_nut_factor{1.2, 1.8, 2.2};
constexpr double k_proof_N = 33640.0;

// The units that fit, by the rules as written in unit_slip.hpp.
std::vector<std::string> fits_by_loop(double value, const Factor& printed, const std::vector<Model>& models) {
  const double torque = value * printed.newton_metres;
  const double accuracy = torque <= 10.0 ? 0.06 : 0.04; // ISO 6789
  bool too_high = true;
  bool too_low = true;
  for (const Model& model : models) {
    too_high = too_high && torque * (1.0 - accuracy) * 1000.0 / model.high_mm / k_proof_N > 1.0;
    too_low = too_low && torque * (1.0 + accuracy) * 1000.0 / model.low_mm / k_proof_N < 0.20;
  }
  std::vector<std::string> fits;
  if (!too_high && !too_low) return fits;
  for (const Factor& other : k_factors) {
    const double ratio =
        std::max(other.newton_metres / printed.newton_metres, printed.newton_metres / other.newton_metres);
    const bool sensible = std::ranges::all_of(models, [&](const Model& model) {
      const double share = value * other.newton_metres * 1000.0 / model.likely_mm / k_proof_N;
      return share >= 0.40 && share <= 1.00;
    });
    if (ratio >= 1.36 && sensible) fits.emplace_back(other.unit);
  }
  return fits;
}

std::vector<UnitFit> fits(const Case& c, double value, const char* unit) {
  const quantity::Unit& printed = quantity::unit_named(unit);
  return units_that_fit(clamp(c, quantity::newton_metres(quantity::to_si(value, printed))).value(), value, printed);
}

std::vector<std::string> names(const std::vector<UnitFit>& found) {
  std::vector<std::string> out;
  for (const UnitFit& fit : found)
    out.emplace_back(fit.unit->name);
  return out;
}

Case changed(void (*change)(Case&)) {
  Case out = test::m10_case();
  change(out);
  return out;
}

Case faceless() {
  return changed([](Case& c) { c.face.reset(); });
}

// From 0.001 to a million of every unit, 15 to the decade.
void expect_as_by_loop(const Case& c, const std::vector<Model>& models) {
  int claimed = 0;
  for (const Factor& printed : k_factors)
    for (int i = 0; i <= 135; ++i) {
      const double value = std::pow(10.0, -3.0 + i / 15.0);
      const auto expected = fits_by_loop(value, printed, models);
      claimed += expected.empty() ? 0 : 1;
      ASSERT_THAT(names(fits(c, value, printed.unit)), testing::UnorderedElementsAreArray(expected))
          << value << " " << printed.unit;
    }
  EXPECT_GT(claimed, 50);
}

TEST(UnitSlip, ListsAllUnitsThatFitByBothModels) {
  expect_as_by_loop(test::m10_case(), {k_by_friction, k_by_nut_factor});
}

TEST(UnitSlip, ListsAllUnitsThatFitByNutFactorAlone) { expect_as_by_loop(faceless(), {k_by_nut_factor}); }

// 400 N·m: 0.96 · 400000/2.2/33640 = 5.19, far past proof. As lbf·in 45.2 N·m: 0.82 by μ, as kgf·cm 39.2: 0.71, as dN·m
// 40: 0.73.
TEST(UnitSlip, NamesUnitTorqueAndShare) {
  const auto found = fits(test::m10_case(), 400, "N.m");
  EXPECT_THAT(names(found), testing::UnorderedElementsAre("lbf.in", "kgf.cm", "dN.m"));
  const auto inch = std::ranges::find(found, "lbf.in", [](const UnitFit& fit) { return fit.unit->name; });
  ASSERT_NE(inch, found.end());
  EXPECT_NEAR(quantity::in_newton_metres(inch->torque), 45.19393, 1e-5);
  EXPECT_NEAR(inch->likely, 0.8195, 5e-4);
}

TEST(UnitSlip, IsNotClaimedOfATorqueThatMakesSense) { EXPECT_THAT(fits(test::m10_case(), 45, "N.m"), IsEmpty()); }

// By K alone 57 lbf·ft = 77.3 N·m: 0.96 · 77282/2.2/33640 = 1.002, past proof even at the highest friction; 57 N·m
// would be 0.94. But 1.36 is no more than friction spreads.
TEST(UnitSlip, IsNotClaimedBetweenPoundFeetAndNewtonMetres) { EXPECT_THAT(fits(faceless(), 57, "lbf.ft"), IsEmpty()); }

// Exact friction: 1.05 of proof in kgf·m would be 1.03 in the other. Nor N·m from lbf·ft where the band is narrowest.
TEST(UnitSlip, IsNotClaimedBetweenNearUnitsHoweverNarrowTheBand) {
  const Case c = changed([](Case& x) {
    x.mu_thread = x.mu_head = test::mu_band(0.12);
    x.nut_factor = test::k_band(0.164);
  });
  constexpr const char* k_near[][2] = {{"lbf.ft", "N.m"}, {"kgf.m", "daN.m"}, {"lbf.in", "kgf.cm"}, {"lbf.in", "dN.m"}};
  for (const auto& pair : k_near)
    for (const bool swapped : {false, true})
      for (int i = 0; i <= 150; ++i) {
        const double value = std::pow(10.0, -1.0 + i / 30.0);
        EXPECT_THAT(names(fits(c, value, pair[swapped ? 1 : 0])),
                    testing::Not(testing::Contains(pair[swapped ? 0 : 1])))
            << value << " " << pair[swapped ? 1 : 0];
      }
}

TEST(UnitSlip, IsNeverClaimedWhereTheClassIsUnknown) {
  const Case c = changed([](Case& x) { x.strength = strength::unknown_strength(); });
  for (const Factor& printed : k_factors)
    for (int i = 0; i <= 90; ++i)
      EXPECT_THAT(fits(c, std::pow(10.0, -3.0 + i / 10.0), printed.unit), IsEmpty());
}

TEST(UnitSlip, IsNeverClaimedOfWhatIsNoBolt) {
  for (const JointKind kind : {JointKind::hub, JointKind::plug, JointKind::stud_set, JointKind::union_nut}) {
    Case c = test::m10_case();
    c.kind = kind;
    EXPECT_THAT(fits(c, 400, "N.m"), IsEmpty()) << joint_kind_name(kind);
  }
}

TEST(UnitSlip, IsNeverClaimedWhereAnAngleFollowsOrASoftPartSetsTheLimit) {
  EXPECT_THAT(fits(changed([](Case& c) { c.angle_follows = true; }), 4, "N.m"), IsEmpty());
  EXPECT_THAT(fits(changed([](Case& c) { c.soft_part = "wood"; }), 4, "N.m"), IsEmpty());
  EXPECT_THAT(names(fits(test::m10_case(), 4, "N.m")), testing::UnorderedElementsAre("daN.m", "kgf.m"));
}

// A unit that fits makes sense itself, so the same number in it is no slip.
TEST(UnitSlip, IsNotClaimedOfTheSameNumberInAUnitThatFits) {
  for (const Factor& printed : k_factors)
    for (int i = 0; i <= 90; ++i) {
      const double value = std::pow(10.0, -3.0 + i / 10.0);
      for (const UnitFit& fit : fits(test::m10_case(), value, printed.unit))
        EXPECT_THAT(fits(test::m10_case(), value, std::string(fit.unit->name).c_str()), IsEmpty())
            << value << " " << fit.unit->name;
    }
}

} // namespace
} // namespace clampwright::tightening
