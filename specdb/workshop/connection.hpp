// SPDX-License-Identifier: GPL-3.0-or-later
//
// Ways to connect to a workshop file. All throw what SQLiteCpp throws, or DatabaseError; a path is one without links
// (readable_file).
#pragma once

#include <filesystem>
#include <memory>
#include <string>

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// Settings of every connection. `trusted_schema` off: a file from elsewhere must not make us call functions.
void configure(SQLite::Database& database);

[[nodiscard]] long long application_id(const SQLite::Database& database);
[[nodiscard]] long long workshop_version(const SQLite::Database& database);

// The file as it stands, taking no lock and making no file beside it. A log beside it is not seen.
[[nodiscard]] SQLite::Database as_it_stands(const std::filesystem::path& file);

// A log or journal with something in it lies beside the file: what is in the file is not all, or too much.
[[nodiscard]] bool has_unfinished_business(const std::filesystem::path& file);

// The file and the folder it lies in can be written: there is room beside it for what SQLite keeps there.
[[nodiscard]] bool can_be_written(const std::filesystem::path& file);

struct ReadingConnection {
  std::unique_ptr<SQLite::Database> database;
  std::string note; // what a person should know about it; empty as a rule
};

// For reading all that was ever committed, leaving no trace.
[[nodiscard]] ReadingConnection connect_for_reading(const std::filesystem::path& file);

// All of `from`, or an error.
void copy_all(SQLite::Database& into, SQLite::Database& from);
[[nodiscard]] std::unique_ptr<SQLite::Database> copied_to_memory(SQLite::Database& database);

} // namespace clampwright::specdb
