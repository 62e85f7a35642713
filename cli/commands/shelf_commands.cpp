// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/shelf_commands.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/values_json.hpp"
#include "specdb/workshop/compounds.hpp"

namespace clampwright::cli {

namespace {

const char* state_name(specdb::ShelfState state) {
  switch (state) {
  case specdb::ShelfState::good:
    return "good";
  case specdb::ShelfState::expired:
    return "expired";
  case specdb::ShelfState::not_stated:
    return "not-stated";
  case specdb::ShelfState::retired:
    return "retired";
  }
  return "";
}

Json compound_json(const specdb::CompoundRecord& compound, std::chrono::year_month_day today) {
  Json events = Json::array();
  for (const specdb::EventRecord& event : compound.events)
    events.push_back({{"on", event.on_date}, {"kind", event.kind}, {"words", event.words}});
  return {{"compound", compound.slug},
          {"label", compound.label},
          {"grade", compound.grade},
          {"batch", text_or_null(compound.batch)},
          {"expires_on", text_or_null(compound.expires_on)},
          {"opened_on", text_or_null(compound.opened_on)},
          {"bears_degC", number_or_null(compound.bears_degC)},
          {"sheet", text_or_null(compound.sheet)},
          {"state", state_name(specdb::state_of(compound, today))},
          {"retired_on", text_or_null(compound.retired_on)},
          {"retired_because", text_or_null(compound.retired_because)},
          {"events", std::move(events)}};
}

void declare_entry(CLI::App& app, specdb::ShelfEntry& entry) {
  app.add_option("--label", entry.label, "what you call it; your own words, kept as they are")->type_name("TEXT");
  app.add_option("--grade", entry.grade, "compound-low, compound-medium or compound-high")->type_name("NAME");
  app.add_option("--batch", entry.batch, "batch on the bottle")->type_name("TEXT");
  app.add_option("--expires", entry.expires, "last day on the bottle: 2027-06-30")->type_name("DATE");
  app.add_option("--opened", entry.opened, "day on which it was opened")->type_name("DATE");
  app.add_option("--bears", entry.bears, "temperature that it bears, by its sheet")->type_name("Q");
  app.add_option("--sheet", entry.sheet, "what else its sheet says: cure, primer, breakaway")->type_name("TEXT");
}

Json echo_of(const specdb::ShelfEntry& entry) {
  Json input = Json::object();
  put_text(input, "label", entry.label);
  put_text(input, "grade", entry.grade);
  put_text(input, "batch", entry.batch);
  put_text(input, "expires", entry.expires);
  put_text(input, "opened", entry.opened);
  put_text(input, "bears", entry.bears);
  put_text(input, "sheet", entry.sheet);
  return input;
}

Outcome one_outcome(const std::string& title, const specdb::CompoundRecord& compound, Json input,
                    const Context& context) {
  Outcome out;
  out.input = std::make_shared<Json>(std::move(input));
  out.result = std::make_shared<Json>(compound_json(compound, context.today));
  out.findings = specdb::shelf_findings({compound}, context.today);
  out.document = specdb::shelf_document(title, {compound}, context.today);
  return out;
}

Result<std::string> name_of(const std::vector<std::string>& words, std::string_view command) {
  if (!words.empty()) return fmt::format("{}", fmt::join(words, " "));
  return refuse(Trouble::usage, "missing", "the compound is missing", {},
                fmt::format("write clampwright {} NAME --because \"...\"; shelf list has the names", command));
}

} // namespace

std::string_view ShelfListCommand::summary() const { return "the locking compounds on the shelf, expired ones marked"; }
std::string_view ShelfListCommand::usage() const { return "shelf list [--all]"; }
std::vector<Example> ShelfListCommand::examples() const {
  return {{"shelf list", "what stands there"}, {"shelf list --all", "with those that were taken away"}};
}

void ShelfListCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_flag("--all", all_, "with those that were retired");
}

