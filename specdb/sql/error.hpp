// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>

#include "core/problem/problem.hpp"

namespace clampwright::specdb {

// The database failed in a way that no question explains: no space, damage, no memory. Of SQLite's codes only their
// kind leaves this folder.
class DatabaseError : public std::runtime_error {
 public:
  DatabaseError(const std::string& message, Trouble trouble) : std::runtime_error(message), trouble_(trouble) {}
  [[nodiscard]] Trouble trouble() const { return trouble_; }

 private:
  Trouble trouble_;
};

} // namespace clampwright::specdb
