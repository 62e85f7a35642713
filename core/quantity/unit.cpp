// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/unit.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <numbers>

namespace clampwright::quantity {

namespace {

constexpr long double k_pound = 0.45359237L; // kg, exact
constexpr long double k_ounce = k_pound / 16;
constexpr long double k_gravity = 9.80665L; // m/s2, exact
constexpr long double k_inch = 0.0254L;     // m, exact
constexpr long double k_foot = 12 * k_inch;
constexpr long double k_pi = std::numbers::pi_v<long double>;

constexpr std::array k_units{
    Unit{Kind::torque, "N.m", "N·m", 1},
    Unit{Kind::torque, "N.cm", "N·cm", 0.01L},
    Unit{Kind::torque, "N.mm", "N·mm", 0.001L},
    Unit{Kind::torque, "mN.m", "mN·m", 0.001L},
    Unit{Kind::torque, "dN.m", "dN·m", 0.1L},
    Unit{Kind::torque, "daN.m", "daN·m", 10},
    Unit{Kind::torque, "kN.m", "kN·m", 1000},
    Unit{Kind::torque, "kgf.m", "kgf·m", k_gravity},
    Unit{Kind::torque, "kgf.cm", "kgf·cm", k_gravity * 0.01L},
    Unit{Kind::torque, "gf.cm", "gf·cm", k_gravity * 0.00001L},
    Unit{Kind::torque, "lbf.ft", "lbf·ft", k_pound* k_gravity* k_foot},
    Unit{Kind::torque, "lbf.in", "lbf·in", k_pound* k_gravity* k_inch},
    Unit{Kind::torque, "ozf.in", "ozf·in", k_ounce* k_gravity* k_inch},
    Unit{Kind::force, "N", "N", 1},
    Unit{Kind::force, "kN", "kN", 1000},
    Unit{Kind::force, "daN", "daN", 10},
    Unit{Kind::force, "lbf", "lbf", k_pound* k_gravity},
    Unit{Kind::force, "kgf", "kgf", k_gravity},
    Unit{Kind::force, "ozf", "ozf", k_ounce* k_gravity},
    Unit{Kind::stress, "MPa", "MPa", 1e6L},
    Unit{Kind::stress, "Pa", "Pa", 1},
    Unit{Kind::stress, "kPa", "kPa", 1e3L},
    Unit{Kind::stress, "GPa", "GPa", 1e9L},
    Unit{Kind::stress, "N/mm2", "N/mm²", 1e6L},
    Unit{Kind::stress, "psi", "psi", k_pound* k_gravity / (k_inch * k_inch)},
    Unit{Kind::stress, "ksi", "ksi", 1000 * k_pound* k_gravity / (k_inch * k_inch)},
    Unit{Kind::stress, "bar", "bar", 1e5L},
    Unit{Kind::stress, "kgf/mm2", "kgf/mm²", k_gravity * 1e6L},
    Unit{Kind::length, "mm", "mm", 0.001L},
    Unit{Kind::length, "cm", "cm", 0.01L},
    Unit{Kind::length, "m", "m", 1},
    Unit{Kind::length, "um", "µm", 1e-6L},
    Unit{Kind::length, "in", "in", k_inch},
    Unit{Kind::length, "ft", "ft", k_foot},
    Unit{Kind::angle, "deg", "°", k_pi / 180},
    Unit{Kind::angle, "rad", "rad", 1},
    Unit{Kind::temperature, "degC", "°C", 1, 273.15L},
    Unit{Kind::temperature, "degF", "°F", 5.0L / 9.0L, 459.67L},
    Unit{Kind::temperature, "K", "K", 1},
    Unit{Kind::time, "h", "h", 3600},
    Unit{Kind::time, "min", "min", 60},
    Unit{Kind::time, "s", "s", 1},
    Unit{Kind::time, "d", "d", 86400},
    Unit{Kind::speed, "rpm", "rpm", 2 * k_pi / 60},
};

} // namespace

std::span<const Unit> all_units() { return k_units; }

const Unit& unit_named(std::string_view name) {
  const auto found = std::ranges::find(k_units, name, &Unit::name);
  assert(found != k_units.end());
  return *found;
}

std::string_view kind_name(Kind kind) {
  switch (kind) {
  case Kind::torque:
    return "torque";
  case Kind::force:
    return "force";
  case Kind::stress:
    return "stress";
  case Kind::length:
    return "length";
  case Kind::angle:
    return "angle";
  case Kind::temperature:
    return "temperature";
  case Kind::time:
    return "time";
  case Kind::speed:
    return "rotational speed";
  }
  return "";
}

namespace {

// Takes the offset away. What then is left of a difference of equals is rounding, not temperature: 32 °F are 0 °C.
double without_offset(long double value, long double offset) {
  const long double difference = value - offset;
  const bool is_rounding = difference < offset * 1e-17L && difference > -offset * 1e-17L;
  return is_rounding ? 0.0 : static_cast<double>(difference);
}

// Adds the offset. The lowest temperature that a double of that scale can say is absolute zero, not a hair beside it:
// -459.67 °F are 0 K.
long double with_offset(double value, long double offset) {
  const long double sum = static_cast<long double>(value) + offset;
  const bool is_rounding = sum < offset * 1.2e-16L && sum > -offset * 1.2e-16L; // half an ULP of a double
  return is_rounding ? 0.0L : sum;
}

} // namespace

// The x87 format carries 11 bits more than a double, so the factor, the product and the quotient each lose less than
// a thousandth of an ULP of the double that is returned.
double from_si(double in_si, const Unit& unit) {
  return without_offset(static_cast<long double>(in_si) / unit.to_si, unit.offset);
}

double to_si(double value, const Unit& unit) {
  return static_cast<double>(with_offset(value, unit.offset) * unit.to_si);
}

double convert(double value, const Unit& from, const Unit& to) {
  if (&from == &to) return value;
  return without_offset(with_offset(value, from.offset) * from.to_si / to.to_si, to.offset);
}

} // namespace clampwright::quantity
