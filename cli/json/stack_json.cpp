// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/stack_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/tightening_json.hpp"
#include "cli/json/values_json.hpp"

namespace clampwright::cli {

namespace {

using quantity::Band;
using quantity::in_millimetres;

Json force_band(const Band<quantity::Force>& band) {
  return band_json(quantity::map(band, [](quantity::Force force) { return quantity::in_newtons(force); }));
}
Json force_band_or_null(const std::optional<Band<quantity::Force>>& band) {
  return band ? force_band(*band) : Json(nullptr);
}
Json share_band_or_null(const std::optional<Band<double>>& band) { return band ? band_json(*band) : Json(nullptr); }
Json resilience_band(const Band<quantity::Resilience>& band) {
  return band_json(
      quantity::map(band, [](quantity::Resilience one) { return quantity::in_millimetres_per_newton(one); }));
}
Json angle_band(const Band<quantity::Angle>& band) {
  return band_json(quantity::map(band, [](quantity::Angle angle) { return quantity::in_degrees(angle); }));
}

Json modulus_json(const joint::Modulus& modulus) {
  return {{"least_MPa", quantity::in_megapascals(modulus.least)},
          {"most_MPa", quantity::in_megapascals(modulus.most)},
          {"basis", modulus.words}};
}

} // namespace

Json stack_json(const joint::Stack& stack, const joint::StackResilience& resilience) {
  return {{"grip_mm", in_millimetres(stack.grip)},
          {"free_thread_mm",
           band_json(quantity::map(stack.free_thread, [](quantity::Length l) { return in_millimetres(l); }))},
          {"free_thread_basis", stack.free_thread_basis},
          {"into_part", stack.into_part},
          {"head_gives_over_d", stack.head_gives},
          {"face_mm", in_millimetres(stack.face)},
          {"hole_mm", in_millimetres(stack.hole)},
          {"part_outer_mm", stack.outer ? Json(in_millimetres(*stack.outer)) : Json(nullptr)},
          {"bolt_modulus", modulus_json(stack.bolt)},
          {"part_modulus", modulus_json(stack.part)},
          {"bolt_resilience_mm_per_N", resilience_band(resilience.bolt)},
          {"part_resilience_mm_per_N", resilience_band(resilience.parts)}};
}

Json added_json(const joint::AngleAnswer& answer) {
  const auto governs = tightening::governs_name(answer.governed_by);
  return {{"angle_deg", quantity::in_degrees(answer.angle)},
          {"added_N", force_band(answer.added)},
          {"snug_preload_N", force_band_or_null(answer.snug_load)},
          {"preload_N", force_band_or_null(answer.preload)},
          {"use_of_proof", share_band_or_null(answer.use_of_proof)},
          {"use_of_yield", share_band_or_null(answer.use_of_yield)},
          {"beyond_elastic", answer.beyond_elastic},
          {"verdict", tightening::verdict_name(answer.verdict)},
          {"governed_by", governs.empty() ? Json(nullptr) : Json(governs)},
          {"settling_mm", in_millimetres(answer.settling)},
          {"settling_loss_N", force_band(answer.settling_loss)},
          {"stack", stack_json(answer.stack, answer.resilience)}};
}

Json angle_json(const specdb::AngleReply& reply) {
  Json out = added_json(reply.answer);
  out["snug_torque_N_m"] = quantity::in_newton_metres(reply.answer.snug.torque);
  out["snug"] = clamp_json(reply.answer.snug, reply.thread);
  return out;
}

Json slot_json(const specdb::SlotReply& reply) {
  const joint::SlotAnswer& answer = reply.answer;
  return {{"angle_deg", quantity::in_degrees(answer.angle)},
          {"preload_gain_N", quantity::in_newtons(answer.gain.likely)},
          {"preload_gain_band_N", force_band(answer.gain)},
          {"torque_gain_N_m", torque_band(answer.more)},
          {"slots", answer.asked.slot_count},
          {"pin_holes", answer.asked.pin_holes},
          {"low_N_m", quantity::in_newton_metres(answer.asked.low)},
          {"high_N_m", quantity::in_newton_metres(answer.asked.high)},
          {"range_basis", answer.asked.range_basis},
          {"turn_from_low_to_high_deg", angle_band(answer.window)},
          {"slot_within", joint::meets_name(answer.meets)},
          {"chance", answer.chance},
          {"torque_at_next_slot_N_m", torque_band(answer.next)},
          {"preload_at_low_N", force_band_or_null(answer.preload_at_low)},
          {"preload_at_next_slot_N", force_band_or_null(answer.preload_at_next)},
          {"use_of_proof_at_next_slot", share_band_or_null(answer.use_of_proof_at_next)},
          {"half_a_slot_mm", in_millimetres(answer.half_a_slot)},
          {"stack", stack_json(answer.stack, answer.resilience)},
          {"clamp_at_low", clamp_json(answer.at_low, reply.thread)}};
}

} // namespace clampwright::cli
