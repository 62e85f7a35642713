// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_report.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/crank/stop_working.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/report/hold_report.hpp"
#include "core/report/sequence_report.hpp"
#include "core/report/stack_report.hpp"
#include "core/report/tightening_report.hpp"
#include "core/report/wording.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "specdb/question/short_source.hpp"
#include "specdb/question/wrench_report.hpp"

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
  if (joint.nut_class) words += fmt::format(", nut {}", *joint.nut_class);
  if (joint.mating_part) {
    words += fmt::format("; into the {}", *joint.mating_part);
    if (joint.engagement) words += fmt::format(", {} of thread", *joint.engagement);
    if (joint.mating_material) words += fmt::format(", {}", text::without_hyphens(*joint.mating_material));
  }
  if (joint.bolt_length) words += fmt::format("; {} long", *joint.bolt_length);
  if (joint.grip) words += fmt::format(", clamping {}", *joint.grip);
  if (joint.hole_depth) words += fmt::format(", hole {} deep", *joint.hole_depth);
  if (joint.seat) words += fmt::format("; {}", *joint.seat);
  if (joint.seat_material) words += fmt::format("; pressing on {}", text::without_hyphens(*joint.seat_material));
  if (joint.soft_material) words += fmt::format("; clamping {}", text::without_hyphens(*joint.soft_material));
  if (joint.taper) words += fmt::format("; taper {}", *joint.taper);
  return words;
}

std::string in_units(quantity::Torque torque, const DisplayUnits& units) {
  std::vector<std::string> texts;
  for (const quantity::Unit* unit : {units.torque, &quantity::unit_named("N.m"), &quantity::unit_named("lbf.ft")}) {
    std::string text = quantity::write_si_rounded(quantity::in_newton_metres(torque), *unit);
    if (std::ranges::find(texts, text) == texts.end()) texts.push_back(std::move(text));
  }
  return fmt::format("{}", fmt::join(texts, " = "));
}

// The angle, and what it adds where the record knows the stack.
std::string angle_words(const FigureAnswer& answer, const DisplayUnits& units) {
  const std::string angle = fmt::format("then {}°", quantity::write_number(*answer.figure.angle_deg, 4));
  if (answer.turned)
    return fmt::format("{}: adds {} on this stack{}", angle, report::load_words(answer.turned->added, units),
                       answer.turned->beyond_elastic ? " by the elastic line, which may end before" : "");
  if (answer.not_turned_because.empty()) return angle;
  return fmt::format("{}; what that adds is not known: {}", angle, answer.not_turned_because);
}

// Does the page print the unit that the figure is recorded in? What does not read as a torque may print any.
bool shows_unit(const std::string& printed, const quantity::Unit& unit) {
  const auto read = quantity::read_quantity(printed, quantity::Kind::torque);
  return read && read->unit == &unit;
}

// The figure in the wanted unit, unless the page prints that unit already.
void add_torque(Section& section, const FigureAnswer& answer, const DisplayUnits& units, std::string label) {
  const FigureRecord& figure = answer.figure;
  if (!answer.torque) {
    section.rows.push_back({std::move(label), fmt::format("none given: the page says \"{}\"", figure.printed)});
    return;
  }
  std::string printed = figure.printed;
  if (figure.tolerance) printed += " " + *figure.tolerance;
  section.rows.push_back({std::move(label), fmt::format("{}, as printed", printed)});
  if (!answer.unit_fits.empty()) {
    section.rows.push_back({"", "NOT TO BE USED: it cannot be meant as printed, see below"});
    return;
  }
  if (answer.set && *answer.set > *answer.torque) {
    section.rows.push_back({"", fmt::format("set {}: the running torque is in it", in_units(*answer.set, units))});
    return;
  }
  const quantity::Unit& own = quantity::unit_named(*figure.unit);
  std::vector<std::string> others;
  const auto add = [&](const quantity::Unit& unit) {
    // A spelling that is not the unit's own, or needed reading, is shown in the one that was understood as well.
    if (&unit == &own && !figure.reading && shows_unit(figure.printed, own)) return;
    std::string text = quantity::write_si_rounded(quantity::in_newton_metres(*answer.torque), unit);
    if (std::ranges::find(others, text) == others.end()) others.push_back(std::move(text));
  };
  if (figure.reading) add(own);
  add(*units.torque);
  add(quantity::unit_named("N.m"));
  add(quantity::unit_named("lbf.ft"));
  section.rows.push_back({"", fmt::format("= {}", fmt::join(others, " = "))});
  if (figure.reading) section.rows.push_back({"", *figure.reading});
  if (figure.angle_deg) section.rows.push_back({"", angle_words(answer, units)});
}

