// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/adaptor_picture.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <QCoreApplication>
#include <QPainter>

#include "gui/drawings/strokes.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("AdaptorPicture", english); }

constexpr double k_width = 640;
constexpr double k_left = 70;   // room for the grip
constexpr double k_right = 156; // and for the words beside the fastener
constexpr double k_above = 64;
constexpr double k_below = 74; // room for the measure of the arm
constexpr double k_most_rise = 170;
constexpr double k_head = 16; // half the size of heads and hexagon
constexpr double k_beam = 7;  // half the thickness of wrench and adaptor
constexpr double k_measure_off = 44;

struct AdaptorContent {
  AdaptorLayout at{};
  double degrees = 0;
  QString arm;
  QString adaptor;
  QString angle;
  QString set;
  QString reaches;
};

void paint_bar(QPainter& painter, const Inks& inks, QPointF from, QPointF to) {
  painter.setPen(QPen(inks.sketch.ink, 2 * k_beam, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(from, to);
  painter.setPen(QPen(inks.sketch.ground, 2 * k_beam - 2 * k_line, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(from, to);
}

// A measure between two points, off to one side of their line, with its number.
void paint_measure(QPainter& painter, const Inks& inks, QPointF from, QPointF to, double off, const QString& words) {
  const QPointF way = to - from;
  const double length = std::hypot(way.x(), way.y());
  const QPointF aside = QPointF(-way.y(), way.x()) / length;
  const QPointF one = from + aside * off;
  const QPointF other = to + aside * off;
  painter.setPen(stroke(inks.quiet.ink, k_thin));
  painter.drawLine(from + aside * (off > 0 ? k_head + 4 : -k_head - 4), one + aside * (off > 0 ? 4 : -4));
  painter.drawLine(to + aside * (off > 0 ? k_head + 4 : -k_head - 4), other + aside * (off > 0 ? 4 : -4));
  painter.setBrush(inks.quiet.ink);
  const QPointF middle = (one + other) / 2;
  painter.drawLine(one, other);
  painter.drawPath(straight_arrow(one + way / length * 8, one, 3));
  painter.drawPath(straight_arrow(other - way / length * 8, other, 3));
  painter.setPen(inks.page.ink);
  // As far off as the words need at that slope.
  const QFontMetricsF metrics(painter.font());
  const double room =
      metrics.horizontalAdvance(words) / 2 * std::abs(aside.x()) + metrics.height() / 2 * std::abs(aside.y()) + 5;
  write_line(painter, middle + aside * (off > 0 ? room : -room), Qt::AlignHCenter, words);
}

void paint_fastener(QPainter& painter, const Inks& inks, QPointF at) {
  QPolygonF corners;
  for (int i = 0; i < 6; ++i)
    corners << on_dial(at, k_head - 5, 60.0 * i, thread::Turn::clockwise);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(inks.sketch.ground);
  painter.drawEllipse(at, k_head, k_head);
  painter.setPen(stroke(inks.turn.ink));
  painter.setBrush(inks.turn.ink);
  painter.drawPolygon(corners);
}

void paint(QPainter& painter, const Inks& inks, const AdaptorContent& content) {
  const AdaptorLayout& at = content.at;
  const QFont own = painter.font();
  paint_bar(painter, inks, at.grip - QPointF(56, 0), at.drive);
  // The grip, hatched where the hand is.
  const QRectF grip(at.grip.x() - 52, at.grip.y() - k_beam - 4, 104, 2 * k_beam + 8);
  painter.fillRect(grip, inks.sketch.ground);
  hatch(painter, grip, inks.rule.ink);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(grip);
  paint_bar(painter, inks, at.drive, at.fastener);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(inks.sketch.ground);
  painter.drawEllipse(at.drive, k_head, k_head);
  painter.drawRect(QRectF(at.drive.x() - 6, at.drive.y() - 6, 12, 12));
  paint_fastener(painter, inks, at.fastener);
  painter.setPen(QPen(inks.rule.ink, k_thin, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  painter.drawLine(at.drive, at.drive + QPointF(70, 0));
  painter.setFont(letters(painter, 13));
  painter.setPen(stroke(inks.quiet.ink, k_thin));
  painter.drawArc(QRectF(at.drive.x() - 42, at.drive.y() - 42, 84, 84), 0, static_cast<int>(content.degrees * 16));
  painter.setPen(inks.page.ink);
  write_line(painter, at.drive + QPointF(48, content.degrees > 20 ? -14 : 28), Qt::AlignLeft, content.angle);
  // The hand pulls square to the handle, in the middle of the grip.
  painter.setPen(stroke(inks.turn.ink));
  painter.setBrush(inks.turn.ink);
  painter.drawPath(straight_arrow(at.grip + QPointF(0, 14), at.grip + QPointF(0, 40), 7));
  paint_measure(painter, inks, at.grip, at.drive, k_measure_off, content.arm);
  // What points back over the handle is measured on its free side, and its words stand on the other.
  const bool points_back = content.degrees > 90;
  paint_measure(painter, inks, at.drive, at.fastener, points_back ? k_measure_off : -k_measure_off, content.adaptor);
  painter.setFont(letters(painter, 16, true));
  painter.setPen(inks.page.ink);
  write_line(painter, {at.grip.x() - 52, at.grip.y() - 28}, Qt::AlignLeft, content.set);
  const double clear_of_handle = at.grip.y() - at.fastener.y() < 40 ? -26 : 0;
  write_line(painter, at.fastener + (points_back ? QPointF(-k_head - 8, clear_of_handle) : QPointF(k_head + 8, 0)),
             points_back ? Qt::AlignRight : Qt::AlignLeft, content.reaches);
  painter.setFont(own);
}

QString length_words(quantity::Length length, const quantity::DisplayUnits& units) {
  return from_utf8(quantity::write(length, units, 5));
}

} // namespace

AdaptorLayout adaptor_layout(const tightening::Levers& levers) {
  const double arm = quantity::in_millimetres(levers.arm);
  const double adaptor = quantity::in_millimetres(levers.adaptor->length);
  const double angle = std::abs(quantity::in_radians(levers.adaptor->angle));
  const double ahead = adaptor * std::cos(angle);
  const double up = adaptor * std::sin(angle);
  const double room = k_width - k_left - k_right;
  const double scale = std::min(room / std::max(arm, arm + ahead), k_most_rise / std::max(up, 1e-9));
  AdaptorLayout at{};
  at.height = k_above + std::max(up * scale, 24.0) + k_below;
  at.grip = QPointF(k_left, at.height - k_below);
  at.drive = at.grip + QPointF(arm * scale, 0);
  at.fastener = at.drive + QPointF(ahead * scale, -up * scale);
  return at;
}

std::optional<Drawing> adaptor_picture(const specdb::WrenchSetReply& reply, const quantity::DisplayUnits& units) {
  if (!reply.set.levers.adaptor) return std::nullopt;
  tightening::Levers levers = reply.set.levers;
  // Any will do for the picture.
  if (!reply.arm_known) levers.arm = 4.0 * levers.adaptor->length;
  AdaptorContent content;
  content.at = adaptor_layout(levers);
  content.degrees = std::abs(quantity::in_degrees(levers.adaptor->angle));
  content.arm =
      reply.arm_known ? tr("arm %1").arg(length_words(levers.arm, units)) : tr("arm not known, of no matter here");
  content.adaptor = tr("adaptor %1").arg(length_words(levers.adaptor->length, units));
  content.angle = from_utf8(quantity::write_si(quantity::in_radians(levers.adaptor->angle), *units.angle));
  content.set =
      reply.set.setting ? tr("set %1").arg(from_utf8(quantity::write(*reply.set.setting, units, 4))) : tr("no setting");
  content.reaches =
      tr("%1 here").arg(from_utf8(quantity::write(reply.set.applied ? *reply.set.applied : reply.task.torque, units)));
  Drawing drawing;
  drawing.name = tr("Wrench with adaptor");
  drawing.in_words =
      tr("Wrench, %1, with an %2 at %3 to its line: %4, %5 at the fastener. The hand pulls square to the "
         "handle, in the middle of the grip.")
          .arg(content.arm, content.adaptor, content.angle, content.set,
               from_utf8(quantity::write(reply.set.applied ? *reply.set.applied : reply.task.torque, units)));
  drawing.size = QSizeF(k_width, content.at.height);
  drawing.paint = [content](QPainter& painter, const Inks& inks) { paint(painter, inks, content); };
  return drawing;
}

} // namespace clampwright::desk
