// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/workshop/records.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// Those that take a database are for use inside a change: what is read is what the change finds. Without translation of
// errors.

// The machine of that slug ("pump"), in any case, with what happened to its record; nothing if there is none.
[[nodiscard]] std::optional<MachineRecord> machine_of_slug(const Workshop& workshop, std::string_view slug);
[[nodiscard]] std::optional<MachineRecord> machine_of_slug(const SQLite::Database& database, std::string_view slug);

// All machines, in the order in which they were entered.
[[nodiscard]] std::vector<MachineRecord> all_machines(const Workshop& workshop);
[[nodiscard]] std::vector<MachineRecord> all_machines(const SQLite::Database& database);

// The machine that a person names, by slug or name, in any case. Fails with no-such and the list.
[[nodiscard]] Result<MachineRecord> find_machine(const Workshop& workshop, std::string_view name);
[[nodiscard]] Result<MachineRecord> find_machine(const SQLite::Database& database, std::string_view name);

} // namespace clampwright::specdb
