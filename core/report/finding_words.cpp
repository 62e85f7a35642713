// SPDX-License-Identifier: GPL-3.0-or-later
//
// The English of the findings: what a fitter must know, and on what it rests.
#include "core/report/wording.hpp"

#include <fmt/format.h>

#include "core/report/crank_words.hpp"
#include "core/report/finding_sentences.hpp"

namespace clampwright::report {

namespace {

using finding::Code;
using finding::Finding;
using finding::Severity;
using quantity::DisplayUnits;

// What is filled in where a sentence differs by how grave the finding is.
std::string_view verb_of(const Finding& finding) {
  const bool likely = finding.severity == Severity::stop;
  switch (finding.code) {
  case Code::over_proof:
    return likely ? "is likely past" : "may pass";
  case Code::over_yield:
    return likely ? "likely brings the bolt past" : "may bring the bolt past";
  case Code::strip_governs:
    return likely ? "passes that, with" : "loads it with";
  case Code::seat_pressure:
    return likely ? "likely passes" : "may pass";
  default:
    return "";
  }
}

// What is not stated cannot be said to differ.
std::string surfaces_words(std::string_view stated, std::string_view fitted) {
  constexpr std::string_view k_not_stated = "not-stated";
  if (stated == k_not_stated)
    return fmt::format("The figure does not say for which surfaces it is, and {} is fitted: it may not hold. ", fitted);
  if (fitted == k_not_stated)
    return fmt::format("The figure is for {} surfaces and what is fitted is not stated: it may not hold. ", stated);
  return fmt::format("The figure is for {} surfaces and {} is fitted: it is no longer the figure. ", stated, fitted);
}

// Facts: stated, fitted, printed torque, likely and greatest load at it; the corrected torque where one can be given.
std::string surfaces_differ_text(const std::vector<std::string>& facts) {
  std::string text = surfaces_words(facts[0], facts[1]);
  if (facts.size() > 4) text += fmt::format("{} would clamp likely {}, at the most {}. ", facts[2], facts[3], facts[4]);
  text +=
      facts.size() > 5 || facts.size() == 4
          ? fmt::format("By the likely nut factors {} clamps the same; by thread friction it is another torque, and "
                        "published rules differ too. Keep to the least of them, or ask the maker: his word for "
                        "these surfaces ranks above all.",
                        facts.back())
          : "No correction can be given.";
  return text;
}

// Facts: the figure as printed, its likely share of proof, then unit and torque in turn.
std::string unit_slip_text(const std::vector<std::string>& facts) {
  std::string text =
      fmt::format("\"{}\" cannot be meant as printed: likely {} of the proof load. ", facts[0], facts[1]);
  std::string fits;
  for (std::size_t i = 2; i + 1 < facts.size(); i += 2)
    fits += fmt::format("{}{} ({})", fits.empty() ? "" : ", ", facts[i], facts[i + 1]);
  text += fmt::format("The same number would make sense in {}. Which was meant cannot be told from the number: ask "
                      "the maker; nothing was changed.",
                      fits);
  return text;
}

std::string galling_text(const Finding& finding, const std::vector<std::string>& facts) {
  return fmt::format("{} Lubricate, turn slowly, stop if it drags.",
                     finding.severity == Severity::note
                         ? fmt::format("{} seizes on stainless steel: what it screws into is not recorded.", facts[0])
                         : fmt::format("{} on stainless steel may seize while it is tightened.", facts[0]));
}

// A length that was worked out: nobody measures the rest of its digits.
std::string measurable(const finding::Fact& fact, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_metres(std::get<quantity::Length>(fact)), *units.length);
}

// Without a torque, facts: which thread, its load, the break of the strongest bolt, the length needed.
std::string strip_governs_text(const std::vector<std::string>& facts, const std::string& needed) {
  return fmt::format(
      "The {} gives first, at {}; a bolt of this class may bear up to {}. For the bolt to break first {} "
      "must be engaged. The cure is more engagement, an insert in a soft part, or a lower torque, never "
      "a higher one.",
      facts[0], facts[1], facts[2], needed);
}

// The page's own words may end with a full stop.
std::string single_use_text(std::string words) {
  while (words.ends_with('.') || words.ends_with(' '))
    words.pop_back();
  return fmt::format(fmt::runtime(sentence_of(Code::single_use).text), words);
}

std::string sources_conflict_text(const std::vector<std::string>& facts) {
  std::string text = "Sources in force differ: ";
  for (const std::string& fact : facts)
    text += (&fact == &facts.front() ? "" : "; ") + fact;
  return text + ". None is chosen here: ask the maker which holds.";
}

} // namespace

