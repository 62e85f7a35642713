// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/nut_pairing.hpp"

#include <charconv>
#include <compare>

namespace clampwright::strength {

namespace {

// "10.9": a hundredth of the tensile strength in MPa, and ten times the ratio of yield to it.
struct MetricClass {
  int tensile;
  int yield_ratio;
  friend auto operator<=>(const MetricClass&, const MetricClass&) = default;
};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::optional<MetricClass> metric_class(std::string_view name) {
  if (name.starts_with('0')) name.remove_prefix(1);
  const auto point = name.find('.');
  if (point == 0 || point > 2 || name.size() != point + 2 || name.starts_with('0')) return std::nullopt;
  for (std::size_t i = 0; i < name.size(); ++i)
    if (i != point && !is_digit(name[i])) return std::nullopt;
  MetricClass out{0, name.back() - '0'};
  std::from_chars(name.data(), name.data() + point, out.tensile);
  return out;
}

} // namespace

std::optional<bool> nut_is_weaker(std::string_view bolt_class, std::string_view highest_bolt_class) {
  const auto bolt = metric_class(bolt_class);
  const auto highest = metric_class(highest_bolt_class);
  if (!bolt || !highest) return std::nullopt;
  return *bolt > *highest;
}

} // namespace clampwright::strength
