// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/joint/strip.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::report {

// What gives first, the bolt or a thread. `clamp` is what a torque makes there, or nothing.
[[nodiscard]] Document strip_report(const joint::StripAnswer& answer,
                                    const std::vector<strength::EngagementRule>& published,
                                    const tightening::ClampAnswer* clamp, const quantity::DisplayUnits& units);

} // namespace clampwright::report
