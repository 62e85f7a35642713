// SPDX-License-Identifier: GPL-3.0-or-later
//
// The one writer of quantities, for people. Files and JSON write numbers unrounded and name the unit in the key.
#pragma once

#include <string>

#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace clampwright::quantity {

// The units that a person wants to see. Metric: N·m, kN, MPa, mm. Imperial: lbf·ft, lbf, psi, in.
struct DisplayUnits {
  const Unit* torque = &unit_named("N.m");
  const Unit* force = &unit_named("kN");
  const Unit* stress = &unit_named("MPa");
  const Unit* length = &unit_named("mm");
  const Unit* angle = &unit_named("deg");

  [[nodiscard]] static DisplayUnits imperial();
  // The given unit takes the place of the one of its kind; kinds that have no display unit are left alone.
  void prefer(const Unit& unit);
};

// `digits` significant digits in plain notation with a point, trailing zeros of the fraction dropped; whole numbers are
// never rounded away ("12345" with 3 digits stays 12345). Values from 1e15 up or below 1e-6 use an exponent.
[[nodiscard]] std::string write_number(double value, int digits);

// The same, trailing zeros kept: "25.0". For values that were computed and rounded; a value as given keeps its own
// digits.
[[nodiscard]] std::string write_rounded(double value, int digits = 3);

// Number, no-break-free space, symbol: "33.2 lbf·ft", "60°".
[[nodiscard]] std::string write_si(double in_si, const Unit& unit, int digits = 3);
[[nodiscard]] std::string write_value(double value, const Unit& unit, int digits);

// "31.0 lbf·ft": converted or computed, so rounded.
[[nodiscard]] std::string write_si_rounded(double in_si, const Unit& unit, int digits = 3);

[[nodiscard]] std::string write(Torque torque, const DisplayUnits& units, int digits = 3);
[[nodiscard]] std::string write(Force force, const DisplayUnits& units, int digits = 3);
[[nodiscard]] std::string write(Stress stress, const DisplayUnits& units, int digits = 3);
[[nodiscard]] std::string write(Length length, const DisplayUnits& units, int digits = 5);

// "62 %"
[[nodiscard]] std::string write_share(double share);

// "15.2 / 21.9 / 33.0 kN": low, likely, high.
[[nodiscard]] std::string write(const Band<Torque>& band, const DisplayUnits& units);
[[nodiscard]] std::string write(const Band<Force>& band, const DisplayUnits& units);
[[nodiscard]] std::string write_shares(const Band<double>& band);

} // namespace clampwright::quantity
