// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/held_by_stop.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "core/crank/stop_working.hpp"
#include "core/thread/stripping.hpp"

namespace clampwright::crank {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Area;
using quantity::Force;
using quantity::Length;
using quantity::Torque;

Area disc(Length diameter) { return std::numbers::pi / 4.0 * diameter * diameter; }

double cos_incline(const StopCase& asked) { return asked.incline ? std::cos(quantity::in_radians(*asked.incline)) : 1; }

std::optional<Force> strips_at(const StopCase& asked) {
  if (!asked.plug || !asked.plug->shear) return std::nullopt;
  const PlugThread& plug = *asked.plug;
  return plug.bend_factor *
         thread::strip_load(thread::internal_strip_width(plug.thread, plug.limits), plug.engaged, *plug.shear);
}

StopLoads loads_of(const StopAnswer& answer, Torque torque) {
  const StopCase& asked = answer.asked;
  const CrankForces forces = crank_forces(asked.crank, asked.before_top, torque);
  const double b = asked.incline ? quantity::in_radians(*asked.incline) : 0.0;
  StopLoads out{
      torque, forces, forces.piston / std::cos(b), forces.piston * std::tan(b), forces.piston * std::sin(b), {},
      {},     {}};
  if (asked.tip_diameter) out.tip_pressure = out.along_stop / disc(*asked.tip_diameter);
  if (answer.plug_strips_at) out.plug_margin = *answer.plug_strips_at / out.along_stop;
  if (asked.crown && asked.tip_diameter)
    out.crown_bending = plate_bending(forces.piston, *asked.crown, 0.5 * *asked.tip_diameter);
  return out;
}

std::optional<Neighbour> neighbour_at(const StopCase& asked, Length below) {
  if (below <= Length() || below >= 2.0 * asked.crank.radius) return std::nullopt;
  const quantity::Angle angle = before_top(asked.crank, below);
  return Neighbour{below, angle, stop_force(asked.crank, angle, asked.torque)};
}

// Every limit comes down to a force along the bore; the lever makes a torque of it.
void add_limits(StopAnswer& out) {
  const StopLimits& limits = out.asked.limits;
  const double along_bore = cos_incline(out.asked);
  const auto add = [&](StopLimit limit, Force piston) {
    out.limits.push_back({limit, quantity::moment(piston, out.lever)});
  };
  if (limits.tip_pressure && out.asked.tip_diameter)
    add(StopLimit::tip_pressure, along_bore * (*limits.tip_pressure * disc(*out.asked.tip_diameter)));
  if (limits.plug_margin && out.plug_strips_at)
    add(StopLimit::plug_thread, along_bore * *out.plug_strips_at / *limits.plug_margin);
  if (limits.rod) add(StopLimit::rod, std::cos(quantity::in_radians(out.rod_angle)) * *limits.rod);
  if (limits.stop) add(StopLimit::stop, along_bore * *limits.stop);
  const auto least = std::ranges::min_element(out.limits, {}, &LimitTorque::torque);
  if (least != out.limits.end()) out.governs = *least;
}

// The torque that is held against the limits: undoing, where that is more.
Torque greater_torque(const StopCase& asked) {
  return asked.undo_torque ? std::max(asked.torque, *asked.undo_torque) : asked.torque;
}

bool strips(const StopAnswer& answer) {
  const auto does = [](const StopLoads& loads) { return loads.plug_margin && *loads.plug_margin < 1.0; };
  return does(answer.fitting) || (answer.undoing && does(*answer.undoing));
}

// A torque and the limit worked out from it differ by the last bits of the way there and back.
bool passes(Torque torque, const LimitTorque& limit) { return torque > (1.0 + 1e-12) * limit.torque; }

void add_verdict(StopAnswer& out) {
  if (out.governs) out.verdict = HoldVerdict::within;
  if (strips(out) || (out.governs && passes(greater_torque(out.asked), *out.governs)))
    out.verdict = HoldVerdict::over_limit;
}

void add_findings(StopAnswer& out) {
  const StopCase& asked = out.asked;
  auto& findings = out.findings;
  const bool undoing = out.undoing && out.undoing->torque > out.fitting.torque;
  const StopLoads& greater = undoing ? *out.undoing : out.fitting;
  findings.push_back({Code::crank_reaction, Severity::mind, {asked.before_top, greater.forces.piston, out.below_top}});
  const bool may_miss = !out.shorter || !out.longer;
  if (may_miss || out.over_least >= k_much_over_least)
    findings.push_back({Code::near_dead_centre,
                        may_miss ? Severity::stop : Severity::mind,
                        {out.below_top, out.fitting.forces.piston, out.least, out.least_at,
                         std::string(out.below_top < asked.crank.radius ? "top" : "bottom")}});
  if (strips(out)) {
    const bool fitting = *out.fitting.plug_margin < 1.0;
    const StopLoads& loads = fitting ? out.fitting : *out.undoing;
    findings.push_back({Code::plug_strips, Severity::stop, {loads.torque, loads.along_stop, *out.plug_strips_at}});
  }
  if (out.governs && passes(greater_torque(asked), *out.governs)) {
    const bool fitting = passes(asked.torque, *out.governs);
    findings.push_back({Code::stop_over_limit,
                        Severity::stop,
                        {fitting ? asked.torque : *asked.undo_torque, out.governs->torque,
                         std::string(limit_words(out.governs->limit)), std::string(fitting ? "" : "undoing")}});
  }
  if (out.ports == Ports::open)
    findings.push_back({Code::port_open, Severity::mind, {out.below_top, *asked.port_below_top}});
  if (!out.governs) findings.push_back({Code::stop_limit_not_stated, Severity::mind, {}});
}

} // namespace

