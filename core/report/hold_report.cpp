// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/hold_report.hpp"

#include <fmt/format.h>

#include "core/report/crank_words.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::report {

namespace {

using crank::HoldAnswer;
using crank::StopAnswer;
using crank::StopLoads;
using crank::Way;
using quantity::Angle;
using quantity::DisplayUnits;
using quantity::Force;
using quantity::Length;
using quantity::Torque;
using quantity::write;

std::string force(Force value, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_newtons(value), *units.force);
}
std::string stress(quantity::Stress value, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_pascals(value), *units.stress);
}
std::string angle(Angle value, const DisplayUnits& units) {
  return quantity::write_si(quantity::in_radians(value), *units.angle);
}
// Three digits: more of a length that was worked out nobody measures.
std::string length(Length value, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_metres(value), *units.length);
}
// As it was given.
std::string given(Length value, const DisplayUnits& units) { return write(value, units, 5); }

std::string torque_words(const crank::HoldCase& asked, const DisplayUnits& units) {
  return asked.undo_torque
             ? fmt::format("{} to tighten, {} to undo", write(asked.torque, units), write(*asked.undo_torque, units))
             : fmt::format("{}; undoing may take far more: reckon with it by --undo-torque",
                           write(asked.torque, units));
}

// The stop holds a rising piston only, so what is tightened from one side of the top is undone from the other.
std::string meet_words(const crank::HoldCase& asked) {
  if (!asked.turns)
    return "while it rises, in the sense in which the wrench turns the crank; which way the engine runs is of no "
           "matter. To undo, from the other side of the top.";
  return fmt::format("while it rises: to tighten with the crank turned {}, to undo {}, {}",
                     thread::turn_name(asked.turns->tighten), thread::turn_name(asked.turns->undo),
                     asked.turns->seen_from);
}

// One figure, and that of undoing beside it.
template<class Value>
std::string both(const StopAnswer& stop, Value value) {
  std::string text = value(stop.fitting);
  if (stop.undoing) text += fmt::format("; to undo {}", value(*stop.undoing));
  return text;
}

std::string ports_words(const StopAnswer& stop, const DisplayUnits& units) {
  switch (stop.ports) {
  case crank::Ports::covered:
    return fmt::format("covered: the highest opens when the crown is {} down",
                       given(*stop.asked.port_below_top, units));
  case crank::Ports::open:
    return fmt::format("OPEN: the highest opens when the crown is {} down", given(*stop.asked.port_below_top, units));
  case crank::Ports::not_known:
    break;
  }
  return "not known; say with --port-depth how far down the crown opens the highest, if it has any";
}

Section place_section(const HoldAnswer& answer, const DisplayUnits& units) {
  const StopAnswer& stop = *answer.stop;
  Section section{"", {}};
  section.rows.push_back({"Torque", torque_words(answer.asked, units)});
  section.rows.push_back({"Crank", fmt::format("stroke {}, rod {}", given(2.0 * stop.asked.crank.radius, units),
                                               given(stop.asked.crank.rod, units))});
  section.rows.push_back({"Piston", fmt::format("{} before top dead centre, {} below its top position; rod at {}",
                                                angle(stop.asked.before_top, units), length(stop.below_top, units),
                                                angle(stop.rod_angle, units))});
  if (answer.asked.on_record) section.rows.push_back({"On record", "hold by: " + *answer.asked.on_record});
  section.rows.push_back({"Meet it", meet_words(answer.asked)});
  section.rows.push_back({"Ports", ports_words(stop, units)});
  return section;
}

void add_incline(Section& section, const StopAnswer& stop, const DisplayUnits& units) {
  if (!stop.asked.incline) return;
  section.rows.push_back(
      {"inclined stop",
       fmt::format("{} to the bore: along it {}, and the piston is pushed aside by {} more; a flat crown "
                   "bends the stop with {} instead",
                   angle(*stop.asked.incline, units), force(stop.fitting.along_stop, units),
                   force(stop.fitting.pushed_aside, units), force(stop.fitting.across_stop, units))});
}

