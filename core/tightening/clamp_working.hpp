// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightening/answer.hpp"
#include "core/working/step.hpp"

namespace clampwright::tightening {

// Every step from the torque to the clamp load and its share of proof and yield, in N, mm and N·mm as a person would
// reckon, so that each line follows from the lines above it: the fastener, the levers, then the loads. A symbol that
// ends in " low" or " high" is its value at that end of the clamp load's band; little friction is much load, so "μ_t
// high" is the least friction.
[[nodiscard]] Working working_of(const ClampAnswer& answer);

// The same for a torque that was wanted: between levers and loads stands how the torque to set follows from the load.
[[nodiscard]] Working working_of(const ClampAnswer& answer, const Wanted& wanted, quantity::Force preload);

} // namespace clampwright::tightening
