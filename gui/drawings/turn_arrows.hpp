// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/thread/turning.hpp"
#include "gui/drawings/drawing.hpp"

namespace clampwright::desk {

// Which way to turn, to be read from two metres: an arrow round a hexagon for undoing and a filled one for tightening,
// each with its word, and below them the side from which they are seen ("looking at the clutch"). A left-hand thread is
// named beside the arrow.
[[nodiscard]] Drawing turn_arrows(thread::Turn tighten, thread::Turn undo, const std::string& seen_from,
                                  bool left_hand);

} // namespace clampwright::desk
