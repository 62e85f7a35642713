// SPDX-License-Identifier: GPL-3.0-or-later
//
// Expected values worked out by hand (in decimals, outside this program) for the M10 of tests/core/cases.hpp by the
// formulas of the contract, section 2: levers d2/2·tan(φ + ρ′) of 0.6588321684, 0.8704331019 and 1.0830782791 mm at μ
// 0.08, 0.12 and 0.16, the head's μ·12.815/2, the wrench's 4 %.
#include "core/tightening/clamp.hpp"

#include "tests/core/cases.hpp"
#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using quantity::in_newtons;
using quantity::millimetres;
using quantity::newton_metres;
using test::m10_case;
using test::mu;
using test::problem_of;

ClampAnswer answer(const Case& c, double torque_N_m, std::optional<WrenchAccuracy> accuracy = std::nullopt) {
  return clamp(c, newton_metres(torque_N_m), std::move(accuracy)).value();
}

Case with_running(double torque_N_m) {
  Case out = m10_case();
  out.running_torque = newton_metres(torque_N_m);
  return out;
}

Case with_shank(double diameter_mm) {
  Case out = m10_case();
  out.shank = millimetres(diameter_mm);
  return out;
}

Case with_bore(double diameter_mm) {
  Case out = m10_case();
  out.bore = millimetres(diameter_mm);
  return out;
}

Case of_kind(JointKind kind) {
  Case out = m10_case();
  out.kind = kind;
  return out;
}

constexpr JointKind k_not_bolts[] = {JointKind::hub, JointKind::plug, JointKind::stud_set, JointKind::union_nut};

} // namespace

TEST(ThreadFriction, GivesLikelyLowAndHighPreload) {
  const auto part = *answer(m10_case(), 45).thread_friction;
  EXPECT_NEAR(in_newtons(part.preload.likely), 27450.19, 0.01);
  EXPECT_NEAR(in_newtons(part.preload.low), 20490.65, 0.01);
  EXPECT_NEAR(in_newtons(part.preload.high), 39951.10, 0.01);
}

// 45/(0.18·0.010), 43.2/(0.22·0.010), 46.8/(0.12·0.010).
TEST(NutFactor, GivesLikelyLowAndHighPreload) {
  const auto part = *answer(m10_case(), 45).nut_factor;
  EXPECT_NEAR(in_newtons(part.preload.likely), 25000.0, 1e-6);
  EXPECT_NEAR(in_newtons(part.preload.low), 19636.3636, 1e-3);
  EXPECT_NEAR(in_newtons(part.preload.high), 39000.0, 1e-6);
}

// Over 33 640 N, which is 580 MPa · 58 mm².
TEST(UseOfProof, IsPreloadOverProofLoad) {
  const auto a = answer(m10_case(), 45);
  EXPECT_NEAR(a.nut_factor->use_of_proof->likely, 0.7431629, 1e-7);
  EXPECT_NEAR(a.nut_factor->use_of_proof->high, 1.1593341, 1e-7);
  EXPECT_NEAR(a.thread_friction->use_of_proof->likely, 27450.19 / 33640.0, 1e-6);
}

TEST(UseOfYield, TakesTensionAndTorsionTogether) {
  const auto use = *answer(m10_case(), 45).thread_friction->use_of_yield;
  EXPECT_NEAR(use.low, 0.65999, 1e-5);
  EXPECT_NEAR(use.likely, 0.83584, 1e-5);
  EXPECT_NEAR(use.high, 1.15875, 1e-5);
}

TEST(UseOfYield, OfAWaistedBoltIsThatOfItsShank) {
  EXPECT_NEAR(answer(with_shank(7), 30).thread_friction->use_of_yield->likely, 0.8846001, 1e-7);
}

TEST(UseOfYield, OfAHollowBoltIsThatOfWhatTheBoreLeaves) {
  EXPECT_NEAR(answer(with_bore(4), 30).thread_friction->use_of_yield->likely, 0.7324177, 1e-7);
}

// 580 MPa · 38.48451001 mm² and · 45.42322249 mm².
TEST(ProofLoad, OfAWaistedOrHollowBoltIsThatOfItsSection) {
  EXPECT_NEAR(in_newtons(*answer(with_shank(7), 30).asked.strength.proof_load), 22321.016, 0.001);
  EXPECT_NEAR(in_newtons(*answer(with_bore(4), 30).asked.strength.proof_load), 26345.469, 0.001);
}

TEST(ProofLoad, UnderAShankThickerThanTheThreadsCoreIsThePrintedOne) {
  Case c = with_shank(9.9);
  c.strength.proof_load = quantity::newtons(33700);
  c.strength.proof_load_basis = strength::LoadBasis::table;
  EXPECT_DOUBLE_EQ(in_newtons(*answer(c, 30).asked.strength.proof_load), 33700.0);
}

