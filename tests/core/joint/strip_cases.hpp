// SPDX-License-Identifier: GPL-3.0-or-later
//
// M8 of class 8.8 in a metal of 110 MPa in shear, for the tests of what strips. The limits are 6g and 6H of ISO 965-1
// (from memory), the strengths those of ISO 898-1 (seen second-hand), the shear ratio that of VDI 2230-1 (from memory).
#pragma once

#include "core/joint/strip.hpp"
#include "core/thread/geometry.hpp"
#include "tests/core/cases.hpp"

namespace clampwright::test {

[[nodiscard]] inline thread::Limits m8_limits() {
  thread::Limits out;
  out.external_class = "6g";
  out.internal_class = "6H";
  out.d_max = quantity::millimetres(7.972);
  out.d_min = quantity::millimetres(7.760);
  out.d2_max = quantity::millimetres(7.160);
  out.d2_min = quantity::millimetres(7.042);
  out.d3_max = quantity::millimetres(6.438);
  out.D_min = quantity::millimetres(8.0);
  out.D2_min = quantity::millimetres(7.188);
  out.D2_max = quantity::millimetres(7.348);
  out.D1_min = quantity::millimetres(6.647);
  out.D1_max = quantity::millimetres(6.912);
  return out;
}

[[nodiscard]] inline strength::PartMaterial metal(double shear_MPa) {
  strength::PartMaterial out;
  out.name = out.description = "soft metal";
  out.shear_strength = quantity::megapascals(shear_MPa);
  out.sources.push_back({"a table", "", "", Known::second_hand});
  return out;
}

[[nodiscard]] inline joint::StripCase m8_strip(double shear_MPa = 110) {
  joint::StripCase out;
  out.thread = metric_thread("M8", 8, 1.25);
  out.limits = m8_limits();
  out.bolt = strength::strength_of(class_8_8(), thread::geometry_of(out.thread).stress_area, {});
  out.bolt_shear = strength::ShearRatio{0.65, {}};
  out.part = metal(shear_MPa);
  out.incomplete = joint::usual_incomplete(out.thread);
  return out;
}

} // namespace clampwright::test
