// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/clamp_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/json/tightening_json.hpp"
#include "core/report/tightening_report.hpp"
#include "specdb/question/clamp_question.hpp"

namespace clampwright::cli {

std::string_view ClampCommand::summary() const { return "the clamp load that a torque makes"; }
std::string_view ClampCommand::usage() const { return "clamp THREAD --torque Q [options]"; }
std::vector<Example> ClampCommand::examples() const {
  return {{"clamp M10 --class 8.8 --torque 45Nm --surfaces oiled", "an oiled bolt"},
          {"clamp M14x1.5-LH --kind hub --face-outer 30mm --face-inner 15mm --torque 42Nm --surfaces dry",
           "a hub screwed onto a shaft"},
          {"clamp M8 --class 8.8 --torque 24Nm --surfaces zinc-dry --lock locking-nut-insert --running-torque 2Nm",
           "a locking nut"}};
}
std::vector<std::pair<std::string, std::string>> ClampCommand::lists() const { return CaseOptions::lists(); }

void ClampCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--torque", torque_, "torque as set on the wrench")->type_name("Q");
  options_.declare(app);
}

Result<Outcome> ClampCommand::run(const Context& context) {
  const auto text = only_word("a thread", "clamp M10 --class 8.8 --torque 45Nm --surfaces oiled");
  if (!text) return Refusal(text.error());
  options_.question().thread = *text;
  const specdb::Catalogue catalogue;
  const auto reply = specdb::answer_clamp(catalogue, {options_.question(), torque_});
  if (!reply) return Refusal(reply.error());
  const tightening::ClampAnswer& answer = reply->answer;

  Outcome out;
  Json input = options_.echo();
  input["torque"] = *torque_;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(clamp_json(answer, reply->thread));
  out.findings = answer.findings;
  out.working = answer.working;
  out.document = report::clamp_report(answer, context.units);
  out.sources = out.document.sources;
  out.exit = answer.verdict == tightening::Verdict::over_limit ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
