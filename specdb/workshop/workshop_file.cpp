// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/workshop_file.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <string>
#include <utility>

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include "specdb/schema/workshop_schema.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/connection.hpp"
#include "specdb/workshop/identity.hpp"
#include "specdb/workshop/index_words.hpp"
#include "specdb/workshop/joint_worth.hpp"
#include "specdb/workshop/near_words.hpp"

namespace clampwright::specdb {

namespace {

namespace fs = std::filesystem;

std::error_code last_error() { return {errno, std::generic_category()}; }

// A file of our own that is taken away again, with what SQLite put beside it, unless it is kept. Only the owner may
// read it.
class OwnFile {
 public:
  explicit OwnFile(fs::path path) : path_(std::move(path)) {}
  ~OwnFile() {
    if (!kept_)
      for (const char* suffix : {"", "-wal", "-shm", "-journal"})
        ::unlink((path_.string() + suffix).c_str());
  }
  OwnFile(const OwnFile&) = delete;
  OwnFile& operator=(const OwnFile&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }
  void keep() { kept_ = true; }

 private:
  fs::path path_;
  bool kept_ = false;
};

// Makes an empty file under a name that is free; not through a link, and not over another's file.
fs::path free_backup_name(const fs::path& file, long long version) {
  const std::string first = fmt::format("{}.version-{}.backup", file.string(), version);
  for (int number = 1; number < 1000; ++number) {
    const std::string name = number == 1 ? first : fmt::format("{}-{}", first, number);
    const int descriptor = ::open(name.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    if (descriptor >= 0) {
      ::close(descriptor);
      return name;
    }
    if (errno != EEXIST) break;
  }
  const std::error_code error = last_error();
  const bool forbidden = error.value() == EACCES || error.value() == EPERM || error.value() == EROFS;
  throw DatabaseError(fmt::format("no backup can be made beside it, so nothing was changed: {}", error.message()),
                      forbidden ? Trouble::no_permission : Trouble::input_output);
}

// A copy beside the file before it is migrated.
void back_up(const fs::path& file, const fs::path& copy) {
  SQLite::Database before(file.string(), SQLite::OPEN_READONLY);
  SQLite::Database into(copy.string(), SQLite::OPEN_READWRITE);
  copy_all(into, before);
}

void migrate_here(SQLite::Database& database) {
  const auto version = static_cast<int>(workshop_version(database));
  if (version < k_workshop_version) migrate_workshop(database, version);
}

// Folders that are made are the owner's alone; such as are there stay as they are.
Result<void> make_folders(const fs::path& folder) {
  std::error_code none;
  if (folder.empty() || fs::is_directory(folder, none)) return {};
  if (folder.has_relative_path())
    if (auto parent = make_folders(folder.parent_path()); !parent) return parent;
  if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST)
    return cannot_make(folder, last_error(), "the folder cannot be made");
  return {};
}

// An empty file beside the one to be made, under a name that nobody else has.
Result<fs::path> temporary_file(const fs::path& path) {
  std::string name = path.string() + ".new-XXXXXX";
  const int descriptor = ::mkostemp(name.data(), O_CLOEXEC);
  if (descriptor < 0) return cannot_make(path, last_error(), "the workshop file cannot be made");
  ::close(descriptor);
  return name;
}

// Fails where the name is taken: a plain rename would take the place of another's file. Where the file system knows no
// such rename, a link does the same.
bool give_name(const fs::path& from, const fs::path& to) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return true;
  return (errno == EINVAL || errno == ENOSYS) && ::link(from.c_str(), to.c_str()) == 0;
}

void write_new(const fs::path& file, const std::function<void(SQLite::Database&)>& fill) {
  SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
  configure(database);
  database.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;");
  {
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    create_workshop_schema(database);
    fill(database);
    transaction.commit();
  }
  // All into the file itself, which alone gets the name. Closing would do it too, but not say that it failed.
  Query moved(database, "PRAGMA wal_checkpoint(TRUNCATE)");
  if (!moved.next() || moved.integer(0) != 0)
    throw DatabaseError("what was written stayed in the log", Trouble::input_output);
}

} // namespace

