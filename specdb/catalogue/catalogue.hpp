// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// The reference tables: a read-only connection of its own to the image that is embedded in the program, so there is no
// file to find and nothing to corrupt. The questions that can be put to it stand beside, one subject per file. Not for
// use by two threads at once. Opening and asking throw DatabaseError when memory fails or the image is damaged.
class Catalogue {
 public:
  Catalogue();
  ~Catalogue();
  Catalogue(const Catalogue&) = delete;
  Catalogue& operator=(const Catalogue&) = delete;

  // SHA-256 over the data files that the image was built from: the version of the data.
  [[nodiscard]] std::string data_version() const;

  // For the .cpp files beside this one.
  [[nodiscard]] const SQLite::Database& connection() const { return *connection_; }

 private:
  std::unique_ptr<SQLite::Database> connection_;
};

} // namespace clampwright::specdb
