// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/problem/problem.hpp"
#include "specdb/question/hold_question.hpp"
#include "specdb/question/joint_answer.hpp"

namespace clampwright::specdb {

// How to hold the crank for a joint: its torque, its turns and the record of its machine in the place of what was not
// typed. Fails with no-such (not-on-crank) for a joint that is not recorded as sitting on the crank, with usage where
// it has no torque that may be used and none was typed.
[[nodiscard]] Result<HoldQuestion> hold_for_joint(const JointAnswer& joint, HoldQuestion typed);

} // namespace clampwright::specdb
