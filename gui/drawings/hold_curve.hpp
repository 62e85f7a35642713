// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/crank/holding.hpp"
#include "core/quantity/write.hpp"
#include "gui/drawings/plot_curve.hpp"

namespace clampwright::desk {

// What crown and stop bear against how far before top dead centre the crank stands, to tighten and, where its torque is
// stated, to undo; stated limits as levels, the angle of the answer marked. The points are core's force at other
// angles. The curve begins and ends where the force is several times its least, so that the rest stays readable.
// Nothing without a stop.
[[nodiscard]] std::optional<PlotCurve> hold_curve(const crank::HoldAnswer& answer, const quantity::DisplayUnits& units);

} // namespace clampwright::desk
