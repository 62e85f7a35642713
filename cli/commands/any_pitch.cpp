// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/any_pitch.hpp"

#include <CLI/App.hpp>

namespace clampwright::cli {

void declare_any_pitch(CLI::App& app, bool& any_pitch) {
  app.add_flag("--any-pitch", any_pitch, "take a diameter and pitch that no table lists");
}

} // namespace clampwright::cli
