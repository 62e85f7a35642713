// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/crank/held_by_stop.hpp"
#include "core/working/step.hpp"

namespace clampwright::crank {

// Where the figures of a crank and of a stop come from, for the working: "as given", "workshop file".
struct WorkingNames {
  std::string rod_formula = "as given";
  std::string crank = "as given";
  std::string angle_formula = "as given, or from the way below the top";
  std::string angle_source = "as given";
};

// From radius, rod and angle to the force on stop and crown: r, l, t, p, l_c, F_s. The torque T in N·m stands above.
[[nodiscard]] Working lever_working(const SliderCrank& crank, quantity::Angle before_top, quantity::Torque torque,
                                    const WorkingNames& names);

// How the whole answer comes about. Precondition: it is complete but for its working.
[[nodiscard]] Working stop_working(const StopAnswer& answer);

} // namespace clampwright::crank