void add_plug(Section& section, const StopAnswer& stop, const DisplayUnits& units) {
  if (!stop.asked.plug) return;
  const std::string what = fmt::format("{}, {} engaged", thread::write_designation(stop.asked.plug->thread),
                                       given(stop.asked.plug->engaged, units));
  if (!stop.plug_strips_at) {
    section.rows.push_back({"plug thread", what + ": no shear strength of that metal is known"});
    return;
  }
  section.rows.push_back({"plug thread", fmt::format("{}: strips at {}, {}", what, force(*stop.plug_strips_at, units),
                                                     both(stop, [](const StopLoads& loads) {
                                                       return quantity::write_rounded(*loads.plug_margin, 2) +
                                                              " times what it bears";
                                                     }))});
}

Section loads_section(const StopAnswer& stop, const DisplayUnits& units) {
  Section section{"What bears it", {}};
  section.rows.push_back(
      {"crown and stop", both(stop, [&](const StopLoads& loads) { return force(loads.forces.piston, units); })});
  section.rows.push_back({"", fmt::format("{} times the least that this torque makes anywhere: {}, at {}",
                                          quantity::write_rounded(stop.over_least, 3), force(stop.least, units),
                                          angle(quantity::degrees(quantity::in_degrees(stop.least_at)), units))});
  section.rows.push_back({"rod", both(stop, [&](const StopLoads& loads) { return force(loads.forces.rod, units); })});
  section.rows.push_back(
      {"bore, sideways", both(stop, [&](const StopLoads& loads) { return force(loads.forces.side, units); })});
  section.rows.push_back({"crank pin", both(stop, [&](const StopLoads& loads) {
                                         return force(loads.forces.crankpin, units);
                                       }) + " at a right angle to the web"});
  add_incline(section, stop, units);
  if (stop.asked.tip_diameter)
    section.rows.push_back(
        {"tip", fmt::format("{} under a flat tip of {} that stands square",
                            both(stop, [&](const StopLoads& loads) { return stress(*loads.tip_pressure, units); }),
                            given(*stop.asked.tip_diameter, units))});
  add_plug(section, stop, units);
  if (stop.fitting.crown_bending)
    section.rows.push_back(
        {"crown",
         fmt::format("about {} in bending, if it were a flat plate {} thick and clamped round {}: an order of "
                     "magnitude and no more",
                     quantity::write_si_rounded(quantity::in_pascals(*stop.fitting.crown_bending), *units.stress, 2),
                     given(stop.asked.crown->thickness, units), given(2.0 * stop.asked.crown->radius, units))});
  return section;
}

std::string neighbour_words(const std::optional<crank::Neighbour>& neighbour, const StopAnswer& stop,
                            const DisplayUnits& units) {
  if (!neighbour) return "the stop would not hold the piston at all";
  return fmt::format("{} ({} times as much), at {} before top dead centre", force(neighbour->piston, units),
                     quantity::write_rounded(neighbour->piston / stop.fitting.forces.piston, 3),
                     angle(neighbour->before_top, units));
}

Section doubt_section(const StopAnswer& stop, const DisplayUnits& units) {
  const std::string doubt = quantity::write_si(quantity::in_metres(crank::k_stop_doubt), *units.length, 2);
  Section section{fmt::format("If gasket, carbon or a worn tip make a difference: at {} crown and stop bear",
                              write(stop.fitting.torque, units)),
                  {}};
  section.rows.push_back({doubt + " shorter", neighbour_words(stop.shorter, stop, units)});
  section.rows.push_back({doubt + " longer", neighbour_words(stop.longer, stop, units)});
  return section;
}

Section most_section(const StopAnswer& stop, const DisplayUnits& units) {
  Section section{"The most that may be pulled on this stop", {}};
  if (!stop.governs) {
    section.rows.push_back({"torque", "not known: no limit was stated, and none is assumed"});
    return section;
  }
  section.rows.push_back({"torque", fmt::format("{}, by the stated limit of the {}", write(stop.governs->torque, units),
                                                crank::limit_words(stop.governs->limit))});
  for (const crank::LimitTorque& limit : stop.limits)
    if (limit.limit != stop.governs->limit)
      section.rows.push_back({std::string(crank::limit_words(limit.limit)), write(limit.torque, units)});
  return section;
}

std::string way_figure(const crank::HoldingWay& way, const DisplayUnits& units) {
  if (way.force) return fmt::format(" [{}]", force(*way.force, units));
  if (way.slips_at) return fmt::format(" [slips at {}]", write(*way.slips_at, units));
  return "";
}

