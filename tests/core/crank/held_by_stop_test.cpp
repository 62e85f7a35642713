// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/held_by_stop.hpp"

#include <algorithm>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/cases.hpp"
#include "tests/core/working_order.hpp"

namespace clampwright::crank {
namespace {

using finding::Code;
using finding::Severity;
using quantity::degrees;
using quantity::in_megapascals;
using quantity::in_millimetres;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::megapascals;
using quantity::millimetres;
using quantity::newton_metres;
using quantity::newtons;
using testing::Contains;
using testing::Not;

// Stroke 50 mm, rod 100 mm, 30 N·m, met at 60°: 1228.36 N by the collection's HOLD-04.
StopCase at_60() {
  StopCase out;
  out.crank = {millimetres(25), millimetres(100)};
  out.before_top = degrees(60);
  out.torque = newton_metres(30);
  return out;
}

StopCase below(double mm) {
  StopCase out = at_60();
  out.before_top = before_top(out.crank, millimetres(mm));
  return out;
}

// Limits of M14x1.25 6g/6H as the tables have them: strips at 38273 N over 10 mm in metal of 130 MPa (HOLD-24).
PlugThread plug(double engaged_mm) {
  thread::Limits limits;
  limits.d_min = millimetres(13.760);
  limits.D2_max = millimetres(13.368);
  return {test::metric_thread("M14x1.25", 14, 1.25), limits, millimetres(engaged_mm), megapascals(130)};
}

std::vector<Code> codes(const StopAnswer& answer) {
  std::vector<Code> out;
  for (const auto& finding : answer.findings)
    out.push_back(finding.code);
  return out;
}

Severity severity_of(const StopAnswer& answer, Code code) {
  return std::ranges::find(answer.findings, code, &finding::Finding::code)->severity;
}

} // namespace

TEST(Stop, IsNotJudgedWithoutAStatedLimit) {
  StopCase asked = at_60();
  asked.tip_diameter = millimetres(6);
  asked.plug = plug(10);
  const StopAnswer answer = hold_by_stop(asked);
  EXPECT_EQ(answer.verdict, HoldVerdict::not_known);
  EXPECT_FALSE(answer.governs);
  EXPECT_THAT(codes(answer), Contains(Code::stop_limit_not_stated));
}

// By hand: 30 N·m · 1500/1228.365 = 36.634; rod 1228.365/cos p with sin p = 0.25·sin 60°, so cos p = 0.976281 and the
// rod bears 1258.21 N: 30 · 1300/1258.21 = 30.996; tip 60 MPa · 28.274 mm² = 1696.5 N: 41.43; plug 38273/20 = 1913.7 N:
// 46.74.
TEST(Stop, TakesTheLeastOfTheStatedLimits) {
  StopCase asked = at_60();
  asked.tip_diameter = millimetres(6);
  asked.plug = plug(10);
  asked.limits = {megapascals(60), 20.0, newtons(1300), newtons(1500)};
  const StopAnswer answer = hold_by_stop(asked);
  ASSERT_EQ(answer.limits.size(), 4U);
  EXPECT_NEAR(in_newton_metres(answer.limits[0].torque), 41.43, 0.01);
  EXPECT_NEAR(in_newton_metres(answer.limits[1].torque), 46.74, 0.01);
  EXPECT_NEAR(in_newton_metres(answer.limits[2].torque), 30.996, 0.002);
  EXPECT_NEAR(in_newton_metres(answer.limits[3].torque), 36.634, 0.002);
  EXPECT_EQ(answer.governs->limit, StopLimit::rod);
  EXPECT_EQ(answer.verdict, HoldVerdict::within);
  EXPECT_THAT(codes(answer), Not(Contains(Code::stop_limit_not_stated)));
}

TEST(Stop, IsOverALimitThatTheTorquePasses) {
  StopCase asked = at_60();
  asked.limits.stop = newtons(1228);
  const StopAnswer answer = hold_by_stop(asked);
  EXPECT_EQ(answer.verdict, HoldVerdict::over_limit);
  EXPECT_EQ(severity_of(answer, Code::stop_over_limit), Severity::stop);
  asked.limits.stop = newtons(1229);
  EXPECT_EQ(hold_by_stop(asked).verdict, HoldVerdict::within);
}

// The very torque that was worked out as the most is not over it.
TEST(Stop, BearsTheMostThatItWasSaidToBear) {
  StopCase asked = at_60();
  asked.limits.stop = newtons(777.7);
  asked.torque = hold_by_stop(asked).governs->torque;
  EXPECT_EQ(hold_by_stop(asked).verdict, HoldVerdict::within);
}

TEST(Stop, IsJudgedByUndoingWhereThatTakesMore) {
  StopCase asked = at_60();
  asked.limits.stop = newtons(2000);
  asked.undo_torque = newton_metres(90);
  const StopAnswer answer = hold_by_stop(asked);
  EXPECT_EQ(answer.verdict, HoldVerdict::over_limit);
  EXPECT_NEAR(in_newtons(answer.undoing->forces.piston), 3.0 * in_newtons(answer.fitting.forces.piston), 1e-9);
  EXPECT_NEAR(in_newtons(answer.undoing->forces.rod), 3.0 * in_newtons(answer.fitting.forces.rod), 1e-9);
  EXPECT_EQ(std::get<quantity::Torque>(
                std::ranges::find(answer.findings, Code::stop_over_limit, &finding::Finding::code)->facts[0]),
            newton_metres(90));
}

// 300 N·m at 15° makes 37.3 kN on the stop, near the 38.3 kN that strips the plug thread; 310 N·m passes it.
TEST(Stop, StripsThePlugThreadWhateverWasStated) {
  StopCase asked = at_60();
  asked.before_top = degrees(15);
  asked.plug = plug(10);
  asked.torque = newton_metres(300);
  EXPECT_THAT(codes(hold_by_stop(asked)), Not(Contains(Code::plug_strips)));
  asked.torque = newton_metres(310);
  const StopAnswer answer = hold_by_stop(asked);
  EXPECT_EQ(severity_of(answer, Code::plug_strips), Severity::stop);
  EXPECT_EQ(answer.verdict, HoldVerdict::over_limit);
}

// F/cos 30° = 1.1547 F along the stop, F·tan 30° = 0.57735 F aside, F·sin 30° = F/2 across it.
TEST(Stop, BearsMoreWhereItIsInclined) {
  StopCase asked = at_60();
  asked.incline = degrees(30);
  asked.tip_diameter = millimetres(6);
  asked.limits.stop = newtons(1500);
  const StopAnswer answer = hold_by_stop(asked);
  EXPECT_NEAR(in_newtons(answer.fitting.along_stop), 1228.364667 * 1.1547005, 0.01);
  EXPECT_NEAR(in_newtons(answer.fitting.pushed_aside), 1228.364667 * 0.5773503, 0.01);
  EXPECT_NEAR(in_newtons(answer.fitting.across_stop), 1228.364667 / 2.0, 0.01);
  EXPECT_NEAR(in_megapascals(*answer.fitting.tip_pressure), 1228.364667 * 1.1547005 / 28.2743339, 0.01);
  EXPECT_NEAR(in_newton_metres(answer.governs->torque), 36.634 * 0.8660254, 0.002);
}

TEST(Stop, SaysWhatHalfAMillimetreChanges) {
  const StopAnswer answer = hold_by_stop(below(1.0));
  ASSERT_TRUE(answer.shorter && answer.longer);
  EXPECT_NEAR(in_millimetres(answer.shorter->below_top), 0.5, 1e-9);
  EXPECT_NEAR(in_millimetres(answer.longer->below_top), 1.5, 1e-9);
  // Near the top x grows with the square of the angle, so the force goes with 1/√x.
  EXPECT_NEAR(in_newtons(answer.shorter->piston) / in_newtons(answer.fitting.forces.piston), std::sqrt(2.0), 0.02);
  EXPECT_LT(in_newtons(answer.longer->piston), in_newtons(answer.fitting.forces.piston));
}

TEST(Stop, MayMissAPistonThatStandsNearADeadCentre) {
  const StopAnswer top = hold_by_stop(below(0.4));
  EXPECT_FALSE(top.shorter);
  EXPECT_EQ(severity_of(top, Code::near_dead_centre), Severity::stop);
  const StopAnswer bottom = hold_by_stop(below(49.7));
  EXPECT_FALSE(bottom.longer);
  EXPECT_EQ(severity_of(bottom, Code::near_dead_centre), Severity::stop);
  EXPECT_EQ(std::get<std::string>(bottom.findings[1].facts[4]), "bottom");
}

// HOLD-02 over HOLD-14 of the collection: 3733.08/1164.05 = 3.207.
TEST(Stop, IsComparedWithTheLeastForce) {
  StopCase asked = at_60();
  asked.before_top = degrees(15);
  const StopAnswer answer = hold_by_stop(asked);
  EXPECT_NEAR(answer.over_least, 3.207, 0.001);
  EXPECT_EQ(severity_of(answer, Code::near_dead_centre), Severity::mind);
  EXPECT_THAT(codes(hold_by_stop(at_60())), Not(Contains(Code::near_dead_centre)));
}

TEST(Stop, KnowsOfPortsOnlyWhatItWasTold) {
  StopCase asked = below(9.0);
  EXPECT_EQ(hold_by_stop(asked).ports, Ports::not_known);
  asked.port_below_top = millimetres(9.5);
  EXPECT_EQ(hold_by_stop(asked).ports, Ports::covered);
  asked.port_below_top = millimetres(8.5);
  EXPECT_EQ(hold_by_stop(asked).ports, Ports::open);
  EXPECT_THAT(codes(hold_by_stop(asked)), Contains(Code::port_open));
}

TEST(Stop, HasAWorkingThatCanBeFollowed) {
  StopCase asked = at_60();
  asked.tip_diameter = millimetres(6);
  asked.plug = plug(10);
  asked.incline = degrees(20);
  asked.limits = {megapascals(60), 3.0, newtons(1300), newtons(1500)};
  for (const StopCase& one : {at_60(), asked}) {
    const Working working = hold_by_stop(one).working;
    EXPECT_EQ(test::used_too_early(working), "");
    EXPECT_EQ(test::given_twice(working), "");
  }
}

} // namespace clampwright::crank
