// SPDX-License-Identifier: GPL-3.0-or-later
//
// Words beside a drawing, each led to its part by a thin line, none over another.
#pragma once

#include <vector>

#include <QPointF>
#include <QString>

#include "gui/look/inks.hpp"

class QPainter;

namespace clampwright::desk {

struct SideLabel {
  QPointF part; // what it belongs to
  QString words;
  bool strong = false; // larger and bold
};

// The room for them, to the right of the drawing.
struct LabelColumn {
  double left;
  double right;
  double top;
  double bottom;
};

// From top to bottom in the order of their parts. What is too long for the column is set in smaller letters.
void paint_side_labels(QPainter& painter, const Inks& inks, std::vector<SideLabel> labels, const LabelColumn& column);

} // namespace clampwright::desk
