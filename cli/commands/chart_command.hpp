// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "cli/commands/case_options.hpp"

namespace clampwright::cli {

// A torque chart with its basis on it.
class ChartCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "chart"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  [[nodiscard]] Json echo() const;

  CaseOptions options_;
  std::optional<std::string> classes_;
  std::optional<std::string> from_;
  std::optional<std::string> to_;
  std::optional<std::string> series_;
  std::optional<std::string> proof_fraction_;
  std::optional<std::string> yield_fraction_;
  std::optional<std::string> format_;
  std::optional<std::string> output_;
  bool replace_ = false;
};

} // namespace clampwright::cli
