// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <string>

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/sql/error.hpp"

namespace clampwright::specdb {

// The name of a unit of torque as a workshop file holds it; any other word in its place is damage.
[[nodiscard]] inline std::string stored_torque_unit(std::string name) {
  const bool is_known = std::ranges::any_of(quantity::all_units(), [&](const quantity::Unit& unit) {
    return unit.kind == quantity::Kind::torque && unit.name == name;
  });
  if (!is_known)
    throw DatabaseError(fmt::format("\"{}\" is no unit of torque", text::quotable(name)), Trouble::not_understood);
  return name;
}

} // namespace clampwright::specdb
