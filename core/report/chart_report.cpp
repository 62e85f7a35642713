// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/chart_report.hpp"

#include <algorithm>
#include <functional>
#include <variant>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/report/chart_table.hpp"
#include "core/report/tightening_report.hpp"
#include "core/report/wording.hpp"

namespace clampwright::report {

namespace {

using finding::Code;
using quantity::DisplayUnits;
using quantity::write_share;
using tightening::Chart;
using tightening::ChartRow;
using tightening::SharedFinding;

using Chosen = std::function<bool(const ChartRow&)>;

// "M9", "M18 to M39", "M9, M11": of threads that follow each other in the chart only the ends.
std::string spans(const std::vector<std::string>& all, const std::vector<std::string>& some) {
  std::vector<std::string> parts;
  std::size_t length = 0;
  std::size_t before = 0;
  std::string first;
  const auto close = [&] {
    if (length == 0) return;
    const std::string& last = all[before];
    if (length > 2)
      parts.push_back(fmt::format("{} to {}", first, last));
    else if (length == 2)
      parts.push_back(fmt::format("{}, {}", first, last));
    else
      parts.push_back(first);
    length = 0;
  };
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (std::ranges::find(some, all[i]) == some.end()) {
      close();
      continue;
    }
    if (length == 0) first = all[i];
    before = i;
    ++length;
  }
  close();
  return fmt::format("{}", fmt::join(parts, ", "));
}

// The threads of the rows that are chosen, whatever their class.
std::string threads_where(const Chart& chart, const Chosen& chosen) {
  std::vector<std::string> some;
  for (const ChartRow& row : chart.rows)
    if (chosen(row)) some.push_back(row.thread.designation);
  return spans(chart.threads, some);
}

std::string surfaces_of_chart(const Chart& chart) {
  const std::string words = surfaces_words(chart.common);
  return chart.common.friction_stated ? words : fmt::format("{} (nobody named them)", words);
}

// What the answered rows say of something, each saying once, with its threads where there are several.
std::string sayings(const Chart& chart, const std::function<std::string(const ChartRow&)>& says) {
  std::vector<std::string> kinds;
  for (const ChartRow& row : chart.rows)
    if (row.answer)
      if (std::string kind = says(row); std::ranges::find(kinds, kind) == kinds.end()) kinds.push_back(kind);
  std::string out;
  for (const std::string& kind : kinds) {
    out += out.empty() ? kind : "; " + kind;
    if (kinds.size() > 1)
      out += fmt::format(" ({})",
                         threads_where(chart, [&](const ChartRow& row) { return row.answer && says(row) == kind; }));
  }
  return out;
}

std::string wrench_words(const Chart& chart) {
  std::vector<std::string> kinds;
  for (const ChartRow& row : chart.rows)
    if (row.answer) {
      const auto& accuracy = row.answer->clamp.accuracy;
      std::string kind = fmt::format("± {} ({})", write_share(accuracy.share), accuracy.basis);
      if (std::ranges::find(kinds, kind) == kinds.end()) kinds.push_back(std::move(kind));
    }
  return fmt::format("{}", fmt::join(kinds, "; "));
}

std::string load_words(const ChartRow& row) {
  const auto& strength = row.answer->clamp.asked.strength;
  if (row.answer->wanted.aim == tightening::Aim::yield_share)
    return fmt::format("yield is {} of the class over the stress area, tension and torsion by von Mises",
                       strength.yield_kind);
  return strength.proof_load_basis == strength::LoadBasis::table ? "proof load as the standard prints it"
                                                                 : "proof stress × stress area";
}

std::string face_words(const ChartRow& row) {
  const auto& face = row.answer->clamp.asked.face;
  if (!row.answer->clamp.asked.mu_thread) return "not asked: by nut factor alone";
  return face ? face->basis : "not known, so by nut factor alone";
}

std::string gap_words(const Chart& chart) {
  std::string out;
  for (const auto& gap : chart.gaps)
    out += fmt::format("{}{}: no {}", out.empty() ? "" : "; ", gap.class_name, spans(chart.threads, gap.threads));
  return out.empty() ? out : out + " (the standard of the class does not have them)";
}

std::string how_to_read(const Chart& chart) {
  const bool yield = chart.wanted.aim == tightening::Aim::yield_share;
  std::string out = yield
                        ? "Set is the torque at which the least friction brings the bolt to that share of yield; more "
                          "friction clamps less."
                        : "Set is the torque for that load at likely friction.";
  out +=
      " Low and high μ or K: what the same load would take if friction lay at that end of its band. That is the "
      "scatter, not a tolerance to choose from. Set clamps: from least torque of the wrench and most friction to the "
      "reverse. Yield at most: the share of it that Set may reach then.";
  return out;
}

Section basis_section(const Chart& chart, const Made& made) {
  Section section{"", {}};
  const auto add = [&](const char* label, std::string value) {
    if (!value.empty()) section.rows.push_back({label, std::move(value)});
  };
  add("Torque for", chart_purpose(chart.wanted));
  add("Surfaces", surfaces_of_chart(chart));
  for (const auto& lock : chart.common.locks)
    add("Lock", fmt::format("{}: {}", lock.name, lock.description));
  if (std::ranges::any_of(chart.rows, by_friction))
    add("By thread friction", "T = F·(d2/2·tan(φ + ρ′) + μ·D_m/2), with tan φ = P/(π·d2) and tan ρ′ = μ/cos α");
  if (std::ranges::any_of(chart.rows, by_nut_factor)) add("By nut factor", "T = K·F·d");
  add("Loads", sayings(chart, load_words));
  add("Face", sayings(chart, face_words));
  add("Wrench", wrench_words(chart));
  add("To be read", how_to_read(chart));
  add("Left out", gap_words(chart));
  add("Made", fmt::format("{:04}-{:02}-{:02} by {}, data {}", int(made.on.year()), unsigned(made.on.month()),
                          unsigned(made.on.day()), made.program, made.data_version.substr(0, 12)));
  return section;
}

// Sizes of a class without an answer, a line for each reason.
std::vector<Row> refusals(const Chart& chart, const std::string& class_name) {
  std::vector<std::string> reasons;
  for (const ChartRow& row : chart.rows)
    if (row.class_name == class_name && !row.answer && std::ranges::find(reasons, row.none_because) == reasons.end())
      reasons.push_back(row.none_because);
  std::vector<Row> rows;
  for (const std::string& reason : reasons)
    rows.push_back({"No torque", fmt::format("{}: {}",
                                             threads_where(chart,
                                                           [&](const ChartRow& row) {
                                                             return row.class_name == class_name && !row.answer &&
                                                                    row.none_because == reason;
                                                           }),
                                             reason)});
  return rows;
}

std::vector<Section> class_sections(const Chart& chart, const std::vector<Mark>& marks, const DisplayUnits& units) {
  std::vector<Section> sections;
  for (const std::string& name : chart.classes) {
    const auto is_of = [&](const ChartRow& row) { return row.class_name == name; };
    if (std::ranges::none_of(chart.rows, is_of)) continue; // its gap names all of them
    Section section{fmt::format("Class {}, {}, {}", name, chart_purpose(chart.wanted), surfaces_of_chart(chart)),
                    refusals(chart, name)};
    if (std::ranges::any_of(chart.rows, [&](const ChartRow& row) { return is_of(row) && row.answer; })) {
      section.table = class_table(chart, name, marks, units);
      section.table->over = fmt::format("Face: {}. Wrench: {}. Set is to be set; low and high μ or K show the scatter.",
                                        sayings(chart, face_words), wrench_words(chart));
      section.table->under = chart_caution();
    }
    sections.push_back(std::move(section));
  }
  return sections;
}

// Names alone are the same for every row.
bool has_a_figure(const finding::Finding& finding) {
  return std::ranges::any_of(finding.facts,
                             [](const finding::Fact& fact) { return !std::holds_alternative<std::string>(fact); });
}

std::vector<Remark> chart_remarks(const Chart& chart, const std::vector<SharedFinding>& shared,
                                  const std::vector<Mark>& marks, const DisplayUnits& units) {
  std::vector<Remark> remarks;
  if (std::ranges::any_of(chart.rows, tightening::is_not_to_be_set))
    remarks.push_back(
        {finding::Severity::stop, "over-limit",
         "Rows marked \"over\" pass the limit of the bolt at likely friction already: they have no torque to "
         "set. Take a smaller share."});
  for (const SharedFinding& one : shared) {
    if (one.finding.code == Code::maker_first) continue;
    const auto mark = std::ranges::find_if(marks, [&](const Mark& m) { return m.shared == &one; });
    std::string text = finding_text(one.finding, units);
    if (mark != marks.end()) text = fmt::format("({}) {}", mark->letter, text);
    if (has_a_figure(one.finding) && one.rows.size() > 1)
      text += fmt::format(" (As it is for {}, class {}, the gravest row.)", chart.rows[one.at].thread.designation,
                          chart.rows[one.at].class_name);
    remarks.push_back({one.finding.severity, std::string(finding::code_name(one.finding.code)), std::move(text)});
  }
  return remarks;
}

} // namespace

