// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the fuzz targets share. A property that does not hold is thrown: libFuzzer takes that for a crash and keeps the
// input, the replay in the ordinary tests shows the words.
#pragma once

#include <algorithm>
#include <stdexcept>
#include <string>
#include <string_view>

#include "core/problem/problem.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::fuzz {

inline void must(bool holds, const std::string& otherwise) {
  if (!holds) throw std::logic_error(otherwise);
}

// Every refusal says what is wrong and what to write, in words that may be printed and are not the whole input again.
inline void must_help(const Problem& problem) {
  constexpr std::size_t k_longest_input = 60 * 4 + 3; // 60 characters of up to four bytes, and "…"
  constexpr std::size_t k_longest_message = 2000;
  must(problem.trouble == Trouble::not_understood || problem.trouble == Trouble::no_such, "refused as our own fault");
  must(!problem.code.empty(), "a refusal has no code");
  must(std::ranges::all_of(problem.code, [](char c) { return c == '-' || (c >= 'a' && c <= 'z'); }),
       "a code is not a stable word: " + problem.code);
  must(!problem.message.empty(), problem.code + " has no message");
  must(!problem.hint.empty(), problem.code + " has no hint");
  must(problem.message.size() <= k_longest_message, problem.code + " has an endless message");
  must(problem.hint.size() <= k_longest_message, problem.code + " has an endless hint");
  must(text::is_printable(problem.message), problem.code + " has a message that cannot be printed");
  must(text::is_printable(problem.hint), problem.code + " has a hint that cannot be printed");
  must(text::is_printable(problem.input), problem.code + " quotes what cannot be printed");
  must(problem.input.size() <= k_longest_input, problem.code + " quotes too much");
}

} // namespace clampwright::fuzz
