// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightening/answer.hpp"
#include "core/working/step.hpp"

namespace clampwright::tightening {

// Every step from the torque to the clamp load and its share of proof and yield, in N, mm and N·mm as a person would
// reckon: first what is common to all, then likely, low and high. A symbol that ends in " low" or " high" is its value
// at that end of the band.
[[nodiscard]] Working working_of(const ClampAnswer& answer);

} // namespace clampwright::tightening
