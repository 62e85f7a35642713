// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/find_list.hpp"

namespace clampwright::desk {

void FindList::show(std::vector<FoundLine> lines) {
  beginResetModel();
  lines_ = std::move(lines);
  endResetModel();
}

const FoundLine* FindList::line(const QModelIndex& index) const {
  return index.isValid() && index.row() < rowCount() ? &lines_[static_cast<std::size_t>(index.row())] : nullptr;
}

int FindList::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

QVariant FindList::data(const QModelIndex& index, int role) const {
  const FoundLine* found = line(index);
  if (found == nullptr) return {};
  switch (role) {
  case Qt::DisplayRole:
    return found->title;
  case kind:
    return found->kind;
  case detail:
    return found->detail;
  case Qt::AccessibleTextRole:
    return QStringLiteral("%1: %2; %3").arg(found->kind, found->title, found->detail);
  default:
    return {};
  }
}

} // namespace clampwright::desk
