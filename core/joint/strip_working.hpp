// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/joint/strip.hpp"
#include "core/working/step.hpp"

namespace clampwright::joint {

// How the answer comes about, line by line. Precondition: it is complete but for its working.
[[nodiscard]] Working strip_working(const StripAnswer& answer);

} // namespace clampwright::joint
