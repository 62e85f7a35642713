// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "cli/program.hpp"

namespace clampwright::cli::testing_support {

// A folder of the test's own, gone when the test ends.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    std::string pattern = ::testing::TempDir() + "clampwright-XXXXXX";
    path_ = ::mkdtemp(pattern.data());
  }
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  [[nodiscard]] std::string path() const { return path_.string(); }

 private:
  std::filesystem::path path_;
};

using Arguments = std::vector<std::string>;

// The day of every answer in these tests: wrench B of the demo workshop fell due eight weeks before.
inline constexpr std::chrono::year_month_day k_demo_day{std::chrono::year(2026), std::chrono::November,
                                                        std::chrono::day(25)};

// The program in process, its data in `data`.
inline Printed run_in(const std::string& data, const Arguments& arguments) {
  return run(arguments, Environment{data, "/nowhere", true, 80, k_demo_day});
}

// For commands that need no workshop.
inline Printed run_cli(const Arguments& arguments) { return run_in("/nowhere", arguments); }

// The JSON answer; the test fails where standard output is not exactly one document.
inline nlohmann::json json_of(const Printed& printed) {
  auto document = nlohmann::json::parse(printed.out, nullptr, false);
  EXPECT_FALSE(document.is_discarded()) << printed.out;
  return document;
}

inline nlohmann::json answer_of(Arguments arguments) {
  arguments.emplace_back("--json");
  return json_of(run_cli(arguments));
}

inline std::vector<std::string> codes_of(const nlohmann::json& answer) {
  std::vector<std::string> codes;
  for (const auto& finding : answer.at("findings"))
    codes.push_back(finding.at("code"));
  return codes;
}

// Splits like a shell does, for words in double quotes.
inline Arguments words_of(std::string_view line) {
  Arguments words;
  std::optional<std::string> word;
  bool quoted = false;
  for (const char c : line) {
    if (c == ' ' && !quoted) {
      if (word) words.push_back(*std::exchange(word, std::nullopt));
      continue;
    }
    if (!word) word.emplace();
    if (c == '"')
      quoted = !quoted;
    else
      *word += c;
  }
  if (word) words.push_back(*word);
  return words;
}

} // namespace clampwright::cli::testing_support
