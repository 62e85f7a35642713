// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "gui/drawings/plot_curve.hpp"
#include "gui/text/page_content.hpp"

namespace clampwright::desk {

// What a page has to print: what is read, and the curve that belongs to it.
struct Printable {
  PageContent content;
  std::optional<PlotCurve> curve = std::nullopt;
  bool working = false;  // is printed too
  bool write_in = false; // something that is tightened: room to write in what was done
};

} // namespace clampwright::desk
