// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>

namespace clampwright::test {

// How many doubles lie between the two. Infinity and NaN are as far away as can be.
[[nodiscard]] inline std::uint64_t ulps_apart(double one, double other) {
  if (!std::isfinite(one) || !std::isfinite(other)) return std::numeric_limits<std::uint64_t>::max();
  const auto rank = [](double value) {
    const auto bits = std::bit_cast<std::int64_t>(value);
    return bits < 0 ? std::numeric_limits<std::int64_t>::min() - bits : bits;
  };
  const std::int64_t a = rank(one);
  const std::int64_t b = rank(other);
  return a > b ? static_cast<std::uint64_t>(a) - static_cast<std::uint64_t>(b)
               : static_cast<std::uint64_t>(b) - static_cast<std::uint64_t>(a);
}

} // namespace clampwright::test
