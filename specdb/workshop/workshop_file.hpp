// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <string>

#include "core/problem/problem.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

class Vocabulary;

// The user's file: machines, joints, figures. Opened only by the commands that need it.
class Workshop {
 public:
  // Opens a file that is there, for reading: nothing in it is written or migrated. A file of an older version is
  // migrated in memory. In a place that cannot be written it is read as it stands; where a write-ahead log was left
  // there, a private copy of both is read, because the log may hold rows that the file does not. All that is read is
  // the state at one moment; for a later one, open it again. Fails with no-such where there is no such file,
  // not-understood (damaged) for an empty or broken one, wrong-file for one that is foreign or newer, no-permission,
  // busy while another program holds it.
  [[nodiscard]] static Result<Workshop> open(const std::filesystem::path& path);

  // Lets `work` change a file that is there, in one transaction: it stands whole or, where `work` refuses or throws,
  // not at all. A file of an older version is migrated first, after a copy of it was put beside it
  // (NAME.version-1.backup), which is taken away again where the change does not stand. Fails like `open`, and with
  // input-output where there is no space.
  [[nodiscard]] static Result<void> change(const std::filesystem::path& path,
                                           const std::function<Result<void>(SQLite::Database&)>& work);

  // Makes a new file and lets `fill` write into it, in one transaction, under another name; only the whole file gets
  // the name. Missing folders are made. Only the owner may read it. Fails with cannot-create or no-permission, and
  // where a file of that name is there.
  [[nodiscard]] static Result<void> create(const std::filesystem::path& path,
                                           const std::function<void(SQLite::Database&)>& fill);

  ~Workshop();
  Workshop(Workshop&&) noexcept;
  Workshop& operator=(Workshop&&) noexcept;

  // Everything in it is invented, for trying out.
  [[nodiscard]] bool is_invented() const;

  // What a person should know about how the file was read: in a read-only place, from a copy, of an older version.
  // Empty as a rule.
  [[nodiscard]] const std::string& note() const { return note_; }

  // For the .cpp files of this folder.
  [[nodiscard]] const SQLite::Database& connection() const { return *connection_; }

  // The words of the search index, gathered at the first call: all that is read is the state at one moment.
  [[nodiscard]] const Vocabulary& vocabulary() const;

 private:
  Workshop(std::unique_ptr<SQLite::Database> connection, std::string note);
  std::unique_ptr<SQLite::Database> connection_;
  std::string note_;
  mutable std::unique_ptr<Vocabulary> vocabulary_;
};

} // namespace clampwright::specdb
