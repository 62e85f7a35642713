// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace clampwright::desk {

// A sentence of which the first three lines show until it is unfolded: a list of all materials must not push a form
// away under the hands that write in it. Its text is the whole text all the while.
class FoldedLabel : public QLabel {
  Q_OBJECT

 public:
  explicit FoldedLabel(QWidget* parent = nullptr);

  // Folded again.
  void say(const QString& text, bool may_fold);
  void unfold(bool open);
  [[nodiscard]] bool is_unfolded() const { return unfolded_; }
  // Are there lines that do not show?
  [[nodiscard]] bool is_cut() const;

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] int heightForWidth(int width) const override;

 signals:
  void cut_changed();

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  [[nodiscard]] int most() const; // pixels of height
  bool may_fold_ = false;
  bool unfolded_ = false;
};

} // namespace clampwright::desk
