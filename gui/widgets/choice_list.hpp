// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>

namespace clampwright::desk {

// A list to choose from, with an arrow in the ink of its text. A wheel that passes over it on its way down the page
// must not change it, nor give it the focus.
class ChoiceList : public QComboBox {
  Q_OBJECT

 public:
  explicit ChoiceList(QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
};

} // namespace clampwright::desk
