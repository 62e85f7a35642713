// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "cli/command.hpp"
#include "specdb/question/case_question.hpp"

namespace clampwright::cli {

// The options by which clamp and torque describe a fastener (the contract's section 2).
class CaseOptions {
 public:
  void declare(CLI::App& app);
  [[nodiscard]] specdb::CaseQuestion& question() { return question_; }

  // What was understood of them, for the answer's `input`.
  [[nodiscard]] Json echo() const;

  // The names that some options take.
  [[nodiscard]] static std::vector<std::pair<std::string, std::string>> lists();

 private:
  specdb::CaseQuestion question_;
};

} // namespace clampwright::cli
