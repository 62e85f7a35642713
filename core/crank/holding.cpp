// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/holding.hpp"

#include <algorithm>
#include <numbers>
#include <string>

namespace clampwright::crank {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Band;
using quantity::Force;
using quantity::Length;
using quantity::Torque;

const std::string k_lever = "force on a lever";

Torque slips_at(const PressFit& fit, double friction, quantity::Stress pressure) {
  const Force drag = friction * (pressure * (std::numbers::pi * fit.diameter * fit.length));
  return quantity::moment(drag, 0.5 * fit.diameter);
}

void add_press_fit(Working& working, const PressFit& fit) {
  const std::string given = "as given";
  const std::string source = "interference fit, elementary (from memory)";
  working.push_back({"d_p", "crank pin", given, quantity::in_millimetres(fit.diameter), "mm", given});
  working.push_back({"L_p", "length pressed into one web", given, quantity::in_millimetres(fit.length), "mm", given});
  working.push_back(
      {"p_f", "pressure of the fit, likely", given, quantity::in_megapascals(fit.pressure.likely), "MPa", given});
  working.push_back({"μ_f", "friction of the fit, likely", given, fit.friction.likely, "", given});
  working.push_back({"T_f", "torque at which the pin likely slips", "μ_f·p_f·π·d_p²·L_p/2000",
                     quantity::in_newton_metres(slip_torque(fit).likely), "N·m", source});
}

// All five, best first.
std::vector<HoldingWay> ranked_ways(const HoldCase& asked) {
  std::vector<HoldingWay> ways;
  int rank = 0;
  for (const Way way : {Way::same_end, Way::strap, Way::gear, Way::stop, Way::far_end})
    ways.push_back({way, ++rank, {}, {}});
  const auto of = [&](Way way) -> HoldingWay& { return *std::ranges::find(ways, way, &HoldingWay::way); };
  const Torque torque = greater_torque(asked);
  const OtherWays& others = asked.others;
  if (others.strap_radius) of(Way::strap).force = strap_force(torque, *others.strap_radius);
  if (others.gear_diameter) of(Way::gear).force = tooth_force(torque, *others.gear_diameter);
  if (asked.stop) of(Way::stop).force = stop_force(asked.stop->crank, asked.stop->before_top, torque);
  if (others.far_end) of(Way::far_end).slips_at = slip_torque(*others.far_end);
  return ways;
}

void add_far_end(HoldAnswer& out) {
  if (!out.asked.others.far_end) return;
  const Torque torque = greater_torque(out.asked);
  const Band<Torque> slip = slip_torque(*out.asked.others.far_end);
  const bool likely = torque >= slip.likely;
  const bool may = torque >= slip.low;
  if (may)
    out.findings.push_back(
        {Code::press_fit_slips, likely ? Severity::stop : Severity::mind, {torque, slip.low, slip.likely, slip.high}});
  if (out.asked.by != Way::far_end) return;
  out.verdict = likely ? HoldVerdict::over_limit : may ? HoldVerdict::may_exceed : HoldVerdict::within;
}

// How the forces of the other ways come about, at the torque that they must bear.
void add_working(HoldAnswer& out) {
  const std::string given = "as given";
  const OtherWays& others = out.asked.others;
  const Torque torque = greater_torque(out.asked);
  Working& working = out.working;
  if (others.strap_radius || others.gear_diameter)
    working.push_back({"T_h", "torque to be held, the greater of tightening and undoing", given,
                       quantity::in_newton_metres(torque), "N·m", given});
  if (others.strap_radius) {
    working.push_back(
        {"R_h", "radius of strap or pins", given, quantity::in_millimetres(*others.strap_radius), "mm", given});
    working.push_back({"F_h", "force on strap or pins", "T_h·1000/R_h",
                       quantity::in_newtons(strap_force(torque, *others.strap_radius)), "N", k_lever});
  }
  if (others.gear_diameter) {
    working.push_back(
        {"d_g", "pitch diameter of the gear", given, quantity::in_millimetres(*others.gear_diameter), "mm", given});
    working.push_back({"F_g", "force on one pair of teeth", "2·T_h·1000/d_g",
                       quantity::in_newtons(tooth_force(torque, *others.gear_diameter)), "N", k_lever});
  }
  if (others.far_end) add_press_fit(working, *others.far_end);
}

} // namespace

std::string_view way_name(Way way) {
  switch (way) {
  case Way::same_end:
    return "same-end";
  case Way::strap:
    return "strap";
  case Way::gear:
    return "gear";
  case Way::stop:
    return "stop";
  case Way::far_end:
    return "far-end";
  }
  return "";
}

Force strap_force(Torque torque, Length radius) { return torque / quantity::lever(radius); }

Force tooth_force(Torque torque, Length pitch_diameter) { return torque / quantity::lever(0.5 * pitch_diameter); }

Band<Torque> slip_torque(const PressFit& fit) {
  return {slips_at(fit, fit.friction.low, fit.pressure.low), slips_at(fit, fit.friction.likely, fit.pressure.likely),
          slips_at(fit, fit.friction.high, fit.pressure.high)};
}

Torque greater_torque(const HoldCase& asked) {
  return asked.undo_torque ? std::max(asked.torque, *asked.undo_torque) : asked.torque;
}

HoldAnswer hold(const HoldCase& asked) {
  HoldAnswer out;
  out.asked = asked;
  out.ways = ranked_ways(asked);
  if (asked.stop) {
    StopCase stop = *asked.stop;
    stop.torque = asked.torque;
    stop.undo_torque = asked.undo_torque;
    out.stop = hold_by_stop(stop);
    out.working = out.stop->working;
    out.findings = out.stop->findings;
    if (asked.by == Way::stop) out.verdict = out.stop->verdict;
  } else {
    out.findings.push_back({Code::crank_reaction, Severity::mind, {}});
  }
  add_far_end(out);
  add_working(out);
  out.findings.push_back({Code::maker_first, Severity::note, {}});
  finding::put_in_order(out.findings);
  return out;
}

} // namespace clampwright::crank
