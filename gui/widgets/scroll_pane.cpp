// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/scroll_pane.hpp"

#include <optional>

#include <QKeyEvent>
#include <QScrollBar>

namespace clampwright::desk {

namespace {

std::optional<QAbstractSlider::SliderAction> action_of(const QKeyEvent& event) {
  const Qt::KeyboardModifiers held = event.modifiers() & ~Qt::KeypadModifier;
  if (event.key() == Qt::Key_Space && held == Qt::ShiftModifier) return QAbstractSlider::SliderPageStepSub;
  if (held != Qt::NoModifier) return std::nullopt; // with Shift they choose text
  switch (event.key()) {
  case Qt::Key_Down:
    return QAbstractSlider::SliderSingleStepAdd;
  case Qt::Key_Up:
    return QAbstractSlider::SliderSingleStepSub;
  case Qt::Key_PageDown:
  case Qt::Key_Space:
    return QAbstractSlider::SliderPageStepAdd;
  case Qt::Key_PageUp:
    return QAbstractSlider::SliderPageStepSub;
  case Qt::Key_Home:
    return QAbstractSlider::SliderToMinimum;
  case Qt::Key_End:
    return QAbstractSlider::SliderToMaximum;
  default:
    return std::nullopt;
  }
}

} // namespace

ScrollPane::ScrollPane(QWidget* parent) : QScrollArea(parent) {
  setWidgetResizable(true);
  setFocusPolicy(Qt::NoFocus);
}

void ScrollPane::to_top() {
  verticalScrollBar()->setValue(verticalScrollBar()->minimum());
  horizontalScrollBar()->setValue(horizontalScrollBar()->minimum());
}

bool ScrollPane::scrolls(const QKeyEvent& event) { return action_of(event).has_value(); }

void ScrollPane::keyPressEvent(QKeyEvent* event) {
  if (const auto action = action_of(*event)) {
    verticalScrollBar()->setSingleStep(2 * fontMetrics().lineSpacing());
    verticalScrollBar()->triggerAction(*action);
    return event->accept();
  }
  QScrollArea::keyPressEvent(event);
}

} // namespace clampwright::desk
