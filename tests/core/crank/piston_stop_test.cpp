// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/piston_stop.hpp"

#include <gtest/gtest.h>

namespace clampwright::crank {
namespace {

using quantity::degrees;
using quantity::in_millimetres;
using quantity::in_newtons;
using quantity::millimetres;
using quantity::newton_metres;
using quantity::newtons;

struct Hold {
  const char* row;
  double torque_N_m;
  double radius_mm;
  double rod_mm;
  double before_tdc_deg;
  double force_N;
  double tolerance; // relative
};

// Reference file practice/examples.csv, rows HOLD-01 to HOLD-07 and HOLD-14: slider-crank statics without offset and
// friction, sin p = (r/l)·sin t, F = T·cos p/(r·sin(t + p)); derived and computed there, not read in print. HOLD-14 is
// the least force over all angles, found numerically. The other rows stand in tests/reference.
// clang-format off
constexpr Hold k_holds[] = {
    {"HOLD-01", 30.0, 25.0, 100.0, 10.0,     5544.235089, 1e-5},
    {"HOLD-02", 30.0, 25.0, 100.0, 15.0,     3733.081071, 1e-5},
    {"HOLD-04", 30.0, 25.0, 100.0, 60.0,     1228.364667, 1e-5},
    {"HOLD-05", 20.0, 20.0, 80.0,  15.0,     3110.900892, 1e-5},
    {"HOLD-07", 60.0, 30.0, 115.0, 10.0,     9161.479823, 1e-5},
    {"HOLD-14", 30.0, 25.0, 100.0, 76.72098, 1164.05097,  1e-5},
};
// clang-format on

SliderCrank crank(double radius_mm, double rod_mm) { return {millimetres(radius_mm), millimetres(rod_mm)}; }

double force_at(double degrees_before_tdc) {
  return in_newtons(stop_force(crank(25, 100), degrees(degrees_before_tdc), newton_metres(30)));
}

} // namespace

TEST(StopForce, IsThatOfTheSliderCrank) {
  for (const Hold& row : k_holds) {
    const double force = in_newtons(
        stop_force(crank(row.radius_mm, row.rod_mm), degrees(row.before_tdc_deg), newton_metres(row.torque_N_m)));
    EXPECT_NEAR(force, row.force_N, row.force_N * row.tolerance) << row.row;
  }
}

// HOLD-13 of the same file: the force is least at 76.72098°.
TEST(StopForce, IsLeastWhereThePistonRunsFastest) {
  EXPECT_GT(force_at(76.2), force_at(76.72098));
  EXPECT_GT(force_at(77.2), force_at(76.72098));
}

TEST(StopForce, GrowsTowardsTopDeadCentre) {
  EXPECT_GT(force_at(5), force_at(10));
  EXPECT_GT(force_at(1), 10.0 * force_at(15));
}

TEST(StopForce, IsLinearInTorque) {
  const auto force = [](double torque) {
    return in_newtons(stop_force(crank(25, 100), degrees(15), newton_metres(torque)));
  };
  EXPECT_DOUBLE_EQ(force(60), 2.0 * force(30));
}

// At a right angle the rod's sine term falls away: lever = r·cos p/cos p = r.
TEST(BoreLever, IsTheCrankRadiusAtARightAngle) {
  EXPECT_NEAR(in_millimetres(bore_lever(crank(25, 100), degrees(90))), 25.0, 1e-12);
}

// GAS-01 and GAS-02 of the same file, T = p·A·lever: 3.5 MPa on a bore of 54 mm at 12°, 2.0 MPa at 30° (computed
// there).
TEST(BoreLever, GivesTheTorqueOfTheGasForce) {
  const auto torque = [](double pressure_MPa, double angle) {
    const double area_mm2 = 3.14159265358979323846 / 4.0 * 54.0 * 54.0;
    return quantity::in_newton_metres(
        quantity::moment(newtons(pressure_MPa * area_mm2), bore_lever(crank(25, 100), degrees(angle))));
  };
  EXPECT_NEAR(torque(3.5, 12), 51.866583, 51.9 * 1e-5);
  EXPECT_NEAR(torque(2.0, 30), 69.749706, 69.7 * 1e-5);
}

// Virtual work, F·dx = T·dt, with the slope of the piston's way taken numerically: another route to the lever.
TEST(BoreLever, IsTheSlopeOfThePistonsWay) {
  constexpr double k_step = 1e-4;
  for (const double ratio : {1.02, 1.5, 2.0, 4.0, 30.0})
    for (double t = 1.0; t < 180.0; t += 3.5) {
      const SliderCrank one = crank(25, 25 * ratio);
      const double before = in_millimetres(below_top(one, degrees(t) - quantity::radians(k_step)));
      const double after = in_millimetres(below_top(one, degrees(t) + quantity::radians(k_step)));
      EXPECT_NEAR(in_millimetres(bore_lever(one, degrees(t))), (after - before) / (2.0 * k_step), 1e-4)
          << ratio << " " << t;
    }
}

// At the dead centres nothing has moved, or the whole stroke; at the right angle r + l - √(l² - r²): by hand for
// 25 and 100 mm 125 - √9375 = 28.175 mm.
TEST(BelowTop, RunsFromNothingToTheStroke) {
  EXPECT_DOUBLE_EQ(in_millimetres(below_top(crank(25, 100), degrees(0))), 0.0);
  EXPECT_NEAR(in_millimetres(below_top(crank(25, 100), degrees(180))), 50.0, 1e-9);
  EXPECT_NEAR(in_millimetres(below_top(crank(25, 100), degrees(90))), 28.175417, 1e-6);
}

// By hand near the top: x is about r·(1 + r/l)·t²/2, 25·1.25·0.001²/2 mm at a thousandth of a radian.
TEST(BelowTop, KeepsItsDigitsNearTheTop) {
  EXPECT_NEAR(in_millimetres(below_top(crank(25, 100), quantity::radians(1e-3))), 1.5625e-5, 1e-11);
  EXPECT_NEAR(quantity::in_radians(before_top(crank(25, 100), millimetres(1.5625e-5))), 1e-3, 1e-9);
}

TEST(BeforeTop, UndoesBelowTop) {
  for (const double ratio : {1.001, 1.5, 4.0, 100.0})
    for (double t = 0.001; t < 180.0; t += 1.7) {
      const SliderCrank one = crank(25, 25 * ratio);
      const double again = quantity::in_degrees(before_top(one, below_top(one, degrees(t))));
      EXPECT_NEAR(again, t, 1e-6) << ratio << " " << t;
    }
}

TEST(BeforeTop, ReachesBothDeadCentres) {
  EXPECT_DOUBLE_EQ(quantity::in_degrees(before_top(crank(25, 100), millimetres(0))), 0.0);
  EXPECT_NEAR(quantity::in_degrees(before_top(crank(25, 100), millimetres(50))), 180.0, 1e-6);
}

// Looked for on a grid, not by the slope.
TEST(AngleOfLeastForce, HasNoLongerLeverBesideIt) {
  for (const double ratio : {1.02, 1.2, 2.0, 4.0, 50.0}) {
    const SliderCrank one = crank(25, 25 * ratio);
    const auto longest = bore_lever(one, angle_of_least_force(one));
    for (double t = 0.5; t < 180.0; t += 0.5)
      EXPECT_LE(in_millimetres(bore_lever(one, degrees(t))), in_millimetres(longest) + 1e-9) << ratio << " " << t;
  }
}

// With an endless rod the motion is a sine: least at 90°, where the lever is r.
TEST(AngleOfLeastForce, IsARightAngleForAnEndlessRod) {
  EXPECT_NEAR(quantity::in_degrees(angle_of_least_force(crank(25, 1e9))), 90.0, 1e-4);
}

// The rod carries what crown and bore bear at right angles to each other.
TEST(CrankForces, AreInBalanceAtThePiston) {
  for (double t = 2.0; t < 180.0; t += 11.0) {
    const CrankForces forces = crank_forces(crank(25, 100), degrees(t), newton_metres(30));
    const double piston = in_newtons(forces.piston);
    const double side = in_newtons(forces.side);
    const double rod = in_newtons(forces.rod);
    EXPECT_NEAR(rod * rod, piston * piston + side * side, 1e-6 * rod * rod) << t;
    EXPECT_DOUBLE_EQ(in_newtons(forces.crankpin), 1200.0); // 30 N·m over 25 mm
  }
}

} // namespace clampwright::crank
