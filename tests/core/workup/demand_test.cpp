// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a joint must carry, as the clamp load that each bolt must keep. Hand calculations, and the rows FRIC-04 and
// FRIC-05 of the reference collection's practice/examples.csv (clutch theory; computed there).
#include "core/workup/demand.hpp"

#include <gtest/gtest.h>

namespace clampwright::workup {
namespace {

using quantity::in_newtons;
using quantity::megapascals;
using quantity::millimetres;
using quantity::newton_metres;
using quantity::newtons;

Demand by_friction(double torque_N_m, double radius_mm, double friction, int bolts) {
  Demand out;
  out.bolts = bolts;
  out.friction = ByFriction{newton_metres(torque_N_m), millimetres(radius_mm), std::nullopt, friction, 1};
  return out;
}

// FRIC-04: 60 N·m, μ 0.15, one face from 6 to 15 mm radius, whose mean radius is 11.142857 mm (FRIC-01).
TEST(NeededLoad, OfATorqueByFrictionIsThatOfTheHandbook) {
  EXPECT_NEAR(in_newtons(needed_load(by_friction(60, 11.142857, 0.15, 1)).kept), 35897.435897, 0.4);
}

// FRIC-05 the other way round: six bolts of 12 kN carry 405 N·m at 37.5 mm with μ 0.15.
TEST(NeededLoad, IsSharedByTheBolts) {
  EXPECT_NEAR(in_newtons(needed_load(by_friction(405, 37.5, 0.15, 6)).kept), 12000, 1e-6);
}

// 2 kN across two bolts, two faces, μ 0.10: 2000/(2·0.10·2) = 5000 N.
TEST(NeededLoad, OfAForceAcrossTheBoltsCountsTheFaces) {
  Demand demand;
  demand.bolts = 2;
  demand.friction = ByFriction{std::nullopt, std::nullopt, newtons(2000), 0.10, 2};
  EXPECT_NEAR(in_newtons(needed_load(demand).kept), 5000, 1e-9);
}

// 4 MPa on 54 mm is 9160.884 N; four bolts.
TEST(NeededLoad, OfAPressureIsThatOnItsArea) {
  Demand demand;
  demand.bolts = 4;
  demand.sealed = Sealed{megapascals(4), millimetres(54)};
  EXPECT_NEAR(in_newtons(needed_load(demand).kept), 9160.884 / 4, 1e-3);
}

TEST(NeededLoad, AddsWhatPullsToTheMostThatGrips) {
  Demand demand = by_friction(60, 11.142857, 0.15, 1);
  demand.clamp = newtons(40000);
  demand.pull = newtons(1000);
  demand.sealed = Sealed{megapascals(4), millimetres(54)};
  const NeededLoad needed = needed_load(demand);
  EXPECT_NEAR(in_newtons(needed.kept), 40000 + 1000 + 9160.884, 1e-3);
  EXPECT_EQ(needed.needs.size(), 4U);
}

// 9 kN kept of what was tightened less a tenth: 10 kN.
TEST(NeededLoad, GrowsByWhatIsLostAfterTightening) {
  Demand demand;
  demand.clamp = newtons(9000);
  demand.loss = 0.1;
  const NeededLoad needed = needed_load(demand);
  EXPECT_NEAR(in_newtons(needed.kept), 9000, 1e-9);
  EXPECT_NEAR(in_newtons(needed.tightened), 10000, 1e-9);
}

TEST(NeededLoad, IsNothingWhereNothingWasTold) {
  EXPECT_TRUE(needed_load(Demand{}).needs.empty());
  EXPECT_EQ(in_newtons(needed_load(Demand{}).tightened), 0.0);
}

} // namespace
} // namespace clampwright::workup
