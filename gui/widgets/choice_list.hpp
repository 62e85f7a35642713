// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>

namespace clampwright::desk {

// A list to choose from, with an arrow in the ink of its text. A wheel that passes over it on its way down the page
// must not change it.
class ChoiceList : public QComboBox {
  Q_OBJECT

 public:
  using QComboBox::QComboBox;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
};

} // namespace clampwright::desk
