// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/page_view.hpp"

#include <cmath>

#include <QAccessible>
#include <QKeyEvent>
#include <QScrollBar>

#include "gui/look/utf8.hpp"
#include "gui/widgets/scroll_pane.hpp"

namespace clampwright::desk {

PageView::PageView(const Look& look, QWidget* parent) : QTextBrowser(parent), look_(look) {
  setAccessibleName(tr("answer"));
  setOpenLinks(false);
  setFocusPolicy(Qt::StrongFocus); // a wheel on its way through the page takes it from no blank
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  setTextInteractionFlags(Qt::TextBrowserInteraction | Qt::TextSelectableByKeyboard);
  connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
    if (link.toString() == QLatin1String(k_working_link)) state_.working = !state_.working;
    if (link.toString() == QLatin1String(k_sources_link)) state_.sources = !state_.sources;
    write();
  });
  clear_page();
}

PageView::~PageView() { setDocument(nullptr); }

void PageView::show_page(PageContent content) {
  content_ = std::move(content);
  has_page_ = true;
  write();
  // Said aloud: a result that changes without the focus moving is otherwise not noticed.
  QString summary = from_utf8(content_.document.title);
  for (const Figure& figure : content_.figures)
    summary += QStringLiteral("; %1 %2").arg(figure.value, figure.says);
  setAccessibleDescription(summary);
  QAccessibleEvent event(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&event);
}

void PageView::clear_page() {
  content_ = {};
  has_page_ = false;
  setAccessibleDescription({});
  write();
}

void PageView::unfold_working(bool open) {
  state_.working = open;
  write();
}

void PageView::put_on(const Look& look) {
  look_ = look;
  write();
}

void PageView::write() {
  state_.width = viewport()->width();
  auto text = has_page_ ? page_text(content_, look_, state_) : std::make_unique<QTextDocument>();
  setDocument(text.get());
  setCursorWidth(0); // it is no place to write; a new document forgets it
  text_ = std::move(text);
  setVisible(has_page_);
  fit_height();
}

// All of it stands in what scrolls: there is nothing in it to scroll to.
void PageView::keyPressEvent(QKeyEvent* event) {
  if (ScrollPane::scrolls(*event)) return event->ignore();
  QTextBrowser::keyPressEvent(event);
}

void PageView::resizeEvent(QResizeEvent* event) {
  QTextBrowser::resizeEvent(event);
  fit_figures();
  fit_height();
}

void PageView::fit_figures() {
  const int width = viewport()->width();
  if (figures_in_rows(content_, look_, width) != figures_in_rows(content_, look_, state_.width)) write();
}

void PageView::fit_height() {
  if (!text_) return;
  text_->setTextWidth(viewport()->width());
  const int bar = horizontalScrollBar()->maximum() > 0 ? horizontalScrollBar()->sizeHint().height() : 0;
  const int wanted = static_cast<int>(std::ceil(text_->size().height())) + 2 * frameWidth() + 4 + bar;
  if (minimumHeight() != wanted) setFixedHeight(wanted);
}

} // namespace clampwright::desk
