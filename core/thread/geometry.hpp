// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/thread/thread.hpp"
#include "core/working/step.hpp"

namespace clampwright::thread {

// The basic dimensions of a thread, by formula and unrounded.
struct Geometry {
  quantity::Length pitch_diameter;           // d2
  quantity::Length minor_diameter;           // D1, basic internal
  quantity::Length root_diameter;            // d3: metric design root; Unified rounded root; Whitworth, BA: the minor
  std::optional<quantity::Area> stress_area; // none is standardised for Whitworth, BA and cycle threads
  quantity::Angle flank_angle;               // half of the angle between the flanks
};

// ISO 68-1, ISO 724, ISO 898-1 (stress area); ASME B1.1; BS 84; BS 93. Square roots and π are taken exactly.
// Precondition: the pitch is smaller than the diameter.
[[nodiscard]] Geometry geometry_of(const Thread& thread);

// How the dimensions follow from diameter and pitch, in millimetres.
[[nodiscard]] Working geometry_working(const Thread& thread);

// For Whitworth, BA and cycle threads, which have no standardised stress area: that of the circle whose diameter is the
// mean of pitch and minor diameter, by analogy with ISO 898-1. Nothing for the forms that have one.
[[nodiscard]] std::optional<quantity::Area> section_by_analogy(const Thread& thread);

// The usual hole to tap: diameter less pitch, common practice for flanks of 60 degrees (metric, Unified). It lies
// within the limits 6H or 2B of the minor diameter for every listed thread. Nothing for British threads.
[[nodiscard]] std::optional<quantity::Length> tapping_hole(const Thread& thread);

// The helix angle at the pitch diameter: tan φ = P/(π·d2).
[[nodiscard]] quantity::Angle helix_angle(const Thread& thread);

} // namespace clampwright::thread
