// SPDX-License-Identifier: GPL-3.0-or-later
//
// A tightening order as a drawing, before anyone has decided who paints it: where every bolt stands, its number in the
// order, and the words around. Lengths are millimetres from the upper left corner.
#pragma once

#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "core/tightening/sequence.hpp"

namespace clampwright::report {

struct DrawnBolt {
  double x = 0;
  double y = 0;
  int position = 0;
  int turn = 0;       // when it is tightened: 1 is first
  double label_x = 0; // of the small number of its position
  double label_y = 0;
};

enum class Anchor { left, middle };

struct DrawnText {
  double x = 0;
  double y = 0; // of the middle of the line
  double size = 0;
  Anchor anchor = Anchor::left;
  bool is_bold = false;
  std::string text;
};

// The line that the bolts stand on.
struct DrawnLine {
  double x1 = 0;
  double y1 = 0;
  double x2 = 0;
  double y2 = 0;
};

struct DrawnCircle {
  double x = 0;
  double y = 0;
  double radius = 0;
};

struct SequenceDrawing {
  std::string title;
  std::string description; // the same in words, for whoever cannot see it
  double width = 0;
  double height = 0;
  double bolt_radius = 0;
  double order_size = 0; // height of the big numbers
  double label_size = 0;
  std::vector<DrawnLine> lines;
  std::vector<DrawnCircle> circles;
  std::vector<DrawnBolt> bolts;
  std::vector<DrawnText> texts;
};

// `heading` stands above it: the joint's name, or "" for none. `seen_from` is from where one looks: "looking at the
// heads". `banner` is what must not be overlooked, or "".
[[nodiscard]] SequenceDrawing sequence_drawing(const tightening::Sequence& sequence, std::string_view heading,
                                               std::string_view seen_from, std::string_view banner = "");

// The drawing as one SVG picture: black on white, nothing fetched, nothing runs, every text escaped.
[[nodiscard]] std::string write_svg(const SequenceDrawing& drawing);

} // namespace clampwright::report
