// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.hpp"

using namespace clampwright::quantity;

double snippet(Torque torque, Energy energy) {
  (void)torque, (void)energy;
#ifdef CLAMPWRIGHT_FAULT
  return in_newton_metres(energy);
#else
  return in_newton_metres(torque);
#endif
}
