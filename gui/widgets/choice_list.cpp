// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/choice_list.hpp"

#include <algorithm>

#include <QPainter>
#include <QWheelEvent>

namespace clampwright::desk {

ChoiceList::ChoiceList(QWidget* parent) : QComboBox(parent) { setFocusPolicy(Qt::StrongFocus); }

void ChoiceList::paintEvent(QPaintEvent* event) {
  QComboBox::paintEvent(event);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette().color(QPalette::Text));
  // As wide as the style sheet leaves free for it.
  const double half = std::min(height() / 6.0, 8.0);
  const QPointF tip(width() - height() / 2.0, height() / 2.0 + half / 2);
  painter.drawPolygon(QPolygonF{tip, tip + QPointF(-half, -half), tip + QPointF(half, -half)});
}

void ChoiceList::wheelEvent(QWheelEvent* event) { event->ignore(); }

} // namespace clampwright::desk
