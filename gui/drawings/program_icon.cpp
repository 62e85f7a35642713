// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/program_icon.hpp"

#include <QPainter>
#include <QPixmap>

#include "gui/drawings/strokes.hpp"
#include "gui/look/inks.hpp"

namespace clampwright::desk {

namespace {

constexpr double k_size = 64; // in which it is drawn
constexpr QPointF k_centre{32, 34};

void paint(QPainter& painter, const Inks& inks) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(inks.page.ground);
  painter.drawRoundedRect(QRectF(1, 1, k_size - 2, k_size - 2), 12, 12);
  QPolygonF corners;
  for (int i = 0; i < 6; ++i)
    corners << on_dial(k_centre, 12, 60.0 * i, thread::Turn::clockwise);
  painter.setPen(stroke(inks.page.ink, 3));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(corners);
  painter.setPen(Qt::NoPen);
  painter.setBrush(inks.turn.ink);
  painter.drawPath(round_arrow({k_centre, 21, 8, -128, 128, thread::Turn::clockwise}));
}

} // namespace

QIcon program_icon() {
  QIcon icon;
  for (const int pixels : {16, 24, 32, 48, 64, 128, 256}) {
    QPixmap picture(pixels, pixels);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(pixels / k_size, pixels / k_size);
    paint(painter, inks(Theme::light));
    icon.addPixmap(picture);
  }
  return icon;
}

} // namespace clampwright::desk
