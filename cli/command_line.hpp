// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/command.hpp"

namespace clampwright::cli {

// The options of every command, as text.
struct GlobalOptions {
  std::optional<std::string> workshop;
  std::optional<std::string> unit;
  std::optional<std::string> units;
  bool json = false;
  bool explain = false;
  bool quiet = false;
  bool no_input = false;
};

// What the arguments say before any command has looked at its own.
struct FirstLook {
  bool json = false;
  bool help = false;
  bool version = false;
  std::optional<std::string> command; // the first word that is no option, or the first two that name one
  std::vector<std::string> rest;      // everything else, in order
};

// A command of that name, of one word or two: "show", "wrench set".
[[nodiscard]] bool is_command(std::string_view name);

// The commands of two words that begin with this one: "wrench add", "wrench list", … for "wrench".
[[nodiscard]] std::vector<std::string> commands_of_family(std::string_view word);

[[nodiscard]] FirstLook look_at(const std::vector<std::string>& arguments);

// Fills `globals` and the command's own options from `arguments`. Fails with usage, naming the near option for one that
// does not exist.
[[nodiscard]] Result<GlobalOptions> parse(Command& command, const std::vector<std::string>& arguments);

// --help of one command: what it does, examples, options, names that options take.
[[nodiscard]] std::string command_help(Command& command, int width);

// --help of a word that several commands begin with: each of them in two lines.
[[nodiscard]] std::string family_help(std::string_view word);

// --help of the program, and the few lines that stand for a bare call.
[[nodiscard]] std::string program_help();
[[nodiscard]] std::string short_help();

} // namespace clampwright::cli
