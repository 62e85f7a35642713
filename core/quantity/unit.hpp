// SPDX-License-Identifier: GPL-3.0-or-later
//
// The units that are read and written. Every factor is computed from the definitions that are exact by international
// agreement: inch 25.4 mm and pound 0.45359237 kg (1959), standard gravity 9.80665 m/s2 (CGPM 1901), bar 10^5 Pa,
// zero Celsius 273.15 K. None is typed as a rounded product.
#pragma once

#include <span>
#include <string_view>

namespace clampwright::quantity {

enum class Kind { torque, force, stress, length, angle, temperature, time, speed };

// One unit. A value v in it is (v + offset) * to_si in the SI unit of its kind (N·m, N, Pa, m, rad, K, s, rad/s).
// `name` is the spelling of files and JSON, ASCII only ("N.m"); `symbol` is what people read ("N·m").
struct Unit {
  Kind kind;
  std::string_view name;
  std::string_view symbol;
  long double to_si;
  long double offset = 0.0L;
};

// All units, kind by kind, the metric ones first.
[[nodiscard]] std::span<const Unit> all_units();

// The unit of that exact name. Precondition: there is one (for names in our own code; text goes through read_unit).
[[nodiscard]] const Unit& unit_named(std::string_view name);

// "torque", "force", …, for sentences.
[[nodiscard]] std::string_view kind_name(Kind kind);

// The value of an SI number in that unit, and back; both within 1 ULP of the exact product.
[[nodiscard]] double from_si(double in_si, const Unit& unit);
[[nodiscard]] double to_si(double value, const Unit& unit);

// A value of one unit in another of the same kind, within 1 ULP, without a stop at the SI number.
[[nodiscard]] double convert(double value, const Unit& from, const Unit& to);

} // namespace clampwright::quantity