// "2,5 mkg, taken for 24.5 N·m": what an older figure was taken for is not to be found out from its print.
std::string printed_and_meant(const FigureRecord& figure) {
  if (!figure.value) return figure.printed;
  const std::string meant = quantity::write_value(*figure.value, quantity::unit_named(*figure.unit), 6);
  return figure.printed == meant ? meant : fmt::format("{}, taken for {}", figure.printed, meant);
}

std::string source_words(const FigureRecord& figure) {
  return fmt::format("{}, {}, {}: {}", figure.source.title, figure.source.edition, figure.source.where,
                     status_words(figure.status));
}

std::string surfaces_words(const FigureAnswer& answer) {
  const FigureRecord& figure = answer.figure;
  std::string words = fmt::format("{}: {}", figure.surfaces, answer.surfaces_description);
  if (figure.friction) words += fmt::format("; the page names a friction of {}", *figure.friction);
  if (figure.condition) words += fmt::format("; {}", *figure.condition);
  if (figure.temperature) words += fmt::format("; {}", *figure.temperature);
  return words;
}

std::string passes_in(const FigureRecord& figure, const quantity::Unit& own, const quantity::Unit& unit) {
  std::vector<std::string> passes;
  for (const double pass : figure.passes)
    passes.push_back(&unit == &own ? quantity::write_number(pass, 4)
                                   : quantity::write_rounded(quantity::convert(pass, own, unit)));
  return fmt::format("{} {}", fmt::join(passes, ", "), unit.symbol);
}

std::string scaled_passes(const std::vector<quantity::Torque>& passes, const DisplayUnits& units) {
  std::vector<std::string> texts;
  for (const quantity::Torque& pass : passes)
    texts.push_back(quantity::write_rounded(quantity::from_si(quantity::in_newton_metres(pass), *units.torque)));
  return fmt::format("{} {}", fmt::join(texts, ", "), units.torque->symbol);
}

// Passes end at the torque that is to be set: on other surfaces in proportion, and not at all where none can be given.
std::string sequence_words(const JointAnswer& answer, const DisplayUnits& units) {
  const FigureRecord& figure = answer.figure.figure;
  std::string words = figure.sequence.value_or("none given");
  if (figure.passes.empty() || !figure.unit) return words;
  const quantity::Unit& own = quantity::unit_named(*figure.unit);
  const std::string printed = passes_in(figure, own, own);
  if (answer.as_fitted && answer.as_fitted->differs)
    return answer.as_fitted->torque
               ? fmt::format("{}; in {} passes: {}, in proportion to the page's {}", words, figure.passes.size(),
                             scaled_passes(answer.as_fitted->passes, units), printed)
               : fmt::format("{}; the page's passes of {} are for its own surfaces", words, printed);
  words += fmt::format("; in {} passes: {}", figure.passes.size(), printed);
  if (units.torque != &own) words += fmt::format(" = {}", passes_in(figure, own, *units.torque));
  return words;
}

void add_locks(Section& section, const JointAnswer& answer) {
  if (answer.locks.empty()) section.rows.push_back({"Lock", "none recorded"});
  for (std::size_t i = 0; i < answer.locks.size(); ++i) {
    const MaybeText& note = answer.joint.locks[i].note;
    section.rows.push_back({i == 0 ? "Lock" : "", note ? fmt::format("{} ({})", answer.locks[i].description, *note)
                                                       : answer.locks[i].description});
  }
  for (const std::string& line : answer.lock_advice.undo)
    section.rows.push_back({&line == &answer.lock_advice.undo.front() ? "Off first" : "", line});
  if (!answer.lock_advice.cure.empty()) section.rows.push_back({"Cure", answer.lock_advice.cure});
  for (const std::string& line : answer.lock_advice.check)
    section.rows.push_back({&line == &answer.lock_advice.check.front() ? "Check" : "", line});
}

