// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/identity.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <string_view>
#include <utility>
#include <vector>

#include <sqlite3.h>
#include <unistd.h>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/schema/workshop_schema.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/connection.hpp"

namespace clampwright::specdb {

namespace {

namespace fs = std::filesystem;

constexpr const char* k_elsewhere = "name another file with --workshop FILE; the calculators work without one";
constexpr const char* k_restore = "restore it from a backup; it was left as it is";

Refusal about(Trouble trouble, std::string code, const fs::path& path, std::string message, std::string hint) {
  return refuse(trouble, std::move(code), std::move(message), path.string(), std::move(hint));
}

Refusal none_there(const fs::path& path) {
  return about(Trouble::no_such, "no-workshop", path, "there is no workshop file of that name",
               "`clampwright demo` makes an invented one to try; or name yours with --workshop FILE");
}

Refusal damaged(const fs::path& path, std::string message) {
  return about(Trouble::not_understood, "damaged", path, std::move(message), k_restore);
}

Refusal cannot_be_read(const fs::path& path, const std::error_code& error) {
  switch (error.value()) {
  case ENOENT:
  case ENOTDIR:
    return none_there(path);
  case ELOOP:
  case ENAMETOOLONG:
    return about(Trouble::no_such, "no-workshop", path,
                 fmt::format("no workshop file can have that name: {}", error.message()), k_elsewhere);
  case EACCES:
  case EPERM:
    return about(Trouble::no_permission, "no-permission", path,
                 fmt::format("the workshop file cannot be read: {}", error.message()), k_elsewhere);
  default:
    return about(Trouble::input_output, "input-output", path,
                 fmt::format("the workshop file cannot be read: {}", error.message()), k_elsewhere);
  }
}

Result<void> check_marks(std::int64_t application, std::int64_t version, const fs::path& path) {
  if (application != k_workshop_application_id)
    return about(Trouble::wrong_file, "wrong-file", path, "that database is not a workshop file of this program",
                 k_elsewhere);
  if (version > k_workshop_version)
    return about(
        Trouble::wrong_file, "newer-file", path,
        fmt::format("the workshop file has version {}, this program reads up to {}", version, k_workshop_version),
        "use the newer program that wrote it; nothing was changed");
  if (version < 1) return damaged(path, "the workshop file has no version, so it is not whole");
  return {};
}

std::int64_t big_endian(std::string_view bytes) {
  std::uint32_t number = 0;
  for (const char c : bytes.substr(0, 4))
    number = number << 8 | static_cast<unsigned char>(c);
  return static_cast<std::int32_t>(number);
}

// Name and columns of every table; what FTS5 keeps inside its own goes by its names too.
std::vector<std::string> tables_of(const SQLite::Database& database) {
  std::vector<std::string> lines;
  Query column(database, "SELECT t.type || ' ' || t.name || ' ' || coalesce(c.name, '') FROM sqlite_schema t "
                         "LEFT JOIN pragma_table_xinfo(t.name) c WHERE t.name NOT LIKE 'sqlite_%' ORDER BY 1");
  while (column.next())
    lines.push_back(column.text(0));
  return lines;
}

std::vector<std::string> tables_of_a_new_file() {
  SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  SQLite::Transaction transaction(fresh);
  create_workshop_schema(fresh);
  return tables_of(fresh);
}

} // namespace

Result<fs::path> readable_file(const fs::path& path) {
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (status.type() == fs::file_type::not_found) return none_there(path);
  if (error) return cannot_be_read(path, error);
  if (status.type() == fs::file_type::directory)
    return about(Trouble::wrong_file, "wrong-file", path, "that is a folder, not a workshop file", k_elsewhere);
  if (status.type() != fs::file_type::regular)
    return about(Trouble::wrong_file, "wrong-file", path, "that is no plain file, so no workshop file", k_elsewhere);
  if (::access(path.c_str(), R_OK) != 0) return cannot_be_read(path, {errno, std::generic_category()});
  if (fs::file_size(path, error) == 0 && !error) return damaged(path, "the workshop file is empty");
  fs::path file = fs::canonical(path, error);
  if (error) return cannot_be_read(path, error);
  return file;
}

// Offsets from the file format of SQLite, 1.3 (memory). By the connection and not by a stream of our own: closing one
// would drop the locks that this process has on the file.
Result<void> check_first_bytes(const fs::path& file, const fs::path& path) {
  constexpr std::string_view k_magic("SQLite format 3\0", 16);
  constexpr std::size_t k_version = 60;
  constexpr std::size_t k_application = 68;
  SQLite::Database database = as_it_stands(file);
  sqlite3_file* handle = nullptr;
  std::array<char, 100> bytes{};
  if (sqlite3_file_control(database.getHandle(), "main", SQLITE_FCNTL_FILE_POINTER, &handle) != SQLITE_OK ||
      handle == nullptr || handle->pMethods == nullptr)
    throw DatabaseError("the workshop file cannot be looked at", Trouble::internal);
  const int read = handle->pMethods->xRead(handle, bytes.data(), static_cast<int>(bytes.size()), 0);
  if (read != SQLITE_OK && read != SQLITE_IOERR_SHORT_READ)
    return cannot_be_read(path, std::error_code(EIO, std::generic_category()));
  const std::string_view header(bytes.data(), bytes.size());
  if (!header.starts_with(k_magic))
    return about(Trouble::wrong_file, "wrong-file", path, "that is not a workshop file", k_elsewhere);
  if (read == SQLITE_IOERR_SHORT_READ) return damaged(path, "the workshop file is damaged: only its beginning is left");
  if (auto ours = check_marks(big_endian(header.substr(k_application)), big_endian(header.substr(k_version)), path);
      !ours)
    return ours;
  // SQLite takes what is missing of a page for zeros. Two bytes give the page size, 1 stands for 65536.
  const std::uint32_t short_size = static_cast<std::uint32_t>(big_endian(header.substr(14))) & 0xFFFF;
  const std::uintmax_t page_size = short_size == 1 ? 65536 : short_size;
  std::error_code error;
  const std::uintmax_t size = fs::file_size(file, error);
  if (!error && page_size != 0 && size % page_size != 0 && !has_unfinished_business(file))
    return damaged(path, "the workshop file is damaged: its end is missing");
  return {};
}

Result<void> check_version(const SQLite::Database& database, const fs::path& path) {
  return check_marks(application_id(database), workshop_version(database), path);
}

Result<void> check_tables(const SQLite::Database& database, const fs::path& path) {
  std::vector<std::string> there;
  try {
    there = tables_of(database);
    run(database, "SELECT rowid FROM joint_search WHERE joint_search MATCH '\"a\"' LIMIT 1"); // reads its own settings
  } catch (const SQLite::Exception& error) {
    // Nothing is wrong with these two questions.
    if ((error.getErrorCode() & 0xFF) != SQLITE_ERROR) throw;
    return damaged(path, fmt::format("the workshop file is damaged: {}", text::quotable(error.what())));
  }
  const std::vector<std::string> wanted = tables_of_a_new_file();
  const auto acts = [&](const std::string& line) {
    return (line.starts_with("trigger ") || line.starts_with("view ")) && !std::ranges::binary_search(wanted, line);
  };
  if (std::ranges::includes(there, wanted) && std::ranges::none_of(there, acts)) return {};
  return damaged(path, fmt::format("the workshop file is damaged: its tables are not those of version {}",
                                   workshop_version(database)));
}

Refusal unusable(const SQLite::Exception& error, const fs::path& path) {
  const int code = error.getErrorCode() & 0xFF;
  switch (code) {
  case SQLITE_NOTADB:
    return about(Trouble::wrong_file, "wrong-file", path, "that is not a workshop file", k_elsewhere);
  case SQLITE_PERM:
  case SQLITE_READONLY:
  case SQLITE_CANTOPEN:
    return about(Trouble::no_permission, "no-permission", path,
                 fmt::format("the workshop file cannot be opened: {}", text::quotable(error.what())), k_elsewhere);
  default:
    // SQLite quotes the file, whatever bytes are in it.
    return unusable(DatabaseError(text::quotable(error.what()), trouble_of(code)), path);
  }
}

Refusal unusable(const DatabaseError& error, const fs::path& path) {
  const std::string what = error.what();
  switch (error.trouble()) {
  case Trouble::not_understood:
    return damaged(path, fmt::format("the workshop file is damaged: {}", what));
  case Trouble::busy:
    return about(Trouble::busy, "busy", path, "another program is writing the workshop file", "try again in a moment");
  case Trouble::no_permission:
    return about(Trouble::no_permission, "no-permission", path, what, k_elsewhere);
  case Trouble::input_output:
    return about(Trouble::input_output, "input-output", path,
                 fmt::format("the workshop file cannot be read or written: {}", what),
                 "free some space, or choose another place with --workshop FILE");
  default:
    throw error;
  }
}

Refusal cannot_make(const fs::path& path, const std::error_code& error, const std::string& what) {
  const bool forbidden = error.value() == EACCES || error.value() == EPERM || error.value() == EROFS;
  return about(forbidden ? Trouble::no_permission : Trouble::cannot_create,
               forbidden ? "no-permission" : "cannot-create", path, fmt::format("{}: {}", what, error.message()),
               "choose another place with --workshop FILE");
}

} // namespace clampwright::specdb
