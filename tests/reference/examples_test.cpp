// SPDX-License-Identifier: GPL-3.0-or-later
//
// Worked examples of a lecture script on bolted joints (seen), numbered E01 … as in the reference collection. The
// script takes pitch diameters rounded to 0.001 mm; ours are exact, which moves no printed figure. Tolerance: half of
// the last printed place, wider where a line says why.
#include "core/thread/geometry.hpp"
#include "core/tightening/clamp.hpp"
#include "core/tightening/lever.hpp"
#include "core/tightening/stress.hpp"
#include "core/tightening/wanted.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using quantity::in_degrees;
using quantity::in_megapascals;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::newton_metres;
using quantity::newtons;
using quantity::square_millimetres;
using test::metric_thread;
using test::mu;

const thread::Thread k_m8 = metric_thread("M8", 8, 1.25);
const thread::Thread k_m10 = metric_thread("M10", 10, 1.5);
const thread::Thread k_m12 = metric_thread("M12", 12, 1.75);

double in_N_mm(quantity::Torque torque) { return in_newton_metres(torque) * 1000.0; }

// E01: M12, face 24 over 13.5 mm as printed, 100 N·m, friction 0.08 to 0.12, wrench without scatter.
ThreadFrictionPart e01() {
  Case c;
  c.thread = k_m12;
  c.mu_thread = test::mu_band(0.08, 0.10, 0.12);
  c.mu_head = c.mu_thread;
  c.face = test::face(24, 13.5);
  return *clamp(c, newton_metres(100), WrenchAccuracy{0, "as in the example"})->thread_friction;
}

// E03: M8, 15 kN, friction 0.10 in the thread and 0.12 under the nut, mean face diameter 11 mm, prevailing torque 1.5
// N·m.
Case e03() {
  Case c;
  c.thread = k_m8;
  c.mu_thread = test::mu_band(0.10);
  c.mu_head = test::mu_band(0.12);
  c.face = test::face(13, 9);
  c.running_torque = newton_metres(1.5);
  return c;
}

// E07 prints forces and sections: 27 376 N on the 58 mm² of M10, 20 kN on the 36.6 mm² of M8.
constexpr double k_m10_force_N = 27376;
constexpr double k_m10_area_mm2 = 58;
constexpr double k_m8_force_N = 20000;
constexpr double k_m8_area_mm2 = 36.6;

} // namespace

// Lesson 11, section 5: 65 190 and 46 220 N, printed to 10 N; helix 2.936° (exact 2.93549°, off by 0.00051: a rounded
// intermediate), friction angles 5.278° and 7.889°.
TEST(ExampleE01, HasThePreloadsOfBothFrictions) {
  EXPECT_NEAR(in_newtons(e01().preload.high), 65190, 5);
  EXPECT_NEAR(in_newtons(e01().preload.low), 46220, 5);
}

TEST(ExampleE01, HasTheAngles) {
  EXPECT_NEAR(in_degrees(thread::helix_angle(k_m12)), 2.936, 0.001);
  EXPECT_NEAR(in_degrees(friction_angle(k_m12, mu(0.08))), 5.278, 0.0005);
  EXPECT_NEAR(in_degrees(friction_angle(k_m12, mu(0.12))), 7.889, 0.0005);
}

TEST(ExampleE01, HasTheSpread) {
  EXPECT_NEAR(in_newtons(e01().preload.high) / in_newtons(e01().preload.low), 1.41, 0.005);
}

// Lesson 11, section 3: M10 to 25 kN at 0.12, face 16 over 10.5 mm. Thread torque printed 21 761 with the angle rounded
// to 10.92°: exact 21 761.3 by the rounded d2 of 9.026 mm; our unrounded d2 of 9.02572 mm gives 21 760.8, hence one
// whole N·mm.
TEST(ExampleE02, HasTheThreadTorque) {
  EXPECT_NEAR(in_N_mm(newtons(25000) * thread_lever(k_m10, mu(0.12))), 21761, 1.0);
}

TEST(ExampleE02, HasTheHeadTorque) {
  EXPECT_NEAR(in_N_mm(newtons(25000) * head_lever(test::face(16, 10.5).mean_diameter(), mu(0.12))), 19875, 0.5);
}

