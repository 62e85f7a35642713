// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a bolt works in: the thread in the part, the nut, the seat, what is hot beside it, which way it is driven. Each
// is left out where it is not known; then nothing is said about it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/crank/thread_hand.hpp"
#include "core/finding/finding.hpp"
#include "core/quantity/quantity.hpp"
#include "core/strength/material.hpp"
#include "core/strength/strength.hpp"
#include "core/tightening/answer.hpp"
#include "core/working/step.hpp"

namespace clampwright::joint {

// A thread in a part: the area that would be sheared off for each length engaged, at the least material that the
// limits allow.
struct TappedPart {
  std::string part; // "crankcase"
  strength::PartMaterial material;
  quantity::Length engagement;
  quantity::Length shear_width;
  quantity::Length crest_min;      // d_min of the bolt, for the working
  quantity::Length part_pitch_max; // D2_max of the part
  double bend_factor = 1.0;        // Alexander's C3: how far the threads bend out of each other
};

struct Nut {
  std::string nut_class;                         // "8"
  std::optional<std::string> highest_bolt_class; // that it may go with; none for thin nuts
  Source source;
  std::optional<quantity::Stress> highest_bolt_tensile = std::nullopt; // of that class, for bolts of another system
};

struct HotNeighbour {
  std::string name;
  quantity::Temperature runs_at;
};

// A part that wears out by being used, or is replaced by rule.
struct ReuseRule {
  bool never = false;
  std::string words; // as the figure's page has it
};

struct Surroundings {
  std::optional<TappedPart> tapped;
  std::optional<strength::PartMaterial> seat;
  std::optional<Nut> nut;
  std::vector<HotNeighbour> hot;
  std::optional<crank::Drive> drive;
  std::optional<ReuseRule> reuse;
};

// The clamp load by the graver of the two models, to which the parts around a bolt are held; nothing where neither is
// known.
[[nodiscard]] std::optional<quantity::Band<quantity::Force>> graver_load(const tightening::ClampAnswer& clamp);

// The load at which the thread in the part is sheared off; nothing where its material has no known strength.
[[nodiscard]] std::optional<quantity::Force> strip_load(const TappedPart& tapped);

// Is the bolt stronger than any that the nut is made for? Metric classes are compared by their figures, others by what
// the bolts bear in tension. Nothing for a thin nut, and where a tensile strength is not known.
[[nodiscard]] std::optional<bool> nut_strips_first(const Nut& nut, const strength::Strength& bolt);

// Mean pressure on the ring under the turned part. Precondition: outer > inner.
[[nodiscard]] quantity::Stress seat_pressure(quantity::Force load, const tightening::Face& face);

// What the surroundings make of a bolt that is tightened so (`clamp` is empty where there is no torque):
//   strip-governs  the thread in the part is sheared before the bolt reaches its proof load, or the clamp load may get
//                  there (mind); it is likely to (stop)
//   seat-pressure  the pressure under the turned part may pass (mind) or likely passes (stop) what its material bears
//   nut-too-weak   the nut's class goes only with weaker bolts
//   heat-limit     a neighbour runs hotter than a lock bears
//   hand-doubt     the steady load would undo a thread of this hand
//   single-use     a lock, or by the figure's page the fastener, that is new each time
// Only a bolt is judged by loads, by the graver of the two models. `locks` and `hand` are the fastener's.
[[nodiscard]] finding::Findings findings_around(const Surroundings& around, const tightening::Case& asked,
                                                const tightening::ClampAnswer* clamp);

// How the loads and pressures of those findings come about; empty where none is judged. It goes on from the working of
// `clamp` and takes its symbols (P, F, D_o, …), so it stands below that.
[[nodiscard]] Working working_around(const Surroundings& around, const tightening::ClampAnswer* clamp);

} // namespace clampwright::joint
