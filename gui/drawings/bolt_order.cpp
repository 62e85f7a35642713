// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/bolt_order.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QPainter>

#include "gui/drawings/strokes.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("BoltOrder", english); }

constexpr double k_most_width = 620;
constexpr double k_most_height = 320;
constexpr double k_most_scale = 2.6; // pixels for each millimetre of core's sheet
constexpr double k_edge = 6;
constexpr int k_least_letters = 11;
constexpr double k_least_radius = 12;

// What the bolts and their labels take up on core's sheet, without its words.
QRectF extent(const report::SequenceDrawing& sequence) {
  QRectF all;
  const auto add = [&](double x, double y, double half) { all |= QRectF(x - half, y - half, 2 * half, 2 * half); };
  for (const report::DrawnBolt& bolt : sequence.bolts) {
    add(bolt.x, bolt.y, sequence.bolt_radius);
    add(bolt.label_x, bolt.label_y, sequence.label_size);
  }
  for (const report::DrawnCircle& circle : sequence.circles)
    add(circle.x, circle.y, circle.radius);
  return all;
}

struct OrderContent {
  report::SequenceDrawing sequence;
  QRectF extent;
  double scale = 1;

  [[nodiscard]] QPointF at(double x, double y) const {
    return QPointF(k_edge + (x - extent.left()) * scale, k_edge + (y - extent.top()) * scale);
  }
};

void paint(QPainter& painter, const Inks& inks, const OrderContent& content) {
  const report::SequenceDrawing& sequence = content.sequence;
  painter.setPen(stroke(inks.rule.ink, k_thin));
  painter.setBrush(Qt::NoBrush);
  for (const report::DrawnCircle& circle : sequence.circles)
    painter.drawEllipse(content.at(circle.x, circle.y), circle.radius * content.scale, circle.radius * content.scale);
  for (const report::DrawnLine& line : sequence.lines)
    painter.drawLine(content.at(line.x1, line.y1), content.at(line.x2, line.y2));
  const QFont own = painter.font();
  const double radius = sequence.bolt_radius * content.scale;
  const QFont order =
      letters(painter, std::max(k_least_letters, static_cast<int>(sequence.order_size * content.scale)), true);
  const QFont label =
      letters(painter, std::max(k_least_letters, static_cast<int>(sequence.label_size * content.scale)));
  for (const report::DrawnBolt& bolt : sequence.bolts) {
    const QPointF centre = content.at(bolt.x, bolt.y);
    const bool first = bolt.turn == 1;
    painter.setPen(stroke(inks.sketch.ink));
    painter.setBrush(first ? inks.sketch.ink : inks.sketch.ground);
    painter.drawEllipse(centre, radius - k_line / 2, radius - k_line / 2);
    painter.setPen(first ? inks.sketch.ground : inks.sketch.ink);
    painter.setFont(order);
    write_line(painter, centre, Qt::AlignHCenter, QString::number(bolt.turn));
    painter.setPen(inks.quiet.ink);
    painter.setFont(label);
    write_line(painter, content.at(bolt.label_x, bolt.label_y), Qt::AlignHCenter, QString::number(bolt.position));
  }
  painter.setFont(own);
}

// Many bolts in a row come out small: their circles grow, as long as they do not touch, and the labels make room.
void enlarge(report::SequenceDrawing& sequence, double times) {
  sequence.bolt_radius *= times;
  for (report::DrawnBolt& bolt : sequence.bolts) {
    bolt.label_x = bolt.x + (bolt.label_x - bolt.x) * times;
    bolt.label_y = bolt.y + (bolt.label_y - bolt.y) * times;
  }
}

} // namespace

Drawing bolt_order(const report::SequenceDrawing& sequence) {
  OrderContent content{sequence, extent(sequence)};
  content.scale = std::min({k_most_scale, k_most_width / std::max(content.extent.width(), 1.0),
                            k_most_height / std::max(content.extent.height(), 1.0)});
  constexpr double k_most_times = 1.3; // then neighbours nearly touch
  const double times = std::clamp(k_least_radius / (sequence.bolt_radius * content.scale), 1.0, k_most_times);
  enlarge(content.sequence, times);
  content.extent = extent(content.sequence);
  Drawing drawing;
  drawing.name = tr("Order of the bolts");
  drawing.in_words = from_utf8(sequence.description) + QStringLiteral(" ") +
                     tr("Computed: the order on the maker's page ranks above it.");
  drawing.size = content.extent.size() * content.scale + QSizeF(2 * k_edge, 2 * k_edge);
  drawing.paint = [content](QPainter& painter, const Inks& inks) { paint(painter, inks, content); };
  return drawing;
}

} // namespace clampwright::desk
