// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/workshop_watch.hpp"

#include <system_error>
#include <utility>

#include <sqlite3.h>
#include <sys/stat.h>

#include <SQLiteCpp/Database.h>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/connection.hpp"

namespace clampwright::specdb {

namespace {

namespace fs = std::filesystem;

bool has_content(const fs::path& path) {
  std::error_code none;
  const auto size = fs::file_size(path, none);
  return !none && size > 0;
}

// Whoever reads a file beside a journal that was left there must play it back; that is not for a watch to do. A log in
// use is not put away when the watch ends: it was not the watch that brought it.
std::unique_ptr<SQLite::Database> connection_to(const fs::path& file) {
  if (!can_be_written(file) || has_content(file.string() + "-journal")) return nullptr;
  const bool has_log = has_content(file.string() + "-wal");
  auto database = std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READWRITE);
  configure(*database);
  database->exec("PRAGMA query_only = ON");
  database->setBusyTimeout(0); // the next look will do
  if (has_log) sqlite3_db_config(database->getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
  return database;
}

} // namespace

WorkshopWatch::WorkshopWatch(fs::path path) : path_(std::move(path)), state_(state_now()) {
  if (!state_) return;
  connect();
  (void)somebody_committed();
}
WorkshopWatch::~WorkshopWatch() = default;
WorkshopWatch::WorkshopWatch(WorkshopWatch&&) noexcept = default;
WorkshopWatch& WorkshopWatch::operator=(WorkshopWatch&&) noexcept = default;

std::optional<WorkshopWatch::State> WorkshopWatch::state_now() const {
  struct stat found {};
  if (::stat(path_.c_str(), &found) != 0 || !S_ISREG(found.st_mode)) return std::nullopt;
  return State{found.st_dev, found.st_ino, found.st_size,
               static_cast<std::int64_t>(found.st_mtim.tv_sec) * 1'000'000'000 + found.st_mtim.tv_nsec};
}

void WorkshopWatch::disconnect() {
  connection_.reset();
  commits_.reset();
}

void WorkshopWatch::connect() {
  disconnect();
  std::error_code error;
  const fs::path file = fs::canonical(path_, error); // a log lies beside the file, not beside a link to it
  if (error) return;
  try {
    connection_ = connection_to(file);
  } catch (const SQLite::Exception&) { // it is tried again at the next look
  }
}

// True as well where that is not known since the connection was made.
bool WorkshopWatch::somebody_committed() {
  if (!connection_) connect();
  if (!connection_ || has_content(connection_->getFilename() + "-journal")) return false;
  try {
    Query row(*connection_, "PRAGMA data_version");
    if (!row.next()) return false;
    const long long now = row.integer(0);
    return std::exchange(commits_, now) != now;
  } catch (const SQLite::Exception& error) {
    const Trouble trouble = trouble_of(error.getErrorCode());
    if (trouble != Trouble::busy) disconnect();
    return false;
  }
}

WorkshopChange WorkshopWatch::look() {
  const std::optional<State> before = std::exchange(state_, state_now());
  if (!state_) {
    disconnect();
    return before ? WorkshopChange::gone : WorkshopChange::none;
  }
  if (!before || before->device != state_->device || before->number != state_->number) {
    connect();
    (void)somebody_committed();
    return before ? WorkshopChange::replaced : WorkshopChange::appeared;
  }
  const bool committed = somebody_committed();
  const bool touched = before->size != state_->size || before->written_ns != state_->written_ns;
  return committed || touched ? WorkshopChange::written : WorkshopChange::none;
}

} // namespace clampwright::specdb
