// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/source/source.hpp"

namespace clampwright::strength {

// What share of its tensile strength a bolt bears in shear.
struct ShearRatio {
  double share = 0;
  Source source;
};

} // namespace clampwright::strength
