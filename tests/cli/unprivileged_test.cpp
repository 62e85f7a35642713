// SPDX-License-Identifier: GPL-3.0-or-later
//
// Places where somebody may read but not write, or not even read. Root passes every test of permissions, so the program
// runs as nobody where the test runs as root; the child ends with 99 where it is still root.
#include <gmock/gmock.h>

#include "tests/cli/process.hpp"
#include "tests/cli/workshop_files.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

// A folder that anybody may enter.
struct Place {
  test::Scratch scratch;
  fs::path file = scratch / "w";
  Place() { fs::permissions(scratch.folder(), fs::perms(0755)); }
  ~Place() { fs::permissions(scratch.folder(), fs::perms(0700)); }
  Place(const Place&) = delete;
  Place& operator=(const Place&) = delete;
  // Nobody may write here any more.
  void close() const {
    for (const auto& entry : fs::directory_iterator(scratch.folder()))
      fs::permissions(entry.path(), fs::perms(0444));
    fs::permissions(scratch.folder(), fs::perms(0555));
  }
};

Finished as_nobody(const fs::path& file, Arguments arguments) {
  arguments.insert(arguments.begin(), {"--workshop", file.string()});
  return Program(arguments).as_nobody().run();
}

TEST(Nobody, IsNotRoot) {
  int status = 0;
  const pid_t child = ::fork();
  if (child == 0) ::_exit(become_nobody() && ::geteuid() != 0 && ::getuid() != 0 ? 0 : 1);
  ::waitpid(child, &status, 0);
  ASSERT_TRUE(WIFEXITED(status));
  EXPECT_EQ(WEXITSTATUS(status), 0);
}

TEST(ReadOnlyPlace, IsReadAndNamed) {
  const Place place;
  make_demo(place.file);
  place.close();
  const auto before = contents(place.scratch.folder());
  for (const Arguments& reader : {Arguments{"show", "pump/clutch-hub"}, {"find", "nut"}, {"vet"}, {"demo"}}) {
    const Finished finished = as_nobody(place.file, reader);
    EXPECT_EQ(finished.exit(), reader[0] == "vet" ? 1 : 0) << reader[0] << finished.err; // the demo has a wrong figure
    EXPECT_THAT(finished.err, HasSubstr("read-only")) << reader[0];
  }
  EXPECT_TRUE(contents(place.scratch.folder()) == before);
}

TEST(ReadOnlyPlace, IsNotNamedWhereHintsAreNotWanted) {
  const Place place;
  make_demo(place.file);
  place.close();
  for (const Arguments& reader : {Arguments{"show", "pump/clutch-hub"}, {"find", "nut"}, {"vet"}, {"demo"}}) {
    Arguments quiet = reader;
    quiet.emplace_back("--quiet");
    EXPECT_EQ(as_nobody(place.file, quiet).err, "") << reader[0];
  }
}

TEST(ReadOnlyPlace, GivesTheSameAnswerAsAnyOther) {
  const Place place;
  make_demo(place.file);
  const Arguments show = {"--workshop", place.file.string(), "show", "pump/head-nuts"};
  const std::string out = Program(show).run().out;
  place.close();
  EXPECT_EQ(Program(show).as_nobody().run().out, out);
}

TEST(ReadOnlyPlaceWithALog, ShowsWhatStandsInTheLogAlone) {
  const Place place;
  make_with_log(place.file);
  place.close();
  const auto before = contents(place.scratch.folder());
  const Finished finished = as_nobody(place.file, {"show", "pump/renamed"});
  EXPECT_EQ(finished.exit(), 0) << finished.err;
  EXPECT_THAT(finished.err, HasSubstr("a copy of both was read"));
  const Finished json = as_nobody(place.file, {"show", "pump/renamed", "--json"});
  EXPECT_EQ(nlohmann::json::parse(json.out)["result"]["joint"], "pump/renamed");
  EXPECT_TRUE(contents(place.scratch.folder()) == before);
}

// The log of a program that was killed after it had committed.
TEST(ReadOnlyPlaceWithALog, ShowsWhatAKilledWriterHadCommitted) {
  const Place place;
  make_demo(place.file);
  int ready[2];
  ASSERT_EQ(::pipe(ready), 0);
  const pid_t writer = ::fork();
  if (writer == 0) {
    SQLite::Database database(written(place.file));
    database.exec("UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'");
    (void)!::write(ready[1], "x", 1);
    for (;;)
      ::pause();
  }
  char x = 0;
  ASSERT_EQ(::read(ready[0], &x, 1), 1);
  ::close(ready[0]);
  ::close(ready[1]);
  ::kill(writer, SIGKILL);
  ::waitpid(writer, nullptr, 0);
  place.close();
  const auto before = contents(place.scratch.folder());
  const Finished finished = as_nobody(place.file, {"find", "renamed"});
  EXPECT_EQ(finished.exit(), 0) << finished.err;
  EXPECT_EQ(as_nobody(place.file, {"show", "pump/renamed"}).exit(), 0);
  EXPECT_TRUE(contents(place.scratch.folder()) == before);
}

