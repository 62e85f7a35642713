// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/band.hpp"

#include <gtest/gtest.h>

namespace clampwright::quantity {
namespace {

constexpr Band<double> k_one{1.0, 2.0, 3.0};

} // namespace

TEST(Band, ContainsItsEnds) {
  EXPECT_TRUE(contains(k_one, 1.0));
  EXPECT_TRUE(contains(k_one, 3.0));
}

TEST(Band, DoesNotContainWhatLiesOutside) {
  EXPECT_FALSE(contains(k_one, 0.999));
  EXPECT_FALSE(contains(k_one, 3.001));
}

TEST(Band, IsApartFromABandAboveAndBelow) {
  EXPECT_TRUE(apart(k_one, Band<double>{3.5, 4.0, 5.0}));
  EXPECT_TRUE(apart(k_one, Band<double>{0.0, 0.5, 0.9}));
}

TEST(Band, IsNotApartFromABandThatTouchesOrLiesWithin) {
  EXPECT_FALSE(apart(k_one, Band<double>{3.0, 4.0, 5.0}));
  EXPECT_FALSE(apart(k_one, Band<double>{1.5, 2.0, 2.5}));
  EXPECT_FALSE(apart(k_one, Band<double>{0.0, 2.0, 9.0}));
}

TEST(Band, IsMappedValueByValue) {
  const auto doubled = map(k_one, [](double value) { return 2.0 * value; });
  EXPECT_DOUBLE_EQ(doubled.low, 2.0);
  EXPECT_DOUBLE_EQ(doubled.likely, 4.0);
  EXPECT_DOUBLE_EQ(doubled.high, 6.0);
}

} // namespace clampwright::quantity
