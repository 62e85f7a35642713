// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/substitute_command.hpp"

#include <array>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/field_options.hpp"
#include "cli/commands/opened_workshop.hpp"
#include "cli/json/substitute_json.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/nuts.hpp"
#include "specdb/question/case_fields.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::cli {

namespace {

constexpr const char* k_like = "substitute \"M10 8.8\" --with \"M10 10.9\"";

constexpr std::array k_help{
    OptionHelp{"--with-surfaces", "NAME", "finish of the one offered: zinc-dry, oiled, ..."},
    OptionHelp{"--with-mu", "X", "friction of the one offered, thread and face"},
    OptionHelp{"--with-nut-factor", "X", "nut factor of the one offered"},
    OptionHelp{"--with-head", "NAME", "head of the one offered"},
    OptionHelp{"--coating", "NAME", "plain, electroplated, hot-dip, zinc-flake or phosphate"},
    OptionHelp{"--nut", "C", "class of the nut"},
    OptionHelp{"--mating", "NAME", "what it screws into: cast-aluminium, steel, ..."},
    OptionHelp{"--engagement", "Q", "length of thread engaged in that part"},
    OptionHelp{"--seat", "NAME", "material under the turned part"},
    OptionHelp{"--length", "Q", "length of the one offered, under the head"},
    OptionHelp{"--original-length", "Q", "length of the original"},
    OptionHelp{"--grip", "Q", "what is clamped between head and thread"},
    OptionHelp{"--hole-depth", "Q", "depth of thread in the hole"},
    OptionHelp{"--duty", "D", "dry or wet"},
    OptionHelp{"--temperature", "Q", "how hot the joint runs"},
    OptionHelp{"--torque", "Q", "the torque of the original"},
    OptionHelp{"--condition", "W", "of the one offered: new or used"},
};
static_assert(tells_all(k_help, specdb::k_substitute_fields));

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
  declare_fields(app, question_, specdb::k_substitute_fields, k_help);
  app.add_flag("--aircraft", question_.approval_needed, "an aircraft part, or a certified machine");
  options_.declare(app, CaseOptions::Sizes::one_of_told_class);
}

Json SubstituteCommand::echo() const {
  Json input = options_.echo();
  input.erase("thread");
  if (!question_.original.empty()) input["original"] = question_.original;
  input["with"] = question_.offered;
  if (joint_) input["joint"] = *joint_;
  echo_into(input, question_, specdb::k_substitute_fields);
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
  auto needed = workshop_where(joint_.has_value() && !specdb::describes_fastener(question_.how), context);
  if (!needed) return Refusal(needed.error());
  const specdb::Catalogue catalogue;
  const auto told = specdb::tell_substitute(catalogue, needed->get(), joint_, question_);
  if (!told) return Refusal(told.error());
  Outcome out;
  out.hints = std::move(needed->hints);
  out.document = specdb::substitute_document(*told, context.units);
  out.input = std::make_shared<Json>(echo());
  Json result = substitute_json(told->answer);
  result["invented"] = told->invented ? Json(*told->invented) : Json(nullptr);
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = told->answer.answer.findings;
  out.working = out.document.working;
  out.sources = out.document.sources;
  const auto verdict = told->answer.answer.verdict;
  out.exit = verdict == substitute::Verdict::not_adequate || verdict == substitute::Verdict::not_known
                 ? ExitCode::check_failed
                 : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
