// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whatever is typed behind `find` is answered, and one slip in a word does not hide its joints.
#include "specdb/workshop/search.hpp"

#include <algorithm>
#include <array>
#include <iostream>
#include <random>
#include <set>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <gtest/gtest.h>

#include "core/text/plain_text.hpp"
#include "specdb/workshop/index_words.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

constexpr std::mt19937::result_type k_seed = 19480611;

class Random {
 public:
  std::size_t below(std::size_t end) { return std::uniform_int_distribution<std::size_t>(0, end - 1)(engine_); }

 private:
  std::mt19937 engine_{k_seed};
};

std::string utf8(std::uint32_t letter) {
  const auto byte = [](std::uint32_t value) { return static_cast<char>(static_cast<unsigned char>(value)); };
  if (letter < 0x80) return {byte(letter)};
  if (letter < 0x800) return {byte(0xC0 | letter >> 6), byte(0x80 | (letter & 0x3F))};
  if (letter < 0x10000)
    return {byte(0xE0 | letter >> 12), byte(0x80 | (letter >> 6 & 0x3F)), byte(0x80 | (letter & 0x3F))};
  return {byte(0xF0 | letter >> 18), byte(0x80 | (letter >> 12 & 0x3F)), byte(0x80 | (letter >> 6 & 0x3F)),
          byte(0x80 | (letter & 0x3F))};
}

std::string any_letter(Random& random) {
  for (;;) {
    const auto letter = static_cast<std::uint32_t>(random.below(2) == 0 ? random.below(0x800) : random.below(0x110000));
    if (letter < 0xD800 || letter > 0xDFFF) return utf8(letter);
  }
}

// One letter dropped, added, swapped with its neighbour or changed; never the first. ASCII words only.
std::string with_a_slip(std::string word, Random& random) {
  const char letter = static_cast<char>('a' + random.below(26));
  const std::size_t at = 1 + random.below(word.size() - 1);
  switch (random.below(4)) {
  case 0:
    return word.erase(at, 1);
  case 1:
    return word.insert(at, 1, letter);
  case 2:
    if (at + 1 < word.size()) std::swap(word[at], word[at + 1]);
    return word;
  default:
    word[at] = letter;
    return word;
  }
}

std::vector<std::string> long_words(const Workshop& workshop) {
  std::vector<std::string> words = words_of_index(workshop.connection());
  std::erase_if(words, [](const std::string& word) {
    return word.size() < 5 || !std::ranges::all_of(word, [](char c) { return c >= 'a' && c <= 'z'; });
  });
  return words;
}

std::set<std::string> slugs(const std::vector<Hit>& hits) {
  std::set<std::string> out;
  for (const Hit& hit : hits)
    out.insert(hit.joint);
  return out;
}

TEST(AnySearch, IsAnsweredWithoutAnError) {
  std::cout << "seed " << k_seed << '\n';
  constexpr std::array k_signs{" ",    "\"",  "\"\"", "*",  "(",     ")",   "^",      ":",     "-",
                               "+",    "{",   "}",    "'",  ",",     ".",   "\\",     "%",     "_",
                               ";",    "--",  "/",    "×",  "x",     "AND", "OR",     "NOT",   "NEAR",
                               "name", "M10", "1.25", "M8", "10-32", "3/8", "\u0301", "\u202E"};
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  const std::vector<std::string> words = words_of_index(workshop.connection());
  Random random;
  int found = 0;
  int read_as = 0;
  for (int trial = 0; trial < 10'000; ++trial) {
    std::string text;
    for (std::size_t pieces = random.below(9); pieces > 0; --pieces) {
      switch (random.below(6)) {
      case 0:
        text += static_cast<char>(random.below(256));
        break;
      case 1:
        text += any_letter(random);
        break;
      case 2:
        text += k_signs[random.below(k_signs.size())];
        break;
      case 3:
        text += ' ';
        break;
      default: {
        const std::string& word = words[random.below(words.size())];
        text += word.size() > 2 && random.below(2) == 0 ? with_a_slip(word, random) : word;
      }
      }
    }
    ASSERT_NO_THROW({
      const Found answer = search(workshop, text);
      found += answer.hits.empty() ? 0 : 1;
      read_as += answer.read_as.empty() ? 0 : 1;
      EXPECT_TRUE(text::is_printable(answer.read_as)) << text::quotable(text);
      if (answer.hits.empty()) {
        EXPECT_EQ(answer.read_as, "") << text::quotable(text);
      }
    }) << "trial "
       << trial << ": " << text::quotable(text);
  }
  EXPECT_GT(found, 500); // or the pieces would prove nothing
  EXPECT_GT(read_as, 200);
}

TEST(AnySearch, FindsTheJointsOfAWordInSpiteOfOneSlip) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  Random random;
  int corrected = 0;
  for (const std::string& word : long_words(workshop)) {
    const std::set<std::string> wanted = slugs(search(workshop, word).hits);
    ASSERT_FALSE(wanted.empty()) << word;
    for (int trial = 0; trial < 40; ++trial) {
      const std::string typed = with_a_slip(word, random);
      const Found answer = search(workshop, typed);
      // A slip can make another word, or the beginning of one. Then that is what was typed.
      if (answer.read_as.empty() && !answer.hits.empty()) continue;
      ++corrected;
      const std::set<std::string> got = slugs(answer.hits);
      EXPECT_TRUE(std::ranges::includes(got, wanted))
          << word << " typed as " << typed << ", read as " << answer.read_as;
    }
  }
  EXPECT_GT(corrected, 500);
}

} // namespace
} // namespace clampwright::specdb
