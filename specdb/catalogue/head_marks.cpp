// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/head_marks.hpp"

#include "core/text/plain_text.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

std::vector<std::string> split(std::string_view list) {
  constexpr std::string_view k_between = "; ";
  std::vector<std::string> items;
  while (!list.empty()) {
    const std::size_t end = list.find(k_between);
    items.emplace_back(list.substr(0, end));
    list.remove_prefix(end == std::string_view::npos ? list.size() : end + k_between.size());
  }
  return items;
}

} // namespace

bool HeadMark::is_on(std::string_view one_part) const {
  return (" " + part + " ").find(" " + std::string(one_part) + " ") != std::string::npos;
}

std::string HeadMark::parts_in_words() const {
  std::string words = part;
  if (const std::size_t last = words.rfind(' '); last != std::string::npos) words.replace(last, 1, " or ");
  for (std::size_t at = 0; (at = words.find(' ', at)) != std::string::npos && words.substr(at, 4) != " or "; at += 2)
    words.replace(at, 1, ", ");
  return words;
}

std::string mark_key(std::string_view mark) {
  std::string key;
  for (const char c : text::to_lower(mark))
    if (c != ' ' && c != '-' && c != '\'') key += c;
  return key;
}

std::vector<HeadMark> head_marks(const Catalogue& catalogue) {
  return translated([&] {
    Query row(catalogue.connection(),
              "SELECT m.mark, m.part, m.system, m.class, m.meaning, m.verdict, m.in_tables, m.rule, m.look_alikes, "
              "s.title, s.edition, m.\"where\", m.known FROM head_marks m JOIN sources s ON s.id = m.source ORDER BY "
              "m.rowid");
    std::vector<HeadMark> all;
    while (row.next())
      all.push_back({row.text(0), row.text(1), row.maybe_text(2), row.maybe_text(3), row.text(4), row.text(5),
                     row.integer(6) == 1, row.text(7), split(row.maybe_text(8).value_or("")), row.source(9)});
    return all;
  });
}

} // namespace clampwright::specdb
