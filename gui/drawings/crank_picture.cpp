// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/crank_picture.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include <QCoreApplication>
#include <QPainter>

#include "core/thread/designation.hpp"
#include "gui/drawings/side_labels.hpp"
#include "gui/drawings/strokes.hpp"
#include "gui/drawings/turn_words.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("CrankPicture", english); }

constexpr double k_width = 640;
constexpr double k_height = 384;
constexpr double k_edge = 6;
constexpr double k_middle = 124; // x of the bore
constexpr double k_labels = 272; // x where the words begin

// What no record knows, in radii of the crank: drawn so that it looks like a piston.
constexpr double k_bore_half = 1.05;
constexpr double k_wall = 0.24;
constexpr double k_above_wrist = 0.75; // wrist to crown
constexpr double k_skirt = 0.65;
constexpr double k_gap = 0.14; // crown to head at the top
constexpr double k_head = 0.42;
constexpr double k_stands_out = 0.6; // of the stop above the head
constexpr double k_below = 1.8;      // room under the crank, for the arrow round it
constexpr double k_arrow_at = 1.5;

struct CrankContent {
  CrankLayout at{};
  double radius = 0; // of the crank, in pixels
  double rod_low = 0;
  double stop_half = 0; // of its tip, in pixels
  double incline = 0;   // degrees
  std::optional<double> port_top;
  bool has_plug = false;
  std::vector<SideLabel> labels;

  [[nodiscard]] double bore() const { return k_bore_half * radius; }
  [[nodiscard]] double head_low() const { return at.crown_top - k_gap * radius; }
  [[nodiscard]] double head_high() const { return head_low() - k_head * radius; }
  [[nodiscard]] double stop_high() const { return head_high() - k_stands_out * radius; }
  // From the middle of the tip so far up the stop and so far to its right.
  [[nodiscard]] QPointF along_stop(double up, double right) const {
    const double lean = incline * std::numbers::pi / 180;
    return {right * std::cos(lean) - up * std::sin(lean), -up * std::cos(lean) - right * std::sin(lean)};
  }
};

double millimetres(quantity::Length length) { return quantity::in_millimetres(length); }

// Metal that is cut through: hatched, so that it is told from a gap in grey as well.
void paint_cut(QPainter& painter, const Inks& inks, const QRectF& area) {
  hatch(painter, area, inks.rule.ink);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(area);
}

void paint_cylinder(QPainter& painter, const Inks& inks, const CrankContent& content) {
  const double wall = k_wall * content.radius;
  const double low = content.rod_low;
  const double middle = content.at.crank.x();
  for (const bool right : {false, true}) {
    const double left = right ? middle + content.bore() : middle - content.bore() - wall;
    if (right && content.port_top && *content.port_top < low) {
      paint_cut(painter, inks, QRectF(left, content.head_low(), wall, *content.port_top - content.head_low()));
      // The port ends where the crown stands at the bottom, as ports mostly do.
      const double end = std::min(low, content.at.crown_top + 2 * content.radius);
      if (end < low) paint_cut(painter, inks, QRectF(left, end, wall, low - end));
      continue;
    }
    paint_cut(painter, inks, QRectF(left, content.head_low(), wall, low - content.head_low()));
  }
  paint_cut(painter, inks,
            QRectF(middle - content.bore() - wall, content.head_high(), 2 * (content.bore() + wall),
                   content.head_low() - content.head_high()));
}

// The stop in its hole, from the crown out through the head.
void paint_stop(QPainter& painter, const Inks& inks, const CrankContent& content) {
  const double half = content.stop_half;
  const double length = content.at.crown - content.stop_high();
  const double out = content.at.crown - content.head_high();
  painter.save();
  painter.translate(content.at.crank.x(), content.at.crown);
  painter.rotate(-content.incline);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(inks.sketch.ground);
  painter.drawRect(QRectF(-half, -length, 2 * half, length));
  painter.drawRect(QRectF(-1.6 * half, -length, 3.2 * half, 0.45 * (length - out)));
  if (content.has_plug) {
    const double from = content.at.crown - content.head_low();
    for (double y = from + 3; y < out; y += 5) {
      painter.drawLine(QPointF(-half - 3, -y), QPointF(-half, -y - 2));
      painter.drawLine(QPointF(half, -y), QPointF(half + 3, -y - 2));
    }
  }
  painter.restore();
}

void paint_piston(QPainter& painter, const Inks& inks, const CrankContent& content) {
  const CrankLayout& at = content.at;
  const double half = content.bore() - 3;
  const QRectF piston(at.crank.x() - half, at.crown, 2 * half, (k_above_wrist + k_skirt) * content.radius);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(inks.sketch.ground);
  painter.drawRect(piston);
  for (const double below : {0.14, 0.26}) {
    const double y = at.crown + below * content.radius;
    painter.drawLine(QPointF(piston.left(), y), QPointF(piston.right(), y));
  }
}

