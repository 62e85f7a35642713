// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person types who looks at a head: "8.8 XYZ", "three radial lines", "dot 12 bar 8", "nut |8|". This file knows
// how marks are described; which of them mean something is in the table.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"

namespace clampwright::specdb {

// One thing that was seen. A described sign has the words that the table uses for it; figures and letters stay as they
// were typed, because they may be a maker's.
struct MarkPiece {
  std::string words;
  bool is_sign = false;    // lines, dashes, arrows, an empty head
  std::string letter = {}; // a sign that was typed as one letter, and may be a maker's: X, O
};

struct MarkWords {
  std::vector<MarkPiece> pieces; // never empty: an empty head is a piece of its own, "no mark"
  std::optional<std::string> part;
};

// "bolt", "screw", "stud" or "nut", also in the plural and in any case.
[[nodiscard]] std::optional<std::string> part_named(std::string_view word);

// Fails with not-understood for text that is too long or not plain.
[[nodiscard]] Result<MarkWords> read_mark_words(std::string_view text);

} // namespace clampwright::specdb
