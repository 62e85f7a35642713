// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sequence_report.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace clampwright::report {

namespace {

using tightening::Pattern;
using tightening::Sequence;

constexpr int k_mark_digits = 6;

std::string ordinal(std::size_t index) {
  constexpr std::string_view k_names[]{"First", "Second", "Third"};
  return index < std::size(k_names) ? std::string(k_names[index]) + " round" : fmt::format("Round {}", index + 1);
}

// In the unit of the wrench, and in the one that is shown where that is another.
std::string mark_words(const Sequence& sequence, double mark, const quantity::DisplayUnits& units) {
  std::string words = quantity::write_value(mark, *sequence.unit, k_mark_digits);
  if (sequence.unit != units.torque)
    words += " = " + quantity::write_si_rounded(quantity::to_si(mark, *sequence.unit), *units.torque);
  return words;
}

std::string angle_words(quantity::Angle angle) { return quantity::write_number(quantity::in_degrees(angle), 4) + "°"; }

Section tightening_section(const Sequence& sequence, const quantity::DisplayUnits& units) {
  Section section{"Tighten", {}};
  section.rows.push_back({"Start", "all run down by hand until they just touch"});
  for (std::size_t i = 0; i < sequence.passes.size(); ++i) {
    const std::string share = quantity::write_share(sequence.passes[i]);
    section.rows.push_back({ordinal(i), sequence.unit == nullptr
                                            ? share + " of the torque, in that order"
                                            : fmt::format("{} ({}), in that order",
                                                          mark_words(sequence, sequence.marks[i], units), share)});
  }
  section.rows.push_back({"Last rounds", last_round_words(sequence.pattern)});
  if (sequence.angle)
    section.rows.push_back({"Then", fmt::format("mark all of them, and turn each {}, in that order, once and no "
                                                "further: the torque only snugs",
                                                angle_words(*sequence.angle))});
  section.rows.push_back({"Why", "a bolt that is tightened unloads its neighbours: only a round in which nothing moves "
                                 "shows that all of them hold"});
  section.rows.push_back({"How many", sequence.passes_because});
  return section;
}

Section undoing_section(const Sequence& sequence) {
  const std::vector<int> order = sequence.undo ? sequence.order : tightening::undoing_order(sequence.order);
  Section section{"Undo", {}};
  section.rows.push_back({"Order", order_words(order)});
  section.rows.push_back({"First round", "ease each by about a quarter of a turn, in that order"});
  section.rows.push_back({"Second round", "another half turn each"});
  section.rows.push_back({"Then",
                          "right off, in that order; one that is taken off at once leaves its load to the others "
                          "and may warp the part"});
  return section;
}

Section published_section() {
  Section section{"Published rules", {}};
  for (const tightening::PassRule& rule : tightening::published_passes())
    section.rows.push_back(
        {"", fmt::format("{} ({}, {})", rule.words, rule.source.title, known_name(rule.source.known))});
  section.rows.front().label = "Rounds";
  return section;
}

} // namespace

std::string bolts_words(const Sequence& sequence) {
  switch (sequence.pattern) {
  case Pattern::circle:
    return fmt::format("{} bolts in a circle", sequence.bolts);
  case Pattern::row:
    return fmt::format("{} bolts in a row", sequence.bolts);
  case Pattern::two_rows:
    return fmt::format("{} bolts in two rows", sequence.bolts);
  }
  return "";
}

std::string order_words(const std::vector<int>& order) { return fmt::format("{}", fmt::join(order, " ")); }

std::string positions_words(Pattern pattern) {
  switch (pattern) {
  case Pattern::circle:
    return "numbered clockwise from the top";
  case Pattern::row:
    return "numbered from left to right";
  case Pattern::two_rows:
    return "numbered from left to right, the upper row first";
  }
  return "";
}

std::string rounds_words(const Sequence& sequence) {
  std::vector<std::string> parts;
  if (sequence.unit == nullptr) {
    for (const double pass : sequence.passes)
      parts.push_back(quantity::write_share(pass));
    return fmt::format("{}", fmt::join(parts, ", "));
  }
  for (const double mark : sequence.marks)
    parts.push_back(quantity::write_number(mark, k_mark_digits));
  return fmt::format("{} {}", fmt::join(parts, ", "), sequence.unit->symbol);
}

std::string then_words(const Sequence& sequence) {
  std::string words = last_round_words(sequence.pattern);
  if (sequence.angle) words += fmt::format("; then {} each, in that order", angle_words(*sequence.angle));
  return words;
}

std::string last_round_words(Pattern pattern) {
  return pattern == Pattern::circle ? "at the full torque, one after the other round the circle, until none moves"
                                    : "at the full torque, in that order again, until none moves";
}

Document sequence_report(const Sequence& sequence, std::string_view heading, std::string_view seen_from,
                         std::string_view page_words, const quantity::DisplayUnits& units) {
  Document document;
  document.title = fmt::format("{}{}, {}: {}", heading.empty() ? "" : std::string(heading) + ": ",
                               bolts_words(sequence), sequence.undo ? "undo" : "tighten", order_words(sequence.order));
  Section order{"", {}};
  if (!page_words.empty()) order.rows.push_back({"The page says", std::string(page_words)});
  order.rows.push_back({"Positions", fmt::format("{}, {}", positions_words(sequence.pattern), seen_from)});
  order.rows.push_back({"Order", order_words(sequence.order)});
  order.rows.push_back({"", "computed; where the maker's page prints an order, that one holds"});
  document.sections.push_back(std::move(order));
  if (sequence.undo) {
    document.sections.push_back(undoing_section(sequence));
  } else {
    document.sections.push_back(tightening_section(sequence, units));
    document.sections.push_back(published_section());
    document.sections.push_back(undoing_section(sequence));
  }
  document.sources.push_back({"ASME PCC-1, legacy cross-pattern tightening", "", "star pattern", Known::memory});
  if (!sequence.undo) document.sources.push_back(tightening::published_passes().front().source);
  document.has_foot = true;
  return document;
}

} // namespace clampwright::report
