// SPDX-License-Identifier: GPL-3.0-or-later
//
// The build tool as a process: what is wrong in a data file must stop the build where a person can find it.
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/image/embedded_image.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::specdb {
namespace {

namespace fs = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;

// sysexits.h, as the contract has it: EX_USAGE and EX_DATAERR.
constexpr int k_usage = 64;
constexpr int k_data = 65;

// A copy of the data, and the tool to run over it.
struct Bench {
  test::Scratch scratch;
  fs::path data = scratch / "data";
  fs::path image = scratch / "image.sqlite";
  fs::path digest = scratch / "image.sha256";
  fs::path messages = scratch / "stderr";

  Bench() { fs::copy(CLAMPWRIGHT_SOURCE_DIR "/specdb/data", data); }

  [[nodiscard]] int run(std::vector<std::string> arguments) const {
    arguments.insert(arguments.begin(), CLAMPWRIGHT_BUILD_DIR "/specdb/build_image");
    std::vector<char*> pointers;
    for (std::string& argument : arguments)
      pointers.push_back(argument.data());
    pointers.push_back(nullptr);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, 2, messages.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    pid_t child = 0;
    const int failed = posix_spawn(&child, pointers[0], &actions, nullptr, pointers.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    if (failed != 0) return -1;
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -2;
  }
  [[nodiscard]] int run() const { return run({data.string(), image.string(), digest.string()}); }
  [[nodiscard]] std::string said() const { return test::bytes_of(messages); }
};

// One fault: text put behind the last line of a file of data.
struct Fault {
  const char* what;
  const char* file;
  const char* row;
  const char* said; // part of the message

  friend void PrintTo(const Fault& fault, std::ostream* out) { *out << fault.what; }
};

// clang-format off
const std::array k_faults{
    Fault{"text for a number",         "holes.csv",            "metric,M999,999,mm,wide,mm,medium,iso-273-1979,,second-hand,\n",       "\"wide\" is no number"},
    Fault{"a number with a unit",      "holes.csv",            "metric,M999,999mm,mm,1000,mm,medium,iso-273-1979,,second-hand,\n",     "\"999mm\" is no number"},
    Fault{"a comma for a point",       "holes.csv",            "metric,M999,\"999,5\",mm,1000,mm,medium,iso-273-1979,,second-hand,\n", "\"999,5\" is no number"},
    Fault{"no value where one must be", "holes.csv",           "metric,M999,,mm,1000,mm,medium,iso-273-1979,,second-hand,\n",          "NOT NULL"},
    Fault{"an unknown source",         "holes.csv",            "metric,M999,999,mm,1000,mm,medium,no-such-source,,second-hand,\n",     "FOREIGN KEY"},
    Fault{"no source",                 "holes.csv",            "metric,M999,999,mm,1000,mm,medium,,,second-hand,\n",                   "NOT NULL"},
    Fault{"a key twice",               "holes.csv",            "metric,M10,10,mm,11,mm,medium,iso-273-1979,,second-hand,\n",           "UNIQUE"},
    Fault{"an unknown word for known", "holes.csv",            "metric,M999,999,mm,1000,mm,medium,iso-273-1979,,hearsay,\n",           "\"hearsay\" is no way of knowing"},
    Fault{"no word for known",         "holes.csv",            "metric,M999,999,mm,1000,mm,medium,iso-273-1979,,,\n",                  "NOT NULL"},
    Fault{"an unknown form",           "holes.csv",            "british,M999,999,mm,1000,mm,medium,iso-273-1979,,second-hand,\n",      "CHECK"},
    Fault{"a hole under the thread",   "holes.csv",            "metric,M999,999,mm,998,mm,medium,iso-273-1979,,second-hand,\n",        "CHECK"},
    Fault{"a control character",       "holes.csv",            "metric,M999,999,mm,1000,mm,medium,iso-273-1979,,second-hand,a\ab\n",   "control characters"},
    Fault{"bytes that are not UTF-8",  "holes.csv",            "metric,M999,999,mm,1000,mm,medium,iso-273-1979,,second-hand,\xff\n",   "control characters"},
    Fault{"a quote left open",         "holes.csv",            "metric,M999,999,mm,1000,mm,medium,iso-273-1979,,second-hand,\"open",   "quote"},
    Fault{"a quote inside a field",    "holes.csv",            "metric,M9\"99,999,mm,1000,mm,medium,iso-273-1979,,second-hand,\n",     "quote"},
    Fault{"a field too few",           "holes.csv",            "metric,M999,999,mm,1000,mm,medium,iso-273-1979,,second-hand\n",        "10 fields where the header has 11"},
    Fault{"a field too many",          "holes.csv",            "metric,M999,999,mm,1000,mm,medium,iso-273-1979,,second-hand,,\n",      "12 fields where the header has 11"},
    Fault{"proof above yield",         "strength_classes.csv", "99.9,ISO 898-1,metric,1,1,39,mm,700,600,Rp0.2,800,MPa,iso-898-1-2013,,second-hand,,,,,\n",  "CHECK"},
    Fault{"yield above tensile",       "strength_classes.csv", "99.9,ISO 898-1,metric,1,1,39,mm,600,900,Rp0.2,800,MPa,iso-898-1-2013,,second-hand,,,,,\n",  "CHECK"},
    Fault{"an unknown unit of stress", "strength_classes.csv", "99.9,ISO 898-1,metric,1,1,39,mm,600,700,Rp0.2,800,kgf,iso-898-1-2013,,second-hand,,,,,\n",  "CHECK"},
    Fault{"friction that falls",       "surfaces.csv",         "soap,wet soap,0.2,0.1,0.3,0.1,0.2,0.3,0,0,\n",                           "CHECK"},
    Fault{"an unknown lock family",    "locks.csv",            "glue,glue,sticky,0,,,,,,,,,,trade-practice,,common-practice,\n",                "CHECK"},
    Fault{"a factor that raises",      "surface_reductions.csv", "oiled,dry,2.2,a rule,trade-practice,,common-practice,\n",          "CHECK"},
    Fault{"a share above the whole",   "reduced_classes.csv",  "099.9,99.9,1.2,trade-practice,,common-practice,\n",                   "CHECK"},
    Fault{"a strength below nothing",  "part_materials.csv",   "mud,wet mud,-1,trade-practice,,memory,,,,,,,,,mud,,,,,,1,\n",            "CHECK"},
    Fault{"a nut of no known system",  "nut_pairing.csv",      "7,ours,,trade-practice,,common-practice,\n",                          "CHECK"},
    Fault{"a load of no listed thread", "bolt_loads.csv",      "M999,8.8,1000,second-hand,2000,second-hand,iso-898-1-2013,,,\n",       "FOREIGN KEY"},
    Fault{"not a number",              "strength_classes.csv", "99.9,ISO 898-1,metric,1,1,39,mm,nan,700,Rp0.2,800,MPa,iso-898-1-2013,,second-hand,,,,,\n",  "\"nan\" is no number"},
    Fault{"an infinite number",        "strength_classes.csv", "99.9,ISO 898-1,metric,1,1,inf,mm,600,700,Rp0.2,800,MPa,iso-898-1-2013,,second-hand,,,,,\n", "\"inf\" is no number"},
    Fault{"a fraction for a whole number", "surfaces.csv",     "soap,wet soap,0.1,0.2,0.3,0.1,0.2,0.3,0.9,0,\n",                         "0.9"},
};
// clang-format on

class Broken : public testing::TestWithParam<Fault> {};

// On the appended line: as many as the file has already, and one.
TEST_P(Broken, StopsTheBuildWithFileAndLine) {
  const Bench bench;
  const fs::path file = bench.data / GetParam().file;
  const std::string before = test::bytes_of(file);
  ASSERT_TRUE(before.ends_with('\n'));
  test::write_bytes(file, before + GetParam().row);
  const auto line = std::ranges::count(before, '\n') + 1;
  EXPECT_EQ(bench.run(), k_data) << GetParam().what;
  EXPECT_THAT(bench.said(), AllOf(HasSubstr(GetParam().file), HasSubstr(GetParam().said),
                                  testing::AnyOf(HasSubstr(fmt::format("{}:{}: ", GetParam().file, line)),
                                                 HasSubstr(fmt::format("{}: line {}: ", GetParam().file, line)))))
      << GetParam().what;
  EXPECT_FALSE(fs::exists(bench.digest)) << "a digest was written in spite of " << GetParam().what;
}

std::string name_of(const testing::TestParamInfo<Fault>& info) {
  std::string name = info.param.what;
  std::ranges::replace_if(
      name, [](char c) { return c == ' ' || c == '-'; }, '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(Data, Broken, testing::ValuesIn(k_faults), name_of);

TEST(BuildImage, BuildsFromAGoodCopy) {
  const Bench bench;
  EXPECT_EQ(bench.run(), 0);
  EXPECT_EQ(bench.said(), "");
}

TEST(BuildImage, BuildsTheSameBytesEachTime) {
  const Bench bench;
  ASSERT_EQ(bench.run(), 0);
  EXPECT_TRUE(test::bytes_of(bench.image) == embedded_image());
}

TEST(BuildImage, WritesTheDigestAsAStringOfTheLanguage) {
  const Bench bench;
  ASSERT_EQ(bench.run(), 0);
  EXPECT_EQ(test::bytes_of(bench.digest), fmt::format("\"{}\"\n", embedded_image_digest()));
}

TEST(BuildImage, ReplacesAnOldImage) {
  const Bench bench;
  test::write_bytes(bench.image, "an old one");
  ASSERT_EQ(bench.run(), 0);
  EXPECT_TRUE(test::bytes_of(bench.image) == embedded_image());
}

TEST(BuildImage, ReadsLinesThatEndInCarriageReturnAndLineFeed) {
  const Bench bench;
  std::string windows;
  for (const char c : test::bytes_of(bench.data / "holes.csv"))
    windows += c == '\n' ? std::string("\r\n") : std::string(1, c);
  test::write_bytes(bench.data / "holes.csv", windows);
  EXPECT_EQ(bench.run(), 0);
}

TEST(BuildImage, MissesAColumn) {
  const Bench bench;
  test::write_bytes(bench.data / "holes.csv", "form,size,diameter,diameter_unit,hole,hole_unit,fit,source,where,known\n"
                                              "metric,M10,10,mm,11,mm,medium,iso-273-1979,,second-hand\n");
  EXPECT_EQ(bench.run(), k_data);
  EXPECT_THAT(bench.said(), HasSubstr("holes.csv:1: 10 columns where the table has 11"));
}

TEST(BuildImage, RefusesColumnsInAnotherOrder) {
  const Bench bench;
  test::write_bytes(bench.data / "holes.csv",
                    "form,size,diameter,diameter_unit,hole_unit,hole,fit,source,where,known,note\n"
                    "metric,M10,10,mm,mm,11,medium,iso-273-1979,,second-hand,\n");
  EXPECT_EQ(bench.run(), k_data);
  EXPECT_THAT(bench.said(), HasSubstr("holes.csv:1: column 5 is \"hole_unit\" and should be \"hole\""));
}

TEST(BuildImage, RefusesAnEmptyFile) {
  const Bench bench;
  test::write_bytes(bench.data / "locks.csv", "");
  EXPECT_EQ(bench.run(), k_data);
  EXPECT_THAT(bench.said(), HasSubstr("locks.csv: line 1: the header row is missing"));
}

TEST(BuildImage, NamesAFileThatIsNotThere) {
  const Bench bench;
  fs::remove(bench.data / "faces.csv");
  EXPECT_EQ(bench.run(), k_data);
  EXPECT_THAT(bench.said(), HasSubstr("faces.csv: cannot be read"));
}

TEST(BuildImage, FailsWhereItCannotWrite) {
  const Bench bench;
  EXPECT_EQ(bench.run({bench.data.string(), (bench.scratch / "no/such/folder").string(), bench.digest.string()}),
            k_data);
}

TEST(BuildImage, SaysHowItIsCalled) {
  const Bench bench;
  EXPECT_EQ(bench.run({bench.data.string()}), k_usage);
  EXPECT_THAT(bench.said(), HasSubstr("usage: build_image"));
}

} // namespace
} // namespace clampwright::specdb
