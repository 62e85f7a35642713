// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every colour of the desk stands in inks.cpp, as what is drawn and what it is drawn on: a text colour without its
// ground cannot be judged. A test computes the contrast of every pair.
#pragma once

#include <vector>

#include <QColor>

namespace clampwright::desk {

enum class Theme { light, dark, paper }; // paper is for printing: black on white

// What is written or drawn, and the ground under it.
struct Pair {
  QColor ink;
  QColor ground;
};

struct Inks {
  Pair page;     // the running text
  Pair quiet;    // what was understood, sources, captions
  Pair field;    // text in a blank
  Pair hint;     // the example in an empty blank
  Pair chosen;   // selected text, the row that Enter opens
  Pair button;   // the words of a button
  Pair off;      // a button that does nothing now
  Pair turn;     // the one accent: turn this way; also links
  Pair refusal;  // why an entry cannot be taken
  Pair banner;   // what must not be overlooked
  Pair rule;     // lines between parts, frames of blanks and buttons
  Pair focus;    // the frame of what has the focus
  Pair limit;    // proof and yield in a band picture
  Pair friction; // the bar of the thread friction model
  Pair factor;   // the bar of the nut factor model
  Pair sketch;   // the lines of a drawing
};

[[nodiscard]] const Inks& inks(Theme theme);

// The ratio of the relative luminances, 1 to 21 (WCAG 2.2, "contrast ratio", from memory).
[[nodiscard]] double contrast(const Pair& pair);

// A pair by its name and the least contrast that it must have: 7 for text, 3 for lines and areas.
struct Demand {
  const char* name;
  Pair pair;
  double least;
};
[[nodiscard]] std::vector<Demand> demands(const Inks& inks);

} // namespace clampwright::desk
