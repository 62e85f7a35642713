// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/document.hpp"
#include "gui/drawings/drawing.hpp"
#include "gui/drawings/plot_curve.hpp"

namespace clampwright::desk {

// The curve as lines and letters, on paper.
[[nodiscard]] Drawing curve_print(const PlotCurve& curve);

// Its points as a table, one row for each x: a band that has no width has one column, another three.
[[nodiscard]] report::Section curve_points(const PlotCurve& curve);

} // namespace clampwright::desk
