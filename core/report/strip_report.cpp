// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/strip_report.hpp"

#include <fmt/format.h>

#include "core/joint/surroundings.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::report {

namespace {

using joint::Gives;
using joint::StripAnswer;
using joint::StripCase;
using quantity::DisplayUnits;
using quantity::Force;
using quantity::Length;
using quantity::write;
using quantity::write_number;

std::string force(const std::optional<Force>& load, const DisplayUnits& units) {
  return load ? quantity::write_si_rounded(quantity::in_newtons(*load), *units.force) : "not known";
}

// Three digits, so that a length that is needed is not one that nobody can measure.
std::string length(Length value, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_metres(value), *units.length);
}

std::string diameters(Length value, const StripCase& asked) {
  return fmt::format("{} d", quantity::write_rounded(value / asked.thread.diameter, 2));
}

std::string bolt_words(const StripCase& asked) {
  return fmt::format("{}, {}", thread::write_designation(asked.thread),
                     asked.bolt.tensile ? "class " + asked.bolt.class_name : "class not known");
}

std::string engaged_words(const StripAnswer& answer, const DisplayUnits& units) {
  const StripCase& asked = answer.asked;
  if (!asked.length) return "not said; give it with --length";
  return fmt::format("{}, of which {} at the ends {}: {} bears", write(*asked.length, units, 4),
                     write(asked.incomplete, units, 4),
                     asked.incomplete > Length()
                         ? fmt::format("({} turns) do not bear", write_number(asked.incomplete / asked.thread.pitch, 3))
                         : "does not bear",
                     write(*answer.bearing, units, 4));
}

Section input_section(const StripAnswer& answer, const DisplayUnits& units) {
  const StripCase& asked = answer.asked;
  Section section{"", {}};
  section.rows.push_back({"Bolt", fmt::format("{}, limits {}/{}", bolt_words(asked), asked.limits.external_class,
                                              asked.limits.internal_class)});
  section.rows.push_back({"Part", asked.part.description});
  if (asked.part.shear_strength) {
    const Source& source = asked.part.sources.front();
    section.rows.push_back({"In shear", fmt::format("{} ({}; {})", write(*asked.part.shear_strength, units),
                                                    source.where, known_name(source.known))});
    if (asked.part.shear_highest)
      section.rows.push_back(
          {"", fmt::format("the lower of what was found; up to {} ({})", write(*asked.part.shear_highest, units),
                           asked.part.shear_highest_source->where)});
  } else {
    section.rows.push_back({"In shear", "no figure was found"});
  }
  if (asked.insert) {
    const auto& outer = *asked.insert;
    section.rows.push_back(
        {"Insert", outer.kind == joint::InsertKind::wire
                       ? fmt::format("of wire: it holds in the part by a thread of {} across its crests, at the least",
                                     length(outer.outer_limits.d_min, units))
                       : fmt::format("keyed, {} outside", thread::write_designation(outer.outer))});
  }
  section.rows.push_back({"Engaged", engaged_words(answer, units)});
  return section;
}

std::string first_words(const StripAnswer& answer) {
  const auto& loads = answer.loads;
  if (!loads.first)
    return answer.asked.part.shear_strength ? "not known: the strength class is not known"
                                            : "not known: the shear strength of the part is not known";
  const std::string margin =
      fmt::format("the weaker thread bears {} of what the strongest bolt does", quantity::write_share(*loads.margin));
  switch (*loads.first) {
  case Gives::bolt:
    return fmt::format("the bolt; {}", margin);
  case Gives::bolt_thread:
    return fmt::format("the thread of the bolt; {}", margin);
  case Gives::part_thread:
    return fmt::format("the thread in the part{}; {}",
                       *loads.first_with_weakest == Gives::bolt ? ", unless the bolt is a weak one of its class" : "",
                       margin);
  }
  return "";
}

Section loads_section(const StripAnswer& answer, const DisplayUnits& units) {
  Section section{"What each bears", {}};
  const auto weakest_to_strongest = [&](const std::optional<Force>& low, const std::optional<Force>& high) {
    return low && high
               ? fmt::format("{} (weakest of its class) to {} (strongest)", force(low, units), force(high, units))
               : std::string("not known");
  };
  section.rows.push_back({"bolt", weakest_to_strongest(answer.bolt_break, answer.bolt_break_highest)});
  if (!answer.bearing) return section;
  section.rows.push_back(
      {"thread of bolt", weakest_to_strongest(answer.loads.bolt_thread, answer.loads.bolt_thread_highest)});
  section.rows.push_back({"thread in part", force(answer.loads.part_thread, units)});
  section.rows.push_back({"First gives", first_words(answer)});
  return section;
}

