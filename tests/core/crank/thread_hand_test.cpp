// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/thread_hand.hpp"

#include <gtest/gtest.h>

namespace clampwright::crank {
namespace {

using thread::Hand;
using thread::Turn;

struct Row {
  Drive drive;
  Hand hand;
};

// Mechanics, worked out by hand for each: looking at the free end, a part that the shaft drives lags behind it, so it
// turns against the shaft's turn relative to the thread; turning a right-hand part clockwise tightens it.
// clang-format off
constexpr Row k_rows[] = {
    {{Turn::clockwise,     Driver::shaft}, Hand::left},
    {{Turn::anticlockwise, Driver::shaft}, Hand::right},
    {{Turn::clockwise,     Driver::part},  Hand::right},
    {{Turn::anticlockwise, Driver::part},  Hand::left},
};
// clang-format on

TEST(ThreadHand, IsTheOneThatTheLoadTightens) {
  for (const Row& row : k_rows)
    EXPECT_EQ(hand_tightened_by(row.drive), row.hand);
}

// Michigan Administrative Code R 408.10115 (read second-hand): the nut of a wheel is threaded opposite to the rotation
// of the spindle, so that it tightens. Seen from the free end a right-hand nut tightens clockwise; a spindle that turns
// anticlockwise wants a right-hand thread.
TEST(ThreadHand, AgreesWithTheRuleForWheelSpindles) {
  for (const Turn turn : {Turn::clockwise, Turn::anticlockwise}) {
    const Hand hand = hand_tightened_by({turn, Driver::shaft});
    EXPECT_NE(thread::turn_to_tighten(hand), turn);
  }
}

} // namespace
} // namespace clampwright::crank
