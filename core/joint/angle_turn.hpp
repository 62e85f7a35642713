// SPDX-License-Identifier: GPL-3.0-or-later
//
// Torque and then an angle: the torque snugs, and from there a turn adds what pitch and stack make of it, whatever the
// friction.
#pragma once

#include <optional>

#include "core/joint/resilience.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::joint {

struct AngleAnswer {
  tightening::ClampAnswer snug;
  Stack stack;
  StackResilience resilience;
  quantity::Angle angle;
  quantity::Band<quantity::Force> added; // by the turn, along the elastic line
  std::optional<quantity::Band<quantity::Force>> snug_load;
  std::optional<quantity::Band<quantity::Force>> preload; // both together
  std::optional<quantity::Band<double>> use_of_proof;     // of `preload`
  std::optional<quantity::Band<double>> use_of_yield;
  tightening::Verdict verdict = tightening::Verdict::not_known;
  tightening::Governs governed_by = tightening::Governs::nothing;
  bool beyond_elastic = false; // it may pass yield: there the line ends
  quantity::Length settling;
  quantity::Band<quantity::Force> settling_loss;
  finding::Findings findings;
  Working working;
};

// `snug` is the clamp load of the snug torque, with angle_follows set. Where the load may pass yield the line no longer
// holds and the verdict is not-known: angle tightening may mean to yield the bolt, which only its maker can say.
[[nodiscard]] AngleAnswer add_angle(const tightening::ClampAnswer& snug, quantity::Angle angle, const Stack& stack);

} // namespace clampwright::joint
