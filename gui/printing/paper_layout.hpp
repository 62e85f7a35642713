// SPDX-License-Identifier: GPL-3.0-or-later
//
// A text document cut into pages. Qt's own cutting splits a row of a table and parts a heading from what it heads; here
// the pieces that must stay whole are measured first.
#pragma once

#include <memory>
#include <vector>

#include <QTextDocument>

#include "gui/look/look.hpp"
#include "gui/printing/printable.hpp"

namespace clampwright::desk {

// On paper, in the pixels of a device with so many to the inch: running text of ten points.
[[nodiscard]] Look paper_look(double pixels_per_inch);

// From top to bottom of the document, in its own pixels.
struct Slice {
  double top = 0;
  double bottom = 0;
  [[nodiscard]] double height() const { return bottom - top; }
};

// What stands on one page, in that order: the heads of a table that goes on come first.
using PaperPage = std::vector<Slice>;

struct PaperLayout {
  std::unique_ptr<QTextDocument> text;
  std::vector<PaperPage> pages; // never empty
};

// The pieces of a document from top to bottom that no page may cut: paragraphs, rows with those that go on from them,
// headings and drawings with what follows. Paragraphs of many lines may be cut between lines.
struct Piece {
  Slice slice;
  bool keeps_next = false; // stands on one page with the next piece
  Slice heads = {};        // of the table that it is a row of; of no height where there are none
  bool is_head = false;
};
[[nodiscard]] std::vector<Piece> pieces_of(const QTextDocument& text);

// Pages of at most that height. A piece that is taller than a page is cut.
[[nodiscard]] std::vector<PaperPage> cut_into_pages(const std::vector<Piece>& pieces, double height);

// Laid out for pages of that size, in pixels of a device with so many to the inch. What is too wide is set smaller.
[[nodiscard]] PaperLayout lay_out(const Printable& printable, QSizeF page, double pixels_per_inch);

} // namespace clampwright::desk
