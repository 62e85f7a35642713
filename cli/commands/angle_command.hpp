// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "cli/commands/case_options.hpp"
#include "cli/commands/stack_options.hpp"

namespace clampwright::cli {

// What an angle adds to a snug torque, for one stack of parts.
class AngleCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "angle"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  CaseOptions options_;
  StackOptions stack_;
  std::optional<std::string> snug_;
  std::optional<std::string> angle_;
};

} // namespace clampwright::cli
