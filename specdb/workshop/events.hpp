// SPDX-License-Identifier: GPL-3.0-or-later
//
// For the .cpp files of this folder: the log of a thing that is kept.
#pragma once

#include <vector>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// `sql` selects on_date, kind, words and cycles for one id.
[[nodiscard]] inline std::vector<EventRecord> events_of(const SQLite::Database& database, const char* sql,
                                                        long long id) {
  Query row(database, sql, id);
  std::vector<EventRecord> events;
  while (row.next())
    events.push_back({row.text(0), row.text(1), row.text(2), row.maybe_whole(3)});
  return events;
}

// The same of the record of a machine or joint: on_date, kind, words and because.
[[nodiscard]] inline std::vector<EventRecord> record_events_of(const SQLite::Database& database, const char* sql,
                                                               long long id) {
  Query row(database, sql, id);
  std::vector<EventRecord> events;
  while (row.next())
    events.push_back({.on_date = row.text(0), .kind = row.text(1), .words = row.text(2), .because = row.maybe_text(3)});
  return events;
}

} // namespace clampwright::specdb
