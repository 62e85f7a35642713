// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/size_facts.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

quantity::Length length(double value, const std::string& unit) {
  return unit == "in" ? quantity::inches(value) : quantity::millimetres(value);
}

bool same(quantity::Length one, quantity::Length other) {
  return std::abs(quantity::in_millimetres(one) - quantity::in_millimetres(other)) < 1e-3;
}

void add_source(std::vector<Source>& sources, Source source) {
  if (std::ranges::find(sources, source) == sources.end()) sources.push_back(std::move(source));
}

// "M10", "1/4", "#10", "2 BA": how the tables write the size.
std::string size_of(const Catalogue& catalogue, const thread::Thread& thread) {
  Query row(catalogue.connection(), "SELECT size FROM threads WHERE designation = ?",
            std::string_view(thread.designation));
  return row.next() ? row.text(0) : std::string();
}

void add_holes(const Catalogue& catalogue, std::string_view form, std::string_view size, SizeFacts& facts) {
  Query row(
      catalogue.connection(),
      "SELECT h.hole, h.hole_unit, h.fit, s.title, s.edition, h.\"where\", h.known FROM holes h JOIN sources s ON "
      "s.id = h.source WHERE h.form = ? AND h.size = ? ORDER BY h.hole",
      form, size);
  while (row.next()) {
    const std::string fit = row.text(2);
    auto& hole = fit == "fine" || fit == "close"      ? facts.holes.fine
                 : fit == "medium" || fit == "normal" ? facts.holes.medium
                                                      : facts.holes.coarse;
    hole = length(row.real(0), row.text(1));
    add_source(facts.sources, row.source(3));
  }
}

void add_tools(const Catalogue& catalogue, std::string_view form, std::string_view size, std::string_view series,
               SizeFacts& facts) {
  Query row(catalogue.connection(),
            "SELECT w.fastener, w.standard, w.tool, w.width, w.unit, w.marking, s.title, s.edition, w.\"where\", "
            "w.known FROM wrench_sizes w JOIN sources s ON s.id = w.source WHERE w.form = ? AND w.size = ? ORDER BY "
            "w.rowid",
            form, size);
  while (row.next()) {
    if (series == "BSF" && row.text(0) == "large hexagon") continue; // the old hexagon of BSW
    facts.tools.push_back({row.text(0), row.text(1), row.text(2) == "hexagon key", length(row.real(3), row.text(4)),
                           row.maybe_text(5).value_or("")});
    add_source(facts.sources, row.source(6));
  }
}

// Nuts of the thread's own pitch; the inch tables name none.
void add_nuts(const Catalogue& catalogue, const thread::Thread& thread, SizeFacts& facts) {
  // ASME B18.2.2 has nuts in the coarse and the fine series.
  if (thread.form == thread::Form::unified && thread.series != "UNC" && thread.series != "UNF") return;
  Query row(catalogue.connection(),
            "SELECT n.standard, n.kind, n.diameter, n.unit, n.pitch, n.across_flats, n.height, n.thread_height, "
            "s.title, s.edition, "
            "n.\"where\", n.known FROM nuts n JOIN sources s ON s.id = n.source WHERE n.form = ? ORDER BY n.rowid",
            thread::form_name(thread.form));
  while (row.next()) {
    const std::string unit = row.text(3);
    if (!same(length(row.real(2), unit), thread.diameter)) continue;
    if (const auto pitch = row.maybe_real(4); pitch && !same(quantity::millimetres(*pitch), thread.pitch)) continue;
    const auto thread_height = row.maybe_real(7);
    facts.nuts.push_back({row.text(0), row.text(1), length(row.real(5), unit), length(row.real(6), unit),
                          thread_height ? std::optional(length(*thread_height, unit)) : std::nullopt});
    add_source(facts.sources, row.source(8));
  }
}

void add_washers(const Catalogue& catalogue, std::string_view form, std::string_view size, SizeFacts& facts) {
  Query row(catalogue.connection(),
            "SELECT w.standard, w.kind, w.unit, w.\"inner\", w.\"outer\", w.thickness, s.title, s.edition, "
            "w.\"where\", w.known FROM washers w JOIN sources s ON s.id = w.source WHERE w.form = ? AND w.size = ? "
            "ORDER BY w.rowid",
            form, size);
  while (row.next()) {
    const std::string unit = row.text(2);
    facts.washers.push_back(
        {row.text(0), row.text(1), length(row.real(3), unit), length(row.real(4), unit), length(row.real(5), unit)});
    add_source(facts.sources, row.source(6));
  }
}

} // namespace

SizeFacts size_facts(const Catalogue& catalogue, const thread::Thread& thread) {
  return translated([&] {
    SizeFacts facts;
    const std::string size = size_of(catalogue, thread);
    const std::string_view form = thread::form_name(thread.form);
    add_holes(catalogue, form, size, facts);
    add_tools(catalogue, form, size, thread.series, facts);
    add_nuts(catalogue, thread, facts);
    add_washers(catalogue, form, size, facts);
    return facts;
  });
}

} // namespace clampwright::specdb
