// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>
#include <memory>

#include "core/problem/problem.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// The user's file: machines, joints, figures. Opened only by the commands that need it.
class Workshop {
 public:
  // Opens a file that is there, for reading: nothing in it is written or migrated. In a place that cannot be written,
  // and with no left-over write-ahead log beside it, it is read as it stands. Fails with no-such where there is no such
  // file, not-understood (damaged) for an empty or broken one, wrong-file for one that is foreign or newer.
  [[nodiscard]] static Result<Workshop> open(const std::filesystem::path& path);

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

  // For the .cpp files of this folder.
  [[nodiscard]] const SQLite::Database& connection() const { return *connection_; }

 private:
  explicit Workshop(std::unique_ptr<SQLite::Database> connection);
  std::unique_ptr<SQLite::Database> connection_;
};

} // namespace clampwright::specdb
