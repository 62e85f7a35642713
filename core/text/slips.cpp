// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/text/slips.hpp"

#include <algorithm>
#include <array>

namespace clampwright::text {

Slips slips(std::u32string_view typed, std::u32string_view word) {
  constexpr std::size_t k_longest = 64;
  typed = typed.substr(0, k_longest);
  word = word.substr(0, k_longest);
  using Row = std::array<std::size_t, k_longest + 1>; // [j]: slips between the letters so far and j letters of the word
  Row before_last{};
  Row last{};
  for (std::size_t j = 0; j <= word.size(); ++j)
    last[j] = j;
  for (std::size_t i = 1; i <= typed.size(); ++i) {
    Row row{};
    row[0] = i;
    for (std::size_t j = 1; j <= word.size(); ++j) {
      const std::size_t change = typed[i - 1] == word[j - 1] ? 0 : 1;
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + change});
      if (i > 1 && j > 1 && typed[i - 1] == word[j - 2] && typed[i - 2] == word[j - 1])
        row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
    before_last = last;
    last = row;
  }
  return {last[word.size()],
          *std::min_element(last.begin(), last.begin() + static_cast<std::ptrdiff_t>(word.size()) + 1)};
}

} // namespace clampwright::text