void add_insert_lengths(Section& section, const StripAnswer& answer, const DisplayUnits& units) {
  if (!answer.needed) return;
  std::string words;
  for (const double multiple : joint::insert_lengths()) {
    const Length made = multiple * answer.asked.thread.diameter;
    const bool enough = made > answer.asked.incomplete && joint::loads_at(answer, made).first == Gives::bolt;
    words += fmt::format("{}{} d ({}) {}", words.empty() ? "" : ", ", write_number(multiple, 2), write(made, units, 4),
                         enough ? "is enough" : "is not");
  }
  section.rows.push_back({"inserts are made", words});
}

Section needed_section(const StripAnswer& answer, const std::vector<strength::EngagementRule>& published,
                       const DisplayUnits& units) {
  const StripCase& asked = answer.asked;
  Section section{"Engagement with which the bolt breaks before a thread strips", {}};
  if (answer.needed) {
    section.rows.push_back(
        {"needed", fmt::format("{} = {} (strongest bolt): {} that bears and {} that does not",
                               length(*answer.needed, units), diameters(*answer.needed, asked),
                               length(*answer.needed - asked.incomplete, units), write(asked.incomplete, units, 4))});
    section.rows.push_back({"weakest bolt", length(*answer.needed_with_weakest, units)});
    if (answer.needed_at_highest_shear)
      section.rows.push_back(
          {"best metal", fmt::format("{} (strongest bolt, {} in shear)", length(*answer.needed_at_highest_shear, units),
                                     write(*asked.part.shear_highest, units))});
  } else {
    section.rows.push_back({"needed", asked.part.shear_strength
                                          ? "not known without the strength class"
                                          : "not known without a shear strength; the part sets the limit"});
  }
  if (asked.insert) add_insert_lengths(section, answer, units);
  for (const auto& rule : published)
    section.rows.push_back({&rule == &published.front() ? "published rules" : "",
                            fmt::format("{} d = {}: {} ({}, {})", write_number(rule.over_diameter, 3),
                                        write(rule.over_diameter * asked.thread.diameter, units, 4), rule.words,
                                        rule.source.title, known_name(rule.source.known))});
  return section;
}

Section clamp_rows(const StripAnswer& answer, const tightening::ClampAnswer& clamp, const DisplayUnits& units) {
  Section section{fmt::format("Clamp load of {} (low / likely / high)", write(clamp.torque, units)), {}};
  const auto load = joint::graver_load(clamp);
  section.rows.push_back({"by the graver model", load ? write(*load, units) + ", as clamp works it out" : "not known"});
  if (load && answer.loads.part_thread)
    section.rows.push_back(
        {"of the part's thread", quantity::write_shares(quantity::map(
                                     *load, [&](Force one) -> double { return one / *answer.loads.part_thread; }))});
  return section;
}

Section left_out(const StripAnswer& answer) {
  Section section{"How far to trust it", {}};
  section.rows.push_back(
      {"areas",
       fmt::format("at the limits that leave the least metal; basic sizes would overstate them by {} (part) and "
                   "{} (bolt){}",
                   quantity::write_share(answer.part_overstated), quantity::write_share(answer.bolt_overstated),
                   answer.asked.insert && answer.asked.insert->kind == joint::InsertKind::wire
                       ? "; the tolerances of the hole for the insert are taken to be those of the bolt's "
                         "own thread"
                       : "")});
  section.rows.push_back({"left out",
                          "that a thin wall widens, that the first turns carry most, bending, heat, wear; a "
                          "thread that was stripped or chased before has less"});
  return section;
}

} // namespace

Document strip_report(const StripAnswer& answer, const std::vector<strength::EngagementRule>& published,
                      const tightening::ClampAnswer* clamp, const DisplayUnits& units) {
  const StripCase& asked = answer.asked;
  Document document;
  const std::string in = fmt::format("{} in {}", bolt_words(asked), asked.part.name);
  document.title = answer.loads.first && answer.needed
                       ? fmt::format("{}, {} engaged: {} first", in, write(*asked.length, units, 4),
                                     *answer.loads.first == Gives::bolt          ? "the bolt breaks"
                                     : *answer.loads.first == Gives::bolt_thread ? "the bolt's thread strips"
                                                                                 : "the thread in the part strips")
                   : answer.needed
                       ? fmt::format("{}: engage {} for the bolt to break first", in, length(*answer.needed, units))
                       : in;
  document.sections.push_back(input_section(answer, units));
  document.sections.push_back(loads_section(answer, units));
  if (clamp != nullptr) document.sections.push_back(clamp_rows(answer, *clamp, units));
  document.sections.push_back(needed_section(answer, published, units));
  document.sections.push_back(left_out(answer));
  document.remarks = remarks_of(answer.findings, units);
  document.working = answer.working;
  document.has_foot = true;
  return document;
}

} // namespace clampwright::report
