// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whoever keeps a workshop open learns what others did to the file, and is in nobody's way.
#include "specdb/workshop/workshop_watch.hpp"

#include <sys/wait.h>
#include <unistd.h>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Transaction.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/workshop_file.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::specdb {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;

void make(const fs::path& path) {
  ASSERT_TRUE(Workshop::create(path, [](SQLite::Database&) {}).has_value());
}

Result<void> note(const fs::path& path, const char* key) {
  return Workshop::change(path, [&](SQLite::Database& database) -> Result<void> {
    run(database, "INSERT INTO meta VALUES (?, 'x')", key);
    return {};
  });
}

// Without a log: the file itself changes with every commit.
void put_log_away(const fs::path& path) {
  SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
  database.exec("PRAGMA journal_mode = DELETE");
}

// A process of its own, begun before any connection is there, that does its work when it is told to.
class OtherProcess {
 public:
  template<class Work>
  explicit OtherProcess(Work work) {
    int ends[2];
    if (::pipe(ends) != 0) throw std::runtime_error("no pipe");
    child_ = ::fork();
    if (child_ == 0) {
      ::close(ends[1]);
      char told = 0;
      const bool go = ::read(ends[0], &told, 1) == 1;
      ::_exit(go && work() ? 0 : 1);
    }
    ::close(ends[0]);
    tell_ = ends[1];
  }
  ~OtherProcess() {
    ::close(tell_);
    if (child_ > 0) ::waitpid(child_, nullptr, 0);
  }
  OtherProcess(const OtherProcess&) = delete;
  OtherProcess& operator=(const OtherProcess&) = delete;

  // True where its work was done.
  bool do_it() {
    if (::write(tell_, "x", 1) != 1) return false;
    int status = -1;
    const bool ended = ::waitpid(child_, &status, 0) == child_;
    child_ = -1;
    return ended && WIFEXITED(status) && WEXITSTATUS(status) == 0;
  }

 private:
  pid_t child_ = -1;
  int tell_ = -1;
};

TEST(Watch, SeesNothingWhereNothingHappens) {
  const test::Scratch scratch;
  make(scratch / "w");
  WorkshopWatch watch(scratch / "w");
  EXPECT_TRUE(watch.is_there());
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  ASSERT_TRUE(Workshop::open(scratch / "w").has_value()); // reading is no change
  EXPECT_EQ(watch.look(), WorkshopChange::none);
}

TEST(Watch, SeesAChangeOnce) {
  const test::Scratch scratch;
  make(scratch / "w");
  WorkshopWatch watch(scratch / "w");
  ASSERT_TRUE(note(scratch / "w", "one").has_value());
  EXPECT_EQ(watch.look(), WorkshopChange::written);
  EXPECT_EQ(watch.look(), WorkshopChange::none);
}

// Faster than the clock of the file system ticks, and of one size.
TEST(Watch, SeesEveryOneOfManyChanges) {
  for (const bool has_log : {true, false}) {
    const test::Scratch scratch;
    make(scratch / "w");
    if (!has_log) put_log_away(scratch / "w");
    SQLite::Database writer((scratch / "w").string(), SQLite::OPEN_READWRITE);
    writer.exec("PRAGMA synchronous = OFF; INSERT INTO meta VALUES ('count', '1000')");
    WorkshopWatch watch(scratch / "w");
    for (int i = 0; i < 200; ++i) {
      writer.exec("UPDATE meta SET value = value + 1 WHERE key = 'count'");
      ASSERT_EQ(watch.look(), WorkshopChange::written) << i << " with a log: " << has_log;
    }
    EXPECT_EQ(watch.look(), WorkshopChange::none) << "with a log: " << has_log;
  }
}

