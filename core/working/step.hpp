// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace clampwright {

// One line of a calculation, complete enough to be done again on a pocket calculator: the symbol, what it means, the
// formula as text with every symbol defined in an earlier step, the value in the unit named, and the source of the
// formula or figure.
struct Step {
  std::string symbol;
  std::string meaning;
  std::string formula;
  double value;
  std::string unit; // "" for a pure number
  std::string source;
};

using Working = std::vector<Step>;

} // namespace clampwright
