// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/substitute_report.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/report/substitute_words.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::report {

namespace {

using quantity::DisplayUnits;
using substitute::Answer;
using substitute::Check;
using substitute::Fastener;

std::string fastener_words(const Fastener& fastener) {
  const std::string& strength_class = fastener.as.strength.class_name;
  return fmt::format("{} {}", thread::write_designation(fastener.as.thread),
                     strength_class == "unknown" ? "of unknown class" : strength_class);
}

// "48.1 kN (830 MPa), now 56.3 kN (970 MPa). It bears 117 % of the original."
std::string check_words(const Check& check, const DisplayUnits& units) {
  const std::string was = side_text(check.original, units);
  const std::string comes = side_text(check.offered, units);
  std::string words;
  if (!was.empty() || !comes.empty())
    words = was == comes
                ? was + ". "
                : fmt::format("{}, now {}. ", was.empty() ? "not known" : was, comes.empty() ? "not known" : comes);
  return words + check_text(check, units);
}

std::string_view outcome_words(substitute::Outcome outcome) {
  return outcome == substitute::Outcome::not_known ? "not known" : outcome_name(outcome);
}

const Check* governing(const Answer& answer) {
  if (!answer.governed_by) return nullptr;
  const auto found = std::ranges::find(answer.checks, *answer.governed_by, &Check::link);
  return found == answer.checks.end() ? nullptr : &*found;
}

Section verdict_section(const Answer& answer, const DisplayUnits& units) {
  Section section{"", {{"Verdict", verdict_text(answer)}}};
  const Check* because = governing(answer);
  if (because != nullptr) section.rows.push_back({"Because", check_text(*because, units)});
  const auto torque = std::ranges::find(answer.checks, substitute::Link::torque, &Check::link);
  if (torque != answer.checks.end() && &*torque != because && answer.verdict != substitute::Verdict::not_adequate)
    section.rows.push_back({"Torque", check_text(*torque, units)});
  return section;
}

Section chain_section(const Answer& answer, const DisplayUnits& units) {
  Section section{"Link by link", {}};
  for (const Check& check : answer.checks)
    section.rows.push_back({std::string(link_words(check.link)),
                            fmt::format("{}: {}", outcome_words(check.outcome), check_words(check, units))});
  return section;
}

Section torque_section(const Answer& answer, const std::vector<friction::Reduction>& published,
                       const DisplayUnits& units) {
  Section section{"Torque for the clamp load of the original (low / likely / high friction)", {}};
  const auto& other = *answer.other_torque;
  if (other.by_nut_factor) section.rows.push_back({"by nut factor", quantity::write(*other.by_nut_factor, units)});
  if (other.by_thread_friction)
    section.rows.push_back({"by thread friction", quantity::write(*other.by_thread_friction, units)});
  for (const friction::Reduction& rule : published)
    section.rows.push_back(
        {"published", fmt::format("{} of the torque: {} ({}, {})", quantity::write_share(rule.factor), rule.rule,
                                  rule.source.title, rule.source.where)});
  return section;
}

} // namespace

Document substitute_report(const substitute::Question& question, const Answer& answer,
                           const std::vector<friction::Reduction>& published, const DisplayUnits& units) {
  Document document;
  document.title =
      fmt::format("{} in the place of {}", fastener_words(question.offered), fastener_words(question.original));
  document.sections.push_back(verdict_section(answer, units));
  document.sections.push_back(chain_section(answer, units));
  if (answer.other_torque) document.sections.push_back(torque_section(answer, published, units));
  document.remarks = remarks_of(answer.findings, units);
  const auto* used = answer.offered_at_other_torque ? &*answer.offered_at_other_torque
                     : answer.offered               ? &*answer.offered
                                                    : nullptr;
  if (used != nullptr) {
    document.working = used->working;
    const Working around = joint::working_around(question.place.around, used);
    document.working.insert(document.working.end(), around.begin(), around.end());
  }
  document.sources = substitute_sources(question);
  document.has_foot = true;
  return document;
}

std::vector<Source> substitute_sources(const substitute::Question& question) {
  std::vector<Source> sources;
  const auto add = [&](const std::vector<Source>& more) {
    for (const Source& source : more)
      if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
  };
  const Fastener* const both[]{&question.original, &question.offered};
  for (const Fastener* fastener : both)
    add(fastener->as.strength.sources);
  const joint::Surroundings& around = question.place.around;
  if (around.nut) add({around.nut->source});
  if (question.place.tapped) add(question.place.tapped->material.sources);
  if (around.seat) add(around.seat->sources);
  if (question.place.runs_at && question.offered.bears) add({question.offered.bears->source});
  for (const Fastener* fastener : both)
    if (fastener->as.friction_stated) add(fastener->as.friction_sources);
  return sources;
}

} // namespace clampwright::report
