// SPDX-License-Identifier: GPL-3.0-or-later
//
// The ways to hold a crank against the torque of a wrench, as equals, ranked by what the torque passes through on its
// way from the wrench to the hand that holds.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/crank/held_by_stop.hpp"
#include "core/finding/finding.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "core/thread/turning.hpp"
#include "core/working/step.hpp"

namespace clampwright::crank {

// Best load path first.
enum class Way {
  same_end, // the part itself by its flats or holes, or the same shaft end: nothing passes the crank
  strap,    // a strap or pin holder round the part: its rim or fins
  gear,     // a gear of the crank locked: one pair of teeth
  stop,     // a stop under the piston: web, pin, rod, crown, plug thread
  far_end,  // the other end of a pressed-up crank: the press fits of the crank pin
};

// "same-end", "strap", "gear", "stop", "far-end".
[[nodiscard]] std::string_view way_name(Way way);

// At the rim of a strap or the pins of a holder: T/R. (T on a radius.)
[[nodiscard]] quantity::Force strap_force(quantity::Torque torque, quantity::Length radius);

// On the one pair of teeth of a locked gear: 2·T/d, d its pitch diameter.
[[nodiscard]] quantity::Force tooth_force(quantity::Torque torque, quantity::Length pitch_diameter);

// A crank pin pressed into a web. Pressure and friction as bands: neither is ever filled in.
struct PressFit {
  quantity::Length diameter;
  quantity::Length length;
  quantity::Band<quantity::Stress> pressure;
  quantity::Band<double> friction;
};

// The torque at which it slips: μ·p·π·d²·L/2 (interference fit, elementary, from memory).
[[nodiscard]] quantity::Band<quantity::Torque> slip_torque(const PressFit& fit);

// What is known of the other ways than a stop.
struct OtherWays {
  std::optional<quantity::Length> strap_radius;
  std::optional<quantity::Length> gear_diameter;
  std::optional<PressFit> far_end;
};

// One way, and what it bears where that is known.
struct HoldingWay {
  Way way;
  int rank;                             // 1 is best
  std::optional<quantity::Force> force; // on strap, tooth or crown
  std::optional<quantity::Band<quantity::Torque>> slips_at;
};

// Which way the wrench turns, and the side from which that is seen.
struct WrenchTurns {
  thread::Turn tighten;
  thread::Turn undo;
  std::string seen_from;
};

// Precondition: torques above zero; `by` has what it needs: a stop, a radius, a diameter or a press fit.
struct HoldCase {
  Way by = Way::stop;
  quantity::Torque torque;
  std::optional<quantity::Torque> undo_torque;
  std::optional<StopCase> stop; // its torques are those of the case
  OtherWays others;
  std::optional<WrenchTurns> turns;     // of a joint whose thread is known
  std::optional<std::string> on_record; // how it is to be held by the record, in its words
};

struct HoldAnswer {
  HoldCase asked;
  std::optional<StopAnswer> stop;
  std::vector<HoldingWay> ways;                 // all five, best first, at the greater torque
  HoldVerdict verdict = HoldVerdict::not_known; // of the way asked about
  finding::Findings findings;
  Working working;
};

// The torque that a way must bear: that of undoing, where it is stated and greater.
[[nodiscard]] quantity::Torque greater_torque(const HoldCase& asked);

// Findings are those of the stop, or crank-reaction alone, and press-fit-slips where the torque passes the least (mind)
// or the likely one (stop) at which the pin slips in its web.
[[nodiscard]] HoldAnswer hold(const HoldCase& asked);

} // namespace clampwright::crank
