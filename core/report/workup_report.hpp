// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/workup/workup.hpp"

namespace clampwright::report {

// What is known beside the case itself.
struct WorkupPlace {
  std::string joint;              // "winch/brake-pivot, brake pivot"; empty: no joint
  std::string part;               // what it screws into; empty: not told
  std::string must_clamp_because; // may be empty
  bool loss_told = false;
  std::optional<std::string> makers_figure; // as printed
  std::string figure_words;                 // whether it stands
};

// A torque worked up: what each part bears, what the joint must carry, and what lies between.
[[nodiscard]] Document workup_report(const workup::Answer& answer, const WorkupPlace& place,
                                     const quantity::DisplayUnits& units);

} // namespace clampwright::report
