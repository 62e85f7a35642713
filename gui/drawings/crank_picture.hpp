// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QPointF>

#include "core/crank/holding.hpp"
#include "core/quantity/write.hpp"
#include "gui/drawings/drawing.hpp"

namespace clampwright::desk {

// Where the parts of the picture stand, in its own pixels, y down. All lengths between them are to one scale.
struct CrankLayout {
  QPointF crank; // the middle of the main journal
  QPointF pin;
  QPointF wrist;    // of rod and piston
  double crown;     // y of the flat crown
  double crown_top; // y of the crown at top dead centre
  double pixels_per_mm;
  thread::Turn turn; // in which the wrench turns the crank, so on which side the pin rises
};
[[nodiscard]] CrankLayout crank_layout(const crank::StopAnswer& answer, thread::Turn turn);

// The crank held by a piston stop, to scale and at its angle before top dead centre: pin, rod, piston against the
// stop, with angle, travel, force and torque written beside them; the port where its depth is known, the thread of the
// plug hole where there is one. Seen from where the wrench turns as `turns` says; without that clockwise, and the words
// claim no side. The width of the piston is not known and is drawn for show.
[[nodiscard]] Drawing crank_picture(const crank::StopAnswer& answer, const std::optional<crank::WrenchTurns>& turns,
                                    const quantity::DisplayUnits& units);

// The same for the answer about holding. Nothing where no stop is asked about.
[[nodiscard]] std::optional<Drawing> crank_picture(const crank::HoldAnswer& answer,
                                                   const quantity::DisplayUnits& units);

} // namespace clampwright::desk