TEST(ReadOnlyPlaceWithALog, ShowsItThroughALinkFromElsewhereToo) {
  const Place place;
  make_with_log(place.file);
  place.close();
  const Place other;
  fs::create_symlink(place.file, other.scratch / "link");
  fs::permissions(other.scratch.folder(), fs::perms(0777));
  EXPECT_EQ(as_nobody(other.scratch / "link", {"show", "pump/renamed"}).exit(), 0);
  EXPECT_EQ(other.scratch.names().size(), 1U);
}

TEST(ReadOnlyPlaceWithALog, LeavesNoCopyBehind) {
  const Place place;
  make_with_log(place.file);
  place.close();
  const test::Scratch temporary;
  fs::permissions(temporary.folder(), fs::perms(0777));
  const Finished finished = Program({"--workshop", place.file.string(), "show", "pump/renamed"})
                                .environment("TMPDIR=" + temporary.folder().string())
                                .as_nobody()
                                .run();
  EXPECT_EQ(finished.exit(), 0) << finished.err;
  EXPECT_TRUE(temporary.names().empty());
}

TEST(ReadOnlyPlaceWithALog, IsReadWhereTheTemporaryFolderIsNoneOrCannotBeWritten) {
  const Place place;
  make_with_log(place.file);
  place.close();
  for (const char* temporary : {"/nowhere", "/proc", "/dev/null", "relative", ""}) {
    const Finished finished = Program({"--workshop", place.file.string(), "show", "pump/renamed"})
                                  .environment(std::string("TMPDIR=") + temporary)
                                  .as_nobody()
                                  .run();
    EXPECT_EQ(finished.exit(), 0) << temporary << finished.err;
  }
}

TEST(ReadOnlyPlaceWithALog, IsRefusedWhereTheLogCannotBeRead) {
  const Place place;
  make_with_log(place.file);
  place.close();
  fs::permissions(place.file.string() + "-wal", fs::perms(0));
  const Finished finished = as_nobody(place.file, {"show", "pump/renamed"});
  EXPECT_EQ(finished.exit(), 77) << finished.err;
  EXPECT_THAT(finished.err, HasSubstr("no private copy"));
}

// SQLite passes over a log that is not its own, and so do we.
TEST(ReadOnlyPlaceWithALog, IsReadAsItStandsWhereTheLogIsNone) {
  for (const std::string& log : {std::string(), std::string("nonsense"), std::string(40000, 'x')}) {
    const Place place;
    make_demo(place.file);
    test::write_bytes(place.file.string() + "-wal", log);
    place.close();
    const Finished finished = as_nobody(place.file, {"show", "pump/clutch-hub"});
    EXPECT_EQ(finished.exit(), 0) << log.size() << finished.err;
  }
}

// The log of another database, which would be played over this one.
TEST(ReadOnlyPlaceWithALog, IsRefusedWhereTheLogIsThatOfAnother) {
  const Place place;
  make_demo(place.file);
  const test::Scratch elsewhere;
  SQLite::Database other(written(elsewhere / "o"));
  other.exec("PRAGMA journal_mode = WAL; CREATE TABLE notes (text); INSERT INTO notes VALUES ('milk')");
  fs::copy(elsewhere / "o-wal", place.file.string() + "-wal");
  place.close();
  const Finished finished = as_nobody(place.file, {"show", "pump/clutch-hub"});
  EXPECT_TRUE(finished.exit() == 65 || finished.exit() == 78) << finished.exit();
}

TEST(ReadOnlyPlaceWithALog, IsRefusedWhereTheCopyDoesNotFit) {
  const Place place;
  make_with_log(place.file);
  place.close();
  const auto little_space = [] {
    const rlimit limit{16384, 16384};
    (void)::signal(SIGXFSZ, SIG_IGN);
    return become_nobody() && ::setrlimit(RLIMIT_FSIZE, &limit) == 0;
  };
  const Finished finished =
      Program({"--workshop", place.file.string(), "show", "pump/renamed"}).first(little_space).run();
  EXPECT_EQ(finished.exit(), 74) << finished.err;
}