// The page does not say whether the running torque counts, and two rules are in print.
void add_running(Section& section, const JointAnswer& answer, const DisplayUnits& units) {
  for (const locking::RuleAnswer& one : answer.running)
    section.rows.push_back({&one == &answer.running.front() ? "Running" : "",
                            fmt::format("{} would be set where it is {} ({})", quantity::write(one.set, units),
                                        one.rule.words, short_source(one.rule.source))});
}

// A split pin goes in only where a slot stands before the hole.
void add_slot(Section& section, const JointAnswer& answer, const DisplayUnits& units) {
  if (!answer.slot) return;
  const SlotHint& slot = *answer.slot;
  const std::string adds = slot.gain ? " and adds " + report::load_words(*slot.gain, units)
                                     : fmt::format(", and what that adds is not known ({})", slot.unknown_because);
  section.rows.push_back(
      {"Slot", fmt::format("the next of six is {}° on{}; start at the low side, never loosen to align, else another "
                           "washer or nut",
                           quantity::write_number(quantity::in_degrees(slot.angle), 3), adds)});
}

// What heat does to the neighbours, and they to the joint.
void add_heat(Section& section, const JointRecord& joint) {
  const auto degrees = [](double value) { return quantity::write_number(value, 4); };
  for (const NeighbourRecord& neighbour : joint.neighbours) {
    if (neighbour.bears_degC)
      section.rows.push_back({"Heat", fmt::format("{} beside it bears {} °C at the most", neighbour.name,
                                                  degrees(*neighbour.bears_degC))});
    if (neighbour.runs_at_degC)
      section.rows.push_back(
          {"Heat", fmt::format("{} beside it runs at {} °C", neighbour.name, degrees(*neighbour.runs_at_degC))});
  }
}

// Why this wrench is none for the joint, in the words of the gravest finding.
std::string wrench_refusal(const JointAnswer& answer, const DisplayUnits& units) {
  if (!answer.not_to_be_used_because.empty()) return answer.not_to_be_used_because;
  if (!answer.wrench->wanted) return "no torque for the surfaces that are fitted";
  const auto& findings = answer.wrench->setting.findings;
  if (findings.empty()) return "no mark of its scale lies within the limits of the figure";
  return report::finding_text(findings.front(), units);
}

void add_wrench(Section& section, const JointAnswer& answer, const DisplayUnits& units) {
  const WrenchAnswer& asked = *answer.wrench;
  const tightening::Wrench& wrench = asked.wrench;
  const auto marked = [&](double value) {
    return fmt::format("{} {}", quantity::write_number(value, 6), wrench.unit->symbol);
  };
  const std::string scale =
      fmt::format("{}, {} to {}", wrench.name, quantity::write_number(wrench.low, 6), marked(wrench.high));
  if (!asked.setting.setting) {
    section.rows.push_back({"Wrench", fmt::format("{}: no setting: {}", scale, wrench_refusal(answer, units))});
    return;
  }
  const double wanted = quantity::from_si(quantity::in_newton_metres(*asked.wanted), *wrench.unit);
  const double off = *asked.setting.setting - wanted;
  std::string words = fmt::format("set {}", marked(*asked.setting.setting));
  if (off > 0.001 * wanted || off < -0.001 * wanted)
    words += fmt::format(", the mark nearest to {}", quantity::write_value(wanted, *wrench.unit, 4));
  if (!asked.setting.suitable)
    words = fmt::format("not yet: {}", report::finding_text(asked.setting.findings.front(), units));
  section.rows.push_back({"Wrench", fmt::format("{}: {}", scale, words)});
  const auto& passes = answer.as_fitted && answer.as_fitted->torque ? answer.as_fitted->passes : answer.figure.passes;
  if (passes.empty()) return;
  const double first = quantity::from_si(quantity::in_newton_metres(passes.front()), *wrench.unit);
  if (first < wrench.low)
    section.rows.push_back({"", fmt::format("its scale begins above the first pass of {}: another wrench for that",
                                            quantity::write_value(first, *wrench.unit, 3))});
}

