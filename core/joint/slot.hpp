// SPDX-License-Identifier: GPL-3.0-or-later
//
// A castle nut and its split pin: the pin goes in only where a slot stands before the hole in the bolt, and from one
// such place to the next the clamp load may grow by as much as the whole joint should have.
#pragma once

#include <optional>
#include <string>

#include "core/joint/resilience.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::joint {

struct SlotCase {
  int slot_count = 6; // of the nut (Qt takes the plain word); even: the pin goes through two of them
  int pin_holes = 1;  // across the bolt, evenly spread
  quantity::Torque low;
  quantity::Torque high;
  std::string range_basis; // where low and high come from
};

// Does the nut pass a slot on its way from the low torque to the high one?
enum class Meets { surely, likely, by_chance };

// "sure", "likely", "by-chance".
[[nodiscard]] std::string_view meets_name(Meets meets);

struct SlotAnswer {
  SlotCase asked;
  tightening::ClampAnswer at_low;
  tightening::ClampAnswer at_high;
  Stack stack;
  StackResilience resilience;
  quantity::Angle angle;                  // from one slot to the next
  quantity::Band<quantity::Force> gain;   // of clamp load on the way
  quantity::Band<quantity::Torque> more;  // torque for that
  quantity::Band<quantity::Torque> next;  // torque at the next slot where one was just missed at the low torque
  quantity::Band<quantity::Angle> window; // the turn from the low torque to the high one
  std::optional<quantity::Band<quantity::Force>> preload_at_low;
  std::optional<quantity::Band<quantity::Force>> preload_at_next;
  std::optional<quantity::Band<double>> use_of_proof_at_next;
  Meets meets = Meets::by_chance;
  double chance = 0;            // likely turn over the angle, at most 1
  quantity::Length half_a_slot; // a washer so much thicker or thinner moves the slots by half their distance
  finding::Findings findings;
  Working working;

  // Is the bolt likely past its proof load at the next slot where one was just missed? Then `gain`, which is along the
  // elastic line, is no load that it will ever carry.
  [[nodiscard]] bool next_is_too_much() const { return use_of_proof_at_next && use_of_proof_at_next->likely > 1.0; }
};

// The turn from one place where the pin goes in to the next: 360° over the least common multiple of the slots and of
// the ends of the holes. 60° with six slots and one hole, 30° with two holes.
[[nodiscard]] quantity::Angle slot_angle(int slot_count, int pin_holes);

// `at_low` and `at_high` are the clamp loads of the two torques, by at least one model; the findings are those of the
// high one. Precondition: slots even, low <= high.
[[nodiscard]] SlotAnswer slot_window(const SlotCase& asked, const tightening::ClampAnswer& at_low,
                                     const tightening::ClampAnswer& at_high, const Stack& stack);

} // namespace clampwright::joint
