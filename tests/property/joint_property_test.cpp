// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/surroundings.hpp"
#include "core/tightening/clamp.hpp"
#include "core/tightening/unit_slip.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/as_fitted.hpp"
#include "tests/property/random_case.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace clampwright {
namespace {

using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::millimetres;
using test::between;
using test::relative;

joint::TappedPart random_tapped() {
  strength::PartMaterial material;
  material.shear_strength = quantity::megapascals(between(50, 500));
  return {"part", material, millimetres(between(1, 60)), millimetres(between(1, 80)), {}, {}};
}

double strips_at(const joint::TappedPart& tapped) { return in_newtons(joint::strip_load(tapped).value()); }

TEST(StripLoad, GrowsWithEngagement) {
  EXPECT_TRUE(rc::check([] {
    joint::TappedPart tapped = random_tapped();
    const double before = strips_at(tapped);
    const double factor = between(1.001, 3.0);
    tapped.engagement *= factor;
    RC_ASSERT(strips_at(tapped) > before);
    RC_ASSERT(relative(strips_at(tapped), factor * before) <= 1e-12);
  }));
}

TEST(SeatPressure, FallsWithTheOuterDiameterAndRisesWithTheHole) {
  EXPECT_TRUE(rc::check([] {
    const double inner = between(2, 40);
    const double outer = inner + between(0.5, 30);
    const auto load = quantity::newtons(between(1, 1e6));
    const auto pressure = [&](double out, double in) {
      return quantity::in_pascals(joint::seat_pressure(load, test::face(out, in)));
    };
    RC_ASSERT(pressure(outer + between(0.01, 10), inner) < pressure(outer, inner));
    RC_ASSERT(pressure(outer, inner + between(0.01, 0.4)) > pressure(outer, inner));
  }));
}

TEST(UnitSlip, IsNoneInAUnitThatFits) {
  EXPECT_TRUE(rc::check([] {
    const tightening::Case c = test::random_case();
    const quantity::Torque torque = test::random_torque();
    for (const quantity::Unit& printed : quantity::all_units()) {
      if (printed.kind != quantity::Kind::torque) continue;
      const double value = quantity::from_si(in_newton_metres(torque), printed);
      const auto answer = tightening::clamp(c, torque).value();
      for (const tightening::UnitFit& fit : tightening::units_that_fit(answer, value, printed)) {
        RC_ASSERT(fit.likely >= 0.40 && fit.likely <= 1.00);
        RC_ASSERT(tightening::units_that_fit(tightening::clamp(c, fit.torque).value(), value, *fit.unit).empty());
      }
    }
  }));
}

// M8 8.8 with the figure on those surfaces.
specdb::JointRecord joint_on(const std::string& surfaces, double torque_N_m) {
  specdb::JointRecord out;
  out.slug = "test/joint";
  out.thread = "M8";
  out.strength_class = "8.8";
  out.figure.value = torque_N_m;
  out.figure.unit = "N.m";
  out.figure.surfaces = surfaces;
  return out;
}

specdb::JointAnswer fitted(const specdb::Catalogue& catalogue, const specdb::JointRecord& joint,
                           const std::string& surfaces) {
  return specdb::answer_for(catalogue, joint, {{}, surfaces, {}}).value();
}

// A bolt of class 8.8 is not of stainless steel.
bool says_what_8_8_can_be(const std::string& surfaces) {
  return surfaces != "not-stated" && !surfaces.starts_with("stainless");
}

// Every pair of surfaces that say what they are, with and without a running torque.
TEST(AsFitted, ThereAndBackIsTheSameTorque) {
  const specdb::Catalogue catalogue;
  for (const std::string& one : specdb::surfaces_names(catalogue))
    for (const std::string& other : specdb::surfaces_names(catalogue)) {
      if (one == other || !says_what_8_8_can_be(one) || !says_what_8_8_can_be(other)) continue;
      for (const bool braked : {false, true}) {
        specdb::JointRecord joint = joint_on(one, 23.7);
        if (braked) joint.running_torque = "3 N.m";
        const auto there = fitted(catalogue, joint, other);
        joint.figure.surfaces = other;
        joint.figure.value = in_newton_metres(*there.as_fitted->torque);
        const auto back = fitted(catalogue, joint, one);
        EXPECT_NEAR(in_newton_metres(*back.as_fitted->torque), 23.7, 1e-11) << one << " " << other;
      }
    }
}

TEST(AsFitted, ClampsTheSameByNutFactorOnEveryPairOfSurfaces) {
  const specdb::Catalogue catalogue;
  for (const std::string& one : specdb::surfaces_names(catalogue))
    for (const std::string& other : specdb::surfaces_names(catalogue)) {
      if (one == other || !says_what_8_8_can_be(one) || !says_what_8_8_can_be(other)) continue;
      const auto answer = fitted(catalogue, joint_on(one, 23.7), other);
      const double before = in_newtons(answer.figure.clamp->nut_factor->preload.likely);
      EXPECT_LE(relative(in_newtons(answer.as_fitted->clamp->nut_factor->preload.likely), before), 1e-13)
          << one << " " << other;
    }
}

} // namespace
} // namespace clampwright
