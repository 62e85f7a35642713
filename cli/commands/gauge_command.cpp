// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/gauge_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "core/report/gauge_report.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::cli {

namespace {

using quantity::in_millimetres;

Json candidate_json(const thread::Candidate& candidate, bool internal) {
  Json alike = Json::array();
  Json tell = Json::array();
  for (const thread::LookAlike& other : candidate.look_alikes) {
    alike.push_back(other.other.thread.designation);
    tell.push_back({{"thread", other.other.thread.designation},
                    {"by_measurement", other.by_measurement},
                    {"words", report::tell_apart_text(candidate, other, internal, {})}});
  }
  const thread::Thread& thread = candidate.known.thread;
  return {{"designation", thread.designation},
          {"deviation_mm", in_millimetres(candidate.deviation)},
          {"verdict", thread::gauge_verdict_name(candidate.verdict)},
          {"look_alikes", std::move(alike)},
          {"form", thread::form_name(thread.form)},
          {"series", thread.series},
          {"pitch_mm", in_millimetres(thread.pitch)},
          {"tpi", number_or_null(thread.tpi)},
          {"pitch_off", number_or_null(candidate.pitch_off)},
          {"crest",
           {{"low_mm", in_millimetres(candidate.crests.low)},
            {"high_mm", in_millimetres(candidate.crests.high)},
            {"class", candidate.crests.by_class.empty() ? Json(nullptr) : Json(candidate.crests.by_class)}}},
          {"wear_mm", in_millimetres(thread::allowed_wear(thread))},
          {"tell_apart", std::move(tell)}};
}

Json result_json(const specdb::GaugeAnswer& answer) {
  const thread::Measurement& m = answer.measured;
  Json candidates = Json::array();
  for (const thread::Candidate& candidate : answer.candidates)
    candidates.push_back(candidate_json(candidate, m.internal));
  return {{"measured",
           {{"diameter_mm", in_millimetres(m.diameter)},
            {"diameter_uncertainty_mm", in_millimetres(m.diameter_doubt)},
            {"pitch_mm", m.pitch ? Json(in_millimetres(*m.pitch)) : Json(nullptr)},
            {"tpi", number_or_null(answer.tpi)},
            {"pitch_uncertainty", m.pitch ? Json(m.pitch_doubt) : Json(nullptr)},
            {"internal", m.internal}}},
          {"candidates", std::move(candidates)}};
}

} // namespace

std::string_view GaugeCommand::summary() const { return "which thread it is, from what was measured"; }
std::string_view GaugeCommand::usage() const { return "gauge --diameter Q [--pitch Q or --tpi N] [options]"; }
std::vector<Example> GaugeCommand::examples() const {
  return {{"gauge --diameter 7.85mm --pitch 1.25mm", "a bolt: outside diameter and pitch"},
          {"gauge --diameter 0.247in --tpi 20", "threads counted over an inch"},
          {"gauge --diameter 6.8mm --internal", "a nut or tapped hole: its minor diameter"}};
}

void GaugeCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--diameter", question_.diameter, "over the crests: outside of a bolt")->type_name("Q");
  app.add_option("--pitch", question_.pitch, "from crest to crest; measure ten turns, take a tenth")->type_name("Q");
  app.add_option("--tpi", question_.tpi, "threads per inch, instead of --pitch")->type_name("N");
  app.add_flag("--internal", question_.internal, "a nut or hole: its minor diameter was measured");
  app.add_option("--diameter-uncertainty", question_.diameter_doubt, "0.05mm if not said: a calliper")->type_name("Q");
  app.add_option("--pitch-uncertainty", question_.pitch_doubt, "2% if not said")->type_name("X");
}

Result<Outcome> GaugeCommand::run(const Context& context) {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "gauge takes options only", text::quotable(words_.front()),
                  "write clampwright gauge --diameter 7.85mm --pitch 1.25mm");
  const specdb::Catalogue catalogue;
  const auto answer = specdb::which_thread(catalogue, question_);
  if (!answer) return Refusal(answer.error());
  Outcome out;
  out.input = std::make_shared<Json>(Json{{"diameter", text_or_null(question_.diameter)},
                                          {"pitch", text_or_null(question_.pitch)},
                                          {"tpi", text_or_null(question_.tpi)},
                                          {"internal", question_.internal},
                                          {"diameter_uncertainty", text_or_null(question_.diameter_doubt)},
                                          {"pitch_uncertainty", text_or_null(question_.pitch_doubt)}});
  out.result = std::make_shared<Json>(result_json(*answer));
  out.findings = answer->findings;
  out.document = specdb::gauge_document(*answer, context.units);
  out.working = out.document.working;
  out.sources = answer->sources;
  return out;
}

} // namespace clampwright::cli
