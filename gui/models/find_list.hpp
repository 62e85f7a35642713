// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>

#include "gui/models/finder.hpp"

namespace clampwright::desk {

// The lines below the find line.
class FindList : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Role { kind = Qt::UserRole, detail };

  using QAbstractListModel::QAbstractListModel;
  void show(std::vector<FoundLine> lines);
  [[nodiscard]] const FoundLine* line(const QModelIndex& index) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  std::vector<FoundLine> lines_;
};

} // namespace clampwright::desk
