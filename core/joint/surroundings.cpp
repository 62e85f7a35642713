// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/surroundings.hpp"

#include <algorithm>
#include <numbers>

#include "core/strength/nut_pairing.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/geometry.hpp"
#include "core/thread/stripping.hpp"

namespace clampwright::joint {

namespace {

using finding::Code;
using finding::Findings;
using finding::Severity;
using quantity::Band;
using quantity::Force;
using tightening::Case;
using tightening::ClampAnswer;

// The parts around a bolt are held against the graver of the two models, the one that reckons with more load.
bool is_by_nut_factor(const ClampAnswer& clamp) {
  return clamp.nut_factor &&
         (!clamp.thread_friction || clamp.nut_factor->preload.high > clamp.thread_friction->preload.high);
}

void add_strip(Findings& findings, const Surroundings& around, const ClampAnswer& clamp) {
  if (!around.tapped) return;
  const auto limit = strip_load(*around.tapped);
  const auto load = graver_load(clamp);
  if (!limit || !load) return;
  const auto& proof = clamp.asked.strength.proof_load;
  const bool before_the_bolt = proof && *limit < *proof;
  if (!before_the_bolt && load->high <= *limit) return;
  const Severity severity = load->likely > *limit ? Severity::stop : Severity::mind;
  findings.push_back({Code::strip_governs, severity, {around.tapped->part, *limit, load->likely, load->high}});
}

void add_seat(Findings& findings, const Surroundings& around, const ClampAnswer& clamp) {
  if (!around.seat || !around.seat->seat_pressure || !clamp.asked.face) return;
  const auto load = graver_load(clamp);
  if (!load) return;
  const quantity::Stress limit = *around.seat->seat_pressure;
  const quantity::Stress likely = seat_pressure(load->likely, *clamp.asked.face);
  const quantity::Stress high = seat_pressure(load->high, *clamp.asked.face);
  if (high <= limit) return;
  findings.push_back({Code::seat_pressure,
                      likely > limit ? Severity::stop : Severity::mind,
                      {text::without_hyphens(around.seat->name), limit, likely, high}});
}

void add_nut(Findings& findings, const Surroundings& around, const Case& asked) {
  if (!around.nut) return;
  const auto strips = nut_strips_first(*around.nut, asked.strength);
  if (strips && *strips)
    findings.push_back({Code::nut_too_weak,
                        Severity::stop,
                        {around.nut->nut_class, *around.nut->highest_bolt_class, asked.strength.class_name}});
}

void add_heat(Findings& findings, const Surroundings& around, const Case& asked) {
  for (const HotNeighbour& hot : around.hot)
    for (const friction::Lock& lock : asked.locks)
      if (lock.heat_limit && hot.runs_at > *lock.heat_limit)
        findings.push_back(
            {Code::heat_limit, Severity::mind, {hot.name, hot.runs_at, lock.description, *lock.heat_limit}});
}

void add_hand(Findings& findings, const Surroundings& around, const Case& asked) {
  if (around.drive && crank::hand_tightened_by(*around.drive) != asked.thread.hand)
    findings.push_back({Code::hand_doubt, Severity::mind, {std::string(thread::hand_name(asked.thread.hand))}});
}

// The page of the figure knows better than the general rule for a lock. Compounds are not meant: their own finding says
// that they are made fresh.
void add_single_use(Findings& findings, const Surroundings& around, const Case& asked) {
  if (around.reuse) {
    if (around.reuse->never) findings.push_back({Code::single_use, Severity::note, {around.reuse->words}});
    return;
  }
  for (const friction::Lock& lock : asked.locks)
    if (lock.single_use && lock.family != friction::LockFamily::compound)
      findings.push_back({Code::single_use, Severity::note, {lock.description}});
}

// The working of the clamp load names the flank angle and the face only where thread friction is known.
void add_strip_steps(Working& working, const TappedPart& tapped, const ClampAnswer& clamp) {
  const auto limit = strip_load(tapped);
  if (!limit) return;
  const std::string source = "FED-STD-H28/2, internal thread at least material (from memory)";
  if (!clamp.thread_friction)
    working.push_back({"α", "flank angle, half of the thread angle", "of the thread form",
                       quantity::in_degrees(thread::geometry_of(clamp.asked.thread).flank_angle), "°",
                       "thread standard"});
  working.push_back({"d_min", "least crest diameter of the bolt", "limits", quantity::in_millimetres(tapped.crest_min),
                     "mm", "thread_limits"});
  working.push_back({"D2_max", "greatest pitch diameter of the part", "limits",
                     quantity::in_millimetres(tapped.part_pitch_max), "mm", "thread_limits"});
  working.push_back({"A_s1", "area sheared for each mm of thread engaged", "π/P·d_min·(P/2 + tan α·(d_min - D2_max))",
                     quantity::in_millimetres(tapped.shear_width), "mm²/mm", source});
  working.push_back(
      {"m_e", "thread engaged", "as recorded", quantity::in_millimetres(tapped.engagement), "mm", "workshop file"});
  working.push_back({"τ_B", "shear strength of " + tapped.material.description, "table",
                     quantity::in_megapascals(*tapped.material.shear_strength), "MPa", "part_materials"});
  working.push_back({"C3", "factor for the bending of that thread", "from the strengths of both threads",
                     tapped.bend_factor, "", "VDI 2230-1 (2003), step R11 (from memory)"});
  working.push_back(
      {"F_m", "load that strips the thread in the part", "C3·A_s1·m_e·τ_B", quantity::in_newtons(*limit), "N", source});
}

void add_seat_steps(Working& working, const strength::PartMaterial& seat, const ClampAnswer& clamp) {
  const auto load = graver_load(clamp);
  if (!load || !seat.seat_pressure || !clamp.asked.face) return;
  const tightening::Face& face = *clamp.asked.face;
  if (!clamp.thread_friction) {
    working.push_back({"D_o", "outer diameter of the face under the turned part", "of the face",
                       quantity::in_millimetres(face.outer), "mm", face.basis});
    working.push_back(
        {"D_i", "inner diameter of that face", "of the face", quantity::in_millimetres(face.inner), "mm", face.basis});
  }
  working.push_back({"p_B", "pressure under the turned part, likely",
                     is_by_nut_factor(clamp) ? "F_K/(π/4·(D_o² - D_i²))" : "F/(π/4·(D_o² - D_i²))",
                     quantity::in_megapascals(seat_pressure(load->likely, face)), "MPa",
                     "VDI 2230-1: mean pressure on the ring"});
  working.push_back({"p_G", "what " + seat.description + " bears", "table",
                     quantity::in_megapascals(*seat.seat_pressure), "MPa", "part_materials"});
}

} // namespace

std::optional<Band<Force>> graver_load(const ClampAnswer& clamp) {
  if (is_by_nut_factor(clamp)) return clamp.nut_factor->preload;
  if (clamp.thread_friction) return clamp.thread_friction->preload;
  return std::nullopt;
}

std::optional<Force> strip_load(const TappedPart& tapped) {
  if (!tapped.material.shear_strength) return std::nullopt;
  return tapped.bend_factor *
         thread::strip_load(tapped.shear_width, tapped.engagement, *tapped.material.shear_strength);
}

std::optional<bool> nut_strips_first(const Nut& nut, const strength::Strength& bolt) {
  if (!nut.highest_bolt_class || bolt.class_name == "unknown") return std::nullopt;
  if (const auto weaker = strength::nut_is_weaker(bolt.class_name, *nut.highest_bolt_class)) return weaker;
  if (!nut.highest_bolt_tensile || !bolt.tensile) return std::nullopt;
  return *bolt.tensile > *nut.highest_bolt_tensile;
}

quantity::Stress seat_pressure(Force load, const tightening::Face& face) {
  const quantity::Area ring = std::numbers::pi / 4.0 * (face.outer * face.outer - face.inner * face.inner);
  return load / ring;
}

Findings findings_around(const Surroundings& around, const Case& asked, const ClampAnswer* clamp) {
  Findings findings;
  if (clamp != nullptr && asked.kind == tightening::JointKind::bolt) {
    add_strip(findings, around, *clamp);
    add_seat(findings, around, *clamp);
  }
  if (asked.kind == tightening::JointKind::bolt) add_nut(findings, around, asked);
  add_heat(findings, around, asked);
  add_hand(findings, around, asked);
  add_single_use(findings, around, asked);
  return findings;
}

Working working_around(const Surroundings& around, const ClampAnswer* clamp) {
  Working working;
  if (clamp == nullptr || clamp->asked.kind != tightening::JointKind::bolt) return working;
  if (around.tapped) add_strip_steps(working, *around.tapped, *clamp);
  if (around.seat) add_seat_steps(working, *around.seat, *clamp);
  return working;
}

} // namespace clampwright::joint
