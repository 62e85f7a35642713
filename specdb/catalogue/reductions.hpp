// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/friction/reduction.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// The published rules for a torque that was given for one state of the surfaces and is used on another, lowest factor
// first. Empty where none was found, and for surfaces that do not exist.
[[nodiscard]] std::vector<friction::Reduction> reductions_between(const Catalogue& catalogue,
                                                                  std::string_view from_surfaces,
                                                                  std::string_view to_surfaces);

// The published rules for a torque that is used on a thread in a part of that family of materials ("cast-aluminium").
[[nodiscard]] std::vector<friction::Reduction> reductions_for_part(const Catalogue& catalogue, std::string_view family);

} // namespace clampwright::specdb
