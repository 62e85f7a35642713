// SPDX-License-Identifier: GPL-3.0-or-later
//
// The kinds of quantity that a threaded joint needs, as types. A torque is not an energy: in Boost.Units a torque has
// an angle below the line, so `force * length` is an energy and does not convert into a torque. `moment` is the one
// place where a force and an arm become a torque; a thread needs no such trick, because a lead is a length per turn.
#pragma once

#include <numbers>

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/energy.hpp>
#include <boost/units/systems/si/force.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/plane_angle.hpp>
#include <boost/units/systems/si/pressure.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/torque.hpp>
#include <boost/units/systems/si/volume.hpp>

namespace clampwright::quantity {

namespace units = boost::units;
namespace si = boost::units::si;

using Length = units::quantity<si::length>;
using Area = units::quantity<si::area>;
using Volume = units::quantity<si::volume>;
using Force = units::quantity<si::force>;
using Torque = units::quantity<si::torque>;
using Energy = units::quantity<si::energy>;
using Stress = units::quantity<si::pressure>;
using Angle = units::quantity<si::plane_angle>;
using Temperature = units::quantity<si::temperature>; // how hot a thing is, from absolute zero

// Torque for each newton of clamp load: the lever arm of a thread, a face, or both.
using TorquePerForce = units::divide_typeof_helper<Torque, Force>::type;

// How much a part gives for each newton on it.
using Resilience = units::divide_typeof_helper<Length, Force>::type;

// Entering: each maker names its unit. Small units divide by a whole number, so that 1.25 mm is stored as the double
// nearest to 0.00125 m and comes back as 1.25.
[[nodiscard]] constexpr Length metres(double value) { return Length::from_value(value); }
[[nodiscard]] constexpr Length millimetres(double value) { return Length::from_value(value / 1000.0); }
[[nodiscard]] constexpr Length inches(double value) { return Length::from_value(value * 0.0254); }
[[nodiscard]] constexpr Area square_millimetres(double value) { return Area::from_value(value / 1e6); }
[[nodiscard]] constexpr Area square_inches(double value) { return Area::from_value(value * 0.00064516); }
[[nodiscard]] constexpr Force newtons(double value) { return Force::from_value(value); }
[[nodiscard]] constexpr Torque newton_metres(double value) { return Torque::from_value(value); }
[[nodiscard]] constexpr Stress pascals(double value) { return Stress::from_value(value); }
[[nodiscard]] constexpr Stress megapascals(double value) { return Stress::from_value(value * 1e6); }
[[nodiscard]] constexpr Angle radians(double value) { return Angle::from_value(value); }
[[nodiscard]] constexpr Temperature degrees_celsius(double value) { return Temperature::from_value(value + 273.15); }
// In the longer format, so that the angle is the nearest double.
[[nodiscard]] constexpr Angle degrees(double value) {
  return Angle::from_value(
      static_cast<double>(static_cast<long double>(value) * std::numbers::pi_v<long double> / 180));
}

// Leaving.
[[nodiscard]] constexpr double in_metres(Length length) { return length.value(); }
[[nodiscard]] constexpr double in_millimetres(Length length) { return length.value() * 1000.0; }
[[nodiscard]] constexpr double in_square_millimetres(Area area) { return area.value() * 1e6; }
[[nodiscard]] constexpr double in_cubic_millimetres(Volume volume) { return volume.value() * 1e9; }
[[nodiscard]] constexpr double in_newtons(Force force) { return force.value(); }
[[nodiscard]] constexpr double in_newton_metres(Torque torque) { return torque.value(); }
[[nodiscard]] constexpr double in_pascals(Stress stress) { return stress.value(); }
[[nodiscard]] constexpr double in_megapascals(Stress stress) { return stress.value() / 1e6; }
[[nodiscard]] constexpr double in_radians(Angle angle) { return angle.value(); }
// 30° comes back as 30 and not as its neighbour: where a value of nine decimals stands for the same angle, it is that.
[[nodiscard]] constexpr double in_degrees(Angle angle) {
  const auto exact =
      static_cast<double>(static_cast<long double>(angle.value()) * 180 / std::numbers::pi_v<long double>);
  if (!(exact > -1e6 && exact < 1e6)) return exact;
  const double rounded = static_cast<double>(static_cast<long long>(exact * 1e9 + (exact < 0 ? -0.5 : 0.5))) / 1e9;
  return degrees(rounded) <= angle && degrees(rounded) >= angle ? rounded : exact;
}
// As for an angle: 149 °C comes back as 149, though 149 + 273.15 - 273.15 misses it by the last bits.
[[nodiscard]] constexpr double in_degrees_celsius(Temperature temperature) {
  const double exact = temperature.value() - 273.15;
  if (!(exact > -1e6 && exact < 1e6)) return exact;
  const double rounded = static_cast<double>(static_cast<long long>(exact * 1e9 + (exact < 0 ? -0.5 : 0.5))) / 1e9;
  const Temperature again = degrees_celsius(rounded);
  return again <= temperature && again >= temperature ? rounded : exact;
}
// A lever is a length: 1 N of clamp load on a lever of 1 mm takes 1 N·mm.
[[nodiscard]] constexpr double in_millimetres(TorquePerForce lever) { return lever.value() * 1000.0; }

[[nodiscard]] constexpr double in_millimetres_per_newton(Resilience resilience) { return resilience.value() * 1000.0; }

// The torque of a force at right angles to an arm.
[[nodiscard]] constexpr Torque moment(Force force, Length arm) { return force * arm / si::radian; }

// The lever on which a clamp load works through an arm that it meets at right angles.
[[nodiscard]] constexpr TorquePerForce lever(Length arm) { return arm / si::radian; }

// One turn.
[[nodiscard]] constexpr Angle one_turn() { return radians(2.0 * std::numbers::pi); }

} // namespace clampwright::quantity
