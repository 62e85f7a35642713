// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "cli/exit_code.hpp"

namespace clampwright::cli {

// What the program may know of its surroundings. Tests fill it in.
struct Environment {
  std::optional<std::string> xdg_data_home;
  std::optional<std::string> home;
  bool utf8 = false; // the terminal's character set, by LC_ALL, LC_CTYPE, LANG
  int width = 80;
  std::chrono::year_month_day today{};
};

// What is to be written, and the code to end with. `out` is the answer alone, `err` messages and hints.
struct Printed {
  std::string out;
  std::string err;
  ExitCode exit = ExitCode::answered;
};

// Runs the program on its arguments (without the program's name). Writes nothing itself. Lets DatabaseError through.
[[nodiscard]] Printed run(const std::vector<std::string>& arguments, const Environment& environment);

// What to print where the program itself fails.
[[nodiscard]] Printed failure(const std::vector<std::string>& arguments, ExitCode exit, const std::string& what);

} // namespace clampwright::cli
