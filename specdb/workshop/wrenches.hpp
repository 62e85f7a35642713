// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/workshop/records.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

// Those below, inside a change: what is read is what the change finds. Without translation of errors.
[[nodiscard]] std::vector<WrenchRecord> all_wrenches(const SQLite::Database& database);
[[nodiscard]] Result<WrenchRecord> find_wrench(const SQLite::Database& database, std::string_view name);

// All torque wrenches of the workshop, in the order in which they were entered.
[[nodiscard]] std::vector<WrenchRecord> all_wrenches(const Workshop& workshop);

// The wrench that a person names, by slug or name, in any case. Fails with no-such and the list.
[[nodiscard]] Result<WrenchRecord> find_wrench(const Workshop& workshop, std::string_view name);

} // namespace clampwright::specdb
