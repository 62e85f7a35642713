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

Length strip_length(quantity::Force load, Length width, quantity::Stress shear) { return load / (width * shear); }

Limits basic_limits(const Thread& thread) {
  const Geometry geometry = geometry_of(thread);
  Limits out;
  out.d_max = out.d_min = out.D_min = thread.diameter;
  out.d2_max = out.d2_min = out.D2_min = out.D2_max = geometry.pitch_diameter;
  out.d3_max = geometry.root_diameter;
  out.D1_min = out.D1_max = geometry.minor_diameter;
  return out;
}

Limits wire_insert_limits(const Thread& thread, const Limits& limits) {
  const Length larger = 0.75 * std::numbers::sqrt3 * thread.pitch;
  Limits out = limits;
  for (Length* diameter : {&out.d_max, &out.d_min, &out.d2_max, &out.d2_min, &out.d3_max, &out.D_min, &out.D2_min,
                           &out.D2_max, &out.D1_min, &out.D1_max})
    *diameter += larger;
  return out;
}

} // namespace clampwright::thread
