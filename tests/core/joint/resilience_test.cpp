// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/resilience.hpp"

#include "core/joint/angle_turn.hpp"
#include "core/joint/slot.hpp"
#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"
#include "tests/core/working_order.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::joint {
namespace {

using finding::Code;
using quantity::degrees;
using quantity::in_degrees;
using quantity::in_millimetres;
using quantity::in_millimetres_per_newton;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::megapascals;
using quantity::millimetres;
using quantity::newton_metres;
using tightening::Verdict;

// M10 through 30 mm of steel: 20 mm of shank and 10 of thread, face 14.63 over a hole of 11 mm.
Stack m10_stack() {
  Stack out;
  out.thread = test::metric_thread("M10", 10, 1.5);
  out.grip = millimetres(30);
  out.free_thread = {millimetres(10), millimetres(10), millimetres(10)};
  out.free_thread_basis = "as given";
  out.face = millimetres(14.63);
  out.hole = millimetres(11);
  out.bolt = {megapascals(205000), megapascals(205000), "bolt steel", {}};
  out.part = {megapascals(210000), megapascals(210000), "steel", {}};
  return out;
}

tightening::ClampAnswer clamp_at(double torque_N_m, bool angle_follows) {
  tightening::Case c = test::m10_case();
  c.angle_follows = angle_follows;
  return tightening::clamp(c, newton_metres(torque_N_m)).value();
}

AngleAnswer turned(double angle_deg, double snug_N_m = 10) {
  return add_angle(clamp_at(snug_N_m, true), degrees(angle_deg), m10_stack());
}

SlotAnswer slot(double low_N_m, double high_N_m, int slots = 6, int holes = 1) {
  return slot_window({slots, holes, newton_metres(low_N_m), newton_metres(high_N_m), "as given"},
                     clamp_at(low_N_m, false), clamp_at(high_N_m, false), m10_stack());
}

bool has(const finding::Findings& findings, Code code) {
  return std::ranges::find(findings, code, &finding::Finding::code) != findings.end();
}

} // namespace

// By hand: A_N = 78.5398, A_d3 = π/4·8.15970² = 52.2924 mm². (5 + 20 + 4)/78.5398 + (10 + 5)/52.2924 = 0.656089 per mm;
// over 205 000 MPa 3.200434e-6 mm/N.
TEST(BoltResilience, AddsUpThePieces) {
  EXPECT_NEAR(in_millimetres_per_newton(bolt_resilience(m10_stack(), millimetres(10))), 3.20043e-6, 1e-10);
}

// In the part 0.33·d of it gives instead of the nut: 4/78.5398/205000 goes, 3.3/78.5398/45000 comes.
TEST(BoltResilience, TakesThePartForTheNutWhereThereIsNone) {
  Stack stack = m10_stack();
  stack.into_part = true;
  stack.part = {megapascals(45000), megapascals(45000), "magnesium", {}};
  const double by_hand = 3.20043e-6 - 4 / 78.5398 / 205000 + 3.3 / 78.5398 / 45000;
  EXPECT_NEAR(in_millimetres_per_newton(bolt_resilience(stack, millimetres(10))), by_hand, 1e-10);
}

// A shank of 7 mm: 20/38.4845 in the place of 20/78.5398.
TEST(BoltResilience, CountsAWaist) {
  Stack stack = m10_stack();
  stack.waist = millimetres(7);
  EXPECT_NEAR(in_millimetres_per_newton(bolt_resilience(stack, millimetres(10))),
              3.20043e-6 + (20 / 38.4845 - 20 / 78.5398) / 205000, 1e-10);
}

TEST(BoltResilience, GrowsWithABore) {
  Stack stack = m10_stack();
  stack.bore = millimetres(4);
  EXPECT_GT(bolt_resilience(stack, millimetres(10)), bolt_resilience(m10_stack(), millimetres(10)));
}

// By hand for wide parts: D_A = 44.63, slope 0.362 + 0.032·ln(30/29.26) + 0.153·ln(3.05058) = 0.533445; the cone ends
// at 14.63 + 30·0.533445 = 30.63335, inside the parts. 2·ln(25.63·19.63335/(3.63·41.63335))/(π·0.533445·210000·11) =
// 2.405698/3 871 230 = 6.2143e-7 mm/N.
TEST(PartResilience, IsAConeInWideParts) {
  EXPECT_NEAR(in_millimetres_per_newton(cone_resilience(m10_stack(), megapascals(210000))), 6.2143e-7, 1e-11);
}

