// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/strip.hpp"

#include "core/thread/stripping.hpp"
#include "tests/core/joint/strip_cases.hpp"
#include "tests/core/working_order.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::joint {
namespace {

using finding::Code;
using quantity::in_millimetres;
using quantity::in_newtons;
using quantity::millimetres;
using test::m8_strip;
using testing::Contains;
using testing::Not;

StripAnswer with_length(StripCase asked, double length_mm) {
  asked.length = millimetres(length_mm);
  return strip(asked);
}

std::vector<Code> codes(const StripAnswer& answer) {
  std::vector<Code> out;
  for (const auto& one : answer.findings)
    out.push_back(one.code);
  return out;
}

double needed_mm(const StripAnswer& answer) { return in_millimetres(answer.needed.value()); }

} // namespace

// The collection's section 9: 1.2 · 800 MPa, C3 and two turns make 20.5 mm in 110 MPa. By hand: 960 · 36.6085 N over
// 110 · 16.8285 · 1.05518 N/mm, and 2.5 mm.
TEST(StripLengthNeeded, IsThatOfThePracticeText) {
  const StripAnswer answer = strip(m8_strip());
  EXPECT_NEAR(needed_mm(answer), 20.492300, 1e-5);
  EXPECT_NEAR(needed_mm(answer), 20.5, 0.05);
}

// By hand: 800 · 36.6085 over the same, and 2.5 mm.
TEST(StripLengthNeeded, IsLessForTheWeakestBolt) {
  EXPECT_NEAR(in_millimetres(strip(m8_strip()).needed_with_weakest.value()), 17.493584, 1e-5);
}

TEST(StripLengthNeeded, HoldsWhatDoesNotBearApart) {
  StripCase asked = m8_strip();
  const double with = needed_mm(strip(asked));
  asked.incomplete = millimetres(0);
  EXPECT_NEAR(with - needed_mm(strip(asked)), 2.5, 1e-9);
}

// Where the part is as hard as a nut the bolt's own thread decides. By hand for 500 MPa: R at the strongest bolt is
// 500 · 16.8285/(0.65 · 960 · 12.1612) = 1.10879, C2 = 0.92389, and 36.6085/(0.92389 · 0.65 · 12.1612) + 2.5 mm.
TEST(StripLengthNeeded, FollowsTheBoltsThreadInAHardPart) {
  const StripAnswer answer = strip(m8_strip(500));
  EXPECT_NEAR(answer.c2, 0.92389, 1e-5);
  EXPECT_NEAR(needed_mm(answer), 7.51270, 1e-4);
  EXPECT_EQ(with_length(m8_strip(500), 7.0).loads.first, Gives::bolt_thread);
}

TEST(StripLengthNeeded, IsNotKnownWithoutAClass) {
  StripCase asked = m8_strip();
  asked.bolt = strength::unknown_strength();
  asked.bolt_shear.reset();
  const StripAnswer answer = with_length(asked, 12);
  EXPECT_FALSE(answer.needed);
  EXPECT_FALSE(answer.bolt_break);
  EXPECT_FALSE(answer.loads.bolt_thread);
  EXPECT_FALSE(answer.loads.first);
  EXPECT_THAT(codes(answer), Contains(Code::class_unknown));
  // By hand with the least factor: 0.897 · 110 · 16.828527 · 9.5 N.
  EXPECT_NEAR(in_newtons(answer.loads.part_thread.value()), 15774.47, 0.01);
}

TEST(StripLengthNeeded, IsNotKnownWithoutAShearStrength) {
  StripCase asked = m8_strip();
  asked.part.shear_strength.reset();
  asked.part.soft = true;
  const StripAnswer answer = with_length(asked, 12);
  EXPECT_FALSE(answer.needed);
  EXPECT_FALSE(answer.loads.part_thread);
  EXPECT_THAT(codes(answer), Contains(Code::soft_part));
}

TEST(StripGoverns, SwitchesExactlyAtTheLengthNeeded) {
  for (const double shear : {60.0, 110.0, 190.0, 320.0, 600.0}) {
    const double needed = needed_mm(strip(m8_strip(shear)));
    EXPECT_EQ(with_length(m8_strip(shear), needed).loads.first, Gives::bolt) << shear;
    EXPECT_NE(with_length(m8_strip(shear), needed * (1 - 1e-6)).loads.first, Gives::bolt) << shear;
  }
}

TEST(StripGoverns, MayDifferBetweenTheWeakestAndTheStrongestBolt) {
  const StripLoads loads = with_length(m8_strip(), 19).loads;
  EXPECT_EQ(loads.first, Gives::part_thread);
  EXPECT_EQ(loads.first_with_weakest, Gives::bolt);
}

