// SPDX-License-Identifier: GPL-3.0-or-later
//
// The crank held by a stop in the plug hole: what crown, rod, bore, tip and plug thread bear, and the most that may be
// pulled on this stop for the limits that the asker states. None is filled in: a limiting pressure for seats of bolts
// says nothing of a crown, which is thin.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/crank/piston_stop.hpp"
#include "core/finding/finding.hpp"
#include "core/quantity/quantity.hpp"
#include "core/thread/limits.hpp"
#include "core/thread/thread.hpp"
#include "core/working/step.hpp"

namespace clampwright::crank {

// The thread in the head that the stop is screwed into. All that is engaged bears.
struct PlugThread {
  thread::Thread thread;
  thread::Limits limits;
  quantity::Length engaged;
  std::optional<quantity::Stress> shear; // of the head's metal; empty where no figure is known
  double bend_factor = 1.0;              // Alexander's C3, for the bending of the threads
};

// A flat round plate, held at its edge, for the crown.
struct CrownPlate {
  quantity::Length thickness;
  quantity::Length radius;
};

// As stated by the asker.
struct StopLimits {
  std::optional<quantity::Stress> tip_pressure;
  std::optional<double> plug_margin; // what strips the thread over what it bears
  std::optional<quantity::Force> rod;
  std::optional<quantity::Force> stop;
};

// Precondition: a crank as piston_stop has it, 0 < before_top < 180°, torques above zero, incline below 90°; a tip
// pressure and a crown are given with a tip.
struct StopCase {
  SliderCrank crank;
  quantity::Angle before_top;
  quantity::Torque torque;
  std::optional<quantity::Torque> undo_torque;
  std::optional<quantity::Length> tip_diameter;   // flat and round
  std::optional<quantity::Length> port_below_top; // the crown's way down until the highest port opens
  std::optional<PlugThread> plug;
  std::optional<quantity::Angle> incline; // of the stop's axis to the bore
  std::optional<CrownPlate> crown;
  StopLimits limits;
};

// What one torque makes of it all.
struct StopLoads {
  quantity::Torque torque;
  CrankForces forces;
  // Along the axis of the stop, so in the plug thread: more than along the bore where it is inclined, F/cos b. Then it
  // pushes the piston aside by F·tan b; a flat crown that gives no sideways hold bends the stop by F·sin b instead.
  quantity::Force along_stop;
  quantity::Force pushed_aside;
  quantity::Force across_stop;
  std::optional<quantity::Stress> tip_pressure;
  std::optional<double> plug_margin;
  std::optional<quantity::Stress> crown_bending;
};

enum class StopLimit { tip_pressure, plug_thread, rod, stop };

// "tip-pressure", "plug-thread", "rod", "stop".
[[nodiscard]] std::string_view limit_name(StopLimit limit);
// "pressure under the tip", "plug thread", "rod", "stop".
[[nodiscard]] std::string_view limit_words(StopLimit limit);

// The torque at which a stated limit is reached.
struct LimitTorque {
  StopLimit limit;
  quantity::Torque torque;
};

enum class Ports { covered, open, not_known };

// "covered", "open", "not-known".
[[nodiscard]] std::string_view ports_name(Ports ports);

// The same torque with the piston a little higher or lower.
struct Neighbour {
  quantity::Length below_top;
  quantity::Angle before_top;
  quantity::Force piston;
};

enum class HoldVerdict { within, may_exceed, over_limit, not_known };

// "within", "may-exceed", "over-limit", "not-known".
[[nodiscard]] std::string_view verdict_name(HoldVerdict verdict);

// How much longer or shorter a stop may turn out: a gasket, the worn tip, carbon on the crown.
inline constexpr quantity::Length k_stop_doubt = quantity::millimetres(0.5);

// From so many times the least force on, a finding says that the stop bites too near to a dead centre.
inline constexpr double k_much_over_least = 2.0;

struct StopAnswer {
  StopCase asked;
  quantity::Angle rod_angle;
  quantity::Length below_top;
  quantity::Length lever;
  quantity::Angle least_at;
  quantity::Force least; // of this torque, wherever the piston is met
  double over_least = 1;
  StopLoads fitting;
  std::optional<StopLoads> undoing;
  // With the stop shorter and longer by k_stop_doubt; empty where it would not hold the piston at all.
  std::optional<Neighbour> shorter;
  std::optional<Neighbour> longer;
  Ports ports = Ports::not_known;
  std::optional<quantity::Force> plug_strips_at; // along its axis
  std::vector<LimitTorque> limits;               // stated ones that can be reckoned with
  std::optional<LimitTorque> governs;            // the least of them
  HoldVerdict verdict = HoldVerdict::not_known;  // of the greater torque
  finding::Findings findings;
  Working working;
};

// Findings:
//   crank-reaction          always: angle, force, how far down
//   near-dead-centre        the force is twice the least or more (mind); half a millimetre decides whether it holds
//                           at all (stop)
//   stop-over-limit         a stated limit is passed (stop)
//   plug-strips             the plug thread is stripped at this torque, whatever was stated (stop)
//   port-open               the crown stands below the top of the highest port (mind)
//   stop-limit-not-stated   nobody said what tip, plug thread, rod or stop may bear (mind)
[[nodiscard]] StopAnswer hold_by_stop(const StopCase& asked);

// Bending in the middle of a clamped round plate under a load on a small round patch (Roark, from memory), Poisson's
// ratio 0.33. A crown is ribbed and domed: an order of magnitude and no more.
[[nodiscard]] quantity::Stress plate_bending(quantity::Force load, const CrownPlate& plate,
                                             quantity::Length patch_radius);

} // namespace clampwright::crank
