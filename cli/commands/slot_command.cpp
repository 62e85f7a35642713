// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/slot_command.hpp"

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/json/stack_json.hpp"
#include "cli/json/values_json.hpp"

namespace clampwright::cli {

std::string_view SlotCommand::summary() const { return "whether a castle nut meets a slot within its torque"; }
std::string_view SlotCommand::usage() const {
  return "slot THREAD (--low Q --high Q | --torque Q) --grip Q --part-material NAME [options]";
}
std::vector<Example> SlotCommand::examples() const {
  return {
      {"slot M10 --class 8.8 --low 30Nm --high 45Nm --surfaces oiled --grip 25mm --part-material steel",
       "six slots and one hole"},
      {"slot \"5/16-24 UNF\" --class \"SAE 5\" --torque 140in-lb --surfaces dry --grip \"1 in\" "
       "--part-material wrought-aluminium",
       "where the page gives no range"},
      {"slot M10 --class 8.8 --low 30Nm --high 45Nm --surfaces oiled --grip 25mm --part-material steel --pin-holes 2",
       "a bolt with two holes across"}};
}

void SlotCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--low", low_, "low end of the torque, as set on the wrench")->type_name("Q");
  app.add_option("--high", high_, "high end of the torque")->type_name("Q");
  app.add_option("--torque", torque_, "one torque where the page gives no range: 10 % either way are taken")
      ->type_name("Q");
  app.add_option("--slots", slots_, "slots of the nut; 6 if not said")->type_name("N");
  app.add_option("--pin-holes", pin_holes_, "holes across the bolt; 1 if not said")->type_name("N");
  stack_.declare(app);
  options_.declare(app);
}

std::vector<std::pair<std::string, std::string>> SlotCommand::lists() const {
  auto lists = StackOptions::lists();
  for (auto& list : CaseOptions::lists())
    lists.push_back(std::move(list));
  return lists;
}

Result<Outcome> SlotCommand::run(const Context& context) {
  const auto text = only_word("a thread", examples().front().line);
  if (!text) return Refusal(text.error());
  options_.question().thread = *text;
  options_.question() = specdb::with_castle_nut(options_.question());
  const specdb::Catalogue catalogue;
  const auto reply = specdb::answer_slot(
      catalogue, {options_.question(), stack_.question(), slots_, pin_holes_, torque_, low_, high_});
  if (!reply) return Refusal(reply.error());
  Outcome out;
  Json input = options_.echo();
  put_text(input, "torque", torque_);
  put_text(input, "low", low_);
  put_text(input, "high", high_);
  put_text(input, "slots", slots_);
  put_text(input, "pin_holes", pin_holes_);
  stack_.echo_into(input);
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(slot_json(*reply));
  out.findings = reply->answer.findings;
  out.working = reply->answer.working;
  out.document = specdb::slot_document(*reply, context.units);
  out.sources = reply->sources;
  return out;
}

} // namespace clampwright::cli
