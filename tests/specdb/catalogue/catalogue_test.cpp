// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/catalogue.hpp"

#include <memory>

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include "specdb/catalogue/surfaces.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/image/digest.hpp"
#include "specdb/image/reference_tables.hpp"
#include "specdb/sql/query.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::specdb {
namespace {

// Extended result code of a statement that must fail; SQLITE_OK if it does not.
int code_of(const Catalogue& catalogue, const char* sql) {
  try {
    run(catalogue.connection(), sql);
  } catch (const SQLite::Exception& error) {
    return error.getErrorCode();
  }
  return SQLITE_OK;
}

// Every table in the order in which it is filled, name and text with a line end behind each: the framing that
// specdb/image/build_image.cpp uses, written out again here. SHA-256 itself is held to published values elsewhere.
TEST(Catalogue, IsOfTheVersionOfTheDataFilesOnDisk) {
  std::string all;
  for (const ReferenceTable& table : k_reference_tables)
    all += fmt::format("{}\n{}\n", table.name,
                       test::bytes_of(fmt::format(CLAMPWRIGHT_SOURCE_DIR "/specdb/data/{}.csv", table.name)));
  EXPECT_EQ(Catalogue().data_version(), sha256(all));
}

TEST(Catalogue, CannotBeWritten) {
  const Catalogue catalogue;
  for (const char* sql : {"INSERT INTO meta VALUES ('x', 'y')", "UPDATE threads SET diameter = 1", "DELETE FROM locks",
                          "DROP TABLE faces", "CREATE TABLE mine (a)", "PRAGMA user_version = 7", "VACUUM"})
    EXPECT_EQ(code_of(catalogue, sql), SQLITE_READONLY) << sql;
}

TEST(Catalogue, IsTheSameAfterAnAttemptToWrite) {
  const Catalogue catalogue;
  const std::string before = catalogue.data_version();
  (void)code_of(catalogue, "UPDATE meta SET value = 'x'");
  EXPECT_EQ(catalogue.data_version(), before);
}

TEST(Catalogue, StandsBesideAnother) {
  auto one = std::make_unique<Catalogue>();
  const Catalogue other;
  EXPECT_EQ(one->data_version(), other.data_version());
  EXPECT_EQ(find_thread(*one, "M10")->thread.designation, "M10");
  EXPECT_EQ(find_surfaces(other, "oiled")->name, "oiled");
  EXPECT_EQ(find_thread(*one, "2 BA")->thread.designation, "2 BA");
  one.reset();
  EXPECT_EQ(find_thread(other, "M12")->thread.designation, "M12");
}

TEST(Catalogue, IsSoundInEveryPage) {
  const Catalogue catalogue;
  Query integrity(catalogue.connection(), "PRAGMA integrity_check");
  ASSERT_TRUE(integrity.next());
  EXPECT_EQ(integrity.text(0), "ok");
}

TEST(Catalogue, HasASourceBehindEveryForeignKey) {
  const Catalogue catalogue;
  Query orphans(catalogue.connection(), "PRAGMA foreign_key_check");
  EXPECT_FALSE(orphans.next());
}

TEST(Catalogue, HasStrictTablesOnly) {
  const Catalogue catalogue;
  Query loose(catalogue.connection(),
              "SELECT name FROM pragma_table_list WHERE schema = 'main' AND strict = 0 AND name NOT LIKE 'sqlite_%'");
  EXPECT_FALSE(loose.next()) << loose.text(0);
}

} // namespace
} // namespace clampwright::specdb