Section glance(const JointAnswer& answer, const DisplayUnits& units) {
  const JointRecord& joint = answer.joint;
  const FigureRecord& figure = joint.figure;
  Section section;
  add_torque(section, answer.figure, units, "Torque");
  if (!answer.beside.empty()) section.rows.push_back({"", source_words(figure)});
  if (answer.wrench) add_wrench(section, answer, units);
  section.rows.push_back({"Surfaces", surfaces_words(answer.figure)});
  for (const FigureAnswer& other : answer.beside) {
    add_torque(section, other, units, "Also in force");
    section.rows.push_back({"", source_words(other.figure)});
    section.rows.push_back({"", "surfaces " + surfaces_words(other)});
  }
  section.rows.push_back({"Tighten", fmt::format("{}, {}", thread::turn_name(answer.tighten), joint.seen_from)});
  section.rows.push_back({"Undo", fmt::format("{}, {}", thread::turn_name(answer.undo), joint.seen_from)});
  if (joint.holding) section.rows.push_back({"Hold", *joint.holding});
  if (answer.stop)
    for (report::Row& row : report::stop_rows(*answer.stop, units))
      section.rows.push_back(std::move(row));
  if (joint.drive) section.rows.push_back({"Drive", *joint.drive});
  add_locks(section, answer);
  add_slot(section, answer, units);
  add_running(section, answer, units);
  add_heat(section, joint);
  if (figure.sequence || joint.quantity > 1) section.rows.push_back({"Sequence", sequence_words(answer, units)});
  if (answer.order)
    section.rows.push_back({"", fmt::format("computed order {} ({}, {})", report::order_words(answer.order->order),
                                            report::positions_words(answer.order->pattern), joint.seen_from)});
  if (figure.recheck.empty()) section.rows.push_back({"Recheck", "none given"});
  for (const RecheckRecord& recheck : figure.recheck)
    section.rows.push_back({&recheck == &figure.recheck.front() ? "Recheck" : "", recheck.words});
  if (figure.reuse) section.rows.push_back({"Use again", *figure.reuse});
  section.rows.push_back({"Fastener", fastener_words(answer)});
  if (answer.beside.empty()) section.rows.push_back({"Source", source_words(figure)});
  for (const FigureRecord& old : joint.superseded)
    section.rows.push_back({"Replaces", fmt::format("{} ({}, {}, {}){}", printed_and_meant(old), old.source.title,
                                                    old.source.edition, old.source.where,
                                                    figure.revised_because && &old == &joint.superseded.front()
                                                        ? ": " + *figure.revised_because
                                                        : "")});
  if (joint.machine.serial_from || joint.machine.serial_to)
    section.rows.push_back(
        {"Holds for", fmt::format("serial numbers {} to {}", joint.machine.serial_from.value_or("first"),
                                  joint.machine.serial_to.value_or("last"))});
  return section;
}

std::string loads_words(const tightening::ClampAnswer& clamp, const DisplayUnits& units) {
  const auto load = tightening::leading_preload(clamp);
  return fmt::format("{}{}", load ? quantity::write(*load, units) + " (low / likely / high); " : "",
                     report::verdict_text(clamp));
}

// What the other surfaces make of the figure, and the torque that clamps the same on them.
Section as_fitted_section(const JointAnswer& answer, const DisplayUnits& units) {
  const AsFitted& fitted = *answer.as_fitted;
  Section section{fmt::format("As fitted: {} ({})", fitted.surfaces, fitted.description), {}};
  if (!fitted.differs) {
    section.rows.push_back({"Torque", "the figure is for these surfaces: nothing is corrected"});
    return section;
  }
  if (fitted.clamp_at_figure) section.rows.push_back({"At the figure", loads_words(*fitted.clamp_at_figure, units)});
  if (!fitted.torque) {
    section.rows.push_back({"Torque", "no correction: " + fitted.no_correction_because});
    return section;
  }
  section.rows.push_back(
      {"Torque", fmt::format("{}, corrected once by the ratio of nut factors, {}; not the maker's",
                             in_units(*fitted.torque, units), quantity::write_number(*fitted.factor, 3))});
  if (fitted.by_thread_friction)
    section.rows.push_back(
        {"", fmt::format("by the likely thread friction it would be {}; the lesser is the careful one",
                         in_units(*fitted.by_thread_friction, units))});
  section.rows.push_back({"At that torque", loads_words(*fitted.clamp, units)});
  for (const RivalReduction& rival : fitted.rivals)
    section.rows.push_back(
        {&rival == &fitted.rivals.front() ? "Published" : "",
         fmt::format("× {}: {} ({}; {})", quantity::write_number(rival.published.factor, 3),
                     quantity::write(rival.torque, units), rival.published.rule, rival.published.source.title)});
  if (fitted.rivals.empty()) section.rows.push_back({"Published", "no factor for this change is in the tables"});
  section.rows.push_back({"", "what follows is for the corrected torque on what is fitted"});
  return section;
}

