// SPDX-License-Identifier: GPL-3.0-or-later
//
// SQLite itself hands out "" or 0 for NULL, and 0 for text where a number is asked for.
#include "specdb/sql/query.hpp"

#include <gtest/gtest.h>

namespace clampwright::specdb {
namespace {

SQLite::Database memory() { return SQLite::Database(":memory:", SQLite::OPEN_READWRITE); }

TEST(Query, ReadsColumnsByTheirType) {
  const SQLite::Database database = memory();
  Query row(database, "SELECT 'M10', 1.5, 7");
  ASSERT_TRUE(row.next());
  EXPECT_EQ(row.text(0), "M10");
  EXPECT_DOUBLE_EQ(row.real(1), 1.5);
  EXPECT_EQ(row.integer(2), 7);
}

TEST(Query, ReadsAWholeNumberAsARealOne) {
  const SQLite::Database database = memory();
  Query row(database, "SELECT 7");
  ASSERT_TRUE(row.next());
  EXPECT_DOUBLE_EQ(row.real(0), 7.0);
}

TEST(Query, RefusesNullUnlessAskedForIt) {
  const SQLite::Database database = memory();
  Query row(database, "SELECT NULL");
  ASSERT_TRUE(row.next());
  EXPECT_THROW((void)row.text(0), DatabaseError);
  EXPECT_THROW((void)row.real(0), DatabaseError);
  EXPECT_THROW((void)row.integer(0), DatabaseError);
}

TEST(Query, ReadsNullAsNothingIfAskedForIt) {
  const SQLite::Database database = memory();
  Query row(database, "SELECT NULL, 'x', 1.5");
  ASSERT_TRUE(row.next());
  EXPECT_FALSE(row.maybe_text(0).has_value());
  EXPECT_FALSE(row.maybe_real(0).has_value());
  EXPECT_EQ(row.maybe_text(1), "x");
  EXPECT_EQ(row.maybe_real(2), 1.5);
}

TEST(Query, RefusesColumnsOfAnotherType) {
  const SQLite::Database database = memory();
  Query row(database, "SELECT '12', 1.5, x'00'");
  ASSERT_TRUE(row.next());
  EXPECT_THROW((void)row.real(0), DatabaseError);
  EXPECT_THROW((void)row.integer(0), DatabaseError);
  EXPECT_THROW((void)row.integer(1), DatabaseError);
  EXPECT_THROW((void)row.text(1), DatabaseError);
  EXPECT_THROW((void)row.text(2), DatabaseError);
  EXPECT_THROW((void)row.maybe_real(0), DatabaseError);
}

TEST(Query, BindsValuesAsTheyAre) {
  const SQLite::Database database = memory();
  Query row(database, "SELECT ?, ?, ?, ?", std::string_view("'; DROP TABLE x --"), 0.1, 1LL << 40,
            std::optional<std::string_view>());
  ASSERT_TRUE(row.next());
  EXPECT_EQ(row.text(0), "'; DROP TABLE x --");
  EXPECT_DOUBLE_EQ(row.real(1), 0.1);
  EXPECT_EQ(row.integer(2), 1LL << 40);
  EXPECT_TRUE(row.is_null(3));
}

TEST(KnownName, IsReadBackForEachWayOfKnowing) {
  // The contract, section 1: printed second-hand memory computed common-practice.
  EXPECT_EQ(known_named("printed"), Known::printed);
  EXPECT_EQ(known_named("second-hand"), Known::second_hand);
  EXPECT_EQ(known_named("memory"), Known::memory);
  EXPECT_EQ(known_named("computed"), Known::computed);
  EXPECT_EQ(known_named("common-practice"), Known::common_practice);
}

TEST(KnownName, IsRefusedIfItIsNoWayOfKnowing) {
  for (const char* name : {"hearsay", "", "Printed", "memory "})
    EXPECT_THROW((void)known_named(name), DatabaseError) << name;
}

} // namespace
} // namespace clampwright::specdb
