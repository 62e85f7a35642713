// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/substitute_command.hpp"

#include <array>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/substitute_json.hpp"
#include "core/report/substitute_report.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/nuts.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::cli {

namespace {

constexpr const char* k_like = "substitute \"M10 8.8\" --with \"M10 10.9\"";

struct Option {
  const char* name;
  const char* key; // in `input`
  std::optional<std::string> specdb::SubstituteQuestion::*text;
  const char* says;
  const char* type;
};

using Q = specdb::SubstituteQuestion;
constexpr std::array k_options{
    Option{"--with-surfaces", "with_surfaces", &Q::with_surfaces, "finish of the one offered: zinc-dry, oiled, ...",
           "NAME"},
    Option{"--with-mu", "with_mu", &Q::with_mu, "friction of the one offered, thread and face", "X"},
    Option{"--with-nut-factor", "with_nut_factor", &Q::with_nut_factor, "nut factor of the one offered", "X"},
    Option{"--with-head", "with_head", &Q::with_head, "head of the one offered", "NAME"},
    Option{"--coating", "coating", &Q::coating, "plain, electroplated, hot-dip, zinc-flake or phosphate", "NAME"},
    Option{"--nut", "nut", &Q::nut, "class of the nut", "C"},
    Option{"--mating", "mating", &Q::mating, "what it screws into: cast-aluminium, steel, ...", "NAME"},
    Option{"--engagement", "engagement", &Q::engagement, "length of thread engaged in that part", "Q"},
    Option{"--seat", "seat", &Q::seat, "material under the turned part", "NAME"},
    Option{"--length", "length", &Q::length, "length of the one offered, under the head", "Q"},
    Option{"--original-length", "original_length", &Q::original_length, "length of the original", "Q"},
    Option{"--grip", "grip", &Q::grip, "what is clamped between head and thread", "Q"},
    Option{"--hole-depth", "hole_depth", &Q::hole_depth, "depth of thread in the hole", "Q"},
    Option{"--duty", "duty", &Q::duty, "dry or wet", "D"},
    Option{"--temperature", "temperature", &Q::temperature, "how hot the joint runs", "Q"},
    Option{"--torque", "torque", &Q::torque, "the torque of the original", "Q"},
    Option{"--condition", "condition", &Q::condition, "of the one offered: new or used", "W"},
};

} // namespace

std::string_view SubstituteCommand::summary() const { return "may another bolt go in where one was?"; }
std::string_view SubstituteCommand::usage() const {
  return "substitute \"THREAD CLASS\" --with \"THREAD CLASS\" [options], or substitute --joint NAME --with \"THREAD "
         "CLASS\"";
}
std::vector<Example> SubstituteCommand::examples() const {
  return {
      {k_like, "a higher class"},
      {"substitute \"M8 A2-50\" --with \"M8 A2-70\" --mating cast-aluminium --duty dry", "stainless in light metal"},
      {"substitute \"M8 8.8\" --with \"M8 8.8\" --torque 25Nm --surfaces dry --with-surfaces oiled",
       "the same bolt with another finish"},
      {"substitute --joint winch/frame-bolts --with \"3/8-24 UNF SAE 8\"", "in a joint of the workshop"}};
}
std::vector<std::pair<std::string, std::string>> SubstituteCommand::lists() const {
  const specdb::Catalogue catalogue;
  auto lists = CaseOptions::lists();
  lists.emplace_back("MATERIALS", fmt::format("{}", fmt::join(specdb::material_names(catalogue), ", ")));
  lists.emplace_back("NUTS", fmt::format("{}", fmt::join(specdb::nut_class_names(catalogue), ", ")));
  return lists;
}

void SubstituteCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--with", with_, "the one offered: thread and class")->type_name("\"THREAD CLASS\"");
  app.add_option("--joint", joint_, "a joint of the workshop: what it knows is not asked")->type_name("NAME");
  for (const Option& option : k_options)
    app.add_option(option.name, question_.*option.text, option.says)->type_name(option.type);
  app.add_flag("--aircraft", question_.approval_needed, "an aircraft part, or a certified machine");
  options_.declare(app, CaseOptions::Sizes::one_of_told_class);
}

Json SubstituteCommand::echo() const {
  Json input = options_.echo();
  input.erase("thread");
  if (!question_.original.empty()) input["original"] = question_.original;
  input["with"] = question_.offered;
  if (joint_) input["joint"] = *joint_;
  for (const Option& option : k_options)
    if (const auto& text = question_.*option.text) input[option.key] = *text;
  if (question_.approval_needed) input["aircraft"] = true;
  return input;
}

Result<Outcome> SubstituteCommand::run(const Context& context) {
  if (!with_)
    return refuse(Trouble::usage, "missing", "what is to go in is missing", {},
                  fmt::format("write clampwright {}", k_like), "--with");
  if (!joint_ || !words_.empty()) {
    const auto text = only_word("what was there", k_like);
    if (!text) return Refusal(text.error());
    question_.original = *text;
  }
  question_.offered = *with_;
  question_.how = options_.question();
  Outcome out;
  std::optional<bool> invented;
  if (joint_) {
    if (options_.describes_fastener())
      return refuse(Trouble::usage, "surplus", "the joint knows how it is tightened, and options say it again", {},
                    "leave them out, or write the original out and leave --joint out", "--joint");
    auto named = named_joint(context, *joint_, "--joint");
    if (!named) return Refusal(named.error());
    question_.joint = std::move(named->record);
    invented = named->invented;
    out.hints = std::move(named->hints);
  }
  const specdb::Catalogue catalogue;
  const auto answer = specdb::answer_for(catalogue, question_);
  if (!answer) return Refusal(answer.error());
  out.document = report::substitute_report(answer->question, answer->answer, answer->published, context.units);
  if (invented.value_or(false)) out.document.banner = specdb::k_invented;
  out.input = std::make_shared<Json>(echo());
  Json result = substitute_json(*answer);
  result["invented"] = invented ? Json(*invented) : Json(nullptr);
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = answer->answer.findings;
  out.working = out.document.working;
  out.sources = out.document.sources;
  const auto verdict = answer->answer.verdict;
  out.exit = verdict == substitute::Verdict::not_adequate || verdict == substitute::Verdict::not_known
                 ? ExitCode::check_failed
                 : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
