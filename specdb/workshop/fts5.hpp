// SPDX-License-Identifier: GPL-3.0-or-later
//
// For the .cpp files of this folder that take FTS5 apart.
#pragma once

struct fts5_api;

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// How FTS5 hands out what it is made of (its manual, "Extending FTS5"); nullptr where that fails.
[[nodiscard]] fts5_api* fts5_of(const SQLite::Database& database);

} // namespace clampwright::specdb