std::string_view limit_name(StopLimit limit) {
  switch (limit) {
  case StopLimit::tip_pressure:
    return "tip-pressure";
  case StopLimit::plug_thread:
    return "plug-thread";
  case StopLimit::rod:
    return "rod";
  case StopLimit::stop:
    return "stop";
  }
  return "";
}

std::string_view limit_words(StopLimit limit) {
  switch (limit) {
  case StopLimit::tip_pressure:
    return "pressure under the tip";
  case StopLimit::plug_thread:
    return "plug thread";
  case StopLimit::rod:
    return "rod";
  case StopLimit::stop:
    return "stop";
  }
  return "";
}

std::string_view ports_name(Ports ports) {
  switch (ports) {
  case Ports::covered:
    return "covered";
  case Ports::open:
    return "open";
  case Ports::not_known:
    return "not-known";
  }
  return "";
}

std::string_view verdict_name(HoldVerdict verdict) {
  switch (verdict) {
  case HoldVerdict::within:
    return "within";
  case HoldVerdict::may_exceed:
    return "may-exceed";
  case HoldVerdict::over_limit:
    return "over-limit";
  case HoldVerdict::not_known:
    return "not-known";
  }
  return "";
}

StopAnswer hold_by_stop(const StopCase& asked) {
  StopAnswer out;
  out.asked = asked;
  out.rod_angle = rod_angle(asked.crank, asked.before_top);
  out.below_top = below_top(asked.crank, asked.before_top);
  out.lever = bore_lever(asked.crank, asked.before_top);
  out.least_at = angle_of_least_force(asked.crank);
  out.least = stop_force(asked.crank, out.least_at, asked.torque);
  out.plug_strips_at = strips_at(asked);
  out.fitting = loads_of(out, asked.torque);
  out.over_least = out.fitting.forces.piston / out.least;
  if (asked.undo_torque) out.undoing = loads_of(out, *asked.undo_torque);
  out.shorter = neighbour_at(asked, out.below_top - k_stop_doubt);
  out.longer = neighbour_at(asked, out.below_top + k_stop_doubt);
  if (asked.port_below_top) out.ports = out.below_top < *asked.port_below_top ? Ports::covered : Ports::open;
  add_limits(out);
  add_verdict(out);
  add_findings(out);
  out.working = stop_working(out);
  return out;
}

quantity::Stress plate_bending(Force load, const CrownPlate& plate, Length patch_radius) {
  constexpr double k_poisson = 0.33;
  const double t = quantity::in_metres(plate.thickness);
  const double r = quantity::in_metres(patch_radius);
  // A patch smaller than half the thickness spreads inside the plate.
  const double spread = r > 0.5 * t ? r : std::sqrt(1.6 * r * r + t * t) - 0.675 * t;
  const double radii = std::log(quantity::in_metres(plate.radius) / spread);
  return 1.5 / std::numbers::pi * (1.0 + k_poisson) * radii * (load / (plate.thickness * plate.thickness));
}

} // namespace clampwright::crank
