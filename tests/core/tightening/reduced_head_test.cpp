// SPDX-License-Identifier: GPL-3.0-or-later
//
// A mark with a leading zero bears 0.8 of the loads of the full class, so every share is of 0.8 of proof and yield.
// Worked out by hand for the M10 of tests/core/cases.hpp: A0 57.9895931 mm², W_P 166.0958941 mm³, levers of the thread
// 0.6588322, 0.8704331 and 1.0830783 mm at μ 0.08, 0.12 and 0.16.
#include "core/tightening/clamp.hpp"
#include "core/tightening/clamp_working.hpp"
#include "core/tightening/wanted.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace clampwright::tightening {
namespace {

using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::newton_metres;

Case m10_08_8() {
  Case out = test::m10_case();
  out.strength = test::strength_08_8(58.0);
  return out;
}

// The same with a proof load that the standard prints for the full class: ISO 898-1, M10, 8.8: 33 700 N (second-hand).
Case m10_printed() {
  Case out = m10_08_8();
  const strength::PrintedLoads printed{strength::PrintedLoad{quantity::newtons(33700), {}}, {}};
  out.strength = strength::reduced(
      strength::strength_of(test::class_8_8(), quantity::square_millimetres(58.0), printed), {"08.8", 0.8, {}}, {});
  return out;
}

Wanted yield(double share) { return {Aim::yield_share, {}, share}; }
Wanted proof(double share) { return {Aim::proof_share, {}, share}; }

struct Row {
  std::map<std::string, double> values;
  std::map<std::string, std::string> formulas;
};

Row steps(const Working& working) {
  Row out;
  for (const Step& step : working) {
    out.values[step.symbol] = step.value;
    out.formulas[step.symbol] = step.formula;
  }
  return out;
}

} // namespace

// At 45 N·m the full class is at 0.659989, 0.835836 and 1.158749 of its yield (von Mises over 640 MPa); over 0.8 · 640
// MPa that is 0.824986, 1.044795 and 1.448436.
TEST(ReducedHead, IsJudgedByItsShareOfYield) {
  const auto use = clamp(m10_08_8(), newton_metres(45))->thread_friction->use_of_yield.value();
  EXPECT_NEAR(use.low, 0.8249864178, 1e-9);
  EXPECT_NEAR(use.likely, 1.0447947793, 1e-9);
  EXPECT_NEAR(use.high, 1.4484363332, 1e-9);
}

// 27450.1869/33640/0.8 = 1.0199980.
TEST(ReducedHead, IsJudgedByItsShareOfProof) {
  EXPECT_NEAR(clamp(m10_08_8(), newton_metres(45))->thread_friction->use_of_proof->likely, 1.0199980260, 1e-9);
}

TEST(ReducedHead, IsOverItsLimitWhereTheFullClassIsNot) {
  EXPECT_EQ(clamp(m10_08_8(), newton_metres(45))->verdict, Verdict::over_limit);
  EXPECT_EQ(clamp(test::m10_case(), newton_metres(45))->verdict, Verdict::may_exceed);
}

// 40.38838205 N·m bring the full class to yield at μ 0.08, so 0.8 of that bring the reduced one there.
TEST(ReducedHead, YieldsAtTheFrictionThatBringsItToItsShare) {
  const double torque = 0.8 * 40.38838205;
  EXPECT_NEAR(clamp(m10_08_8(), newton_metres(torque))->thread_friction->mu_at_yield.value(), 0.08, 1e-8);
}

// 0.8 · 31030.0031 N and 0.8 · 36.34954385 N·m: without a running torque all is in proportion.
TEST(ReducedHead, GetsTheTorqueForAShareOfItsYield) {
  const auto answer = torque_for(m10_08_8(), yield(0.9)).value();
  EXPECT_NEAR(in_newtons(answer.preload), 24824.0025, 0.001);
  EXPECT_NEAR(in_newton_metres(answer.clamp.torque), 29.07963508, 1e-7);
}

// (F/A0)² + 3·((F·0.6588322 + 5000)/W_P)² = (0.9 · 0.8 · 640 MPa)² solved outside this program: F = 23646.8753 N, not
// 0.8 · 29880.4912.
TEST(ReducedHead, GetsThatTorqueWithARunningTorqueToo) {
  Case c = m10_08_8();
  c.running_torque = newton_metres(5);
  const auto answer = torque_for(c, yield(0.9)).value();
  EXPECT_NEAR(in_newtons(answer.preload), 23646.8753, 0.001);
  EXPECT_NEAR(in_newton_metres(answer.clamp.torque), 32.70071042, 1e-7);
}

