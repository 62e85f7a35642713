// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"

namespace clampwright::cli {

// The option --any-pitch, by which a thread passes that no table lists.
void declare_any_pitch(CLI::App& app, bool& any_pitch);

} // namespace clampwright::cli
