// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.hpp"

#include <gtest/gtest.h>

namespace clampwright::quantity {
namespace {

// Zero Celsius is 273.15 K (definition, from memory).
TEST(Temperature, IsCountedFromAbsoluteZero) {
  EXPECT_DOUBLE_EQ(degrees_celsius(0).value(), 273.15);
  EXPECT_DOUBLE_EQ(degrees_celsius(-273.15).value(), 0.0);
  EXPECT_DOUBLE_EQ(degrees_celsius(26.85).value(), 300.0);
}

TEST(Temperature, ComesBackAsItWasWritten) {
  for (const double value : {-54.0, 0.0, 0.1, 20.0, 37.5, 121.0, 149.0, 150.0, 232.0})
    EXPECT_EQ(in_degrees_celsius(degrees_celsius(value)), value);
}

TEST(Temperature, OfNoSenseComesBackToo) { EXPECT_GT(in_degrees_celsius(degrees_celsius(1e30)), 1e29); }

TEST(Temperature, CanBeCompared) { EXPECT_LT(degrees_celsius(-54), degrees_celsius(149)); }

} // namespace
} // namespace clampwright::quantity
