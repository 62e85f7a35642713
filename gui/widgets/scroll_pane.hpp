// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

namespace clampwright::desk {

// A tall widget to scroll through, by every key that whatever has the focus in it leaves over: arrows, Page up and
// down, Home, End, Space. Takes no focus itself.
class ScrollPane : public QScrollArea {
  Q_OBJECT

 public:
  explicit ScrollPane(QWidget* parent = nullptr);

  void to_top();
  // Is it a key that scrolls? Then what is only read gives it to the pane.
  [[nodiscard]] static bool scrolls(const QKeyEvent& event);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
};

} // namespace clampwright::desk
