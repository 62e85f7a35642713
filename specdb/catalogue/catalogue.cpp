// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/catalogue.hpp"

#include <sqlite3.h>

#include "specdb/image/embedded_image.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

Catalogue::Catalogue() {
  translated([&] {
    connection_ = std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE);
    const std::string_view image = embedded_image();
    // SQLite takes a pointer that it may write through; with READONLY it does not.
    auto* bytes = reinterpret_cast<unsigned char*>(const_cast<char*>(image.data()));
    const auto size = static_cast<sqlite3_int64>(image.size());
    const int result =
        sqlite3_deserialize(connection_->getHandle(), "main", bytes, size, size, SQLITE_DESERIALIZE_READONLY);
    if (result != SQLITE_OK) throw DatabaseError("the built-in reference tables cannot be opened", trouble_of(result));
  });
}

Catalogue::~Catalogue() = default;

std::string Catalogue::data_version() const {
  return translated([&] {
    Query query(*connection_, "SELECT value FROM meta WHERE key = 'content_sha256'");
    if (!query.next()) throw DatabaseError("the built-in reference tables have no version", Trouble::internal);
    return query.text(0);
  });
}

} // namespace clampwright::specdb
