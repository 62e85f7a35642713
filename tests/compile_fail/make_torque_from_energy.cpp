// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.hpp"

using namespace clampwright::quantity;

void snippet(Torque torque, Energy energy) {
  (void)torque, (void)energy;
#ifdef CLAMPWRIGHT_FAULT
  const Torque made(energy);
#else
  const Torque made(torque);
#endif
  (void)made;
}