void paint_crank(QPainter& painter, const Inks& inks, const CrankContent& content) {
  const CrankLayout& at = content.at;
  painter.setPen(QPen(inks.rule.ink, k_thin, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(at.crank, content.radius, content.radius);
  painter.drawLine(QPointF(at.crank.x(), at.crank.y() + 1.15 * content.radius),
                   QPointF(at.crank.x(), content.at.wrist.y()));
  // A bar with round ends, once wide for its edge and once narrower for what is inside it.
  const auto bar = [&](QPointF from, QPointF to, double width) {
    painter.setPen(QPen(inks.sketch.ink, width, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(from, to);
    painter.setPen(QPen(inks.sketch.ground, width - 2 * k_line, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(from, to);
  };
  bar(at.crank, at.pin, 0.62 * content.radius);
  bar(at.pin, at.wrist, 0.3 * content.radius);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(inks.sketch.ground);
  painter.drawEllipse(at.crank, 0.22 * content.radius, 0.22 * content.radius);
  painter.drawEllipse(at.pin, 0.17 * content.radius, 0.17 * content.radius);
  painter.drawEllipse(at.wrist, 0.17 * content.radius, 0.17 * content.radius);
  painter.setBrush(inks.sketch.ink);
  painter.drawEllipse(at.crank, 2, 2);
}

// Torque round the crank, force under the crown.
void paint_loads(QPainter& painter, const Inks& inks, const CrankContent& content) {
  constexpr double k_tail = 118;
  constexpr double k_head_at = 242;
  painter.setPen(stroke(inks.turn.ink));
  painter.setBrush(inks.turn.ink);
  painter.drawPath(round_arrow({content.at.crank, k_arrow_at * content.radius, 8, k_tail, k_head_at, content.at.turn}));
  const double x = content.at.crank.x() + 0.55 * content.bore();
  painter.drawPath(
      straight_arrow(QPointF(x, content.at.crown + 1.25 * content.radius), QPointF(x, content.at.crown + 4), 8));
}

void paint(QPainter& painter, const Inks& inks, const CrankContent& content) {
  paint_cylinder(painter, inks, content);
  paint_stop(painter, inks, content); // its tip ends at the crown, also where it leans
  paint_piston(painter, inks, content);
  paint_crank(painter, inks, content);
  paint_loads(painter, inks, content);
  // Where the crown would be at the top.
  painter.setPen(QPen(inks.rule.ink, k_thin, Qt::DashLine));
  const double right = content.at.crank.x() + content.bore() + k_wall * content.radius + 8;
  painter.drawLine(QPointF(content.at.crank.x() - content.bore(), content.at.crown_top),
                   QPointF(right, content.at.crown_top));
  paint_side_labels(painter, inks, content.labels, {k_labels, k_width, k_edge, k_height - k_edge});
}

QString piston_force(const crank::StopLoads& loads, const quantity::DisplayUnits& units) {
  return from_utf8(quantity::write_si_rounded(quantity::in_newtons(loads.forces.piston), *units.force));
}

QString force_words(const crank::StopAnswer& answer, const quantity::DisplayUnits& units) {
  const QString tighten = piston_force(answer.fitting, units);
  if (!answer.undoing) return tr("%1 on crown and stop").arg(tighten);
  return tr("%1 on crown and stop, to undo %2").arg(tighten, piston_force(*answer.undoing, units));
}

QString angle_words(quantity::Angle angle, const quantity::DisplayUnits& units) {
  return from_utf8(quantity::write_si(quantity::in_radians(angle), *units.angle));
}

QString torque_words(const crank::StopAnswer& answer, const std::optional<crank::WrenchTurns>& turns,
                     const quantity::DisplayUnits& units) {
  const QString torque = from_utf8(quantity::write(answer.fitting.torque, units));
  if (!turns) return tr("%1 to tighten").arg(torque);
  return tr("%1 to tighten, %2, %3").arg(torque, turn_word(turns->tighten), from_utf8(turns->seen_from));
}

// As it was given.
QString length_words(quantity::Length length, const quantity::DisplayUnits& units) {
  return from_utf8(quantity::write(length, units, 5));
}

QString travel_words(quantity::Length travel, const quantity::DisplayUnits& units) {
  return from_utf8(quantity::write_si_rounded(quantity::in_metres(travel), *units.length));
}

QString port_words(const crank::StopAnswer& answer, const quantity::DisplayUnits& units) {
  const QString depth = length_words(*answer.asked.port_below_top, units);
  return answer.ports == crank::Ports::open ? tr("port open: it opens %1 down").arg(depth)
                                            : tr("port covered: it opens %1 down").arg(depth);
}

std::vector<SideLabel> labels_of(const CrankContent& content, const crank::StopAnswer& answer,
                                 const std::optional<crank::WrenchTurns>& turns, const quantity::DisplayUnits& units) {
  const CrankLayout& at = content.at;
  const double wall = at.crank.x() + content.bore() + k_wall * content.radius;
  std::vector<SideLabel> labels;
  QString stop = tr("piston stop");
  if (answer.asked.tip_diameter) stop += tr(", tip %1").arg(length_words(*answer.asked.tip_diameter, units));
  if (answer.asked.plug) stop += tr(", in %1").arg(from_utf8(thread::write_designation(answer.asked.plug->thread)));
  labels.push_back({QPointF(at.crank.x(), at.crown) +
                        content.along_stop(at.crown - content.stop_high() - 6, 1.6 * content.stop_half),
                    stop, false});
  labels.push_back({QPointF(wall, at.crown_top), tr("crown at top dead centre"), false});
  labels.push_back({QPointF(at.crank.x() + 0.55 * content.bore(), at.crown + 0.5 * content.radius),
                    force_words(answer, units), true});
  labels.push_back({QPointF(at.crank.x() + content.bore() - 6, at.crown + 0.9 * content.radius),
                    tr("piston %1 below its top position").arg(travel_words(answer.below_top, units)), false});
  if (content.port_top) labels.push_back({QPointF(wall, *content.port_top), port_words(answer, units), false});
  labels.push_back(
      {(at.pin + at.wrist) / 2,
       tr("rod %1, crank radius %2")
           .arg(length_words(answer.asked.crank.rod, units), length_words(answer.asked.crank.radius, units)),
       false});
  labels.push_back({at.pin, tr("%1 before top dead centre").arg(angle_words(answer.asked.before_top, units)), true});
  labels.push_back(
      {on_dial(at.crank, k_arrow_at * content.radius, at.turn == thread::Turn::clockwise ? 140 : 220, at.turn),
       torque_words(answer, turns, units), false});
  return labels;
}

} // namespace

CrankLayout crank_layout(const crank::StopAnswer& answer, thread::Turn turn) {
  const double radius = millimetres(answer.asked.crank.radius);
  const double rod = millimetres(answer.asked.crank.rod);
  const double above = rod + radius * (1 + k_above_wrist + k_gap + k_head + k_stands_out);
  CrankLayout at{};
  at.turn = turn;
  at.pixels_per_mm = (k_height - 2 * k_edge) / (above + k_below * radius);
  at.crank = QPointF(k_middle, k_edge + above * at.pixels_per_mm);
  // A rising pin stands before the top: on the left of a crank that turns clockwise.
  const double before = -quantity::in_degrees(answer.asked.before_top);
  at.pin = on_dial(at.crank, radius * at.pixels_per_mm, before, turn);
  const double wrist_top = at.crank.y() - (rod + radius) * at.pixels_per_mm;
  at.wrist = QPointF(k_middle, wrist_top + millimetres(answer.below_top) * at.pixels_per_mm);
  at.crown = at.wrist.y() - k_above_wrist * radius * at.pixels_per_mm;
  at.crown_top = wrist_top - k_above_wrist * radius * at.pixels_per_mm;
  return at;
}

Drawing crank_picture(const crank::StopAnswer& answer, const std::optional<crank::WrenchTurns>& turns,
                      const quantity::DisplayUnits& units) {
  CrankContent content;
  content.at = crank_layout(answer, turns ? turns->tighten : thread::Turn::clockwise);
  const double scale = content.at.pixels_per_mm;
  content.radius = millimetres(answer.asked.crank.radius) * scale;
  // The bore ends where the skirt stands at the bottom, but above the crank.
  content.rod_low =
      content.at.crank.y() -
      std::max(millimetres(answer.asked.crank.rod) * scale - (1 + k_skirt) * content.radius, 1.1 * content.radius);
  const double tip = answer.asked.tip_diameter ? millimetres(*answer.asked.tip_diameter) * scale / 2 : 7;
  content.stop_half = std::clamp(tip, 4.0, 0.6 * content.radius);
  if (answer.asked.incline) content.incline = quantity::in_degrees(*answer.asked.incline);
  if (answer.asked.port_below_top)
    content.port_top = content.at.crown_top + millimetres(*answer.asked.port_below_top) * scale;
  content.has_plug = answer.asked.plug.has_value();
  content.labels = labels_of(content, answer, turns, units);
  Drawing drawing;
  drawing.name = tr("Crank, rod and piston stop");
  drawing.in_words =
      tr("The crank stands %1 before top dead centre and the piston %2 below its top position, against the stop; %3 "
         "presses with %4. Crank, rod and travel are to scale; the width of the piston is not known.")
          .arg(angle_words(answer.asked.before_top, units), travel_words(answer.below_top, units),
               torque_words(answer, turns, units), force_words(answer, units));
  if (content.port_top)
    drawing.in_words +=
        QStringLiteral(" ") + (answer.ports == crank::Ports::open ? tr("The port is open: it opens %1 down.")
                                                                  : tr("The port is covered: it opens %1 down."))
                                  .arg(length_words(*answer.asked.port_below_top, units));
  drawing.size = QSizeF(k_width, k_height);
  drawing.paint = [content](QPainter& painter, const Inks& inks) { paint(painter, inks, content); };
  return drawing;
}

std::optional<Drawing> crank_picture(const crank::HoldAnswer& answer, const quantity::DisplayUnits& units) {
  if (!answer.stop) return std::nullopt;
  return crank_picture(*answer.stop, answer.asked.turns, units);
}

} // namespace clampwright::desk