TEST(PartResilience, DoesNotShrinkInPartsWiderThanThePressureSpreads) {
  Stack wide = m10_stack();
  wide.outer = millimetres(500);
  EXPECT_EQ(cone_resilience(wide, megapascals(210000)), cone_resilience(m10_stack(), megapascals(210000)));
  EXPECT_EQ(cylinder_resilience(wide, megapascals(210000)), cylinder_resilience(m10_stack(), megapascals(210000)));
}

TEST(PartResilience, GrowsAsThePartsGetNarrower) {
  double before = 0;
  for (const double outer : {60.0, 40.0, 30.0, 25.0, 20.0, 16.0, 14.63, 13.0, 12.0}) {
    Stack stack = m10_stack();
    stack.outer = millimetres(outer);
    const double now = in_millimetres_per_newton(cone_resilience(stack, megapascals(210000)));
    EXPECT_GE(now, before * (1 - 1e-3)) << outer;
    before = now;
  }
}

TEST(StackResilience, IsABandThatRises) {
  Stack stack = m10_stack();
  stack.free_thread = {millimetres(0), millimetres(10), millimetres(30)};
  stack.part = {megapascals(78000), megapascals(103000), "grey iron", {}};
  for (const bool into_part : {false, true}) {
    stack.into_part = into_part;
    const auto both = resilience_of(stack).both();
    EXPECT_LT(both.low, both.likely);
    EXPECT_LT(both.likely, both.high);
  }
  stack.waist = millimetres(6);
  const auto waisted = resilience_of(stack).bolt;
  EXPECT_LE(waisted.low, waisted.likely);
  EXPECT_LE(waisted.likely, waisted.high);
}

// ISO 4014 (memory): 2·d + 6 up to 125 mm, + 12 up to 200, + 25 above; ASME B18.2.1 (memory): 2·D + 1/4 in up to 6 in.
TEST(ThreadOnBolt, IsThatOfTheStandard) {
  const auto m10 = test::metric_thread("M10", 10, 1.5);
  EXPECT_DOUBLE_EQ(in_millimetres(thread_on_bolt(m10, millimetres(80))), 26);
  EXPECT_DOUBLE_EQ(in_millimetres(thread_on_bolt(m10, millimetres(150))), 32);
  EXPECT_DOUBLE_EQ(in_millimetres(thread_on_bolt(m10, millimetres(260))), 45);
  const auto half = test::inch_thread("1/2-13 UNC", thread::Form::unified, 0.5, 13);
  EXPECT_NEAR(in_millimetres(thread_on_bolt(half, quantity::inches(3))), 1.25 * 25.4, 1e-9);
}

// By hand: 1.5·30/360 = 0.125 mm over (3.20043 + 0.62143)e-6 is 32 706 N.
TEST(AngleTurn, AddsPitchOverResilience) { EXPECT_NEAR(in_newtons(turned(30).added.likely), 32706, 10); }

TEST(AngleTurn, AddsInProportionToTheAngle) {
  EXPECT_NEAR(turned(60).added.likely / turned(30).added.likely, 2, 1e-12);
}

TEST(AngleTurn, StandsOnTheSnugLoad) {
  const AngleAnswer answer = turned(15);
  EXPECT_DOUBLE_EQ(in_newtons(answer.preload->likely),
                   in_newtons(answer.snug_load->likely) + in_newtons(answer.added.likely));
  EXPECT_LT(answer.preload->low, answer.preload->likely);
}

// 8.8 yields near 34 kN with torsion: 10° stay below, 60° go far beyond, and then nothing is claimed.
TEST(AngleTurn, IsNotKnownBeyondTheElasticLine) {
  EXPECT_EQ(turned(10).verdict, Verdict::within);
  EXPECT_FALSE(has(turned(10).findings, Code::beyond_elastic));
  EXPECT_EQ(turned(60).verdict, Verdict::not_known);
  EXPECT_TRUE(turned(60).beyond_elastic);
  EXPECT_TRUE(has(turned(60).findings, Code::beyond_elastic));
}

TEST(AngleTurn, SaysWhatTheAngleAddsInThePlaceOfTheGeneralSentence) {
  const AngleAnswer answer = turned(20);
  EXPECT_EQ(std::ranges::count(answer.findings, Code::angle_final, &finding::Finding::code), 1);
  EXPECT_EQ(std::ranges::find(answer.findings, Code::angle_final, &finding::Finding::code)->facts.size(), 1U);
}

