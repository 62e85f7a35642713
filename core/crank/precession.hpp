// SPDX-License-Identifier: GPL-3.0-or-later
//
// Precession: a part with clearance under a radial load that turns about it rolls a little at each turn. It is driven
// by fretting, it is not the drag of a bearing, and elastic clearance is enough for it.
//
// Rolling without slip: a pin in a bore creeps against the load's turning (read second-hand in an engineer's text on
// left-hand threads), at most (D - d)/d of a turn for each turn of the load; a hub on a shaft is the outer part and
// creeps with it, at most (D - d)/D (derived).
#pragma once

#include "core/crank/thread_hand.hpp"
#include "core/quantity/quantity.hpp"

namespace clampwright::crank {

// The bore of the outer part and the diameter of the inner. Precondition: shaft > 0, bore >= shaft.
struct LooseFit {
  quantity::Length bore;
  quantity::Length shaft;
};

// Turns of a hub on the shaft, at most, for each turn of the load about it.
[[nodiscard]] constexpr double hub_creep(const LooseFit& fit) { return (fit.bore - fit.shaft) / fit.bore; }

// Turns of a pin in a bore, at most.
[[nodiscard]] constexpr double pin_creep(const LooseFit& fit) { return (fit.bore - fit.shaft) / fit.shaft; }

[[nodiscard]] constexpr thread::Turn reversed(thread::Turn turn) {
  return turn == thread::Turn::clockwise ? thread::Turn::anticlockwise : thread::Turn::clockwise;
}

// How a screwed-on hub creeps on its shaft, looking at the free end, under a load that stands still in space (the pull
// of a belt, a weight): in the shaft's frame the load turns against the shaft, and the hub goes with the load.
[[nodiscard]] constexpr thread::Turn hub_creeps(thread::Turn shaft_turn) { return reversed(shaft_turn); }

// How a pin or bolt in a bore of the shaft creeps under the same load.
[[nodiscard]] constexpr thread::Turn pin_creeps(thread::Turn shaft_turn) { return shaft_turn; }

// The hand of a thread that such a creep of the part tightens: a part that goes clockwise tightens a right-hand thread.
[[nodiscard]] constexpr thread::Hand hand_tightened_by_creep(thread::Turn creep) {
  return creep == thread::Turn::clockwise ? thread::Hand::right : thread::Hand::left;
}

// Does the creep of the hub call for the same hand as the drive? It does where the shaft drives the part.
[[nodiscard]] constexpr bool creep_agrees(const Drive& drive) {
  return hand_tightened_by_creep(hub_creeps(drive.shaft_turn)) == hand_tightened_by(drive);
}

} // namespace clampwright::crank
