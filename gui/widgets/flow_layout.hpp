// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QLayout>

namespace clampwright::desk {

// Lays its widgets out like words: from left to right, on the next line where a line is full; the tops of a line are
// level.
class FlowLayout : public QLayout {
 public:
  FlowLayout(QWidget* parent, int gap);
  ~FlowLayout() override;

  void set_gap(int gap);

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  // Returns the bottom; places the items where `really`.
  int lay_out(const QRect& rect, bool really) const;
  std::vector<QLayoutItem*> items_;
  int gap_;
};

} // namespace clampwright::desk
