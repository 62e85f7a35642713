// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/geometry.hpp"

#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::thread {
namespace {

using quantity::in_degrees;
using quantity::in_millimetres;
using quantity::in_square_millimetres;
using test::inch_thread;
using test::metric_thread;

constexpr double k_inch_mm = 25.4;

} // namespace

// ISO 68-1, ISO 724, ISO 898-1: formulas (seen second-hand); worked out by hand to ten figures with √3 and π exact:
// d2 = 10 - 0.6495190528·1.5, D1 = 10 - 1.0825317547·1.5, d3 = 10 - 1.2268693220·1.5, As = π/4·((d2 + d3)/2)².
TEST(MetricThread, HasTheDiametersOfItsFormulas) {
  const Geometry m10 = geometry_of(metric_thread("M10", 10, 1.5));
  EXPECT_NEAR(in_millimetres(m10.pitch_diameter), 9.0257214207, 1e-9);
  EXPECT_NEAR(in_millimetres(m10.minor_diameter), 8.3762023679, 1e-9);
  EXPECT_NEAR(in_millimetres(m10.root_diameter), 8.1596960170, 1e-9);
}

TEST(MetricThread, HasTheStressAreaOfItsFormula) {
  EXPECT_NEAR(in_square_millimetres(*geometry_of(metric_thread("M10", 10, 1.5)).stress_area), 57.98959311, 1e-7);
}

TEST(MetricThread, HasFlanksOfThirtyDegrees) {
  EXPECT_NEAR(in_degrees(geometry_of(metric_thread("M10", 10, 1.5)).flank_angle), 30.0, 1e-12);
}

// ASME B1.1: formulas (seen second-hand), by hand for 1/4-20: 25.4·(0.25 - f/20) mm with f = 0.6495190528,
// 1.0825317547, 1.1907849302; area 645.16·π/4·(0.25 - 0.9742785793/20)² mm².
TEST(UnifiedThread, HasTheDiametersOfItsFormulas) {
  const Geometry quarter = geometry_of(inch_thread("1/4-20 UNC", Form::unified, 0.25, 20));
  EXPECT_NEAR(in_millimetres(quarter.pitch_diameter), 5.5251108029, 1e-9);
  EXPECT_NEAR(in_millimetres(quarter.minor_diameter), 4.9751846715, 1e-9);
  EXPECT_NEAR(in_millimetres(quarter.root_diameter), 4.8377031386, 1e-9);
}

TEST(UnifiedThread, HasTheStressAreaOfItsFormula) {
  EXPECT_NEAR(in_square_millimetres(*geometry_of(inch_thread("1/4-20 UNC", Form::unified, 0.25, 20)).stress_area),
              20.5298019725, 1e-8);
}

// BS 84:2007, effective and minor diameter of 1/4 and 5/16 BSW as tabled (seen second-hand), in inches to four places.
TEST(WhitworthThread, HasThePrintedDiameters) {
  const Geometry quarter = geometry_of(inch_thread("1/4 BSW", Form::whitworth, 0.25, 20));
  EXPECT_NEAR(in_millimetres(quarter.pitch_diameter) / k_inch_mm, 0.2180, 0.00005);
  EXPECT_NEAR(in_millimetres(quarter.minor_diameter) / k_inch_mm, 0.1860, 0.00005);
  const Geometry five = geometry_of(inch_thread("5/16 BSW", Form::whitworth, 0.3125, 18));
  EXPECT_NEAR(in_millimetres(five.pitch_diameter) / k_inch_mm, 0.2769, 0.00005);
  EXPECT_NEAR(in_millimetres(five.minor_diameter) / k_inch_mm, 0.2414, 0.00005);
}

TEST(WhitworthThread, HasFlanksOfTwentySevenAndAHalfDegrees) {
  EXPECT_NEAR(in_degrees(geometry_of(inch_thread("1/4 BSW", Form::whitworth, 0.25, 20)).flank_angle), 27.5, 1e-12);
}

// BS 93: depth 0.6·P (seen second-hand); 2 BA is 4.7 by 0.81 mm: 4.7 - 0.486 and 4.7 - 0.972 by hand.
TEST(BaThread, HasTheDiametersOfItsFormulas) {
  Thread thread = metric_thread("2 BA", 4.7, 0.81);
  thread.form = Form::ba;
  const Geometry geometry = geometry_of(thread);
  EXPECT_NEAR(in_millimetres(geometry.pitch_diameter), 4.214, 1e-9);
  EXPECT_NEAR(in_millimetres(geometry.minor_diameter), 3.728, 1e-9);
}

TEST(BaThread, HasFlanksOfTwentyThreeAndThreeQuarterDegrees) {
  Thread thread = metric_thread("2 BA", 4.7, 0.81);
  thread.form = Form::ba;
  EXPECT_NEAR(in_degrees(geometry_of(thread).flank_angle), 23.75, 1e-12);
}

// BS 811: depth 0.5327·P, from memory; 1/4 BSC has 26 threads an inch: 0.25 - 0.5327/26 and 0.25 - 1.0654/26 by hand.
TEST(CycleThread, HasTheRememberedDepth) {
  const Geometry geometry = geometry_of(inch_thread("1/4 BSC", Form::bsc, 0.25, 26));
  EXPECT_NEAR(in_millimetres(geometry.pitch_diameter) / k_inch_mm, 0.22951, 0.00001);
  EXPECT_NEAR(in_millimetres(geometry.minor_diameter) / k_inch_mm, 0.20902, 0.00001);
}

TEST(BritishThread, HasNoStressArea) {
  Thread ba = metric_thread("2 BA", 4.7, 0.81);
  ba.form = Form::ba;
  EXPECT_FALSE(geometry_of(ba).stress_area);
  EXPECT_FALSE(geometry_of(inch_thread("1/4 BSW", Form::whitworth, 0.25, 20)).stress_area);
  EXPECT_FALSE(geometry_of(inch_thread("1/4 BSC", Form::bsc, 0.25, 26)).stress_area);
}

TEST(BritishThread, HasItsMinorDiameterForARoot) {
  for (const Form form : {Form::whitworth, Form::bsc}) {
    const Geometry geometry = geometry_of(inch_thread("1/4", form, 0.25, 26));
    EXPECT_DOUBLE_EQ(in_millimetres(geometry.root_diameter), in_millimetres(geometry.minor_diameter));
  }
}

// atan(1.5/(π·9.0257214207)) by hand.
TEST(HelixAngle, FollowsFromPitchAndPitchDiameter) {
  EXPECT_NEAR(in_degrees(helix_angle(metric_thread("M10", 10, 1.5))), 3.0281505696, 1e-9);
}

TEST(GeometryWorking, EndsInTheStressArea) {
  const Working steps = geometry_working(metric_thread("M10", 10, 1.5));
  ASSERT_FALSE(steps.empty());
  EXPECT_EQ(steps.back().symbol, "As");
  EXPECT_NEAR(steps.back().value, 57.98959311, 1e-7);
}

TEST(GeometryWorking, NamesASourceAtEveryStep) {
  for (const Step& step : geometry_working(metric_thread("M10", 10, 1.5)))
    EXPECT_FALSE(step.source.empty()) << step.symbol;
}

} // namespace clampwright::thread
