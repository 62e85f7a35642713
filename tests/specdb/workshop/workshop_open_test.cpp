// SPDX-License-Identifier: GPL-3.0-or-later
#include <sys/stat.h>

#include <filesystem>
#include <set>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/error.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/search.hpp"
#include "tests/core/problem_of.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

namespace fs = std::filesystem;
using test::problem_of;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;

// A database of another program.
void make_foreign(const fs::path& path) {
  SQLite::Database database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  database.exec("CREATE TABLE notes (text); INSERT INTO notes VALUES ('milk')");
}

// A demo workshop that says it is two versions newer.
void make_newer(const fs::path& path) {
  ASSERT_TRUE(make_demo_workshop(path, test::k_demo_day).has_value());
  SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
  database.exec("PRAGMA journal_mode = DELETE; PRAGMA user_version = 7");
}

void make_truncated(const fs::path& path) {
  ASSERT_TRUE(make_demo_workshop(path, test::k_demo_day).has_value());
  fs::resize_file(path, fs::file_size(path) / 2);
}

void make_stub(const fs::path& path) {
  ASSERT_TRUE(make_demo_workshop(path, test::k_demo_day).has_value());
  fs::resize_file(path, 200);
}

void make_text(const fs::path& path) {
  test::write_bytes(path, std::string(5000, 'x') + "\nThis is a letter and no database.\n");
}

void make_empty(const fs::path& path) { test::write_bytes(path, ""); }

struct Row {
  const char* what;
  void (*make)(const fs::path&);
  Trouble trouble;
  const char* code;
  const char* message; // part of it
};

// clang-format off
constexpr Row k_files[] = {
    {"empty",     make_empty,     Trouble::not_understood, "damaged",    "is empty"},
    {"text",      make_text,      Trouble::wrong_file,     "wrong-file", "that is not a workshop file"},
    {"foreign",   make_foreign,   Trouble::wrong_file,     "wrong-file", "not a workshop file of this program"},
    {"newer",     make_newer,     Trouble::wrong_file,     "newer-file", "version 7, this program reads up to 5"},
    {"truncated", make_truncated, Trouble::not_understood, "damaged",    "is damaged"},
};
// clang-format on

Problem problem_of_missing(const test::Scratch& scratch) { return problem_of(Workshop::open(scratch / "none")); }

Problem problem_of_folder(const test::Scratch& scratch) {
  fs::create_directory(scratch / "folder");
  return problem_of(Workshop::open(scratch / "folder"));
}

Problem problem_of_fifo(const test::Scratch& scratch) {
  EXPECT_EQ(::mkfifo((scratch / "fifo").c_str(), 0600), 0);
  return problem_of(Workshop::open(scratch / "fifo"));
}

TEST(OpeningAWorkshop, IsRefusedByWhatStandsInTheFile) {
  for (const Row& row : k_files) {
    const test::Scratch scratch;
    row.make(scratch / "w");
    const Problem problem = problem_of(Workshop::open(scratch / "w"));
    EXPECT_EQ(problem.trouble, row.trouble) << row.what;
    EXPECT_EQ(problem.code, row.code) << row.what;
    EXPECT_THAT(problem.message, HasSubstr(row.message)) << row.what;
    EXPECT_THAT(problem.input, HasSubstr("clampwright-test")) << row.what;
    EXPECT_FALSE(problem.hint.empty()) << row.what;
  }
}

TEST(OpeningAWorkshop, LeavesARefusedFileAsItIs) {
  for (const Row& row : k_files) {
    const test::Scratch scratch;
    row.make(scratch / "w");
    const std::string before = test::bytes_of(scratch / "w");
    (void)Workshop::open(scratch / "w");
    EXPECT_TRUE(test::bytes_of(scratch / "w") == before) << row.what;
    EXPECT_THAT(scratch.names(), ElementsAre("w")) << row.what;
  }
}

TEST(OpeningAWorkshop, IsRefusedWhereOnlyTheFirstBytesAreLeft) {
  const test::Scratch scratch;
  make_stub(scratch / "w");
  const Problem problem = problem_of(Workshop::open(scratch / "w"));
  EXPECT_TRUE(problem.code == "damaged" || problem.code == "wrong-file") << problem.code;
}

TEST(OpeningAWorkshop, IsRefusedWhereThereIsNone) {
  const test::Scratch scratch;
  const Problem problem = problem_of_missing(scratch);
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_EQ(problem.code, "no-workshop");
  EXPECT_THAT(problem.hint, AllOf(HasSubstr("demo"), HasSubstr("--workshop")));
}

TEST(OpeningAWorkshop, MakesNothingWhereThereIsNone) {
  const test::Scratch scratch;
  (void)problem_of_missing(scratch);
  EXPECT_TRUE(scratch.names().empty());
}

TEST(OpeningAWorkshop, IsRefusedForAFolder) {
  const test::Scratch scratch;
  const Problem problem = problem_of_folder(scratch);
  EXPECT_EQ(problem.trouble, Trouble::wrong_file);
  EXPECT_THAT(problem.message, HasSubstr("folder"));
}

