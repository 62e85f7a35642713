// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/workup_command.hpp"

#include <array>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/field_options.hpp"
#include "cli/commands/opened_workshop.hpp"
#include "cli/json/workup_json.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/nut_strengths.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::cli {

namespace {

constexpr std::array k_help{
    OptionHelp{"--material", "NAME", "what it screws into: cast-aluminium, steel, ..."},
    OptionHelp{"--engagement", "Q", "length of thread engaged in it"},
    OptionHelp{"--nut", "C", "class of the nut"},
    OptionHelp{"--seat", "NAME", "material under the turned part"},
    OptionHelp{"--soft", "NAME", "wood, plastic or a gasket between the parts"},
    OptionHelp{"--soft-limit", "Q", "pressure that it bears, from its maker"},
    OptionHelp{"--must-clamp", "Q", "clamp load that each bolt must keep"},
    OptionHelp{"--pull", "Q", "pull along each bolt in service"},
    OptionHelp{"--carry", "Q", "torque that the clamped faces carry by friction"},
    OptionHelp{"--radius", "Q", "at which those faces rub"},
    OptionHelp{"--slip", "Q", "force across the bolts that they carry"},
    OptionHelp{"--face-friction", "X", "of those faces, the least"},
    OptionHelp{"--faces", "N", "that would have to slip; 1 if not said"},
    OptionHelp{"--pressure", "Q", "pressure that pushes the parts apart"},
    OptionHelp{"--sealed-diameter", "Q", "that it works on"},
    OptionHelp{"--bolts", "N", "that share torque, force and pressure"},
    OptionHelp{"--loss", "X", "share of the clamp load that goes after tightening"},
    OptionHelp{"--proof-share", "X", "of the proof load that is used; 75 % if not said"},
    OptionHelp{"--yield-share", "X", "of yield, with torsion; 90 % if not said"},
    OptionHelp{"--thread-margin", "X", "strip load over the allowed one; 1.5 if not said"},
};
static_assert(tells_all(k_help, specdb::k_workup_fields));

} // namespace

std::string_view WorkupCommand::summary() const { return "a torque worked up where the maker gives none"; }
std::string_view WorkupCommand::usage() const {
  return "workup JOINT [options], or workup --thread T --class C [options]";
}
std::vector<Example> WorkupCommand::examples() const {
  return {{"workup --thread M8 --class 8.8 --surfaces oiled --nut 8 --seat steel-s235 --must-clamp 3kN",
           "a bolt and nut on steel that must keep 3 kN"},
          {"workup --thread M6 --class 8.8 --surfaces dry --material cast-aluminium --engagement 12mm --seat "
           "cast-aluminium",
           "a screw in light metal: the most that it bears"},
          {"workup --thread M8 --class 10.9 --mu 0.10..0.14 --nut 10 --seat steel-s235 --carry 40Nm --radius 30mm "
           "--face-friction 0.12 --bolts 6",
           "a flange that carries a torque by friction"}};
}
std::vector<std::pair<std::string, std::string>> WorkupCommand::lists() const {
  const specdb::Catalogue catalogue;
  auto lists = CaseOptions::lists();
  lists.emplace_back("MATERIALS", fmt::format("{}", fmt::join(specdb::material_names(catalogue), ", ")));
  lists.emplace_back("NUTS", fmt::format("{}", fmt::join(specdb::nut_strength_names(catalogue), ", ")));
  return lists;
}

void WorkupCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--thread", thread_, "where no joint is named: the thread")->type_name("T");
  declare_fields(app, question_, specdb::k_workup_fields, k_help);
  options_.declare(app);
}

Json WorkupCommand::echo(const std::optional<specdb::JointRecord>& joint) const {
  Json input = options_.echo();
  if (joint) {
    input.erase("thread");
    input["joint"] = joint->slug;
  }
  echo_into(input, question_, specdb::k_workup_fields);
  return input;
}

Result<Outcome> WorkupCommand::run(const Context& context) {
  if (thread_ && !words_.empty()) return specdb::joint_and_thread();
  if (!thread_ && words_.empty())
    return refuse(Trouble::usage, "missing", "what is to be tightened is missing", {},
                  fmt::format("write {}", specdb::k_workup_like));
  auto needed = workshop_where(!thread_, context);
  if (!needed) return Refusal(needed.error());
  std::optional<std::string> joint;
  if (thread_)
    options_.question().thread = *thread_;
  else
    joint = fmt::format("{}", fmt::join(words_, " "));
  question_.how = options_.question();
  const specdb::Catalogue catalogue;
  const auto told = specdb::tell_workup(catalogue, needed->get(), joint, question_);
  if (!told) return Refusal(told.error());
  const specdb::WorkupReply& reply = told->reply;
  Outcome out;
  out.hints = std::move(needed->hints);
  out.document = specdb::workup_document(*told, context.units);
  out.input = std::make_shared<Json>(echo(told->joint));
  Json result = workup_json(reply);
  if (told->joint) result["invented"] = told->invented;
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = reply.answer.findings;
  out.working = reply.answer.working;
  out.sources = reply.sources;
  out.exit = reply.answer.verdict == workup::Verdict::none || finding::has_stop(reply.answer.findings)
                 ? ExitCode::check_failed
                 : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
