// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/running_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/json/locking_json.hpp"

namespace clampwright::cli {

std::string_view RunningCommand::summary() const {
  return "running torque of locking nuts: used ones, and what it adds";
}
std::string_view RunningCommand::usage() const {
  return "running THREAD [--measured Q] [--torque Q] [--class C] [--insert]";
}
std::vector<Example> RunningCommand::examples() const {
  return {{"running 7/16-20", "what each table asks of a used nut"},
          {"running 7/16-20 --measured 15lbf.in", "may this nut be used again"},
          {"running 1/4-28 --insert", "a locking insert"},
          {"running M8 --torque 24Nm --measured 2Nm", "what to set, by either rule"}};
}

void RunningCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--measured", question_.measured, "running torque of the nut, nothing clamped")->type_name("Q");
  app.add_option("--torque", question_.torque, "torque as printed")->type_name("Q");
  app.add_option("--class", question_.nut_class, "class of the nut: 04, 05, 10, 12; leaves the others out")
      ->type_name("C");
  app.add_flag("--insert", question_.insert, "a locking insert in the part, not a nut");
}

std::vector<std::pair<std::string, std::string>> RunningCommand::lists() const { return {}; }

Result<Outcome> RunningCommand::run(const Context& context) {
  const auto text = only_word("a thread", "running 7/16-20 --measured 15lbf.in");
  if (!text) return Refusal(text.error());
  question_.thread = *text;
  const specdb::Catalogue catalogue;
  const auto reply = specdb::answer_running(catalogue, question_);
  if (!reply) return Refusal(reply.error());
  Outcome out;
  Json input{{"thread", question_.thread}};
  if (question_.measured) input["measured"] = *question_.measured;
  if (question_.torque) input["torque"] = *question_.torque;
  if (question_.insert) input["insert"] = true;
  if (question_.nut_class) input["class"] = *question_.nut_class;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(running_json(*reply));
  out.findings = reply->findings;
  out.sources = reply->sources;
  out.document = specdb::running_document(*reply, context.units);
  const bool fails = reply->reuse && *reply->reuse != locking::Reuse::ok && *reply->reuse != locking::Reuse::not_known;
  out.exit = fails ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
