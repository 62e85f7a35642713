// SPDX-License-Identifier: GPL-3.0-or-later
#include <sys/stat.h>

#include <filesystem>
#include <stdexcept>

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/schema/workshop_schema.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/workshop_file.hpp"
#include "tests/core/problem_of.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::specdb {
namespace {

namespace fs = std::filesystem;
using test::problem_of;
using testing::ElementsAre;
using testing::IsEmpty;

void nothing(SQLite::Database&) {}

mode_t mode_of(const fs::path& path) {
  struct stat status {};
  if (::stat(path.c_str(), &status) != 0) throw std::runtime_error(path.string());
  return status.st_mode & 07777;
}

TEST(NewWorkshop, IsForItsOwnerOnly) {
  const test::Scratch scratch;
  const mode_t before = ::umask(0);
  const auto made = Workshop::create(scratch / "w.clampwright", nothing);
  ::umask(before);
  ASSERT_TRUE(made.has_value()) << made.error().message;
  EXPECT_EQ(mode_of(scratch / "w.clampwright"), mode_t{0600});
}

TEST(NewWorkshop, MakesFoldersForItsOwnerOnly) {
  const test::Scratch scratch;
  const mode_t before = ::umask(0);
  const auto made = Workshop::create(scratch / "a/b/w.clampwright", nothing);
  ::umask(before);
  ASSERT_TRUE(made.has_value()) << made.error().message;
  EXPECT_EQ(mode_of(scratch / "a"), mode_t{0700});
  EXPECT_EQ(mode_of(scratch / "a/b"), mode_t{0700});
}

TEST(NewWorkshop, LeavesAFolderThatIsThereAsItIs) {
  const test::Scratch scratch;
  fs::create_directory(scratch / "a");
  fs::permissions(scratch / "a", fs::perms(0755));
  ASSERT_TRUE(Workshop::create(scratch / "a/w.clampwright", nothing).has_value());
  EXPECT_EQ(mode_of(scratch / "a"), mode_t{0755});
}

TEST(NewWorkshop, LeavesNothingBesideIt) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w.clampwright", nothing).has_value());
  EXPECT_THAT(scratch.names(), ElementsAre("w.clampwright"));
}

TEST(NewWorkshop, MayHaveAnyName) {
  const test::Scratch scratch;
  for (const char* name : {"with space", "50%#?.clampwright", "Schraubenöffner", "'quoted\"", "-n"}) {
    ASSERT_TRUE(Workshop::create(scratch / name, nothing).has_value()) << name;
    EXPECT_TRUE(Workshop::open(scratch / name).has_value()) << name;
  }
}

TEST(NewWorkshop, IsMarkedAsOurs) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", nothing).has_value());
  const auto workshop = Workshop::open(scratch / "w");
  ASSERT_TRUE(workshop.has_value());
  Query id(workshop->connection(), "PRAGMA application_id");
  Query version(workshop->connection(), "PRAGMA user_version");
  ASSERT_TRUE(id.next() && version.next());
  EXPECT_EQ(id.integer(0), k_workshop_application_id);
  EXPECT_EQ(version.integer(0), k_workshop_version);
}

// "Clpw" in ASCII, at offset 68 of the file (sqlite.org/fileformat.html, 1.3.16; from memory).
TEST(NewWorkshop, IsToldFromOtherDatabasesByItsBytes) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", nothing).has_value());
  EXPECT_EQ(test::bytes_of(scratch / "w").substr(68, 4), "Clpw");
}

TEST(NewWorkshop, HoldsWhatItWasFilledWith) {
  const test::Scratch scratch;
  const auto made = Workshop::create(scratch / "w", [](SQLite::Database& database) {
    run(database, "INSERT INTO meta VALUES ('workshop', ?)", std::string_view("Ours"));
  });
  ASSERT_TRUE(made.has_value());
  const auto workshop = Workshop::open(scratch / "w");
  ASSERT_TRUE(workshop.has_value());
  Query name(workshop->connection(), "SELECT value FROM meta WHERE key = 'workshop'");
  ASSERT_TRUE(name.next());
  EXPECT_EQ(name.text(0), "Ours");
}

TEST(NewWorkshop, IsNotInventedUnlessSaid) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", nothing).has_value());
  EXPECT_FALSE(Workshop::open(scratch / "w")->is_invented());
}

TEST(NewWorkshop, IsRefusedWhereTheNameIsTaken) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "w", "an old file");
  const Problem problem = problem_of(Workshop::create(scratch / "w", nothing));
  EXPECT_EQ(problem.trouble, Trouble::cannot_create);
  EXPECT_EQ(problem.code, "cannot-create");
}

TEST(NewWorkshop, DoesNotTouchAFileOfItsName) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "w", "an old file");
  (void)Workshop::create(scratch / "w", nothing);
  EXPECT_EQ(test::bytes_of(scratch / "w"), "an old file");
  EXPECT_THAT(scratch.names(), ElementsAre("w"));
}

TEST(NewWorkshop, DoesNotTouchAWorkshopOfItsName) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", nothing).has_value());
  const std::string before = test::bytes_of(scratch / "w");
  EXPECT_FALSE(Workshop::create(scratch / "w", nothing).has_value());
  EXPECT_TRUE(test::bytes_of(scratch / "w") == before);
}

TEST(NewWorkshop, DoesNotFollowALinkThatLeadsNowhere) {
  const test::Scratch scratch;
  fs::create_symlink(scratch / "elsewhere", scratch / "w");
  EXPECT_EQ(problem_of(Workshop::create(scratch / "w", nothing)).trouble, Trouble::cannot_create);
  EXPECT_THAT(scratch.names(), ElementsAre("w"));
}

TEST(NewWorkshop, IsRefusedInsideAFile) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "file", "x");
  EXPECT_EQ(problem_of(Workshop::create(scratch / "file/w", nothing)).trouble, Trouble::cannot_create);
  EXPECT_EQ(problem_of(Workshop::create(scratch / "file/a/w", nothing)).trouble, Trouble::cannot_create);
  EXPECT_EQ(test::bytes_of(scratch / "file"), "x");
}

TEST(NewWorkshop, IsRefusedWithItsNameInPlaceOfAFolder) {
  const test::Scratch scratch;
  fs::create_directory(scratch / "w");
  EXPECT_EQ(problem_of(Workshop::create(scratch / "w", nothing)).trouble, Trouble::cannot_create);
  EXPECT_THAT(scratch.names(), ElementsAre("w"));
}

TEST(NewWorkshop, LeavesNothingIfFillingFails) {
  const test::Scratch scratch;
  EXPECT_THROW((void)Workshop::create(scratch / "w", [](SQLite::Database&) { throw std::runtime_error("no more"); }),
               std::runtime_error);
  EXPECT_THAT(scratch.names(), IsEmpty());
}

TEST(NewWorkshop, TurnsAFaultOfTheDatabaseIntoOurOwn) {
  const test::Scratch scratch;
  const auto fill = [](SQLite::Database& database) { run(database, "INSERT INTO meta VALUES ('key', NULL)"); };
  EXPECT_THROW((void)Workshop::create(scratch / "w", fill), DatabaseError);
  EXPECT_THAT(scratch.names(), IsEmpty());
}

TEST(NewWorkshop, KeepsWhatIsBesideItIfFillingFails) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "w-wal", "a stranger's");
  EXPECT_THROW((void)Workshop::create(scratch / "w", [](SQLite::Database&) { throw std::runtime_error("no more"); }),
               std::runtime_error);
  EXPECT_EQ(test::bytes_of(scratch / "w-wal"), "a stranger's");
}

} // namespace
} // namespace clampwright::specdb
