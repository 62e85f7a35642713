// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"
#include "cli/commands/case_options.hpp"
#include "specdb/question/substitute_question.hpp"

namespace clampwright::cli {

class SubstituteCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "substitute"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  [[nodiscard]] Json echo() const;

  CaseOptions options_;
  specdb::SubstituteQuestion question_;
  std::optional<std::string> with_;
  std::optional<std::string> joint_;
};

} // namespace clampwright::cli
