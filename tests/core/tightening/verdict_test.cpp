// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rules of the contract, section 2, "Verdict". The uses that decide are worked out by hand for the M10 of
// tests/core/cases.hpp: at μ 0.12 the likely use of yield is 0.0185741·T, at K 0.18 the use of proof T/60.552.
#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using quantity::newton_metres;
using test::m10_case;

// Friction without spread and a wrench without scatter: likely is high.
Case exact() {
  Case out = m10_case();
  out.mu_thread = test::mu_band(0.12);
  out.mu_head = test::mu_band(0.12);
  out.nut_factor = test::k_band(0.18);
  return out;
}

Case without_face(Case c) {
  c.face.reset();
  return c;
}

Case not_stated(Case c) {
  c.friction_stated = false;
  return c;
}

Verdict verdict(const Case& c, double torque_N_m) {
  return clamp(c, newton_metres(torque_N_m), WrenchAccuracy{0.0, "of the test"})->verdict;
}

Governs governs(const Case& c, double torque_N_m) { return clamp(c, newton_metres(torque_N_m))->governed_by; }

} // namespace

TEST(Verdict, IsWithinUpToNinetyTwoPerCentOfYield) {
  EXPECT_EQ(verdict(exact(), 30), Verdict::within);
  EXPECT_EQ(verdict(exact(), 49.5), Verdict::within); // 0.91942
}

TEST(Verdict, IsNearLimitAboveThat) {
  EXPECT_EQ(verdict(exact(), 49.6), Verdict::near_limit); // 0.92128
  EXPECT_EQ(verdict(exact(), 53.8), Verdict::near_limit); // 0.99929
}

TEST(Verdict, IsOverLimitWhereTheLikelyUseExceedsOne) {
  EXPECT_EQ(verdict(exact(), 53.9), Verdict::over_limit); // 1.00114
  EXPECT_EQ(verdict(m10_case(), 55), Verdict::over_limit);
}

TEST(Verdict, IsMayExceedWhereOnlyTheHighUseDoes) { EXPECT_EQ(verdict(m10_case(), 45), Verdict::may_exceed); }

TEST(Verdict, IsMayExceedBeforeItIsNearLimit) { EXPECT_EQ(verdict(m10_case(), 51), Verdict::may_exceed); }

TEST(Verdict, IsNotKnownWhereTheHighUseExceedsOneAndNobodyStatedTheFriction) {
  EXPECT_EQ(verdict(not_stated(m10_case()), 45), Verdict::not_known);
}

TEST(Verdict, IsOverLimitAlsoWhereNobodyStatedTheFriction) {
  EXPECT_EQ(verdict(not_stated(m10_case()), 55), Verdict::over_limit);
}

TEST(Verdict, IsWithinAlsoWhereNobodyStatedTheFriction) {
  EXPECT_EQ(verdict(not_stated(m10_case()), 30), Verdict::within);
}

TEST(Verdict, TakesTheScatterOfTheWrenchIntoTheHighUse) {
  const auto tight = clamp(exact(), newton_metres(52), WrenchAccuracy{0.0, ""})->verdict;
  const auto loose = clamp(exact(), newton_metres(52), WrenchAccuracy{0.06, ""})->verdict;
  EXPECT_EQ(tight, Verdict::near_limit);
  EXPECT_EQ(loose, Verdict::may_exceed);
}

TEST(VerdictWithoutFace, GoesByUseOfProof) {
  EXPECT_EQ(verdict(without_face(exact()), 55.7), Verdict::within);     // 0.91987
  EXPECT_EQ(verdict(without_face(exact()), 55.8), Verdict::near_limit); // 0.92152
  EXPECT_EQ(verdict(without_face(exact()), 60.5), Verdict::near_limit); // 0.99914
  EXPECT_EQ(verdict(without_face(exact()), 60.6), Verdict::over_limit); // 1.00079
}

TEST(VerdictWithoutFace, IsMayExceedWhereTheHighUseOfProofExceedsOne) {
  EXPECT_EQ(verdict(without_face(m10_case()), 45), Verdict::may_exceed);
  EXPECT_EQ(verdict(without_face(not_stated(m10_case())), 45), Verdict::not_known);
}

TEST(Verdict, IsNotKnownForAnUnknownClass) {
  Case c = exact();
  c.strength = strength::unknown_strength();
  EXPECT_EQ(verdict(c, 30), Verdict::not_known);
  EXPECT_EQ(verdict(without_face(c), 30), Verdict::not_known);
}

TEST(Verdict, IsNotKnownForWhatIsNoBolt) {
  for (const JointKind kind : {JointKind::hub, JointKind::plug, JointKind::stud_set, JointKind::union_nut}) {
    Case c = exact();
    c.kind = kind;
    EXPECT_EQ(verdict(c, 30), Verdict::not_known) << joint_kind_name(kind);
    EXPECT_EQ(verdict(without_face(c), 30), Verdict::not_known) << joint_kind_name(kind);
  }
}

TEST(Verdict, IsNotKnownWithoutAnyFriction) {
  Case c = exact();
  c.mu_thread.reset();
  c.mu_head.reset();
  c.nut_factor.reset();
  EXPECT_EQ(verdict(c, 30), Verdict::not_known);
}

// Stainless steel has a yield and no proof stress: thread friction still judges, the nut factor cannot.
TEST(Verdict, OfAClassWithoutProofStressNeedsThreadFriction) {
  Case c = exact();
  strength::StrengthClass stainless = test::class_8_8();
  stainless.proof_stress.reset();
  c.strength = strength::strength_of(stainless, quantity::square_millimetres(58), {});
  EXPECT_EQ(verdict(c, 30), Verdict::within);
  EXPECT_EQ(verdict(without_face(c), 30), Verdict::not_known);
}

TEST(Verdict, IsGovernedByYieldWhereThreadFrictionIsKnown) { EXPECT_EQ(governs(m10_case(), 45), Governs::yield); }

TEST(Verdict, IsGovernedByProofWithoutAFace) { EXPECT_EQ(governs(without_face(m10_case()), 45), Governs::proof); }

TEST(Verdict, IsGovernedByNothingWhereNothingIsKnown) {
  Case c = m10_case();
  c.strength = strength::unknown_strength();
  EXPECT_EQ(governs(c, 45), Governs::nothing);
}

TEST(VerdictName, IsThatOfTheContract) {
  EXPECT_EQ(verdict_name(Verdict::within), "within");
  EXPECT_EQ(verdict_name(Verdict::near_limit), "near-limit");
  EXPECT_EQ(verdict_name(Verdict::may_exceed), "may-exceed");
  EXPECT_EQ(verdict_name(Verdict::over_limit), "over-limit");
  EXPECT_EQ(verdict_name(Verdict::not_known), "not-known");
}

TEST(GovernsName, IsThatOfTheContract) {
  EXPECT_EQ(governs_name(Governs::yield), "yield");
  EXPECT_EQ(governs_name(Governs::proof), "proof");
}

} // namespace clampwright::tightening
