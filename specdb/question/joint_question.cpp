// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/joint_question.hpp"

#include "core/joint/strip.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/thread/stripping.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/nuts.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/sql/error.hpp"

namespace clampwright::specdb {

namespace {

thread::Turn turn_named(const std::string& name) {
  return name == "clockwise" ? thread::Turn::clockwise : thread::Turn::anticlockwise;
}

Result<void> add_tapped(const Catalogue& catalogue, const JointRecord& joint, const ResolvedCase& resolved,
                        joint::Surroundings& around) {
  if (!joint.mating_material || !joint.engagement || !resolved.thread.limits) return {};
  const auto material = find_material(catalogue, *joint.mating_material);
  if (!material) return Refusal(material.error());
  const auto engagement = quantity::read_length(*joint.engagement);
  if (!engagement) return in_field(engagement.error(), "engagement");
  const thread::Limits& limits = *resolved.thread.limits;
  joint::StripCase strip;
  strip.thread = resolved.asked.thread;
  strip.limits = limits;
  strip.bolt = resolved.asked.strength;
  if (strip.bolt.tensile) strip.bolt_shear = find_bolt_shear(catalogue, strip.bolt.class_name);
  strip.part = *material;
  around.tapped = joint::TappedPart{joint.mating_part.value_or("part"),
                                    *material,
                                    *engagement,
                                    thread::internal_strip_width(resolved.asked.thread, limits),
                                    limits.d_min,
                                    limits.D2_max,
                                    joint::strip(strip).c3};
  return {};
}

} // namespace

CaseQuestion question_of(const JointRecord& joint, const FigureRecord& figure) {
  CaseQuestion q;
  q.thread = joint.thread;
  q.strength_class = joint.strength_class;
  if (figure.friction)
    q.mu = figure.friction;
  else
    q.surfaces = figure.surfaces;
  q.kind = joint.kind;
  q.head = joint.head;
  q.washer = joint.washer;
  q.face_outer = joint.face_outer;
  q.face_inner = joint.face_inner;
  for (const LockRecord& lock : joint.locks)
    q.locks.push_back(lock.lock);
  if (joint.turned == "nut" && !joint.face_outer) q.turned = "nut";
  q.running_torque = joint.running_torque;
  q.mating_material = joint.mating_material;
  q.soft_material = joint.soft_material;
  q.angle_follows = figure.angle_deg.has_value();
  return q;
}

std::optional<quantity::Torque> torque_of(const std::optional<double>& value, const FigureRecord& figure) {
  if (!value || !figure.unit) return std::nullopt;
  return quantity::newton_metres(quantity::to_si(*value, quantity::unit_named(*figure.unit)));
}

std::optional<crank::SliderCrank> crank_of(const MachineRecord& machine) {
  if (!machine.stroke_mm || !machine.rod_mm) return std::nullopt;
  return crank::SliderCrank{quantity::millimetres(*machine.stroke_mm / 2.0), quantity::millimetres(*machine.rod_mm)};
}

Result<joint::Nut> nut_of(const Catalogue& catalogue, std::string_view nut_class, const thread::Thread& thread) {
  const auto pairing = find_nut_pairing(catalogue, nut_class);
  if (!pairing) return Refusal(pairing.error());
  joint::Nut nut{pairing->nut_class, pairing->highest_bolt_class, pairing->source};
  if (nut.highest_bolt_class)
    if (const auto highest = find_strength(catalogue, *nut.highest_bolt_class, thread))
      nut.highest_bolt_tensile = highest->tensile;
  return nut;
}

Result<joint::Surroundings> surroundings_of(const Catalogue& catalogue, const JointRecord& joint,
                                            const ResolvedCase& resolved) {
  joint::Surroundings around;
  if (auto tapped = add_tapped(catalogue, joint, resolved, around); !tapped) return Refusal(tapped.error());
  if (joint.seat_material) {
    const auto material = find_material(catalogue, *joint.seat_material);
    if (!material) return Refusal(material.error());
    around.seat = *material;
  }
  if (joint.nut_class) {
    auto nut = nut_of(catalogue, *joint.nut_class, resolved.asked.thread);
    if (!nut) return Refusal(nut.error());
    around.nut = std::move(*nut);
  }
  for (const NeighbourRecord& neighbour : joint.neighbours)
    if (neighbour.runs_at_degC)
      around.hot.push_back({neighbour.name, quantity::degrees_celsius(*neighbour.runs_at_degC)});
  if (joint.shaft_turn && joint.driver)
    around.drive = crank::Drive{turn_named(*joint.shaft_turn),
                                *joint.driver == "shaft" ? crank::Driver::shaft : crank::Driver::part};
  if (joint.figure.reuse_rule)
    around.reuse = joint::ReuseRule{*joint.figure.reuse_rule == "never", joint.figure.reuse.value_or("")};
  return around;
}

} // namespace clampwright::specdb