// The least friction loads it to that share, neither more nor less; so for the whole of it, where the search ends at
// its own bound if there is no torsion.
TEST(ReducedHead, IsLoadedToTheShareThatWasWanted) {
  for (const double share : {0.1, 0.5, 0.9, 1.0}) {
    const auto answer = torque_for(m10_08_8(), yield(share)).value();
    EXPECT_NEAR(use_of_yield(m10_08_8(), answer.clamp.torque, test::mu(0.08), test::mu(0.08)), share, 1e-12);
  }
}

// 0.75 · 0.8 · 33640 = 20184 N on the lever of 1.6393331019 mm.
TEST(ReducedHead, GetsTheTorqueForAShareOfItsProof) {
  const auto answer = torque_for(m10_08_8(), proof(0.75)).value();
  EXPECT_NEAR(in_newtons(answer.preload), 20184, 1e-6);
  EXPECT_NEAR(in_newton_metres(answer.clamp.torque), 33.08829933, 1e-7);
}

// 0.8 · 580 MPa · π/4 · 7² mm² = 17 856.81 N: head and shank both count.
TEST(ReducedHead, CountsBesideAWaistedShank) {
  Case c = m10_08_8();
  c.shank = quantity::millimetres(7);
  EXPECT_NEAR(in_newtons(torque_for(c, proof(1.0))->preload), 17856.8126, 0.001);
}

TEST(WorkingOfAReducedHead, CanBeFollowedByHand) {
  const auto v = steps(clamp(m10_08_8(), newton_metres(45))->working).values;
  EXPECT_NEAR(v.at("f_h"), 0.8, 1e-12);
  EXPECT_NEAR(v.at("F_p"), 0.8 * 580 * 58.0, 1e-6);
  EXPECT_NEAR(v.at("u_p"), v.at("F") / v.at("F_p"), 1e-12);
  EXPECT_NEAR(v.at("u_y"), v.at("σ_v") / (v.at("f_h") * v.at("R")), 1e-12);
  EXPECT_NEAR(v.at("R"), 640, 1e-9);
}

TEST(WorkingOfAReducedHead, BeginsWithTheProofLoadOfTheFullClassWhereThatIsPrinted) {
  const auto working = steps(clamp(m10_printed(), newton_metres(45))->working);
  EXPECT_NEAR(working.values.at("F_p0"), 33700, 1e-6);
  EXPECT_NEAR(working.values.at("F_p"), 26960, 1e-6); // 0.8 · 33 700
  EXPECT_EQ(working.formulas.at("F_p"), "f_h·F_p0");
}

TEST(WorkingOfAReducedHead, ComesToTheLoadThatWasWanted) {
  const auto working = steps(torque_for(m10_08_8(), yield(0.9))->clamp.working);
  const auto& v = working.values;
  EXPECT_EQ(working.formulas.at("F_w"), "0.9·f_h·R/√((1/A0)² + 3·(l_t high/W_P)²)");
  const double tension = 1.0 / v.at("A0");
  const double torsion = v.at("l_t high") / v.at("W_P");
  EXPECT_NEAR(v.at("F_w"), 0.9 * v.at("f_h") * v.at("R") / std::sqrt(tension * tension + 3.0 * torsion * torsion),
              1e-6);
}

TEST(WorkingOfAReducedHead, ComesToTheLoadThatWasWantedWithARunningTorque) {
  Case c = m10_08_8();
  c.running_torque = newton_metres(5);
  const auto working = steps(torque_for(c, yield(0.9))->clamp.working);
  const auto& v = working.values;
  EXPECT_EQ(working.formulas.at("F_w"), "F that solves (F/A0)² + 3·((F·l_t high + T_run·1000)/W_P)² = (0.9·f_h·R)²");
  const double tension = v.at("F_w") / v.at("A0");
  const double torsion = (v.at("F_w") * v.at("l_t high") + 5000.0) / v.at("W_P");
  EXPECT_NEAR(std::sqrt(tension * tension + 3.0 * torsion * torsion), 0.9 * 0.8 * 640, 1e-6);
}

TEST(WorkingOfAFullHead, HasNoShare) {
  const auto working = steps(torque_for(test::m10_case(), yield(0.9))->clamp.working);
  EXPECT_FALSE(working.values.contains("f_h"));
  EXPECT_EQ(working.formulas.at("F_w"), "0.9·R/√((1/A0)² + 3·(l_t high/W_P)²)");
}

} // namespace clampwright::tightening
