// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/schema/workshop_schema.hpp"

#include <array>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "specdb/schema/migrations.hpp"

namespace clampwright::specdb {

namespace {

// The SQL at place n leads from version n to n + 1; version 0 is an empty file.
const std::array k_migrations{k_version_1, k_version_2, k_version_3, k_version_4, k_version_5};
static_assert(k_migrations.size() == k_workshop_version);

} // namespace

void migrate_workshop(SQLite::Database& database, int from) {
  for (auto version = static_cast<std::size_t>(from); version < k_migrations.size(); ++version)
    database.exec(k_migrations.at(version));
  database.exec(fmt::format("PRAGMA user_version = {};", k_workshop_version));
}

void create_workshop_schema(SQLite::Database& database) {
  migrate_workshop(database, 0);
  database.exec(fmt::format("PRAGMA application_id = {};", k_workshop_application_id));
}

} // namespace clampwright::specdb
