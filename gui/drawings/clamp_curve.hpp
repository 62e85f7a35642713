// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/quantity/write.hpp"
#include "core/tightening/answer.hpp"
#include "gui/drawings/plot_curve.hpp"

namespace clampwright::desk {

// Clamp load against torque by both models as bands, proof and yield as levels, the torque of the answer marked. The
// points are answers of core for the same case at other torques. Nothing where no clamp load is known.
[[nodiscard]] std::optional<PlotCurve> clamp_curve(const tightening::ClampAnswer& answer,
                                                   const quantity::DisplayUnits& units);

} // namespace clampwright::desk
