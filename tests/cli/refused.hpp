// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <gmock/gmock.h>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli::testing_support {

// A line that must be refused.
struct Refused {
  std::string line;
  int exit;
  std::string code; // of the JSON; empty for any
  std::string says; // stands in the message or the hint
};

// Refused by its exit code, its code in the JSON, and words that help; nothing on standard output but that JSON.
// `run_line` runs words as the test's own workshop wants it.
template<typename Run>
void expect_refused(const Refused& refused, const Run& run_line) {
  Arguments words = words_of(refused.line);
  const Printed printed = run_line(words);
  EXPECT_EQ(static_cast<int>(printed.exit), refused.exit) << refused.line << printed.err;
  EXPECT_THAT(printed.out, testing::IsEmpty()) << refused.line;
  EXPECT_THAT(printed.err, testing::HasSubstr(refused.says)) << refused.line;
  words.emplace_back("--json");
  const auto document = json_of(run_line(words));
  ASSERT_TRUE(document.contains("error")) << refused.line;
  if (!refused.code.empty()) {
    EXPECT_EQ(document["error"]["code"], refused.code) << refused.line;
  }
}

// For commands that need no workshop.
inline void expect_refused(const Refused& refused) { expect_refused(refused, run_cli); }

} // namespace clampwright::cli::testing_support
