// SPDX-License-Identifier: GPL-3.0-or-later
//
// Busy files, full disks, and the end by a signal.
#include <gmock/gmock.h>

#include "tests/cli/process.hpp"
#include "tests/cli/workshop_files.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::HasSubstr;

// Holds a workshop so that nobody else can even read it.
struct Held {
  test::Scratch scratch;
  fs::path file = scratch / "w";
  SQLite::Database holder;
  Held() : holder(made()) { holder.exec("PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE"); }

 private:
  [[nodiscard]] SQLite::Database made() const {
    make_demo(file);
    return written(file);
  }
};

// The program waits for five seconds first.
TEST(BusyWorkshop, EndsAReaderWith75) {
  const Held held;
  Program show({"--workshop", held.file.string(), "show", "pump/clutch-hub"});
  Program find({"--workshop", held.file.string(), "find", "nut", "--json"});
  Program demo({"--workshop", held.file.string(), "demo"});
  show.start();
  find.start();
  demo.start();
  const Finished shown = show.finish();
  EXPECT_EQ(shown.exit(), 75);
  EXPECT_THAT(shown.err, HasSubstr("another program is writing the workshop file"));
  const Finished found = find.finish();
  EXPECT_EQ(found.exit(), 75);
  EXPECT_EQ(nlohmann::json::parse(found.out)["error"]["code"], "busy");
  EXPECT_EQ(demo.finish().exit(), 75);
}

TEST(BusyWorkshop, DoesNotHinderTheCalculators) {
  const Held held;
  EXPECT_EQ(Program({"--workshop", held.file.string(), "clamp", "M10", "--torque", "45Nm"}).run().exit(), 0);
}

TEST(BusyWorkshop, IsReadOnceItIsFree) {
  Held held;
  Program show({"--workshop", held.file.string(), "show", "pump/clutch-hub"});
  show.start();
  std::this_thread::sleep_for(std::chrono::milliseconds(300));
  held.holder.exec("COMMIT");
  EXPECT_EQ(show.finish().exit(), 0);
}

TEST(Interrupt, EndsTheProgramByItsSignal) {
  const Held held; // keeps it waiting
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
    Program show({"--workshop", held.file.string(), "show", "pump/clutch-hub"});
    const pid_t child = show.start();
    std::this_thread::sleep_for(std::chrono::milliseconds(500));
    ::kill(child, signal);
    const Finished finished = show.finish();
    ASSERT_TRUE(WIFSIGNALED(finished.status)) << finished.err;
    EXPECT_EQ(WTERMSIG(finished.status), signal);
    EXPECT_EQ(finished.out, "");
  }
}

// A limit of the file size stands for a full disk: SQLite is told the same.
bool little_space() {
  const rlimit limit{20000, 20000};
  (void)::signal(SIGXFSZ, SIG_IGN);
  return ::setrlimit(RLIMIT_FSIZE, &limit) == 0;
}

TEST(FullDisk, EndsTheDemoWith74AndNothingLeft) {
  const test::Scratch scratch;
  const Finished finished = Program({"--workshop", (scratch / "w").string(), "demo"}).first(little_space).run();
  EXPECT_EQ(finished.exit(), 74) << finished.err;
  EXPECT_THAT(finished.err, HasSubstr("free some space"));
  EXPECT_TRUE(scratch.names().empty());
}

TEST(FullDisk, DoesNotHinderAReader) {
  const test::Scratch scratch;
  make_demo(scratch / "w");
  const Finished finished =
      Program({"--workshop", (scratch / "w").string(), "show", "pump/clutch-hub"}).first(little_space).run();
  EXPECT_EQ(finished.exit(), 0) << finished.err;
  EXPECT_THAT(finished.err, HasSubstr("no room"));
}

// Every size at which the disk may become full: never a half-made workshop under the name.
TEST(FullDisk, NeverLeavesHalfAWorkshop) {
  for (rlim_t size = 0; size < 600000; size += 37000) {
    const test::Scratch scratch;
    const auto limited = [size] {
      const rlimit limit{size, size};
      (void)::signal(SIGXFSZ, SIG_IGN);
      return ::setrlimit(RLIMIT_FSIZE, &limit) == 0;
    };
    const Finished finished = Program({"--workshop", (scratch / "w").string(), "demo"}).first(limited).run();
    if (finished.exit() == 0)
      EXPECT_EQ(Program({"--workshop", (scratch / "w").string(), "vet"}).run().exit(), 1) << size;
    else
      EXPECT_TRUE(finished.exit() == 74 && scratch.names().empty()) << size << ": " << finished.exit() << finished.err;
  }
}

} // namespace
} // namespace clampwright::cli
