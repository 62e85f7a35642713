// SPDX-License-Identifier: GPL-3.0-or-later
//
// The working of what is around a bolt stands below that of its clamp load and must be followable there.
#include "core/joint/surroundings.hpp"

#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"
#include "tests/core/working_order.hpp"

#include <gtest/gtest.h>

#include <map>
#include <numbers>

namespace clampwright::joint {
namespace {

using quantity::megapascals;
using quantity::millimetres;
using tightening::Case;

// Both tapped and seated, with strengths.
Surroundings around() {
  Surroundings out;
  strength::PartMaterial material;
  material.name = material.description = "soft metal";
  material.shear_strength = megapascals(100);
  material.seat_pressure = megapascals(200);
  out.tapped = TappedPart{"case", material, millimetres(12), millimetres(20), millimetres(9.732), millimetres(9.206)};
  out.seat = material;
  return out;
}

Working whole(const Case& c) {
  const auto clamp = tightening::clamp(c, quantity::newton_metres(45)).value();
  Working out = clamp.working;
  const Working more = working_around(around(), &clamp);
  out.insert(out.end(), more.begin(), more.end());
  return out;
}

Case faceless() {
  Case out = test::m10_case();
  out.face.reset();
  return out;
}

Case by_nut_factor() {
  Case out = test::m10_case();
  out.mu_thread.reset();
  out.mu_head.reset();
  return out;
}

std::map<std::string, double> values(const Working& steps) {
  std::map<std::string, double> out;
  for (const Step& step : steps)
    out[step.symbol] = step.value;
  return out;
}

TEST(WorkingAround, TakesNoSymbolBeforeItsValue) {
  for (const Case& c : {test::m10_case(), faceless(), by_nut_factor()}) {
    const Working working = whole(c);
    EXPECT_EQ(test::used_too_early(working), "");
    EXPECT_EQ(test::given_twice(working), "");
    for (const char* symbol : {"P", "α", "d_min", "D2_max", "A_s1", "m_e", "τ_B", "C3"})
      EXPECT_TRUE(test::is_taken_after_its_value(working, symbol)) << symbol;
  }
}

TEST(WorkingAround, TakesTheFaceAndTheLoadOfTheModelThatIsKnown) {
  for (const char* symbol : {"F", "D_o", "D_i"})
    EXPECT_TRUE(test::is_taken_after_its_value(whole(test::m10_case()), symbol)) << symbol;
  for (const char* symbol : {"F_K", "D_o", "D_i"})
    EXPECT_TRUE(test::is_taken_after_its_value(whole(by_nut_factor()), symbol)) << symbol;
}

TEST(WorkingAround, ComesToTheStripLoadAndThePressure) {
  const auto v = values(whole(test::m10_case()));
  EXPECT_NEAR(v.at("F_m"), 24000, 1e-6); // 20 mm²/mm · 12 mm · 100 MPa
  EXPECT_NEAR(v.at("p_B"), v.at("F") / (std::numbers::pi / 4.0 * (14.63 * 14.63 - 121.0)), 1e-9);
  EXPECT_NEAR(v.at("p_G"), 200, 1e-9);
}

TEST(WorkingAround, IsEmptyWhereNothingIsJudged) {
  EXPECT_TRUE(working_around(around(), nullptr).empty());
  Case hub = test::m10_case();
  hub.kind = tightening::JointKind::hub;
  const auto clamp = tightening::clamp(hub, quantity::newton_metres(45)).value();
  EXPECT_TRUE(working_around(around(), &clamp).empty());
}

TEST(WorkingAround, LeavesOutAMaterialWithoutAStrength) {
  Surroundings weak = around();
  weak.tapped->material.shear_strength.reset();
  weak.seat->seat_pressure.reset();
  const auto clamp = tightening::clamp(test::m10_case(), quantity::newton_metres(45)).value();
  EXPECT_TRUE(working_around(weak, &clamp).empty());
}

} // namespace
} // namespace clampwright::joint