TEST(Watch, SeesWhatAnotherProcessChanges) {
  for (const bool has_log : {true, false}) {
    const test::Scratch scratch;
    make(scratch / "w");
    if (!has_log) put_log_away(scratch / "w");
    OtherProcess other([&] { return note(scratch / "w", "from elsewhere").has_value(); });
    WorkshopWatch watch(scratch / "w");
    EXPECT_EQ(watch.look(), WorkshopChange::none);
    ASSERT_TRUE(other.do_it());
    EXPECT_EQ(watch.look(), WorkshopChange::written) << "with a log: " << has_log;
    EXPECT_EQ(watch.look(), WorkshopChange::none) << "with a log: " << has_log;
  }
}

TEST(Watch, SeesNoChangeThatWasUndone) {
  const test::Scratch scratch;
  make(scratch / "w");
  WorkshopWatch watch(scratch / "w");
  const auto refused = Workshop::change(scratch / "w", [](SQLite::Database& database) -> Result<void> {
    run(database, "INSERT INTO meta VALUES ('half', 'written')");
    return refuse(Trouble::usage, "no", "no", {}, "no");
  });
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(watch.look(), WorkshopChange::none);
}

TEST(Watch, SeesAFileReplacedByRenameAndThenWatchesTheNewOne) {
  const test::Scratch scratch;
  make(scratch / "w");
  make(scratch / "new");
  WorkshopWatch watch(scratch / "w");
  fs::rename(scratch / "new", scratch / "w");
  EXPECT_EQ(watch.look(), WorkshopChange::replaced);
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  ASSERT_TRUE(note(scratch / "w", "one").has_value());
  EXPECT_EQ(watch.look(), WorkshopChange::written);
}

// The connection to the old file must not put away the log of the new one.
TEST(Watch, LeavesTheLogOfAReplacingFileAlone) {
  const test::Scratch scratch;
  make(scratch / "w");
  make(scratch / "new");
  WorkshopWatch watch(scratch / "w");
  OtherProcess other([&]() -> bool {
    SQLite::Database writer((scratch / "w").string(), SQLite::OPEN_READWRITE);
    run(writer, "INSERT INTO meta VALUES ('kept', 'in the log')");
    ::_exit(0); // without putting its log away, as one that is still at work
  });
  fs::remove(scratch / "w-wal");
  fs::remove(scratch / "w-shm");
  fs::rename(scratch / "new", scratch / "w");
  ASSERT_TRUE(other.do_it());
  EXPECT_EQ(watch.look(), WorkshopChange::replaced);
  watch = WorkshopWatch(scratch / "elsewhere");
  const SQLite::Database database((scratch / "w").string());
  Query row(database, "SELECT value FROM meta WHERE key = 'kept'");
  ASSERT_TRUE(row.next());
  EXPECT_EQ(row.text(0), "in the log");
}

TEST(Watch, SeesAFileComeAndGo) {
  const test::Scratch scratch;
  WorkshopWatch watch(scratch / "w");
  EXPECT_FALSE(watch.is_there());
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  make(scratch / "w");
  EXPECT_EQ(watch.look(), WorkshopChange::appeared);
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  EXPECT_TRUE(watch.is_there());
  fs::remove(scratch / "w");
  EXPECT_EQ(watch.look(), WorkshopChange::gone);
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  EXPECT_FALSE(watch.is_there());
}

TEST(Watch, TakesAFolderOrADeadLinkForNoFile) {
  const test::Scratch scratch;
  fs::create_directory(scratch / "folder");
  fs::create_symlink(scratch / "nowhere", scratch / "link");
  for (const char* name : {"folder", "link"}) {
    WorkshopWatch watch(scratch / name);
    EXPECT_FALSE(watch.is_there()) << name;
    EXPECT_EQ(watch.look(), WorkshopChange::none) << name;
  }
}

