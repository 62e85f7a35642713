// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/stress.hpp"

#include <cmath>
#include <numbers>

namespace clampwright::tightening {

namespace {

// τ = M/(π/divisor·d0³). The radian of the torque goes out: a stress is a force on an area.
quantity::Stress torsion(quantity::Torque torque, quantity::Area section, double divisor) {
  const quantity::Length d0 = section_diameter(section);
  const quantity::Volume modulus = std::numbers::pi / divisor * d0 * d0 * d0;
  return torque * quantity::radians(1.0) / modulus;
}

} // namespace

quantity::Length section_diameter(quantity::Area section) {
  return quantity::metres(std::sqrt(4.0 / std::numbers::pi * quantity::in_square_millimetres(section) / 1e6));
}

quantity::Stress tension(quantity::Force preload, quantity::Area section) { return preload / section; }

quantity::Stress plastic_torsion(quantity::Torque torque, quantity::Area section) {
  return torsion(torque, section, 12.0);
}

quantity::Stress elastic_torsion(quantity::Torque torque, quantity::Area section) {
  return torsion(torque, section, 16.0);
}

quantity::Stress equivalent(quantity::Stress tension, quantity::Stress torsion) {
  const double s = quantity::in_pascals(tension);
  const double t = quantity::in_pascals(torsion);
  return quantity::pascals(std::sqrt(s * s + 3.0 * t * t));
}

} // namespace clampwright::tightening
