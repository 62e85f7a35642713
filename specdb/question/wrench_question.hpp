// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
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
#include "specdb/question/text_field.hpp"
#include "specdb/workshop/records.hpp"
#include "specdb/workshop/workshop_file.hpp"

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

inline constexpr std::array k_wrench_set_fields{
    TextField<WrenchSetQuestion>{"--torque", &WrenchSetQuestion::torque},
    TextField<WrenchSetQuestion>{"--tolerance", &WrenchSetQuestion::tolerance},
    TextField<WrenchSetQuestion>{"--low", &WrenchSetQuestion::low},
    TextField<WrenchSetQuestion>{"--high", &WrenchSetQuestion::high},
    TextField<WrenchSetQuestion>{"--turn", &WrenchSetQuestion::turn},
    TextField<WrenchSetQuestion>{"--arm", &WrenchSetQuestion::arm},
    TextField<WrenchSetQuestion>{"--adaptor", &WrenchSetQuestion::adaptor},
    TextField<WrenchSetQuestion>{"--adaptor-angle", &WrenchSetQuestion::adaptor_angle},
    TextField<WrenchSetQuestion>{"--range", &WrenchSetQuestion::range},
    TextField<WrenchSetQuestion>{"--step", &WrenchSetQuestion::step},
    TextField<WrenchSetQuestion>{"--wrench-accuracy", &WrenchSetQuestion::accuracy},
    TextField<WrenchSetQuestion>{"--operator", &WrenchSetQuestion::operator_share},
    TextField<WrenchSetQuestion>{"--lever-error", &WrenchSetQuestion::lever_share},
    TextField<WrenchSetQuestion>{"--nut-factor-spread", &WrenchSetQuestion::nut_factor_spread},
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

// A torque or a joint, a wrench of the register or none, by name.
struct WrenchSetNames {
  std::optional<std::string> wrench;
  std::optional<std::string> joint;
};

struct WrenchSetTold {
  WrenchSetReply reply;
  std::optional<JointAnswer> joint;
  bool invented = false; // a name of a demo workshop is in it
};

// `workshop` may be null where no name is given, `unit` where no other is wanted for the scale. Fails like find_wrench,
// find_joint and answer_wrench_set.
[[nodiscard]] Result<WrenchSetTold> tell_wrench_set(const Catalogue& catalogue, const Workshop* workshop,
                                                    const WrenchSetNames& names, const WrenchSetQuestion& question,
                                                    const quantity::Unit* unit, std::chrono::year_month_day today);

} // namespace clampwright::specdb
