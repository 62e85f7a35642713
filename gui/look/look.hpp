// SPDX-License-Identifier: GPL-3.0-or-later
//
// How large and in which colours: the four sizes of type, the targets for fingers, the grid, and the style made of
// them.
#pragma once

#include <QFont>
#include <QString>

#include "gui/look/inks.hpp"

class QApplication;
class QWidget;

namespace clampwright::desk {

// At the bench one stands two metres away, with gloves on: 72 px at 96 dpi are the 19 mm that keys for mittened fingers
// need at the least (MIL-STD-1472E 5.4.3.1.3.3, read in a scan).
struct Look {
  Theme theme = Theme::light;
  bool bench = false;
  double scale = 1; // of all type, 1 to 3

  [[nodiscard]] int figure() const { return pixels(bench ? 72 : 44); } // the torque: 20 arc-minutes at 2 m
  [[nodiscard]] int heading() const { return pixels(bench ? 32 : 24); }
  [[nodiscard]] int text() const { return pixels(bench ? 22 : 15); }
  [[nodiscard]] int small() const { return pixels(bench ? 17 : 12); }
  [[nodiscard]] int target() const { return pixels(bench ? 72 : 32); } // the least side of what is clicked
  [[nodiscard]] int gap() const { return pixels(bench ? 12 : 8); }
  [[nodiscard]] int pixels(double at_100_percent) const { return static_cast<int>(at_100_percent * scale + 0.5); }
  [[nodiscard]] const Inks& colours() const { return inks(theme); }

  friend bool operator==(const Look&, const Look&) = default;
};

// Light or dark as the system's own colours are; to be asked before any look was put on. Qt 6.4 has no better question.
[[nodiscard]] Theme system_theme();

// The system's sans serif in the size of running text.
[[nodiscard]] QFont text_font(const Look& look);

// Puts the look in force for every widget there is and will be.
void put_on(QApplication& application, const Look& look);

// What a label is for, by which the style sheet knows it: "heading", "part", "understood", "refusal", "banner",
// "sentence".
void set_kind(QWidget& label, const char* kind);

// The style sheet alone, for tests.
[[nodiscard]] QString style_sheet(const Look& look);

} // namespace clampwright::desk
