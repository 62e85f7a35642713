// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// "Clpw": marks a file as a workshop of ours (offset 68 of an SQLite file).
inline constexpr std::int32_t k_workshop_application_id = 0x436C7077;

// The newest schema this program writes and reads. Migrations are numbered from here on.
inline constexpr int k_workshop_version = 5;

// Leads the tables of version `from` (0: an empty database) to the newest version, in the transaction that is open.
// Precondition: 0 <= from <= k_workshop_version.
void migrate_workshop(SQLite::Database& database, int from);

// Makes the tables of the newest version in an empty database, in the transaction that is open.
void create_workshop_schema(SQLite::Database& database);

} // namespace clampwright::specdb
