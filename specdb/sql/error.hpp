// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>

namespace clampwright::specdb {

// The database failed in a way that no input explains: input/output, damage, no memory. Nothing of SQLite leaves this
// folder but the extended result code.
class DatabaseError : public std::runtime_error {
 public:
  DatabaseError(const std::string& message, int extended_code)
      : std::runtime_error(message), extended_code_(extended_code) {}
  [[nodiscard]] int extended_code() const { return extended_code_; }

 private:
  int extended_code_;
};

} // namespace clampwright::specdb
