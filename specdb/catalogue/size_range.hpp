// SPDX-License-Identifier: GPL-3.0-or-later
//
// For the .cpp files of this folder: the sizes for which a row of a class holds.
#pragma once

#include <cmath>
#include <string_view>

#include "core/quantity/quantity.hpp"

namespace clampwright::specdb {

struct SizeRange {
  double over;
  bool over_inclusive;
  double up_to;
  std::string_view unit; // "mm" or "in"

  // Compared at the tenth of a micrometre, so that 1/4 in is not kept out of "1/4 in and over" by the last bit.
  [[nodiscard]] bool holds(quantity::Length diameter) const {
    const auto tenths = [](quantity::Length length) { return std::round(quantity::in_millimetres(length) * 1e4); };
    const auto limit = [&](double value) {
      return tenths(unit == "in" ? quantity::inches(value) : quantity::millimetres(value));
    };
    const double d = tenths(diameter);
    return (over_inclusive ? d >= limit(over) : d > limit(over)) && d <= limit(up_to);
  }
};

} // namespace clampwright::specdb
