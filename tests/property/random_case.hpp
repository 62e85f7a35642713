// SPDX-License-Identifier: GPL-3.0-or-later
//
// Random but sensible joints. Every random choice is drawn through RapidCheck, so that a failing one is shrunk and
// printed with its seed.
#pragma once

#include "core/thread/geometry.hpp"
#include "tests/core/cases.hpp"

#include <rapidcheck.h>

#include <array>
#include <cmath>
#include <string>

namespace clampwright::test {

// Evenly from `low` to `high`, in a million steps.
[[nodiscard]] inline double between(double low, double high) {
  return low + (high - low) * (*rc::gen::inRange(0, 1000001) / 1e6);
}

[[nodiscard]] inline thread::Thread random_thread() {
  const std::array threads{metric_thread("M3", 3, 0.5),
                           metric_thread("M6", 6, 1),
                           metric_thread("M8x1", 8, 1),
                           metric_thread("M10", 10, 1.5),
                           metric_thread("M39", 39, 4),
                           inch_thread("1/4-28 UNF", thread::Form::unified, 0.25, 28),
                           inch_thread("3/8-16 UNC", thread::Form::unified, 0.375, 16),
                           inch_thread("5/16 BSW", thread::Form::whitworth, 0.3125, 18),
                           inch_thread("1/4 BSC", thread::Form::bsc, 0.25, 26)};
  return threads[*rc::gen::inRange<std::size_t>(0, threads.size())];
}

[[nodiscard]] inline friction::FrictionBand random_friction(double least, double most) {
  const double low = between(least, most);
  const double likely = between(low, most);
  return mu_band(low, likely, between(likely, most));
}

[[nodiscard]] inline friction::NutFactorBand random_nut_factor() {
  const double low = between(0.05, 0.5);
  const double likely = between(low, 0.5);
  return k_band(low, likely, between(likely, 0.5));
}

// A bolt of class 8.8 with both models known.
[[nodiscard]] inline tightening::Case random_case() {
  tightening::Case out;
  out.thread = random_thread();
  out.strength = strength::strength_of(class_8_8(), thread::geometry_of(out.thread).stress_area, {});
  out.friction_stated = true;
  out.mu_thread = random_friction(0.0, 0.5);
  out.mu_head = random_friction(0.0, 0.5);
  out.nut_factor = random_nut_factor();
  const double d_mm = quantity::in_millimetres(out.thread.diameter);
  out.face = face(d_mm * between(1.4, 2.5), d_mm * between(1.02, 1.3));
  return out;
}

// From a tenth of a newton metre to a thousand, evenly in its order of magnitude.
[[nodiscard]] inline quantity::Torque random_torque() {
  return quantity::newton_metres(std::pow(10.0, between(-1.0, 3.0)));
}

[[nodiscard]] inline double relative(double one, double other) { return std::abs(one / other - 1.0); }

} // namespace clampwright::test
