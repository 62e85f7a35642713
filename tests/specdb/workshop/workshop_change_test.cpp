// SPDX-License-Identifier: GPL-3.0-or-later
//
// What stands in the way of a change, and what is left of it.
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/schema/workshop_schema.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/joints.hpp"
#include "tests/cli/process.hpp"
#include "tests/core/problem_of.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

namespace fs = std::filesystem;
using test::problem_of;
using testing::ElementsAre;
using testing::HasSubstr;

Result<void> rename_hub(SQLite::Database& database) {
  database.exec("UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'");
  return {};
}

void make_version_1(const fs::path& path) {
  SQLite::Database database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  database.exec(test::bytes_of(fs::path(CLAMPWRIGHT_SOURCE_DIR) / "tests/specdb/schema/workshop_version_1.sql"));
}

long long version_of(const fs::path& path) {
  const SQLite::Database database(path.string());
  Query row(database, "PRAGMA user_version");
  return row.next() ? row.integer(0) : -1;
}

// What `work` says in a process of its own, which may lose its rights. "still root" where it cannot.
template<class Work>
std::string as_nobody(Work work) {
  int ends[2];
  if (::pipe(ends) != 0) return "no pipe";
  const pid_t child = ::fork();
  if (child == 0) {
    const std::string said = cli::testing_support::become_nobody() ? work() : std::string("still root");
    (void)!::write(ends[1], said.data(), said.size());
    ::_exit(0);
  }
  ::close(ends[1]);
  std::string said;
  char buffer[512];
  for (ssize_t read = 0; (read = ::read(ends[0], buffer, sizeof buffer)) > 0;)
    said.append(buffer, static_cast<std::size_t>(read));
  ::close(ends[0]);
  ::waitpid(child, nullptr, 0);
  return said;
}

std::string code_and_message(const Result<void>& result) {
  return result ? "changed" : result.error().code + ": " + result.error().message;
}

TEST(ChangingAWorkshop, IsRefusedWhereTheFolderCannotBeWritten) {
  const test::DemoFile demo;
  fs::permissions(demo.path, fs::perms(0666));
  fs::permissions(demo.scratch.folder(), fs::perms(0555));
  const std::string before = test::bytes_of(demo.path);
  EXPECT_THAT(as_nobody([&] { return code_and_message(Workshop::change(demo.path, rename_hub)); }),
              HasSubstr("no-permission"));
  fs::permissions(demo.scratch.folder(), fs::perms(0700));
  EXPECT_TRUE(test::bytes_of(demo.path) == before);
  EXPECT_THAT(demo.scratch.names(), ElementsAre("demo.clampwright"));
}

TEST(ChangingAWorkshop, IsRefusedWhereTheFileCannotBeWritten) {
  const test::DemoFile demo;
  fs::permissions(demo.path, fs::perms(0444));
  fs::permissions(demo.scratch.folder(), fs::perms(0777));
  const std::string before = test::bytes_of(demo.path);
  EXPECT_THAT(as_nobody([&] { return code_and_message(Workshop::change(demo.path, rename_hub)); }),
              HasSubstr("no-permission"));
  EXPECT_TRUE(test::bytes_of(demo.path) == before);
}

TEST(ChangingAWorkshop, MigratesNothingWhereNoBackupCanBeMade) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  fs::permissions(scratch / "w", fs::perms(0666));
  fs::permissions(scratch.folder(), fs::perms(0555));
  const std::string before = test::bytes_of(scratch / "w");
  EXPECT_THAT(as_nobody([&] { return code_and_message(Workshop::change(scratch / "w", rename_hub)); }),
              HasSubstr("nothing was changed"));
  fs::permissions(scratch.folder(), fs::perms(0700));
  EXPECT_TRUE(test::bytes_of(scratch / "w") == before);
  EXPECT_THAT(scratch.names(), ElementsAre("w"));
}

TEST(ChangingAWorkshop, MigratesNothingWhereTheBackupDoesNotFit) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  const std::string before = test::bytes_of(scratch / "w");
  fs::permissions(scratch / "w", fs::perms(0666));
  fs::permissions(scratch.folder(), fs::perms(0777));
  const auto little_space = [&] {
    const rlimit limit{8192, 8192};
    (void)::signal(SIGXFSZ, SIG_IGN);
    return ::setrlimit(RLIMIT_FSIZE, &limit) != 0 ? "no limit"
                                                  : code_and_message(Workshop::change(scratch / "w", rename_hub));
  };
  EXPECT_THAT(as_nobody(little_space), HasSubstr("input-output"));
  EXPECT_TRUE(test::bytes_of(scratch / "w") == before);
  EXPECT_THAT(scratch.names(), ElementsAre("w"));
}

TEST(ChangingAWorkshop, TakesTheBackupAwayWhereTheChangeDoesNotStand) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  const auto no = [](SQLite::Database&) -> Result<void> { return not_understood("no", "no", "", ""); };
  EXPECT_EQ(problem_of(Workshop::change(scratch / "w", no)).code, "no");
  EXPECT_EQ(version_of(scratch / "w"), 1);
  EXPECT_THAT(scratch.names(), ElementsAre("w"));
}

TEST(ChangingAWorkshop, KeepsTheBackupToItsOwner) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  ASSERT_TRUE(Workshop::change(scratch / "w", rename_hub));
  struct stat status {};
  ASSERT_EQ(::stat((scratch / "w.version-1.backup").c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777U, 0600U);
  EXPECT_EQ(version_of(scratch / "w.version-1.backup"), 1);
}

