// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/source/source.hpp"

namespace clampwright::friction {

// What a published rule makes of a torque when threads and faces are not in the state that it was given for. The rules
// contradict each other, so one is shown with where it stands, and none is picked.
struct Reduction {
  std::string rule; // in words
  double factor = 1.0;
  Source source;
};

} // namespace clampwright::friction