// A program in the other mode of SQLite's died in the middle of a change: what stands in the file was never committed.
TEST(ReadOnlyPlaceWithAJournal, ShowsOnlyWhatWasCommitted) {
  const Place place;
  const test::Scratch elsewhere;
  make_demo(elsewhere / "w");
  {
    SQLite::Database writer(written(elsewhere / "w"));
    writer.exec("PRAGMA journal_mode = DELETE; PRAGMA cache_size = 1; PRAGMA cache_spill = 1; BEGIN IMMEDIATE; "
                "UPDATE joint SET slug = slug || '-renamed'; "
                "CREATE TABLE filler (x); INSERT INTO filler SELECT hex(randomblob(500)) FROM joint, joint AS other");
    fs::copy(elsewhere / "w", place.file);
    fs::copy(elsewhere / "w-journal", place.file.string() + "-journal");
  }
  ASSERT_THAT(test::bytes_of(place.file), HasSubstr("-renamed")); // else it would prove nothing
  place.close();
  const auto before = contents(place.scratch.folder());
  EXPECT_EQ(as_nobody(place.file, {"show", "pump/clutch-hub"}).exit(), 0);
  EXPECT_EQ(as_nobody(place.file, {"show", "pump/clutch-hub-renamed"}).exit(), 66);
  EXPECT_THAT(as_nobody(place.file, {"vet"}).err, HasSubstr("unfinished"));
  EXPECT_TRUE(contents(place.scratch.folder()) == before);
}

TEST(ForbiddenFile, IsRefusedWithItsReason) {
  const Place place;
  make_demo(place.file);
  fs::permissions(place.file, fs::perms(0));
  for (const Arguments& reader : {Arguments{"show", "pump/clutch-hub"}, {"find", "nut"}, {"vet"}}) {
    const Finished finished = as_nobody(place.file, reader);
    EXPECT_EQ(finished.exit(), 77) << reader[0];
    EXPECT_THAT(finished.err, HasSubstr("cannot be read: Permission denied")) << reader[0];
  }
  EXPECT_EQ(as_nobody(place.file, {"demo"}).exit(), 73);
}

TEST(ForbiddenFile, DoesNotHinderTheCalculators) {
  const Place place;
  make_demo(place.file);
  fs::permissions(place.file, fs::perms(0));
  const Arguments clamp = {"clamp", "M10", "--torque", "45Nm"};
  EXPECT_EQ(as_nobody(place.file, clamp).out, Program(clamp).run().out);
}

TEST(ForbiddenFolder, IsRefusedWithItsReason) {
  const Place place;
  fs::create_directory(place.scratch / "f");
  make_demo(place.scratch / "f/w");
  fs::permissions(place.scratch / "f", fs::perms(0));
  for (const Arguments& reader : {Arguments{"show", "pump/clutch-hub"}, {"find", "nut"}, {"vet"}, {"demo"}}) {
    const Finished finished = as_nobody(place.scratch / "f/w", reader);
    EXPECT_EQ(finished.exit(), 77) << reader[0] << finished.err;
    EXPECT_THAT(finished.err, HasSubstr("Permission denied")) << reader[0];
  }
  fs::permissions(place.scratch / "f", fs::perms(0700));
}

TEST(ForbiddenFolder, IsNoPlaceForTheUsualWorkshop) {
  const Place place;
  fs::create_directory(place.scratch / "f");
  for (const auto mode : {fs::perms(0), fs::perms(0555)}) {
    fs::permissions(place.scratch / "f", mode);
    const Finished finished =
        Program({"demo"}).environment("XDG_DATA_HOME=" + (place.scratch / "f").string()).as_nobody().run();
    EXPECT_EQ(finished.exit(), 77) << finished.err;
    EXPECT_THAT(finished.err, HasSubstr("cannot be made: Permission denied"));
  }
  fs::permissions(place.scratch / "f", fs::perms(0700));
  EXPECT_TRUE(fs::is_empty(place.scratch / "f"));
}

// As in /tmp: everybody may write in the folder, nobody may take away or change what is another's.
TEST(AnothersFile, IsReadInAFolderForAll) {
  const Place place;
  make_demo(place.file);
  fs::permissions(place.file, fs::perms(0644));
  fs::permissions(place.scratch.folder(), fs::perms(01777));
  const auto before = contents(place.scratch.folder());
  const Finished finished = as_nobody(place.file, {"show", "pump/clutch-hub"});
  EXPECT_EQ(finished.exit(), 0) << finished.err;
  if (::geteuid() == 0) {
    EXPECT_THAT(finished.err, HasSubstr("read-only"));
  }
  EXPECT_TRUE(contents(place.scratch.folder()) == before);
}

} // namespace
} // namespace clampwright::cli
