// SPDX-License-Identifier: GPL-3.0-or-later
//
// Drawings within a text document, painted anew at every size: sharp on the screen, lines and letters in a print.
#pragma once

#include "gui/drawings/drawing.hpp"
#include "gui/look/look.hpp"

class QTextCursor;
class QTextDocument;

namespace clampwright::desk {

class DrawnObjects {
 public:
  // Teaches the document to paint drawings in that look.
  DrawnObjects(QTextDocument& text, const Look& look);
  // Puts the drawing where the cursor stands. It shrinks where the text is narrower.
  void put(QTextCursor& cursor, const Drawing& drawing) const;

 private:
  Look look_;
};

} // namespace clampwright::desk
