// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/search.hpp"

#include <fmt/format.h>

#include "core/quantity/plain_text.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

constexpr int k_most_hits = 50;

// Every word becomes a quoted phrase and a prefix. The signs inside a word ("M10x1.25", "1/4-20") separate tokens for
// the index as well, so a quoted phrase finds them in order; unquoted they would be operators. Words without a letter
// or digit say nothing.
std::string match_expression(std::string_view text) {
  std::string expression;
  std::string word;
  bool speaks = false;
  const auto end_word = [&] {
    if (speaks) expression += fmt::format("{}\"{}\"*", expression.empty() ? "" : " AND ", word);
    word.clear();
    speaks = false;
  };
  for (const char c : quantity::plain_spaces(text.substr(0, 1000))) {
    if (c == ' ') {
      end_word();
      continue;
    }
    if (c == '\0') continue;
    word += c == '"' ? ' ' : c;
    const auto byte = static_cast<unsigned char>(c);
    speaks = speaks || quantity::is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || byte >= 0x80;
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
