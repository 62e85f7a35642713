// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/strip_json.hpp"

#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "core/joint/surroundings.hpp"

namespace clampwright::cli {

namespace {

using quantity::in_millimetres;
using quantity::in_newtons;

Json newtons_or_null(const std::optional<quantity::Force>& load) {
  return load ? Json(in_newtons(*load)) : Json(nullptr);
}
Json mm_or_null(const std::optional<quantity::Length>& length) {
  return length ? Json(in_millimetres(*length)) : Json(nullptr);
}
Json MPa_or_null(const std::optional<quantity::Stress>& stress) {
  return stress ? Json(quantity::in_megapascals(*stress)) : Json(nullptr);
}
Json gives_or_null(const std::optional<joint::Gives>& gives) {
  return gives ? Json(joint::gives_name(*gives)) : Json(nullptr);
}

Json insert_json(const joint::StripAnswer& answer) {
  if (!answer.asked.insert) return nullptr;
  const joint::Insert& insert = *answer.asked.insert;
  const bool wire = insert.kind == joint::InsertKind::wire;
  Json lengths = Json::array();
  for (const double multiple : joint::insert_lengths()) {
    const quantity::Length made = multiple * answer.asked.thread.diameter;
    const bool bears = made > answer.asked.incomplete;
    lengths.push_back({{"over_d", multiple},
                       {"length_mm", in_millimetres(made)},
                       {"governed_by", gives_or_null(bears ? joint::loads_at(answer, made).first : std::nullopt)}});
  }
  return {{"kind", wire ? "wire" : "keyed"},
          {"outer_thread", wire ? Json(nullptr) : Json(insert.outer.designation)},
          {"outer_least_diameter_mm", in_millimetres(insert.outer_limits.d_min)},
          {"lengths", std::move(lengths)}};
}

Json published_json(const specdb::StripReply& reply) {
  Json out = Json::array();
  for (const auto& rule : reply.published)
    out.push_back({{"rule", rule.words},
                   {"over_d", rule.over_diameter},
                   {"length_mm", in_millimetres(rule.over_diameter * reply.answer.asked.thread.diameter)},
                   {"note", rule.note.empty() ? Json(nullptr) : Json(rule.note)},
                   {"source", source_json(rule.source)}});
  return out;
}

Json torque_json_of(const specdb::StripReply& reply) {
  if (!reply.clamp) return nullptr;
  const auto load = joint::graver_load(*reply.clamp);
  const auto& part = reply.answer.loads.part_thread;
  const auto band = [&](auto value) { return load ? band_json(quantity::map(*load, value)) : Json(nullptr); };
  return {{"torque_N_m", quantity::in_newton_metres(reply.clamp->torque)},
          {"preload_N", band([](quantity::Force force) { return in_newtons(force); })},
          {"use_of_part_thread",
           part ? band([&](quantity::Force force) -> double { return force / *part; }) : Json(nullptr)}};
}

} // namespace

Json strip_json(const specdb::StripReply& reply) {
  const joint::StripAnswer& answer = reply.answer;
  const joint::StripCase& asked = answer.asked;
  Json out;
  out["thread"] = thread_json(reply.thread.thread, reply.thread.stress_area_table, reply.thread.limits);
  out["class"] = asked.bolt.class_name;
  out["material"] = asked.part.name;
  out["material_description"] = asked.part.description;
  out["shear_strength_MPa"] = MPa_or_null(asked.part.shear_strength);
  out["shear_strength_highest_MPa"] = MPa_or_null(asked.part.shear_highest);
  out["insert"] = insert_json(answer);
  out["length_mm"] = mm_or_null(asked.length);
  out["incomplete_mm"] = in_millimetres(asked.incomplete);
  out["bearing_mm"] = mm_or_null(answer.bearing);
  out["bolt_strip_area_mm2_per_mm"] = in_millimetres(answer.bolt_width);
  out["nut_strip_area_mm2_per_mm"] = in_millimetres(answer.part_width);
  out["basic_sizes_overstate"] = {{"bolt", answer.bolt_overstated}, {"nut", answer.part_overstated}};
  out["bolt_shear_ratio"] = asked.bolt_shear ? Json(asked.bolt_shear->share) : Json(nullptr);
  out["strength_ratio"] = number_or_null(answer.strength_ratio);
  out["c2"] = answer.c2;
  out["c3"] = answer.c3;
  out["bolt_strip_N"] = newtons_or_null(answer.loads.bolt_thread);
  out["bolt_strip_highest_N"] = newtons_or_null(answer.loads.bolt_thread_highest);
  out["nut_strip_N"] = newtons_or_null(answer.loads.part_thread);
  out["bolt_break_N"] = newtons_or_null(answer.bolt_break);
  out["bolt_break_highest_N"] = newtons_or_null(answer.bolt_break_highest);
  out["length_needed_mm"] = mm_or_null(answer.needed);
  out["length_needed_bearing_mm"] =
      answer.needed ? Json(in_millimetres(*answer.needed - asked.incomplete)) : Json(nullptr);
  out["length_needed_over_d"] =
      answer.needed ? Json(static_cast<double>(*answer.needed / asked.thread.diameter)) : Json(nullptr);
  out["length_needed_weakest_bolt_mm"] = mm_or_null(answer.needed_with_weakest);
  out["length_needed_highest_shear_mm"] = mm_or_null(answer.needed_at_highest_shear);
  out["governed_by"] = gives_or_null(answer.loads.first);
  out["governed_by_weakest_bolt"] = gives_or_null(answer.loads.first_with_weakest);
  out["margin"] = number_or_null(answer.loads.margin);
  out["published"] = published_json(reply);
  out["clamp"] = torque_json_of(reply);
  return out;
}

} // namespace clampwright::cli
