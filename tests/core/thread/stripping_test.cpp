// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/stripping.hpp"

#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::thread {
namespace {

using quantity::in_millimetres;
using quantity::in_newtons;
using quantity::Length;
using quantity::megapascals;
using quantity::millimetres;
using test::inch_thread;
using test::metric_thread;

// Only what the strip areas need: d_min, d2_min, D1_max, D2_max.
Limits limits(double d_min, double d2_min, double D1_max, double D2_max) {
  Limits out;
  out.d_min = millimetres(d_min);
  out.d2_min = millimetres(d2_min);
  out.D1_max = millimetres(D1_max);
  out.D2_max = millimetres(D2_max);
  return out;
}

const Thread k_m8 = metric_thread("M8", 8, 1.25);
const Limits k_m8_limits = limits(7.760, 7.042, 6.912, 7.348); // 6g and 6H, ISO 965-1, from memory

} // namespace

// By hand: π/1.25 · 7.760 · (0.625 + 0.412/√3) = 2.5132741 · 7.760 · 0.8628683 mm.
TEST(StripWidth, OfAnInternalMetricThreadIsThatOfItsFormula) {
  EXPECT_NEAR(in_millimetres(internal_strip_width(k_m8, k_m8_limits)), 16.828527, 1e-6);
}

// By hand: π/1.25 · 6.912 · (0.625 + 0.130/√3) = 2.5132741 · 6.912 · 0.7000555 mm.
TEST(StripWidth, OfAnExternalMetricThreadIsThatOfItsFormula) {
  EXPECT_NEAR(in_millimetres(external_strip_width(k_m8, k_m8_limits)), 12.161190, 1e-6);
}

// By hand, with limits chosen for the arithmetic: tan 27.5° = 0.5205671; π/1.27 · 6.2 · (0.635 + 0.5205671 · 0.5) mm.
TEST(StripWidth, OfAWhitworthThreadHasItsOwnFlanks) {
  const Thread whitworth = inch_thread("1/4 BSW", Form::whitworth, 0.25, 20);
  EXPECT_NEAR(in_millimetres(internal_strip_width(whitworth, limits(6.2, 5.4, 5.0, 5.7))), 13.730882, 1e-6);
}

TEST(StripWidth, IsSmallerTheLooserTheFit) {
  EXPECT_LT(internal_strip_width(k_m8, limits(7.760, 7.042, 6.912, 7.400)), internal_strip_width(k_m8, k_m8_limits));
  EXPECT_LT(internal_strip_width(k_m8, limits(7.700, 7.042, 6.912, 7.348)), internal_strip_width(k_m8, k_m8_limits));
  EXPECT_LT(external_strip_width(k_m8, limits(7.760, 7.000, 6.912, 7.348)), external_strip_width(k_m8, k_m8_limits));
}

// 16.8 mm · 12 mm · 130 N/mm² by hand.
TEST(StripLoad, IsAreaTimesShearStrength) {
  EXPECT_NEAR(in_newtons(strip_load(millimetres(16.8), millimetres(12), megapascals(130))), 26208.0, 1e-6);
}

// STRIP-05 and STRIP-06 of the collection of practice (computed): 800 MPa on 36.6 mm2, M8 in 110 and in 190 MPa.
TEST(StripLength, IsThatOfThePracticeExamples) {
  const quantity::Force load = quantity::newtons(29280);
  const Length width = millimetres(16.828525);
  EXPECT_NEAR(in_millimetres(strip_length(load, width, megapascals(110))), 15.8, 0.05);
  EXPECT_NEAR(in_millimetres(strip_length(load, width, megapascals(190))), 9.2, 0.05);
}

TEST(StripLength, IsThatAtWhichTheLoadStrips) {
  const Length length = strip_length(quantity::newtons(20000), millimetres(16.8), megapascals(130));
  EXPECT_NEAR(in_newtons(strip_load(millimetres(16.8), length, megapascals(130))), 20000.0, 1e-6);
}

// VDI 2230 R11 as the collection has it (from memory): basic sizes overstate both areas by 27 to 35 %. By hand for M8:
// π·8·0.875 = 21.9911 against 16.8285 and π·6.6468·0.75 = 15.6612 against 12.1612 mm2/mm.
TEST(StripWidth, ByBasicSizesIsAboutAThirdTooLarge) {
  const Limits basic = basic_limits(k_m8);
  EXPECT_NEAR(in_millimetres(internal_strip_width(k_m8, basic)), 21.9911, 1e-4);
  EXPECT_NEAR(in_millimetres(external_strip_width(k_m8, basic)), 15.6612, 1e-4);
}

// By hand: 3·√3/4 · 1.25 = 1.6237976 mm; the depth of flank in contact stays, so the area grows like the diameter,
// 16.828527 · 9.3837976/7.760.
TEST(StripWidth, OfAHoleForAWireInsertGrowsLikeItsDiameter) {
  const Limits hole = wire_insert_limits(k_m8, k_m8_limits);
  EXPECT_NEAR(in_millimetres(hole.d_min), 9.3837976, 1e-6);
  EXPECT_NEAR(in_millimetres(hole.D2_max), 8.9717976, 1e-6);
  EXPECT_NEAR(in_millimetres(internal_strip_width(k_m8, hole)), 20.349934, 1e-5);
}

} // namespace clampwright::thread
