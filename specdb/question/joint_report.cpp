// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_report.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/designation.hpp"

namespace clampwright::specdb {

namespace {

using quantity::DisplayUnits;
using report::Section;

std::string status_words(const std::string& status) {
  if (status == "maker") return "maker's figure";
  if (status == "general-table") return "from a general table, not for this joint";
  if (status == "shop") return "the shop's own figure";
  if (status == "derived") return "worked up, not the maker's";
  return "no figure";
}

std::string fastener_words(const JointAnswer& answer) {
  const JointRecord& joint = answer.joint;
  std::string words = thread::write_designation(answer.thread.thread);
  words += joint.strength_class == "unknown" ? ", class not known" : fmt::format(", class {}", joint.strength_class);
  if (joint.quantity > 1) words = fmt::format("{} × {}", joint.quantity, words);
  if (joint.kind != "bolt") words += fmt::format(", {}", joint.kind);
  if (joint.seat) words += fmt::format("; {}", *joint.seat);
  return words;
}

// The figure in the wanted unit, unless the page prints that unit already.
void add_torque(Section& section, const JointAnswer& answer, const DisplayUnits& units) {
  const FigureRecord& figure = answer.joint.figure;
  if (!answer.torque) {
    section.rows.push_back({"Torque", fmt::format("none given: the page says \"{}\"", figure.printed)});
    return;
  }
  std::string printed = figure.printed;
  if (figure.tolerance) printed += " " + *figure.tolerance;
  section.rows.push_back({"Torque", fmt::format("{}, as printed", printed)});
  const quantity::Unit& own = quantity::unit_named(*figure.unit);
  std::vector<std::string> others;
  const auto add = [&](const quantity::Unit& unit) {
    // A spelling that needed reading is shown in the one that was understood as well.
    if (&unit == &own && !figure.reading) return;
    std::string text = quantity::write_si_rounded(quantity::in_newton_metres(*answer.torque), unit);
    if (std::ranges::find(others, text) == others.end()) others.push_back(std::move(text));
  };
  if (figure.reading) add(own);
  add(*units.torque);
  add(quantity::unit_named("N.m"));
  add(quantity::unit_named("lbf.ft"));
  std::string same;
  for (const std::string& other : others)
    same += (same.empty() ? "= " : " = ") + other;
  section.rows.push_back({"", same});
  if (figure.reading) section.rows.push_back({"", *figure.reading});
  if (figure.angle_deg)
    section.rows.push_back({"", fmt::format("then {}°", quantity::write_number(*figure.angle_deg, 4))});
}

Section glance(const JointAnswer& answer, const DisplayUnits& units) {
  const JointRecord& joint = answer.joint;
  const FigureRecord& figure = joint.figure;
  Section section;
  add_torque(section, answer, units);
  std::string surfaces = fmt::format("{}: {}", figure.surfaces, answer.surfaces_description);
  if (figure.condition) surfaces += fmt::format("; {}", *figure.condition);
  section.rows.push_back({"Surfaces", surfaces});
  section.rows.push_back({"Tighten", fmt::format("{}, {}", thread::turn_name(answer.tighten), joint.seen_from)});
  section.rows.push_back({"Undo", fmt::format("{}, {}", thread::turn_name(answer.undo), joint.seen_from)});
  if (joint.holding) section.rows.push_back({"Hold", *joint.holding});
  section.rows.push_back({"Lock", answer.lock_description.empty() ? joint.lock : answer.lock_description});
  if (figure.sequence || joint.quantity > 1)
    section.rows.push_back({"Sequence", figure.sequence.value_or("none given")});
  section.rows.push_back({"Recheck", figure.recheck.value_or("none given")});
  section.rows.push_back({"Fastener", fastener_words(answer)});
  section.rows.push_back({"Source", fmt::format("{}, {}, {}: {}", figure.source.title, figure.source.edition,
                                                figure.source.where, status_words(figure.status))});
  return section;
}

// How the crank-reaction finding comes to the force on a piston stop.
Working stop_working(const JointAnswer& answer) {
  if (!answer.joint.on_crank || !answer.joint.crank || !answer.torque) return {};
  const crank::SliderCrank& crank = *answer.joint.crank;
  const quantity::Angle angle = k_stop_angle;
  const double t = quantity::in_radians(angle);
  const std::string source = "slider-crank statics without offset and friction";
  const quantity::Angle rod = quantity::radians(std::asin(crank.radius / crank.rod * std::sin(t)));
  return {{"r", "crank radius", "half of the stroke", quantity::in_millimetres(crank.radius), "mm", "workshop file"},
          {"l", "rod length", "as recorded", quantity::in_millimetres(crank.rod), "mm", "workshop file"},
          {"t", "angle of the stop before top dead centre", "for example", quantity::in_degrees(angle), "°", "example"},
          {"p", "angle of the rod", "asin(r/l·sin t)", quantity::in_degrees(rod), "°", source},
          {"l_c", "lever of the piston", "r·sin(t + p)/cos p",
           quantity::in_millimetres(crank::bore_lever(crank, angle)), "mm", source},
          {"F_s", "force on the stop and the crown", "T·1000/l_c",
           quantity::in_newtons(crank::stop_force(crank, angle, *answer.torque)), "N", source}};
}

} // namespace

report::Document joint_report(const JointAnswer& answer, const DisplayUnits& units, bool invented) {
  report::Document document;
  document.title = fmt::format("{} / {} / {} [{}]", answer.joint.machine, answer.joint.assembly, answer.joint.name,
                               answer.joint.slug);
  if (invented) document.banner = "INVENTED, to try the program with: never tighten a real machine by it.";
  document.sections.push_back(glance(answer, units));
  if (answer.clamp) {
    document.sections.push_back(report::clamp_section(*answer.clamp, units));
    document.working = answer.clamp->working;
    const Working stop = stop_working(answer);
    document.working.insert(document.working.end(), stop.begin(), stop.end());
    document.sources = report::sources_of(*answer.clamp);
  }
  document.remarks = report::remarks_of(answer.findings, units);
  document.has_foot = true;
  return document;
}

} // namespace clampwright::specdb
