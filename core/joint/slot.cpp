// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/slot.hpp"

#include <algorithm>
#include <numeric>

#include "core/tightening/lever.hpp"

namespace clampwright::joint {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Band;
using quantity::Force;
using quantity::in_degrees;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::Torque;
using quantity::TorquePerForce;

// Torque for each newton, rising, by the model that leads the clamp load.
Band<TorquePerForce> lever_band(const tightening::ClampAnswer& clamp) {
  const thread::Thread& thread = clamp.asked.thread;
  if (const auto& part = clamp.thread_friction) {
    const auto at = [&](friction::FrictionCoefficient in_thread, friction::FrictionCoefficient under_head) {
      return tightening::thread_lever(thread, in_thread) + tightening::head_lever(part->face_mean_diameter, under_head);
    };
    return {at(part->mu_thread.low, part->mu_head.low), at(part->mu_thread.likely, part->mu_head.likely),
            at(part->mu_thread.high, part->mu_head.high)};
  }
  return quantity::map(clamp.nut_factor->k,
                       [&](friction::NutFactor k) { return tightening::nut_factor_lever(thread, k); });
}

void add_findings(SlotAnswer& out) {
  // The pin may go in anywhere up to the high torque, so that one is judged; what is too little shows at the low one.
  out.findings = out.at_high.findings;
  const auto is_low = [](const finding::Finding& one) { return one.code == Code::low_preload; };
  if (std::ranges::none_of(out.findings, is_low))
    std::ranges::copy_if(out.at_low.findings, std::back_inserter(out.findings), is_low);
  if (out.meets != Meets::surely)
    out.findings.push_back(
        {Code::slot_may_miss, Severity::mind, {out.asked.low, out.asked.high, out.angle, out.half_a_slot}});
  finding::put_in_order(out.findings);
}

void add_working(SlotAnswer& out, const Band<TorquePerForce>& lever) {
  out.working = out.at_low.working;
  const Working stack = stack_working(out.stack, out.resilience);
  out.working.insert(out.working.end(), stack.begin(), stack.end());
  const std::string turn = "a turn of the nut is a shortening by its pitch";
  out.working.push_back({"θ", "angle from slot to slot", "360/lcm(slots, 2·holes)", in_degrees(out.angle), "°",
                         "geometry of nut and pin"});
  out.working.push_back(
      {"F_a", "clamp load that it adds, likely", "θ/360·P/δ", in_newtons(out.gain.likely), "N", turn});
  out.working.push_back({"l", "torque for each newton of clamp load, likely",
                         out.at_low.thread_friction ? "l_t + l_h" : "K times the diameter",
                         quantity::in_millimetres(lever.likely), "N·mm/N", "as for the clamp load"});
  out.working.push_back({"T_a", "torque for that load, likely", "F_a·l/1000", in_newton_metres(out.more.likely), "N·m",
                         "as for the clamp load"});
  out.working.push_back({"T_low", "low end of the torque", out.asked.range_basis, in_newton_metres(out.asked.low),
                         "N·m", out.asked.range_basis});
  out.working.push_back({"T_high", "high end of the torque", out.asked.range_basis, in_newton_metres(out.asked.high),
                         "N·m", out.asked.range_basis});
  out.working.push_back({"θ_w", "turn from one to the other, likely", "(T_high - T_low)·1000/l·δ/P·360",
                         in_degrees(out.window.likely), "°", turn});
}

} // namespace

std::string_view meets_name(Meets meets) {
  switch (meets) {
  case Meets::surely:
    return "sure";
  case Meets::likely:
    return "likely";
  case Meets::by_chance:
    return "by-chance";
  }
  return "";
}

quantity::Angle slot_angle(int slot_count, int pin_holes) {
  return quantity::degrees(360.0 / std::lcm(slot_count, 2 * pin_holes));
}

SlotAnswer slot_window(const SlotCase& asked, const tightening::ClampAnswer& at_low,
                       const tightening::ClampAnswer& at_high, const Stack& stack) {
  SlotAnswer out;
  out.asked = asked;
  out.at_low = at_low;
  out.at_high = at_high;
  out.stack = stack;
  out.resilience = resilience_of(stack);
  out.angle = slot_angle(asked.slot_count, asked.pin_holes);
  const auto both = out.resilience.both();
  const auto lever = lever_band(at_low);
  const auto gain = [&](quantity::Resilience whole) { return load_of_turn(out.angle, stack.thread, whole); };
  out.gain = {gain(both.high), gain(both.likely), gain(both.low)};
  out.more = {out.gain.low * lever.low, out.gain.likely * lever.likely, out.gain.high * lever.high};
  out.next = quantity::map(out.more, [&](Torque more) { return asked.low + more; });
  const auto turn = [&](TorquePerForce l, quantity::Resilience whole) {
    const Force load = (asked.high - asked.low) / l;
    return static_cast<double>(load * whole / stack.thread.pitch) * quantity::one_turn();
  };
  out.window = {turn(lever.high, both.low), turn(lever.likely, both.likely), turn(lever.low, both.high)};
  out.meets = out.window.low >= out.angle      ? Meets::surely
              : out.window.likely >= out.angle ? Meets::likely
                                               : Meets::by_chance;
  out.chance = std::min(1.0, static_cast<double>(out.window.likely / out.angle));
  out.half_a_slot = static_cast<double>(out.angle / quantity::one_turn()) / 2.0 * stack.thread.pitch;
  out.preload_at_low = tightening::leading_preload(at_low);
  if (out.preload_at_low)
    out.preload_at_next =
        Band<Force>{out.preload_at_low->low + out.gain.low, out.preload_at_low->likely + out.gain.likely,
                    out.preload_at_low->high + out.gain.high};
  const auto& proof = at_low.asked.strength.proof_load;
  if (out.preload_at_next && proof && at_low.asked.kind == tightening::JointKind::bolt)
    out.use_of_proof_at_next = quantity::map(*out.preload_at_next, [&](Force load) -> double { return load / *proof; });
  add_findings(out);
  add_working(out, lever);
  return out;
}

} // namespace clampwright::joint
