// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/files/write_file.hpp"

#include <gtest/gtest.h>

#include <csignal>
#include <filesystem>

#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include "tests/specdb/scratch.hpp"

namespace clampwright::specdb {
namespace {

namespace fs = std::filesystem;

Trouble trouble(const fs::path& path, IfThere if_there) {
  const auto done = write_file(path, "new", if_there);
  EXPECT_FALSE(done.has_value());
  return done ? Trouble::internal : done.error().trouble;
}

} // namespace

TEST(WriteFile, MakesAFileAndLeavesNothingBeside) {
  const test::Scratch scratch;
  ASSERT_TRUE(write_file(scratch / "chart.html", "a\r\nb", IfThere::refuse));
  EXPECT_EQ(test::bytes_of(scratch / "chart.html"), "a\r\nb");
  EXPECT_EQ(scratch.names().size(), 1U);
}

TEST(WriteFile, LeavesAFileThatIsThereAsItIs) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "chart.csv", "old");
  EXPECT_EQ(trouble(scratch / "chart.csv", IfThere::refuse), Trouble::cannot_create);
  EXPECT_EQ(test::bytes_of(scratch / "chart.csv"), "old");
  EXPECT_EQ(scratch.names().size(), 1U);
}

TEST(WriteFile, ReplacesAFileWhereItMayAndKeepsItsPermissions) {
  const test::Scratch scratch;
  const fs::path path = scratch / "chart.csv";
  test::write_bytes(path, "old");
  fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write);
  ASSERT_TRUE(write_file(path, "new", IfThere::replace));
  EXPECT_EQ(test::bytes_of(path), "new");
  EXPECT_EQ(fs::status(path).permissions(), fs::perms::owner_read | fs::perms::owner_write);
  EXPECT_EQ(scratch.names().size(), 1U);
}

TEST(WriteFile, FollowsALink) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "real", "old");
  fs::create_symlink("real", scratch / "link");
  ASSERT_TRUE(write_file(scratch / "link", "new", IfThere::replace));
  EXPECT_TRUE(fs::is_symlink(scratch / "link"));
  EXPECT_EQ(test::bytes_of(scratch / "real"), "new");
}

// A limit on the size of files stands for a full disk.
TEST(WriteFile, LeavesTheOldFileWhereTheNewOneDoesNotFit) {
  const test::Scratch scratch;
  test::write_bytes(scratch / "chart.csv", "old");
  const auto with_little_space = [&] {
    const rlimit limit{8, 8};
    (void)::signal(SIGXFSZ, SIG_IGN);
    if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) ::_exit(2);
    const auto done = write_file(scratch / "chart.csv", "more than eight bytes", IfThere::replace);
    ::_exit(!done && done.error().trouble == Trouble::input_output ? 0 : 1);
  };
  EXPECT_EXIT(with_little_space(), testing::ExitedWithCode(0), "");
  EXPECT_EQ(test::bytes_of(scratch / "chart.csv"), "old");
  EXPECT_EQ(scratch.names().size(), 1U);
}

TEST(WriteFile, RefusesAFolderAPipeAndAFolderThatIsNotThere) {
  const test::Scratch scratch;
  ASSERT_EQ(::mkfifo((scratch / "pipe").c_str(), 0600), 0);
  EXPECT_EQ(trouble(scratch.folder(), IfThere::replace), Trouble::cannot_create);
  EXPECT_EQ(trouble(scratch / "pipe", IfThere::replace), Trouble::cannot_create);
  EXPECT_EQ(trouble(scratch / "none/chart.csv", IfThere::refuse), Trouble::cannot_create);
}

} // namespace clampwright::specdb
