// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/piston_stop.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace clampwright::crank {

namespace {

using quantity::Angle;
using quantity::Length;

double sine_squared(double angle) { return std::sin(angle) * std::sin(angle); }

// The slope of the lever over the angle, in crank radii.
double lever_slope(double ratio, double t) {
  const double s = std::sin(t);
  const double c = std::cos(t);
  const double cos_p = std::sqrt(1.0 - ratio * ratio * s * s);
  return c + ratio * (c * c - s * s) / cos_p + ratio * ratio * ratio * s * s * c * c / (cos_p * cos_p * cos_p);
}

} // namespace

Angle rod_angle(const SliderCrank& crank, Angle before_top) {
  return quantity::radians(std::asin(crank.radius / crank.rod * std::sin(quantity::in_radians(before_top))));
}

// By half angles: near top dead centre 1 - cos t is the small difference of two numbers near one.
Length below_top(const SliderCrank& crank, Angle before_top) {
  const double half_t = quantity::in_radians(before_top) / 2.0;
  const double half_p = quantity::in_radians(rod_angle(crank, before_top)) / 2.0;
  return 2.0 * sine_squared(half_t) * crank.radius + 2.0 * sine_squared(half_p) * crank.rod;
}

// In the triangle of radius r, rod l and y = r + l - x, the half angle at the crank has
// tan²(t/2) = x·(2l - x)/((2r - x)·(2r + 2l - x)).
Angle before_top(const SliderCrank& crank, Length below) {
  const double x = quantity::in_metres(below);
  const double r = quantity::in_metres(crank.radius);
  const double l = quantity::in_metres(crank.rod);
  const double rise = std::max(0.0, 2.0 * r - x);
  return quantity::radians(2.0 * std::atan2(std::sqrt(x * (2.0 * l - x)), std::sqrt(rise * (2.0 * r + 2.0 * l - x))));
}

Length bore_lever(const SliderCrank& crank, Angle before_top) {
  const double t = quantity::in_radians(before_top);
  const double p = quantity::in_radians(rod_angle(crank, before_top));
  return crank.radius * (std::sin(t + p) / std::cos(p));
}

// The slope falls from 1 + r/l at the top to below zero at the right angle; halving finds where it is none.
Angle angle_of_least_force(const SliderCrank& crank) {
  const double ratio = crank.radius / crank.rod;
  double low = 0;
  double high = std::numbers::pi / 2.0;
  for (int step = 0; step < 60; ++step) {
    const double middle = (low + high) / 2.0;
    (lever_slope(ratio, middle) > 0 ? low : high) = middle;
  }
  return quantity::radians((low + high) / 2.0);
}

quantity::Force stop_force(const SliderCrank& crank, Angle before_top, quantity::Torque torque) {
  return torque / quantity::lever(bore_lever(crank, before_top));
}

CrankForces crank_forces(const SliderCrank& crank, Angle before_top, quantity::Torque torque) {
  const double p = quantity::in_radians(rod_angle(crank, before_top));
  const quantity::Force piston = stop_force(crank, before_top, torque);
  return {piston, piston / std::cos(p), piston * std::tan(p), torque / quantity::lever(crank.radius)};
}

} // namespace clampwright::crank
