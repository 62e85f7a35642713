// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"

namespace clampwright::strength {

// What a clamped or tapped part is made of. Where lists differ the figures are the lower ones: the grade of a part on
// the bench is seldom known.
struct PartMaterial {
  std::string name;
  std::string description;
  std::optional<quantity::Stress> shear_strength; // of a tapped thread
  std::optional<quantity::Stress> seat_pressure;  // limiting pressure under a head or nut
  bool soft = false;                              // it gives way for hours and days after tightening
  std::vector<Source> sources;                    // of the strength, then of the pressure
};

} // namespace clampwright::strength
