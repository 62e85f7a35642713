// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/fts5.hpp"

#include <sqlite3.h>

#include <SQLiteCpp/Database.h>

namespace clampwright::specdb {

fts5_api* fts5_of(const SQLite::Database& database) {
  fts5_api* api = nullptr;
  sqlite3_stmt* statement = nullptr;
  if (sqlite3_prepare_v2(database.getHandle(), "SELECT fts5(?1)", -1, &statement, nullptr) == SQLITE_OK) {
    sqlite3_bind_pointer(statement, 1, static_cast<void*>(&api), "fts5_api_ptr", nullptr);
    sqlite3_step(statement);
  }
  sqlite3_finalize(statement);
  return api;
}

} // namespace clampwright::specdb