Workshop::Workshop(std::unique_ptr<SQLite::Database> connection, std::string note)
    : connection_(std::move(connection)), note_(std::move(note)) {
  offer_joint_worth(*connection_);
}
Workshop::~Workshop() = default;
Workshop::Workshop(Workshop&&) noexcept = default;
Workshop& Workshop::operator=(Workshop&&) noexcept = default;

Result<Workshop> Workshop::open(const fs::path& path) {
  const auto file = readable_file(path);
  if (!file) return Refusal(file.error());
  try {
    if (auto ours = check_first_bytes(*file, path); !ours) return Refusal(ours.error());
    ReadingConnection reading = connect_for_reading(*file);
    reading.database->exec("BEGIN"); // one state of the file, whatever others write
    if (auto known = check_version(*reading.database, path); !known) return Refusal(known.error());
    if (const long long version = workshop_version(*reading.database); version < k_workshop_version) {
      reading.database = copied_to_memory(*reading.database);
      migrate_here(*reading.database);
      reading.database->exec("PRAGMA query_only = ON");
      if (!reading.note.empty()) reading.note += "; ";
      reading.note += fmt::format("the workshop file has the older version {} and was left so", version);
    }
    if (auto whole = check_tables(*reading.database, path); !whole) return Refusal(whole.error());
    return Workshop(std::move(reading.database), std::move(reading.note));
  } catch (const SQLite::Exception& error) {
    return unusable(error, path);
  } catch (const DatabaseError& error) {
    return unusable(error, path);
  }
}

Result<void> Workshop::change(const fs::path& path, const std::function<Result<void>(SQLite::Database&)>& work) {
  const auto file = readable_file(path);
  if (!file) return Refusal(file.error());
  try {
    if (auto ours = check_first_bytes(*file, path); !ours) return ours;
    std::optional<OwnFile> backup;
    SQLite::Database database(file->string(), SQLite::OPEN_READWRITE);
    configure(database);
    database.exec("PRAGMA synchronous = FULL");
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    if (auto known = check_version(database, path); !known) return known;
    if (const long long version = workshop_version(database); version < k_workshop_version) {
      backup.emplace(free_backup_name(*file, version));
      back_up(*file, backup->path());
      migrate_here(database);
    }
    if (auto whole = check_tables(database, path); !whole) return whole;
    if (auto worked = work(database); !worked) return worked;
    if (Query broken(database, "PRAGMA foreign_key_check"); broken.next())
      throw DatabaseError("the change refers to what is not there: " + broken.text(0), Trouble::internal);
    transaction.commit();
    if (backup) backup->keep();
    return {};
  } catch (const SQLite::Exception& error) {
    return unusable(error, path);
  } catch (const DatabaseError& error) {
    return unusable(error, path);
  }
}

Result<void> Workshop::create(const fs::path& path, const std::function<void(SQLite::Database&)>& fill) {
  std::error_code none;
  if (auto folders = make_folders(fs::absolute(path, none).parent_path()); !folders) return folders;
  const auto made = temporary_file(path);
  if (!made) return Refusal(made.error());
  const OwnFile temporary(*made);
  try {
    write_new(temporary.path(), fill);
  } catch (const SQLite::Exception& error) {
    const Trouble trouble = trouble_of(error.getErrorCode());
    if (trouble == Trouble::input_output) return unusable(DatabaseError(error.what(), trouble), path);
    throw DatabaseError(error.what(), trouble);
  } catch (const DatabaseError& error) {
    if (error.trouble() == Trouble::input_output) return unusable(error, path);
    throw;
  }
  if (!give_name(temporary.path(), path)) return cannot_make(path, last_error(), "the workshop file cannot be made");
  return {};
}

const Vocabulary& Workshop::vocabulary() const {
  if (!vocabulary_) vocabulary_ = std::make_unique<Vocabulary>(words_of_index(*connection_));
  return *vocabulary_;
}

bool Workshop::is_invented() const {
  return translated([&] {
    Query query(*connection_, "SELECT value FROM meta WHERE key = 'invented'");
    return query.next() && query.text(0) == "yes";
  });
}

} // namespace clampwright::specdb