Section ways_section(const HoldAnswer& answer, const DisplayUnits& units) {
  Section section{fmt::format("Ways to hold, the best load path first (forces at {})",
                              write(crank::greater_torque(answer.asked), units)),
                  {}};
  for (const crank::HoldingWay& way : answer.ways) {
    const WayWords words = way_words(way.way);
    section.rows.push_back({fmt::format("{} {}", way.rank, crank::way_name(way.way)),
                            fmt::format("{}{}", words.title, way_figure(way, units))});
    section.rows.push_back({"", fmt::format("{}: {}", words.load_path, words.reason)});
  }
  section.rows.push_back(
      {"no impact", "of a driver's blow nobody knows the peak torque, so nothing can be said of it"});
  return section;
}

// By the greater of the two torques, and what must not be overlooked first.
std::string stop_title(const HoldAnswer& answer, const DisplayUnits& units) {
  const crank::StopAnswer& stop = *answer.stop;
  const bool undoing = stop.undoing && stop.undoing->torque > stop.fitting.torque;
  const crank::StopLoads& loads = undoing ? *stop.undoing : stop.fitting;
  const bool stops = finding::has_stop(stop.findings);
  return fmt::format("{}: {} on the crank presses on the crown with {}",
                     stops ? "NOT to be held by this stop, see below" : "Held by a piston stop",
                     write(loads.torque, units), force(loads.forces.piston, units));
}

std::string title_of(const HoldAnswer& answer, const DisplayUnits& units) {
  const crank::HoldCase& asked = answer.asked;
  const auto at_greater = write(crank::greater_torque(asked), units);
  switch (asked.by) {
  case Way::stop:
    return stop_title(answer, units);
  case Way::strap:
    return fmt::format("Held by a strap or pin holder at {}: {} pulls on it with {}",
                       given(*asked.others.strap_radius, units), at_greater,
                       force(crank::strap_force(crank::greater_torque(asked), *asked.others.strap_radius), units));
  case Way::gear:
    return fmt::format("Held by a locked gear of {}: {} presses on one pair of teeth with {}",
                       given(*asked.others.gear_diameter, units), at_greater,
                       force(crank::tooth_force(crank::greater_torque(asked), *asked.others.gear_diameter), units));
  case Way::same_end:
    return fmt::format("Held at the same end of the shaft, or by the part itself: none of {} passes the crank",
                       at_greater);
  case Way::far_end:
    return fmt::format("Held at the far end of the crank: {} goes through press fits that slip at {}", at_greater,
                       write(crank::slip_torque(*asked.others.far_end), units));
  }
  return "";
}

} // namespace

Document hold_report(const HoldAnswer& answer, const DisplayUnits& units) {
  Document document;
  document.title = title_of(answer, units);
  if (answer.stop) {
    document.sections.push_back(place_section(answer, units));
    document.sections.push_back(loads_section(*answer.stop, units));
    document.sections.push_back(doubt_section(*answer.stop, units));
    document.sections.push_back(most_section(*answer.stop, units));
  } else {
    Section first{"", {{"Torque", torque_words(answer.asked, units)}}};
    if (answer.asked.on_record) first.rows.push_back({"On record", "hold by: " + *answer.asked.on_record});
    document.sections.push_back(std::move(first));
  }
  document.sections.push_back(ways_section(answer, units));
  document.remarks = remarks_of(answer.findings, units);
  document.working = answer.working;
  document.has_foot = true;
  return document;
}

std::vector<Row> stop_rows(const StopAnswer& stop, const DisplayUnits& units) {
  std::vector<Row> rows;
  rows.push_back({"Piston stop",
                  fmt::format("the one on record meets the rising piston {} before top dead centre, {} down, and bears "
                              "{}; ports {}",
                              angle(stop.asked.before_top, units), length(stop.below_top, units),
                              force(stop.fitting.forces.piston, units),
                              stop.ports == crank::Ports::not_known ? "not known" : crank::ports_name(stop.ports))});
  if (stop.governs) {
    const bool over = stop.verdict == crank::HoldVerdict::over_limit;
    rows.push_back({"", fmt::format("{}at the most {} on it, by its limit on record for the {}",
                                    over ? "NOT WITH THIS TORQUE: " : "", write(stop.governs->torque, units),
                                    crank::limit_words(stop.governs->limit))});
  }
  if (stop.plug_strips_at)
    rows.push_back({"", fmt::format("the thread in the plug hole strips at {} times that force",
                                    quantity::write_rounded(*stop.fitting.plug_margin, 2))});
  return rows;
}

} // namespace clampwright::report
