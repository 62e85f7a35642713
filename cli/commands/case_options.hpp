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
  // For many sizes at once only what can be said of all of them; their classes are named elsewhere then, as that of one
  // fastener may be that is told in one piece ("M10 8.8").
  enum class Sizes { one, one_of_told_class, many };
  void declare(CLI::App& app, Sizes sizes = Sizes::one);
  [[nodiscard]] specdb::CaseQuestion& question() { return question_; }

  // What was understood of them, for the answer's `input`.
  [[nodiscard]] Json echo() const;

  // Was anything said of the fastener itself: surfaces, friction, head, kind, lock …?
  [[nodiscard]] bool describes_fastener() const;

  // The names that some options take.
  [[nodiscard]] static std::vector<std::pair<std::string, std::string>> lists();

 private:
  specdb::CaseQuestion question_;
};

} // namespace clampwright::cli
