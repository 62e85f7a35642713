// SPDX-License-Identifier: GPL-3.0-or-later
//
// What all drawings share: the weight of a line, letters of a size, and arrows. Lengths are pixels at 100 %, y runs
// down.
#pragma once

#include <QFont>
#include <QPainterPath>
#include <QPen>
#include <QPointF>
#include <QRectF>

#include "core/thread/turning.hpp"

class QPainter;

namespace clampwright::desk {

inline constexpr double k_line = 2; // of everything that has an edge
inline constexpr double k_thin = 1; // lines that only lead to a word or say where something would be

[[nodiscard]] QPen stroke(const QColor& ink, double width = k_line);

// The painter's font in another size.
[[nodiscard]] QFont letters(const QPainter& painter, int pixels, bool bold = false);

// Fills the area with slanting lines. The patterns of a brush do not grow with the painter: too fine on paper.
void hatch(QPainter& painter, const QRectF& area, const QColor& ink);

// Writes on one line from there, or to there where it is aligned to the right; `at.y` is the middle of the line.
void write_line(QPainter& painter, QPointF at, Qt::Alignment side, const QString& words);

// Where a hand stands on a dial, 0° up and positive the way `turn` goes.
[[nodiscard]] QPointF on_dial(QPointF centre, double radius, double degrees, thread::Turn turn);

// An arrow bent round a centre, as an outline to be filled or not. It runs from `tail` to `head`, both in degrees from
// the top the way it turns, so that the one arrow is the other in a mirror.
struct RoundArrow {
  QPointF centre;
  double radius; // of the middle of its body
  double width;
  double tail;
  double head; // where its point ends
  thread::Turn turn;
};
[[nodiscard]] QPainterPath round_arrow(const RoundArrow& arrow);

// A straight arrow with its point at `to`, as an outline.
[[nodiscard]] QPainterPath straight_arrow(QPointF from, QPointF to, double width);

} // namespace clampwright::desk
