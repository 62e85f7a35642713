// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/hold_command.hpp"

#include <array>

#include <CLI/App.hpp>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/hold_json.hpp"
#include "core/report/hold_report.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/question/hold_joint.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::cli {

namespace {

using specdb::HoldQuestion;

struct Entry {
  specdb::MaybeText HoldQuestion::*text;
  const char* option;
  const char* type;
  const char* says;
};

// clang-format off
constexpr std::array k_entries{
    Entry{&HoldQuestion::torque,          "--torque",          "Q",       "torque on the crank"},
    Entry{&HoldQuestion::undo_torque,     "--undo-torque",     "Q",       "torque that undoing may need: all is told for it too"},
    Entry{&HoldQuestion::by,              "--by",              "WAY",     "same-end, strap, gear, stop, far-end; stop if not said"},
    Entry{&HoldQuestion::tool,            "--tool",            "NAME",    "hand; impact is refused"},
    Entry{&HoldQuestion::stroke,          "--stroke",          "Q",       "stroke of the piston"},
    Entry{&HoldQuestion::rod,             "--rod",             "Q",       "connecting rod, centre to centre"},
    Entry{&HoldQuestion::angle,           "--angle",           "Q",       "crank angle before top dead centre, 45deg"},
    Entry{&HoldQuestion::below_tdc,       "--below-tdc",       "Q",       "how far the crown stands below its top position"},
    Entry{&HoldQuestion::stop_length,     "--stop-length",     "Q",       "from the plug's seat to the tip; with --crown-depth"},
    Entry{&HoldQuestion::crown_depth,     "--crown-depth",     "Q",       "from the plug's seat to the crown at top dead centre"},
    Entry{&HoldQuestion::port_depth,      "--port-depth",      "Q",       "the crown's way down until the highest port opens"},
    Entry{&HoldQuestion::tip_diameter,    "--tip-diameter",    "Q",       "flat tip of the stop"},
    Entry{&HoldQuestion::stop_incline,    "--stop-incline",    "Q",       "angle between the stop and the bore"},
    Entry{&HoldQuestion::plug_thread,     "--plug-thread",     "THREAD",  "that the stop is screwed into"},
    Entry{&HoldQuestion::plug_engaged,    "--plug-engaged",    "Q",       "its length that bears"},
    Entry{&HoldQuestion::plug_material,   "--plug-material",   "NAME",    "metal of the head"},
    Entry{&HoldQuestion::tip_limit,       "--tip-limit",       "Q",       "limit: pressure under the tip"},
    Entry{&HoldQuestion::plug_margin,     "--plug-margin",     "X",       "limit: how many times its load the plug thread must bear"},
    Entry{&HoldQuestion::rod_limit,       "--rod-limit",       "Q",       "limit: force along the rod"},
    Entry{&HoldQuestion::stop_limit,      "--stop-limit",      "Q",       "limit: force along the stop"},
    Entry{&HoldQuestion::crown_thickness, "--crown-thickness", "Q",       "for the order of its bending"},
    Entry{&HoldQuestion::crown_radius,    "--crown-radius",    "Q",       "for the order of its bending"},
    Entry{&HoldQuestion::strap_radius,    "--strap-radius",    "Q",       "where a strap or pin holder pulls"},
    Entry{&HoldQuestion::gear_diameter,   "--gear-diameter",   "Q",       "pitch diameter of a locked gear"},
    Entry{&HoldQuestion::pin_diameter,    "--pin-diameter",    "Q",       "far end: crank pin pressed into its webs"},
    Entry{&HoldQuestion::pin_length,      "--pin-length",      "Q",       "far end: length pressed into one web"},
    Entry{&HoldQuestion::pin_pressure,    "--pin-pressure",    "Q..Q",    "far end: pressure of the fit, a band"},
    Entry{&HoldQuestion::pin_friction,    "--pin-friction",    "X..X",    "far end: friction of the fit, a band"},
};
// clang-format on

// "--tip-diameter" is "tip_diameter".
std::string key_of(std::string_view option) {
  std::string key(option.substr(2));
  for (char& c : key)
    if (c == '-') c = '_';
  return key;
}

Json echo_of(const HoldQuestion& question, const std::optional<std::string>& joint) {
  Json input = Json::object();
  if (joint) input["joint"] = *joint;
  for (const Entry& entry : k_entries)
    if (const auto& text = question.*entry.text) input[key_of(entry.option)] = *text;
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
  for (const Entry& entry : k_entries)
    app.add_option(entry.option, question_.*entry.text, entry.says)->type_name(entry.type);
}

Result<Outcome> HoldCommand::run(const Context& context) {
  const specdb::Catalogue catalogue;
  Outcome out;
  specdb::HoldQuestion question = question_;
  std::optional<specdb::JointAnswer> joint;
  bool invented = false;
  if (joint_) {
    auto named = named_joint(context, *joint_, "--joint");
    if (!named) return Refusal(named.error());
    auto answer = specdb::answer_for(catalogue, named->record);
    if (!answer) return Refusal(answer.error());
    joint = std::move(*answer);
    auto filled = specdb::hold_for_joint(*joint, std::move(question));
    if (!filled) return Refusal(filled.error());
    question = std::move(*filled);
    invented = named->invented;
    out.hints = std::move(named->hints);
  }
  const auto reply = specdb::answer_hold(catalogue, question);
  if (!reply) return Refusal(reply.error());
  out.input = std::make_shared<Json>(echo_of(question_, joint_));
  out.result = std::make_shared<Json>(hold_json(*reply, joint ? &*joint : nullptr, invented));
  out.findings = reply->answer.findings;
  out.working = reply->answer.working;
  out.document = report::hold_report(reply->answer, context.units);
  out.document.sources = reply->sources;
  if (joint) out.document.title += " [" + joint->joint.slug + "]";
  if (invented) out.document.banner = specdb::k_invented;
  out.sources = reply->sources;
  out.exit = has_failed(reply->answer) ? ExitCode::check_failed : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