// Where several are in force, or other surfaces are asked about, each says which it is.
void add_clamp(report::Document& document, const JointAnswer& joint, const FigureAnswer& figure,
               const DisplayUnits& units) {
  if (!figure.clamp) return;
  Section section = report::clamp_section(*figure.clamp, units);
  std::string what = figure.figure.angle_deg ? "Snug load before the angle" : "Clamp load";
  if (!figure.unit_fits.empty()) what += " if it were meant as printed";
  if (joint.as_fitted) what += fmt::format(" of the figure on its own surfaces, {}", figure.figure.surfaces);
  if (!joint.beside.empty()) what += fmt::format(" at {}", figure.figure.printed);
  section.heading = what + " (low / likely / high)";
  if (const auto& face = figure.clamp->asked.face)
    section.rows.push_back({"Face", fmt::format("{} outside, {} inside ({})", quantity::write(face->outer, units, 4),
                                                quantity::write(face->inner, units, 4), face->basis)});
  section.rows.push_back({"Accuracy", fmt::format("± {} ({})", quantity::write_share(figure.clamp->accuracy.share),
                                                  figure.clamp->accuracy.basis)});
  document.sections.push_back(std::move(section));
}

// How the crank-reaction finding comes to the force on a piston stop.
Working stop_working(const JointAnswer& answer) {
  if (!answer.joint.on_crank || !answer.crank || !torque_on_crank(answer)) return {};
  crank::WorkingNames names{"as recorded", "workshop file", "for example", "example"};
  if (answer.stop) names.angle_formula = "of the stop on record", names.angle_source = "workshop file";
  return crank::lever_working(*answer.crank, answer.stop ? answer.stop->asked.before_top : k_stop_angle,
                              *torque_on_crank(answer), names);
}

// Sources of what the joint works in and of the published factors, each once.
void add_partner_sources(std::vector<Source>& sources, const JointAnswer& answer) {
  const auto add = [&](const Source& source) {
    if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
  };
  if (answer.around.tapped) std::ranges::for_each(answer.around.tapped->material.sources, add);
  if (answer.around.seat) std::ranges::for_each(answer.around.seat->sources, add);
  if (answer.around.nut) add(answer.around.nut->source);
  if (answer.figure.turned) std::ranges::for_each(joint::sources_of(answer.figure.turned->stack), add);
  if (!answer.as_fitted) return;
  if (answer.as_fitted->clamp) std::ranges::for_each(answer.as_fitted->clamp->asked.friction_sources, add);
  for (const RivalReduction& rival : answer.as_fitted->rivals)
    add(rival.published.source);
}

} // namespace

report::Document joint_report(const JointAnswer& answer, const DisplayUnits& units, bool invented) {
  report::Document document;
  document.title = fmt::format("{} / {} / {} [{}]", answer.joint.machine.name, answer.joint.assembly, answer.joint.name,
                               answer.joint.slug);
  if (invented) document.banner = k_invented;
  document.sections.push_back(glance(answer, units));
  add_clamp(document, answer, answer.figure, units);
  for (const FigureAnswer& other : answer.beside)
    add_clamp(document, answer, other, units);
  if (answer.as_fitted) document.sections.push_back(as_fitted_section(answer, units));
  if (answer.wrenches) document.sections.push_back(wrenches_section(answer, units));
  if (answer.figure.clamp) {
    document.working = answer.figure.turned ? answer.figure.turned->working : answer.figure.clamp->working;
    document.sources = report::sources_of(*answer.figure.clamp);
  }
  document.working.insert(document.working.end(), answer.around_working.begin(), answer.around_working.end());
  const Working stop = stop_working(answer);
  document.working.insert(document.working.end(), stop.begin(), stop.end());
  add_partner_sources(document.sources, answer);
  document.remarks = report::remarks_of(answer.findings, units);
  document.has_foot = true;
  return document;
}

} // namespace clampwright::specdb
