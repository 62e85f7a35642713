// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/convert_question.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/quantity/write.hpp"
#include "core/report/tightening_report.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

using quantity::Reading;
using quantity::Unit;

Result<std::vector<const Unit*>> wanted_units(const Reading& reading, const std::vector<std::string>& words,
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

Result<ConvertReply> answer_convert(const ConvertQuestion& question) {
  const auto reading = quantity::read_quantity(question.quantity);
  if (!reading) {
    Problem problem = reading.error();
    if (problem.code == "bare-number" && !question.units.empty())
      problem.hint = fmt::format("write value and unit in one, like \"{0} {1}\" or {0}{1}", question.quantity,
                                 question.units.front());
    return Refusal(std::move(problem));
  }
  const auto units = wanted_units(*reading, question.units, question.preferred);
  if (!units) return Refusal(units.error());
  ConvertReply reply{text::quotable(question.quantity), *reading, {}, {}, working_of(*reading, *units)};
  for (const Unit* unit : *units)
    reply.values.push_back({unit, quantity::convert(reading->value, *reading->unit, *unit)});
  if (reading->mass_as_force) reply.findings.push_back({finding::Code::mass_as_force, finding::Severity::note, {}});
  return reply;
}

report::Document convert_document(const ConvertReply& reply) {
  report::Document document;
  document.title = fmt::format("{} is understood as {}", reply.typed,
                               quantity::write_value(reply.reading.value, *reply.reading.unit, 15));
  report::Section rows{"", {}};
  for (const Converted& one : reply.values)
    rows.rows.push_back({std::string(one.unit->symbol), quantity::write_number(one.value, 7)});
  document.sections.push_back(std::move(rows));
  document.remarks = report::remarks_of(reply.findings, {});
  document.working = reply.working;
  return document;
}

} // namespace clampwright::specdb
