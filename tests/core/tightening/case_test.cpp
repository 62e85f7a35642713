// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/case.hpp"

#include "tests/core/cases.hpp"
#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using quantity::in_square_millimetres;
using quantity::millimetres;
using quantity::newton_metres;
using test::m10_case;
using test::problem_of;

double section_mm2(const Case& c) { return in_square_millimetres(*bearing_section(c)); }

Case with(std::optional<double> shank_mm, std::optional<double> bore_mm) {
  Case out = m10_case();
  if (shank_mm) out.shank = millimetres(*shank_mm);
  if (bore_mm) out.bore = millimetres(*bore_mm);
  return out;
}

} // namespace

// ISO 6789:2003 as set out in a tool handbook (seen second-hand): ± 6 % up to and including 10 N·m, ± 4 % above.
TEST(StandardAccuracy, IsSixPerCentUpToTenNewtonMetres) {
  EXPECT_DOUBLE_EQ(standard_accuracy(newton_metres(0.5)).share, 0.06);
  EXPECT_DOUBLE_EQ(standard_accuracy(newton_metres(10.0)).share, 0.06);
}

TEST(StandardAccuracy, IsFourPerCentAboveTenNewtonMetres) {
  EXPECT_DOUBLE_EQ(standard_accuracy(newton_metres(10.001)).share, 0.04);
  EXPECT_DOUBLE_EQ(standard_accuracy(newton_metres(500.0)).share, 0.04);
}

TEST(StandardAccuracy, NamesTheStandard) {
  EXPECT_TRUE(test::says(standard_accuracy(newton_metres(5)).basis, "ISO 6789"));
  EXPECT_TRUE(test::says(standard_accuracy(newton_metres(50)).basis, "ISO 6789"));
}

TEST(Face, HasTheMeanOfItsDiameters) {
  EXPECT_NEAR(quantity::in_millimetres(test::face(14.63, 11.0).mean_diameter()), 12.815, 1e-12);
}

// As = 57.98959311 mm² and π/4·7² = 38.48451001, π/4·4² = 12.56637061, by hand.
TEST(BearingSection, IsTheStressAreaOfAFullBolt) { EXPECT_NEAR(section_mm2(m10_case()), 57.98959311, 1e-7); }

TEST(BearingSection, IsTheShankOfAWaistedBolt) { EXPECT_NEAR(section_mm2(with(7, {})), 38.48451001, 1e-7); }

TEST(BearingSection, IsTheStressAreaUnderAShankThatIsThicker) {
  EXPECT_NEAR(section_mm2(with(9.9, {})), 57.98959311, 1e-7);
}

TEST(BearingSection, LosesTheBore) {
  EXPECT_NEAR(section_mm2(with({}, 4)), 45.42322249, 1e-7);
  EXPECT_NEAR(section_mm2(with(7, 4)), 25.91813939, 1e-7);
}

TEST(BearingSection, IsNotKnownForABritishThread) {
  Case c = m10_case();
  c.thread.form = thread::Form::whitworth;
  EXPECT_FALSE(bearing_section(c));
}

TEST(BearingSection, IsNotKnownWhereTheBoreTakesAll) { EXPECT_FALSE(bearing_section(with({}, 9))); }

TEST(Section, ThatFitsIsAccepted) {
  for (const auto& c : {with({}, {}), with(7, {}), with(10, {}), with({}, 4), with(7, 4)})
    EXPECT_TRUE(check_section(c));
}

TEST(Section, OfAShankThickerThanTheThreadIsRefused) {
  const Problem problem = problem_of(check_section(with(10.5, {})));
  EXPECT_EQ(problem.code, "out-of-range");
  EXPECT_EQ(problem.field, "--shank");
}

TEST(Section, WithABoreThatLeavesNothingIsRefused) {
  EXPECT_EQ(problem_of(check_section(with({}, 9))).field, "--bore");
  EXPECT_EQ(problem_of(check_section(with(7, 7))).code, "out-of-range");
}

TEST(JointKindName, IsThatOfTheContract) {
  EXPECT_EQ(joint_kind_name(JointKind::bolt), "bolt");
  EXPECT_EQ(joint_kind_name(JointKind::hub), "hub");
  EXPECT_EQ(joint_kind_name(JointKind::plug), "plug");
  EXPECT_EQ(joint_kind_name(JointKind::stud_set), "stud-set");
  EXPECT_EQ(joint_kind_name(JointKind::union_nut), "union");
}

} // namespace clampwright::tightening
