// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque between what the weakest part bears and what the joint must carry. The bolt is the M10 of
// tests/core/cases.hpp: proof load 580·58.0 = 33 640 N, lever 1.1714321684 N·mm for each newton at the least friction
// (thread friction 0.08, which is graver than K 0.12), 2.2 at the most by K 0.22. By hand, with a wrench of 4 %:
//   0.75 of proof is 25 230 N, reached at 25230·1.1714321684e-3/1.04 = 28.41849 N·m;
//   the seat of 220 MPa on 14.63/11 mm bears 220·π/4·(14.63² - 11²) = 16 076 N, reached at 18.1072 N·m;
//   11 111 N are sure from 11111.1·2.2e-3/0.96 = 25.46296 N·m on.
#include "core/workup/workup.hpp"

#include "core/joint/surroundings.hpp"
#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"
#include "tests/core/joint/strip_cases.hpp"
#include "tests/core/working_order.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::workup {
namespace {

using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::megapascals;
using quantity::newtons;
using testing::Contains;

Case m10(std::optional<double> must_clamp_N = std::nullopt) {
  Case out;
  out.fastener = test::m10_case();
  if (must_clamp_N) out.demand.clamp = newtons(*must_clamp_N);
  out.demand.loss = 0.1;
  // Both told, and both bear more than anything else.
  out.nut.emplace().nut_class = "8";
  out.nut->proof_load = newtons(1e6);
  out.seat = strength::PartMaterial{};
  out.seat->seat_pressure = megapascals(5000);
  return out;
}

Case with_seat(Case c, std::optional<double> bears_MPa) {
  c.seat = strength::PartMaterial{};
  c.seat->name = c.seat->description = "light metal";
  if (bears_MPa) c.seat->seat_pressure = megapascals(*bears_MPa);
  return c;
}

const AllowedLoad& of(const Answer& answer, Limit limit) {
  return *std::ranges::find(answer.limits, limit, &AllowedLoad::limit);
}

TEST(WorkUp, EndsWhereTheBoltReachesItsShareOfProof) {
  const Answer answer = work_up(m10());
  EXPECT_EQ(answer.verdict, Verdict::at_most);
  EXPECT_EQ(answer.governed_by, Limit::bolt_proof);
  EXPECT_NEAR(in_newtons(*of(answer, Limit::bolt_proof).allowed), 25230, 1e-6);
  EXPECT_NEAR(in_newton_metres(*answer.highest), 28.41849, 1e-4);
  EXPECT_FALSE(answer.lowest.has_value());
}

TEST(WorkUp, LeavesAWindowWhereTheJointMustCarryLess) {
  const Answer answer = work_up(m10(10000));
  EXPECT_EQ(answer.verdict, Verdict::torque);
  EXPECT_NEAR(in_newton_metres(*answer.lowest), 25.46296, 1e-4);
  EXPECT_NEAR(in_newton_metres(*answer.highest), 28.41849, 1e-4);
  EXPECT_DOUBLE_EQ(in_newton_metres(*answer.set), 28.0);
}

// The ends mean what they say: looked at with the function that any other command uses.
TEST(WorkUp, KeepsBothPromisesAtItsEnds) {
  const Answer answer = work_up(m10(10000));
  const auto most = tightening::clamp(answer.asked.fastener, *answer.highest).value();
  EXPECT_NEAR(in_newtons(joint::graver_load(most)->high), 25230, 1e-3);
  const auto least = tightening::clamp(answer.asked.fastener, *answer.lowest).value();
  EXPECT_NEAR(in_newtons(least.nut_factor->preload.low), 10000 / 0.9, 1e-3);
  EXPECT_GE(in_newtons(least.thread_friction->preload.low), 10000 / 0.9);
}

// A seat or thread that nobody told may be weaker than all that was looked at.
TEST(WorkUp, PromisesNothingWhereAPartWasNotTold) {
  Case no_seat = m10(10000);
  no_seat.seat.reset();
  Case no_thread = m10(10000);
  no_thread.nut.reset();
  for (const Case& c : {no_seat, no_thread}) {
    const Answer answer = work_up(c);
    EXPECT_EQ(answer.verdict, Verdict::at_most);
    EXPECT_THAT(answer.findings, Contains(testing::Field(&finding::Finding::code, finding::Code::not_looked_at)));
  }
  for (const finding::Finding& finding : work_up(m10(10000)).findings)
    EXPECT_NE(finding.code, finding::Code::not_looked_at);
}

// ISO 898-2: a nut goes with bolts up to the class of its number.
TEST(WorkUp, HasNoTorqueForANutOfWeakerBolts) {
  Case c = m10(1000);
  c.weak_nut_for = "8.8";
  const Answer answer = work_up(c);
  EXPECT_EQ(answer.verdict, Verdict::none);
  EXPECT_FALSE(answer.set.has_value());
  EXPECT_TRUE(finding::has_stop(answer.findings));
  EXPECT_EQ(answer.helps.front(), Help::stronger_nut);
}

TEST(WorkUp, SaysThatNoTorqueSatisfiesBoth) {
  const Answer answer = work_up(with_seat(m10(20000), 220));
  EXPECT_EQ(answer.verdict, Verdict::none);
  EXPECT_EQ(answer.governed_by, Limit::seat);
  EXPECT_NEAR(in_newton_metres(*answer.highest), 18.1072, 1e-3);
  EXPECT_FALSE(answer.scatter_alone); // 22 222 N against 16 076
  EXPECT_FALSE(answer.set.has_value());
  EXPECT_THAT(answer.helps, Contains(Help::larger_face));
}

TEST(WorkUp, TellsScatterFromWeakness) {
  const Answer answer = work_up(with_seat(m10(10000), 220));
  EXPECT_EQ(answer.verdict, Verdict::none);
  EXPECT_TRUE(answer.scatter_alone); // 11 111 N against 16 076
  EXPECT_EQ(answer.helps.front(), Help::less_scatter);
}

// With friction and wrench known to a point the same joint has its window: K 0.12 and μ 0.08 alone.
TEST(WorkUp, FindsAWindowWhereNothingScatters) {
  Case c = with_seat(m10(10000), 220);
  c.fastener.mu_thread = c.fastener.mu_head = test::mu_band(0.12);
  c.fastener.nut_factor.reset();
  c.accuracy = tightening::WrenchAccuracy{0.0, "of the test"};
  EXPECT_EQ(work_up(c).verdict, Verdict::torque);
}

TEST(WorkUp, KnowsNothingWhereAPartIsNotKnown) {
  Case class_unknown = m10(1000);
  class_unknown.fastener.strength = strength::unknown_strength();
  Case thread_unknown = m10(1000);
  thread_unknown.in_part = true;
  Case soft = m10(1000);
  soft.soft = SoftPart{"wood", std::nullopt};
  Case nut = m10(1000);
  nut.nut = strength::NutStrength{};
  for (const Case& c : {class_unknown, thread_unknown, soft, nut, with_seat(m10(1000), std::nullopt)}) {
    const Answer answer = work_up(c);
    EXPECT_EQ(answer.verdict, Verdict::not_known);
    EXPECT_FALSE(answer.set.has_value());
    EXPECT_FALSE(answer.highest.has_value());
    EXPECT_TRUE(answer.lowest.has_value()); // what it must carry is known all the same
  }
}

// More than the bolt allows is too much, whatever the wood would say.
TEST(WorkUp, SaysNoneEvenWhereAPartIsNotKnown) {
  Case soft = m10(30000);
  soft.soft = SoftPart{"wood", std::nullopt};
  EXPECT_EQ(work_up(soft).verdict, Verdict::none);
}

// 8 MPa on 73.07 mm² are 584.6 N.
TEST(WorkUp, HoldsASoftPartByThePressureThatWasTold) {
  Case c = m10();
  c.soft = SoftPart{"wood", megapascals(8)};
  const Answer answer = work_up(c);
  EXPECT_EQ(answer.governed_by, Limit::soft_part);
  EXPECT_NEAR(in_newtons(*answer.allowed), 584.6, 0.1);
}

// M8 in 110 MPa, 12 mm that bear: 16.828527 mm²/mm (STRIP-04), C3 as in the tests of strip; over the margin of 1.5.
TEST(WorkUp, TakesTheThreadInThePartAsStripDoes) {
  Case c;
  c.fastener = test::m10_case();
  c.fastener.thread = test::metric_thread("M8", 8, 1.25);
  c.fastener.strength = test::strength_8_8(36.6);
  c.in_part = true;
  c.threads = test::m8_strip(110);
  c.threads->length = quantity::millimetres(12);
  c.threads->incomplete = quantity::Length();
  const Answer answer = work_up(c);
  const auto strip = joint::strip(*c.threads);
  EXPECT_NEAR(in_newtons(*of(answer, Limit::part_thread).bears), strip.c3 * 110 * 16.828527 * 12, 25);
  EXPECT_NEAR(in_newtons(*of(answer, Limit::part_thread).allowed), in_newtons(*strip.loads.part_thread) / 1.5, 1e-6);
}

TEST(WorkUp, WorksUpNothingForWhatIsNoBolt) {
  for (const auto kind : {tightening::JointKind::plug, tightening::JointKind::union_nut,
                          tightening::JointKind::stud_set, tightening::JointKind::hub}) {
    Case c = m10(5000);
    c.fastener.kind = kind;
    const Answer answer = work_up(c);
    EXPECT_EQ(answer.verdict, Verdict::not_known);
    EXPECT_EQ(answer.lowest.has_value(), kind == tightening::JointKind::hub);
  }
}

TEST(WorkUp, LeavesAircraftHardwareToItsData) {
  Case c = m10();
  c.fastener.strength.approved_data = true;
  EXPECT_EQ(work_up(c).verdict, Verdict::not_known);
}

// Yield alone: 0.9 of 640 MPa with torsion at μ 0.08. By hand: tan φ = 1.5/(π·9.026), ρ' = atan(0.08/cos 30°); the
// thread torque is 0.65883 N·mm for each newton; d0 = √(4·58/π) = 8.5935 mm, W = π/12·d0³ = 166.14 mm³; for one
// newton σ = 1/58 and τ = 0.65883/166.14, so the reduced stress is √(σ² + 3·τ²) = 0.018559 MPa, and 576 MPa are
// 31 036 N. (The section by formula is 57.99 mm², which is 0.02 % less.)
TEST(WorkUp, CountsTorsionAgainstYield) {
  Case c = m10();
  c.shares.proof = 1.0;
  const Answer answer = work_up(c);
  EXPECT_EQ(answer.governed_by, Limit::bolt_yield);
  EXPECT_NEAR(in_newtons(*of(answer, Limit::bolt_yield).allowed), 31036, 31036 * 0.001);
}

TEST(WorkUp, GoesByTensionAloneWithoutAFace) {
  Case c = m10();
  c.fastener.face.reset();
  c.seat.reset(); // its pressure is not known without a face
  c.shares.proof = 1.0;
  const Answer answer = work_up(c);
  // 0.9 of 640·58.0 is 33 408 N, under the 33 640 of proof; K 0.12: 33408·1.2e-3/1.04 = 38.5477 N·m.
  EXPECT_EQ(answer.governed_by, Limit::bolt_yield);
  EXPECT_NEAR(in_newton_metres(*answer.highest), 38.5477, 1e-3);
}

TEST(WorkUp, CountsTheRunningTorqueOnTop) {
  Case c = m10(10000);
  const Answer without = work_up(c);
  c.fastener.running_torque = quantity::newton_metres(2);
  const Answer with = work_up(c);
  EXPECT_NEAR(in_newton_metres(*with.highest), in_newton_metres(*without.highest) + 2 / 1.04, 1e-6);
  EXPECT_NEAR(in_newton_metres(*with.lowest), in_newton_metres(*without.lowest) + 2 / 0.96, 1e-6);
}

TEST(WorkUp, IsAlwaysMarkedAsWorkedUp) {
  for (const Case& c : {m10(), m10(10000), m10(90000)}) {
    const Answer answer = work_up(c);
    EXPECT_THAT(answer.findings, Contains(testing::Field(&finding::Finding::code, finding::Code::derived_torque)));
    EXPECT_EQ(answer.findings.back().code, finding::Code::maker_first);
  }
}

TEST(WorkUp, CanBeFollowedFromAboveToBelow) {
  Case c = with_seat(m10(10000), 500);
  c.demand.bolts = 4;
  c.demand.pull = newtons(10);
  c.demand.sealed = Sealed{megapascals(0.1), quantity::millimetres(20)};
  c.demand.friction = ByFriction{quantity::newton_metres(5), quantity::millimetres(20), newtons(100), 0.1, 1};
  const Answer answer = work_up(c);
  EXPECT_EQ(answer.verdict, Verdict::torque);
  EXPECT_EQ(test::used_too_early(answer.working), "");
}

// Whatever the demand: the set torque lies between the ends, and the more is asked the less is left.
TEST(WorkUp, SetsNothingOutsideItsEnds) {
  for (double newton = 100; newton < 40000; newton *= 1.3) {
    const Answer answer = work_up(m10(newton));
    ASSERT_TRUE(answer.lowest.has_value());
    EXPECT_EQ(answer.verdict == Verdict::torque, *answer.lowest <= *answer.highest) << newton;
    if (!answer.set) continue;
    EXPECT_GE(*answer.set, *answer.lowest) << newton;
    EXPECT_LE(*answer.set, *answer.highest) << newton;
  }
}

} // namespace
} // namespace clampwright::workup
