// SPDX-License-Identifier: GPL-3.0-or-later
//
// A printed pair of torques that clamp the same: an aircraft mechanics' tutorial has 28.9 lbf·ft on cadmium plating and
// 19.9 lbf·ft with molybdenum anti-seize for 5788 lbf on a 3/8-24 bolt (seen second-hand; rows UNC-07 and UNC-08 of the
// reference pack), and prints K 0.11 for the latter. K of the former follows: 28.9 · 12/(5788 · 0.375) = 0.1598.
#include "core/quantity/unit.hpp"
#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

double preload_lbf(double k, double torque_lbf_ft) {
  Case c;
  c.thread = test::inch_thread("3/8-24 UNF", thread::Form::unified, 0.375, 24);
  c.nut_factor = test::k_band(k);
  const auto torque = quantity::newton_metres(quantity::to_si(torque_lbf_ft, quantity::unit_named("lbf.ft")));
  const auto answer = clamp(c, torque).value();
  return quantity::from_si(quantity::in_newtons(answer.nut_factor->preload.likely), quantity::unit_named("lbf"));
}

// The printed K has two digits, the torques three: 0.3 %.
TEST(LubricatedPair, ClampsTheSameAsPrinted) {
  EXPECT_NEAR(preload_lbf(0.160, 28.9), 5788, 17);
  EXPECT_NEAR(preload_lbf(0.110, 19.9), 5788, 17);
}

// 28.9 · 0.110/0.160 = 19.87 lbf·ft, printed as 19.9.
TEST(LubricatedPair, IsCorrectedByTheRatioOfNutFactors) {
  const double corrected = 28.9 * 0.110 / 0.160;
  EXPECT_NEAR(corrected, 19.9, 0.05);
  EXPECT_NEAR(preload_lbf(0.110, corrected), preload_lbf(0.160, 28.9), 1e-9 * 5788);
}

} // namespace
} // namespace clampwright::tightening
