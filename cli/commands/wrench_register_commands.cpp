// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/wrench_register_commands.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/wrench_json.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/question/wrench_list_report.hpp"
#include "specdb/question/wrench_words.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::cli {

namespace {

// What add and revise say alike.
void declare_record(CLI::App& app, specdb::WrenchWords& said) {
  const auto option = [&](const char* name, std::optional<std::string>& text, const char* says, const char* type) {
    app.add_option(name, text, says)->type_name(type);
  };
  option("--called", said.called, "its full name: \"Bench wrench A\"", "TEXT");
  option("--range", said.range, "ends of its scale: 10..60Nm", "A..B");
  option("--step", said.step, "distance of two marks; none for a display", "Q");
  option("--turns", said.turns, "calibrated for: clockwise, anticlockwise, both", "TURN");
  option("--accuracy", said.accuracy, "how far it may be off; by ISO 6789 if not said", "X");
  option("--accuracy-basis", said.accuracy_basis, "where that comes from: \"sheet 114\"", "TEXT");
  option("--class", said.wrench_class, "class as its standard names it: \"II A\"", "TEXT");
  option("--arm", said.arm, "middle of the grip to the middle of the drive", "Q");
  option("--months", said.months, "months between calibrations; 12 if not said", "N");
  option("--cycles", said.cycles, "pulls between calibrations; 5000 if not said", "N");
  option("--due", said.due, "day on which its sheet says it is due", "DAY");
}

Json echo_of(const std::string& wrench, const std::vector<std::pair<const char*, std::optional<std::string>>>& said) {
  Json input{{"wrench", wrench}};
  for (const auto& [key, text] : said)
    if (text) input[key] = *text;
  return input;
}

std::vector<std::pair<const char*, std::optional<std::string>>> said_of(const specdb::WrenchWords& said) {
  return {{"called", said.called},      {"range", said.range},       {"step", said.step},
          {"turns", said.turns},        {"accuracy", said.accuracy}, {"accuracy_basis", said.accuracy_basis},
          {"class", said.wrench_class}, {"arm", said.arm},           {"months", said.months},
          {"cycles", said.cycles},      {"due", said.due},           {"calibrated", said.calibrated}};
}

// The answer of every command that changed one wrench.
Result<Outcome> kept_outcome(const Context& context, const std::filesystem::path& file, const specdb::KeptWrench& kept,
                             const std::string& title, Json input) {
  const auto workshop = specdb::Workshop::open(file);
  if (!workshop) return Refusal(workshop.error());
  const bool invented = workshop->is_invented();
  Outcome out;
  out.input = std::make_shared<Json>(std::move(input));
  Json result = wrench_record_json(kept.wrench, context.today);
  result["changes"] = kept.changes;
  result["made_workshop"] = kept.made_file;
  result["invented"] = invented;
  out.result = std::make_shared<Json>(std::move(result));
  const auto upkeep = specdb::upkeep_of(kept.wrench);
  out.findings = tightening::upkeep_findings(kept.wrench.name, upkeep, context.today);
  out.document = specdb::wrench_record_report(kept.wrench, title, context.units, context.today, invented);
  if (kept.made_file)
    out.hints.push_back(fmt::format("there was no workshop file: made an empty one, {}, with this wrench in it",
                                    text::quotable(file.string())));
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  return out;
}

std::string changes_title(const specdb::KeptWrench& kept) {
  return fmt::format("{}: {}", kept.wrench.slug, fmt::join(kept.changes, "; "));
}

constexpr const char* k_short_name = "the short name of the wrench";

} // namespace

std::string_view WrenchAddCommand::summary() const { return "enter a torque wrench in the register"; }
std::string_view WrenchAddCommand::usage() const {
  return "wrench add NAME --range A..B --turns TURN [--step Q] [--arm Q] [--calibrated DAY] [options]";
}
std::vector<Example> WrenchAddCommand::examples() const {
  return {{"wrench add D --range 20..100Nm --step 1Nm --turns both --arm 420mm --calibrated 2026-03-02",
           "a click wrench with its calibration sheet"},
          {"wrench add E --called \"Inch wrench\" --range 10..80lbf.ft --step 1lbf.ft --turns clockwise --accuracy 3%",
           "on the scale that it has"}};
}

void WrenchAddCommand::declare(CLI::App& app) {
  declare_words(app);
  declare_record(app, said_);
  app.add_option("--calibrated", said_.calibrated, "day of its last calibration")->type_name("DAY");
}

Result<Outcome> WrenchAddCommand::run(const Context& context) {
  const auto slug = only_word(k_short_name, "wrench add A --range 10..60Nm --step 0.5Nm --turns both");
  if (!slug) return Refusal(slug.error());
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const auto kept = specdb::add_to_register(*file, text::plain_spaces(*slug), said_, context.today);
  if (!kept) return Refusal(kept.error());
  return kept_outcome(context, *file, *kept, fmt::format("{} is in the register", kept->wrench.slug),
                      echo_of(*slug, said_of(said_)));
}

std::string_view WrenchListCommand::summary() const { return "the torque wrenches, and which may be used"; }
std::string_view WrenchListCommand::usage() const { return "wrench list [NAME]"; }
std::vector<Example> WrenchListCommand::examples() const {
  return {{"wrench list", "all of them"}, {"wrench list A", "one, with its log"}};
}

void WrenchListCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> WrenchListCommand::run(const Context& context) {
  const auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  Outcome out;
  const bool invented = workshop->is_invented();
  std::vector<specdb::WrenchRecord> wrenches;
  Json input = Json::object();
  if (words_.empty()) {
    wrenches = specdb::all_wrenches(*workshop);
    out.document = specdb::wrench_list_report(wrenches, context.today, invented);
  } else {
    const std::string name = fmt::format("{}", fmt::join(words_, " "));
    input["wrench"] = name;
    auto wrench = specdb::find_wrench(*workshop, name);
    if (!wrench) return Refusal(wrench.error());
    out.document = specdb::wrench_record_report(*wrench, wrench->name, context.units, context.today, invented);
    wrenches.push_back(std::move(*wrench));
  }
  Json list = Json::array();
  for (const specdb::WrenchRecord& wrench : wrenches)
    list.push_back(wrench_record_json(wrench, context.today));
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(Json{{"wrenches", std::move(list)}, {"invented", invented}});
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  return out;
}

std::string_view WrenchReviseCommand::summary() const { return "change what is recorded of a torque wrench"; }
std::string_view WrenchReviseCommand::usage() const { return "wrench revise NAME --because TEXT [options]"; }
std::vector<Example> WrenchReviseCommand::examples() const {
  return {{"wrench revise A --arm 310mm --because \"measured again\"", "what it was is kept in its log"},
          {"wrench revise A --due none --months 6 --because \"rule of the shop\"", "take a field away, say another"}};
}

void WrenchReviseCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--because", because_, "why")->type_name("TEXT");
  declare_record(app, said_);
  app.add_flag("--in-use", said_.in_use, "it is no longer retired");
}

Result<Outcome> WrenchReviseCommand::run(const Context& context) {
  const auto name = only_word("the name of the wrench", "wrench revise A --step 1Nm --because \"new scale\"");
  if (!name) return Refusal(name.error());
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const auto kept = specdb::revise_in_register(*file, *name, said_, {because_, std::nullopt}, context.today);
  if (!kept) return Refusal(kept.error());
  Json input = echo_of(*name, said_of(said_));
  if (said_.in_use) input["in_use"] = true;
  input["because"] = *because_;
  return kept_outcome(context, *file, *kept, changes_title(*kept), std::move(input));
}

std::string_view WrenchRetireCommand::summary() const { return "take a torque wrench out of use"; }
std::string_view WrenchRetireCommand::usage() const { return "wrench retire NAME --because TEXT [--on DAY]"; }
std::vector<Example> WrenchRetireCommand::examples() const {
  return {{"wrench retire B --because \"its pawl slips\"", "it stays on record and is never offered again"}};
}

void WrenchRetireCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--because", because_, "why")->type_name("TEXT");
  app.add_option("--on", on_, "the day; today if not said")->type_name("DAY");
}

Result<Outcome> WrenchRetireCommand::run(const Context& context) {
  const auto name = only_word("the name of the wrench", "wrench retire A --because \"its pawl slips\"");
  if (!name) return Refusal(name.error());
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const auto kept = specdb::retire_in_register(*file, *name, because_, on_, context.today);
  if (!kept) return Refusal(kept.error());
  return kept_outcome(context, *file, *kept, changes_title(*kept),
                      echo_of(*name, {{"because", because_}, {"on", on_}}));
}

std::string_view WrenchLogCommand::summary() const { return "log pulls, a drop, an overload, a calibration"; }
std::string_view WrenchLogCommand::usage() const {
  return "wrench log NAME (--used N | --drop | --overload | --calibrated DAY [--due DAY] | --note) [--words TEXT] "
         "[--on DAY]";
}
std::vector<Example> WrenchLogCommand::examples() const {
  return {{"wrench log A --used 40", "forty pulls today"},
          {"wrench log A --drop --words \"from the bench\"", "to be calibrated before it is used again"},
          {"wrench log B --calibrated 2026-11-20 --words \"sheet 118\"", "back from calibration"}};
}

void WrenchLogCommand::declare(CLI::App& app) {
  declare_words(app);
  auto& h = happening_;
  app.add_option("--used", h.used, "it was pulled so many times")->type_name("N");
  app.add_flag("--drop", h.drop, "it was dropped");
  app.add_flag("--overload", h.overload, "it was overloaded: by a quarter or more");
  app.add_option("--calibrated", h.calibrated, "it was calibrated on that day")->type_name("DAY");
  app.add_option("--due", h.due, "with --calibrated: when its sheet says it is due again")->type_name("DAY");
  app.add_flag("--note", h.note, "something else, in words");
  app.add_option("--words", h.words, "what there is to say of it")->type_name("TEXT");
  app.add_option("--on", h.on, "the day; today if not said")->type_name("DAY");
}

Result<Outcome> WrenchLogCommand::run(const Context& context) {
  const auto name = only_word("the name of the wrench", "wrench log A --used 40");
  if (!name) return Refusal(name.error());
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const auto kept = specdb::log_in_register(*file, *name, happening_, context.today);
  if (!kept) return Refusal(kept.error());
  const auto& h = happening_;
  Json input = echo_of(
      *name, {{"used", h.used}, {"calibrated", h.calibrated}, {"due", h.due}, {"words", h.words}, {"on", h.on}});
  for (const auto& [key, said] :
       {std::pair("drop", h.drop), std::pair("overload", h.overload), std::pair("note", h.note)})
    if (said) input[key] = true;
  return kept_outcome(context, *file, *kept, changes_title(*kept), std::move(input));
}

} // namespace clampwright::cli
