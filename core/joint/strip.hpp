// SPDX-License-Identifier: GPL-3.0-or-later
//
// What gives first when a bolt is pulled out of a part: the bolt itself, its thread, or the thread in the part.
//
// The way is that of VDI 2230-1 (2003, step R11, from memory) on the strip areas of FED-STD-H28/2 at least material:
// Alexander's factors C2 and C3 for the bending of the weaker thread, the strength of the strongest bolt of the class,
// and two turns that do not bear. Left out are the widening of a thin wall or nut (C1 is taken as 1), the uneven
// share of the turns, bending and heat.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/quantity/quantity.hpp"
#include "core/strength/material.hpp"
#include "core/strength/shear_ratio.hpp"
#include "core/strength/strength.hpp"
#include "core/thread/limits.hpp"
#include "core/thread/thread.hpp"
#include "core/working/step.hpp"

namespace clampwright::joint {

// The standards name the least tensile strength of a class; the strongest bolt of it has about this much more (from
// memory). The bolt that breaks first must be that one.
inline constexpr double k_highest_over_least = 1.2;

// More engagement than this many diameters adds little in stiff metal (from memory).
inline constexpr double k_useful_diameters = 2.0;

enum class InsertKind { wire, keyed };

// A steel insert: the bolt turns in it, and its outer thread in the part.
struct Insert {
  InsertKind kind = InsertKind::wire;
  thread::Thread outer; // its pitch and flanks; the diameter of a wire insert is that of no series
  thread::Limits outer_limits;
};

struct StripCase {
  thread::Thread thread;
  thread::Limits limits;
  strength::Strength bolt; // unknown_strength() where the class is not known
  std::optional<strength::ShearRatio> bolt_shear;
  strength::PartMaterial part;
  std::optional<Insert> insert;
  std::optional<quantity::Length> length; // engaged, with the turns that do not bear
  quantity::Length incomplete;            // of that length, at the ends
};

// Two turns: the point of the bolt and the countersink of the hole.
[[nodiscard]] quantity::Length usual_incomplete(const thread::Thread& thread);

enum class Gives { bolt, bolt_thread, part_thread };

// "bolt", "bolt-thread", "part-thread".
[[nodiscard]] std::string_view gives_name(Gives gives);

// The loads at which each of the three gives.
struct StripLoads {
  std::optional<quantity::Force> bolt_thread;         // of the weakest bolt of the class
  std::optional<quantity::Force> bolt_thread_highest; // of the strongest
  std::optional<quantity::Force> part_thread;
  std::optional<Gives> first;              // with the strongest bolt
  std::optional<Gives> first_with_weakest; // with the weakest
  std::optional<double> margin;            // the weaker thread over the break of the strongest bolt
};

struct StripAnswer {
  StripCase asked;
  // Area sheared for each length that bears.
  quantity::Length bolt_width;
  quantity::Length part_width;
  double bolt_overstated = 0; // the share by which basic sizes would overstate it: 0.29
  double part_overstated = 0;
  // How much stronger the part's thread is than the bolt's, and the factors that follow. With the class unknown the
  // factors are the least that they can be.
  std::optional<quantity::Stress> tensile_highest;
  std::optional<double> strength_ratio;         // with the weakest bolt
  std::optional<double> strength_ratio_highest; // with the strongest
  double c2 = 1;
  double c3 = 1;

  std::optional<quantity::Force> bolt_break;         // the least of the standard
  std::optional<quantity::Force> bolt_break_highest; // stress × area, head as strong as the thread

  std::optional<quantity::Length> bearing; // of the length engaged
  StripLoads loads;                        // at that length; empty where no length was given

  // With this length engaged, turns that do not bear included, the strongest bolt breaks before a thread strips; and
  // the weakest does.
  std::optional<quantity::Length> needed;
  std::optional<quantity::Length> needed_with_weakest;
  std::optional<quantity::Length> needed_at_highest_shear; // if the part were as good as the best figure for it

  finding::Findings findings;
  Working working;
};

// Precondition: `length`, where given, is greater than `incomplete`; the limits are those of the thread.
[[nodiscard]] StripAnswer strip(const StripCase& asked);

// The loads with that length engaged. Precondition: it is greater than what is incomplete.
[[nodiscard]] StripLoads loads_at(const StripAnswer& answer, quantity::Length engaged);

// Alexander's factors for the strength ratio of the threads (VDI 2230-1, from memory): C2 for the bolt's thread, 0.897
// to 1.187, C3 for the part's, 1.055 to 0.897. Beyond the ratios for which they are given they keep their last value.
[[nodiscard]] double bolt_thread_factor(double strength_ratio);
[[nodiscard]] double part_thread_factor(double strength_ratio);

// Lengths in which inserts are made, in diameters of the bolt (TM 9-254 and other Army manuals).
[[nodiscard]] std::vector<double> insert_lengths();

} // namespace clampwright::joint
