// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "core/crank/held_by_stop.hpp"
#include "core/crank/piston_stop.hpp"
#include "core/finding/finding.hpp"
#include "core/friction/reduction.hpp"
#include "core/joint/angle_turn.hpp"
#include "core/joint/surroundings.hpp"
#include "core/locking/running.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/quantity.hpp"
#include "core/thread/turning.hpp"
#include "core/tightening/answer.hpp"
#include "core/tightening/unit_slip.hpp"
#include "core/tightening/wrench.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/joint_stack.hpp"
#include "specdb/question/lock_advice.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// Where a piston stop is often set, and where the force that it bears is already several times the least: the example
// of the crank-reaction finding.
inline constexpr quantity::Angle k_stop_angle = quantity::degrees(15.0);

// One figure of the joint: what its page says, and what it clamps.
struct FigureAnswer {
  FigureRecord figure;
  std::optional<quantity::Torque> torque; // as printed
  std::optional<quantity::Torque> low;    // by the figure's tolerance
  std::optional<quantity::Torque> high;
  std::optional<quantity::Torque> set; // on the wrench: with the running torque, where the page wants it added
  std::vector<quantity::Torque> passes;
  std::string surfaces_description;
  std::optional<tightening::ClampAnswer> clamp; // at `set`
  std::vector<tightening::UnitFit> unit_fits;
  std::optional<joint::AngleAnswer> turned; // what the figure's angle adds, where the stack is on record
  std::string not_turned_because;           // why that is not known; empty without an angle
};

struct RivalReduction {
  friction::Reduction published;
  quantity::Torque torque;
};

// The joint on other surfaces than its figure is for.
struct AsFitted {
  std::string surfaces;
  std::string description;
  bool differs = false;
  std::optional<double> factor;                           // ratio of the likely nut factors, fitted over stated
  std::optional<quantity::Torque> torque;                 // on the wrench, corrected once
  std::optional<quantity::Torque> by_thread_friction;     // the same by the likely thread friction, where it is known
  std::string no_correction_because;                      // empty where there is one
  std::vector<quantity::Torque> passes;                   // those of the figure, in the same proportion
  std::vector<RivalReduction> rivals;                     // published factors for this change, each with its torque
  std::optional<tightening::ClampAnswer> clamp_at_figure; // if the figure were used all the same
  std::optional<tightening::ClampAnswer> clamp;           // at the corrected torque
};

struct WrenchAnswer {
  std::string slug;
  tightening::Wrench wrench;
  std::optional<quantity::Torque> wanted; // what it is to be set for; empty where no torque can be had
  tightening::WrenchSetting setting;
};

// What there is to say about a joint before it is tightened. Without a figure there is no torque and no clamp load;
// nothing computed takes its place.
struct JointAnswer {
  JointRecord joint;
  ThreadEntry thread;
  std::optional<crank::SliderCrank> crank;
  std::optional<crank::StopAnswer> stop; // on record for the machine, at the torque on the crank
  thread::Turn tighten = thread::Turn::clockwise;
  thread::Turn undo = thread::Turn::anticlockwise;
  std::vector<friction::Lock> locks;
  LockAdvice lock_advice;
  // Where a locking nut's running torque is known and the page does not say whether it counts: both rules.
  std::vector<locking::RuleAnswer> running;
  joint::Surroundings around;
  FigureAnswer figure;                // the one in force that was entered first
  std::vector<FigureAnswer> beside;   // others in force
  std::string not_to_be_used_because; // why no wrench can be set by the figure, nor the figure corrected; or empty
  std::optional<JointOrder> order;    // computed; where the page prints one itself there is none
  std::optional<SlotHint> slot;       // with a split pin
  std::optional<AsFitted> as_fitted;
  std::optional<WrenchAnswer> wrench;
  std::optional<std::vector<WrenchAnswer>> wrenches; // of the register, where they were asked for
  finding::Findings findings;
  Working around_working;
};

// What a person wants to know besides.
struct JointRequest {
  std::optional<WrenchRecord> wrench;
  std::optional<std::string> as_fitted;                   // the surfaces on the bench
  std::chrono::year_month_day today;                      // for what is due; needed with a wrench only
  std::optional<std::vector<WrenchRecord>> wrenches = {}; // to say of each whether it suits
};

// What a wrench is to be set for: the torque, its limits where the figure prints them for just that torque, and the
// turn. Nothing where no wrench is to be set.
[[nodiscard]] std::optional<tightening::WrenchTask> task_of(const JointAnswer& answer);

// What is pulled on the crank: the corrected torque where other surfaces are asked about.
[[nodiscard]] std::optional<quantity::Torque> torque_on_crank(const JointAnswer& answer);

// Fails where the joint's own words (thread, class, surfaces, …) or the request's are not in the reference tables.
[[nodiscard]] Result<JointAnswer> answer_for(const Catalogue& catalogue, const JointRecord& joint,
                                             const JointRequest& request = {});

} // namespace clampwright::specdb
