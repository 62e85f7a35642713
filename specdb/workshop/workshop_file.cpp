// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/workshop_file.hpp"

#include <cerrno>
#include <cstring>
#include <string>
#include <utility>

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/schema/workshop_schema.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

namespace fs = std::filesystem;

Refusal about(Trouble trouble, std::string code, const fs::path& path, std::string message, std::string hint) {
  return refuse(trouble, std::move(code), std::move(message), path.string(), std::move(hint));
}

Refusal system_refusal(const fs::path& path, int error, std::string_view doing) {
  const std::string message = fmt::format("{}: {}", doing, std::strerror(error));
  if (error == EACCES || error == EPERM || error == EROFS)
    return about(Trouble::no_permission, "no-permission", path, message, "choose another place with --workshop FILE");
  return about(Trouble::cannot_create, "cannot-create", path, message, "choose another place with --workshop FILE");
}

constexpr const char* k_elsewhere = "name another file with --workshop FILE; the calculators work without one";

// Settings of every connection. `trusted_schema` off: a file from elsewhere must not make us call functions.
void configure(SQLite::Database& database) {
  database.setBusyTimeout(5000);
  database.exec("PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON;");
}

// The file as it stands, taking no lock and making no file beside it: enough to see whose it is.
std::unique_ptr<SQLite::Database> connect_as_it_stands(const fs::path& path) {
  std::string uri = "file:";
  for (const char c : fs::absolute(path).string())
    uri += c == '?' || c == '#' || c == '%' ? fmt::format("%{:02x}", static_cast<unsigned char>(c)) : std::string(1, c);
  auto database = std::make_unique<SQLite::Database>(uri + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI);
  configure(*database);
  (void)database->execAndGet("SELECT count(*) FROM sqlite_schema");
  return database;
}

// A reader of a file in write-ahead mode needs two files beside it, and only a connection that may write takes them
// away again. So where there is no log yet and the place can be written, the connection may write and is told not to.
// Where a log is left over or in use, a mere reader joins. Where nothing can be written and no log is left, what stands
// in the file is all there is.
std::unique_ptr<SQLite::Database> connect_for_reading(const fs::path& path) {
  const fs::path folder = path.parent_path().empty() ? fs::path(".") : path.parent_path();
  const bool has_log = fs::exists(path.string() + "-wal");
  const bool can_write = ::access(path.c_str(), W_OK) == 0 && ::access(folder.c_str(), W_OK) == 0;
  if (!has_log && !can_write) return connect_as_it_stands(path);
  auto database =
      std::make_unique<SQLite::Database>(path.string(), has_log ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE);
  configure(*database);
  database->exec("PRAGMA query_only = ON");
  return database;
}

Result<void> check_place(const fs::path& path) {
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (status.type() == fs::file_type::not_found)
    return about(Trouble::no_such, "no-workshop", path, "there is no workshop file of that name",
                 "`clampwright demo` makes an invented one to try; or name yours with --workshop FILE");
  if (error) return system_refusal(path, error.value(), "the workshop file cannot be reached");
  if (status.type() == fs::file_type::directory)
    return about(Trouble::wrong_file, "wrong-file", path, "that is a folder, not a workshop file", k_elsewhere);
  if (status.type() != fs::file_type::regular)
    return about(Trouble::wrong_file, "wrong-file", path, "that is no plain file, so no workshop file", k_elsewhere);
  if (::access(path.c_str(), R_OK) != 0)
    return about(Trouble::no_permission, "no-permission", path,
                 fmt::format("the workshop file cannot be read: {}", std::strerror(errno)), k_elsewhere);
  if (fs::file_size(path, error) == 0 && !error)
    return about(Trouble::not_understood, "damaged", path, "the workshop file is empty", k_elsewhere);
  return {};
}

