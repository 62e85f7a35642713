// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/quantity.hpp"
#include "core/thread/turning.hpp"
#include "core/tightening/answer.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/workshop/joints.hpp"

namespace clampwright::specdb {

// Where a piston stop is often set, and where the force that it bears is already several times the least: the example
// of the crank-reaction finding.
inline constexpr quantity::Angle k_stop_angle = quantity::degrees(15.0);

// What there is to say about a joint before it is tightened. Without a figure there is no torque and no clamp load;
// nothing computed takes its place.
struct JointAnswer {
  JointRecord joint;
  ThreadEntry thread;
  std::optional<quantity::Torque> torque;
  std::optional<quantity::Torque> low; // by the figure's tolerance
  std::optional<quantity::Torque> high;
  thread::Turn tighten = thread::Turn::clockwise;
  thread::Turn undo = thread::Turn::anticlockwise;
  std::string surfaces_description;
  std::string lock_description;
  std::optional<tightening::ClampAnswer> clamp;
  finding::Findings findings;
};

// Fails where the joint's own words (thread, class, surfaces) are not in the reference tables.
[[nodiscard]] Result<JointAnswer> answer_for(const Catalogue& catalogue, const JointRecord& joint);

} // namespace clampwright::specdb
