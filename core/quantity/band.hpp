// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace clampwright::quantity {

// A value that is not known to a point: the least and the most to reckon with, and what is likely between them.
// These are corners of the assumptions, not percentiles of a distribution.
template<class T>
struct Band {
  T low;
  T likely;
  T high;
};

template<class T, class Function>
[[nodiscard]] constexpr auto map(const Band<T>& band, Function function) -> Band<decltype(function(band.low))> {
  return {function(band.low), function(band.likely), function(band.high)};
}

template<class T>
[[nodiscard]] constexpr bool contains(const Band<T>& band, const T& value) {
  return band.low <= value && value <= band.high;
}

// True where the two bands share no value.
template<class T>
[[nodiscard]] constexpr bool apart(const Band<T>& one, const Band<T>& other) {
  return one.high < other.low || other.high < one.low;
}

} // namespace clampwright::quantity
