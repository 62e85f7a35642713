// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.hpp"

using namespace clampwright::quantity;

void snippet(Torque torque, Energy energy) {
  (void)energy;
#ifdef CLAMPWRIGHT_FAULT
  (void)(torque + energy);
#else
  (void)(torque + torque);
#endif
}
