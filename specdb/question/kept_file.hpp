// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>

#include "core/problem/problem.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// Lets `work` enter something into the workshop file, as Workshop::change does; where no file is there an empty one,
// not invented, is made first. It stands whole or not at all. Says whether the file was made. Fails like
// Workshop::change and Workshop::create.
[[nodiscard]] Result<bool> change_or_make(const std::filesystem::path& file,
                                          const std::function<Result<void>(SQLite::Database&)>& work);

} // namespace clampwright::specdb
