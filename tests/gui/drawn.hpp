// SPDX-License-Identifier: GPL-3.0-or-later
//
// Drawings in the memory of a test: what stands in them, and whether they keep to their size.
#pragma once

#include <QImage>

#include "gui/drawings/drawing.hpp"

namespace clampwright::desk {

inline constexpr int k_around = 40; // pixels round the drawing, where nothing may be

// On paper, at 100 %, with k_around of white on each side.
[[nodiscard]] QImage painted(const Drawing& drawing);
[[nodiscard]] bool has_ink(const QImage& image, const QRect& area);
// At a place in the drawing's own pixels, give or take two.
[[nodiscard]] bool has_ink_at(const QImage& image, QPointF place);
// How many pixels outside the drawing's size are not white.
[[nodiscard]] int ink_outside(const QImage& image);

} // namespace clampwright::desk