// (45 - 5) N·m on the levers; the running torque twists the bolt as well.
TEST(RunningTorque, ClampsNothing) {
  const auto a = answer(with_running(5), 45);
  EXPECT_NEAR(in_newtons(a.thread_friction->preload.likely), 24400.1661, 1e-3);
  EXPECT_NEAR(in_newtons(a.nut_factor->preload.likely), 40.0 / 0.0018, 1e-6);
}

TEST(RunningTorque, TwistsTheBolt) {
  EXPECT_NEAR(answer(with_running(5), 45).thread_friction->use_of_yield->likely, 0.7842324, 1e-7);
}

// 10.2 · 0.96 = 9.792 N·m is less than 10 N·m.
TEST(LowPreload, IsNothingWhereTheWrenchMayNotExceedTheRunningTorque) {
  const auto a = answer(with_running(10), 10.2);
  EXPECT_EQ(in_newtons(a.thread_friction->preload.low), 0.0);
  EXPECT_EQ(in_newtons(a.nut_factor->preload.low), 0.0);
}

TEST(LowPreload, LeavesTheLikelyOneAlone) {
  const auto a = answer(with_running(10), 10.2);
  EXPECT_NEAR(in_newtons(a.thread_friction->preload.likely), 122.00083, 1e-4);
  EXPECT_NEAR(in_newtons(a.thread_friction->preload.high), 519.02280, 1e-4);
}

TEST(LowPreload, IsNothingWhereItJustEqualsTheRunningTorque) {
  const auto a = answer(with_running(10), 20, WrenchAccuracy{0.5, "of the test"});
  EXPECT_EQ(in_newtons(a.thread_friction->preload.low), 0.0);
}

TEST(Clamp, IsRefusedWhereTheTorqueDoesNotExceedTheRunningTorque) {
  for (const double torque : {10.0, 9.9, 0.1}) {
    const Problem problem = problem_of(clamp(with_running(10), newton_metres(torque)));
    EXPECT_EQ(problem.code, "out-of-range") << torque;
    EXPECT_EQ(problem.trouble, Trouble::not_understood) << torque;
  }
}

TEST(Clamp, IsRefusedForATorqueOfNothing) {
  EXPECT_EQ(problem_of(clamp(m10_case(), newton_metres(0))).code, "out-of-range");
}

TEST(Clamp, IsRefusedWhereTheSectionDoesNotFit) {
  EXPECT_EQ(problem_of(clamp(with_shank(11), newton_metres(45))).field, "--shank");
  EXPECT_EQ(problem_of(clamp(with_bore(9), newton_metres(45))).field, "--bore");
}

// At μ 0.12: 0.2387324146, 0.8704331019 - 0.2387324146 and 0.7689 over 1.6393331019.
TEST(TorqueShare, IsLiftThreadAndHead) {
  const auto share = answer(m10_case(), 45).thread_friction->share;
  EXPECT_NEAR(share.lift, 0.1456278, 1e-7);
  EXPECT_NEAR(share.thread, 0.3853400, 1e-7);
  EXPECT_NEAR(share.head, 0.4690322, 1e-7);
}

TEST(TorqueShare, AddsToOne) {
  for (const double torque : {1.0, 45.0, 500.0}) {
    const auto share = answer(m10_case(), torque).thread_friction->share;
    EXPECT_NEAR(share.lift + share.thread + share.head, 1.0, 1e-14);
  }
}

TEST(TorqueShare, IsOfTheTorqueAboveTheRunningTorque) {
  EXPECT_DOUBLE_EQ(answer(with_running(5), 45).thread_friction->share.lift,
                   answer(m10_case(), 45).thread_friction->share.lift);
}

// By halving the interval by hand outside this program: 0.0931243, 0.1404274 and 0.1776139.
TEST(FrictionAtYield, IsWhereTheTorqueBringsTheBoltToYield) {
  EXPECT_NEAR(*answer(m10_case(), 45).thread_friction->mu_at_yield, 0.0931243, 1e-7);
  EXPECT_NEAR(*answer(m10_case(), 60).thread_friction->mu_at_yield, 0.1404274, 1e-7);
  EXPECT_NEAR(*answer(m10_case(), 70).thread_friction->mu_at_yield, 0.1776139, 1e-7);
}

TEST(FrictionAtYield, ReallyGivesAUseOfOne) {
  for (const double torque : {30.0, 45.0, 60.0, 90.0}) {
    const double friction = *answer(m10_case(), torque).thread_friction->mu_at_yield;
    EXPECT_NEAR(use_of_yield(m10_case(), newton_metres(torque), mu(friction), mu(friction)), 1.0, 1e-9) << torque;
  }
}