std::string fact_text(const finding::Fact& fact, const DisplayUnits& units) {
  struct Writer {
    const DisplayUnits& units;
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(double share) const { return quantity::write_share(share); }
    std::string operator()(quantity::Torque torque) const { return quantity::write(torque, units); }
    std::string operator()(quantity::Force force) const {
      return quantity::write_si_rounded(quantity::in_newtons(force), *units.force);
    }
    std::string operator()(quantity::Length length) const { return quantity::write(length, units); }
    std::string operator()(quantity::Stress stress) const {
      return quantity::write_si_rounded(quantity::in_pascals(stress), *units.stress);
    }
    std::string operator()(quantity::Temperature temperature) const {
      return quantity::write_si(temperature.value(), quantity::unit_named("degC"));
    }
    std::string operator()(quantity::Angle angle) const {
      return quantity::write_si(quantity::in_radians(angle), *units.angle);
    }
  };
  return std::visit(Writer{units}, fact);
}

std::string finding_text(const Finding& finding, const DisplayUnits& units) {
  std::vector<std::string> facts;
  for (const finding::Fact& fact : finding.facts)
    facts.push_back(fact_text(fact, units));
  if (auto text = crank_finding_text(finding, facts, units)) return std::move(*text);
  switch (finding.code) {
  case Code::reduced_head:
    if (finding.severity == Severity::mind)
      return fmt::format(
          "Heads of this kind are made to bear 80 % only and carry a leading zero (0{0}): a plain {0} on "
          "one is of an older edition. The shares shown are those of the full class; reckon with 0{0}.",
          facts[0]);
    break;
  case Code::surfaces_not_stated:
    if (!facts.empty())
      return fmt::format("Nobody said whether thread and face are dry or lubricated. The band shown is that of plain "
                         "steel: {} may be far above it when dry (friction of 0.3 to 0.5). Name the surfaces.",
                         facts[0]);
    break;
  case Code::surfaces_differ:
    return surfaces_differ_text(facts);
  case Code::unit_slip:
    return unit_slip_text(facts);
  case Code::galling:
    return galling_text(finding, facts);
  case Code::sources_conflict:
    return sources_conflict_text(facts);
  case Code::single_use:
    return single_use_text(facts[0]);
  case Code::lock_conflict: // of any two locks, with the reason
    if (facts.size() == 3) return fmt::format("Not together: {} and {}: {}.", facts[0], facts[1], facts[2]);
    break;
  case Code::wrench_overdue:
    if (facts.size() == 3)
      return fmt::format("{} has been used {} times since its calibration, and it is due after {}. Have it calibrated "
                         "before you rely on it.",
                         facts[0], facts[1], facts[2]);
    break;
  case Code::wrench_direction:
    if (finding.severity == Severity::mind)
      return fmt::format("This joint tightens {1}. Make sure that {0} is calibrated that way round: many click one way "
                         "only.",
                         facts[0], facts[1]);
    break;
  case Code::strip_governs:
    if (std::holds_alternative<quantity::Length>(finding.facts.back()))
      return strip_governs_text(facts, measurable(finding.facts.back(), units));
    break;
  case Code::long_engagement:
    facts[0] = measurable(finding.facts[0], units);
    break;
  case Code::value_from_memory:
    // A figure other than the strength of a class: its name and value.
    if (facts.size() == 2)
      return fmt::format("Held from memory: {}, {}. Check it against the standard before you rely on it.", facts[0],
                         facts[1]);
    break;
  case Code::angle_final:
    if (!facts.empty())
      return fmt::format("The torque only snugs; the angle adds likely {}, for this stack of parts alone: another "
                         "washer, gasket or bolt makes it wrong. After an interruption do not turn the angle again: "
                         "start anew as the maker says.",
                         facts[0]);
    break;
  case Code::slot_may_miss:
    facts[3] = measurable(finding.facts[3], units);
    break;
  case Code::face_not_stated:
    if (!facts.empty()) facts[0] = fmt::format(" ({})", facts[0]);
    break;
  default:
    break;
  }
  facts.resize(4);
  return fmt::format(fmt::runtime(sentence_of(finding.code).text), facts[0], facts[1], facts[2], facts[3],
                     verb_of(finding));
}

std::string finding_brief(const Finding& finding, const DisplayUnits& units) {
  const std::string text = finding_text(finding, units);
  if (finding.code == Code::unit_slip) return text.substr(0, text.find(" Which was meant"));
  const std::size_t end = text.find(". ");
  return end == std::string::npos ? text : text.substr(0, end + 1);
}

std::string_view finding_basis(Code code) {
  const std::string_view of_crank = crank_finding_basis(code);
  return of_crank.empty() ? sentence_of(code).basis : of_crank;
}

} // namespace clampwright::report
