// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"

namespace clampwright::strength {

// The kind of metal, as far as it decides what may touch it.
enum class Metal { steel, stainless, iron, aluminium, magnesium, copper, titanium, none };

// What a clamped or tapped part is made of. Where lists differ the figures are the lower ones: the grade of a part on
// the bench is seldom known.
struct PartMaterial {
  std::string name;
  std::string description;
  std::optional<quantity::Stress> shear_strength;               // of a tapped thread
  std::optional<quantity::Stress> shear_highest = std::nullopt; // the highest figure that was found for such a material
  std::optional<quantity::Stress> seat_pressure;                // limiting pressure under a head or nut
  std::string note = {};                                        // where lists differ, and by how much; may be empty
  std::string family = {};     // "stainless", "cast-aluminium": to which published rules belong
  Metal metal = Metal::none;   // what may touch it
  bool soft = false;           // it gives way for hours and days after tightening
  std::vector<Source> sources; // of the strength, then of the pressure
  std::optional<Source> shear_highest_source = std::nullopt;
  std::optional<quantity::Temperature> creeps_above = std::nullopt; // it gives way slowly when it runs hotter
  std::optional<Source> creep_source = std::nullopt;
};

// How a material gives and grows. The modulus of cast iron rises with the load it has borne, so it is a range.
struct Elastic {
  std::string name;
  std::string description;
  quantity::Stress modulus_least;
  quantity::Stress modulus_most;
  std::optional<double> expansion_per_K; // of its length
  std::string expansion_range;           // "20 to 100 degC"
  Source source;
};

// A published length of engagement, as a multiple of the diameter.
struct EngagementRule {
  std::string words; // "cast iron, class 8.8, coarse"
  double over_diameter = 0;
  std::string note; // may be empty
  Source source;
};

} // namespace clampwright::strength
