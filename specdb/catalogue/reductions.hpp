// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/friction/reduction.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// The published rules for a torque that was given for one state of the surfaces and is used on another, strongest cut
// first. Empty where none was found, and for surfaces that do not exist.
[[nodiscard]] std::vector<friction::Reduction> reductions_between(const Catalogue& catalogue,
                                                                  std::string_view from_surfaces,
                                                                  std::string_view to_surfaces);

} // namespace clampwright::specdb
