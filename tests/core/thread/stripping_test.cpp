// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/stripping.hpp"

#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::thread {
namespace {

using quantity::in_millimetres;
using quantity::in_newtons;
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

} // namespace clampwright::thread
