// SPDX-License-Identifier: GPL-3.0-or-later
//
// Statics of the slider-crank, without offset and friction: where the piston stands, and what a torque on the crank
// makes of it. Virtual work gives the same force: F·dx = T·dt.
#pragma once

#include "core/quantity/quantity.hpp"

namespace clampwright::crank {

// A crank and its connecting rod. Precondition: 0 < radius < rod.
struct SliderCrank {
  quantity::Length radius; // half the stroke
  quantity::Length rod;
};

// Between rod and bore: sin p = (r/l)·sin t, at t from top dead centre.
[[nodiscard]] quantity::Angle rod_angle(const SliderCrank& crank, quantity::Angle before_top);

// How far the piston stands below its top position: r·(1 - cos t) + l·(1 - cos p).
[[nodiscard]] quantity::Length below_top(const SliderCrank& crank, quantity::Angle before_top);

// The angle at which it stands so far below. Precondition: 0 <= below <= stroke.
[[nodiscard]] quantity::Angle before_top(const SliderCrank& crank, quantity::Length below);

// The lever on which a force along the bore turns the crank, at `before_top` from top dead centre: r·sin(t + p)/cos p.
[[nodiscard]] quantity::Length bore_lever(const SliderCrank& crank, quantity::Angle before_top);

// Where that lever is longest, so where a torque presses least: there the piston runs fastest.
[[nodiscard]] quantity::Angle angle_of_least_force(const SliderCrank& crank);

// The force that a piston stop, and so the piston crown, bears when a torque on the crank presses the rising piston
// against it. It grows without limit towards both dead centres. Precondition: 0 < before_top < 180°.
[[nodiscard]] quantity::Force stop_force(const SliderCrank& crank, quantity::Angle before_top, quantity::Torque torque);

// What the torque presses on between crank pin and stop.
struct CrankForces {
  quantity::Force piston;   // along the bore, on crown and stop
  quantity::Force rod;      // along it: F/cos p
  quantity::Force side;     // of the piston on the bore: F·tan p
  quantity::Force crankpin; // at a right angle to the web: T/r
};

// Precondition as for stop_force.
[[nodiscard]] CrankForces crank_forces(const SliderCrank& crank, quantity::Angle before_top, quantity::Torque torque);

} // namespace clampwright::crank
