// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/search.hpp"

#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

constexpr int k_most_hits = 50;

bool is_ascii_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

// Does a word say anything? Letters and digits do; so does every sign beyond ASCII but the punctuation, currency and
// arrows of U+00A0 to U+00BF and U+2000 to U+2FFF.
bool speaks(std::string_view word) {
  for (std::size_t i = 0; i < word.size(); ++i) {
    const auto byte = static_cast<unsigned char>(word[i]);
    if (text::is_digit(word[i]) || is_ascii_letter(word[i])) return true;
    const bool leads = byte >= 0xC2;
    const bool latin_sign = byte == 0xC2;
    const bool symbol = byte == 0xE2;
    if (leads && !latin_sign && !symbol) return true;
  }
  return false;
}

// "M10 x 1.25" and "M10×1.25" are M10x1.25.
std::string threads_joined(std::string text) {
  for (std::size_t at = 0; (at = text.find("×", at)) != std::string::npos;)
    text.replace(at, std::string_view("×").size(), "x");
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] != 'x' && text[at] != 'X') continue;
    const bool before = at >= 2 && text[at - 1] == ' ' && text::is_digit(text[at - 2]);
    const bool after = at + 2 < text.size() && text[at + 1] == ' ' && text::is_digit(text[at + 2]);
    if (before && after) {
      text.erase(at + 1, 1);
      text.erase(at - 1, 1);
    }
  }
  return text;
}

// Every word becomes a quoted phrase and a prefix. The signs inside a word ("M10x1.25", "1/4-20") separate tokens for
// the index as well, so a quoted phrase finds them in order; unquoted they would be operators. Words that say nothing
// are passed over.
std::string match_expression(std::string_view text) {
  std::string expression;
  std::string word;
  const auto end_word = [&] {
    if (speaks(word)) expression += fmt::format("{}\"{}\"*", expression.empty() ? "" : " AND ", word);
    word.clear();
  };
  for (const char c : threads_joined(text::plain_spaces(text.substr(0, 1000)))) {
    if (c == ' ')
      end_word();
    else if (c != '\0')
      word += c == '"' ? ' ' : c;
  }
  end_word();
  return expression;
}

} // namespace

std::vector<Hit> search(const Workshop& workshop, std::string_view words) {
  const std::string expression = match_expression(words);
  std::vector<Hit> hits;
  if (expression.empty()) return hits;
  return translated([&] {
    // A joint's own name weighs most, then its other words, its assembly, its thread, its machine.
    Query query(
        workshop.connection(),
        "SELECT j.slug, m.name, a.name, j.name, j.thread, f.printed, f.value FROM joint_search s "
        "JOIN joint j ON j.id = s.rowid JOIN assembly a ON a.id = j.assembly_id JOIN machine m ON m.id = a.machine_id "
        "LEFT JOIN figure f ON f.id = (SELECT min(g.id) FROM figure g WHERE g.joint_id = j.id AND g.id NOT IN (SELECT "
        "supersedes FROM figure WHERE supersedes IS NOT NULL)) "
        "WHERE joint_search MATCH ? ORDER BY bm25(joint_search, 8, 4, 1, 4, 6), j.id LIMIT ?",
        std::string_view(expression), k_most_hits);
    while (query.next()) {
      Hit hit{query.text(0), query.text(1), query.text(2), query.text(3), query.text(4), std::nullopt};
      if (!query.is_null(6)) hit.torque_printed = query.maybe_text(5);
      hits.push_back(std::move(hit));
    }
    return std::move(hits);
  });
}

} // namespace clampwright::specdb
