// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "gui/pages/page.hpp"
#include "gui/records/record_form.hpp"

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace clampwright::desk {

class BlankEdit;
class FlowLayout;
class PageView;
class ScrollPane;

// A record to enter or to revise, and what happened to it. Nothing is written before the button is pressed, and then
// all of it or nothing. What was typed stays while others change the file.
class RecordPage : public Page {
  Q_OBJECT

 public:
  RecordPage(Bench& bench, const RecordForm& form, QWidget* parent = nullptr);

  // A new record that belongs to `key.of`, or that of `key.key`, as it is recorded now.
  void show_record(const RecordKey& key);
  [[nodiscard]] const RecordKey& key() const { return key_; }
  [[nodiscard]] const RecordForm& form() const { return form_; }

  [[nodiscard]] QString title() const override;
  [[nodiscard]] std::optional<Printable> printable() const override;
  void take_focus() override;

  [[nodiscard]] BlankEdit* blank(std::string_view option) const;
  [[nodiscard]] std::vector<BlankEdit*> shown_blanks() const;
  [[nodiscard]] QLineEdit& because() const { return *because_; }
  [[nodiscard]] QPushButton& keep_button() const { return *keep_; }
  [[nodiscard]] QString said() const;
  // At its top, where nothing can be entered; empty with a workshop.
  [[nodiscard]] QString said_at_once() const;
  [[nodiscard]] bool is_busy() const { return busy_; }
  // Was anything filled in that is not kept yet?
  [[nodiscard]] bool has_changes() const;

 signals:
  void kept(const RecordKey& key);

 private:
  void make_group(QVBoxLayout& column, const BlankGroup& group);
  void fill();
  void keep();
  void show_outcome(const Result<RecordKey>& outcome);
  // Gives it the focus and scrolls to it, with what stands below it.
  void show_blank(QWidget& blank, QWidget& field);
  void say(const QString& text, bool refusal);
  void show_history();
  void put_on_look();
  [[nodiscard]] bool is_new() const { return key_.key.empty(); }
  [[nodiscard]] Words filled() const;
  // Reads every blank; says what is missing. True where the button may do its work.
  bool read_all();

  const RecordForm& form_;
  RecordKey key_;
  Words before_; // as the blanks said it when they were filled from the record
  std::optional<std::size_t> events_seen_;
  std::vector<BlankEdit*> blanks_;
  BlankNames names_;
  std::vector<FlowLayout*> flows_;
  std::vector<QWidget*> only_new_;
  QLabel* name_ = nullptr;
  QLabel* no_workshop_ = nullptr;
  QWidget* reason_ = nullptr;
  QLineEdit* because_ = nullptr;
  QPushButton* keep_ = nullptr;
  QLabel* said_ = nullptr;
  PageView* history_ = nullptr;
  ScrollPane* pane_ = nullptr;
  bool busy_ = false;
};

} // namespace clampwright::desk
