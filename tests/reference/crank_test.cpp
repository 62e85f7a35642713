// SPDX-License-Identifier: GPL-3.0-or-later
//
// Holding a crank and the hand of a thread: rows HOLD-… and HAND-… of the reference collection, numbered as there.
// They are derived and computed there by slider-crank statics without offset and friction (sin p = (r/l)·sin t,
// F = T·cos p/(r·sin(t + p)), rod F/cos p, side F·tan p); none was read in print unless its line says so.
#include "core/crank/hand.hpp"
#include "core/crank/holding.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

namespace clampwright::crank {
namespace {

using quantity::degrees;
using quantity::in_degrees;
using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::megapascals;
using quantity::millimetres;
using quantity::newton_metres;
using quantity::newtons;
using thread::Hand;
using thread::Turn;

struct Row {
  const char* row;
  double torque_N_m;
  double radius_mm;
  double rod_mm;
  double angle_deg;
  double piston_N;
};

// clang-format off
constexpr Row k_pistons[] = {
    {"HOLD-01", 30.0, 25.0, 100.0, 10.0, 5544.235089},
    {"HOLD-02", 30.0, 25.0, 100.0, 15.0, 3733.081071},
    {"HOLD-04", 30.0, 25.0, 100.0, 60.0, 1228.364667},
    {"HOLD-05", 20.0, 20.0, 80.0,  15.0, 3110.900892},
    {"HOLD-07", 60.0, 30.0, 115.0, 10.0, 9161.479823},
};

struct HandRow {
  const char* row;
  Drive drive;
  Hand hand;
};

constexpr HandRow k_hands[] = {
    {"HAND-01", {Turn::clockwise,     Driver::shaft}, Hand::left},
    {"HAND-02", {Turn::clockwise,     Driver::part},  Hand::right},
    {"HAND-04", {Turn::anticlockwise, Driver::part},  Hand::left},
};
// clang-format on

StopCase stop_at(double angle_deg) {
  StopCase out;
  out.crank = {millimetres(25), millimetres(100)};
  out.before_top = degrees(angle_deg);
  out.torque = newton_metres(30);
  return out;
}

// HOLD-19, HOLD-20: 60 MPa stated under a tip of 8 mm.
StopAnswer with_tip_limit(double angle_deg) {
  StopCase asked = stop_at(angle_deg);
  asked.tip_diameter = millimetres(8);
  asked.limits.tip_pressure = megapascals(60);
  return hold_by_stop(asked);
}

} // namespace

TEST(HoldRows, HaveTheForceOnThePiston) {
  for (const Row& row : k_pistons) {
    const SliderCrank crank{millimetres(row.radius_mm), millimetres(row.rod_mm)};
    const double force = in_newtons(stop_force(crank, degrees(row.angle_deg), newton_metres(row.torque_N_m)));
    EXPECT_NEAR(force, row.piston_N, row.piston_N * 1e-5) << row.row;
  }
}

TEST(HoldRows, HaveAngleOfTheRodSideThrustAndWayBelowTheTop) {
  const StopAnswer answer = hold_by_stop(stop_at(15));
  EXPECT_NEAR(in_degrees(answer.rod_angle), 3.709902, 3.7e-5);             // HOLD-08
  EXPECT_NEAR(in_newtons(answer.fitting.forces.side), 242.055358, 2.4e-3); // HOLD-10
  EXPECT_NEAR(in_millimetres(answer.below_top), 1.061409, 1.1e-5);         // HOLD-11
}

TEST(HoldRows, HaveTheLeastForceAndItsAngle) {
  const StopAnswer answer = hold_by_stop(stop_at(15));
  EXPECT_NEAR(in_degrees(answer.least_at), 76.72098, 76.7 * 1e-4); // HOLD-13
  EXPECT_NEAR(in_newtons(answer.least), 1164.05097, 1164 * 1e-5);  // HOLD-14
}

TEST(HoldRows, HaveThePressureUnderTheTip) {
  StopCase asked = stop_at(15);
  asked.tip_diameter = millimetres(6);
  EXPECT_NEAR(in_megapascals(*hold_by_stop(asked).fitting.tip_pressure), 132.030735, 132 * 1e-5); // HOLD-17
}

TEST(HoldRows, HaveTheMostTorqueForAStatedPressure) {
  EXPECT_NEAR(in_newton_metres(with_tip_limit(15).governs->torque), 24.236781, 24.2 * 1e-4); // HOLD-19
  EXPECT_NEAR(in_newton_metres(with_tip_limit(45).governs->torque), 62.890179, 62.9 * 1e-4); // HOLD-20
}

// HOLD-22, Roark's plate (formula from memory there), 1 %.
TEST(HoldRows, HaveTheBendingOfAClampedPlate) {
  const auto bending = plate_bending(newtons(3733), {millimetres(6), millimetres(25)}, millimetres(3));
  EXPECT_NEAR(in_megapascals(bending), 138.543789, 1.385);
}

// HOLD-23: 294.409 mm2 from d_min 13.760 and D2_max 13.368, which are the limits of our tables; HOLD-24, in the facts
// beside the collection: about 38 kN at 130 MPa in shear.
TEST(HoldRows, HaveTheThreadOfThePlug) {
  const auto entry = test::thread_named("M14x1.25");
  StopCase asked = stop_at(15);
  asked.plug = PlugThread{entry.thread, entry.limits.value(), millimetres(10), megapascals(130)};
  const StopAnswer answer = hold_by_stop(asked);
  EXPECT_NEAR(in_newtons(*answer.plug_strips_at) / 130.0, 294.409447, 294 * 1e-4);
  EXPECT_NEAR(in_newtons(*answer.plug_strips_at), 38e3, 500);
}

TEST(HoldRows, HaveTheForceOnAStrap) { // HOLD-25
  EXPECT_NEAR(in_newtons(strap_force(newton_metres(40), millimetres(60))), 666.666667, 1e-3);
}

TEST(HoldRows, HaveTheTorqueAtWhichAPressedPinSlips) { // HOLD-26
  const PressFit fit{
      millimetres(20), millimetres(15), {megapascals(100), megapascals(100), megapascals(100)}, {0.15, 0.15, 0.15}};
  EXPECT_NEAR(in_newton_metres(slip_torque(fit).likely), 141.371669, 141 * 1e-5);
}

TEST(HandRows, HaveTheHandThatTheSteadyLoadTightens) {
  for (const HandRow& row : k_hands)
    EXPECT_EQ(hand_for({row.drive, {}, {}}).hand, row.hand) << row.row;
}

// Michigan Administrative Code R 408.10115 (read second-hand), (1): the nut of a wheel is threaded opposite to the
// rotation of its spindle; (5)(a): a wheel with a threaded hole comes off in its own direction of rotation. Seen from
// either side of the wheel the words hold, if turn and thread are seen from the same one.
TEST(HandRows, AgreeWithTheRuleForWheelsFromBothSides) {
  for (const Turn free_end : {Turn::clockwise, Turn::anticlockwise}) {
    const Hand hand = hand_for({{free_end, Driver::shaft}, {}, {}}).hand;
    EXPECT_NE(thread::turn_to_tighten(hand), free_end);
    EXPECT_EQ(thread::turn_to_undo(hand), free_end);
    // The other side reverses the shaft and the undoing alike.
    EXPECT_EQ(reversed(thread::turn_to_undo(hand)), reversed(free_end));
  }
}

} // namespace clampwright::crank
