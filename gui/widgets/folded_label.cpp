// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/folded_label.hpp"

#include <algorithm>

namespace clampwright::desk {

namespace {

constexpr int k_lines = 3;
// In letters: a sentence needs more room than a number, and is hard to read where it is wider than this.
constexpr int k_narrowest = 36;
constexpr int k_widest = 72;

} // namespace

FoldedLabel::FoldedLabel(QWidget* parent) : QLabel(parent) {
  setWordWrap(true);
  setAlignment(Qt::AlignLeft | Qt::AlignTop);
}

void FoldedLabel::say(const QString& text, bool may_fold) {
  if (text == this->text() && may_fold == may_fold_) return;
  may_fold_ = may_fold;
  unfolded_ = false;
  setText(text);
  updateGeometry();
  emit cut_changed();
}

void FoldedLabel::unfold(bool open) {
  unfolded_ = open;
  updateGeometry();
  emit cut_changed();
}

int FoldedLabel::most() const { return k_lines * fontMetrics().lineSpacing(); }

bool FoldedLabel::is_cut() const {
  return may_fold_ && !unfolded_ && QLabel::heightForWidth(width()) > heightForWidth(width());
}

QSize FoldedLabel::sizeHint() const {
  if (!may_fold_ || text().isEmpty()) return QLabel::sizeHint();
  const int letter = fontMetrics().averageCharWidth();
  // Lines end at words: a fifth more than the letters fill.
  const int wanted = fontMetrics().horizontalAdvance(text()) / k_lines * 6 / 5;
  const int width = std::clamp(wanted, letter * k_narrowest, letter * k_widest);
  return {width, heightForWidth(width)};
}

QSize FoldedLabel::minimumSizeHint() const {
  if (!may_fold_) return QLabel::minimumSizeHint();
  return {0, fontMetrics().lineSpacing()};
}

int FoldedLabel::heightForWidth(int width) const {
  const int all = QLabel::heightForWidth(width);
  return may_fold_ && !unfolded_ ? std::min(all, most()) : all;
}

void FoldedLabel::resizeEvent(QResizeEvent* event) {
  QLabel::resizeEvent(event);
  emit cut_changed();
}

} // namespace clampwright::desk
