// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "core/tightening/answer.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::cli {

// The `result` of clamp.
[[nodiscard]] Json torque_band(const quantity::Band<quantity::Torque>& band);
[[nodiscard]] Json clamp_json(const tightening::ClampAnswer& answer, const specdb::ThreadEntry& thread);

// The `result` of torque: that of clamp, the clamp load asked for and the torque to set.
[[nodiscard]] Json torque_json(const tightening::TorqueAnswer& answer, const specdb::ThreadEntry& thread);

// What a torque and the torque for a load have beside the thread: for lists that name the thread in their own way.
[[nodiscard]] Json torque_json_without_thread(const tightening::TorqueAnswer& answer);

// The name of a lock, several joined by " + "; null where there is none.
[[nodiscard]] Json lock_json(const std::vector<friction::Lock>& locks);

} // namespace clampwright::cli
