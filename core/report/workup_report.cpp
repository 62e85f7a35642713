// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/workup_report.hpp"

#include <fmt/format.h>

#include "core/joint/surroundings.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::report {

namespace {

using quantity::DisplayUnits;
using quantity::Force;
using quantity::Torque;
using quantity::write;
using quantity::write_share;
using workup::AllowedLoad;
using workup::Answer;
using workup::Help;
using workup::Limit;
using workup::NeedKind;
using workup::Verdict;

std::string both_units(Torque torque, const DisplayUnits& units) {
  const double si = quantity::in_newton_metres(torque);
  const quantity::Unit& metric = *DisplayUnits{}.torque;
  const quantity::Unit& other = units.torque == &metric ? *DisplayUnits::imperial().torque : metric;
  return fmt::format("{} = {}", quantity::write_si_rounded(si, *units.torque), quantity::write_si_rounded(si, other));
}

std::string_view limit_words(Limit limit) {
  switch (limit) {
  case Limit::bolt_proof:
    return "bolt, proof load";
  case Limit::bolt_yield:
    return "bolt, yield with torsion";
  case Limit::bolt_thread:
    return "thread of the bolt";
  case Limit::part_thread:
    return "thread in the part";
  case Limit::nut:
    return "nut";
  case Limit::seat:
    return "seat under the face";
  case Limit::soft_part:
    return "soft part";
  }
  return "";
}

std::string_view why_unknown(const Answer& answer, Limit limit) {
  const auto& asked = answer.asked;
  switch (limit) {
  case Limit::bolt_proof:
  case Limit::bolt_yield:
    return asked.fastener.strength.class_name == "unknown" ? "not known: the class is not"
                                                           : "not known: no proof load for this thread and class";
  case Limit::bolt_thread:
  case Limit::part_thread:
    return asked.threads ? "not known: the shear strength of the part is not"
                         : "not known: the length engaged, or the limits of the thread, are not";
  case Limit::nut:
    return "not known: this nut has no figure for this size";
  case Limit::seat:
  case Limit::soft_part:
    return asked.fastener.face ? "not known: what it bears is not; ask its maker" : "not known: the face is not";
  }
  return "";
}

std::string limit_text(const Answer& answer, const AllowedLoad& limit, const DisplayUnits& units) {
  if (!limit.bears || !limit.allowed) return std::string(why_unknown(answer, limit.limit));
  std::string text = limit.limit == Limit::bolt_yield
                         ? fmt::format("at most {}, where tension and torsion reach {} of yield",
                                       write(*limit.allowed, units), write_share(limit.share))
                         : fmt::format("at most {}: {} of {}", write(*limit.allowed, units), write_share(limit.share),
                                       write(*limit.bears, units));
  if (limit.torque) text += fmt::format("; reached at {}", write(*limit.torque, units));
  if (answer.governed_by == limit.limit) text += "  <- first";
  return text;
}

std::string counted(int number, std::string_view what) {
  return fmt::format("{} {}{}", number, what, number == 1 ? "" : "s");
}

std::string need_text(const Answer& answer, const workup::Need& need, const WorkupPlace& place,
                      const DisplayUnits& units) {
  const workup::Demand& demand = answer.asked.demand;
  const std::string load = write(need.load, units) + " each";
  switch (need.kind) {
  case NeedKind::clamp:
    return place.must_clamp_because.empty() ? load + ", as told"
                                            : fmt::format("{}: {}", load, place.must_clamp_because);
  case NeedKind::friction_torque:
    return fmt::format("{}, for {} carried by friction {} at {} radius, {}, {}", load,
                       write(*demand.friction->torque, units), quantity::write_number(demand.friction->friction, 3),
                       write(*demand.friction->radius, units, 4), counted(demand.friction->faces, "face"),
                       counted(demand.bolts, "bolt"));
  case NeedKind::friction_force:
    return fmt::format("{}, for {} across the bolts carried by friction {}, {}, {}", load,
                       write(*demand.friction->force, units), quantity::write_number(demand.friction->friction, 3),
                       counted(demand.friction->faces, "face"), counted(demand.bolts, "bolt"));
  case NeedKind::pull:
    return load + ", pulled along the bolt";
  case NeedKind::pressure:
    return fmt::format("{}, for {} on {} diameter, {}", load, write(demand.sealed->pressure, units),
                       write(demand.sealed->diameter, units, 4), counted(demand.bolts, "bolt"));
  }
  return "";
}

std::string_view need_label(NeedKind kind) {
  switch (kind) {
  case NeedKind::clamp:
    return "clamp load";
  case NeedKind::friction_torque:
    return "torque by friction";
  case NeedKind::friction_force:
    return "force by friction";
  case NeedKind::pull:
    return "pull";
  case NeedKind::pressure:
    return "pressure";
  }
  return "";
}

Section input_section(const Answer& answer, const WorkupPlace& place) {
  const auto& fastener = answer.asked.fastener;
  Section section{"", {}};
  if (!place.joint.empty()) section.rows.push_back({"Joint", place.joint});
  section.rows.push_back(
      {"Fastener", fmt::format("{}, {}", thread::write_designation(fastener.thread),
                               fastener.strength.class_name == "unknown" ? "class not known"
                                                                         : "class " + fastener.strength.class_name)});
  section.rows.push_back({"Surfaces", surfaces_words(fastener)});
  if (answer.clamp)
    section.rows.push_back(
        {"Wrench", fmt::format("± {} ({})", write_share(answer.clamp->accuracy.share), answer.clamp->accuracy.basis)});
  section.rows.push_back({"Face", fastener.face ? fastener.face->basis : "not known"});
  const bool nut = answer.asked.nut.has_value();
  section.rows.push_back({"Screws into", nut                  ? "nut " + answer.asked.nut->nut_class
                                         : place.part.empty() ? "not told: its thread was NOT looked at"
                                                              : place.part});
  section.rows.push_back({"Presses on", answer.asked.seat   ? answer.asked.seat->description
                                        : answer.asked.soft ? answer.asked.soft->name
                                                            : "not told: the seat was NOT looked at"});
  if (place.makers_figure)
    section.rows.push_back({"Maker's figure", fmt::format("{}: {}", *place.makers_figure, place.figure_words)});
  return section;
}

// What a limit was worked out from, and what other lists say of that material.
std::vector<std::string> inputs_of(const Answer& answer, Limit limit, const DisplayUnits& units) {
  std::vector<std::string> words;
  const auto& asked = answer.asked;
  const auto add_note = [&](const strength::PartMaterial& part) {
    if (!part.note.empty()) words.push_back("lists differ, in MPa: " + part.note);
  };
  if (limit == Limit::part_thread && answer.strip) {
    const joint::StripCase& threads = answer.strip->asked;
    if (threads.length && answer.strip->bearing && threads.part.shear_strength)
      words.push_back(fmt::format("{} engaged, {} of it bear; shear strength {}; factor C3 {} for bending threads",
                                  write(*threads.length, units, 4), write(*answer.strip->bearing, units, 4),
                                  write(*threads.part.shear_strength, units),
                                  quantity::write_number(answer.strip->c3, 4)));
    add_note(threads.part);
  }
  if (limit == Limit::seat && asked.seat && asked.seat->seat_pressure && asked.fastener.face) {
    const tightening::Face& face = *asked.fastener.face;
    words.push_back(fmt::format("{} on a face from {} to {}", write(*asked.seat->seat_pressure, units),
                                write(face.inner, units, 4), write(face.outer, units, 4)));
    add_note(*asked.seat);
  }
  return words;
}

Section limits_section(const Answer& answer, const DisplayUnits& units) {
  Section section{"What it bears: greatest clamp load", {}};
  for (const AllowedLoad& limit : answer.limits) {
    section.rows.push_back({std::string(limit_words(limit.limit)), limit_text(answer, limit, units)});
    for (std::string& words : inputs_of(answer, limit.limit, units))
      section.rows.push_back({"", std::move(words)});
  }
  if (answer.asked.fastener.strength.approved_data)
    section.rows.push_back({"bolt", "aircraft hardware: its approved data decide, nothing is worked up here"});
  else if (answer.asked.fastener.kind != tightening::JointKind::bolt)
    section.rows.push_back({"not a bolt", fmt::format("a {}: no class and no standard says what it bears",
                                                      tightening::joint_kind_name(answer.asked.fastener.kind))});
  return section;
}

Section needs_section(const Answer& answer, const WorkupPlace& place, const DisplayUnits& units) {
  Section section{"What it must carry: least clamp load", {}};
  for (const workup::Need& need : answer.needed.needs)
    section.rows.push_back({std::string(need_label(need.kind)), need_text(answer, need, place, units)});
  if (answer.needed.needs.empty()) {
    section.rows.push_back({"not told", "say it with --must-clamp, --pull, --carry, --slip or --pressure; without it "
                                        "nobody knows whether the torque is enough"});
    return section;
  }
  section.rows.push_back(
      {"needed", fmt::format("{} each when tightened: {} kept in service, {} lost after tightening{}",
                             write(answer.needed.tightened, units), write(answer.needed.kept, units),
                             write_share(answer.asked.demand.loss),
                             place.loss_told ? ""
                                             : " (embedding of 5 to 10 % in the first day, second hand; short screws, "
                                               "paint and gaskets lose more: --loss)")});
  return section;
}

std::string_view help_words(Help help) {
  switch (help) {
  case Help::larger_face:
    return "a larger hard washer or a flange, so that the load spreads";
  case Help::longer_engagement:
    return "more thread engaged, or a steel insert";
  case Help::stronger_nut:
    return "a nut of a higher class or full height";
  case Help::stronger_bolt:
    return "a stronger or larger bolt, with every other part looked at again";
  case Help::less_scatter:
    return "less scatter: surfaces stated and kept, a closer wrench, or elongation or angle in place of torque";
  case Help::more_bolts:
    return "more bolts, or larger ones";
  case Help::carry_otherwise:
    return "dowels, a key or a register to carry what friction cannot";
  }
  return "";
}

Section torque_section(const Answer& answer, const DisplayUnits& units) {
  Section section{"Torque (derived)", {}};
  if (answer.highest)
    section.rows.push_back(
        {"at the most", fmt::format("{}: above it, at the least friction, {} is asked for more than its share",
                                    both_units(*answer.highest, units), limit_words(*answer.governed_by))});
  if (answer.lowest)
    section.rows.push_back(
        {"at the least", fmt::format("{}: below it, at the most friction, the joint may not carry what it must",
                                     both_units(*answer.lowest, units))});
  if (answer.set) section.rows.push_back({"to set", both_units(*answer.set, units)});
  if (answer.verdict == Verdict::none)
    section.rows.push_back(
        {"none", answer.asked.weak_nut_for ? "no torque: the nut is made for weaker bolts, and its thread strips first"
                 : answer.scatter_alone
                     ? "no torque satisfies both: the loads would meet, but friction and wrench scatter too much"
                     : "no torque satisfies both: the joint must carry more than its weakest part bears"});
  if (answer.verdict == Verdict::not_known)
    section.rows.push_back({"not known", "something that limits it is not known; nothing is filled in for it"});
  for (const Help help : answer.helps)
    section.rows.push_back({help == answer.helps.front() ? "what would help" : "", std::string(help_words(help))});
  return section;
}

std::string title_of(const Answer& answer, const DisplayUnits& units) {
  const std::string what = fmt::format("{}{}", finding::has_stop(answer.findings) ? "STOP, see below. " : "",
                                       thread::write_designation(answer.asked.fastener.thread));
  switch (answer.verdict) {
  case Verdict::torque:
    return fmt::format("{}: {} worked up, not the maker's", what, write(*answer.set, units));
  case Verdict::at_most:
    return fmt::format("{}: at the most {} worked up, not the maker's; whether it is enough is not known", what,
                       write(*answer.set, units));
  case Verdict::none:
    return fmt::format("{}: {}", what,
                       answer.asked.weak_nut_for ? "no torque with this nut" : "no torque satisfies both");
  case Verdict::not_known:
    return fmt::format("{}: no torque can be worked up", what);
  }
  return what;
}

} // namespace

Document workup_report(const Answer& answer, const WorkupPlace& place, const DisplayUnits& units) {
  Document document;
  document.title = title_of(answer, units);
  document.sections.push_back(input_section(answer, place));
  document.sections.push_back(limits_section(answer, units));
  document.sections.push_back(needs_section(answer, place, units));
  document.sections.push_back(torque_section(answer, units));
  if (answer.clamp) {
    Section clamp = clamp_section(*answer.clamp, units);
    clamp.heading = fmt::format("Clamp load at {} (low / likely / high)", write(*answer.set, units));
    document.sections.push_back(std::move(clamp));
  }
  document.sections.push_back(
      {"How far to trust it",
       {{"shares", fmt::format("{} of proof (textbook, joints that come apart again; from memory), {} of yield "
                               "(VDI 2230-1, second hand), a thread {} of what strips it (the project's margin)",
                               write_share(answer.asked.shares.proof), write_share(answer.asked.shares.yield),
                               write_share(answer.asked.shares.thread))},
        {"left out", "bending, heat, shock, fatigue, worn or chased threads, what a thin wall or an edge does"}}});
  document.remarks = remarks_of(answer.findings, units);
  document.working = answer.working;
  document.has_foot = true;
  return document;
}

} // namespace clampwright::report