Result<Outcome> ShelfListCommand::run(const Context& context) {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "that was not expected", words_.front(), "write clampwright shelf list");
  const auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  auto compounds = specdb::all_compounds(*workshop);
  if (!all_) std::erase_if(compounds, [](const specdb::CompoundRecord& one) { return one.retired_on.has_value(); });
  Outcome out;
  out.input = std::make_shared<Json>(Json{{"all", all_}});
  Json list = Json::array();
  for (const specdb::CompoundRecord& compound : compounds)
    list.push_back(compound_json(compound, context.today));
  out.result = std::make_shared<Json>(Json{{"compounds", std::move(list)}});
  out.findings = specdb::shelf_findings(compounds, context.today);
  out.document = specdb::shelf_document("Compounds on the shelf", compounds, context.today);
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  return out;
}

std::string_view ShelfAddCommand::summary() const { return "put a locking compound on the shelf"; }
std::string_view ShelfAddCommand::usage() const { return "shelf add --label TEXT --grade NAME [options]"; }
std::vector<Example> ShelfAddCommand::examples() const {
  return {{"shelf add --label \"left bottle\" --grade compound-medium --batch L-204 --expires 2027-06-30",
           "with its batch and last day"},
          {"shelf add --label \"stud compound\" --grade compound-high --bears 175degC",
           "with what its sheet says it bears"}};
}

void ShelfAddCommand::declare(CLI::App& app) {
  declare_words(app);
  declare_entry(app, entry_);
}

Result<Outcome> ShelfAddCommand::run(const Context& context) {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "that was not expected", words_.front(),
                  "write the label with --label, in quotes if it has spaces");
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const specdb::Catalogue catalogue;
  const auto compound = specdb::add_to_shelf(catalogue, *file, entry_, context.today);
  if (!compound) return Refusal(compound.error());
  return one_outcome("Put on the shelf", *compound, echo_of(entry_), context);
}

std::string_view ShelfReviseCommand::summary() const { return "change what is recorded of a compound"; }
std::string_view ShelfReviseCommand::usage() const { return "shelf revise NAME --because TEXT [options]"; }
std::vector<Example> ShelfReviseCommand::examples() const {
  return {{"shelf revise left-bottle --opened 2026-11-20 --because \"opened today\"", "what was stays in its log"}};
}

void ShelfReviseCommand::declare(CLI::App& app) {
  declare_words(app);
  declare_entry(app, entry_);
  app.add_option("--because", because_, "why; stays in its log")->type_name("TEXT");
}

Result<Outcome> ShelfReviseCommand::run(const Context& context) {
  const auto name = name_of(words_, "shelf revise");
  if (!name) return Refusal(name.error());
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const specdb::Catalogue catalogue;
  const auto compound = specdb::revise_on_shelf(catalogue, *file, *name, entry_, because_.value_or(""), context.today);
  if (!compound) return Refusal(compound.error());
  Json input{{"compound", *name}};
  input.update(echo_of(entry_));
  input["because"] = *because_;
  return one_outcome("Revised", *compound, std::move(input), context);
}

std::string_view ShelfRetireCommand::summary() const { return "take a compound off the shelf; its record stays"; }
std::string_view ShelfRetireCommand::usage() const { return "shelf retire NAME --because TEXT"; }
std::vector<Example> ShelfRetireCommand::examples() const {
  return {{"shelf retire left-bottle --because empty", "it is listed with --all from then on"}};
}

void ShelfRetireCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--because", because_, "why; stays in its log")->type_name("TEXT");
}

Result<Outcome> ShelfRetireCommand::run(const Context& context) {
  const auto name = name_of(words_, "shelf retire");
  if (!name) return Refusal(name.error());
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  const auto compound = specdb::retire_from_shelf(*file, *name, because_.value_or(""), context.today);
  if (!compound) return Refusal(compound.error());
  Outcome out =
      one_outcome("Taken off the shelf", *compound, Json{{"compound", *name}, {"because", *because_}}, context);
  return out;
}

} // namespace clampwright::cli
