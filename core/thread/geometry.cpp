// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/geometry.hpp"

#include <cmath>
#include <numbers>
#include <string>

#include <fmt/format.h>

namespace clampwright::thread {

namespace {

using quantity::Area;
using quantity::Length;
using std::numbers::pi;
using std::numbers::sqrt3;

// What a thread form is, in multiples of the pitch below the nominal diameter. H is the height of the sharp V.
struct Profile {
  double pitch_diameter; // d - this·P
  double minor_diameter;
  double root_diameter;
  std::optional<double> stress_diameter;
  double flank_deg;
  std::string_view pitch_formula;
  std::string_view minor_formula;
  std::string_view root_formula;
  std::string_view stress_formula;
  std::string_view source;
};

// Whitworth: H = P/(2·tan 27.5°), one sixth cut off at crest and root, so the thread is 2/3·H deep (BS 84).
double whitworth_depth() { return 2.0 / 3.0 / (2.0 * std::tan(27.5 * pi / 180.0)); }

Profile profile_of(Form form) {
  switch (form) {
  case Form::metric:
    // ISO 68-1: H = √3/2·P; d2 = d - 3/4·H, D1 = d - 5/4·H, d3 = d1 - H/6 = d - 17/12·H.
    // ISO 898-1: the stress area is that of the circle of diameter (d2 + d3)/2.
    return {3.0 * sqrt3 / 8.0,
            5.0 * sqrt3 / 8.0,
            17.0 * sqrt3 / 24.0,
            (3.0 * sqrt3 / 8.0 + 17.0 * sqrt3 / 24.0) / 2.0,
            30.0,
            "d - 3·√3/8·P",
            "d - 5·√3/8·P",
            "d - 17·√3/24·P",
            "π/4·((d2 + d3)/2)²",
            "ISO 68-1, ISO 724, ISO 898-1"};
  case Form::unified:
    // ASME B1.1: pitch and minor diameter as ISO 68-1; rounded root D - 11/8·H; stress area 0.7854·(D - 0.9743·P)²,
    // 0.9743 being 9·√3/16.
    return {3.0 * sqrt3 / 8.0, 5.0 * sqrt3 / 8.0, 11.0 * sqrt3 / 16.0, 9.0 * sqrt3 / 16.0,     30.0,
            "D - 3·√3/8·P",    "D - 5·√3/8·P",    "D - 11·√3/16·P",    "π/4·(D - 9·√3/16·P)²", "ASME B1.1"};
  case Form::bsc:
    // BS 811 (depth and radius from memory): 60° flanks, crest and root rounded with P/6, so the thread is
    // √3/2·P - P/3 deep.
    return {sqrt3 / 2.0 - 1.0 / 3.0,
            2.0 * (sqrt3 / 2.0 - 1.0 / 3.0),
            2.0 * (sqrt3 / 2.0 - 1.0 / 3.0),
            std::nullopt,
            30.0,
            "D - (√3/2 - 1/3)·P",
            "D - 2·(√3/2 - 1/3)·P",
            "D - 2·(√3/2 - 1/3)·P",
            "",
            "BS 811 (from memory)"};
  case Form::whitworth:
    return {whitworth_depth(),     2.0 * whitworth_depth(), 2.0 * whitworth_depth(), std::nullopt, 27.5,
            "D - P/(3·tan 27.5°)", "D - 2·P/(3·tan 27.5°)", "D - 2·P/(3·tan 27.5°)", "",           "BS 84"};
  case Form::ba:
    return {0.6, 1.2, 1.2, std::nullopt, 23.75, "D - 0.6·P", "D - 1.2·P", "D - 1.2·P", "", "BS 93"};
  }
  return {};
}

Area circle(Length diameter) { return pi / 4.0 * diameter * diameter; }

} // namespace

Geometry geometry_of(const Thread& thread) {
  const Profile profile = profile_of(thread.form);
  const Length d = thread.diameter;
  const Length p = thread.pitch;
  Geometry out{d - profile.pitch_diameter * p, d - profile.minor_diameter * p, d - profile.root_diameter * p,
               std::nullopt, quantity::degrees(profile.flank_deg)};
  if (profile.stress_diameter) out.stress_area = circle(d - *profile.stress_diameter * p);
  return out;
}

Working geometry_working(const Thread& thread) {
  const Profile profile = profile_of(thread.form);
  const Geometry geometry = geometry_of(thread);
  const std::string source(profile.source);
  const std::string d = thread.form == Form::metric ? "d" : "D";
  Working steps;
  steps.push_back(
      {d, "nominal diameter", "of " + thread.designation, quantity::in_millimetres(thread.diameter), "mm", source});
  steps.push_back({"P", "pitch",
                   thread.tpi      ? fmt::format("25.4/{:g}", *thread.tpi)
                   : thread.listed ? "of the series"
                                   : "as given",
                   quantity::in_millimetres(thread.pitch), "mm", source});
  steps.push_back({"d2", "pitch diameter", std::string(profile.pitch_formula),
                   quantity::in_millimetres(geometry.pitch_diameter), "mm", source});
  steps.push_back({"D1", "minor diameter of the nut thread", std::string(profile.minor_formula),
                   quantity::in_millimetres(geometry.minor_diameter), "mm", source});
  steps.push_back({"d3", "root diameter of the bolt thread", std::string(profile.root_formula),
                   quantity::in_millimetres(geometry.root_diameter), "mm", source});
  if (geometry.stress_area)
    steps.push_back({"As", "stress area", std::string(profile.stress_formula),
                     quantity::in_square_millimetres(*geometry.stress_area), "mm²", source});
  return steps;
}

std::optional<Area> section_by_analogy(const Thread& thread) {
  const Geometry geometry = geometry_of(thread);
  if (geometry.stress_area) return std::nullopt;
  return circle((geometry.pitch_diameter + geometry.minor_diameter) / 2.0);
}

std::optional<Length> tapping_hole(const Thread& thread) {
  if (thread.form != Form::metric && thread.form != Form::unified) return std::nullopt;
  return thread.diameter - thread.pitch;
}

quantity::Angle helix_angle(const Thread& thread) {
  const double tangent = thread.pitch / (pi * geometry_of(thread).pitch_diameter);
  return quantity::radians(std::atan(tangent));
}

} // namespace clampwright::thread
