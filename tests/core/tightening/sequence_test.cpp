// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/sequence.hpp"

#include "core/quantity/write.hpp"
#include "tests/core/problem_of.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using test::problem_of;
using testing::ElementsAre;
using testing::HasSubstr;

} // namespace

// Worked out by hand: always on by (n - 1)/2 places.
TEST(SequenceOfACircle, GoesOnByAboutHalfOfAnOddNumber) {
  EXPECT_THAT(order_of(Pattern::circle, 3), ElementsAre(1, 2, 3));
  EXPECT_THAT(order_of(Pattern::circle, 5), ElementsAre(1, 3, 5, 2, 4));
  EXPECT_THAT(order_of(Pattern::circle, 7), ElementsAre(1, 4, 7, 3, 6, 2, 5));
}

// By the rule: the pairs as a circle of five has its bolts.
TEST(SequenceOfACircle, TakesThePairsAsACircleOfHalfAsMany) {
  EXPECT_THAT(order_of(Pattern::circle, 10), ElementsAre(1, 6, 3, 8, 5, 10, 2, 7, 4, 9));
}

TEST(SequenceOfARow, BeginsInTheMiddle) {
  EXPECT_THAT(order_of(Pattern::row, 2), ElementsAre(1, 2));
  EXPECT_THAT(order_of(Pattern::row, 5), ElementsAre(3, 2, 4, 1, 5));
  EXPECT_THAT(order_of(Pattern::row, 8), ElementsAre(4, 5, 3, 6, 2, 7, 1, 8));
}

// Upper row 1 to 5, lower row 6 to 10: the middle column, then crosswise outwards.
TEST(SequenceOfTwoRows, GoesCrosswiseFromTheMiddleColumn) {
  EXPECT_THAT(order_of(Pattern::two_rows, 10), ElementsAre(3, 8, 2, 9, 4, 7, 1, 10, 5, 6));
  EXPECT_THAT(order_of(Pattern::two_rows, 4), ElementsAre(1, 4, 2, 3));
}

TEST(SequenceOfLoosening, IsTheSameBackwards) {
  EXPECT_THAT(undoing_order(order_of(Pattern::circle, 4)), ElementsAre(4, 2, 3, 1));
}

TEST(SequencePattern, IsReadAndNamed) {
  for (const Pattern pattern : {Pattern::circle, Pattern::row, Pattern::two_rows})
    EXPECT_EQ(read_pattern(pattern_name(pattern)).value(), pattern);
  EXPECT_THAT(problem_of(read_pattern("star")).hint, HasSubstr("circle"));
}

TEST(SequenceBolts, AreTwoToTwentyFour) {
  for (const int bolts : {-3, 0, 1, 25, 1000})
    EXPECT_EQ(problem_of(check_bolts(Pattern::circle, bolts)).code, "out-of-range") << bolts;
  for (const int bolts : {2, 24})
    EXPECT_TRUE(check_bolts(Pattern::row, bolts)) << bolts;
  EXPECT_FALSE(check_bolts(Pattern::two_rows, 7));
  EXPECT_FALSE(check_bolts(Pattern::two_rows, 2));
}

TEST(SequencePasses, RiseAndEndAtAllOfIt) {
  EXPECT_THAT(read_passes("50%,75%,100%").value(), ElementsAre(0.5, 0.75, 1.0));
  EXPECT_THAT(read_passes("0.7, 1").value(), ElementsAre(0.7, 1.0));
  EXPECT_THAT(read_passes("100%").value(), ElementsAre(1.0));
}

TEST(SequencePasses, AreRefusedWhereTheyDoNot) {
  // clang-format off
  const std::pair<const char*, const char*> k_refused[] = {
      {"75%,50%,100%",                     "do not rise"},
      {"50%,50%,100%",                     "do not rise"},
      {"50%,75%",                          "75 %"},
      {"50%,120%",                         "120 %"},
      {"0%,100%",                          "nothing"},
      {"1%,2%,3%,4%,5%,6%,7%,8%,9%,10%,100%", "more than 10"},
  };
  // clang-format on
  for (const auto& [text, says] : k_refused) {
    const Problem problem = problem_of(read_passes(text));
    EXPECT_EQ(problem.code, "out-of-range") << text;
    EXPECT_THAT(problem.message, HasSubstr(says)) << text;
  }
  for (const char* text : {"", ",", "50%,", "half", "50% 100%", "50Nm,100Nm"})
    EXPECT_EQ(problem_of(read_passes(text)).field, "--passes") << text;
}

TEST(SequencePasses, AreThreeAndTwoForASmallTorque) {
  EXPECT_THAT(usual_passes({}), ElementsAre(0.5, 0.75, 1.0));
  EXPECT_THAT(usual_passes(quantity::newton_metres(10.001)), ElementsAre(0.5, 0.75, 1.0));
  EXPECT_THAT(usual_passes(quantity::newton_metres(10)), ElementsAre(0.5, 1.0));
}

// 2 % of 45 is 0.9, so steps of 0.5: 22.5 stays, 33.75 becomes 33.5. 2 % of 110 is 2.2, so steps of 2: 54 and 82 below
// 55 and 82.5. The last one is never rounded.
TEST(SequenceMarks, AreRoundedDownBelowTheFinalTorqueOnly) {
  EXPECT_THAT(wrench_marks({0.5, 0.75, 1.0}, 45), ElementsAre(22.5, 33.5, 45));
  EXPECT_THAT(wrench_marks({0.5, 0.75, 1.0}, 110), ElementsAre(54, 82, 110));
  EXPECT_THAT(wrench_marks({0.5, 1.0}, 33.333), ElementsAre(16.5, 33.333));
  EXPECT_THAT(wrench_marks({0.5, 0.75, 1.0}, 24), ElementsAre(12, 18, 24));
}

// 0.7 · 3 has no double of its own; a value that is a whole number of steps must not fall to the one below.
TEST(SequenceMarks, DoNotFallAStepForTheLastBits) {
  EXPECT_THAT(wrench_marks({0.7, 1.0}, 3), ElementsAre(2.1, 3));
  EXPECT_THAT(wrench_marks({0.1, 0.3, 0.6, 0.7, 1.0}, 1), ElementsAre(0.1, 0.3, 0.6, 0.7, 1));
}

TEST(SequenceMarks, AreNeverAboveTheirShareNorFarBelow) {
  for (double torque = 0.013; torque < 2000; torque *= 1.37)
    for (const double share : {0.1, 0.25, 0.333, 0.5, 0.7, 0.75, 0.99}) {
      const double mark = wrench_marks({share, 1.0}, torque).front();
      EXPECT_LE(mark, share * torque * (1 + 1e-9)) << torque;
      EXPECT_GT(mark, (share - 0.02) * torque) << torque;
    }
}

} // namespace clampwright::tightening
