// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/hold_command.hpp"

#include <array>

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/commands/field_options.hpp"
#include "cli/commands/opened_workshop.hpp"
#include "cli/json/hold_json.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::cli {

namespace {

using specdb::HoldQuestion;

// clang-format off
constexpr std::array k_help{
    OptionHelp{"--torque",          "Q",       "torque on the crank"},
    OptionHelp{"--undo-torque",     "Q",       "torque that undoing may need: all is told for it too"},
    OptionHelp{"--by",              "WAY",     "same-end, strap, gear, stop, far-end; stop if not said"},
    OptionHelp{"--tool",            "NAME",    "hand; impact is refused"},
    OptionHelp{"--stroke",          "Q",       "stroke of the piston"},
    OptionHelp{"--rod",             "Q",       "connecting rod, centre to centre"},
    OptionHelp{"--angle",           "Q",       "crank angle before top dead centre, 45deg"},
    OptionHelp{"--below-tdc",       "Q",       "how far the crown stands below its top position"},
    OptionHelp{"--stop-length",     "Q",       "from the plug's seat to the tip; with --crown-depth"},
    OptionHelp{"--crown-depth",     "Q",       "from the plug's seat to the crown at top dead centre"},
    OptionHelp{"--port-depth",      "Q",       "the crown's way down until the highest port opens"},
    OptionHelp{"--tip-diameter",    "Q",       "flat tip of the stop"},
    OptionHelp{"--stop-incline",    "Q",       "angle between the stop and the bore"},
    OptionHelp{"--plug-thread",     "THREAD",  "that the stop is screwed into"},
    OptionHelp{"--plug-engaged",    "Q",       "its length that bears"},
    OptionHelp{"--plug-material",   "NAME",    "metal of the head"},
    OptionHelp{"--tip-limit",       "Q",       "limit: pressure under the tip"},
    OptionHelp{"--plug-margin",     "X",       "limit: how many times its load the plug thread must bear"},
    OptionHelp{"--rod-limit",       "Q",       "limit: force along the rod"},
    OptionHelp{"--stop-limit",      "Q",       "limit: force along the stop"},
    OptionHelp{"--crown-thickness", "Q",       "for the order of its bending"},
    OptionHelp{"--crown-radius",    "Q",       "for the order of its bending"},
    OptionHelp{"--strap-radius",    "Q",       "where a strap or pin holder pulls"},
    OptionHelp{"--gear-diameter",   "Q",       "pitch diameter of a locked gear"},
    OptionHelp{"--pin-diameter",    "Q",       "far end: crank pin pressed into its webs"},
    OptionHelp{"--pin-length",      "Q",       "far end: length pressed into one web"},
    OptionHelp{"--pin-pressure",    "Q..Q",    "far end: pressure of the fit, a band"},
    OptionHelp{"--pin-friction",    "X..X",    "far end: friction of the fit, a band"},
};
// clang-format on
static_assert(tells_all(k_help, specdb::k_hold_fields));

Json echo_of(const HoldQuestion& question, const std::optional<std::string>& joint) {
  Json input = Json::object();
  if (joint) input["joint"] = *joint;
  echo_into(input, question, specdb::k_hold_fields);
  return input;
}

// A pin that likely turns in its web is a check that failed where the far end is what is to be held; a stop that may
// miss the piston, or bears too much, always is.
bool has_failed(const crank::HoldAnswer& answer) {
  return answer.verdict == crank::HoldVerdict::over_limit || (answer.stop && finding::has_stop(answer.stop->findings));
}

} // namespace

std::string_view HoldCommand::summary() const {
  return "holding the crank: what bears the torque, and the most it may be";
}
std::string_view HoldCommand::usage() const {
  return "hold --torque Q --stroke Q --rod Q (--angle Q | --below-tdc Q | --stop-length Q --crown-depth Q) [options]";
}
std::vector<Example> HoldCommand::examples() const {
  return {{"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg", "a piston stop near the top"},
          {"hold --torque 30Nm --stroke 50mm --rod 100mm --stop-length 23mm --crown-depth 14mm --tip-diameter 8mm "
           "--tip-limit 60MPa --undo-torque 60Nm",
           "a stop by its length, and the most that may be pulled"},
          {"hold --torque 40Nm --by strap --strap-radius 60mm", "a strap or pin holder"},
          {"hold --torque 60Nm --by far-end --pin-diameter 20mm --pin-length 15mm --pin-pressure 80..120MPa "
           "--pin-friction 0.10..0.20",
           "the far end of a pressed-up crank"}};
}

void HoldCommand::declare(CLI::App& app) {
  app.add_option("--joint", joint_, "a joint of the workshop: its torque and its machine's record")->type_name("NAME");
  declare_fields(app, question_, specdb::k_hold_fields, k_help);
}

Result<Outcome> HoldCommand::run(const Context& context) {
  auto needed = workshop_where(joint_.has_value(), context);
  if (!needed) return Refusal(needed.error());
  const specdb::Catalogue catalogue;
  const auto told = specdb::tell_hold(catalogue, needed->get(), joint_, question_);
  if (!told) return Refusal(told.error());
  const crank::HoldAnswer& answer = told->reply.answer;
  Outcome out;
  out.hints = std::move(needed->hints);
  out.input = std::make_shared<Json>(echo_of(question_, joint_));
  out.result = std::make_shared<Json>(hold_json(told->reply, told->joint ? &*told->joint : nullptr, told->invented));
  out.findings = answer.findings;
  out.working = answer.working;
  out.document = specdb::hold_document(*told, context.units);
  out.sources = out.document.sources;
  out.exit = has_failed(answer) ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
