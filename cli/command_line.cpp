// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/command_line.hpp"

#include <algorithm>
#include <array>

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"

namespace clampwright::cli {

namespace {

constexpr std::array<std::string_view, 3> k_globals_with_value{"--workshop", "--unit", "--units"};
constexpr const char* k_global_group = "Options of every command";

void declare_globals(CLI::App& app, GlobalOptions& globals) {
  app.add_option("--workshop", globals.workshop, "the workshop file to use")->type_name("FILE")->group(k_global_group);
  app.add_option("--unit", globals.unit, "show quantities of its kind in this unit")
      ->type_name("U")
      ->group(k_global_group);
  app.add_option("--units", globals.units, "metric or imperial")->type_name("SYSTEM")->group(k_global_group);
  app.add_flag("--json", globals.json, "one JSON document on standard output")->group(k_global_group);
  app.add_flag("--explain", globals.explain, "show the working")->group(k_global_group);
  app.add_flag("--quiet", globals.quiet, "no hints; findings stay")->group(k_global_group);
  app.add_flag("--no-input", globals.no_input, "never ask")->group(k_global_group);
}

Refusal usage(std::string code, std::string message, std::string_view input, std::string hint) {
  return refuse(Trouble::usage, std::move(code), std::move(message), input, std::move(hint));
}

Refusal unknown_option(const CLI::App& app, const std::string& given) {
  std::vector<std::string> names;
  for (const CLI::Option* option : app.get_options())
    if (!option->get_lnames().empty()) names.push_back("--" + option->get_lnames().front());
  const std::string bare = given.substr(0, given.find('='));
  const std::string near = specdb::nearest_name(bare, names);
  return usage("unknown-option", "there is no such option", given,
               near.empty() ? "--help lists the options"
                            : fmt::format("did you mean {}? --help lists the options", near));
}

// CLI11's own messages speak of types and counts; these speak of the option.
Refusal translated(const CLI::ParseError& error, const std::vector<std::string>& arguments) {
  std::string option;
  const std::string text = error.what();
  for (const std::string& argument : arguments)
    if (argument.starts_with("--") && text.find(argument.substr(0, argument.find('='))) != std::string::npos)
      option = argument.substr(0, argument.find('='));
  const auto given = std::ranges::count_if(
      arguments, [&](const std::string& a) { return a == option || a.starts_with(option + "="); });
  if (!option.empty() && given > 1)
    return usage("surplus", fmt::format("{} is given {} times", option, given), option, "give it once");
  if (!option.empty())
    return usage("missing", fmt::format("the value of {} is missing", option), option,
                 fmt::format("write it behind the option, like {} VALUE", option));
  return usage("usage", "the arguments were not understood", text, "--help shows how to write them");
}

// "  --class C          strength class"
std::string option_lines(const CLI::App& app, const std::string& group) {
  std::string out;
  for (const CLI::Option* option : app.get_options()) {
    if (option->get_group() != group || option->get_lnames().empty()) continue;
    const std::string name = fmt::format("--{} {}", option->get_lnames().front(),
                                         option->get_expected_min() == 0 ? "" : option->get_type_name());
    out += fmt::format("  {:<24}{}\n", name, option->get_description());
  }
  return out;
}

// A paragraph under a heading, indented and folded.
std::string paragraph(std::string_view heading, std::string_view text, int width) {
  std::string folded;
  std::size_t used = 0;
  std::string_view rest = text;
  while (!rest.empty()) {
    const std::size_t space = rest.find(' ');
    const std::string_view word = rest.substr(0, space);
    rest.remove_prefix(space == std::string_view::npos ? rest.size() : space + 1);
    if (used > 0 && used + 1 + word.size() > static_cast<std::size_t>(width)) folded += '\n', used = 0;
    folded += used == 0 ? "  " : " ";
    used += (used == 0 ? 2 : 1) + word.size();
    folded += word;
  }
  return fmt::format("\n{}\n{}\n", heading, folded);
}

constexpr std::string_view k_about =
    "Torque and clamp load for the service bench: reference, calculator and workshop record.\n";
constexpr std::string_view k_end = "\nReport problems to the people from whom you have the program; README.md "
                                   "and\nDEVELOPERS.md in its sources are its home page.\n";

} // namespace

bool is_command(std::string_view name) {
  const auto commands = make_commands();
  return std::ranges::any_of(commands, [&](const auto& command) { return command->name() == name; });
}

std::vector<std::string> commands_of_family(std::string_view word) {
  std::vector<std::string> names;
  for (const auto& command : make_commands())
    if (command->name().starts_with(std::string(word) + " ")) names.emplace_back(command->name());
  return names;
}

FirstLook look_at(const std::vector<std::string>& arguments) {
  FirstLook look;
  bool ended = false;
  bool value_follows = false;
  for (const std::string& argument : arguments) {
    if (ended || value_follows) {
      look.rest.push_back(argument);
      value_follows = false;
      continue;
    }
    if (argument == "--") ended = true;
    if (argument == "--json") look.json = true;
    if (argument == "--help" || argument == "-h") {
      look.help = true;
      continue;
    }
    if (argument == "--version" || argument == "-V") {
      look.version = true;
      continue;
    }
    const bool is_word = !argument.empty() && argument[0] != '-';
    if (!look.command && is_word) {
      look.command = argument;
      continue;
    }
    if (look.command && is_word && is_command(*look.command + " " + argument)) {
      *look.command += " " + argument;
      continue;
    }
    value_follows = std::ranges::find(k_globals_with_value, argument) != k_globals_with_value.end();
    look.rest.push_back(argument);
  }
  return look;
}

Result<GlobalOptions> parse(Command& command, const std::vector<std::string>& arguments) {
  CLI::App app;
  app.set_help_flag("");
  app.allow_extras();
  GlobalOptions globals;
  declare_globals(app, globals);
  command.declare(app);
  const auto end_of_options = std::ranges::find(arguments, "--");
  std::vector<std::string> options(arguments.begin(), end_of_options);
  std::ranges::reverse(options);
  try {
    app.parse(options);
  } catch (const CLI::ParseError& error) {
    return translated(error, arguments);
  }
  if (const auto extras = app.remaining(); !extras.empty()) return unknown_option(app, extras.front());
  if (end_of_options != arguments.end())
    command.add_words(std::vector<std::string>(end_of_options + 1, arguments.end()));
  return globals;
}

std::string command_help(Command& command, int width) {
  CLI::App app;
  app.set_help_flag("");
  GlobalOptions globals;
  declare_globals(app, globals);
  command.declare(app);
  std::string out = fmt::format("clampwright {}: {}\n\nUSAGE\n  clampwright {}\n\nEXAMPLES\n", command.name(),
                                command.summary(), command.usage());
  for (const Example& example : command.examples())
    out += fmt::format("  clampwright {}\n      {}\n", example.line, example.says);
  if (const std::string own = option_lines(app, "Options"); !own.empty()) out += "\nOPTIONS\n" + own;
  out += "\nOPTIONS OF EVERY COMMAND\n" + option_lines(app, k_global_group);
  for (const auto& [heading, text] : command.lists())
    out += paragraph(heading, text, width);
  out += "\nA quantity Q carries its unit: 24Nm, \"18 lbf.ft\", 10mm, 15kN, 640MPa.\n";
  out += k_end;
  return out;
}

std::string family_help(std::string_view word) {
  std::string out = "USAGE\n";
  for (const auto& command : make_commands())
    if (command->name().starts_with(std::string(word) + " "))
      out += fmt::format("  clampwright {}\n      {}\n", command->usage(), command->summary());
  return out + fmt::format("\n`clampwright {} COMMAND --help` tells more of each.\n", word);
}

std::string program_help() {
  std::string out = fmt::format("{}\nUSAGE\n  clampwright COMMAND ... [options]\n\nEXAMPLES\n", k_about);
  for (const auto& command : make_commands())
    out += fmt::format("  clampwright {}\n", command->examples().front().line);
  out += "\nCOMMANDS\n";
  for (const auto& command : make_commands())
    out += fmt::format("  {:<15}{}\n", command->name(), command->summary());
  CLI::App app;
  app.set_help_flag("");
  GlobalOptions globals;
  declare_globals(app, globals);
  out += "\nOPTIONS OF EVERY COMMAND\n" + option_lines(app, k_global_group);
  out += "  --help                  help; `clampwright COMMAND --help` for one command\n  --version               "
         "version and licence\n";
  out += "\nEXIT CODES\n"
         "  0 answered    1 answered, and a check failed    64 wrong use    65 not understood\n"
         "  66 no such thing    70 our fault    73 cannot create    74 input or output\n"
         "  75 busy    77 no permission    78 a file that is newer or not ours\n";
  out += k_end;
  return out;
}

std::string short_help() {
  return fmt::format("{}\n"
                     "  clampwright demo                      make an invented workshop, show its first joint\n"
                     "  clampwright clamp M10 --class 8.8 --torque 45Nm --surfaces oiled\n"
                     "  clampwright convert \"2.5 mkg\" N.m\n\n"
                     "clampwright --help lists all commands.\n",
                     k_about);
}

} // namespace clampwright::cli
