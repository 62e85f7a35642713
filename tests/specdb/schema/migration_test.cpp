// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every version of the workshop file that was ever released leads to the newest, with its data.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <SQLiteCpp/Database.h>

#include "specdb/question/joint_answer.hpp"
#include "specdb/schema/workshop_schema.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/compounds.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/wrenches.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::specdb {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;

// A file of that version, as the program of the time made it.
void make_version(int version, const std::filesystem::path& path) {
  const std::string sql = test::bytes_of(std::filesystem::path(CLAMPWRIGHT_SOURCE_DIR) / "tests/specdb/schema" /
                                         ("workshop_version_" + std::string(1, char('0' + version)) + ".sql"));
  SQLite::Database database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  database.exec(sql);
}

void make_version_1(const std::filesystem::path& path) { make_version(1, path); }

long long number(const std::filesystem::path& path, const char* sql) {
  const SQLite::Database database(path.string());
  Query row(database, sql);
  return row.next() ? row.integer(0) : -1;
}

// Every table and index with its columns, as SQLite sees them: what DROP and ADD COLUMN leave of the text does not
// count.
std::vector<std::string> shape(const SQLite::Database& database) {
  std::vector<std::string> lines;
  Query table(database, "SELECT name, type FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY name");
  while (table.next()) {
    std::vector<std::string> columns;
    Query column(database, "SELECT name || ' ' || type || ' ' || \"notnull\" || ' ' || pk FROM pragma_table_info(?)",
                 table.text(0));
    while (column.next())
      columns.push_back(column.text(0));
    std::sort(columns.begin(), columns.end());
    std::string line = table.text(0);
    for (const std::string& text : columns)
      line += ", " + text;
    lines.push_back(line);
  }
  return lines;
}

TEST(Migration, OfEveryVersionEndsInTheTablesOfANewFile) {
  for (int version = 1; version < k_workshop_version; ++version) {
    SCOPED_TRACE(version);
    const test::Scratch scratch;
    make_version(version, scratch / "old");
    ASSERT_TRUE(Workshop::change(scratch / "old", [](SQLite::Database&) -> Result<void> { return {}; }));
    ASSERT_TRUE(Workshop::create(scratch / "new", [](SQLite::Database&) {}));
    const SQLite::Database old((scratch / "old").string());
    const SQLite::Database fresh((scratch / "new").string());
    EXPECT_EQ(shape(old), shape(fresh));
  }
}

TEST(Migration, KeepsTheDataOfVersion4) {
  const test::Scratch scratch;
  make_version(4, scratch / "w");
  ASSERT_TRUE(Workshop::change(scratch / "w", [](SQLite::Database&) -> Result<void> { return {}; }));
  const auto workshop = Workshop::open(scratch / "w");
  ASSERT_TRUE(workshop.has_value());
  EXPECT_THAT(joint_slugs(*workshop), testing::SizeIs(8));
  const auto pivot = joint_of_slug(*workshop, "winch/brake-pivot");
  ASSERT_TRUE(pivot.has_value());
  EXPECT_EQ(pivot->must_clamp, "4 kN");
  EXPECT_TRUE(pivot->events.empty()); // nobody kept them
  EXPECT_EQ(pivot->figure.entered_on, std::nullopt);
  const auto nuts = joint_of_slug(*workshop, "pump/head-nuts");
  ASSERT_TRUE(nuts && nuts->superseded.size() == 1);
  EXPECT_EQ(nuts->machine.stop_length_mm, 23.0);
  EXPECT_TRUE(nuts->machine.events.empty());
  EXPECT_EQ(nuts->superseded.front().superseded_because, "the second print raised it for the new gasket");
  EXPECT_EQ(nuts->superseded.front().superseded_on, std::nullopt);
  const auto wrench = find_wrench(*workshop, "A");
  ASSERT_TRUE(wrench && wrench->events.size() == 2);
  EXPECT_EQ(wrench->events.front().cycles, 40);
  EXPECT_EQ(wrench->events.back().words, "step: 0.5 -> 1; because: new scale");
  const auto shelf = all_compounds(*workshop);
  ASSERT_EQ(shelf.size(), 1U);
  EXPECT_EQ(shelf.front().retired_because, "gone thick");
  EXPECT_EQ(shelf.front().events.size(), 1U);
}

TEST(Migration, KeepsTheDataOfVersion3) {
  const test::Scratch scratch;
  make_version(3, scratch / "w");
  ASSERT_TRUE(Workshop::change(scratch / "w", [](SQLite::Database&) -> Result<void> { return {}; }));
  const auto workshop = Workshop::open(scratch / "w");
  ASSERT_TRUE(workshop.has_value());
  EXPECT_THAT(joint_slugs(*workshop), testing::SizeIs(8));
  const auto hub = joint_of_slug(*workshop, "pump/clutch-hub");
  ASSERT_TRUE(hub.has_value());
  EXPECT_EQ(hub->machine.stroke_mm, 44.0);
  EXPECT_EQ(hub->machine.stop_length_mm, std::nullopt); // nobody had asked for it
  EXPECT_EQ(hub->must_clamp, std::nullopt);
  const auto wrench = find_wrench(*workshop, "A");
  ASSERT_TRUE(wrench.has_value());
  EXPECT_EQ(wrench->step, 0.5);
  EXPECT_EQ(wrench->calibrated_on, std::nullopt);
  EXPECT_TRUE(wrench->events.empty());
  EXPECT_TRUE(all_compounds(*workshop).empty());
}

