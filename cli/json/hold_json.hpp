// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "core/crank/hand.hpp"
#include "specdb/question/hold_question.hpp"
#include "specdb/question/joint_answer.hpp"

namespace clampwright::cli {

// The `result` of hold. `joint` where it was asked for one.
[[nodiscard]] Json hold_json(const specdb::HoldReply& reply, const specdb::JointAnswer* joint, bool invented);

// What a stop makes of a torque: the keys of hold that belong to it, each null where there is no stop.
[[nodiscard]] Json stop_json(const crank::StopAnswer* stop);

// The `result` of hand.
[[nodiscard]] Json hand_json(const crank::HandAnswer& answer);

} // namespace clampwright::cli
