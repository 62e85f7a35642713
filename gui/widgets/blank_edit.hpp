// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include <QWidget>

#include "gui/look/look.hpp"
#include "gui/sentences/sentence.hpp"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QPushButton;

namespace clampwright::desk {

class FoldedLabel;

// A blank to write into: the text, the unit beside it where it is a quantity, and below it what was understood or why
// it cannot be taken.
class BlankEdit : public QWidget {
  Q_OBJECT

 public:
  BlankEdit(const Blank& blank, const Place& place, const Look& look, QWidget* parent = nullptr);

  [[nodiscard]] const std::string& option() const { return blank_.option; }
  [[nodiscard]] const QString& label() const { return label_; }

  // What it says, with the unit beside it; nothing for an empty blank.
  [[nodiscard]] std::optional<std::string> words() const;
  // Writes it as if it had been typed; nothing empties it.
  void write(const std::optional<std::string>& words);

  // Reads it in that place: shows what was understood, or the refusal. Returns whether it can be taken; an empty one
  // can.
  bool read(const Place& place);
  // A refusal that came from the whole sentence.
  void refuse(const Problem& problem);
  [[nodiscard]] bool is_refused() const { return refused_; }
  [[nodiscard]] QString said_below() const;

  void put_on(const Look& look);
  // What takes the focus.
  [[nodiscard]] QWidget* field() const;

  // What the blanks of the page are called, for refusals that name them.
  void know_names(const BlankNames& names) { names_ = names; }

 signals:
  void changed();

 private:
  void make_field(const Place& place);
  void make_quantity(const Place& place);
  void make_words(const Place& place);
  void make_tick();
  void show_below(const QString& text, bool refusal);
  // "45 Nm" becomes 45 with the unit beside it.
  void part_from_unit();
  // Offers to unfold what is said below, where it is cut.
  void offer_all();
  [[nodiscard]] bool has_own_unit() const;
  [[nodiscard]] QString typed() const;

  Blank blank_;
  QString label_;
  BlankNames names_;
  bool refused_ = false;
  QLineEdit* line_ = nullptr;
  QComboBox* choice_ = nullptr; // with line_ inside it
  QComboBox* unit_ = nullptr;
  QCheckBox* tick_ = nullptr;
  FoldedLabel* below_ = nullptr;
  QPushButton* all_ = nullptr; // of what is said below, where it is cut
};

} // namespace clampwright::desk
