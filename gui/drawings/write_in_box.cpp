// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/write_in_box.hpp"

#include <array>

#include <QCoreApplication>
#include <QPainter>

#include "gui/drawings/strokes.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("WriteInBox", english); }

constexpr double k_width = 640;
constexpr double k_row = 40; // 10 mm on paper: enough for a pen
constexpr double k_head = 20;
constexpr double k_edge = 1;
constexpr double k_tick = 20;
constexpr std::array<double, 6> k_columns{0, 120, 260, 400, 490, 590}; // where each begins

QString column_name(std::size_t column) {
  switch (column) {
  case 1:
    return tr("torque reached");
  case 2:
    return tr("wrench");
  case 3:
    return tr("initials");
  case 4:
    return tr("date");
  case 5:
    return tr("done");
  default:
    return {};
  }
}

void paint(QPainter& painter, const Inks& inks) {
  const QFont own = painter.font();
  const double right = k_width - k_edge;
  for (std::size_t i = 1; i < k_columns.size(); ++i) {
    painter.setPen(inks.page.ink);
    painter.setFont(letters(painter, 12));
    write_line(painter, {k_columns[i] + 6, k_head / 2}, Qt::AlignLeft, column_name(i));
  }
  for (int row = 0; row < 2; ++row) {
    const double top = k_head + row * k_row;
    painter.setPen(inks.page.ink);
    painter.setFont(letters(painter, 13, true));
    write_line(painter, {k_edge + 6, top + k_row / 2}, Qt::AlignLeft, row == 0 ? tr("tightened") : tr("rechecked"));
    painter.setPen(stroke(inks.sketch.ink));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF((k_columns[5] + right - k_tick) / 2, top + (k_row - k_tick) / 2, k_tick, k_tick));
  }
  painter.setPen(stroke(inks.sketch.ink));
  painter.drawRect(QRectF(k_edge, k_head, right - k_edge, 2 * k_row));
  painter.setPen(stroke(inks.rule.ink, k_thin));
  painter.drawLine(QPointF(k_edge, k_head + k_row), QPointF(right, k_head + k_row));
  for (std::size_t i = 1; i < k_columns.size(); ++i)
    painter.drawLine(QPointF(k_columns[i], k_head), QPointF(k_columns[i], k_head + 2 * k_row));
  painter.setFont(own);
}

} // namespace

Drawing write_in_box() {
  Drawing drawing;
  drawing.name = tr("Room to write in what was done");
  drawing.size = QSizeF(k_width, k_head + 2 * k_row + 2 * k_edge);
  drawing.paint = [](QPainter& painter, const Inks& inks) { paint(painter, inks); };
  return drawing;
}

} // namespace clampwright::desk
