// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/stack_question.hpp"

namespace clampwright::cli {

// What the bolt clamps, and how much both give.
[[nodiscard]] Json stack_json(const joint::Stack& stack, const joint::StackResilience& resilience);

// The `result` of angle and of slot.
[[nodiscard]] Json angle_json(const specdb::AngleReply& reply);
[[nodiscard]] Json slot_json(const specdb::SlotReply& reply);

// What an angle adds, without the clamp load of the snug torque.
[[nodiscard]] Json added_json(const joint::AngleAnswer& answer);

} // namespace clampwright::cli
