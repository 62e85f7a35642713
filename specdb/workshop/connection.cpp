// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/connection.hpp"

#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <system_error>
#include <thread>
#include <vector>

#include <sqlite3.h>

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

namespace fs = std::filesystem;

// What SQLite puts beside a file: the log of the write-ahead mode, the journal of the other.
constexpr const char* k_beside[] = {"-wal", "-journal"};

fs::path beside(const fs::path& file, const char* suffix) { return file.string() + suffix; }

// An empty one holds nothing.
bool is_in_use(const fs::path& path) {
  std::error_code none;
  const auto size = fs::file_size(path, none);
  return !none && size > 0;
}

long long pragma(const SQLite::Database& database, const char* sql) {
  Query row(database, sql);
  return row.next() ? row.integer(0) : 0;
}

[[noreturn]] void no_copy(const std::error_code& error) {
  const bool forbidden = error.value() == EACCES || error.value() == EPERM;
  throw DatabaseError(fmt::format("no private copy of the workshop file can be made: {}", error.message()),
                      forbidden ? Trouble::no_permission : Trouble::input_output);
}

// Where temporary files may go, the first choice first: one that TMPDIR names may be gone or full.
std::vector<fs::path> temporary_folders() {
  std::vector<fs::path> folders;
  if (const char* named = std::getenv("TMPDIR"); named != nullptr && *named == '/') folders.emplace_back(named);
  for (const char* usual : {"/tmp", "/var/tmp", "/dev/shm"})
    folders.emplace_back(usual);
  return folders;
}

// A folder that nobody else can look into, taken away with what is in it.
class PrivateFolder {
 public:
  PrivateFolder() {
    for (const fs::path& place : temporary_folders()) {
      std::string name = (place / "clampwright-XXXXXX").string();
      if (::mkdtemp(name.data()) == nullptr) continue;
      path_ = name;
      return;
    }
    no_copy({errno, std::generic_category()});
  }
  ~PrivateFolder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }
  PrivateFolder(const PrivateFolder&) = delete;
  PrivateFolder& operator=(const PrivateFolder&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

// Size and time of the file and of what lies beside it: they differ where somebody wrote in between.
struct State {
  std::string text;
  fs::file_time_type newest = fs::file_time_type::min();
};

State state_of(const fs::path& file) {
  State state;
  for (const char* suffix : {"", k_beside[0], k_beside[1]}) {
    std::error_code none;
    const auto size = fs::file_size(beside(file, suffix), none);
    const auto time = fs::last_write_time(beside(file, suffix), none);
    if (!none) state.newest = std::max(state.newest, time);
    state.text += fmt::format("{}/{} ", size, time.time_since_epoch().count());
  }
  return state;
}

// Two writes within one tick of the file system's clock have the same time, so a file that was written just now is left
// to rest first.
constexpr auto k_rest = std::chrono::milliseconds(50);

// What `work` makes of the files while nobody writes them.
template<class Work>
std::unique_ptr<SQLite::Database> while_at_rest(const fs::path& file, Work work) {
  for (int attempt = 0; attempt < 20; ++attempt) {
    const State before = state_of(file);
    const auto age = fs::file_time_type::clock::now() - before.newest;
    if (age >= k_rest || age < -k_rest)
      if (auto database = work(); database && state_of(file).text == before.text) return database;
    std::this_thread::sleep_for(k_rest);
  }
  throw DatabaseError("another program is writing the workshop file", Trouble::busy);
}

void copy_into(const fs::path& from, const fs::path& to) {
  fs::copy_file(from, to, fs::copy_options::overwrite_existing);
  fs::permissions(to, fs::perms::owner_read | fs::perms::owner_write);
}

// A log that lies where nobody may write cannot be played back there: file and log are copied, and it is played back in
// the copy.
std::unique_ptr<SQLite::Database> private_copy(const fs::path& file) {
  const PrivateFolder folder;
  const fs::path copy = folder.path() / "copy";
  try {
    copy_into(file, copy);
    for (const char* suffix : k_beside)
      if (is_in_use(beside(file, suffix))) copy_into(beside(file, suffix), beside(copy, suffix));
  } catch (const fs::filesystem_error& error) {
    if (error.code() == std::errc::no_such_file_or_directory) return nullptr; // a writer has just put it away
    no_copy(error.code());
  }
  SQLite::Database database(copy.string(), SQLite::OPEN_READWRITE);
  configure(database);
  auto memory = copied_to_memory(database);
  // The log may be that of another file of this name.
  if (Query check(*memory, "PRAGMA quick_check(1)"); !check.next() || check.text(0) != "ok")
    throw DatabaseError("file and log do not belong together", Trouble::not_understood);
  return memory;
}

std::unique_ptr<SQLite::Database> copy_as_it_stands(const fs::path& file) {
  if (is_in_use(beside(file, "-wal"))) return nullptr; // it has come just now
  SQLite::Database database = as_it_stands(file);
  return copied_to_memory(database);
}

std::unique_ptr<SQLite::Database> connect(const fs::path& file, int flags) {
  auto database = std::make_unique<SQLite::Database>(file.string(), flags);
  configure(*database);
  database->exec("PRAGMA query_only = ON");
  return database;
}

// On a full disk there is no room for what a reader needs beside the file: nullptr.
std::unique_ptr<SQLite::Database> connect_if_there_is_room(const fs::path& file) {
  try {
    auto database = connect(file, SQLite::OPEN_READWRITE);
    (void)database->execAndGet("SELECT count(*) FROM sqlite_schema");
    return database;
  } catch (const SQLite::Exception& error) {
    const int code = error.getErrorCode() & 0xFF;
    if (code == SQLITE_IOERR || code == SQLITE_FULL) return nullptr;
    throw;
  }
}

// A journal is that of a writer at work, or was left by one that died. The first does not hinder a reader; the second
// would have to be played back, and the reader gets nullptr.
std::unique_ptr<SQLite::Database> connect_beside_journal(const fs::path& file) {
  try {
    auto database = connect(file, SQLite::OPEN_READONLY);
    (void)database->execAndGet("SELECT count(*) FROM sqlite_schema");
    return database;
  } catch (const SQLite::Exception& error) {
    const int code = error.getErrorCode() & 0xFF;
    if (code == SQLITE_READONLY || code == SQLITE_CANTOPEN) return nullptr;
    throw;
  }
}

} // namespace

