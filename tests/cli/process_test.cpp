// SPDX-License-Identifier: GPL-3.0-or-later
//
// What only the real program can show: its standard streams, its exit status, the death by a signal.
#include <gmock/gmock.h>

#include "tests/cli/run_cli.hpp"
#include "tests/cli/shell.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::HasSubstr;

TEST(Process, AnswersOnStandardOutputAlone) {
  const Ended ended = shell("\"$clampwright\" convert 2Nm N.mm 2>/dev/null");
  EXPECT_EQ(ended.status, 0);
  EXPECT_THAT(ended.out, HasSubstr("2000"));
}

TEST(Process, FailsWhereTheAnswerCannotBeWritten) {
  const TemporaryFolder folder;
  for (const char* arguments : {"convert 2Nm", "thread M8", "clamp M8 --torque 20Nm", "torque M8 --preload 9kN", "demo",
                                "find nut", "show pump/mounts", "--help", "--version", "clamp M8 --torque 20 --json"}) {
    const Ended full = shell(std::string("\"$clampwright\" ") + arguments + " 2>&1 >/dev/full", folder.path());
    EXPECT_EQ(full.status, 74) << arguments;
    EXPECT_THAT(full.out, HasSubstr("cannot be written")) << arguments;
    EXPECT_EQ(shell(std::string("\"$clampwright\" ") + arguments + " >&- 2>/dev/null", folder.path()).status, 74)
        << arguments;
  }
}

TEST(Process, DoesNotWriteItsAnswerIntoTheWorkshopWhereStandardOutputIsClosed) {
  const TemporaryFolder folder;
  EXPECT_EQ(shell("\"$clampwright\" demo >&- 2>/dev/null", folder.path()).status, 74);
  EXPECT_EQ(shell("\"$clampwright\" show pump/mounts", folder.path()).status, 0);
}

TEST(Process, DiesQuietlyOfAClosedPipe) {
  // The reader is gone before the program writes.
  const Ended ended = shell("{ { sleep 0.2; \"$clampwright\" clamp --help; echo $? >&3; } | true; } 3>&1");
  EXPECT_EQ(ended.out, "141\n"); // 128 + SIGPIPE, and not a word
}

TEST(Process, LeavesNothingButTheWorkshopBehind) {
  const TemporaryFolder folder;
  EXPECT_EQ(shell("\"$clampwright\" demo >/dev/null 2>&1 && \"$clampwright\" find nut >/dev/null && ls -A "
                  "\"$data/clampwright\"",
                  folder.path())
                .out,
            "workshop.clampwright\n");
}

TEST(Process, KeepsTheWorkshopToItsOwner) {
  const TemporaryFolder folder;
  const Ended ended = shell("umask 022; export XDG_DATA_HOME=\"$data/new\"; \"$clampwright\" demo >/dev/null 2>&1; "
                            "stat -c %a \"$data/new/clampwright\" \"$data/new/clampwright/workshop.clampwright\"",
                            folder.path());
  EXPECT_EQ(ended.out, "700\n600\n");
}

TEST(Process, GivesTheSameAnswerInEveryLocale) {
  const std::string c = shell("LC_ALL=C \"$clampwright\" clamp M10 --class 8.8 --torque 45.5Nm --json").out;
  const std::string german = "export LOCPATH='" CLAMPWRIGHT_BUILD_DIR "/tests/locales' LC_ALL=de_DE.UTF-8; ";
  EXPECT_EQ(shell(german + "locale decimal_point").out, ",\n"); // else it would prove nothing
  EXPECT_EQ(shell(german + "\"$clampwright\" clamp M10 --class 8.8 --torque 45.5Nm --json").out, c);
  EXPECT_THAT(c, HasSubstr("45.5"));
}

TEST(Process, IgnoresARelativeDataHome) {
  const TemporaryFolder folder;
  const Ended ended =
      shell("cd \"$data\"; HOME=\"$data/home\" XDG_DATA_HOME=relative \"$clampwright\" demo >/dev/null 2>&1; ls -A",
            folder.path());
  EXPECT_EQ(ended.out, "home\n");
}

} // namespace
} // namespace clampwright::cli
