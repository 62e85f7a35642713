// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person may have meant by a word that is not there: slips of the hand, a space forgotten.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace clampwright::specdb {

// A word that may have been meant, or the two that were written as one.
struct Meant {
  std::vector<std::string> words;
  std::size_t slips = 0;
};

class Vocabulary {
 public:
  // The words of an index, each once.
  explicit Vocabulary(std::vector<std::string> words);

  // Does some word begin like this, or is it one?
  [[nodiscard]] bool begins_a_word(std::string_view beginning) const;

  // The words that begin like this, in order; of more than `most` the first and one more.
  [[nodiscard]] std::vector<std::string> beginning_with(std::string_view beginning, std::size_t most) const;

  // What may have been meant by a word that begins none, fewest slips first. About one letter in three may be wrong,
  // and a forgotten space counts as one slip. Nothing for words of one or two letters, and none is ever taken for, or
  // from, a word with a digit in it: M8 must not become M6.
  [[nodiscard]] std::vector<Meant> meant_by(std::string_view typed) const;

 private:
  struct Word {
    std::string text;
    std::u32string letters;
    std::uint32_t letters_in_it; // a bit for each letter, modulo 32
  };
  [[nodiscard]] bool has(std::string_view word) const;
  std::vector<std::string> words_; // in order
  std::vector<Word> correctable_;  // those without digits, in order
};

[[nodiscard]] bool has_digit(std::string_view word);

} // namespace clampwright::specdb
