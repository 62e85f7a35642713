// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/hold_question.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/joint/strip.hpp"
#include "core/quantity/write.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/hold_reading.hpp"
#include "specdb/question/known_limits.hpp"

namespace clampwright::specdb {

namespace {

using crank::Way;
using quantity::Length;

constexpr const char* k_example = "clampwright hold --torque 30Nm --stroke 50mm --rod 100mm --angle 45deg";

std::string mm(Length length) { return quantity::write_number(quantity::in_millimetres(length), 5) + " mm"; }

// Names what is missing, and where it was looked for.
Refusal missing(const HoldQuestion& q, const HoldReading& reading, const std::vector<std::string>& options,
                std::string hint) {
  const std::string names = fmt::format("{}", fmt::join(options, ", "));
  const char* verb = options.size() > 1 ? "are" : "is";
  std::string message = q.machine.empty()
                            ? fmt::format("{} {} missing", names, verb)
                            : fmt::format("{} {} missing: neither typed nor on record for {}", names, verb, q.machine);
  if (!reading.understood.empty()) message += fmt::format("; understood: {}", fmt::join(reading.understood, ", "));
  return refuse(Trouble::usage, "missing", std::move(message), {}, std::move(hint), options.front());
}

bool says_stop(const HoldQuestion& q) {
  return std::ranges::any_of(std::array{&q.stroke, &q.rod, &q.angle, &q.below_tdc, &q.stop_length, &q.crown_depth,
                                        &q.tip_diameter, &q.port_depth, &q.plug_thread, &q.plug_engaged,
                                        &q.plug_material, &q.stop_incline, &q.crown_thickness, &q.crown_radius,
                                        &q.tip_limit, &q.plug_margin, &q.rod_limit, &q.stop_limit},
                             [](const MaybeText* text) { return text->has_value(); });
}

constexpr const char* k_place = "say where the piston meets the stop in one of three ways: --angle 45deg before top "
                                "dead centre, --below-tdc 9mm, or --stop-length 23mm with --crown-depth 14mm";

// One way to say where the piston stands, whole.
Result<void> check_place(const HoldQuestion& q, const HoldReading& reading) {
  std::vector<std::string> ways;
  if (q.angle) ways.emplace_back("--angle");
  if (q.below_tdc) ways.emplace_back("--below-tdc");
  if (q.stop_length || q.crown_depth) ways.emplace_back(q.stop_length ? "--stop-length" : "--crown-depth");
  if (ways.size() > 1)
    return refuse(Trouble::usage, "surplus",
                  fmt::format("{} each say where the piston stands; understood: {}", fmt::join(ways, " and "),
                              fmt::join(reading.understood, ", ")),
                  {}, "give one of them: --angle, --below-tdc, or --stop-length with --crown-depth", ways.back());
  if (ways.empty()) return missing(q, reading, {"--angle, --below-tdc or --stop-length"}, k_place);
  if (q.stop_length && !q.crown_depth)
    return missing(q, reading, {"--crown-depth"},
                   "a stop length says nothing without it: give how deep the crown lies below the seat of the plug at "
                   "top dead centre, like --crown-depth 14mm");
  if (q.crown_depth && !q.stop_length)
    return missing(q, reading, {"--stop-length"},
                   "a crown depth says nothing without it: give how far the stop reaches into the cylinder from the "
                   "seat of the plug, like --stop-length 23mm");
  return {};
}

Result<crank::SliderCrank> slider_crank(const HoldQuestion& q, const HoldReading& reading) {
  std::vector<std::string> options;
  if (!reading.stroke) options.emplace_back("--stroke");
  if (!reading.rod) options.emplace_back("--rod");
  if (!options.empty())
    return missing(q, reading, options, fmt::format("give stroke and rod, centre to centre, like {}", k_example));
  const crank::SliderCrank crank{0.5 * *reading.stroke, *reading.rod};
  if (crank.rod <= crank.radius)
    return not_understood("out-of-range",
                          fmt::format("a rod of {} on a stroke of {} was understood: it must be longer than the crank "
                                      "radius of {}",
                                      mm(crank.rod), mm(*reading.stroke), mm(crank.radius)),
                          *q.rod, "measure the rod from the middle of the pin to the middle of the crank pin", "--rod");
  return crank;
}

Result<quantity::Angle> angle_of(const HoldQuestion& q, const HoldReading& reading, const crank::SliderCrank& crank) {
  if (reading.angle) return *reading.angle;
  const Length stroke = 2.0 * crank.radius;
  if (reading.below_tdc) {
    if (*reading.below_tdc >= stroke)
      return not_understood(
          "out-of-range",
          fmt::format("{} below the top was understood; the stroke is {}", mm(*reading.below_tdc), mm(stroke)),
          *q.below_tdc, "give a way between 0 and the stroke, like --below-tdc 9mm", "--below-tdc");
    return crank::before_top(crank, *reading.below_tdc);
  }
  const Length below = *reading.stop_length - *reading.crown_depth;
  const std::string understood = fmt::format("a stop of {} and a crown {} deep were understood",
                                             mm(*reading.stop_length), mm(*reading.crown_depth));
  if (below <= Length())
    return not_understood(
        "out-of-range",
        fmt::format("{}: the stop ends {} above the crown's top position and does not meet the piston", understood,
                    mm(-below)),
        *q.stop_length, "both are measured from the seat of the plug; a longer stop is needed", "--stop-length");
  if (below >= stroke)
    return not_understood("out-of-range",
                          fmt::format("{}: the piston would stand {} below its top position, and the stroke is {}",
                                      understood, mm(below), mm(stroke)),
                          *q.stop_length, "both are measured from the seat of the plug", "--stop-length");
  return crank::before_top(crank, below);
}

// A tip limit, and a crown as a plate, need the tip.
Result<void> add_tip(const HoldQuestion& q, const HoldReading& reading, crank::StopCase& out) {
  out.tip_diameter = reading.tip_diameter;
  out.limits.tip_pressure = reading.tip_limit;
  const bool plate = reading.crown_thickness || reading.crown_radius;
  if (reading.tip_limit && !reading.tip_diameter)
    return missing(q, reading, {"--tip-diameter"},
                   "a pressure under the tip needs its diameter, like --tip-diameter 8mm");
  if (!plate) return {};
  std::vector<std::string> options;
  if (!reading.crown_thickness) options.emplace_back("--crown-thickness");
  if (!reading.crown_radius) options.emplace_back("--crown-radius");
  if (!reading.tip_diameter) options.emplace_back("--tip-diameter");
  if (!options.empty())
    return missing(q, reading, options, "the bending of a crown needs its thickness, its radius and the tip");
  if (*reading.crown_radius <= 0.5 * *reading.tip_diameter)
    return not_understood("out-of-range",
                          fmt::format("a crown of {} radius is no wider than the tip of {}", mm(*reading.crown_radius),
                                      mm(*reading.tip_diameter)),
                          *q.crown_radius, "give the radius of the crown where it is held by the skirt",
                          "--crown-radius");
  out.crown = crank::CrownPlate{*reading.crown_thickness, *reading.crown_radius};
  return {};
}

Result<void> add_plug(const Catalogue& catalogue, const HoldQuestion& q, const HoldReading& reading,
                      crank::StopCase& out, HoldReply& reply) {
  if (!q.plug_thread && !q.plug_engaged && !q.plug_material && !q.plug_margin) return {};
  std::vector<std::string> options;
  if (!q.plug_thread) options.emplace_back("--plug-thread");
  if (!q.plug_engaged) options.emplace_back("--plug-engaged");
  if (!q.plug_material) options.emplace_back("--plug-material");
  if (!options.empty())
    return missing(q, reading, options,
                   "the plug thread needs all three, like --plug-thread M14x1.25 --plug-engaged 10mm --plug-material "
                   "cast-aluminium");
  const auto entry = find_thread(catalogue, *q.plug_thread);
  if (!entry) return in_field(entry.error(), "--plug-thread");
  const auto limits = known_limits(*entry, *q.plug_thread, "--plug-thread");
  if (!limits) return Refusal(limits.error());
  const auto material = find_material(catalogue, *q.plug_material);
  if (!material) return in_field(material.error(), "--plug-material");
  if (q.plug_margin && !material->shear_strength)
    return refuse(Trouble::no_such, "no-strength",
                  fmt::format("no shear strength of {} is known, so a margin cannot be kept", material->description),
                  *q.plug_material, "leave --plug-margin out, and limit the force with --stop-limit",
                  "--plug-material");
  out.plug = crank::PlugThread{entry->thread, *limits, *reading.plug_engaged, material->shear_strength,
                               joint::part_thread_factor(1.0)}; // the stop is taken to be stronger than the head
  out.limits.plug_margin = reading.plug_margin;
  reply.plug_material = material->name;
  reply.sources.push_back({"FED-STD-H28/2, strip areas of screw threads", "", "", Known::memory});
  reply.sources.push_back(limits->source);
  if (!material->shear_strength) return {};
  reply.sources.push_back(material->sources.front());
  if (material->sources.front().known == Known::memory)
    reply.answer.findings.push_back({finding::Code::value_from_memory,
                                     finding::Severity::mind,
                                     {"the shear strength of " + material->description, *material->shear_strength}});
  return {};
}

Result<crank::StopCase> stop_case(const Catalogue& catalogue, const HoldQuestion& q, const HoldReading& reading,
                                  HoldReply& reply) {
  crank::StopCase out;
  const auto crank = slider_crank(q, reading);
  if (!crank) return Refusal(crank.error());
  out.crank = *crank;
  if (const auto place = check_place(q, reading); !place) return Refusal(place.error());
  const auto angle = angle_of(q, reading, *crank);
  if (!angle) return Refusal(angle.error());
  out.before_top = *angle;
  out.torque = *reading.torque;
  out.undo_torque = reading.undo_torque;
  if (reading.port_depth && *reading.port_depth >= *reading.stroke)
    return not_understood(
        "out-of-range",
        fmt::format("a port at {} was understood; the stroke is {}", mm(*reading.port_depth), mm(*reading.stroke)),
        *q.port_depth, "give how far the crown goes down until the highest port opens", "--port-depth");
  out.port_below_top = reading.port_depth;
  out.incline = reading.stop_incline;
  out.limits.rod = reading.rod_limit;
  out.limits.stop = reading.stop_limit;
  if (const auto tip = add_tip(q, reading, out); !tip) return Refusal(tip.error());
  if (const auto plug = add_plug(catalogue, q, reading, out, reply); !plug) return Refusal(plug.error());
  return out;
}

Result<std::optional<crank::PressFit>> press_fit(const HoldQuestion& q, const HoldReading& reading) {
  const bool said = reading.pin_diameter || reading.pin_length || reading.pin_pressure || reading.pin_friction;
  if (!said && reading.by != Way::far_end) return std::optional<crank::PressFit>();
  std::vector<std::string> options;
  if (!reading.pin_diameter) options.emplace_back("--pin-diameter");
  if (!reading.pin_length) options.emplace_back("--pin-length");
  if (!reading.pin_pressure) options.emplace_back("--pin-pressure");
  if (!reading.pin_friction) options.emplace_back("--pin-friction");
  if (!options.empty())
    return missing(q, reading, options,
                   "nothing is assumed for a press fit: give all four, like --pin-diameter 20mm --pin-length 15mm "
                   "--pin-pressure 80..120MPa --pin-friction 0.10..0.15..0.20");
  return std::optional(
      crank::PressFit{*reading.pin_diameter, *reading.pin_length, *reading.pin_pressure, *reading.pin_friction});
}

Result<crank::HoldCase> hold_case(const Catalogue& catalogue, const HoldQuestion& q, const HoldReading& reading,
                                  HoldReply& reply) {
  if (!reading.torque) return missing(q, reading, {"--torque"}, fmt::format("write it like {}", k_example));
  crank::HoldCase out;
  out.by = reading.by;
  out.torque = *reading.torque;
  out.undo_torque = reading.undo_torque;
  out.turns = q.turns;
  out.on_record = q.holding;
  if (out.by == Way::strap && !reading.strap_radius)
    return missing(q, reading, {"--strap-radius"}, "give where the strap or the pins pull, like --strap-radius 60mm");
  if (out.by == Way::gear && !reading.gear_diameter)
    return missing(q, reading, {"--gear-diameter"}, "give the pitch diameter of the gear, like --gear-diameter 54mm");
  out.others.strap_radius = reading.strap_radius;
  out.others.gear_diameter = reading.gear_diameter;
  const auto fit = press_fit(q, reading);
  if (!fit) return Refusal(fit.error());
  out.others.far_end = *fit;
  if (out.by != Way::stop && !says_stop(q)) return out;
  auto stop = stop_case(catalogue, q, reading, reply);
  if (!stop) return Refusal(stop.error());
  out.stop = std::move(*stop);
  return out;
}

void add_sources(HoldReply& reply) {
  const crank::HoldCase& asked = reply.answer.asked;
  auto& sources = reply.sources;
  if (asked.stop)
    sources.insert(sources.begin(), {"Statics of the slider-crank without offset and friction", "",
                                     "virtual work gives the same", Known::computed});
  if (asked.stop && asked.stop->crown)
    sources.push_back({"Roark, Formulas for stress and strain", "", "flat circular plate, edge held", Known::memory});
  if (asked.others.strap_radius || asked.others.gear_diameter)
    sources.push_back({"Force on a lever", "", "T/R, 2·T/d", Known::computed});
  if (asked.others.far_end) sources.push_back({"Interference fit, elementary", "", "T = μ·p·π·d²·L/2", Known::memory});
  sources.push_back({"Ranking of the ways to hold a crank by their load path", "", "", Known::common_practice});
}

// A number of the record as a person would have typed it; the shortest text that reads back as the same number.
MaybeText typed(const std::optional<double>& value, const char* unit) {
  if (!value) return std::nullopt;
  return fmt::format("{}{}", *value, unit);
}

void fill(MaybeText& text, const MaybeText& from_record) {
  if (!text) text = from_record;
}

} // namespace

Result<HoldReply> answer_hold(const Catalogue& catalogue, const HoldQuestion& question) {
  const auto reading = read_hold(question);
  if (!reading) return Refusal(reading.error());
  HoldReply reply;
  const auto asked = hold_case(catalogue, question, *reading, reply);
  if (!asked) return Refusal(asked.error());
  finding::Findings more = std::move(reply.answer.findings);
  if (reading->mass_as_force) more.push_back({finding::Code::mass_as_force, finding::Severity::note, {}});
  reply.answer = crank::hold(*asked);
  reply.answer.findings.insert(reply.answer.findings.end(), more.begin(), more.end());
  finding::put_in_order(reply.answer.findings);
  add_sources(reply);
  return reply;
}

HoldQuestion with_record(HoldQuestion q, const MachineRecord& machine) {
  q.machine = machine.name;
  const bool place_typed = q.angle || q.below_tdc || q.stop_length || q.crown_depth;
  const bool place_on_record = machine.stop_length_mm && machine.crown_depth_mm;
  const bool by_stop = !q.by || *q.by == crank::way_name(Way::stop);
  // Another way was asked about, and the stop cannot be told: nothing of it is looked for.
  const bool can_tell =
      (q.stroke || machine.stroke_mm) && (q.rod || machine.rod_mm) && (place_typed || place_on_record);
  if (!by_stop && !says_stop(q) && !can_tell) return q;
  fill(q.stroke, typed(machine.stroke_mm, "mm"));
  fill(q.rod, typed(machine.rod_mm, "mm"));
  if (!q.angle && !q.below_tdc) {
    fill(q.stop_length, typed(machine.stop_length_mm, "mm"));
    fill(q.crown_depth, typed(machine.crown_depth_mm, "mm"));
  }
  fill(q.port_depth, typed(machine.port_below_top_mm, "mm"));
  fill(q.tip_diameter, typed(machine.stop_tip_mm, "mm"));
  if (q.tip_diameter) fill(q.tip_limit, typed(machine.stop_tip_limit_MPa, "MPa"));
  const bool plug_typed = q.plug_thread || q.plug_engaged || q.plug_material || q.plug_margin;
  const bool plug_whole = (q.plug_thread || machine.plug_thread) && (q.plug_engaged || machine.plug_reach_mm) &&
                          (q.plug_material || machine.head_material);
  if (plug_typed || plug_whole) {
    fill(q.plug_thread, machine.plug_thread);
    fill(q.plug_engaged, typed(machine.plug_reach_mm, "mm"));
    fill(q.plug_material, machine.head_material);
  }
  return q;
}

std::optional<HoldReply> recorded_stop(const Catalogue& catalogue, const MachineRecord& machine,
                                       quantity::Torque torque) {
  if (!machine.stroke_mm || !machine.rod_mm || !machine.stop_length_mm || !machine.crown_depth_mm) return std::nullopt;
  HoldQuestion q;
  q.torque = typed(quantity::in_newton_metres(torque), "N.m");
  auto reply = answer_hold(catalogue, with_record(std::move(q), machine));
  if (!reply) return std::nullopt;
  return std::move(*reply);
}

} // namespace clampwright::specdb
