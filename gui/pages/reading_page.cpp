// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/reading_page.hpp"

#include <QVBoxLayout>

#include "gui/look/utf8.hpp"
#include "gui/text/page_text.hpp"
#include "gui/text/wording.hpp"
#include "gui/widgets/page_view.hpp"
#include "gui/widgets/scroll_pane.hpp"

namespace clampwright::desk {

ReadingPage::ReadingPage(Bench& bench, QWidget* parent) : Page(bench, parent) {
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  auto* scroll = new ScrollPane(this);
  auto* all = new QWidget;
  auto* column = new QVBoxLayout(all);
  view_ = new PageView(bench.look(), all);
  column->addWidget(view_);
  column->addStretch(1);
  scroll->setWidget(all);
  outer->addWidget(scroll);
  connect(&bench, &Bench::look_changed, this, [this] { view_->put_on(this->bench().look()); });
  connect(&bench, &Bench::changed, this, &ReadingPage::ask);
}

void ReadingPage::show_content(Content content) {
  content_ = std::move(content);
  ask();
}

void ReadingPage::ask() {
  if (!content_) return;
  auto content = content_(bench().place());
  if (content) return view_->show_page(std::move(*content));
  PageContent refusal;
  refusal.document.title = content.error().message;
  refusal.document.sections.push_back({content.error().hint, {}});
  view_->show_page(std::move(refusal));
}

QString ReadingPage::title() const { return worded(view_->content().document.title); }

std::optional<Printable> ReadingPage::printable() const {
  if (!view_->has_page()) return std::nullopt;
  return Printable{view_->content()};
}

QString ReadingPage::to_copy() const { return plain_text(view_->content()); }

void ReadingPage::take_focus() { view_->setFocus(); }

} // namespace clampwright::desk
