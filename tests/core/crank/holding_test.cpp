// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/holding.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/working_order.hpp"

namespace clampwright::crank {
namespace {

using finding::Code;
using finding::Severity;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::megapascals;
using quantity::millimetres;
using quantity::newton_metres;
using testing::ElementsAre;

// 20 mm pin, 15 mm in the web: by hand π·20²·15/2 = 9424.78 mm³, so 0.10·80 MPa makes 75.40, 0.15·100 makes 141.37 and
// 0.20·120 makes 226.19 N·m.
PressFit fit() {
  return {millimetres(20), millimetres(15), {megapascals(80), megapascals(100), megapascals(120)}, {0.10, 0.15, 0.20}};
}

HoldCase held_by(Way way, double torque_N_m) {
  HoldCase out;
  out.by = way;
  out.torque = newton_metres(torque_N_m);
  return out;
}

HoldAnswer far_end(double torque_N_m) {
  HoldCase asked = held_by(Way::far_end, torque_N_m);
  asked.others.far_end = fit();
  return hold(asked);
}

std::vector<Code> codes(const HoldAnswer& answer) {
  std::vector<Code> out;
  for (const auto& finding : answer.findings)
    out.push_back(finding.code);
  return out;
}

} // namespace

TEST(SlipTorque, IsABandOfItsOwnInputs) {
  EXPECT_NEAR(in_newton_metres(slip_torque(fit()).low), 75.398, 0.001);
  EXPECT_NEAR(in_newton_metres(slip_torque(fit()).likely), 141.372, 0.001);
  EXPECT_NEAR(in_newton_metres(slip_torque(fit()).high), 226.195, 0.001);
}

TEST(FarEnd, IsJudgedByTheTorqueAtWhichThePinSlips) {
  EXPECT_EQ(far_end(75).verdict, HoldVerdict::within);
  EXPECT_EQ(far_end(76).verdict, HoldVerdict::may_exceed);
  EXPECT_EQ(far_end(142).verdict, HoldVerdict::over_limit);
  EXPECT_THAT(codes(far_end(75)), ElementsAre(Code::crank_reaction, Code::maker_first));
  EXPECT_EQ(far_end(76).findings[1].severity, Severity::mind);
  EXPECT_EQ(far_end(142).findings[0].severity, Severity::stop);
}

TEST(FarEnd, IsJudgedByUndoingWhereThatTakesMore) {
  HoldCase asked = held_by(Way::far_end, 60);
  asked.others.far_end = fit();
  asked.undo_torque = newton_metres(180);
  EXPECT_EQ(hold(asked).verdict, HoldVerdict::over_limit);
}

// 40 N·m on 54 mm pitch diameter: 2·40/0.054 = 1481.5 N.
TEST(OtherWays, BearTheTorqueOnTheirLever) {
  EXPECT_NEAR(in_newtons(tooth_force(newton_metres(40), millimetres(54))), 1481.48, 0.01);
  EXPECT_NEAR(in_newtons(strap_force(newton_metres(40), millimetres(60))), 666.667, 0.001);
}

TEST(Ways, AreAllNamedTheBestLoadPathFirst) {
  const HoldAnswer answer = hold(held_by(Way::same_end, 40));
  std::vector<Way> ways;
  for (const HoldingWay& way : answer.ways) {
    EXPECT_EQ(way.rank, static_cast<int>(ways.size()) + 1);
    EXPECT_FALSE(way.force || way.slips_at);
    ways.push_back(way.way);
  }
  EXPECT_THAT(ways, ElementsAre(Way::same_end, Way::strap, Way::gear, Way::stop, Way::far_end));
}

TEST(Ways, BearTheGreaterTorque) {
  HoldCase asked = held_by(Way::strap, 40);
  asked.others.strap_radius = millimetres(60);
  asked.undo_torque = newton_metres(120);
  EXPECT_NEAR(in_newtons(*hold(asked).ways[1].force), 2000.0, 1e-9);
  asked.undo_torque = newton_metres(20);
  EXPECT_NEAR(in_newtons(*hold(asked).ways[1].force), 666.667, 0.001);
}

TEST(Holding, HasAWorkingThatCanBeFollowed) {
  HoldCase asked = held_by(Way::stop, 40);
  asked.others = {millimetres(60), millimetres(54), fit()};
  asked.stop = StopCase();
  asked.stop->crank = {millimetres(25), millimetres(100)};
  asked.stop->before_top = quantity::degrees(45);
  const Working working = hold(asked).working;
  EXPECT_EQ(test::used_too_early(working), "");
  EXPECT_EQ(test::given_twice(working), "");
}

} // namespace clampwright::crank
