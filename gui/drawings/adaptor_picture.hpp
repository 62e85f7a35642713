// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QPointF>

#include "core/quantity/write.hpp"
#include "gui/drawings/drawing.hpp"
#include "specdb/question/wrench_question.hpp"

namespace clampwright::desk {

// Where the parts stand, in the picture's own pixels, y down; lengths are to one scale.
struct AdaptorLayout {
  QPointF grip;
  QPointF drive;
  QPointF fastener;
  double height; // of the picture
};
// Precondition: levers.adaptor.
[[nodiscard]] AdaptorLayout adaptor_layout(const tightening::Levers& levers);

// The wrench with its adaptor at its angle, to scale: arm, adaptor and angle with their numbers, what is set and what
// reaches the fastener. Nothing without an adaptor. Where the arm is not known, because a square adaptor makes it of no
// matter, the picture says so.
[[nodiscard]] std::optional<Drawing> adaptor_picture(const specdb::WrenchSetReply& reply,
                                                     const quantity::DisplayUnits& units);

} // namespace clampwright::desk
