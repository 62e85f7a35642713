// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "gui/models/bench.hpp"
#include "gui/models/finder.hpp"

class QLabel;
class QLineEdit;
class QListView;

namespace clampwright::desk {

class FindList;

// The list below the find line: what was found, or what there is to browse.
class FindPanel : public QWidget {
  Q_OBJECT

 public:
  // `line` is the find line; it stands elsewhere.
  FindPanel(Bench& bench, QLineEdit& line, QWidget* parent = nullptr);

  [[nodiscard]] QListView& list() const { return *list_; }
  [[nodiscard]] const FindList& lines() const { return *lines_; }
  [[nodiscard]] QString note() const;
  // Opens the chosen line, or the first.
  void open_chosen();

 signals:
  void opened(const Target& target);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void find();
  void open_index(const QModelIndex& index);
  bool key_in_line(int key);
  Bench& bench_;
  QLineEdit& line_;
  Finder finder_;
  std::string machine_; // whose joints are listed; empty: none
  QLabel* note_;
  QListView* list_;
  FindList* lines_;
};

} // namespace clampwright::desk
