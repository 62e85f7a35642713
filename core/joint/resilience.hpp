// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much a bolt and what it clamps give for each newton. From that follows what a turn of the nut adds, and what
// settling takes away: short stiff stacks gain and lose most.
//
// Bolt: length over modulus × section, piece by piece, with what gives in the head, in the engaged thread and in the
// nut taken as lengths of bolt (VDI 2230-1, step R3, from memory; a lecture script that quotes it was read). Parts: VDI
// 2230-1 since 2003 lets the pressure spread in a cone, the edition of 1986 in a cylinder that stands for it; the two
// differ by a quarter and more, and neither is measured for this joint, so they are the ends of a band.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"
#include "core/thread/thread.hpp"
#include "core/working/step.hpp"

namespace clampwright::joint {

// What gives in a head, as a length of shank over the diameter.
inline constexpr double k_hexagon_gives = 0.5;
inline constexpr double k_socket_head_gives = 0.4;
// In the engaged thread, as a length of thread; in a nut, and in the part where that is the nut, as lengths of shank.
inline constexpr double k_engaged_thread_gives = 0.5;
inline constexpr double k_nut_gives = 0.4;
inline constexpr double k_tapped_part_gives = 0.33;

// A modulus of elasticity; of cast iron it is a range.
struct Modulus {
  quantity::Stress least;
  quantity::Stress most;
  std::string words; // "bolt steel, VDI value"
  std::vector<Source> sources;

  [[nodiscard]] quantity::Stress mean() const { return (least + most) / 2.0; }
};

// A bolt and what it clamps. Lengths between the faces of head and nut, or of head and the mouth of the tapped hole.
struct Stack {
  thread::Thread thread;
  std::optional<quantity::Length> waist; // a shank that is thinner than the thread
  std::optional<quantity::Length> bore;
  double head_gives = k_hexagon_gives;
  bool into_part = false; // the part is the nut
  quantity::Length grip;
  quantity::Band<quantity::Length> free_thread; // of the grip
  std::string free_thread_basis;
  quantity::Length face; // outer diameter of the face on the parts
  quantity::Length hole;
  std::optional<quantity::Length> outer; // of the parts round the bolt; without one they are wide
  Modulus bolt;
  Modulus part;
};

struct StackResilience {
  quantity::Band<quantity::Resilience> bolt;
  quantity::Band<quantity::Resilience> parts;

  [[nodiscard]] quantity::Band<quantity::Resilience> both() const {
    return {bolt.low + parts.low, bolt.likely + parts.likely, bolt.high + parts.high};
  }
};

// Precondition: face > hole, the hole goes round the thread, outer > hole.
[[nodiscard]] StackResilience resilience_of(const Stack& stack);

// The bolt with that much free thread in the grip.
[[nodiscard]] quantity::Resilience bolt_resilience(const Stack& stack, quantity::Length free_thread);

// A sleeve as wide as it bears: L/(E·A).
[[nodiscard]] quantity::Resilience sleeve_resilience(quantity::Length length, quantity::Stress modulus,
                                                     quantity::Length outer, quantity::Length inner);

// The parts by the cone of 2003, and by the cylinder of 1986.
[[nodiscard]] quantity::Resilience cone_resilience(const Stack& stack, quantity::Stress modulus);
[[nodiscard]] quantity::Resilience cylinder_resilience(const Stack& stack, quantity::Stress modulus);

// What a turn by that angle adds to the clamp load, as long as nothing yields: angle/360°·P/δ.
[[nodiscard]] quantity::Force load_of_turn(quantity::Angle angle, const thread::Thread& thread,
                                           quantity::Resilience whole);

// By how much surfaces settle after tightening, all of them together: thread, head, and nut where there is one, at a
// roughness Rz of 10 to 40 µm and without faces between clamped parts (VDI 2230-1, table 5, from memory).
[[nodiscard]] quantity::Length usual_settling(const Stack& stack);

// What settling takes from the clamp load: f_Z/δ.
[[nodiscard]] quantity::Force settling_loss(quantity::Length settling, quantity::Resilience whole);

// The thread that a bolt of ISO 4014 has, or an inch one of ASME B18.2.1 (both from memory), by its length under the
// head.
[[nodiscard]] quantity::Length thread_on_bolt(const thread::Thread& thread, quantity::Length bolt_length);

// How the resilience comes about, line by line, at the likely end.
[[nodiscard]] Working stack_working(const Stack& stack, const StackResilience& resilience);

[[nodiscard]] std::vector<Source> sources_of(const Stack& stack);

} // namespace clampwright::joint
