// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/torque_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/commands/any_pitch.hpp"
#include "cli/json/tightening_json.hpp"
#include "core/quantity/read.hpp"
#include "core/report/tightening_report.hpp"
#include "core/text/plain_text.hpp"
#include "core/tightening/wanted.hpp"

namespace clampwright::cli {

namespace {

constexpr const char* k_like = "torque \"3/8-24 UNF\" --class \"SAE 5\" --proof-fraction 75% --surfaces zinc-dry";

Result<tightening::Wanted> wanted_from(const std::optional<std::string>& preload,
                                       const std::optional<std::string>& proof,
                                       const std::optional<std::string>& yield) {
  const int given = (preload ? 1 : 0) + (proof ? 1 : 0) + (yield ? 1 : 0);
  if (given != 1)
    return refuse(Trouble::usage, given == 0 ? "missing" : "surplus",
                  given == 0 ? "what the torque is for is missing" : "the torque can be for one thing only", {},
                  "give one of --preload 15kN, --proof-fraction 75% or --yield-fraction 90%");
  tightening::Wanted wanted;
  if (preload) {
    const auto force = quantity::read_force(*preload);
    if (!force) return in_field(force.error(), "--preload");
    wanted.preload = *force;
    return wanted;
  }
  wanted.aim = proof ? tightening::Aim::proof_share : tightening::Aim::yield_share;
  const auto share = quantity::read_share(proof ? *proof : *yield);
  if (!share) return in_field(share.error(), proof ? "--proof-fraction" : "--yield-fraction");
  wanted.share = *share;
  return wanted;
}

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
  const auto wanted = wanted_from(preload_, proof_fraction_, yield_fraction_);
  if (!wanted) return Refusal(wanted.error());
  const specdb::Catalogue catalogue;
  const auto resolved = specdb::resolve(catalogue, options_.question());
  if (!resolved) return with_any_pitch(catalogue, options_.question().thread, resolved.error());
  auto answer = tightening::torque_for(resolved->asked, *wanted, resolved->accuracy);
  if (!answer) {
    Problem problem = answer.error();
    if (problem.code == "out-of-range" && problem.field.empty() && problem.input.empty()) {
      problem.field = preload_ ? "--preload" : proof_fraction_ ? "--proof-fraction" : "--yield-fraction";
      problem.input = text::quotable((preload_          ? preload_
                                      : proof_fraction_ ? proof_fraction_
                                                        : yield_fraction_)
                                         .value_or(""));
    }
    return Refusal(std::move(problem));
  }

  Outcome out;
  Json input = options_.echo();
  if (preload_) input["preload"] = *preload_;
  if (proof_fraction_) input["proof_fraction"] = *proof_fraction_;
  if (yield_fraction_) input["yield_fraction"] = *yield_fraction_;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(torque_json(*answer, resolved->thread));
  out.findings = answer->clamp.findings;
  out.working = answer->clamp.working;
  out.document = report::torque_report(*answer, context.units);
  out.sources = out.document.sources;
  out.exit = answer->clamp.verdict == tightening::Verdict::over_limit ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
