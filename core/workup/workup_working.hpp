// SPDX-License-Identifier: GPL-3.0-or-later
//
// For workup.cpp: how the torque that was worked up comes about.
#pragma once

#include "core/workup/workup.hpp"

namespace clampwright::workup {

// What the joint must carry, what each part may be asked for, and the clamp load at the torque to set, which lies
// between. Symbols are defined before they are used.
[[nodiscard]] Working working_of(const Answer& answer);

} // namespace clampwright::workup
