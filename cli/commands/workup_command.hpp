// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "cli/commands/case_options.hpp"
#include "specdb/question/workup_question.hpp"

namespace clampwright::cli {

// A torque worked up where the maker gives none.
class WorkupCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "workup"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  [[nodiscard]] Json echo(const std::optional<specdb::JointRecord>& joint) const;

  CaseOptions options_;
  specdb::WorkupQuestion question_;
  std::optional<std::string> thread_;
};

} // namespace clampwright::cli
