// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/program.hpp"

#include <algorithm>
#include <filesystem>

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/command_line.hpp"
#include "cli/json/values_json.hpp"
#include "core/quantity/read.hpp"
#include "core/report/text_writer.hpp"
#include "core/report/tightening_report.hpp"
#include "core/text/plain_text.hpp"
#include "core/version/version.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/error.hpp"
#include "specdb/workshop/usual_place.hpp"

namespace clampwright::cli {

namespace {

std::string dumped(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

Printed problem_printed(const Problem& problem, const std::optional<std::string>& command, bool json,
                        const Environment& environment) {
  Printed printed;
  printed.exit = exit_code_of(problem.trouble);
  std::string what = problem.message;
  if (!problem.field.empty() && problem.message.find(problem.field) == std::string::npos)
    what = fmt::format("{}: {}", problem.field, what);
  if (json) {
    Json error{{"code", problem.code},
               {"message", what},
               {"input", problem.input.empty() ? Json(nullptr) : Json(problem.input)},
               {"hint", problem.hint}};
    printed.out =
        dumped({{"schema", 1}, {"command", command ? Json(*command) : Json(nullptr)}, {"error", std::move(error)}});
    return printed;
  }
  printed.err = fmt::format("clampwright: {}{}", command ? *command + ": " : "", what);
  if (!problem.input.empty()) printed.err += fmt::format(" ({})", problem.input);
  printed.err += '\n';
  if (!problem.hint.empty()) printed.err += fmt::format("  {}\n", problem.hint);
  if (!environment.utf8) printed.err = report::to_ascii(printed.err);
  return printed;
}

// What went wrong in the middle of an answer. The reference tables are part of the program, so where they are not at
// fault it is the workshop file.
Problem problem_of(const specdb::DatabaseError& error, const std::filesystem::path& workshop) {
  const auto about = [&](const char* code, const char* what, const char* hint) {
    return Problem{
        error.trouble(), code, fmt::format("{}: {}", what, error.what()), text::quotable(workshop.string()), hint, {}};
  };
  switch (error.trouble()) {
  case Trouble::not_understood:
    return about("damaged", "the workshop file is damaged", "restore it from a backup; it was left as it is");
  case Trouble::busy:
    return about("busy", "another program is writing the workshop file", "try again in a moment");
  case Trouble::input_output:
    return about("input-output", "the workshop file cannot be read or written", "look after the disk it is on");
  default:
    return {error.trouble(), "internal", text::quotable(error.what()), {}, "please report this", {}};
  }
}

Problem unknown_command(const std::string& given) {
  if (const auto family = commands_of_family(given); !family.empty())
    return {Trouble::usage,
            "missing",
            fmt::format("{} has several commands, and one of them must be named", given),
            text::quotable(given),
            fmt::format("write clampwright {}", fmt::join(family, ", or clampwright ")),
            {}};
  std::vector<std::string> names;
  for (const auto& command : make_commands()) {
    names.emplace_back(command->name());
    if (const std::size_t end = names.back().find(' '); end != std::string::npos)
      names.push_back(names.back().substr(0, end));
  }
  const std::string near = specdb::nearest_name(given, names);
  return {Trouble::usage,
          "unknown-command",
          "there is no such command",
          text::quotable(given),
          near.empty() ? "clampwright --help lists the commands"
                       : fmt::format("did you mean {}? clampwright --help lists the commands", near),
          {}};
}

Result<Context> context_from(const GlobalOptions& globals, const Environment& environment) {
  Context context;
  context.today = environment.today;
  context.json = globals.json;
  context.explain = globals.explain;
  if (globals.units) {
    if (text::equal_fold(*globals.units, "imperial"))
      context.units = quantity::DisplayUnits::imperial();
    else if (!text::equal_fold(*globals.units, "metric"))
      return refuse(Trouble::not_understood, "not-understood", "neither metric nor imperial", *globals.units,
                    "write --units metric or --units imperial", "--units");
  }
  if (globals.unit) {
    const auto unit = quantity::read_unit(text::plain_spaces(*globals.unit));
    if (!unit) return in_field(unit.error(), "--unit");
    context.unit = unit->unit;
    context.units.prefer(*unit->unit);
  }
  if (globals.workshop) {
    if (globals.workshop->empty())
      return refuse(Trouble::usage, "missing", "the name of the workshop file is empty", {}, "write --workshop FILE",
                    "--workshop");
    context.workshop = *globals.workshop;
  } else if (const auto place = specdb::usual_workshop(environment.xdg_data_home, environment.home)) {
    context.workshop = *place;
  }
  return context;
}

Printed outcome_printed(Outcome outcome, const std::string& command, const GlobalOptions& globals,
                        const Environment& environment) {
  Printed printed;
  printed.exit = outcome.exit;
  if (globals.json) {
    Json document{{"schema", 1},
                  {"command", command},
                  {"version", k_version},
                  {"input", outcome.input ? *outcome.input : Json::object()},
                  {"result", *outcome.result},
                  {"findings", findings_json(outcome.findings)},
                  {"sources", sources_json(outcome.sources)}};
    if (globals.explain) document["working"] = working_json(outcome.working);
    printed.out = dumped(document);
    return printed;
  }
  report::Document& document = outcome.document;
  if (document.remarks.empty()) document.remarks = report::remarks_of(outcome.findings, {});
  document.working = globals.explain ? outcome.working : Working{};
  printed.out = outcome.page ? std::move(*outcome.page)
                             : report::write_text(document, environment.width,
                                                  environment.utf8 ? report::Charset::utf8 : report::Charset::ascii);
  if (!globals.quiet)
    for (const std::string& hint : outcome.hints)
      printed.err += hint + "\n";
  return printed;
}

Printed printed_text(std::string text, const Environment& environment) {
  return {environment.utf8 ? std::move(text) : report::to_ascii(text), {}, ExitCode::answered};
}

std::string version_text() {
  return fmt::format(
      "clampwright {}\nCopyright (C) 2026 the Clampwright authors\nLicence GPL-3.0-or-later: see the file LICENSE.\n"
      "There is no warranty, to the extent permitted by law.\n",
      k_version);
}

} // namespace

Printed run(const std::vector<std::string>& arguments, const Environment& environment) {
  FirstLook look = look_at(arguments);
  if (look.version && !look.help) return printed_text(version_text(), environment);
  auto commands = make_commands();
  const auto find = [&](const std::string& name) {
    return std::ranges::find_if(commands, [&](const auto& c) { return c->name() == name; });
  };
  if (look.command == "help") {
    look.help = true;
    look.command.reset();
    std::vector<std::string> words;
    for (const std::string& word : look.rest)
      if (!word.starts_with('-')) words.push_back(word);
    if (!words.empty()) look.command = words.front();
    if (words.size() > 1 && is_command(words[0] + " " + words[1])) look.command = words[0] + " " + words[1];
  }
  if (!look.command) {
    if (look.help) return printed_text(program_help(), environment);
    if (arguments.empty()) return printed_text(short_help(), environment);
    const Problem problem{Trouble::usage,
                          "missing",
                          "the command is missing",
                          text::quotable(arguments.front()),
                          "clampwright --help lists the commands",
                          {}};
    return problem_printed(problem, std::nullopt, look.json, environment);
  }
  const auto command = find(*look.command);
  if (command == commands.end()) {
    if (look.help && !commands_of_family(*look.command).empty())
      return printed_text(family_help(*look.command), environment);
    if (look.help && arguments.front() != "help") return printed_text(program_help(), environment);
    return problem_printed(unknown_command(*look.command), std::nullopt, look.json, environment);
  }
  if (look.help) return printed_text(command_help(**command, environment.width), environment);

  const auto refuse = [&](const Problem& problem) {
    return problem_printed(problem, *look.command, look.json, environment);
  };
  const auto globals = parse(**command, look.rest);
  if (!globals) return refuse(globals.error());
  const auto context = context_from(*globals, environment);
  if (!context) return refuse(context.error());
  try {
    auto outcome = (*command)->run(*context);
    if (!outcome) return refuse(outcome.error());
    return outcome_printed(std::move(*outcome), *look.command, *globals, environment);
  } catch (const specdb::DatabaseError& error) {
    return refuse(problem_of(error, context->workshop));
  }
}

Printed failure(const std::vector<std::string>& arguments, ExitCode exit, const std::string& what) {
  const FirstLook look = look_at(arguments);
  Printed printed;
  printed.exit = exit;
  if (look.json)
    printed.out = dumped(
        {{"schema", 1},
         {"command", look.command ? Json(*look.command) : Json(nullptr)},
         {"error", {{"code", "internal"}, {"message", what}, {"input", nullptr}, {"hint", "please report this"}}}});
  else
    printed.err = fmt::format("clampwright: {}\n", what);
  return printed;
}

} // namespace clampwright::cli
