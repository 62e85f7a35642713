// SPDX-License-Identifier: GPL-3.0-or-later
//
// The one reader of quantities. Nothing is guessed: a bare number, a unit of the wrong kind, a comma (both readings are
// spelled out), a second value, text that trails or goes on and on, `nan`, `inf`, hexadecimal or digits other than 0–9
// are refused, with
// what was understood and an example of a good entry. The locale is never asked.
#pragma once

#include <string>
#include <string_view>

#include "core/problem/problem.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/spelling.hpp"

namespace clampwright::quantity {

// What a text said: the number and unit as understood, and whether a mass stood for a force.
struct Reading {
  double value;
  const Unit* unit;
  bool mass_as_force;

  [[nodiscard]] double si() const { return to_si(value, *unit); }
};

// A quantity of any kind, or of the wanted kind. Torque, force, stress, length, time and speed are not negative; a
// temperature is not below absolute zero; nothing but zero is smaller than 1e-12 or larger than 1e12 of its unit.
// Lengths may be fractions: "1/4 in", "1 1/2 in", "1-1/2 in".
[[nodiscard]] Result<Reading> read_quantity(std::string_view text);
[[nodiscard]] Result<Reading> read_quantity(std::string_view text, Kind wanted);

[[nodiscard]] Result<Torque> read_torque(std::string_view text);
[[nodiscard]] Result<Force> read_force(std::string_view text);
// Greater than zero.
[[nodiscard]] Result<Length> read_length(std::string_view text);
// Of any sign.
[[nodiscard]] Result<Angle> read_angle(std::string_view text);
// Greater than zero.
[[nodiscard]] Result<Stress> read_stress(std::string_view text);

// A plain number without a unit, of any sign: a coefficient. "0.12" Nothing but zero is smaller than 1e-12 or larger
// than 1e12.
[[nodiscard]] Result<double> read_number(std::string_view text);

// A whole number from `least` to `most`: how many bolts, slots, months.
[[nodiscard]] Result<int> read_count(std::string_view text, int least, int most);

// A share of one: "0.75" or "75%". Not negative.
[[nodiscard]] Result<double> read_share(std::string_view text);

// Two lengths in one unit or in one each, outer first: "24x13mm", "24mm x 13mm".
struct LengthPair {
  Length first;
  Length second;
};
[[nodiscard]] Result<LengthPair> read_length_pair(std::string_view text);

} // namespace clampwright::quantity
