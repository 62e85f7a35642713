// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QAbstractTableModel>
#include <QStringList>

#include "gui/records/record_form.hpp"

namespace clampwright::desk {

// What is kept, a line each.
struct RecordRows {
  QString name; // "Machines"
  QStringList headings;
  struct Row {
    QStringList cells;
    RecordKey key;
  };
  std::vector<Row> rows;
};

[[nodiscard]] RecordRows machine_rows(const Place& place);
[[nodiscard]] RecordRows joint_rows(const Place& place, const std::string& machine); // key.of is the machine
[[nodiscard]] RecordRows wrench_rows(const Place& place);
[[nodiscard]] RecordRows document_rows(const Place& place);

class RecordTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;
  void show(RecordRows rows);
  [[nodiscard]] const RecordRows& rows() const { return rows_; }
  // Of that line; an empty key where there is none.
  [[nodiscard]] RecordKey key(const QModelIndex& index) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  RecordRows rows_;
};

} // namespace clampwright::desk
