// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.hpp"

using namespace clampwright::quantity;

bool snippet(Torque torque, Energy energy) {
  (void)energy;
#ifdef CLAMPWRIGHT_FAULT
  return torque < energy;
#else
  return torque < torque + torque;
#endif
}
