// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/workshop/records.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// The documents from which figures are taken, in the order in which they were entered. The second inside a change,
// without translation of errors.
[[nodiscard]] std::vector<SourceRecord> all_sources(const Workshop& workshop);
[[nodiscard]] std::vector<SourceRecord> all_sources(const SQLite::Database& database);

// The one that a person names by its slug, in any case. Fails with no-such and the list.
[[nodiscard]] Result<SourceRecord> find_source(const std::vector<SourceRecord>& sources, std::string_view name);

} // namespace clampwright::specdb
