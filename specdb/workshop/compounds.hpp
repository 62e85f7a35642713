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

// The locking compounds of the shelf, retired ones too, in the order in which they were entered.
[[nodiscard]] std::vector<CompoundRecord> all_compounds(const Workshop& workshop);
[[nodiscard]] std::vector<CompoundRecord> all_compounds(const SQLite::Database& database);

// The compound that a person names, by slug or label, in any case. Fails with no-such and the list.
[[nodiscard]] Result<CompoundRecord> find_compound(const Workshop& workshop, std::string_view name);
[[nodiscard]] Result<CompoundRecord> find_compound(const SQLite::Database& database, std::string_view name);

} // namespace clampwright::specdb
