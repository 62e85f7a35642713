// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.hpp"

using namespace clampwright::quantity;

void snippet() {
#ifdef CLAMPWRIGHT_FAULT
  const Torque torque = 12.0;
#else
  const Torque torque = newton_metres(12.0);
#endif
  (void)torque;
}
