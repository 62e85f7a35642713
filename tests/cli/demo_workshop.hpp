// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli::testing_support {

// The demo workshop in a folder of the test's own, and the program beside it.
class DemoWorkshop : public ::testing::Test {
 protected:
  void SetUp() override { ASSERT_EQ(run_here({"demo"}).exit, ExitCode::answered); }
  [[nodiscard]] Printed run_here(const Arguments& arguments) const { return run_in(folder_.path(), arguments); }
  // The whole JSON answer.
  [[nodiscard]] nlohmann::json json_here(Arguments arguments) const {
    arguments.emplace_back("--json");
    return json_of(run_here(arguments));
  }

 private:
  TemporaryFolder folder_;
};

inline bool has_code(const nlohmann::json& answer, std::string_view code) {
  const auto codes = codes_of(answer);
  return std::ranges::count(codes, code) == 1;
}

} // namespace clampwright::cli::testing_support
