// SPDX-License-Identifier: GPL-3.0-or-later
//
// A page as it stands on the screen and on paper: the big figures, the drawings, and the document that the command line
// prints as well.
#pragma once

#include <vector>

#include <QString>

#include "core/report/document.hpp"
#include "gui/drawings/drawing.hpp"
#include "gui/text/blank_names.hpp"

namespace clampwright::desk {

// What must be readable from two metres.
struct Figure {
  QString value;                  // "45 N·m"
  QString says;                   // "as printed"
  std::vector<QString> more = {}; // lines below that: other units, the source of a figure that stands beside another
  bool is_rival = false;          // stands beside the first and is as large: neither ranks above the other
};

// A drawing, and where it stands: before the document's first section, or behind the section of that number; there
// behind the row with that label and what goes on from it, else behind all of it.
struct Placed {
  Drawing drawing;
  int behind_section = 0;
  std::string behind_row = {};
};

struct PageContent {
  QString where;                        // small, above the title; may be empty
  std::vector<Figure> figures;          // side by side, the first the one that matters most
  std::vector<QString> flags;           // large and bold beside them: "left-hand thread"
  std::vector<QString> essentials = {}; // what goes along where only the figures are copied
  std::vector<Placed> drawings;
  report::Document document;
  std::vector<std::string> rows_shown_above = {}; // labels of rows that figures and drawings say already
  BlankNames blank_names = {};                    // by which its text calls what may still be said
};

} // namespace clampwright::desk
