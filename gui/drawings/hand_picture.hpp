// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/crank/hand.hpp"
#include "gui/drawings/drawing.hpp"

namespace clampwright::desk {

// The end of the shaft seen from the free end of the thread: which way it turns, which way the part is pushed on its
// thread, and beside it how a thread of the hand that this tightens looks when it is held upright. The thread on record
// stands beside that where it is of the other hand.
[[nodiscard]] Drawing hand_picture(const crank::HandAnswer& answer);

} // namespace clampwright::desk
