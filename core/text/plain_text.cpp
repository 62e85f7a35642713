// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/text/plain_text.hpp"

#include <algorithm>
#include <array>

namespace clampwright::text {

namespace {

constexpr char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// Unicode's separators of class Zs, and the tab.
constexpr std::array<std::string_view, 17> k_spaces{" ",      "\t",     "\u00A0", "\u2000", "\u2001", "\u2002",
                                                    "\u2003", "\u2004", "\u2005", "\u2006", "\u2007", "\u2008",
                                                    "\u2009", "\u200A", "\u202F", "\u205F", "\u3000"};

// Length of the well-formed UTF-8 sequence at the start of `text`, 0 if there is none.
std::size_t sequence_length(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char first = byte(0);
  if (first < 0x80) return 1;
  const std::size_t length = first >= 0xF0 && first < 0xF5 ? 4 : first >= 0xE0 ? 3 : first >= 0xC2 ? 2 : 0;
  if (length == 0 || first >= 0xF5 || text.size() < length) return 0;
  for (std::size_t i = 1; i < length; ++i)
    if ((byte(i) & 0xC0) != 0x80) return 0;
  if (first == 0xE0 && byte(1) < 0xA0) return 0;
  if (first == 0xED && byte(1) >= 0xA0) return 0;
  if (first == 0xF0 && byte(1) < 0x90) return 0;
  if (first == 0xF4 && byte(1) >= 0x90) return 0;
  return length;
}

// Control characters, and the marks that turn the writing direction round.
bool is_control(std::string_view sequence) {
  if (sequence.size() == 1) return static_cast<unsigned char>(sequence[0]) < 0x20 || sequence[0] == 0x7F;
  if (sequence.size() == 2) return sequence[0] == '\xC2' && static_cast<unsigned char>(sequence[1]) < 0xA0;
  if (sequence == "\xEF\xBB\xBF") return true; // byte order mark
  return (sequence >= "\xE2\x80\x8B" && sequence <= "\xE2\x80\x8F") ||
         (sequence >= "\xE2\x80\xA8" && sequence <= "\xE2\x80\xAE") ||
         (sequence >= "\xE2\x81\xA0" && sequence <= "\xE2\x81\xAF");
}

} // namespace

std::string to_lower(std::string_view text) {
  std::string out(text);
  std::ranges::transform(out, out.begin(), lower);
  return out;
}

bool equal_fold(std::string_view one, std::string_view other) {
  return std::ranges::equal(one, other, [](char a, char b) { return lower(a) == lower(b); });
}

std::u32string letters(std::string_view text) {
  std::u32string out;
  while (!text.empty()) {
    const std::size_t length = sequence_length(text);
    const auto first = static_cast<unsigned char>(text[0]);
    // The lead byte of n bytes carries 7 - n bits of the letter, each byte behind it six.
    char32_t letter = length == 0 ? U'\uFFFD' : length == 1 ? first : first & (0x7FU >> length);
    for (std::size_t i = 1; i < length; ++i)
      letter = (letter << 6U) | (static_cast<unsigned char>(text[i]) & 0x3FU);
    out += letter;
    text.remove_prefix(std::max<std::size_t>(length, 1));
  }
  return out;
}

std::string plain_spaces(std::string_view text) {
  std::string out;
  bool pending = false;
  while (!text.empty()) {
    const auto space = std::ranges::find_if(k_spaces, [&](std::string_view s) { return text.starts_with(s); });
    if (space != k_spaces.end()) {
      pending = true;
      text.remove_prefix(space->size());
      continue;
    }
    if (pending && !out.empty()) out += ' ';
    pending = false;
    out += text[0];
    text.remove_prefix(1);
  }
  return out;
}

std::string printable(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const std::size_t length = sequence_length(text);
    if (length == 0 || is_control(text.substr(0, length)))
      out += '?';
    else
      out += text.substr(0, length);
    text.remove_prefix(std::max<std::size_t>(length, 1));
  }
  return out;
}

std::string quotable(std::string_view text) {
  constexpr std::size_t k_longest = 60;
  std::size_t end = 0;
  for (std::size_t characters = 0; end < text.size(); ++characters) {
    if (characters == k_longest) return printable(text.substr(0, end)) + "…";
    end += std::max<std::size_t>(sequence_length(text.substr(end)), 1);
  }
  return printable(text);
}

bool is_printable(std::string_view text) {
  while (!text.empty()) {
    const std::size_t length = sequence_length(text);
    if (length == 0 || is_control(text.substr(0, length))) return false;
    text.remove_prefix(length);
  }
  return true;
}

std::string without_hyphens(std::string_view name) {
  std::string out(name);
  std::ranges::replace(out, '-', ' ');
  return out;
}

} // namespace clampwright::text
