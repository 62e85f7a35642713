// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/flow_layout.hpp"

#include <algorithm>

#include <QWidget>

namespace clampwright::desk {

FlowLayout::FlowLayout(QWidget* parent, int gap) : QLayout(parent), gap_(gap) { setContentsMargins(0, 0, 0, 0); }

FlowLayout::~FlowLayout() {
  for (QLayoutItem* item : items_)
    delete item;
}

void FlowLayout::set_gap(int gap) {
  gap_ = gap;
  invalidate();
}

void FlowLayout::addItem(QLayoutItem* item) { items_.push_back(item); }

QLayoutItem* FlowLayout::itemAt(int index) const {
  return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item != nullptr) items_.erase(items_.begin() + index);
  return item;
}

int FlowLayout::heightForWidth(int width) const { return lay_out(QRect(0, 0, width, 0), false); }

QSize FlowLayout::sizeHint() const { return minimumSize(); }

QSize FlowLayout::minimumSize() const {
  QSize size;
  for (const QLayoutItem* item : items_)
    if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
  return size;
}

void FlowLayout::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  lay_out(rect, true);
}

int FlowLayout::lay_out(const QRect& rect, bool really) const {
  int x = rect.left();
  int y = rect.top();
  int line = 0;
  for (QLayoutItem* item : items_) {
    if (item->isEmpty()) continue;
    QSize size = item->sizeHint().expandedTo(item->minimumSize());
    size.setWidth(std::min(size.width(), rect.width()));
    if (item->hasHeightForWidth()) size.setHeight(item->heightForWidth(size.width()));
    if (x > rect.left() && x + size.width() > rect.right() + 1) {
      x = rect.left();
      y += line + gap_;
      line = 0;
    }
    if (really) item->setGeometry(QRect(QPoint(x, y), size));
    x += size.width() + gap_;
    line = std::max(line, size.height());
  }
  return y + line - rect.top();
}

} // namespace clampwright::desk
