// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/near_words.hpp"

#include <algorithm>
#include <bit>
#include <optional>

#include "core/text/plain_text.hpp"
#include "core/text/slips.hpp"

namespace clampwright::specdb {

namespace {

constexpr std::size_t k_longest_typed = 40; // letters; no fitter's word is longer
constexpr std::size_t k_most_slips = 3;
constexpr std::size_t k_most_meant = 24;
constexpr std::size_t k_shortest_part = 3; // of a word that is two

std::uint32_t letters_in(std::u32string_view word) {
  std::uint32_t bits = 0;
  for (const char32_t letter : word)
    bits |= 1U << (static_cast<std::uint32_t>(letter) & 31U);
  return bits;
}

// One letter in three, and one at least.
std::size_t slips_allowed(std::size_t letters) { return std::clamp<std::size_t>(letters / 3, 1, k_most_slips); }

// How many slips from the word, nothing where that is too many. A short word is only near to one that begins alike, and
// never near to a mere beginning: of three letters every other would be.
std::optional<std::size_t> slips_to(std::u32string_view typed, std::u32string_view word) {
  const bool is_short = typed.size() <= 3;
  if (is_short && typed.front() != word.front()) return std::nullopt;
  const text::Slips slips = text::slips(typed, word);
  const bool whole = slips.whole <= slips_allowed(std::max(typed.size(), word.size()));
  const bool beginning = !is_short && slips.beginning <= slips_allowed(typed.size());
  if (beginning) return slips.beginning;
  if (whole) return slips.whole;
  return std::nullopt;
}

// "mounts" says nothing more where "mount" is meant already: every word is looked up as a beginning.
bool is_covered(const Meant& meant, const std::vector<Meant>& by) {
  return std::ranges::any_of(by, [&](const Meant& other) {
    return &other != &meant && other.words.size() == 1 && meant.words.size() == 1 && other.slips <= meant.slips &&
           meant.words[0] != other.words[0] && meant.words[0].starts_with(other.words[0]);
  });
}

} // namespace

bool has_digit(std::string_view word) { return std::ranges::any_of(word, text::is_digit); }

Vocabulary::Vocabulary(std::vector<std::string> words) : words_(std::move(words)) {
  std::ranges::sort(words_);
  for (const std::string& word : words_) {
    if (word.empty() || has_digit(word)) continue;
    std::u32string letters = text::letters(word);
    const std::uint32_t bits = letters_in(letters);
    correctable_.push_back({word, std::move(letters), bits});
  }
}

bool Vocabulary::has(std::string_view word) const { return std::ranges::binary_search(words_, word); }

bool Vocabulary::begins_a_word(std::string_view beginning) const {
  const auto at = std::ranges::lower_bound(words_, beginning);
  return at != words_.end() && at->starts_with(beginning);
}

std::vector<std::string> Vocabulary::beginning_with(std::string_view beginning, std::size_t most) const {
  std::vector<std::string> words;
  for (auto at = std::ranges::lower_bound(words_, beginning);
       at != words_.end() && at->starts_with(beginning) && words.size() <= most; ++at)
    words.push_back(*at);
  return words;
}

std::vector<Meant> Vocabulary::meant_by(std::string_view typed) const {
  std::vector<Meant> meant;
  const std::u32string letters = text::letters(typed);
  if (letters.size() < 3 || letters.size() > k_longest_typed || has_digit(typed)) return meant;

  for (std::size_t cut = k_shortest_part; cut + k_shortest_part <= typed.size(); ++cut)
    if (has(typed.substr(0, cut)) && begins_a_word(typed.substr(cut)))
      meant.push_back({{std::string(typed.substr(0, cut)), std::string(typed.substr(cut))}, 1});

  // Every letter that the word lacks is a slip, so most words are out before they are compared letter by letter.
  const std::uint32_t bits = letters_in(letters);
  for (const Word& word : correctable_) {
    if (static_cast<std::size_t>(std::popcount(bits & ~word.letters_in_it)) > k_most_slips) continue;
    if (word.letters.size() + k_most_slips < letters.size()) continue;
    if (const auto slips = slips_to(letters, word.letters)) meant.push_back({{word.text}, *slips});
  }
  std::ranges::stable_sort(meant, {}, &Meant::slips);
  std::vector<Meant> apart;
  for (const Meant& one : meant)
    if (!is_covered(one, meant) && apart.size() < k_most_meant) apart.push_back(one);
  return apart;
}

} // namespace clampwright::specdb
