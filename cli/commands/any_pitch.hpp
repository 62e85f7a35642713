// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "cli/command.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::cli {

// The option --any-pitch, by which a thread passes that no table lists.
void declare_any_pitch(CLI::App& app, bool& any_pitch);

// The refusal of a thread; where --any-pitch would take it, it says so.
[[nodiscard]] Refusal with_any_pitch(const specdb::Catalogue& catalogue, std::string_view thread, Problem problem);

} // namespace clampwright::cli
