// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QTextBrowser>

#include "gui/look/look.hpp"
#include "gui/text/page_text.hpp"

namespace clampwright::desk {

// A page to read: as tall as its text, so that what it stands in scrolls. Working and sources fold.
class PageView : public QTextBrowser {
  Q_OBJECT

 public:
  explicit PageView(const Look& look, QWidget* parent = nullptr);
  ~PageView() override;

  void show_page(PageContent content);
  void clear_page();
  [[nodiscard]] bool has_page() const { return has_page_; }
  [[nodiscard]] const PageContent& content() const { return content_; }
  void unfold_working(bool open);
  [[nodiscard]] const PageState& state() const { return state_; }
  void put_on(const Look& look);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void write();
  void fit_height();
  // As many figures in a row as there is room for now.
  void fit_figures();
  Look look_;
  PageContent content_;
  PageState state_;
  bool has_page_ = false;
  std::unique_ptr<QTextDocument> text_;
};

} // namespace clampwright::desk
