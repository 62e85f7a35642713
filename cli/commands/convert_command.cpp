// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/convert_command.hpp"

#include <algorithm>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::cli {

namespace {

using quantity::Reading;
using quantity::Unit;

Result<std::vector<const Unit*>> wanted_units(const Reading& reading, std::span<const std::string> words,
                                              const Unit* preferred) {
  std::vector<const Unit*> units;
  const auto add = [&](const Unit& unit, std::string_view text) -> Result<void> {
    if (unit.kind != reading.unit->kind)
      return refuse(Trouble::not_understood, "wrong-kind",
                    fmt::format("{:.6g} {} is a {}, {} a unit of {}", reading.value, reading.unit->name,
                                quantity::kind_name(reading.unit->kind), unit.name, quantity::kind_name(unit.kind)),
                    text,
                    fmt::format("units of {} are {}", quantity::kind_name(reading.unit->kind),
                                quantity::unit_names(reading.unit->kind)));
    if (std::ranges::find(units, &unit) == units.end()) units.push_back(&unit);
    return {};
  };
  for (const std::string& word : words) {
    const auto spelling = quantity::read_unit(text::plain_spaces(word));
    if (!spelling) {
      Problem problem = spelling.error();
      if (quantity::read_quantity(word)) {
        problem.code = "second-value";
        problem.message = "a second value where a unit is wanted";
        problem.hint = "one value, then the units, like clampwright convert \"2.5 mkg\" N.m lbf.ft";
      }
      problem.input = text::quotable(word);
      return Refusal(std::move(problem));
    }
    if (auto added = add(*spelling->unit, word); !added) return Refusal(added.error());
  }
  if (preferred != nullptr)
    if (auto added = add(*preferred, preferred->name); !added) return Refusal(added.error());
  if (units.empty())
    for (const Unit& unit : quantity::all_units())
      if (unit.kind == reading.unit->kind) units.push_back(&unit);
  return units;
}

Working working_of(const Reading& reading, const std::vector<const Unit*>& units) {
  Working steps;
  const std::string source = "exact: inch 25.4 mm, pound 0.45359237 kg, gravity 9.80665 m/s², 0 °C 273.15 K";
  const auto si = [](const Unit& unit) {
    return std::string(unit.kind == quantity::Kind::torque        ? "N·m"
                       : unit.kind == quantity::Kind::force       ? "N"
                       : unit.kind == quantity::Kind::stress      ? "Pa"
                       : unit.kind == quantity::Kind::length      ? "m"
                       : unit.kind == quantity::Kind::angle       ? "rad"
                       : unit.kind == quantity::Kind::temperature ? "K"
                       : unit.kind == quantity::Kind::time        ? "s"
                                                                  : "rad/s");
  };
  steps.push_back(
      {"x", "value as understood", "as given", reading.value, std::string(reading.unit->symbol), "as given"});
  const auto factor = [](const Unit& unit) { return static_cast<double>(unit.to_si); };
  const bool has_offset = reading.unit->kind == quantity::Kind::temperature;
  steps.push_back({"f", fmt::format("one {} in {}", reading.unit->symbol, si(*reading.unit)), "factor",
                   factor(*reading.unit), si(*reading.unit), source});
  steps.push_back({"s", fmt::format("in {}", si(*reading.unit)),
                   has_offset ? fmt::format("(x + {:g})·f", static_cast<double>(reading.unit->offset)) : "x·f",
                   reading.si(), si(*reading.unit), source});
  for (const Unit* unit : units) {
    const std::string symbol = fmt::format("f({})", unit->symbol);
    steps.push_back(
        {symbol, fmt::format("one {} in {}", unit->symbol, si(*unit)), "factor", factor(*unit), si(*unit), source});
    steps.push_back({std::string(unit->symbol), "answer",
                     has_offset ? fmt::format("s/{} - {:g}", symbol, static_cast<double>(unit->offset))
                                : fmt::format("s/{}", symbol),
                     quantity::convert(reading.value, *reading.unit, *unit), std::string(unit->symbol), source});
  }
  return steps;
}

} // namespace

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
  const auto reading = quantity::read_quantity(words_.front());
  if (!reading) {
    Problem problem = reading.error();
    if (problem.code == "bare-number" && words_.size() > 1)
      problem.hint = fmt::format("write value and unit in one, like \"{} {}\" or {}{}", words_[0], words_[1], words_[0],
                                 words_[1]);
    return Refusal(std::move(problem));
  }
  const auto units = wanted_units(*reading, std::span(words_).subspan(1), context.unit);
  if (!units) return Refusal(units.error());

  Json values = Json::object();
  report::Section rows{"", {}};
  for (const Unit* unit : *units) {
    const double value = quantity::convert(reading->value, *reading->unit, *unit);
    values[std::string(unit->name)] = value;
    rows.rows.push_back({std::string(unit->symbol), quantity::write_number(value, 7)});
  }
  Outcome out;
  const std::string understood = fmt::format("{} {}", quantity::write_number(reading->value, 15), reading->unit->name);
  out.input = std::make_shared<Json>(
      Json{{"quantity", words_.front()}, {"units", std::vector<std::string>(words_.begin() + 1, words_.end())}});
  out.result = std::make_shared<Json>(Json{{"understood", understood}, {"values", values}});
  if (reading->mass_as_force) out.findings.push_back({finding::Code::mass_as_force, finding::Severity::note, {}});
  out.working = working_of(*reading, *units);
  out.document.title = fmt::format("{} is understood as {}", text::quotable(words_.front()),
                                   quantity::write_value(reading->value, *reading->unit, 15));
  out.document.sections.push_back(std::move(rows));
  return out;
}

} // namespace clampwright::cli
