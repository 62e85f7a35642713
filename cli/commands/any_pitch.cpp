// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/any_pitch.hpp"

#include <CLI/App.hpp>

#include "specdb/catalogue/threads.hpp"

namespace clampwright::cli {

void declare_any_pitch(CLI::App& app, bool& any_pitch) {
  app.add_flag("--any-pitch", any_pitch, "take a diameter and pitch that no table lists");
}

Refusal with_any_pitch(const specdb::Catalogue& catalogue, std::string_view thread, Problem problem) {
  if (problem.code == "no-such-thread" && specdb::find_thread_of_any_pitch(catalogue, thread))
    problem.hint += "; --any-pitch takes it as it stands";
  return Refusal(std::move(problem));
}

} // namespace clampwright::cli
