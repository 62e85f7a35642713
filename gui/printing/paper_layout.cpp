// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/printing/paper_layout.hpp"

#include <algorithm>

#include <QAbstractTextDocumentLayout>
#include <QTextBlock>
#include <QTextFrame>
#include <QTextTable>

#include "gui/drawings/write_in_box.hpp"
#include "gui/printing/curve_print.hpp"
#include "gui/text/page_text.hpp"

namespace clampwright::desk {

namespace {

// The sizes of a look are meant for 96 pixels to the inch and for reading from afar: 15 of them are 11.25 points.
constexpr double k_inch = 96;
constexpr double k_ten_points = 10.0 / 11.25;
constexpr int k_whole_lines = 8; // a paragraph of no more is never cut

class Measure {
 public:
  explicit Measure(const QTextDocument& text) : text_(text), layout_(*text.documentLayout()) {}

  std::vector<Piece> pieces() {
    QTextFrame* root = text_.rootFrame();
    for (auto it = root->begin(); !it.atEnd(); ++it) {
      if (const auto* table = qobject_cast<QTextTable*>(it.currentFrame()))
        add_table(*table);
      else if (it.currentBlock().isValid())
        add_block(it.currentBlock());
    }
    return std::move(pieces_);
  }

 private:
  [[nodiscard]] Slice slice_of(const QTextBlock& block) const {
    const QRectF place = layout_.blockBoundingRect(block);
    return {place.top(), place.bottom()};
  }

  void add_block(const QTextBlock& block) {
    const Slice all = slice_of(block);
    const bool keeps = block.blockFormat().boolProperty(k_keeps_next);
    const QTextLayout& lines = *block.layout();
    if (lines.lineCount() <= k_whole_lines) {
      pieces_.push_back({all, keeps});
      return;
    }
    const double top = all.bottom - lines.boundingRect().height();
    for (int i = 0; i < lines.lineCount(); ++i) {
      const QRectF line = lines.lineAt(i).rect();
      // Two lines together at either end: one alone is overlooked.
      const bool together = i == 0 || i == lines.lineCount() - 2;
      pieces_.push_back({{i == 0 ? all.top : top + line.top(), top + line.bottom()}, together});
    }
  }

  [[nodiscard]] Slice slice_of_row(const QTextTable& table, int row) const {
    Slice slice{1e12, -1e12};
    for (int column = 0; column < table.columns(); ++column) {
      const QTextTableCell cell = table.cellAt(row, column);
      for (auto it = cell.begin(); !it.atEnd(); ++it) {
        const Slice block = slice_of(it.currentBlock());
        slice.top = std::min(slice.top, block.top);
        slice.bottom = std::max(slice.bottom, block.bottom);
      }
    }
    const double padding = table.format().cellPadding();
    return {slice.top - padding, slice.bottom + padding};
  }

  // Does the row go on from the one above it?
  static bool goes_on(const QTextTable& table, int row) {
    return row < table.rows() && table.cellAt(row, 0).firstCursorPosition().block().text().isEmpty();
  }

  void add_table(const QTextTable& table) {
    const int heads = table.format().headerRowCount();
    Slice head{};
    for (int row = 0; row < table.rows(); ++row) {
      const Slice slice = slice_of_row(table, row);
      const bool is_head = row < heads;
      if (is_head) head = {row == 0 ? slice.top : head.top, slice.bottom};
      pieces_.push_back({slice, is_head || goes_on(table, row + 1), head, is_head});
    }
  }

  const QTextDocument& text_;
  const QAbstractTextDocumentLayout& layout_;
  std::vector<Piece> pieces_;
};

// With the curve, its points and the box among what is laid out. The place and the foot line stand on every sheet.
PageContent content_to_print(const Printable& printable) {
  PageContent content = printable.content;
  content.where.clear();
  content.document.has_foot = false;
  if (printable.write_in) content.drawings.push_back({write_in_box(), 1});
  if (printable.curve) {
    content.document.sections.push_back(curve_points(*printable.curve));
    content.drawings.push_back({curve_print(*printable.curve), static_cast<int>(content.document.sections.size()) - 1});
  }
  return content;
}

} // namespace

Look paper_look(double pixels_per_inch) {
  return {.theme = Theme::paper, .scale = k_ten_points * pixels_per_inch / k_inch};
}

std::vector<Piece> pieces_of(const QTextDocument& text) { return Measure(text).pieces(); }

std::vector<PaperPage> cut_into_pages(const std::vector<Piece>& pieces, double height) {
  std::vector<PaperPage> pages;
  double heads = 0; // of a table that goes on, repeated on this page
  Slice body{};
  const auto finish = [&] {
    if (body.height() > 0) pages.back().push_back(body);
  };
  const auto begin_page = [&](const Piece& first) {
    finish();
    pages.emplace_back();
    const bool goes_on = first.heads.height() > 0 && !first.is_head;
    heads = goes_on ? first.heads.height() : 0;
    if (goes_on) pages.back().push_back(first.heads);
    body = {first.slice.top, first.slice.top};
  };
  const auto fits = [&](double bottom) { return heads + bottom - body.top <= height; };
  for (std::size_t i = 0; i < pieces.size();) {
    std::size_t end = i + 1;
    while (end < pieces.size() && pieces[end - 1].keeps_next)
      ++end;
    if (pages.empty() || (!fits(pieces[end - 1].slice.bottom) && body.height() > 0)) begin_page(pieces[i]);
    for (; i < end; ++i) {
      // What should stand together and is taller than a page.
      if (!fits(pieces[i].slice.bottom) && body.height() > 0) begin_page(pieces[i]);
      body.bottom = pieces[i].slice.bottom;
    }
  }
  if (pages.empty()) pages.emplace_back();
  finish();
  return pages;
}

PaperLayout lay_out(const Printable& printable, QSizeF page, double pixels_per_inch) {
  const PageContent content = content_to_print(printable);
  Look look = paper_look(pixels_per_inch);
  PaperLayout layout;
  constexpr int k_tries = 3;
  for (int i = 0; i < k_tries; ++i) {
    layout.text = page_text(content, look, {.working = printable.working, .sources = true});
    layout.text->setDocumentMargin(0);
    layout.text->setTextWidth(page.width());
    const double wide = layout.text->size().width();
    if (wide <= page.width() * 1.001) break;
    look.scale *= std::max(0.5, 0.99 * page.width() / wide);
  }
  layout.pages = cut_into_pages(pieces_of(*layout.text), page.height());
  return layout;
}

} // namespace clampwright::desk
