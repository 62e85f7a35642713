// SPDX-License-Identifier: GPL-3.0-or-later
//
// How units are written in the shop. Old sheets and shop talk write a torque as "2.5 mkg", "30 ft-lb" or "24 nm"; each
// spelling means one unit or it is refused. There are no nanometres, millipascals or meganewtons at a service bench,
// but a capital or small m that could be misread is refused all the same.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/quantity/unit.hpp"

namespace clampwright::quantity {

struct Spelling {
  const Unit* unit;
  // A mass stands where a force is meant ("mkg", "ft-lb"): true tells the caller to say so.
  bool mass_as_force = false;
};

// The unit that `text` spells. `text` is trimmed; its parts may be joined by '.', '·', '*', '-', a space or nothing,
// in either order. Case is free where it cannot be confused. Fails with `wrong-kind` for energies and masses,
// `ambiguous-unit` where a letter's case decides, `unknown-unit` otherwise, each with a hint.
[[nodiscard]] Result<Spelling> read_unit(std::string_view text);

// "N.m, N.cm, …": the names of a kind's units, for messages.
[[nodiscard]] std::string unit_names(Kind kind);

// An entry of that kind that would be read, for hints: "24.5N.m".
[[nodiscard]] std::string_view example_of(Kind kind);

} // namespace clampwright::quantity
