// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.hpp"

using namespace clampwright::quantity;

void snippet(Force force, Length length) {
#ifdef CLAMPWRIGHT_FAULT
  const Torque torque = force * length;
#else
  const Torque torque = moment(force, length);
#endif
  (void)torque;
}
