// SPDX-License-Identifier: GPL-3.0-or-later
//
// Slips of the typing hand: a letter changed, added, dropped, or swapped with its neighbour.
#pragma once

#include <cstddef>
#include <string_view>

namespace clampwright::text {

// How many slips, each letter in one slip at most (Damerau's distance, restricted). Only the first 64 letters are
// looked at.
struct Slips {
  std::size_t whole;     // between what was typed and the whole word
  std::size_t beginning; // between what was typed and that beginning of the word which is nearest to it
};

[[nodiscard]] Slips slips(std::u32string_view typed, std::u32string_view word);

} // namespace clampwright::text
