// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/index_words.hpp"

#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

std::vector<std::string> parts_between_spaces(std::string_view text) {
  std::vector<std::string> parts;
  while (!text.empty()) {
    const std::size_t space = text.find(' ');
    if (space != 0) parts.emplace_back(text.substr(0, space));
    text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
  }
  return parts;
}

// A reader is forbidden to write, and making even a temporary table counts as writing. What is made while this lasts
// must be temporary.
class LeaveToMakeTemporaryTables {
 public:
  explicit LeaveToMakeTemporaryTables(const SQLite::Database& database) : database_(database) {
    Query query(database, "PRAGMA query_only");
    was_forbidden_ = query.next() && query.integer(0) == 1;
    if (was_forbidden_) run(database_, "PRAGMA query_only = OFF");
  }
  ~LeaveToMakeTemporaryTables() {
    try {
      if (was_forbidden_) run(database_, "PRAGMA query_only = ON");
    } catch (const SQLite::Exception&) { // out of memory, at worst; what follows will say so
    }
  }
  LeaveToMakeTemporaryTables(const LeaveToMakeTemporaryTables&) = delete;
  LeaveToMakeTemporaryTables& operator=(const LeaveToMakeTemporaryTables&) = delete;

 private:
  const SQLite::Database& database_;
  bool was_forbidden_ = false;
};

} // namespace

std::vector<TypedWord> typed_words(std::string_view text) {
  return translated([&] {
    const std::vector<std::string> parts = parts_between_spaces(text);
    const SQLite::Database index(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    // Divides and folds as `joint_search` of the schema does.
    run(index, "CREATE VIRTUAL TABLE typed USING fts5(text, tokenize = \"unicode61 remove_diacritics 2\")");
    run(index, "CREATE VIRTUAL TABLE index_word USING fts5vocab(typed, instance)");
    run(index, "BEGIN");
    for (std::size_t i = 0; i < parts.size(); ++i)
      run(index, "INSERT INTO typed (rowid, text) VALUES (?, ?)", static_cast<long long>(i), parts[i]);
    run(index, "COMMIT");
    std::vector<TypedWord> words;
    long long last = -1;
    Query query(index, "SELECT doc, term FROM index_word ORDER BY doc, \"offset\"");
    while (query.next()) {
      const long long part = query.integer(0);
      if (part != last) words.push_back({parts[static_cast<std::size_t>(part)], {}});
      last = part;
      words.back().index_words.push_back(query.text(1));
    }
    return words;
  });
}

std::vector<std::string> words_of_index(const Workshop& workshop) {
  return translated([&] {
    {
      const LeaveToMakeTemporaryTables leave(workshop.connection());
      run(workshop.connection(),
          "CREATE VIRTUAL TABLE IF NOT EXISTS temp.joint_search_word USING fts5vocab(main, joint_search, row)");
    }
    std::vector<std::string> words;
    Query query(workshop.connection(), "SELECT term FROM temp.joint_search_word");
    while (query.next())
      words.push_back(query.text(0));
    return words;
  });
}

} // namespace clampwright::specdb
