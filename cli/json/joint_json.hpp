// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/joint_answer.hpp"

namespace clampwright::cli {

// The `result` of show and demo.
[[nodiscard]] Json joint_json(const specdb::JointAnswer& answer, bool invented);

// The outcome of showing a joint, in both forms.
[[nodiscard]] Outcome joint_outcome(const specdb::JointAnswer& answer, const Context& context, bool invented);

} // namespace clampwright::cli
