// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/quantity/write.hpp"
#include "core/tightening/answer.hpp"
#include "gui/drawings/drawing.hpp"

namespace clampwright::desk {

// What a torque clamps, on one axis of force: each model a bar from low to high with a tick at what is likely, proof
// and yield as lines with their names. Nothing where no clamp load is known.
[[nodiscard]] std::optional<Drawing> band_picture(const tightening::ClampAnswer& answer,
                                                  const quantity::DisplayUnits& units);

} // namespace clampwright::desk