void configure(SQLite::Database& database) {
  database.setBusyTimeout(5000);
  database.exec("PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON;");
}

bool has_unfinished_business(const fs::path& file) {
  return std::ranges::any_of(k_beside, [&](const char* suffix) { return is_in_use(beside(file, suffix)); });
}

bool can_be_written(const fs::path& file) {
  return ::access(file.c_str(), W_OK) == 0 && ::access(file.parent_path().c_str(), W_OK) == 0;
}

long long application_id(const SQLite::Database& database) { return pragma(database, "PRAGMA application_id"); }
long long workshop_version(const SQLite::Database& database) { return pragma(database, "PRAGMA user_version"); }

void copy_all(SQLite::Database& into, SQLite::Database& from) {
  // The step says of a lock that it was in the way, and throws only for the rest.
  if (SQLite::Backup(into, from).executeStep() != SQLITE_DONE)
    throw DatabaseError("another program is writing the workshop file", Trouble::busy);
}

std::unique_ptr<SQLite::Database> copied_to_memory(SQLite::Database& database) {
  auto memory = std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  copy_all(*memory, database);
  configure(*memory);
  return memory;
}

SQLite::Database as_it_stands(const fs::path& file) {
  std::string uri = "file:";
  for (const char c : file.string())
    uri += c == '?' || c == '#' || c == '%' ? fmt::format("%{:02x}", static_cast<unsigned char>(c)) : std::string(1, c);
  return {uri + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI};
}

// A reader of a file in write-ahead mode needs two files beside it, and only a connection that may write takes them
// away again. So where there is no log yet and the place can be written, the connection may write and is told not to.
// Where a log is in use, a mere reader joins. Where nothing can be written, what stands in the file is all there is, or
// file and log are read from a copy.
ReadingConnection connect_for_reading(const fs::path& file) {
  const bool has_log = is_in_use(beside(file, "-wal"));
  const bool can_write = can_be_written(file);
  if (is_in_use(beside(file, "-journal"))) {
    if (auto database = connect_beside_journal(file)) return {std::move(database), {}};
    return {while_at_rest(file, [&] { return private_copy(file); }),
            "another program left a change of the workshop file unfinished: a copy without it was read"};
  }
  if (can_write && has_log) return {connect(file, SQLite::OPEN_READONLY), {}};
  if (can_write) {
    if (auto database = connect_if_there_is_room(file)) return {std::move(database), {}};
    return {while_at_rest(file, [&] { return copy_as_it_stands(file); }),
            "there is no room beside the workshop file: read as it stands"};
  }
  if (has_log)
    return {while_at_rest(file, [&] { return private_copy(file); }),
            "the workshop file is read-only and has unfinished business of another program beside it: a copy of both "
            "was read"};
  return {while_at_rest(file, [&] { return copy_as_it_stands(file); }),
          "the workshop file is read-only: read as it stands"};
}

} // namespace clampwright::specdb
