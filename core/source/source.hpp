// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace clampwright {

// How a value is known. `printed` only where the standard itself was read.
enum class Known { printed, second_hand, memory, computed, common_practice };

[[nodiscard]] constexpr std::string_view known_name(Known known) {
  switch (known) {
  case Known::printed:
    return "printed";
  case Known::second_hand:
    return "second-hand";
  case Known::memory:
    return "memory";
  case Known::computed:
    return "computed";
  case Known::common_practice:
    return "common-practice";
  }
  return "";
}

// Where a value comes from: what a reader needs to look it up, and how far to trust our copy of it.
struct Source {
  std::string title = {};
  std::string edition = {};
  std::string where = {}; // table, clause, page
  Known known = Known::memory;

  friend bool operator==(const Source&, const Source&) = default;
};

} // namespace clampwright
