// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/piston_stop.hpp"

#include <cmath>

namespace clampwright::crank {

quantity::Length bore_lever(const SliderCrank& crank, quantity::Angle before_tdc) {
  const double t = quantity::in_radians(before_tdc);
  const double p = std::asin(crank.radius / crank.rod * std::sin(t));
  return crank.radius * (std::sin(t + p) / std::cos(p));
}

quantity::Force stop_force(const SliderCrank& crank, quantity::Angle before_tdc, quantity::Torque torque) {
  return torque / quantity::lever(bore_lever(crank, before_tdc));
}

} // namespace clampwright::crank
