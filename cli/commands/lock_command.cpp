// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/lock_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/locking_json.hpp"
#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::cli {

namespace {

Outcome every_lock(const specdb::Catalogue& catalogue) {
  Outcome out;
  const auto locks = specdb::all_locks(catalogue);
  out.input = std::make_shared<Json>(Json::object());
  out.result = std::make_shared<Json>(locks_json(locks));
  out.document = specdb::locks_document(locks);
  out.hints.emplace_back("one of them with all that is known: clampwright lock NAME");
  return out;
}

} // namespace

std::string_view LockCommand::summary() const { return "how a lock is fitted, undone, checked; which go together"; }
std::string_view LockCommand::usage() const {
  return "lock [NAME [--with NAME ...] [--thread T] [--temperature Q] [--surface NAME ...]]";
}
std::vector<Example> LockCommand::examples() const {
  return {{"lock", "which there are"},
          {"lock compound-medium --thread M8", "all about a compound, on that thread"},
          {"lock second-nut --with split-pin", "may the two stand in one joint"},
          {"lock locking-nut-insert --temperature 110degC", "does it bear the heat"},
          {"lock split-pin", "a slotted nut and its pin"}};
}

void LockCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--with", question_.with, "another lock in the same joint; may be given again")
      ->type_name("NAME")
      ->allow_extra_args(false);
  app.add_option("--thread", question_.thread, "the thread it is on")->type_name("T");
  app.add_option("--temperature", question_.temperature, "in service")->type_name("Q");
  app.add_option("--surface", question_.surfaces, "what a compound is on, by the names of cure; may be given again")
      ->type_name("NAME")
      ->allow_extra_args(false);
}

std::vector<std::pair<std::string, std::string>> LockCommand::lists() const {
  const specdb::Catalogue catalogue;
  return {{"LOCKS", fmt::format("{}", fmt::join(specdb::lock_names(catalogue), ", "))}};
}

Result<Outcome> LockCommand::run(const Context& /*context*/) {
  const specdb::Catalogue catalogue;
  if (words_.empty()) {
    if (!question_.with.empty() || question_.thread || question_.temperature || !question_.surfaces.empty())
      return refuse(Trouble::usage, "missing", "the lock is missing", {}, "write clampwright lock compound-medium");
    return every_lock(catalogue);
  }
  // "locking nut insert" is one name.
  question_.lock = fmt::format("{}", fmt::join(words_, " "));
  const auto reply = specdb::answer_lock(catalogue, question_);
  if (!reply) return Refusal(reply.error());
  Outcome out;
  Json input{{"lock", question_.lock}};
  if (!question_.with.empty()) input["with"] = question_.with;
  if (question_.thread) input["thread"] = *question_.thread;
  if (question_.temperature) input["temperature"] = *question_.temperature;
  if (!question_.surfaces.empty()) input["surfaces"] = question_.surfaces;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(lock_json(*reply));
  out.findings = reply->findings;
  out.sources = reply->sources;
  out.document = specdb::lock_document(*reply, !question_.with.empty());
  out.exit = reply->verdict == specdb::Together::no ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
