// SPDX-License-Identifier: GPL-3.0-or-later
//
// A horizontal axis for drawings: where a value lies, and round numbers along it.
#pragma once

#include <vector>

#include <QString>

#include "gui/look/inks.hpp"

class QPainter;

namespace clampwright::desk {

struct Axis {
  double begin;
  double end; // greater than begin
  double left;
  double right;

  [[nodiscard]] double at(double value) const { return left + (value - begin) / (end - begin) * (right - left); }
};

// Round values from begin to end, at most `most` + 1 of them: steps of 1, 2 or 5 times a power of ten.
[[nodiscard]] std::vector<double> round_values(double begin, double end, int most);

// The line with its numbers below `top`, and its title at the right end under them.
void paint_axis(QPainter& painter, const Inks& inks, const Axis& axis, double top, const QString& title);

} // namespace clampwright::desk
