// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.hpp"

namespace clampwright::crank {

// A crank and its connecting rod. Precondition: 0 < radius < rod.
struct SliderCrank {
  quantity::Length radius; // half the stroke
  quantity::Length rod;
};

// The lever on which a force along the bore turns the crank, at `before_tdc` from top dead centre: r·sin(t + p)/cos p
// with sin p = (r/l)·sin t. Slider-crank statics without offset and friction (virtual work gives the same).
[[nodiscard]] quantity::Length bore_lever(const SliderCrank& crank, quantity::Angle before_tdc);

// The force that a piston stop, and so the piston crown, bears when a torque on the crank presses the rising piston
// against it. It grows without limit towards top dead centre. Precondition: 0 < before_tdc < 180°.
[[nodiscard]] quantity::Force stop_force(const SliderCrank& crank, quantity::Angle before_tdc, quantity::Torque torque);

} // namespace clampwright::crank
