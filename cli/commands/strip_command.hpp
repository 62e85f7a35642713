// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/strip_question.hpp"

namespace clampwright::cli {

// Whether the bolt or a thread gives first, and how much must be engaged.
class StripCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "strip"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::StripQuestion question_;
};

} // namespace clampwright::cli
