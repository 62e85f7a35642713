// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tour in README.md shows real output: every block that begins with "$ clampwright" is run and compared. A line
// that is "…" alone stands for one line or more that are left out there.
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>
#include <sstream>

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

// The shown text between its lines "…".
std::vector<std::string> pieces_of(const std::string& shown) {
  std::vector<std::string> pieces(1);
  std::istringstream lines(shown);
  for (std::string line; std::getline(lines, line);) {
    const std::size_t first = line.find_first_not_of(' ');
    if (first != std::string::npos && line.substr(first) == "…")
      pieces.emplace_back();
    else
      pieces.back() += line + "\n";
  }
  return pieces;
}

bool is_honest(const std::string& shown, const std::string& printed) {
  const auto pieces = pieces_of(shown);
  if (pieces.size() == 1) return shown == printed;
  if (!printed.starts_with(pieces.front())) return false;
  std::size_t at = pieces.front().size();
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    // One line at least is left out; what follows begins at the beginning of a line.
    const std::size_t end_of_left_out = printed.find('\n', at);
    if (end_of_left_out == std::string::npos) return false;
    if (i + 1 == pieces.size())
      return printed.ends_with("\n" + pieces[i]) && printed.size() - pieces[i].size() > end_of_left_out;
    const std::size_t found = printed.find("\n" + pieces[i], end_of_left_out);
    if (found == std::string::npos) return false;
    at = found + 1 + pieces[i].size();
  }
  return true;
}

struct HonestRow {
  const char* shown;
  bool honest;
};

TEST(Readme, MayLeaveOutLinesButShowsNoOthers) {
  const std::string printed = "a\nb\nc\nd\ne\n";
  // clang-format off
  const HonestRow rows[] = {
      {"a\nb\nc\nd\ne\n",     true},  {"a\n…\ne\n",          true},  {"a\n  …\ne\n",         true},
      {"…\nc\n…\n",            true},  {"a\n…\nc\n…\ne\n",    true},  {"a\nb\n…\n",           true},
      {"a\nc\nd\ne\n",        false}, {"a\nb\n…\nc\nd\ne\n", false}, {"a\n…\nx\n…\ne\n",    false},
      {"b\n…\ne\n",           false}, {"a\n…\nd\n",          false}, {"a\n…\nd\n…\nb\n…\n", false},
      {"a\n…\n\n…\ne\n",       false}, {"a\nb\nc\nd\ne\n…\n", false}, {"a … e\n",              false},
  };
  // clang-format on
  for (const HonestRow& row : rows)
    EXPECT_EQ(is_honest(row.shown, printed), row.honest) << row.shown;
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
    const std::string& output = printed.out.empty() ? printed.err : printed.out;
    EXPECT_TRUE(is_honest(shown.output, output)) << shown.line << "\n" << output;
  }
}

// Each picture of the tour is there, with words for whoever cannot see it, and none lies there for nothing.
TEST(Readme, ShowsThePicturesThatThereAre) {
  const std::filesystem::path folder(CLAMPWRIGHT_SOURCE_DIR);
  std::ostringstream text;
  text << std::ifstream(folder / "README.md").rdbuf();
  const std::string readme = text.str();
  static const std::regex k_picture(R"(!\[([^\]]*)\]\(([^)]*)\))");
  std::set<std::filesystem::path> shown;
  for (std::sregex_iterator at(readme.begin(), readme.end(), k_picture); at != std::sregex_iterator(); ++at) {
    EXPECT_GT((*at)[1].length(), 20) << (*at)[2];
    EXPECT_TRUE(std::filesystem::exists(folder / (*at)[2].str())) << (*at)[2];
    shown.insert(folder / (*at)[2].str());
  }
  std::set<std::filesystem::path> there;
  for (const auto& entry : std::filesystem::directory_iterator(folder / "gui/pictures"))
    there.insert(entry.path());
  EXPECT_EQ(shown, there);
  EXPECT_FALSE(there.empty());
}

} // namespace
} // namespace clampwright::cli
