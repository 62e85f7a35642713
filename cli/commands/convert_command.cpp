// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/convert_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "specdb/question/convert_question.hpp"

namespace clampwright::cli {

std::string_view ConvertCommand::summary() const { return "a quantity in other units"; }
std::string_view ConvertCommand::usage() const { return "convert QUANTITY [UNIT...]"; }
std::vector<Example> ConvertCommand::examples() const {
  return {{"convert \"2.5 mkg\" N.m", "an old sheet's torque in newton metres"},
          {"convert 30ft-lb", "in every unit of torque"},
          {"convert \"1 1/2 in\" mm", "a length in millimetres"}};
}

void ConvertCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> ConvertCommand::run(const Context& context) {
  if (words_.empty())
    return refuse(Trouble::usage, "missing", "a quantity is missing", {}, "write clampwright convert \"2.5 mkg\" N.m");
  const std::vector<std::string> units(words_.begin() + 1, words_.end());
  const auto reply = specdb::answer_convert({words_.front(), units, context.unit});
  if (!reply) return Refusal(reply.error());
  Json values = Json::object();
  for (const specdb::Converted& one : reply->values)
    values[std::string(one.unit->name)] = one.value;
  const std::string understood =
      fmt::format("{} {}", quantity::write_number(reply->reading.value, 15), reply->reading.unit->name);
  Outcome out;
  out.input = std::make_shared<Json>(Json{{"quantity", words_.front()}, {"units", units}});
  out.result = std::make_shared<Json>(Json{{"understood", understood}, {"values", values}});
  out.findings = reply->findings;
  out.working = reply->working;
  out.document = specdb::convert_document(*reply);
  return out;
}

} // namespace clampwright::cli
