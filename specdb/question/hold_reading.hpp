// SPDX-License-Identifier: GPL-3.0-or-later
//
// The quantities in a question about holding, one by one, before they are held against each other.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/crank/holding.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "specdb/question/hold_question.hpp"

namespace clampwright::specdb {

struct HoldReading {
  crank::Way by = crank::Way::stop;
  std::optional<quantity::Torque> torque, undo_torque;
  bool mass_as_force = false;
  std::optional<quantity::Length> stroke, rod, below_tdc, stop_length, crown_depth, tip_diameter, port_depth,
      plug_engaged, crown_thickness, crown_radius, strap_radius, gear_diameter, pin_diameter, pin_length;
  std::optional<quantity::Angle> angle, stop_incline;
  std::optional<quantity::Stress> tip_limit;
  std::optional<quantity::Force> rod_limit, stop_limit;
  std::optional<double> plug_margin;
  std::optional<quantity::Band<quantity::Stress>> pin_pressure;
  std::optional<quantity::Band<double>> pin_friction;
  std::vector<std::string> understood; // "torque 30 N·m", for a refusal that says what is missing
};

// Reads every text that is there. Fails with not-understood for the first that cannot be read or lies outside the range
// that it has by itself.
[[nodiscard]] Result<HoldReading> read_hold(const HoldQuestion& question);

// "same-end", "strap", "gear", "stop" or "far-end", in any case. Fails with not-understood and all of them.
[[nodiscard]] Result<crank::Way> read_way(std::string_view text);

// Passes for "hand" alone: nothing is reckoned for the blows of an impact tool, whose peak nobody knows.
[[nodiscard]] Result<void> check_tool(std::string_view text);

// "80..100..120MPa", "80..120MPa", "80MPa..120MPa" or one value.
[[nodiscard]] Result<quantity::Band<quantity::Stress>> read_stress_band(std::string_view text);

} // namespace clampwright::specdb
