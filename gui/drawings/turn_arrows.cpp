// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/turn_arrows.hpp"

#include <QCoreApplication>
#include <QPainter>

#include "gui/drawings/strokes.hpp"
#include "gui/drawings/turn_words.hpp"
#include "gui/look/utf8.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("TurnArrows", english); }

constexpr double k_width = 640;
constexpr double k_half = k_width / 2;
constexpr double k_arrow = 152; // width of the room of one arrow
constexpr double k_centre = 72; // y of its middle
constexpr double k_deep = 128;  // height of that room
constexpr double k_side = 28;   // the line below them
constexpr double k_height = k_deep + k_side;
constexpr double k_radius = 50;
constexpr double k_body = 20;
constexpr double k_reach = 128; // how far an arrow comes round from the top, either way
constexpr int k_name = 26;
constexpr int k_word = 18;
constexpr int k_side_word = 16;

void paint_hexagon(QPainter& painter, const Inks& inks, QPointF centre) {
  QPolygonF corners;
  for (int i = 0; i < 6; ++i)
    corners << on_dial(centre, 27, 60.0 * i, thread::Turn::clockwise);
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(corners);
  painter.drawEllipse(centre, 11, 11);
}

struct OneArrow {
  double left;
  thread::Turn turn;
  QString name;
  bool strong;
  QString more; // below the word
};

void paint_one(QPainter& painter, const Inks& inks, const OneArrow& one) {
  const QPointF centre(one.left + k_arrow / 2, k_centre);
  paint_hexagon(painter, inks, centre);
  const QColor ink = one.strong ? inks.turn.ink : inks.sketch.ink;
  painter.setPen(stroke(ink));
  painter.setBrush(one.strong ? QBrush(ink) : QBrush(Qt::NoBrush));
  painter.drawPath(round_arrow({centre, k_radius, k_body, -k_reach, k_reach, one.turn}));
  painter.setPen(ink);
  const double left = one.left + k_arrow + 8;
  const double middle = centre.y() - (one.more.isEmpty() ? 0 : 10);
  const QFont own = painter.font();
  painter.setFont(letters(painter, k_name, true));
  write_line(painter, {left, middle - 15}, Qt::AlignLeft, one.name);
  painter.setFont(letters(painter, k_word, one.strong));
  // "gegen den Uhrzeigersinn" takes two lines beside the next arrow.
  QRectF word;
  painter.drawText(QRectF(left, middle + 3, k_half - k_arrow - 16, k_deep), Qt::AlignLeft | Qt::TextWordWrap,
                   turn_word(one.turn), &word);
  if (!one.more.isEmpty()) {
    painter.setFont(letters(painter, k_side_word, true));
    write_line(painter, {left, word.bottom() + 14}, Qt::AlignLeft, one.more);
  }
  painter.setFont(own);
}

} // namespace

Drawing turn_arrows(thread::Turn tighten, thread::Turn undo, const std::string& seen_from, bool left_hand) {
  Drawing drawing;
  drawing.name = tr("Which way to turn");
  const QString side = from_utf8(seen_from);
  drawing.in_words = tr("Undo %1, tighten %2, %3.").arg(turn_word(undo), turn_word(tighten), side);
  if (left_hand) drawing.in_words += QStringLiteral(" ") + tr("The thread is left-hand.");
  drawing.size = QSizeF(k_width, k_height);
  const OneArrow loose{0, undo, tr("Undo"), false, {}};
  const OneArrow tight{k_half, tighten, tr("Tighten"), true, left_hand ? tr("left-hand thread") : QString()};
  drawing.paint = [=](QPainter& painter, const Inks& inks) {
    paint_one(painter, inks, loose);
    paint_one(painter, inks, tight);
    const QFont own = painter.font();
    painter.setFont(letters(painter, k_side_word, true));
    painter.setPen(inks.page.ink);
    painter.drawText(QRectF(0, k_deep, k_width, k_side), Qt::AlignHCenter | Qt::AlignVCenter, side);
    painter.setFont(own);
  };
  return drawing;
}

} // namespace clampwright::desk
