// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/tightening_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"

namespace clampwright::cli {

namespace {

using quantity::Band;
using quantity::in_megapascals;
using quantity::in_newton_metres;
using quantity::in_newtons;

Json force_band(const Band<quantity::Force>& band) {
  return band_json(quantity::map(band, [](quantity::Force force) { return in_newtons(force); }));
}

template<class Coefficient>
Json coefficient_band(const Band<Coefficient>& band) {
  return band_json(quantity::map(band, [](Coefficient c) { return c.value(); }));
}

Json share_band(const std::optional<Band<double>>& band) { return band ? band_json(*band) : Json(nullptr); }

Json strength_json(const strength::Strength& strength) {
  const auto stress = [](const std::optional<quantity::Stress>& s) {
    return s ? Json(in_megapascals(*s)) : Json(nullptr);
  };
  const auto force = [](const std::optional<quantity::Force>& f) { return f ? Json(in_newtons(*f)) : Json(nullptr); };
  return {{"class", strength.class_name},
          {"proof_stress_MPa", stress(strength.proof_stress)},
          {"yield_MPa", stress(strength.yield)},
          {"tensile_MPa", stress(strength.tensile)},
          {"proof_load_N", force(strength.proof_load)},
          {"yield_load_N", force(strength.yield_load)},
          {"tensile_load_N", force(strength.tensile_load)},
          {"proof_load_basis",
           strength.proof_load_basis ? Json(strength::load_basis_name(*strength.proof_load_basis)) : Json(nullptr)}};
}

Json nut_factor_json(const std::optional<tightening::NutFactorPart>& part) {
  if (!part) return nullptr;
  Json out{{"k", coefficient_band(part->k)},
           {"preload_N", force_band(part->preload)},
           {"use_of_proof", share_band(part->use_of_proof)}};
  if (part->torque) out["torque_N_m"] = torque_band(*part->torque);
  return out;
}

Json thread_friction_json(const std::optional<tightening::ThreadFrictionPart>& part) {
  if (!part) return nullptr;
  Json out{{"mu_thread", coefficient_band(part->mu_thread)},
           {"mu_head", coefficient_band(part->mu_head)},
           {"face_mean_diameter_mm", quantity::in_millimetres(part->face_mean_diameter)},
           {"preload_N", force_band(part->preload)},
           {"use_of_proof", share_band(part->use_of_proof)},
           {"use_of_yield", share_band(part->use_of_yield)},
           {"mu_at_yield", number_or_null(part->mu_at_yield)},
           {"share", {{"lift", part->share.lift}, {"thread", part->share.thread}, {"head", part->share.head}}}};
  if (part->torque) out["torque_N_m"] = torque_band(*part->torque);
  return out;
}

} // namespace

Json torque_band(const quantity::Band<quantity::Torque>& band) {
  return band_json(quantity::map(band, [](quantity::Torque torque) { return in_newton_metres(torque); }));
}

Json lock_json(const std::vector<friction::Lock>& locks) {
  std::string names;
  for (const friction::Lock& lock : locks)
    names += (names.empty() ? "" : " + ") + lock.name;
  return names.empty() ? Json(nullptr) : Json(names);
}

namespace {

// `thread` stands where it always stood among the keys; without one there is none.
Json clamp_members(const tightening::ClampAnswer& answer, const specdb::ThreadEntry* thread) {
  const auto governs = tightening::governs_name(answer.governed_by);
  Json out{{"torque_N_m", in_newton_metres(answer.torque)},
           {"wrench_accuracy", {{"share", answer.accuracy.share}, {"basis", answer.accuracy.basis}}}};
  if (thread) out["thread"] = thread_json(thread->thread, thread->stress_area_table, thread->limits);
  out.update(Json{{"kind", tightening::joint_kind_name(answer.asked.kind)},
                  {"surfaces", answer.asked.surfaces.empty() ? Json(nullptr) : Json(answer.asked.surfaces)},
                  {"face", answer.asked.face ? Json{{"outer_mm", quantity::in_millimetres(answer.asked.face->outer)},
                                                    {"inner_mm", quantity::in_millimetres(answer.asked.face->inner)},
                                                    {"basis", answer.asked.face->basis}}
                                             : Json(nullptr)},
                  {"lock", lock_json(answer.asked.locks)},
                  {"strength", strength_json(answer.asked.strength)},
                  {"nut_factor", nut_factor_json(answer.nut_factor)},
                  {"thread_friction", thread_friction_json(answer.thread_friction)},
                  {"verdict", tightening::verdict_name(answer.verdict)},
                  {"governed_by", governs.empty() ? Json(nullptr) : Json(governs)}});
  return out;
}

Json torque_members(const tightening::TorqueAnswer& answer, const specdb::ThreadEntry* thread) {
  Json out{{"preload_N", in_newtons(answer.preload)}, {"set_torque_N_m", in_newton_metres(answer.clamp.torque)}};
  out.update(clamp_members(answer.clamp, thread));
  return out;
}

} // namespace

Json clamp_json(const tightening::ClampAnswer& answer, const specdb::ThreadEntry& thread) {
  return clamp_members(answer, &thread);
}

Json torque_json(const tightening::TorqueAnswer& answer, const specdb::ThreadEntry& thread) {
  return torque_members(answer, &thread);
}

Json torque_json_without_thread(const tightening::TorqueAnswer& answer) { return torque_members(answer, nullptr); }

} // namespace clampwright::cli