TEST(Watch, FollowsALink) {
  const test::Scratch scratch;
  make(scratch / "one");
  make(scratch / "two");
  fs::create_symlink(scratch / "one", scratch / "w");
  WorkshopWatch watch(scratch / "w");
  ASSERT_TRUE(note(scratch / "one", "a").has_value());
  EXPECT_EQ(watch.look(), WorkshopChange::written);
  fs::remove(scratch / "w");
  fs::create_symlink(scratch / "two", scratch / "w");
  EXPECT_EQ(watch.look(), WorkshopChange::replaced);
}

TEST(Watch, SeesThatAFileWhichIsNoDatabaseWasWritten) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "w", "no database");
  WorkshopWatch watch(scratch / "w");
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  test::write_bytes(scratch / "w", "no database either");
  EXPECT_EQ(watch.look(), WorkshopChange::written);
  EXPECT_EQ(watch.look(), WorkshopChange::none);
}

TEST(Watch, KeepsNobodyFromWriting) {
  for (const bool has_log : {true, false}) {
    const test::Scratch scratch;
    make(scratch / "w");
    if (!has_log) put_log_away(scratch / "w");
    WorkshopWatch watch(scratch / "w");
    EXPECT_EQ(watch.look(), WorkshopChange::none);
    SQLite::Database writer((scratch / "w").string(), SQLite::OPEN_READWRITE);
    SQLite::Transaction all_to_itself(writer, SQLite::TransactionBehavior::EXCLUSIVE); // throws at once where it is not
    run(writer, "INSERT INTO meta VALUES ('a', 'x')");
    EXPECT_EQ(watch.look(), WorkshopChange::none) << "with a log: " << has_log; // not yet, and without waiting
    all_to_itself.commit();
    EXPECT_EQ(watch.look(), WorkshopChange::written) << "with a log: " << has_log;
  }
}

TEST(Watch, LeavesNothingBehindAndTheFileAsItWas) {
  for (const bool has_log : {true, false}) {
    const test::Scratch scratch;
    make(scratch / "w");
    if (!has_log) put_log_away(scratch / "w");
    const std::string before = test::bytes_of(scratch / "w");
    {
      WorkshopWatch watch(scratch / "w");
      EXPECT_EQ(watch.look(), WorkshopChange::none);
    }
    EXPECT_THAT(scratch.names(), ElementsAre("w")) << "with a log: " << has_log;
    EXPECT_EQ(test::bytes_of(scratch / "w"), before) << "with a log: " << has_log;
  }
}

TEST(Watch, PlaysNoJournalBackThatWasLeftBesideTheFile) {
  const test::Scratch scratch;
  make(scratch / "w");
  put_log_away(scratch / "w");
  test::write_bytes(scratch / "w-journal", "left by another");
  WorkshopWatch watch(scratch / "w");
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  EXPECT_EQ(test::bytes_of(scratch / "w-journal"), "left by another");
  // Nor one that comes later.
  fs::remove(scratch / "w-journal");
  (void)watch.look();
  test::write_bytes(scratch / "w-journal", "left by another");
  EXPECT_EQ(watch.look(), WorkshopChange::none);
  EXPECT_EQ(test::bytes_of(scratch / "w-journal"), "left by another");
}

TEST(Watch, LeavesALogAsItWas) {
  const test::Scratch scratch;
  make(scratch / "w");
  OtherProcess other([&]() -> bool {
    SQLite::Database writer((scratch / "w").string(), SQLite::OPEN_READWRITE);
    run(writer, "INSERT INTO meta VALUES ('kept', 'in the log')");
    ::_exit(0); // dies without putting its log away
  });
  ASSERT_TRUE(other.do_it());
  const std::string before = test::bytes_of(scratch / "w");
  const std::string log = test::bytes_of(scratch / "w-wal");
  {
    WorkshopWatch watch(scratch / "w");
    EXPECT_EQ(watch.look(), WorkshopChange::none);
  }
  EXPECT_EQ(test::bytes_of(scratch / "w"), before);
  EXPECT_EQ(test::bytes_of(scratch / "w-wal"), log);
}

} // namespace
} // namespace clampwright::specdb
