// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/sequence_drawing.hpp"
#include "gui/drawings/drawing.hpp"

namespace clampwright::desk {

// Where the bolts stand, each with its turn in the order large and its position small; the first is filled. The words
// of core's drawing stand in `in_words`.
[[nodiscard]] Drawing bolt_order(const report::SequenceDrawing& sequence);

} // namespace clampwright::desk
