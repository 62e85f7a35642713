// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whole outputs, recorded: what a user sees may change only on purpose. The figures in them are checked elsewhere,
// against sources; here it is the words, the order and the look. tests/cli/record writes the files anew.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;

struct Recorded {
  const char* name;
  Arguments arguments;
};

const std::vector<Recorded> k_recorded{
    {"bare", {}},
    {"help", {"--help"}},
    {"help-clamp", {"clamp", "--help"}},
    {"convert-mkg", {"convert", "2.5 mkg"}},
    {"convert-explain", {"convert", "30ft-lb", "N.m", "--explain"}},
    {"convert-comma", {"convert", "1,234 Nm"}},
    {"thread-metric", {"thread", "M10x1.25"}},
    {"thread-unified-left", {"thread", "1/4-28 UNF-LH"}},
    {"thread-ba", {"thread", "2 BA", "--explain"}},
    {"clamp-oiled", {"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled"}},
    {"clamp-explain", {"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled", "--explain"}},
    {"clamp-json", {"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled", "--json"}},
    {"clamp-locking-nut",
     {"clamp", "M8", "--class", "8.8", "--torque", "24Nm", "--surfaces", "zinc-dry", "--turned", "nut", "--lock",
      "locking-nut-insert", "--running-torque", "2Nm"}},
    {"clamp-nothing-stated", {"clamp", "M12", "--torque", "75Nm", "--units", "imperial"}},
    {"clamp-over", {"clamp", "M6", "--class", "8.8", "--torque", "90Nm", "--surfaces", "dry"}},
    {"torque-proof",
     {"torque", "3/8-24 UNF", "--class", "SAE 5", "--proof-fraction", "75%", "--surfaces", "zinc-dry", "--unit",
      "lbf.ft"}},
    {"demo", {"demo"}},
    {"find", {"find", "nut"}},
    {"find-nothing", {"find", "zeppelin"}},
    {"find-slip", {"find", "drive", "plly"}},
    {"show-hub", {"show", "pump/clutch-hub", "--unit", "lbf.ft"}},
    {"show-head-nuts", {"show", "head", "nuts"}},
    {"show-mounts", {"show", "pump/mounts"}},
    {"show-pulley", {"show", "winch/pulley-bolt"}},
    {"show-frame", {"show", "winch/frame-bolts"}},
    {"show-pivot", {"show", "winch/brake-pivot"}},
    {"show-pivot-json", {"show", "winch/brake-pivot", "--json"}},
    {"show-several", {"show", "pump"}},
    {"show-base-nuts", {"show", "pump/base-nuts"}},
    {"show-as-fitted", {"show", "exhaust", "nuts", "--as-fitted", "anti-seize"}},
    {"show-wrench", {"show", "pump/head-nuts", "--wrench", "A"}},
    {"show-wrench-refused", {"show", "pump/clutch-hub", "--wrench", "A"}},
    {"vet", {"vet"}},
};

const std::filesystem::path k_folder = CLAMPWRIGHT_SOURCE_DIR "/tests/cli/recorded";

std::string replaced(std::string text, const std::string& what, const std::string& by) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size())
    text.replace(at, what.size(), by);
  return text;
}

// The command, its exit status and both streams as one text; the test's own folder is called DATA.
std::string transcript(const Recorded& recorded, const std::string& data) {
  std::ostringstream text;
  text << "$ clampwright";
  for (const std::string& argument : recorded.arguments) {
    const bool plain = argument.find(' ') == std::string::npos;
    text << ' ' << (plain ? argument : "\"" + argument + "\"");
  }
  const Printed printed = run_in(data, recorded.arguments);
  text << "\n# exit " << static_cast<int>(printed.exit) << "\n" << printed.out;
  if (!printed.err.empty()) text << "# standard error\n" << printed.err;
  return replaced(text.str(), data, "DATA");
}

TEST(Output, IsAsRecorded) {
  const TemporaryFolder folder;
  for (const Recorded& recorded : k_recorded) {
    // The workshop is there for the commands that read it; "demo" itself is recorded in a folder without one.
    const TemporaryFolder empty;
    const bool makes = recorded.arguments == Arguments{"demo"};
    if (!makes) {
      ASSERT_EQ(run_in(folder.path(), {"demo"}).exit, ExitCode::answered);
    }
    const std::string now = transcript(recorded, makes ? empty.path() : folder.path());
    const std::filesystem::path file = k_folder / (std::string(recorded.name) + ".txt");
    if (std::getenv("CLAMPWRIGHT_RECORD") != nullptr) {
      std::ofstream(file, std::ios::binary) << now;
      continue;
    }
    std::ifstream in(file, std::ios::binary);
    ASSERT_TRUE(in) << file << " is missing; tests/cli/record writes it";
    EXPECT_EQ(now, std::string(std::istreambuf_iterator<char>(in), {}))
        << "if that is meant, run tests/cli/record and read the difference";
  }
}

TEST(Output, HasNoRecordWithoutACommand) {
  for (const auto& entry : std::filesystem::directory_iterator(k_folder))
    EXPECT_TRUE(std::ranges::any_of(k_recorded, [&](const Recorded& r) { return entry.path().stem() == r.name; }))
        << entry.path();
}

} // namespace
} // namespace clampwright::cli
