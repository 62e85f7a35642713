// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/problem/problem.hpp"
#include "core/thread/thread.hpp"

namespace clampwright::thread {

// A turn has a sense only together with the side from which it is seen. Here that side is always the one at which the
// fitter stands: looking at the nut or the head that is turned, towards the part.
enum class Turn { clockwise, anticlockwise };

[[nodiscard]] constexpr Turn turn_to_tighten(Hand hand) {
  return hand == Hand::right ? Turn::clockwise : Turn::anticlockwise;
}
[[nodiscard]] constexpr Turn turn_to_undo(Hand hand) {
  return hand == Hand::right ? Turn::anticlockwise : Turn::clockwise;
}

[[nodiscard]] constexpr std::string_view turn_name(Turn turn) {
  return turn == Turn::clockwise ? "clockwise" : "anticlockwise";
}

// clockwise (cw) or anticlockwise (acw, ccw, anti-clockwise, counterclockwise), in any case.
[[nodiscard]] Result<Turn> read_turn(std::string_view text);

} // namespace clampwright::thread
