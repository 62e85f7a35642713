// SPDX-License-Identifier: GPL-3.0-or-later
//
// Ready-made cases for tests. The figures of class 8.8 are ISO 898-1:2013, Table 3 (seen second-hand); faces and
// frictions are chosen for the arithmetic and stand for no standard unless a test says so.
#pragma once

#include "core/tightening/case.hpp"

#include <string>
#include <utility>

namespace clampwright::test {

[[nodiscard]] inline thread::Thread metric_thread(std::string designation, double diameter_mm, double pitch_mm) {
  thread::Thread thread;
  thread.designation = std::move(designation);
  thread.diameter = quantity::millimetres(diameter_mm);
  thread.pitch = quantity::millimetres(pitch_mm);
  thread.series = "coarse";
  return thread;
}

[[nodiscard]] inline thread::Thread inch_thread(std::string designation, thread::Form form, double diameter_in,
                                                double tpi) {
  thread::Thread thread;
  thread.designation = std::move(designation);
  thread.form = form;
  thread.diameter = quantity::inches(diameter_in);
  thread.pitch = quantity::inches(1.0 / tpi);
  thread.tpi = tpi;
  return thread;
}

[[nodiscard]] inline friction::FrictionCoefficient mu(double value) {
  return friction::FrictionCoefficient::try_make(value).value();
}
[[nodiscard]] inline friction::NutFactor k(double value) { return friction::NutFactor::try_make(value).value(); }

[[nodiscard]] inline friction::FrictionBand mu_band(double low, double likely, double high) {
  return {mu(low), mu(likely), mu(high)};
}
[[nodiscard]] inline friction::FrictionBand mu_band(double value) { return mu_band(value, value, value); }

[[nodiscard]] inline friction::NutFactorBand k_band(double low, double likely, double high) {
  return {k(low), k(likely), k(high)};
}
[[nodiscard]] inline friction::NutFactorBand k_band(double value) { return k_band(value, value, value); }

[[nodiscard]] inline tightening::Face face(double outer_mm, double inner_mm) {
  return {quantity::millimetres(outer_mm), quantity::millimetres(inner_mm), "of the test", {}};
}

// ISO 898-1:2013, Table 3, class 8.8 up to M16 (seen second-hand): Sp 580, Rp0.2 640, Rm 800 MPa.
[[nodiscard]] inline strength::StrengthClass class_8_8() {
  return {"8.8",
          "ISO 898-1",
          quantity::megapascals(580),
          quantity::megapascals(640),
          "Rp0.2",
          quantity::megapascals(800),
          Source{"Mechanical properties of bolts", "2013", "Table 3", Known::second_hand}};
}

[[nodiscard]] inline strength::Strength strength_8_8(double stress_area_mm2) {
  return strength::strength_of(class_8_8(), quantity::square_millimetres(stress_area_mm2), {});
}

// The same with the mark of a head that bears 0.8 of the full loads.
[[nodiscard]] inline strength::Strength strength_08_8(double stress_area_mm2) {
  return strength::reduced(strength_8_8(stress_area_mm2), {"08.8", 0.8, class_8_8().source}, {});
}

// M10, class 8.8 with its nominal stress area of 58.0 mm2, friction 0.08 / 0.12 / 0.16 and K 0.12 / 0.18 / 0.22,
// face 14.63/11 mm (ISO 4014 and ISO 273, so D_m = 12.815 mm).
[[nodiscard]] inline tightening::Case m10_case() {
  tightening::Case out;
  out.thread = metric_thread("M10", 10, 1.5);
  out.strength = strength_8_8(58.0);
  out.surfaces = "oiled";
  out.friction_stated = true;
  out.mu_thread = mu_band(0.08, 0.12, 0.16);
  out.mu_head = mu_band(0.08, 0.12, 0.16);
  out.nut_factor = k_band(0.12, 0.18, 0.22);
  out.face = face(14.63, 11.0);
  return out;
}

} // namespace clampwright::test