std::string chart_purpose(const tightening::Wanted& wanted) {
  switch (wanted.aim) {
  case tightening::Aim::proof_share:
    return fmt::format("{} of the proof load", write_share(wanted.share));
  case tightening::Aim::yield_share:
    return fmt::format("{} of yield at the lowest friction", write_share(wanted.share));
  case tightening::Aim::preload:
    break;
  }
  return "a clamp load";
}

std::string_view chart_caution() {
  return "The maker's current instruction ranks above this figure. A size chart is no maker's figure: steel bolts in "
         "steel "
         "that outlasts them; not for castings, light metal, wood, plastic, gaskets, tapers, plugs, hubs.";
}

std::vector<Source> sources_of(const Chart& chart) {
  std::vector<Source> sources;
  for (const ChartRow& row : chart.rows)
    if (row.answer)
      for (const Source& source : sources_of(row.answer->clamp))
        if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
  return sources;
}

Document chart_report(const Chart& chart, const Made& made, const DisplayUnits& units) {
  const auto shared = tightening::shared_findings(chart);
  const auto marks = marks_of(chart, shared);
  Document document;
  document.title = fmt::format("Torque chart: {}, class {}, {}, {}", spans(chart.threads, chart.threads),
                               fmt::join(chart.classes, ", "), chart_purpose(chart.wanted),
                               chart.common.surfaces.empty()  ? "friction as given"
                               : chart.common.friction_stated ? chart.common.surfaces
                                                              : "surfaces not stated");
  document.sections.push_back(basis_section(chart, made));
  for (Section& section : class_sections(chart, marks, units))
    document.sections.push_back(std::move(section));
  document.remarks = chart_remarks(chart, shared, marks, units);
  // One bolt worked through, as an example of all.
  if (const auto first = std::ranges::find_if(chart.rows, [](const ChartRow& row) { return row.answer.has_value(); });
      first != chart.rows.end()) {
    document.working = first->answer->clamp.working;
    document.working_for = fmt::format("{}, class {}", first->thread.designation, first->class_name);
  }
  document.sources = sources_of(chart);
  document.has_foot = true;
  document.stands_alone = true;
  return document;
}

} // namespace clampwright::report