Result<void> check_identity(const SQLite::Database& database, const fs::path& path) {
  Query id(database, "PRAGMA application_id");
  if (!id.next() || id.integer(0) != k_workshop_application_id)
    return about(Trouble::wrong_file, "wrong-file", path, "that database is not a workshop file of this program",
                 k_elsewhere);
  Query version(database, "PRAGMA user_version");
  (void)version.next();
  if (version.integer(0) > k_workshop_version)
    return about(Trouble::wrong_file, "newer-file", path,
                 fmt::format("the workshop file has version {}, this program reads up to {}", version.integer(0),
                             k_workshop_version),
                 "use the newer program that wrote it; nothing was changed");
  return {};
}

// Takes its file away again unless it was kept.
class TemporaryFile {
 public:
  explicit TemporaryFile(fs::path path) : path_(std::move(path)) {}
  ~TemporaryFile() {
    for (const char* suffix : {"", "-wal", "-shm", "-journal"})
      ::unlink((path_.string() + suffix).c_str());
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

// Folders that are made are the owner's alone; such as are there stay as they are.
Result<void> make_folders(const fs::path& folder) {
  if (folder.empty() || fs::is_directory(folder)) return {};
  if (auto parent = make_folders(folder.parent_path()); !parent) return parent;
  if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST)
    return system_refusal(folder, errno, "the folder cannot be made");
  return {};
}

} // namespace

Workshop::Workshop(std::unique_ptr<SQLite::Database> connection) : connection_(std::move(connection)) {}
Workshop::~Workshop() = default;
Workshop::Workshop(Workshop&&) noexcept = default;
Workshop& Workshop::operator=(Workshop&&) noexcept = default;

Result<Workshop> Workshop::open(const fs::path& path) {
  if (auto place = check_place(path); !place) return Refusal(place.error());
  try {
    if (auto identity = check_identity(*connect_as_it_stands(path), path); !identity) return Refusal(identity.error());
    return Workshop(connect_for_reading(path));
  } catch (const SQLite::Exception& error) {
    switch (error.getErrorCode()) {
    case SQLITE_NOTADB:
      return about(Trouble::wrong_file, "wrong-file", path, "that is not a workshop file", k_elsewhere);
    case SQLITE_CORRUPT:
      return about(Trouble::not_understood, "damaged", path,
                   fmt::format("the workshop file is damaged: {}", error.what()),
                   "restore it from a backup; it was left as it is");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return about(Trouble::busy, "busy", path, "another program is writing the workshop file",
                   "try again in a moment");
    case SQLITE_PERM:
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN:
      return about(Trouble::no_permission, "no-permission", path,
                   fmt::format("the workshop file cannot be opened: {}", error.what()), k_elsewhere);
    default:
      throw DatabaseError(error.what(), trouble_of(error.getErrorCode()));
    }
  }
}

Result<void> Workshop::create(const fs::path& path, const std::function<void(SQLite::Database&)>& fill) {
  if (auto folders = make_folders(fs::absolute(path).parent_path()); !folders) return folders;
  const TemporaryFile temporary(fmt::format("{}.new-{}", path.string(), ::getpid()));
  const int descriptor = ::open(temporary.path().c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
  if (descriptor < 0) return system_refusal(path, errno, "the workshop file cannot be made");
  ::close(descriptor);
  try {
    SQLite::Database database(temporary.path().string(), SQLite::OPEN_READWRITE);
    configure(database);
    database.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;");
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    create_workshop_schema(database);
    fill(database);
    transaction.commit();
  } catch (const SQLite::Exception& error) {
    const int code = error.getErrorCode();
    if (code == SQLITE_FULL || code == SQLITE_IOERR)
      return about(Trouble::input_output, "input-output", path,
                   fmt::format("the workshop file cannot be written: {}", error.what()),
                   "free some space, or choose another place with --workshop FILE");
    throw DatabaseError(error.what(), trouble_of(error.getErrorCode()));
  }
  // A link fails where the name is taken; a rename would take the place of another's file.
  if (::link(temporary.path().c_str(), path.c_str()) != 0)
    return system_refusal(path, errno, "the workshop file cannot be made");
  return {};
}

bool Workshop::is_invented() const {
  return translated([&] {
    Query query(*connection_, "SELECT value FROM meta WHERE key = 'invented'");
    return query.next() && query.text(0) == "yes";
  });
}

} // namespace clampwright::specdb
