// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// The refusal of a thread; where --any-pitch would take it, it says so.
[[nodiscard]] Refusal with_any_pitch(const Catalogue& catalogue, std::string_view thread, Problem problem);

} // namespace clampwright::specdb
