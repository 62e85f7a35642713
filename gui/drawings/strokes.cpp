// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/strokes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <QPainter>

namespace clampwright::desk {

namespace {

constexpr double k_head_length = 1.7; // of an arrow's point, over the width of its body
constexpr double k_head_width = 2.3;

} // namespace

QPen stroke(const QColor& ink, double width) { return QPen(ink, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin); }

QFont letters(const QPainter& painter, int pixels, bool bold) {
  QFont font = painter.font();
  font.setPixelSize(pixels);
  font.setBold(bold);
  return font;
}

void hatch(QPainter& painter, const QRectF& area, const QColor& ink) {
  constexpr double k_apart = 6; // level distance of the lines
  painter.setPen(stroke(ink, k_thin));
  // Each rises at 45° to the left, from the lower or right edge to the upper or left one.
  for (double x = area.left() + k_apart / 2; x < area.right() + area.height(); x += k_apart) {
    const QPointF low =
        x <= area.right() ? QPointF(x, area.bottom()) : QPointF(area.right(), area.bottom() - (x - area.right()));
    const double up = std::min(low.y() - area.top(), low.x() - area.left());
    painter.drawLine(low, low + QPointF(-up, -up));
  }
}

void write_line(QPainter& painter, QPointF at, Qt::Alignment side, const QString& words) {
  const QFontMetricsF metrics(painter.font());
  const double width = metrics.horizontalAdvance(words) + 2;
  const double height = metrics.height();
  const double left = (side & Qt::AlignRight)     ? at.x() - width
                      : (side & Qt::AlignHCenter) ? at.x() - width / 2
                                                  : at.x();
  painter.drawText(QRectF(left, at.y() - height / 2, width, height), Qt::AlignLeft | Qt::AlignVCenter, words);
}

QPointF on_dial(QPointF centre, double radius, double degrees, thread::Turn turn) {
  const double angle = degrees * std::numbers::pi / 180;
  const double to_the_right = turn == thread::Turn::clockwise ? 1 : -1;
  return {centre.x() + to_the_right * radius * std::sin(angle), centre.y() - radius * std::cos(angle)};
}

QPainterPath round_arrow(const RoundArrow& arrow) {
  constexpr int k_steps = 48;
  const double neck = arrow.head - k_head_length * arrow.width / arrow.radius * 180 / std::numbers::pi;
  const auto at = [&](double degrees, double off) {
    return on_dial(arrow.centre, arrow.radius + off, degrees, arrow.turn);
  };
  const auto along = [&](int step) { return arrow.tail + (neck - arrow.tail) * step / k_steps; };
  QPainterPath path(at(arrow.tail, arrow.width / 2));
  for (int i = 1; i <= k_steps; ++i)
    path.lineTo(at(along(i), arrow.width / 2));
  path.lineTo(at(neck, k_head_width * arrow.width / 2));
  path.lineTo(at(arrow.head, 0));
  path.lineTo(at(neck, -k_head_width * arrow.width / 2));
  for (int i = k_steps; i >= 0; --i)
    path.lineTo(at(along(i), -arrow.width / 2));
  path.closeSubpath();
  return path;
}

QPainterPath straight_arrow(QPointF from, QPointF to, double width) {
  const QPointF way = to - from;
  const double length = std::hypot(way.x(), way.y());
  if (length <= 0) return {};
  const QPointF ahead = way / length;
  const QPointF aside(-ahead.y(), ahead.x());
  const QPointF neck = to - ahead * std::min(k_head_length * width, length);
  QPainterPath path(from + aside * (width / 2));
  path.lineTo(neck + aside * (width / 2));
  path.lineTo(neck + aside * (k_head_width * width / 2));
  path.lineTo(to);
  path.lineTo(neck - aside * (k_head_width * width / 2));
  path.lineTo(neck - aside * (width / 2));
  path.lineTo(from - aside * (width / 2));
  path.closeSubpath();
  return path;
}

} // namespace clampwright::desk