TEST(AngleTurn, IsJudgedByNothingWhereTheClassIsNotKnown) {
  tightening::Case c = test::m10_case();
  c.strength = strength::unknown_strength();
  c.angle_follows = true;
  const auto answer = add_angle(tightening::clamp(c, newton_metres(10)).value(), degrees(90), m10_stack());
  EXPECT_EQ(answer.verdict, Verdict::not_known);
  EXPECT_FALSE(answer.beyond_elastic);
  EXPECT_FALSE(answer.use_of_proof);
}

TEST(AngleTurn, ShowsAWorkingThatCanBeFollowed) {
  for (const bool into_part : {false, true}) {
    Stack stack = m10_stack();
    stack.into_part = into_part;
    for (const double outer : {12.0, 18.0, 90.0}) {
      stack.outer = millimetres(outer);
      const auto answer = add_angle(clamp_at(10, true), degrees(30), stack);
      EXPECT_EQ(test::used_too_early(answer.working), "") << outer;
      EXPECT_EQ(test::given_twice(answer.working), "") << outer;
    }
  }
}

// Six slots and one hole: the pin has two ends, and slots face each other. Two holes square to each other halve it;
// three at 60° fall on the slots again. Eight slots and two holes: a hole at 90° meets the slots as the first does.
TEST(SlotAngle, FollowsFromSlotsAndHoles) {
  EXPECT_DOUBLE_EQ(in_degrees(slot_angle(6, 1)), 60);
  EXPECT_DOUBLE_EQ(in_degrees(slot_angle(6, 2)), 30);
  EXPECT_DOUBLE_EQ(in_degrees(slot_angle(6, 3)), 60);
  EXPECT_DOUBLE_EQ(in_degrees(slot_angle(8, 1)), 45);
  EXPECT_DOUBLE_EQ(in_degrees(slot_angle(8, 2)), 45);
}

// 60° are twice the 32 706 N of 30°.
TEST(SlotWindow, GainsWhatTheTurnAdds) { EXPECT_NEAR(in_newtons(slot(20, 30).gain.likely), 65412, 20); }

// By hand: the lever of μ 0.12 is 10 N·m over the load at likely friction; the window follows from it the other way
// round.
TEST(SlotWindow, TurnsFromLowToHighByTheSameStack) {
  const SlotAnswer answer = slot(20, 30);
  const double per_newton = 20.0 / in_newtons(answer.preload_at_low->likely);
  EXPECT_NEAR(in_newton_metres(answer.more.likely), 65412 * per_newton, 0.1);
  EXPECT_NEAR(in_degrees(answer.window.likely), 10 / per_newton / 65412 * 60, 0.01);
}

TEST(SlotWindow, IsSureOnlyWhereEvenTheLeastTurnIsASlot) {
  const SlotAnswer narrow = slot(20, 30);
  EXPECT_EQ(narrow.meets, Meets::by_chance);
  EXPECT_LT(narrow.chance, 1);
  EXPECT_TRUE(has(narrow.findings, Code::slot_may_miss));
  const SlotAnswer wide = slot(10, 400);
  EXPECT_EQ(wide.meets, Meets::surely);
  EXPECT_DOUBLE_EQ(wide.chance, 1);
  EXPECT_FALSE(has(wide.findings, Code::slot_may_miss));
}

// Half of 60° is 1.5/12 mm.
TEST(SlotWindow, SaysWhichWasherMovesTheSlots) { EXPECT_DOUBLE_EQ(in_millimetres(slot(20, 30).half_a_slot), 0.125); }

TEST(SlotWindow, GoesByNutFactorWhereNoFaceIsKnown) {
  tightening::Case c = test::m10_case();
  c.face.reset();
  const auto answer = slot_window({6, 1, newton_metres(20), newton_metres(30), "as given"},
                                  tightening::clamp(c, newton_metres(20)).value(),
                                  tightening::clamp(c, newton_metres(30)).value(), m10_stack());
  // K of 0.18 on 10 mm.
  EXPECT_NEAR(in_newton_metres(answer.more.likely), in_newtons(answer.gain.likely) * 0.0018, 1e-6);
}

TEST(SlotWindow, ShowsAWorkingThatCanBeFollowed) {
  EXPECT_EQ(test::used_too_early(slot(20, 30).working), "");
  EXPECT_EQ(test::given_twice(slot(20, 30).working), "");
}

} // namespace clampwright::joint
