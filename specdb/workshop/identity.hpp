// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether a file is a workshop file, whole enough to be read. Every fault has a sentence of its own.
#pragma once

#include <filesystem>
#include <string>
#include <system_error>

#include "core/problem/problem.hpp"

namespace SQLite {
class Database;
class Exception;
} // namespace SQLite

namespace clampwright::specdb {

class DatabaseError;

// What the file system knows: that it is there, a plain file, may be read, is not empty. The path without links: a log
// lies beside the file itself, not beside a link to it.
[[nodiscard]] Result<std::filesystem::path> readable_file(const std::filesystem::path& path);

// The first bytes of the file, before anything makes sense of the rest.
[[nodiscard]] Result<void> check_first_bytes(const std::filesystem::path& file, const std::filesystem::path& path);

// The same by a connection: a log may hold a newer version than the file.
[[nodiscard]] Result<void> check_version(const SQLite::Database& database, const std::filesystem::path& path);

// That every table of the newest version is there with its columns: a fault in their description would show only in the
// middle of an answer. Tables of somebody else's do no harm; a trigger or view that is not ours would act in our name.
[[nodiscard]] Result<void> check_tables(const SQLite::Database& database, const std::filesystem::path& path);

// What SQLite says when a file cannot be used, in our words.
[[nodiscard]] Refusal unusable(const SQLite::Exception& error, const std::filesystem::path& path);
[[nodiscard]] Refusal unusable(const DatabaseError& error, const std::filesystem::path& path);

// The system would not make it.
[[nodiscard]] Refusal cannot_make(const std::filesystem::path& path, const std::error_code& error,
                                  const std::string& what);

} // namespace clampwright::specdb
