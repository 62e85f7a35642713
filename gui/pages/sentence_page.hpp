// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "gui/pages/page.hpp"
#include "gui/sentences/sentence.hpp"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace clampwright::desk {

class BlankEdit;
class FlowLayout;
class PageView;
class PlotPane;

// A calculator: the sentence with its blanks, and the answer below it as soon as there is one. An answer goes away with
// the first key that changes what it was for.
class SentencePage : public Page {
  Q_OBJECT

 public:
  SentencePage(Bench& bench, const Sentence& sentence, QWidget* parent = nullptr);

  [[nodiscard]] const Sentence& sentence() const { return sentence_; }
  [[nodiscard]] QString title() const override;
  [[nodiscard]] std::optional<Printable> printable() const override;
  [[nodiscard]] QString to_copy() const override;
  void take_focus() override;

  [[nodiscard]] Words words() const;
  // Fills the blanks; those not in `words` are emptied.
  void fill_in(const Words& words);
  void fill_in_example();
  // The same question for the command line.
  [[nodiscard]] std::string as_command_line() const;

  [[nodiscard]] BlankEdit* blank(std::string_view option) const;
  [[nodiscard]] const std::vector<BlankEdit*>& blanks() const { return blanks_; }
  [[nodiscard]] PageView& answer() const { return *view_; }
  [[nodiscard]] PlotPane& plot() const { return *plot_; }
  // Why there is no answer, where no blank says it; empty with an answer.
  [[nodiscard]] QString said_instead() const;
  void show_more(bool more);

 private:
  QWidget* make_top();
  QWidget* make_sentence();
  QWidget* make_middle();
  QWidget* make_more();
  void ask();
  [[nodiscard]] BlankEdit* blank_of(const Problem& problem) const;
  [[nodiscard]] QString still_missing(const Problem& problem) const;
  void put_on_look();
  void show_instead(const QString& text, bool refusal);
  BlankEdit* make_blank(const Blank& blank, QWidget* parent);

  const Sentence& sentence_;
  std::vector<BlankEdit*> blanks_;
  BlankNames names_;
  std::vector<FlowLayout*> flows_;
  QPushButton* more_button_ = nullptr;
  QWidget* more_ = nullptr;
  QLabel* instead_ = nullptr;
  PageView* view_ = nullptr;
  PlotPane* plot_ = nullptr;
  std::optional<PlotCurve> curve_;
  std::vector<QPushButton*> need_answer_;
  bool filling_ = false;
};

} // namespace clampwright::desk
