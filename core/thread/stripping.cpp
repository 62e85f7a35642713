// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/stripping.hpp"

#include <cmath>
#include <numbers>

#include "core/thread/geometry.hpp"

namespace clampwright::thread {

namespace {

using quantity::Length;

// The thread is half a pitch thick at its pitch diameter, and thicker by tan α for each unit of diameter towards its
// root.
Length strip_width(const Thread& thread, Length sheared_at, Length from_pitch_diameter) {
  const double tangent = std::tan(quantity::in_radians(geometry_of(thread).flank_angle));
  const Length thickness = 0.5 * thread.pitch + tangent * from_pitch_diameter;
  return std::numbers::pi * (sheared_at / thread.pitch) * thickness;
}

} // namespace

Length internal_strip_width(const Thread& thread, const Limits& limits) {
  return strip_width(thread, limits.d_min, limits.d_min - limits.D2_max);
}

Length external_strip_width(const Thread& thread, const Limits& limits) {
  return strip_width(thread, limits.D1_max, limits.d2_min - limits.D1_max);
}

quantity::Force strip_load(Length width, Length engagement, quantity::Stress shear) {
  return width * engagement * shear;
}

} // namespace clampwright::thread
