// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/torque_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/json/tightening_json.hpp"
#include "core/report/tightening_report.hpp"
#include "specdb/question/clamp_question.hpp"

namespace clampwright::cli {

namespace {

constexpr const char* k_like = "torque \"3/8-24 UNF\" --class \"SAE 5\" --proof-fraction 75% --surfaces zinc-dry";

} // namespace

std::string_view TorqueCommand::summary() const { return "the torque for a clamp load"; }
std::string_view TorqueCommand::usage() const {
  return "torque THREAD (--preload Q | --proof-fraction X | --yield-fraction X) [options]";
}
std::vector<Example> TorqueCommand::examples() const {
  return {{k_like, "for three quarters of the proof load"},
          {"torque M8 --class 10.9 --preload 18kN --surfaces oiled", "for a clamp load"},
          {"torque M12 --class 8.8 --yield-fraction 90% --mu 0.10..0.14", "for 90 % of yield at the lowest friction"}};
}
std::vector<std::pair<std::string, std::string>> TorqueCommand::lists() const { return CaseOptions::lists(); }

void TorqueCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--preload", preload_, "clamp load wanted")->type_name("Q");
  app.add_option("--proof-fraction", proof_fraction_, "share of the proof load wanted: 75% or 0.75")->type_name("X");
  app.add_option("--yield-fraction", yield_fraction_, "share of yield wanted, at the lowest friction")->type_name("X");
  options_.declare(app);
}

Result<Outcome> TorqueCommand::run(const Context& context) {
  const auto text = only_word("a thread", k_like);
  if (!text) return Refusal(text.error());
  options_.question().thread = *text;
  const specdb::Catalogue catalogue;
  const auto reply =
      specdb::answer_torque(catalogue, {options_.question(), preload_, proof_fraction_, yield_fraction_});
  if (!reply) return Refusal(reply.error());
  const tightening::TorqueAnswer& answer = reply->answer;

  Outcome out;
  Json input = options_.echo();
  if (preload_) input["preload"] = *preload_;
  if (proof_fraction_) input["proof_fraction"] = *proof_fraction_;
  if (yield_fraction_) input["yield_fraction"] = *yield_fraction_;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(torque_json(answer, reply->thread));
  out.findings = answer.clamp.findings;
  out.working = answer.clamp.working;
  out.document = report::torque_report(answer, context.units);
  out.sources = out.document.sources;
  out.exit = answer.clamp.verdict == tightening::Verdict::over_limit ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
