// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"
#include "core/strength/strength.hpp"

namespace clampwright::strength {

// What a nut of a class bears on a thread. Without a figure for this size proof stress and load are empty.
struct NutStrength {
  std::string nut_class; // "8", "04", "SAE 5", "8Z" (tapped oversize for hot-dip galvanized bolts), "A2-70"
  std::string style;     // "1", "2", "thin", "0.8 d"; empty where the class has no figure at this size
  std::optional<quantity::Stress> proof_stress;
  std::optional<quantity::Force> proof_load;
  std::optional<LoadBasis> basis;
  bool thin = false;        // strips before a bolt of its number breaks
  bool from_memory = false; // the load, or where there is none the stress, was recalled, not read
  std::vector<Source> sources;
};

} // namespace clampwright::strength
