// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/inch_size.hpp"

#include <charconv>
#include <cmath>

namespace clampwright::thread {

namespace {

int number(std::string_view text) {
  int value = 0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

} // namespace

std::optional<double> inch_size(std::string_view size) {
  if (size.starts_with('#')) {
    const int n = number(size.substr(1));
    return n <= 12 ? std::optional(0.060 + 0.013 * n) : std::nullopt;
  }
  if (const auto point = size.find('.'); point != std::string_view::npos) {
    const std::string_view decimals = size.substr(point + 1);
    return number(size.substr(0, point)) + number(decimals) / std::pow(10.0, static_cast<double>(decimals.size()));
  }
  double whole = 0;
  if (const auto space = size.find(' '); space != std::string_view::npos) {
    whole = number(size.substr(0, space));
    size = size.substr(space + 1);
  }
  const auto slash = size.find('/');
  if (slash == std::string_view::npos) return whole + number(size);
  const int bottom = number(size.substr(slash + 1));
  if (bottom == 0) return std::nullopt;
  return whole + static_cast<double>(number(size.substr(0, slash))) / bottom;
}

} // namespace clampwright::thread
