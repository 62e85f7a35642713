// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/turning.hpp"

#include <gtest/gtest.h>

namespace clampwright::thread {

TEST(RightHandThread, TightensClockwise) { EXPECT_EQ(turn_to_tighten(Hand::right), Turn::clockwise); }
TEST(RightHandThread, IsUndoneAnticlockwise) { EXPECT_EQ(turn_to_undo(Hand::right), Turn::anticlockwise); }
TEST(LeftHandThread, TightensAnticlockwise) { EXPECT_EQ(turn_to_tighten(Hand::left), Turn::anticlockwise); }
TEST(LeftHandThread, IsUndoneClockwise) { EXPECT_EQ(turn_to_undo(Hand::left), Turn::clockwise); }

TEST(TurnName, IsThatOfTheContract) {
  EXPECT_EQ(turn_name(Turn::clockwise), "clockwise");
  EXPECT_EQ(turn_name(Turn::anticlockwise), "anticlockwise");
}

} // namespace clampwright::thread
