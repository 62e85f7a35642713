// SPDX-License-Identifier: GPL-3.0-or-later
//
// May another fastener go in where one was? Every property is compared, in the order in which a fitter would find the
// fault: what it is, whether it fits, what it bears, what holds it, whether it cracks, what its finish and its metal
// do. One "no" ends the matter, whatever stands behind it; what is not known stays not known.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/joint/surroundings.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"
#include "core/strength/shear_ratio.hpp"
#include "core/thread/limits.hpp"
#include "core/tightening/answer.hpp"
#include "core/tightening/case.hpp"

namespace clampwright::substitute {

// The links of the chain, in order.
enum class Link {
  identity,
  form,
  diameter,
  pitch,
  hand,
  length,
  proof,
  yield,
  tensile,
  nut,
  part_thread,
  seat,
  head,
  brittleness,
  temperature,
  friction,
  torque,
  corrosion,
  galling,
  fatigue,
  reuse,
  approval,
};

// "identity", "form", …, "part-thread", …
[[nodiscard]] std::string_view link_name(Link link);

enum class Outcome { ok, no, not_known, note };

// "ok", "no", "not-known", "note".
[[nodiscard]] std::string_view outcome_name(Outcome outcome);

// Why a link came out as it did; its sentence stands in core/report/substitute_words.cpp.
enum class Reason {
  like_for_like,
  classes_known,
  offered_unknown,
  original_unknown,
  same_form,
  other_form,
  starts_on_it, // another form, near enough to start on the nut and strip it
  same_diameter,
  other_diameter,
  same_pitch,
  other_pitch,
  same_hand,
  other_hand,
  length_not_told,
  same_length,
  reaches_and_clears,
  bottoms,
  does_not_reach,
  engages_less,
  longer_depth_not_told,
  shorter_grip_not_told,
  bears_as_much,
  bears_less,
  not_judged_as_bolt, // a hub, a plug, a union
  no_proof_stress,    // stainless steel: compared by yield
  strength_not_known,
  nut_not_told,
  nut_goes_with_it,
  nut_too_weak,
  nut_too_weak_before, // for the original already
  nut_thin,
  nut_not_comparable,
  part_length_not_told,
  part_holds,
  part_gives,
  part_may_give,
  part_may_give_as_before,
  part_gives_before_bolt,
  part_strength_not_known,
  part_torque_not_told,
  seat_not_told,
  seat_bears,
  seat_may_give,
  seat_gives,
  seat_not_known,
  head_not_told,
  same_face,
  larger_face,
  smaller_face,
  smaller_face_on_known_seat,
  face_not_known,
  soft_enough,
  hard_plated,
  hard_coating_not_told,
  hard_not_plated,
  midway_plated,
  midway,
  hardness_not_known,
  temperature_not_told,
  temperature_hot_neighbour,
  temperature_borne,
  temperature_not_borne,
  temperature_range_not_known,
  finish_not_told,
  same_finish,
  other_finish,
  finish_forbidden,
  finish_wants_more_on_soft,
  torque_not_told,
  torque_unusable,
  keep_torque,
  keep_torque_of_lower_class,
  other_torque,
  torque_too_high,
  same_metal,
  stainless_in_other_metal_dry,
  stainless_in_other_metal_wet,
  stainless_in_light_metal_wet,
  stainless_in_light_metal_duty_not_told,
  stainless_in_magnesium_wet,
  stainless_mating_not_told,
  loses_stainless_dry,
  loses_stainless_wet,
  loses_stainless_duty_not_told,
  hard_in_the_wet,
  does_not_gall,
  galls_dry,
  galls_lubricated,
  galls_not_told,
  galls_mating_not_told,
  fatigue_no_better,
  fatigue_same,
  reuse_not_told,
  reuse_new,
  reuse_used,
  reuse_never,
  approval_prompt,
  approval_needed,
};

// One link. What stands on either side, and the facts of its sentence.
struct Check {
  Link link;
  Outcome outcome;
  Reason reason;
  std::vector<finding::Fact> original = {};
  std::vector<finding::Fact> offered = {};
  std::vector<finding::Fact> facts = {};
};

enum class Verdict { adequate, adequate_at_other_torque, not_adequate, not_known };

// "adequate", "adequate-at-other-torque", "not-adequate", "not-known".
[[nodiscard]] std::string_view verdict_name(Verdict verdict);

// How the metal came by its surface, as far as the risk of hydrogen goes.
enum class Coating { not_told, without_bath, electroplated };

// How far a class of bolts is meant to be heated and cooled; an end that was not read is empty.
struct ServiceRange {
  std::optional<quantity::Temperature> low;
  std::optional<quantity::Temperature> high;
  Source source;
};

// One of the two fasteners, as it would be tightened here.
struct Fastener {
  tightening::Case as;
  Coating coating = Coating::not_told;
  bool head_told = false;
  std::optional<quantity::Length> length; // under the head
  std::optional<ServiceRange> bears = std::nullopt;
  std::optional<strength::ShearRatio> thread_shear = std::nullopt; // of its thread over its tensile strength
};

enum class Duty { dry, wet };

// The thread in the part that it screws into. Without a length nothing is said of what it bears.
struct TappedThread {
  std::string part; // "crankcase"
  strength::PartMaterial material;
  thread::Limits limits;
  std::optional<quantity::Length> engagement; // where lengths do not tell it
  quantity::Length incomplete;                // of what is engaged, the turns that do not bear
};

// Where it goes. What is empty was not told.
struct Place {
  joint::Surroundings around; // without the thread in the part, which stands below
  std::optional<TappedThread> tapped;
  std::optional<strength::PartMaterial> mating; // what it touches: the part or the nut
  std::optional<quantity::Length> grip;         // thickness clamped, between head and thread
  std::optional<quantity::Length> hole_depth;   // of thread that can be used
  std::optional<Duty> duty;
  std::optional<quantity::Temperature> runs_at;
  std::optional<quantity::Torque> torque;
  std::optional<tightening::WrenchAccuracy> accuracy;
  std::optional<bool> used;      // is the one offered a used one?
  std::string finish_forbidden;  // why the finish offered must not be here; empty where it may
  std::string no_torque_because; // why the torque of the joint cannot be used; empty where it can
  bool approval_needed = false;  // the machine is certified or regulated
};

struct Question {
  Fastener original;
  Fastener offered;
  Place place;
};

// The torque that gives the offered fastener the original's likely clamp load, by each model that both have, at low,
// likely and high friction.
struct OtherTorque {
  std::optional<quantity::Band<quantity::Torque>> by_nut_factor;
  std::optional<quantity::Band<quantity::Torque>> by_thread_friction;
  quantity::Torque set; // likely, by nut factor where known: one rule here and for a joint on other surfaces
};

struct Answer {
  std::vector<Check> checks; // in order of the links
  Verdict verdict = Verdict::not_known;
  std::optional<Link>
      governed_by; // the first "no", else the first "not known", else friction where it asks for another torque
  std::optional<double> factor; // likely nut factor (or thread-friction torque), offered over original
  std::optional<tightening::ClampAnswer> original; // at the torque told
  std::optional<tightening::ClampAnswer> offered;  // at the same torque
  std::optional<OtherTorque> other_torque;
  std::optional<tightening::ClampAnswer> offered_at_other_torque;
  finding::Findings findings;
};

// Of what carries the load or makes the bolt fit, the links that nothing was told about: length, nut, the thread in the
// part, seat, head. A verdict says nothing of them.
[[nodiscard]] std::vector<Link> links_not_told(const Answer& answer);

// Loads of one thread and two classes come from tables that round to three figures: this much less is no less. The
// same limit as in the published comparison of metric and inch classes.
inline constexpr double k_as_much = 0.995;

// Where the likely torque for a clamp load differs by less, the same torque serves: within what a wrench misses by.
inline constexpr double k_same_torque = 0.05;

// The length of thread that a screw engages by its length, the grip and the depth of the hole; nothing where one of the
// first two is not told.
[[nodiscard]] std::optional<quantity::Length> engaged_by_lengths(const Fastener& fastener, const Place& place);

// The chain, link by link. Fails where the torque cannot be on one of the two (out-of-range).
[[nodiscard]] Result<Answer> may_replace(const Question& question);

} // namespace clampwright::substitute
