// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/workup_command.hpp"

#include <array>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/workup_json.hpp"
#include "core/report/workup_report.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/nut_strengths.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::cli {

namespace {

using Q = specdb::WorkupQuestion;

struct Option {
  const char* name;
  const char* key; // in `input`
  std::optional<std::string> Q::*text;
  const char* says;
  const char* type;
};

constexpr std::array k_options{
    Option{"--material", "material", &Q::material, "what it screws into: cast-aluminium, steel, ...", "NAME"},
    Option{"--engagement", "engagement", &Q::engagement, "length of thread engaged in it", "Q"},
    Option{"--nut", "nut", &Q::nut, "class of the nut", "C"},
    Option{"--seat", "seat", &Q::seat, "material under the turned part", "NAME"},
    Option{"--soft", "soft", &Q::soft, "wood, plastic or a gasket between the parts", "NAME"},
    Option{"--soft-limit", "soft_limit", &Q::soft_limit, "pressure that it bears, from its maker", "Q"},
    Option{"--must-clamp", "must_clamp", &Q::must_clamp, "clamp load that each bolt must keep", "Q"},
    Option{"--pull", "pull", &Q::pull, "pull along each bolt in service", "Q"},
    Option{"--carry", "carry", &Q::carry, "torque that the clamped faces carry by friction", "Q"},
    Option{"--radius", "radius", &Q::radius, "at which those faces rub", "Q"},
    Option{"--slip", "slip", &Q::slip, "force across the bolts that they carry", "Q"},
    Option{"--face-friction", "face_friction", &Q::friction, "of those faces, the least", "X"},
    Option{"--faces", "faces", &Q::faces, "that would have to slip; 1 if not said", "N"},
    Option{"--pressure", "pressure", &Q::pressure, "pressure that pushes the parts apart", "Q"},
    Option{"--sealed-diameter", "sealed_diameter", &Q::sealed, "that it works on", "Q"},
    Option{"--bolts", "bolts", &Q::bolts, "that share torque, force and pressure", "N"},
    Option{"--loss", "loss", &Q::loss, "share of the clamp load that goes after tightening", "X"},
    Option{"--proof-share", "proof_share", &Q::proof_share, "of the proof load that is used; 75 % if not said", "X"},
    Option{"--yield-share", "yield_share", &Q::yield_share, "of yield, with torsion; 90 % if not said", "X"},
    Option{"--thread-margin", "thread_margin", &Q::thread_margin, "strip load over the allowed one; 1.5 if not said",
           "X"},
};

constexpr const char* k_like =
    "workup winch/brake-pivot, or workup --thread M8 --class 8.8 --surfaces oiled --must-clamp 5kN";

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
  for (const Option& option : k_options)
    app.add_option(option.name, question_.*option.text, option.says)->type_name(option.type);
  options_.declare(app);
}

Json WorkupCommand::echo() const {
  Json input = options_.echo();
  if (question_.joint) {
    input.erase("thread");
    input["joint"] = question_.joint->slug;
  }
  for (const Option& option : k_options)
    if (const auto& text = question_.*option.text) input[option.key] = *text;
  return input;
}

Result<Outcome> WorkupCommand::run(const Context& context) {
  if (thread_.has_value() != words_.empty())
    return refuse(Trouble::usage, thread_ ? "surplus" : "missing",
                  thread_ ? "both a joint and --thread are there" : "what is to be tightened is missing", {},
                  fmt::format("write {}", k_like));
  Outcome out;
  bool invented = false;
  report::WorkupPlace place;
  if (thread_) {
    options_.question().thread = *thread_;
  } else {
    auto named = named_joint(context, fmt::format("{}", fmt::join(words_, " ")));
    if (!named) return Refusal(named.error());
    place.joint = fmt::format("{}, {}", named->record.slug, named->record.name);
    question_.joint = std::move(named->record);
    invented = named->invented;
    out.hints = std::move(named->hints);
  }
  question_.how = options_.question();
  const specdb::Catalogue catalogue;
  auto reply = specdb::answer_workup(catalogue, question_);
  if (!reply) return Refusal(reply.error());
  place.part = reply->part;
  place.must_clamp_because = reply->must_clamp_because;
  place.loss_told = reply->loss_told;
  place.makers_figure = reply->makers_figure;
  place.figure_words = reply->figure_words;
  out.document = report::workup_report(reply->answer, place, context.units);
  if (invented) out.document.banner = specdb::k_invented;
  out.document.sources = reply->sources;
  out.input = std::make_shared<Json>(echo());
  Json result = workup_json(*reply);
  if (question_.joint) result["invented"] = invented;
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = reply->answer.findings;
  out.working = reply->answer.working;
  out.sources = std::move(reply->sources);
  out.exit = reply->answer.verdict == workup::Verdict::none || finding::has_stop(reply->answer.findings)
                 ? ExitCode::check_failed
                 : ExitCode::answered;
  return out;
}

} // namespace clampwright::cli
