// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/hand_command.hpp"

#include <array>

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/commands/field_options.hpp"
#include "cli/commands/opened_workshop.hpp"
#include "cli/json/hold_json.hpp"
#include "cli/json/values_json.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::cli {

namespace {

constexpr std::array k_help{
    OptionHelp{"--rotation", "TURN", "of the shaft in service: clockwise or anticlockwise (cw, ccw, acw)"},
    OptionHelp{"--seen-from", "SIDE", "free-end (where the spanner goes) or engine-side"},
    OptionHelp{"--driver", "WHO", "which turns the other in service: shaft or part"},
    OptionHelp{"--bore", "Q", "bore of the outer part, for the bound of its creep; with --shaft"},
    OptionHelp{"--shaft", "Q", "shaft or pin that runs in it"},
};
static_assert(tells_all(k_help, specdb::k_hand_fields));

} // namespace

std::string_view HandCommand::summary() const { return "which hand of thread the drive calls for"; }
std::string_view HandCommand::usage() const {
  return "hand --rotation clockwise|anticlockwise --seen-from free-end|engine-side --driver shaft|part [options]";
}
std::vector<Example> HandCommand::examples() const {
  return {{"hand --rotation clockwise --seen-from free-end --driver shaft", "a clutch on a crank"},
          {"hand --rotation ccw --seen-from engine-side --driver part", "a starter dog, seen from the engine"},
          {"hand --rotation clockwise --seen-from free-end --driver shaft --bore 20.02mm --shaft 20mm",
           "with the most that it may creep"}};
}

void HandCommand::declare(CLI::App& app) {
  declare_fields(app, question_, specdb::k_hand_fields, k_help);
  app.add_option("--joint", joint_, "a joint of the workshop: what is on record for it")->type_name("NAME");
}

Result<Outcome> HandCommand::run(const Context& context) {
  auto needed = workshop_where(joint_.has_value(), context);
  if (!needed) return Refusal(needed.error());
  const specdb::Catalogue catalogue;
  const auto told = specdb::tell_hand(catalogue, needed->get(), joint_, question_);
  if (!told) return Refusal(told.error());
  Json input = Json::object();
  put_text(input, "joint", joint_);
  echo_into(input, question_, specdb::k_hand_fields);
  Outcome out;
  out.hints = std::move(needed->hints);
  out.input = std::make_shared<Json>(std::move(input));
  Json result = hand_json(told->reply.answer);
  result["joint"] = told->joint ? Json(told->joint->slug) : Json(nullptr);
  result["seen_from"] = told->joint ? Json(told->joint->seen_from) : Json(nullptr);
  result["invented"] = told->joint ? Json(told->invented) : Json(nullptr);
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = told->reply.answer.findings;
  out.document = specdb::hand_document(*told);
  out.sources = out.document.sources;
  return out;
}

} // namespace clampwright::cli
