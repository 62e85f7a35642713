// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/write.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>

#include <fmt/format.h>

namespace clampwright::quantity {

namespace {

std::string with_symbol(std::string number, const Unit& unit) {
  if (unit.name == "deg") return number + "°";
  return fmt::format("{} {}", number, unit.symbol);
}

std::string write_si_band(double low, double likely, double high, const Unit& unit) {
  return with_symbol(fmt::format("{} / {} / {}", write_rounded(from_si(low, unit)),
                                 write_rounded(from_si(likely, unit)), write_rounded(from_si(high, unit))),
                     unit);
}

} // namespace

DisplayUnits DisplayUnits::imperial() {
  DisplayUnits units;
  units.torque = &unit_named("lbf.ft");
  units.force = &unit_named("lbf");
  units.stress = &unit_named("psi");
  units.length = &unit_named("in");
  return units;
}

void DisplayUnits::prefer(const Unit& unit) {
  switch (unit.kind) {
  case Kind::torque:
    torque = &unit;
    break;
  case Kind::force:
    force = &unit;
    break;
  case Kind::stress:
    stress = &unit;
    break;
  case Kind::length:
    length = &unit;
    break;
  case Kind::angle:
    angle = &unit;
    break;
  case Kind::temperature:
  case Kind::time:
  case Kind::speed:
    break;
  }
}

std::string write_rounded(double value, int digits) {
  const double size = std::abs(value);
  if (size < std::numeric_limits<double>::min()) return "0";
  if (size >= 1e15 || size < 1e-6) return fmt::format("{:.{}e}", value, std::max(digits - 1, 0));
  // Of the rounded value: 99.96 to three digits is 100, not 100.0.
  const std::string scientific = fmt::format("{:.{}e}", size, std::max(digits - 1, 0));
  int magnitude = 0;
  const char* exponent = scientific.data() + scientific.find('e') + 1;
  if (*exponent == '+') ++exponent;
  std::from_chars(exponent, scientific.data() + scientific.size(), magnitude);
  return fmt::format("{:.{}f}", value, std::max(digits - 1 - magnitude, 0));
}

std::string write_number(double value, int digits) {
  std::string text = write_rounded(value, digits);
  if (text.find('e') != std::string::npos) return text;
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text;
}

std::string write_value(double value, const Unit& unit, int digits) {
  return with_symbol(write_number(value, digits), unit);
}

std::string write_si_rounded(double in_si, const Unit& unit, int digits) {
  return with_symbol(write_rounded(from_si(in_si, unit), digits), unit);
}

std::string write_si(double in_si, const Unit& unit, int digits) {
  return write_value(from_si(in_si, unit), unit, digits);
}

std::string write(Torque torque, const DisplayUnits& units, int digits) {
  return write_si(in_newton_metres(torque), *units.torque, digits);
}
std::string write(Force force, const DisplayUnits& units, int digits) {
  return write_si(in_newtons(force), *units.force, digits);
}
std::string write(Stress stress, const DisplayUnits& units, int digits) {
  return write_si(in_pascals(stress), *units.stress, digits);
}
std::string write(Length length, const DisplayUnits& units, int digits) {
  return write_si(in_metres(length), *units.length, digits);
}

std::string write_share(double share) { return fmt::format("{:.0f} %", share * 100.0); }

std::string write(const Band<Torque>& band, const DisplayUnits& units) {
  return write_si_band(in_newton_metres(band.low), in_newton_metres(band.likely), in_newton_metres(band.high),
                       *units.torque);
}
std::string write(const Band<Force>& band, const DisplayUnits& units) {
  return write_si_band(in_newtons(band.low), in_newtons(band.likely), in_newtons(band.high), *units.force);
}
std::string write_shares(const Band<double>& band) {
  return fmt::format("{:.0f} / {:.0f} / {:.0f} %", band.low * 100.0, band.likely * 100.0, band.high * 100.0);
}

} // namespace clampwright::quantity