TEST(OpeningAWorkshop, DoesNotWaitForAFifo) {
  const test::Scratch scratch;
  const Problem problem = problem_of_fifo(scratch);
  EXPECT_EQ(problem.trouble, Trouble::wrong_file);
  EXPECT_THAT(problem.message, HasSubstr("no plain file"));
}

TEST(OpeningAWorkshop, IsRefusedForALinkThatLeadsNowhere) {
  const test::Scratch scratch;
  fs::create_symlink(scratch / "elsewhere", scratch / "w");
  EXPECT_EQ(problem_of(Workshop::open(scratch / "w")).trouble, Trouble::no_such);
}

TEST(OpeningAWorkshop, IsRefusedInsideAFile) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "file", "x");
  EXPECT_EQ(problem_of(Workshop::open(scratch / "file/w")).trouble, Trouble::no_such);
}

TEST(OpeningAWorkshop, SaysSomethingElseOfEachFault) {
  std::set<std::string> messages;
  for (const Row& row : k_files) {
    const test::Scratch scratch;
    row.make(scratch / "w");
    messages.insert(problem_of(Workshop::open(scratch / "w")).message);
  }
  const test::Scratch scratch;
  messages.insert(problem_of_missing(scratch).message);
  messages.insert(problem_of_folder(scratch).message);
  messages.insert(problem_of_fifo(scratch).message);
  EXPECT_EQ(messages.size(), std::size(k_files) + 3);
}

TEST(ReadingAWorkshop, LeavesItsBytesAsTheyAre) {
  const test::DemoFile demo;
  const std::string before = test::bytes_of(demo.path);
  {
    const Workshop workshop = demo.open();
    EXPECT_TRUE(workshop.is_invented());
    EXPECT_FALSE(search(workshop, "clutch").hits.empty());
    EXPECT_FALSE(search(workshop, "cluch").hits.empty());
    EXPECT_TRUE(joint_of_slug(workshop, "pump/clutch-hub").has_value());
  }
  EXPECT_TRUE(test::bytes_of(demo.path) == before);
}

TEST(ReadingAWorkshop, LeavesNothingBesideIt) {
  const test::DemoFile demo;
  (void)search(demo.open(), "clutch");
  (void)search(demo.open(), "cluch"); // reads the words of the index
  EXPECT_THAT(demo.scratch.names(), ElementsAre("demo.clampwright"));
}

TEST(ReadingAWorkshop, CannotWriteIt) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  EXPECT_THROW(
      {
        SQLite::Statement change(workshop.connection(), "DELETE FROM joint");
        change.exec();
      },
      SQLite::Exception);
}

TEST(ReadingAWorkshop, GoesOnAfterItsMove) {
  const test::DemoFile demo;
  Workshop one = demo.open();
  const Workshop other = std::move(one);
  EXPECT_EQ(joint_slugs(other).front(), "pump/clutch-hub");
}

TEST(ReadingAWorkshop, SeesWhatAnotherReaderSees) {
  const test::DemoFile demo;
  const Workshop one = demo.open();
  const Workshop other = demo.open();
  EXPECT_EQ(joint_slugs(one).front(), joint_slugs(other).front());
}

TEST(ReadingAWorkshop, SeesWhatAWriterHasCommitted) {
  const test::DemoFile demo;
  SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
  writer.exec("UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'"); // still in the log
  EXPECT_EQ(joint_slugs(demo.open()).front(), "pump/renamed");
}

TEST(ReadingAWorkshop, DoesNotSeeWhatAWriterHasNotCommitted) {
  const test::DemoFile demo;
  SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
  writer.exec("BEGIN IMMEDIATE; UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'");
  EXPECT_EQ(joint_slugs(demo.open()).front(), "pump/clutch-hub");
}

// A program that died while it wrote leaves its log; what it committed is in there alone.
TEST(ReadingAWorkshop, SeesWhatIsInALogThatWasLeftOver) {
  const test::DemoFile demo;
  const test::Scratch copy;
  {
    SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
    writer.exec("UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'");
    fs::copy(demo.path, copy / "w");
    fs::copy(demo.path.string() + "-wal", copy / "w-wal");
  }
  const std::string before = test::bytes_of(copy / "w");
  EXPECT_EQ(joint_slugs(Workshop::open(copy / "w").value()).front(), "pump/renamed");
  EXPECT_TRUE(test::bytes_of(copy / "w") == before);
}

// Page size 4096 is SQLite's default; the schema stays readable on the first page, what it leads to does not.
TEST(ReadingAWorkshop, TurnsDamageInsideIntoOurOwnError) {
  const test::DemoFile demo;
  std::string bytes = test::bytes_of(demo.path);
  const std::string table = "pump/clutch-hub"; // the page that holds the joints
  const auto page = bytes.find(table) / 4096 * 4096;
  std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(page), 4096, '\x5a');
  test::write_bytes(demo.path, bytes);
  const auto workshop = Workshop::open(demo.path);
  ASSERT_TRUE(workshop.has_value()) << workshop.error().message;
  EXPECT_THROW((void)joint_of_slug(*workshop, "pump/clutch-hub"), DatabaseError);
}

} // namespace
} // namespace clampwright::specdb
