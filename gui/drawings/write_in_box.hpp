// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gui/drawings/drawing.hpp"

namespace clampwright::desk {

// Room for the pen on a printed joint: for tightening and for the recheck the torque reached, the wrench, initials,
// date, and a box to tick.
[[nodiscard]] Drawing write_in_box();

} // namespace clampwright::desk