TEST(FrictionAtYield, TakesTheRunningTorqueAlong) {
  const double friction = *answer(with_running(5), 45).thread_friction->mu_at_yield;
  EXPECT_NEAR(use_of_yield(with_running(5), newton_metres(45), mu(friction), mu(friction)), 1.0, 1e-9);
}

// Without any friction 5 N·m clamp 20.9 kN: 361 MPa tension, 30 MPa torsion.
TEST(FrictionAtYield, IsNotKnownWhereNoFrictionIsLittleEnough) {
  EXPECT_FALSE(answer(m10_case(), 5).thread_friction->mu_at_yield);
}

TEST(FrictionAtYield, IsNotKnownWhereNoFrictionIsGreatEnough) {
  EXPECT_FALSE(answer(m10_case(), 2000).thread_friction->mu_at_yield);
}

TEST(UsesOfStrength, AreNotGivenForWhatIsNoBolt) {
  for (const JointKind kind : k_not_bolts) {
    const auto a = answer(of_kind(kind), 45);
    EXPECT_FALSE(a.thread_friction->use_of_yield) << joint_kind_name(kind);
    EXPECT_FALSE(a.thread_friction->use_of_proof) << joint_kind_name(kind);
    EXPECT_FALSE(a.thread_friction->mu_at_yield) << joint_kind_name(kind);
    EXPECT_FALSE(a.nut_factor->use_of_proof) << joint_kind_name(kind);
  }
}

TEST(Preload, IsGivenForWhatIsNoBolt) {
  for (const JointKind kind : k_not_bolts)
    EXPECT_NEAR(in_newtons(answer(of_kind(kind), 45).thread_friction->preload.likely), 27450.19, 0.01);
}

TEST(UsesOfStrength, AreNotGivenForAnUnknownClass) {
  Case c = m10_case();
  c.strength = strength::unknown_strength();
  const auto a = answer(c, 45);
  EXPECT_FALSE(a.thread_friction->use_of_yield);
  EXPECT_FALSE(a.nut_factor->use_of_proof);
  EXPECT_FALSE(a.thread_friction->mu_at_yield);
}

TEST(UsesOfStrength, AreNotGivenForABritishThread) {
  Case c = m10_case();
  c.thread.form = thread::Form::whitworth;
  c.strength = strength::strength_of(test::class_8_8(), std::nullopt, {});
  const auto a = answer(c, 45);
  EXPECT_FALSE(a.thread_friction->use_of_yield);
  EXPECT_FALSE(a.nut_factor->use_of_proof);
}

TEST(ThreadFriction, IsLeftOutWithoutAFace) {
  Case c = m10_case();
  c.face.reset();
  EXPECT_FALSE(answer(c, 45).thread_friction);
  EXPECT_TRUE(answer(c, 45).nut_factor);
}

TEST(ThreadFriction, IsLeftOutWithoutFriction) {
  Case c = m10_case();
  c.mu_thread.reset();
  c.mu_head.reset();
  EXPECT_FALSE(answer(c, 45).thread_friction);
}

TEST(NutFactor, IsLeftOutWithoutK) {
  Case c = m10_case();
  c.nut_factor.reset();
  EXPECT_FALSE(answer(c, 45).nut_factor);
  EXPECT_TRUE(answer(c, 45).thread_friction);
}

TEST(ThreadFriction, KeepsThreadAndHeadApart) {
  Case c = m10_case();
  c.mu_thread = test::mu_band(0.12);
  c.mu_head = test::mu_band(0.16);
  EXPECT_NEAR(in_newtons(answer(c, 45).thread_friction->preload.likely), 45000.0 / (0.8704331019 + 0.16 * 12.815 / 2),
              0.001);
}

// 10 N·m falls under the 6 % of small tools: 9.4, 10 and 10.6 N·m.
TEST(WrenchAccuracy, OfTenNewtonMetresIsSixPerCent) {
  const auto a = answer(m10_case(), 10);
  EXPECT_NEAR(in_newtons(a.thread_friction->preload.low), 4458.614, 0.001);
  EXPECT_NEAR(in_newtons(a.thread_friction->preload.high), 9048.753, 0.001);
  EXPECT_NEAR(in_newtons(a.nut_factor->preload.high), 8833.333, 0.001);
}

TEST(WrenchAccuracy, ThatIsGivenTakesThePlaceOfTheStandard) {
  const auto a = answer(m10_case(), 10, WrenchAccuracy{0.0, "as given"});
  EXPECT_NEAR(in_newtons(a.nut_factor->preload.low), 10.0 / 0.0022, 1e-6);
  EXPECT_EQ(a.accuracy.basis, "as given");
}

} // namespace clampwright::tightening