// By hand: 9.5 mm of 12 bear; 1.055184 · 110 · 16.828527 · 9.5 N in the part; C2 0.8973 · 0.65 · 800 · 12.16119 · 9.5 N
// in the bolt.
TEST(StripLoads, AreThoseOfTheLengthThatBears) {
  const StripAnswer answer = with_length(m8_strip(), 12);
  EXPECT_NEAR(in_millimetres(answer.bearing.value()), 9.5, 1e-9);
  EXPECT_NEAR(in_newtons(answer.loads.part_thread.value()), 18556.27, 0.01);
  EXPECT_NEAR(in_newtons(answer.loads.bolt_thread.value()), 53906.5, 1.0);
  EXPECT_NEAR(in_newtons(answer.bolt_break.value()), 29286.8, 0.1);
  EXPECT_NEAR(in_newtons(answer.bolt_break_highest.value()), 35144.2, 0.1);
  EXPECT_NEAR(answer.loads.margin.value(), 18556.27 / 35144.2, 1e-5);
}

// The values at their ends, as the collection has them: 0.897, 1.187, 1.055, 0.897.
TEST(StripFactors, AreThoseOfTheGuideAtTheEndsOfTheirRanges) {
  EXPECT_NEAR(bolt_thread_factor(1.0), 0.897, 5e-4);
  EXPECT_NEAR(bolt_thread_factor(2.2), 1.187, 5e-4);
  EXPECT_NEAR(part_thread_factor(0.4), 1.055, 5e-4);
  EXPECT_NEAR(part_thread_factor(1.0), 0.897, 5e-4);
}

TEST(StripFactors, KeepTheirLastValueBeyond) {
  EXPECT_DOUBLE_EQ(bolt_thread_factor(0.2), bolt_thread_factor(1.0));
  EXPECT_DOUBLE_EQ(bolt_thread_factor(9.0), bolt_thread_factor(2.2));
  EXPECT_DOUBLE_EQ(part_thread_factor(0.1), part_thread_factor(0.4));
  EXPECT_DOUBLE_EQ(part_thread_factor(3.0), part_thread_factor(1.0));
}

// By hand: 21.9911/16.8285 and 15.6612/12.1612, less one.
TEST(StripAreas, SayByHowMuchBasicSizesWouldOverstateThem) {
  const StripAnswer answer = strip(m8_strip());
  EXPECT_NEAR(answer.part_overstated, 0.30678, 1e-4);
  EXPECT_NEAR(answer.bolt_overstated, 0.28780, 1e-4);
}

TEST(StripInsert, NeedsLessLength) {
  StripCase asked = m8_strip();
  asked.insert = Insert{InsertKind::wire, asked.thread, thread::wire_insert_limits(asked.thread, asked.limits)};
  // By hand: 35144.2 N over 110 · 20.349934 N/mm, and 2.5 mm; no factor above 1 is taken against an insert.
  EXPECT_NEAR(needed_mm(strip(asked)), 18.19994, 1e-4);
  EXPECT_LT(needed_mm(strip(asked)), needed_mm(strip(m8_strip())));
}

TEST(StripFindings, SayThatAThreadGovernsOnlyWhereItDoes) {
  EXPECT_THAT(codes(with_length(m8_strip(), 12)), Contains(Code::strip_governs));
  EXPECT_THAT(codes(with_length(m8_strip(), 25)), Not(Contains(Code::strip_governs)));
  EXPECT_THAT(codes(strip(m8_strip())), Not(Contains(Code::strip_governs)));
}

TEST(StripFindings, SayThatMoreThanTwoDiametersAddLittle) {
  EXPECT_THAT(codes(strip(m8_strip(110))), Contains(Code::long_engagement));
  EXPECT_THAT(codes(strip(m8_strip(190))), Not(Contains(Code::long_engagement)));
}

TEST(StripFindings, NameAShearStrengthFromMemoryOnlyWhereItIs) {
  StripCase asked = m8_strip();
  EXPECT_THAT(codes(strip(asked)), Not(Contains(Code::value_from_memory)));
  asked.part.sources.front().known = Known::memory;
  EXPECT_THAT(codes(strip(asked)), Contains(Code::value_from_memory));
}

TEST(StripFindings, NameTheHeatAtWhichAPartCreepsOnlyWhereItDoes) {
  StripCase asked = m8_strip();
  EXPECT_THAT(codes(strip(asked)), Not(Contains(Code::creep)));
  asked.part.creeps_above = quantity::degrees_celsius(120);
  EXPECT_THAT(codes(strip(asked)), Contains(Code::creep));
}

// A head of 0.8 breaks at 0.8 at the least; but it may be as strong as the thread, and the strongest bolt has to break
// first.
TEST(StripReducedHead, LowersOnlyTheLeastBreak) {
  StripCase asked = m8_strip();
  asked.bolt = test::strength_08_8(36.6085);
  const StripAnswer answer = strip(asked);
  EXPECT_NEAR(in_newtons(answer.bolt_break.value()), 0.8 * 29286.8, 0.1);
  EXPECT_NEAR(needed_mm(answer), 20.4923, 1e-3);
}

TEST(StripWorking, CanBeFollowedDownwards) {
  StripCase keyed = m8_strip();
  keyed.insert = Insert{InsertKind::keyed, keyed.thread, keyed.limits};
  for (const StripCase& asked : {m8_strip(), keyed}) {
    const Working working = with_length(asked, 12).working;
    EXPECT_EQ(test::used_too_early(working), "");
    EXPECT_EQ(test::given_twice(working), "");
  }
}

} // namespace clampwright::joint
