// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/strengths.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/geometry.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

// "SAE J429 Grade 5", "grade 5", "gr.5", "sae-5" → "sae5"; "A2 70" → "a270".
std::string key_of(std::string_view name) {
  std::string key;
  for (const char c : text::to_lower(name))
    if (c != ' ' && c != '-' && c != '_') key += c;
  if (key.starts_with("class")) key.erase(0, 5);
  for (const std::string_view prefix : {"saej429grade", "saegrade", "saej429", "grade", "gr."})
    if (key.starts_with(prefix)) return "sae" + key.substr(prefix.size());
  if (key == "a574") return "astma574";
  return key;
}

// Rounded to the tenth of a micrometre, so that 1/4 in is not kept out of "1/4 in and over" by the last bit.
double tenths_of_micrometres(quantity::Length length) { return std::round(quantity::in_millimetres(length) * 1e4); }

bool holds(const Query& row, const thread::Thread& thread) {
  const bool inch = row.text(4) == "in";
  const auto limit = [&](int column) {
    return tenths_of_micrometres(inch ? quantity::inches(row.real(column)) : quantity::millimetres(row.real(column)));
  };
  const double d = tenths_of_micrometres(thread.diameter);
  const double over = limit(1);
  const bool inclusive = row.integer(2) == 1;
  return (inclusive ? d >= over : d > over) && d <= limit(3);
}

std::optional<quantity::Stress> stress(const std::optional<double>& value, const quantity::Unit& unit) {
  if (!value) return std::nullopt;
  return quantity::pascals(quantity::to_si(*value, unit));
}

strength::PrintedLoads printed_loads(const Catalogue& catalogue, const std::string& class_name,
                                     const thread::Thread& thread) {
  strength::PrintedLoads loads;
  Query query(
      catalogue.connection(),
      "SELECT b.proof_load_N, b.proof_known, b.ultimate_load_N, b.ultimate_known, s.title, s.edition, b.proof_where, "
      "b.ultimate_where FROM bolt_loads b JOIN sources s ON s.id = b.source WHERE b.thread = ? AND b.class = ?",
      std::string_view(thread.designation), std::string_view(class_name));
  if (!query.next()) return loads;
  if (const auto proof = query.maybe_real(0))
    loads.proof = {quantity::newtons(*proof),
                   {query.text(4), query.text(5), query.text(6), known_named(query.text(1))}};
  if (const auto ultimate = query.maybe_real(2))
    loads.tensile = {quantity::newtons(*ultimate),
                     {query.text(4), query.text(5), query.text(7), known_named(query.text(3))}};
  return loads;
}

// "1.6 to 16 mm" for the message.
std::string range_text(const Query& row) {
  return fmt::format("{} {:g} to {:g} {}", row.integer(2) == 1 ? "from" : "over", row.real(1), row.real(3),
                     row.text(4));
}

} // namespace

std::vector<std::string> class_names(const Catalogue& catalogue) {
  return translated([&] {
    Query query(catalogue.connection(),
                "SELECT DISTINCT class, system FROM strength_classes ORDER BY CASE system WHEN 'ISO 898-1' THEN 1 WHEN "
                "'SAE J429' THEN 2 WHEN 'ASTM A574' THEN 3 ELSE 4 END, length(class), class");
    std::vector<std::string> names;
    while (query.next())
      names.push_back(query.text(0));
    return names;
  });
}

Result<strength::Strength> find_strength(const Catalogue& catalogue, std::string_view class_name,
                                         const thread::Thread& thread) {
  const std::string key = key_of(class_name);
  if (key == "unknown" || key == "notknown") return strength::unknown_strength();
  const auto names = class_names(catalogue);
  const auto name = std::ranges::find_if(names, [&](const std::string& known) { return key_of(known) == key; });
  if (name == names.end()) {
    std::vector<std::string> listed = names;
    listed.emplace_back("unknown");
    return no_such_name("strength class", class_name, listed);
  }
  return translated([&]() -> Result<strength::Strength> {
    Query row(
        catalogue.connection(),
        "SELECT c.form, c.over, c.over_inclusive, c.up_to, c.size_unit, c.proof, c.yield, c.yield_kind, c.tensile, "
        "c.stress_unit, c.system, s.title, s.edition, c.\"where\", c.known FROM strength_classes c JOIN sources s ON "
        "s.id = c.source WHERE c.class = ? ORDER BY c.over",
        std::string_view(*name));
    std::string ranges;
    while (row.next()) {
      if (row.text(0) == thread::form_name(thread.form) && holds(row, thread)) {
        const quantity::Unit& unit = quantity::unit_named(row.text(9));
        const strength::StrengthClass found{*name,
                                            row.text(10),
                                            stress(row.maybe_real(5), unit),
                                            stress(row.maybe_real(6), unit),
                                            row.maybe_text(7).value_or("yield"),
                                            stress(row.maybe_real(8), unit),
                                            row.source(11)};
        return strength::strength_of(found, thread::geometry_of(thread).stress_area,
                                     printed_loads(catalogue, *name, thread));
      }
      ranges += fmt::format("{}{} threads {}", ranges.empty() ? "" : "; ", row.text(0), range_text(row));
    }
    return refuse(Trouble::no_such, "no-such-class", fmt::format("{} is not a class for {}", *name, thread.designation),
                  class_name,
                  fmt::format("{} is for {}; write --class unknown if the mark cannot be read", *name, ranges));
  });
}

} // namespace clampwright::specdb
