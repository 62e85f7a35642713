// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque worked up where the maker gives none: never in the place of his.
//
// Upwards the weakest of what the bolt works with decides: bolt, threads, nut, seat, soft part, each held against the
// clamp load at the least friction and the most that the wrench may give. Downwards what the joint must carry decides,
// at the most friction and the least that the wrench may give. Between the two lies every torque that does for both;
// often there is none, and that is an answer.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/joint/strip.hpp"
#include "core/quantity/quantity.hpp"
#include "core/strength/material.hpp"
#include "core/strength/nut_strength.hpp"
#include "core/tightening/answer.hpp"
#include "core/working/step.hpp"
#include "core/workup/demand.hpp"

namespace clampwright::workup {

// What share of its strength each part may be asked for.
struct Shares {
  double proof = 0.75;       // of the proof load: joints that come apart again (Shigley, from memory)
  double yield = 0.90;       // of yield, tension and torsion together (VDI 2230-1, second hand)
  double thread = 1.0 / 1.5; // of the load that strips a thread: the project's margin
  double nut = 0.75;         // of the nut's proof load, as the bolt's
};

// Wood, plastic, a gasket between the parts.
struct SoftPart {
  std::string name;
  std::optional<quantity::Stress> bears; // told by its maker; no table here has such a figure
};

struct Case {
  tightening::Case fastener;
  std::optional<tightening::WrenchAccuracy> accuracy;
  std::optional<joint::StripCase> threads; // where it screws into a part and the length engaged is known
  bool in_part = false;                    // it screws into a part, whether that is known or not
  std::optional<strength::NutStrength> nut;
  std::optional<std::string> weak_nut_for; // the nut is made for bolts of this weaker class only
  std::optional<strength::PartMaterial> seat;
  std::optional<SoftPart> soft;
  Demand demand;
  Shares shares;
};

enum class Limit { bolt_proof, bolt_yield, bolt_thread, part_thread, nut, seat, soft_part };

// "bolt-proof", "bolt-yield", "bolt-thread", "part-thread", "nut", "seat", "soft-part".
[[nodiscard]] std::string_view limit_name(Limit limit);

// One of the things that a clamp load may break. What is not known has no load; the torque cannot be known then either.
struct AllowedLoad {
  Limit limit;
  std::optional<quantity::Force> bears;   // load at which it gives
  double share = 1;                       // that may be used
  std::optional<quantity::Force> allowed; // share of `bears`; for yield: the load at the torque that reaches the share
  std::optional<quantity::Torque> torque; // at which the greatest clamp load gets there
};

enum class Verdict {
  torque,    // there are torques that do for both
  at_most,   // what the joint must carry, or a part that it works with, was not told: an upper end only
  none,      // no torque does for both
  not_known, // what a part bears is not known, or it is no bolt
};

// "torque", "at-most", "none", "not-known".
[[nodiscard]] std::string_view verdict_name(Verdict verdict);

// Why there is none, and what would help.
enum class Help {
  larger_face,       // a hard washer or flange spreads the load on the seat
  longer_engagement, // or an insert
  stronger_nut,
  stronger_bolt,
  less_scatter, // friction stated and kept, a better wrench, or elongation or angle instead of torque
  more_bolts,
  carry_otherwise, // dowels, a key, a stop: not by friction
};

[[nodiscard]] std::string_view help_name(Help help);

struct Answer {
  Case asked;
  std::optional<joint::StripAnswer> strip; // of the threads, where they are known
  std::vector<AllowedLoad> limits;         // those that exist in this joint, bolt first
  NeededLoad needed;
  std::optional<Limit> governed_by;             // the limit that is reached first
  std::optional<quantity::Force> allowed;       // the least of the allowed loads
  std::optional<quantity::Torque> highest;      // above it something may break
  std::optional<quantity::Torque> lowest;       // below it the joint may not carry what it must
  bool scatter_alone = false;                   // of `none`: with friction and wrench known exactly there would be one
  std::optional<quantity::Torque> set;          // to set: the highest, rounded down for a wrench
  std::optional<tightening::ClampAnswer> clamp; // at `set`
  Verdict verdict = Verdict::not_known;
  std::vector<Help> helps;
  finding::Findings findings;
  Working working;
};

// Postconditions: where both are known, verdict is `torque` exactly if lowest <= highest; `set` lies between them.
[[nodiscard]] Answer work_up(const Case& asked);

} // namespace clampwright::workup