TEST(ChangingAWorkshop, WritesNoBackupThroughALink) {
  const test::Scratch scratch;
  make_version_1(scratch / "w");
  fs::create_symlink(scratch / "elsewhere", scratch / "w.version-1.backup");
  ASSERT_TRUE(Workshop::change(scratch / "w", rename_hub));
  EXPECT_FALSE(fs::exists(scratch / "elsewhere"));
  EXPECT_EQ(version_of(scratch / "w.version-1.backup-2"), 1);
}

TEST(ChangingAWorkshop, ChangesTheFileThatALinkLeadsTo) {
  const test::DemoFile demo;
  const test::Scratch elsewhere;
  fs::create_symlink(demo.path, elsewhere / "link");
  ASSERT_TRUE(Workshop::change(elsewhere / "link", rename_hub));
  EXPECT_TRUE(joint_of_slug(demo.open(), "pump/renamed").has_value());
  EXPECT_THAT(elsewhere.names(), ElementsAre("link"));
}

TEST(ChangingAWorkshop, IsRefusedWhileAnotherProgramChangesIt) {
  const test::DemoFile demo;
  SQLite::Database other(demo.path.string(), SQLite::OPEN_READWRITE);
  other.exec("BEGIN IMMEDIATE");
  const Problem problem = problem_of(Workshop::change(demo.path, rename_hub)); // after five seconds
  EXPECT_EQ(problem.trouble, Trouble::busy);
}

TEST(ReadingAWorkshop, SeesTheLogThroughALink) {
  const test::DemoFile demo;
  const test::Scratch elsewhere;
  fs::create_symlink(demo.path, elsewhere / "link");
  SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
  writer.exec("UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'");
  const std::string before = test::bytes_of(demo.path);
  EXPECT_EQ(joint_slugs(Workshop::open(elsewhere / "link").value()).front(), "pump/renamed");
  EXPECT_TRUE(test::bytes_of(demo.path) == before);
  EXPECT_THAT(elsewhere.names(), ElementsAre("link"));
}

TEST(ReadingAWorkshop, SeesOneStateWhileAnotherProgramWrites) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  const auto slugs = joint_slugs(workshop);
  ASSERT_TRUE(Workshop::change(demo.path, rename_hub));
  EXPECT_TRUE(joint_of_slug(workshop, slugs.front()).has_value());
  EXPECT_EQ(joint_slugs(demo.open()).front(), "pump/renamed");
}

// Killed while the log was moved into the file: its first page says how many pages there will be, and they are not
// there yet. The log has them all.
TEST(ReadingAWorkshop, GoesOnWhereTheMoveOfTheLogWasCutShort) {
  const test::DemoFile demo;
  const test::Scratch copy;
  const std::string old = test::bytes_of(demo.path);
  SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
  writer.exec("UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'; "
              "CREATE INDEX more ON joint (slug, name, thread); INSERT INTO meta VALUES ('x', hex(zeroblob(60000)))");
  fs::copy(demo.path.string() + "-wal", copy / "w-wal");
  writer.exec("PRAGMA wal_checkpoint(PASSIVE)");
  const std::string moved = test::bytes_of(demo.path);
  ASSERT_GT(moved.size(), old.size());
  test::write_bytes(copy / "w", moved.substr(0, 4096) + old.substr(4096)); // page size 4096 is SQLite's default
  const auto workshop = Workshop::open(copy / "w");
  ASSERT_TRUE(workshop.has_value()) << workshop.error().message;
  EXPECT_EQ(joint_slugs(*workshop).front(), "pump/renamed");
}

TEST(ReadingAWorkshop, LeavesAnUnfinishedChangeOfTheOtherModeAsItIs) {
  const test::DemoFile demo;
  const test::Scratch copy;
  {
    SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
    writer.exec("PRAGMA journal_mode = DELETE; PRAGMA cache_size = 1; BEGIN IMMEDIATE; "
                "UPDATE joint SET slug = slug || '-renamed'; "
                "CREATE TABLE filler (x); INSERT INTO filler SELECT hex(randomblob(500)) FROM joint, joint AS other");
    fs::copy(demo.path, copy / "w");
    fs::copy(demo.path.string() + "-journal", copy / "w-journal");
  }
  const std::string before = test::bytes_of(copy / "w");
  ASSERT_THAT(before, HasSubstr("-renamed")); // else it would prove nothing
  EXPECT_EQ(joint_slugs(Workshop::open(copy / "w").value()).front(), "pump/clutch-hub");
  EXPECT_TRUE(test::bytes_of(copy / "w") == before);
  EXPECT_THAT(copy.names(), ElementsAre("w", "w-journal"));
}

TEST(ReadingAWorkshop, IsRefusedWhereAColumnIsMissing) {
  const test::DemoFile demo;
  {
    SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
    writer.exec("ALTER TABLE joint RENAME COLUMN thread TO threat");
  }
  const Problem problem = problem_of(Workshop::open(demo.path));
  EXPECT_EQ(problem.code, "damaged");
  EXPECT_THAT(problem.message, HasSubstr("its tables are not those of version"));
}

// A table of somebody's own does no harm; a trigger would act for us.
TEST(ChangingAWorkshop, IsRefusedWhereATriggerWouldActToo) {
  const test::DemoFile demo;
  {
    SQLite::Database writer(demo.path.string(), SQLite::OPEN_READWRITE);
    writer.exec("CREATE TRIGGER mine AFTER UPDATE ON joint BEGIN DELETE FROM joint; END");
  }
  EXPECT_EQ(problem_of(Workshop::change(demo.path, rename_hub)).code, "damaged");
}

} // namespace
} // namespace clampwright::specdb
