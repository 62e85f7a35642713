// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/cure_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/locking_json.hpp"
#include "specdb/catalogue/locking.hpp"

namespace clampwright::cli {

std::string_view CureCommand::summary() const { return "when a locking compound has cured"; }
std::string_view CureCommand::usage() const {
  return "cure --lock NAME --temperature Q [--surface NAME ...] [--fitted-at \"DATE TIME\"]";
}
std::vector<Example> CureCommand::examples() const {
  return {{"cure --lock compound-medium --temperature 10degC --surface steel", "in a cold workshop"},
          {"cure --lock compound-medium --temperature 20degC --surface steel --fitted-at \"2026-11-26 09:30\"",
           "with the hour at which it is ready"},
          {"cure --lock compound-high --temperature 93degC --surface steel", "a part that is warmed"},
          {"cure --lock compound-medium --temperature 20degC --surface stainless --surface aluminium",
           "a stainless screw in light metal"}};
}

void CureCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--lock", question_.lock, "the compound, by its strength")->type_name("NAME");
  app.add_option("--temperature", question_.temperature, "of the part, not of the room")->type_name("Q");
  app.add_option("--surface", question_.surfaces, "what it is on; give it again for the other part")
      ->type_name("NAME")
      ->allow_extra_args(false);
  app.add_option("--fitted-at", question_.fitted_at, "day and hour, for when it is ready: 2026-11-26 09:30")
      ->type_name("TIME");
}

std::vector<std::pair<std::string, std::string>> CureCommand::lists() const {
  const specdb::Catalogue catalogue;
  return {{"SURFACES", fmt::format("{}", fmt::join(specdb::cure_surface_names(catalogue), ", "))}};
}

Result<Outcome> CureCommand::run(const Context& /*context*/) {
  if (!words_.empty() && !question_.lock) question_.lock = words_.front(), words_.erase(words_.begin());
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "that was not expected", words_.front(),
                  "write clampwright cure --lock compound-medium --temperature 20degC --surface steel");
  const specdb::Catalogue catalogue;
  const auto reply = specdb::answer_cure(catalogue, question_);
  if (!reply) return Refusal(reply.error());
  Outcome out;
  Json input{{"lock", *question_.lock}, {"temperature", *question_.temperature}};
  if (!question_.surfaces.empty()) input["surfaces"] = question_.surfaces;
  if (question_.fitted_at) input["fitted_at"] = *question_.fitted_at;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(cure_json(reply->answer));
  out.findings = reply->answer.findings;
  out.sources = reply->sources;
  out.document = specdb::cure_document(*reply);
  out.exit = finding::has_stop(reply->answer.findings) ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
