// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/strip_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/strip_json.hpp"
#include "cli/json/values_json.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::cli {

namespace {

Json echo_of(const specdb::StripQuestion& q) {
  Json input{{"thread", q.fastener.thread}};
  put_text(input, "class", q.fastener.strength_class);
  put_text(input, "material", q.material);
  put_text(input, "length", q.length);
  put_text(input, "incomplete", q.incomplete);
  put_text(input, "insert", q.insert);
  put_text(input, "outer_thread", q.outer_thread);
  put_text(input, "torque", q.torque);
  put_text(input, "surfaces", q.fastener.surfaces);
  put_text(input, "mu", q.fastener.mu);
  put_text(input, "nut_factor", q.fastener.nut_factor);
  put_text(input, "head", q.fastener.head);
  put_text(input, "washer", q.fastener.washer);
  return input;
}

// The torque likely loads the thread past what strips it.
bool is_over(const finding::Findings& findings) {
  for (const auto& finding : findings)
    if (finding.code == finding::Code::strip_governs && finding.severity == finding::Severity::stop) return true;
  return false;
}

} // namespace

std::string_view StripCommand::summary() const { return "which gives first, the bolt or a thread"; }
std::string_view StripCommand::usage() const { return "strip THREAD --class C --material NAME [--length Q] [options]"; }
std::vector<Example> StripCommand::examples() const {
  return {{"strip M8 --class 8.8 --material cast-aluminium", "how much thread a casting needs"},
          {"strip M8 --class 8.8 --material cast-aluminium --length 12mm", "what gives first with 12 mm engaged"},
          {"strip M8 --class 8.8 --material magnesium-die --length 12mm --insert wire", "with a wire insert"},
          {"strip M8 --class 8.8 --material cast-aluminium --length 12mm --torque 24Nm --surfaces oiled",
           "what a torque does to the thread"}};
}

void StripCommand::declare(CLI::App& app) {
  declare_words(app);
  auto& q = question_;
  app.add_option("--class", q.fastener.strength_class, "strength class: 8.8, SAE 5, A2-70, unknown")->type_name("C");
  app.add_option("--material", q.material, "what the thread is cut in")->type_name("NAME");
  app.add_option("--length", q.length, "length engaged, with the turns at its ends that do not bear")->type_name("Q");
  app.add_option("--incomplete", q.incomplete, "what of it does not bear, in turns or as a length; 2 if not said")
      ->type_name("N|Q");
  app.add_option("--insert", q.insert, "steel insert in the part: wire or keyed")->type_name("KIND");
  app.add_option("--outer-thread", q.outer_thread, "outer thread of a keyed insert")->type_name("THREAD");
  app.add_option("--torque", q.torque, "torque as set on the wrench, to hold against what strips")->type_name("Q");
  app.add_option("--surfaces", q.fastener.surfaces, "for the torque: state of thread and face")->type_name("NAME");
  app.add_option("--mu", q.fastener.mu, "for the torque: friction of thread and face")->type_name("X");
  app.add_option("--nut-factor", q.fastener.nut_factor, "for the torque: nut factor K")->type_name("X");
  app.add_option("--head", q.fastener.head, "for the torque: head under which the face lies; hex if not said")
      ->type_name("NAME");
  app.add_option("--washer", q.fastener.washer, "for the torque: washer under the head, 24x13mm")->type_name("DxD");
}

std::vector<std::pair<std::string, std::string>> StripCommand::lists() const {
  const specdb::Catalogue catalogue;
  const auto joined = [](const std::vector<std::string>& names) { return fmt::format("{}", fmt::join(names, ", ")); };
  return {{"MATERIALS", joined(specdb::material_names(catalogue))},
          {"CLASSES", joined(specdb::class_names(catalogue)) + ", unknown"},
          {"SURFACES", joined(specdb::surfaces_names(catalogue))}};
}

Result<Outcome> StripCommand::run(const Context& context) {
  const auto text = only_word("a thread", "strip M8 --class 8.8 --material cast-aluminium");
  if (!text) return Refusal(text.error());
  question_.fastener.thread = *text;
  const specdb::Catalogue catalogue;
  const auto reply = specdb::answer_strip(catalogue, question_);
  if (!reply) return Refusal(reply.error());
  Outcome out;
  out.input = std::make_shared<Json>(echo_of(question_));
  out.result = std::make_shared<Json>(strip_json(*reply));
  out.findings = reply->answer.findings;
  out.working = reply->answer.working;
  out.document = specdb::strip_document(*reply, context.units);
  out.sources = reply->sources;
  out.exit = is_over(out.findings) ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