TEST(ExampleE02, HasTheWholeTorque) {
  const auto lever = thread_lever(k_m10, mu(0.12)) + head_lever(test::face(16, 10.5).mean_diameter(), mu(0.12));
  EXPECT_NEAR(in_newton_metres(newtons(25000) * lever), 41.6, 0.05);
}

TEST(ExampleE02, HasTheTorqueThatLifts) {
  EXPECT_NEAR(in_newton_metres(newtons(25000) * lift_lever(k_m10)), 5.97, 0.005);
}

TEST(ExampleE02, HasTheAngles) {
  EXPECT_NEAR(in_degrees(thread::helix_angle(k_m10)), 3.03, 0.005);
  EXPECT_NEAR(in_degrees(friction_angle(k_m10, mu(0.12))), 7.89, 0.005);
}

// Lesson 11, exercise 1. Thread torque printed 9268, exact 9268.4 with the d2 of 7.188 mm, 9268.5 with ours.
TEST(ExampleE03, HasThreadAndHeadTorque) {
  EXPECT_NEAR(in_N_mm(newtons(15000) * thread_lever(k_m8, mu(0.10))), 9268, 0.6);
  EXPECT_NEAR(in_N_mm(newtons(15000) * head_lever(quantity::millimetres(11), mu(0.12))), 9900, 0.5);
}

TEST(ExampleE03, HasTheWholeTorqueWithThePrevailingOne) {
  EXPECT_NEAR(in_newton_metres(torque_for(e03(), {Aim::preload, newtons(15000), 0})->clamp.torque), 20.7, 0.05);
}

TEST(ExampleE03, HasTheAngles) {
  EXPECT_NEAR(in_degrees(thread::helix_angle(k_m8)), 3.17, 0.005);
  EXPECT_NEAR(in_degrees(friction_angle(k_m8, mu(0.10))), 6.59, 0.005);
}

// Lesson 13, section 2 and exercise 1, by the elastic modulus of torsion π/16·d³ (not the plastic one of the verdict).
TEST(ExampleE07, HasTheTensions) {
  EXPECT_NEAR(in_megapascals(tension(newtons(k_m10_force_N), square_millimetres(k_m10_area_mm2))), 472, 0.5);
  EXPECT_NEAR(in_megapascals(tension(newtons(k_m8_force_N), square_millimetres(k_m8_area_mm2))), 546, 0.5);
}

// Printed 174.7 MPa: the script takes d_S = 8.593 mm, the area 58 mm² gives 8.59348, which moves the stress by -0.03
// MPa. Printed 225 MPa from the printed torque of 14 050 N·mm.
TEST(ExampleE07, HasTheTorsions) {
  EXPECT_NEAR(in_megapascals(elastic_torsion(newton_metres(21.761), square_millimetres(k_m10_area_mm2))), 174.7, 0.08);
  EXPECT_NEAR(in_megapascals(elastic_torsion(newton_metres(14.050), square_millimetres(k_m8_area_mm2))), 225, 0.5);
}

TEST(ExampleE07, HasTheEquivalentStresses) {
  const auto both = [](double force, double area, double torque_N_m) {
    const auto section = square_millimetres(area);
    return in_megapascals(
        equivalent(tension(newtons(force), section), elastic_torsion(newton_metres(torque_N_m), section)));
  };
  EXPECT_NEAR(both(k_m10_force_N, k_m10_area_mm2, 21.761), 561, 0.5);
  EXPECT_NEAR(both(k_m8_force_N, k_m8_area_mm2, 14.050), 671, 0.5);
}

// Known deviation: the script prints 14 050 N·mm, exact are 14 046.6 (3.4 off, some intermediate was rounded). We
// compute the exact one.
TEST(ExampleE07, PrintsAThreadTorqueThreeTooHigh) {
  const double computed = in_N_mm(newtons(k_m8_force_N) * thread_lever(k_m8, mu(0.12)));
  EXPECT_NEAR(computed, 14046.6, 0.5);
  EXPECT_NEAR(14050 - computed, 3.4, 0.5);
}

} // namespace clampwright::tightening
