// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "gui/pages/page.hpp"

namespace clampwright::desk {

class PageView;

// A page that is read and not filled in: rows of a table, cautions and keys.
class ReadingPage : public Page {
  Q_OBJECT

 public:
  using Content = std::function<Result<PageContent>(const Place& place)>;
  explicit ReadingPage(Bench& bench, QWidget* parent = nullptr);

  // Asked for anew when something on the bench changes.
  void show_content(Content content);

  [[nodiscard]] QString title() const override;
  [[nodiscard]] std::optional<Printable> printable() const override;
  [[nodiscard]] QString to_copy() const override;
  void take_focus() override;
  [[nodiscard]] PageView& view() const { return *view_; }

 private:
  void ask();
  Content content_;
  PageView* view_;
};

} // namespace clampwright::desk
