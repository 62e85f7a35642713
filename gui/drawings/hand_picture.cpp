// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/drawings/hand_picture.hpp"

#include <vector>

#include <QCoreApplication>
#include <QPainter>

#include "gui/drawings/side_labels.hpp"
#include "gui/drawings/strokes.hpp"
#include "gui/drawings/turn_words.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("HandPicture", english); }

using thread::Hand;

constexpr double k_width = 640;
constexpr double k_height = 236;
constexpr QPointF k_centre(108, 112);
constexpr double k_shaft = 26;
constexpr double k_shaft_arrow = 46; // radius
constexpr double k_part = 68;
constexpr double k_part_arrow = 88;
constexpr double k_labels = 218;
constexpr double k_rods = 446; // x where the threads stand
constexpr double k_rod_top = 14;
constexpr double k_rod_height = 150;
constexpr double k_rod_width = 42;

struct Rod {
  Hand hand;
  QString name;
  QString below;
  bool strong;
};

struct HandContent {
  thread::Turn shaft;
  thread::Turn drag;
  std::vector<SideLabel> labels;
  std::vector<Rod> rods;
};

QString hand_word(Hand hand) { return hand == Hand::left ? tr("left-hand") : tr("right-hand"); }

// Held upright, a right-hand thread rises to the right on the side that one sees.
void paint_rod(QPainter& painter, const Inks& inks, const Rod& rod, double middle, double room) {
  const QRectF body(middle - k_rod_width / 2, k_rod_top, k_rod_width, k_rod_height);
  const QColor ink = rod.strong ? inks.turn.ink : inks.sketch.ink;
  painter.setPen(stroke(ink));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(body);
  constexpr double k_pitch = 15;
  constexpr double k_rise = 9;
  const double up = rod.hand == Hand::right ? -k_rise : k_rise;
  for (double y = body.top() + k_pitch; y < body.bottom() - k_rise / 2; y += k_pitch)
    painter.drawLine(QPointF(body.left(), y - up / 2), QPointF(body.right(), y + up / 2));
  const QFont own = painter.font();
  painter.setFont(letters(painter, room < 120 ? 14 : 16, true));
  write_line(painter, {middle, body.bottom() + 18}, Qt::AlignHCenter, rod.name);
  painter.setFont(letters(painter, 12));
  painter.setPen(inks.page.ink);
  painter.drawText(QRectF(middle - room / 2, body.bottom() + 30, room, k_height - body.bottom() - 30),
                   Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, rod.below);
  painter.setFont(own);
}

void paint(QPainter& painter, const Inks& inks, const HandContent& content) {
  painter.setPen(stroke(inks.sketch.ink));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(k_centre, k_part, k_part);
  painter.drawEllipse(k_centre, k_shaft, k_shaft);
  painter.setBrush(inks.sketch.ink);
  painter.drawEllipse(k_centre, 3, 3);
  constexpr double k_reach = 120;
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(round_arrow({k_centre, k_shaft_arrow, 10, -k_reach, k_reach, content.shaft}));
  painter.setPen(stroke(inks.turn.ink));
  painter.setBrush(inks.turn.ink);
  painter.drawPath(round_arrow({k_centre, k_part_arrow, 14, -k_reach, k_reach, content.drag}));
  paint_side_labels(painter, inks, content.labels, {k_labels, k_rods - 12, 6, k_height - 6});
  const double room = (k_width - k_rods) / static_cast<double>(content.rods.size());
  for (std::size_t i = 0; i < content.rods.size(); ++i)
    paint_rod(painter, inks, content.rods[i], k_rods + (static_cast<double>(i) + 0.5) * room, room);
}

} // namespace

Drawing hand_picture(const crank::HandAnswer& answer) {
  const crank::Drive& drive = answer.asked.drive;
  const bool fits = !answer.asked.fitted || *answer.asked.fitted == answer.hand;
  HandContent content{drive.shaft_turn, answer.drag, {}, {}};
  // Where both arrows are open, on the right side of the dial.
  content.labels.push_back({on_dial(k_centre, k_part_arrow, 38, thread::Turn::clockwise),
                            tr("part pushed %1").arg(turn_word(answer.drag)), true});
  content.labels.push_back({on_dial(k_centre, k_shaft_arrow, 75, thread::Turn::clockwise),
                            tr("shaft turns %1").arg(turn_word(drive.shaft_turn)), false});
  content.labels.push_back(
      {k_centre + QPointF(k_part * 0.8, k_part * 0.6),
       drive.driver == crank::Driver::shaft ? tr("the shaft drives the part") : tr("the part drives the shaft"),
       false});
  content.labels.push_back({k_centre + QPointF(0, k_shaft), tr("seen from the free end of the thread"), false});
  content.rods.push_back({answer.hand, hand_word(answer.hand), tr("is tightened"), true});
  if (!fits)
    content.rods.push_back({*answer.asked.fitted, hand_word(*answer.asked.fitted), tr("on record: is undone"), false});
  Drawing drawing;
  drawing.name = tr("Turn of the shaft and hand of the thread");
  drawing.in_words =
      tr("Seen from the free end of the thread the shaft turns %1 and the part is pushed %2 on its thread: "
         "that tightens a %3 thread. Held upright, a right-hand thread rises to the right on the side "
         "that you see, a left-hand one to the left.")
          .arg(turn_word(drive.shaft_turn), turn_word(answer.drag), hand_word(answer.hand));
  if (!fits)
    drawing.in_words += QStringLiteral(" ") +
                        tr("The thread on record is %1 and would be undone.").arg(hand_word(*answer.asked.fitted));
  drawing.size = QSizeF(k_width, k_height);
  drawing.paint = [content](QPainter& painter, const Inks& inks) { paint(painter, inks, content); };
  return drawing;
}

} // namespace clampwright::desk
