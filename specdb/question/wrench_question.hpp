// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "core/tightening/uncertainty.hpp"
#include "core/tightening/wrench.hpp"
#include "core/working/step.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// Words for setting a wrench. Without a joint and a registered wrench everything comes from here.
struct WrenchSetQuestion {
  std::optional<std::string> torque; // that is to reach the fastener
  std::optional<std::string> tolerance;
  std::optional<std::string> low;
  std::optional<std::string> high;
  std::optional<std::string> turn;
  std::optional<std::string> arm;
  std::optional<std::string> adaptor;
  std::optional<std::string> adaptor_angle;
  std::optional<std::string> range; // of the scale
  std::optional<std::string> step;
  std::optional<std::string> accuracy;
  std::optional<std::string> operator_share;
  std::optional<std::string> lever_share;
  std::optional<std::string> nut_factor_spread;
};

// What the workshop and the day bring to it.
struct WrenchSetContext {
  std::optional<WrenchRecord> wrench;
  const JointAnswer* joint = nullptr;
  const quantity::Unit* unit = nullptr; // of the scale, where nothing else says
  std::chrono::year_month_day today{};
};

struct WrenchSetReply {
  tightening::WrenchTask task;
  tightening::Wrench wrench;
  bool is_registered = false;
  bool arm_known = false; // else set.levers.arm stands for any
  tightening::LeverSetting set;
  tightening::Budget budget;
  bool suits = false; // there is a setting, and nothing speaks against the wrench
  finding::Findings findings;
  Working working;
  std::vector<Source> sources;
};

// Where to set the wrench, what reaches the fastener, and how far the clamp load may be off. Fails with usage where a
// piece is missing or said twice, with not-understood where a text is not, or does not go with another, and with
// no-such where the joint has no torque by which a wrench may be set.
[[nodiscard]] Result<WrenchSetReply> answer_wrench_set(const WrenchSetQuestion& question,
                                                       const WrenchSetContext& context);

} // namespace clampwright::specdb
