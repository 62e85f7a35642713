// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tour in README.md shows real output: every block that begins with "$ clampwright" is run and compared.
#include <fstream>
#include <iterator>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;

struct Shown {
  std::string line; // behind "$ clampwright "
  std::string output;
};

std::vector<Shown> blocks_of(const std::string& text) {
  const std::string begin = "```console\n$ clampwright ";
  std::vector<Shown> blocks;
  for (std::size_t at = 0; (at = text.find(begin, at)) != std::string::npos;) {
    at += begin.size();
    const std::size_t end_of_line = text.find('\n', at);
    const std::size_t end = text.find("```\n", end_of_line);
    blocks.push_back({text.substr(at, end_of_line - at), text.substr(end_of_line + 1, end - end_of_line - 1)});
    at = end;
  }
  return blocks;
}

TEST(Readme, ShowsWhatTheProgramPrints) {
  std::ifstream in(CLAMPWRIGHT_SOURCE_DIR "/README.md");
  const std::string text(std::istreambuf_iterator<char>(in), {});
  const auto blocks = blocks_of(text);
  ASSERT_GE(blocks.size(), 6U);
  const TemporaryFolder folder;
  ASSERT_EQ(run_in(folder.path(), {"demo"}).exit, ExitCode::answered);
  for (const Shown& shown : blocks) {
    const Printed printed = run_in(folder.path(), words_of(shown.line));
    EXPECT_EQ(printed.exit == ExitCode::answered ? printed.out : printed.err, shown.output) << shown.line;
  }
}

} // namespace
} // namespace clampwright::cli
