// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/thread/thread.hpp"
#include "core/thread/turning.hpp"

namespace clampwright::crank {

// Which of the two turns the other in service: the shaft a clutch, a fan, a pulley that gives power; the part a shaft,
// as a starter dog or a pull-cord hub does.
enum class Driver { shaft, part };

// How a screwed-on part is driven: the turn of the shaft, looking at the free end of the thread, and who drives.
struct Drive {
  thread::Turn shaft_turn;
  Driver driver;
};

// The hand of thread that the steady load tightens: a load drags the part backwards against the shaft that drives it.
// Derived; for the driven part confirmed by Michigan Administrative Code R 408.10115 (a wheel nut is threaded against
// the rotation of its spindle). It holds for a steady drive only: braking, kick-back and the reversals of a single
// cylinder turn it round.
[[nodiscard]] constexpr thread::Hand hand_tightened_by(const Drive& drive) {
  const bool clockwise = drive.shaft_turn == thread::Turn::clockwise;
  return clockwise == (drive.driver == Driver::shaft) ? thread::Hand::left : thread::Hand::right;
}

} // namespace clampwright::crank
