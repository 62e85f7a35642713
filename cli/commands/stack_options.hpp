// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/stack_question.hpp"

namespace clampwright::cli {

// The options by which angle and slot describe what a bolt clamps.
class StackOptions {
 public:
  void declare(CLI::App& app);
  [[nodiscard]] const specdb::StackQuestion& question() const { return question_; }
  // Adds what was said to the answer's `input`.
  void echo_into(Json& input) const;
  // The names that --part-material takes.
  [[nodiscard]] static std::vector<std::pair<std::string, std::string>> lists();

 private:
  specdb::StackQuestion question_;
};

} // namespace clampwright::cli
