// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gui/pages/page.hpp"
#include "gui/records/record_form.hpp"

class QLabel;
class QPushButton;
class QTableView;

namespace clampwright::desk {

class RecordTable;

// What is kept of one kind, line by line: machines, the joints of a machine, wrenches, documents.
class RecordsPage : public Page {
  Q_OBJECT

 public:
  // `what` is "machines", "wrenches", "documents", or "joints" of the machine `of`.
  explicit RecordsPage(Bench& bench, QWidget* parent = nullptr);
  void show_records(const std::string& what, const std::string& of);
  [[nodiscard]] const std::string& what() const { return what_; }

  [[nodiscard]] QString title() const override;
  void take_focus() override;
  [[nodiscard]] QTableView& view() const { return *view_; }
  [[nodiscard]] const RecordTable& table() const { return *table_; }

 signals:
  // A joint opens its page, anything else its form.
  void joint_wanted(const std::string& slug);
  void joints_wanted(const std::string& machine);
  void record_wanted(const std::string& form, const RecordKey& key);

 private:
  void fill();
  void open_chosen();
  std::string what_ = "machines";
  std::string of_;
  QLabel* name_;
  QPushButton* open_;
  QPushButton* revise_;
  QPushButton* add_;
  QTableView* view_;
  RecordTable* table_;
};

} // namespace clampwright::desk
