// SPDX-License-Identifier: GPL-3.0-or-later
//
// A sub-command is a class: its name and summary for the help, the options it declares, and the answer it gives. It
// never prints; the program (program.hpp) turns an answer into text or JSON. A new command is a new class and a line in
// registry.cpp.
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "cli/exit_code.hpp"
#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/source/source.hpp"
#include "core/working/step.hpp"

namespace CLI {
class App;
}

namespace clampwright::cli {

using Json = nlohmann::ordered_json;

// What every command may use.
struct Context {
  quantity::DisplayUnits units;
  const quantity::Unit* unit = nullptr; // as given with --unit
  std::filesystem::path workshop;       // the file to use, whether it exists or not; empty where no place is known
  std::chrono::year_month_day today{};
  bool json = false;    // standard output is JSON
  bool explain = false; // the working was asked for
};

// An answer, ready for either writer. `input` and `result` are the JSON members of those names; `document` is the same
// answer for people.
struct Outcome {
  std::shared_ptr<const Json> input;
  std::shared_ptr<const Json> result;
  finding::Findings findings;
  Working working;
  std::vector<Source> sources;
  report::Document document;
  std::optional<std::string> page; // instead of the document's text, where another form was asked for; written as it is
  std::vector<std::string> hints;  // for people, on standard error; --quiet drops them
  ExitCode exit = ExitCode::answered;
};

struct Example {
  std::string_view line; // without "clampwright "
  std::string_view says;
};

class Command {
 public:
  virtual ~Command() = default;
  [[nodiscard]] virtual std::string_view name() const = 0;
  [[nodiscard]] virtual std::string_view summary() const = 0;
  [[nodiscard]] virtual std::string_view usage() const = 0;
  [[nodiscard]] virtual std::vector<Example> examples() const = 0;
  // The command's own options, bound to its members. Called once, before run.
  virtual void declare(CLI::App& app) = 0;
  // Names that --help lists below the options: "surfaces", "heads". Heading and words.
  [[nodiscard]] virtual std::vector<std::pair<std::string, std::string>> lists() const { return {}; }
  [[nodiscard]] virtual Result<Outcome> run(const Context& context) = 0;

  // Words behind "--", where nothing is an option.
  void add_words(const std::vector<std::string>& words) { words_.insert(words_.end(), words.begin(), words.end()); }

 protected:
  // The words that are no options.
  std::vector<std::string> words_;
  void declare_words(CLI::App& app);
  // Exactly one word. `what` is like "a thread", `like` an example.
  [[nodiscard]] Result<std::string> only_word(std::string_view what, std::string_view like) const;
};

// The workshop file to use. Fails with usage where none is named and no home is known to hold the default one.
[[nodiscard]] Result<std::filesystem::path> workshop_file(const Context& context);

// All commands, in the order of the help.
[[nodiscard]] std::vector<std::unique_ptr<Command>> make_commands();

} // namespace clampwright::cli