TEST(Migration, KeepsTheDataOfVersion2) {
  const test::Scratch scratch;
  make_version(2, scratch / "w");
  ASSERT_TRUE(Workshop::change(scratch / "w", [](SQLite::Database&) -> Result<void> { return {}; }));
  const auto workshop = Workshop::open(scratch / "w");
  ASSERT_TRUE(workshop.has_value());
  EXPECT_THAT(joint_slugs(*workshop), testing::SizeIs(7));
  const auto reed = joint_of_slug(*workshop, "pump/reed-block");
  ASSERT_TRUE(reed.has_value());
  EXPECT_EQ(reed->engagement, "7 mm");
  EXPECT_EQ(reed->bolt_length, std::nullopt); // nobody had asked for it
  EXPECT_THAT(joint_of_slug(*workshop, "pump/base-nuts")->beside, testing::SizeIs(1));
  EXPECT_THAT(joint_of_slug(*workshop, "pump/head-nuts")->superseded, testing::SizeIs(1));
}

TEST(Migration, KeepsTheDataOfVersion1) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  ASSERT_TRUE(Workshop::change(scratch / "w", [](SQLite::Database&) -> Result<void> { return {}; }));
  const auto workshop = Workshop::open(scratch / "w");
  ASSERT_TRUE(workshop.has_value());
  EXPECT_TRUE(workshop->note().empty());
  EXPECT_THAT(joint_slugs(*workshop), ElementsAre("pump/clutch-hub", "pump/head-nuts", "pump/mounts",
                                                  "winch/pulley-bolt", "winch/frame-bolts", "winch/brake-pivot"));
  const auto head = joint_of_slug(*workshop, "pump/head-nuts");
  ASSERT_TRUE(head && head->figure.recheck.size() == 1);
  EXPECT_EQ(head->figure.printed, "17 N·m");
  EXPECT_EQ(head->figure.recheck.front().words, "cold, after the first hour of running");
  EXPECT_EQ(joint_of_slug(*workshop, "winch/brake-pivot")->figure.method, "by-feel");
}

TEST(Migration, PutsACopyBesideTheFileFirst) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  ASSERT_TRUE(Workshop::change(scratch / "w", [](SQLite::Database&) -> Result<void> { return {}; }));
  EXPECT_THAT(scratch.names(), Contains("w.version-1.backup"));
  EXPECT_EQ(number(scratch / "w.version-1.backup", "PRAGMA user_version"), 1);
}

TEST(Migration, NeverOverwritesAnOlderCopy) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  test::write_bytes(scratch / "w.version-1.backup", "mine");
  ASSERT_TRUE(Workshop::change(scratch / "w", [](SQLite::Database&) -> Result<void> { return {}; }));
  EXPECT_EQ(test::bytes_of(scratch / "w.version-1.backup"), "mine");
  EXPECT_THAT(scratch.names(), Contains("w.version-1.backup-2"));
}

TEST(Migration, IsUndoneWholeWhereTheChangeIsRefused) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  const auto refused = Workshop::change(scratch / "w", [](SQLite::Database&) -> Result<void> {
    return refuse(Trouble::not_understood, "no", "no", {}, "no");
  });
  EXPECT_FALSE(refused.has_value());
  EXPECT_EQ(number(scratch / "w", "PRAGMA user_version"), 1);
}

TEST(OlderFile, IsReadWithoutBeingWritten) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  const std::string before = test::bytes_of(scratch / "w");
  {
    const auto workshop = Workshop::open(scratch / "w");
    ASSERT_TRUE(workshop.has_value());
    EXPECT_THAT(workshop->note(), HasSubstr("older version 1"));
    const auto answer = answer_for(Catalogue(), *joint_of_slug(*workshop, "pump/clutch-hub"));
    ASSERT_TRUE(answer.has_value());
    EXPECT_EQ(answer->undo, thread::Turn::clockwise);
  }
  EXPECT_EQ(test::bytes_of(scratch / "w"), before);
  EXPECT_THAT(scratch.names(), ElementsAre("w"));
}

TEST(Change, StandsWholeOrNotAtAll) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", [](SQLite::Database&) {}));
  EXPECT_ANY_THROW((void)Workshop::change(scratch / "w", [](SQLite::Database& database) -> Result<void> {
    run(database, "INSERT INTO meta VALUES ('half', 'written')");
    throw std::runtime_error("in the middle");
  }));
  EXPECT_EQ(number(scratch / "w", "SELECT count(*) FROM meta WHERE key = 'half'"), 0);
}

} // namespace
} // namespace clampwright::specdb
