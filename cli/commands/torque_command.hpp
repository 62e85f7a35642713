// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "cli/commands/case_options.hpp"

namespace clampwright::cli {

// The torque that a clamp load wants.
class TorqueCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "torque"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  CaseOptions options_;
  std::optional<std::string> preload_;
  std::optional<std::string> proof_fraction_;
  std::optional<std::string> yield_fraction_;
};

} // namespace clampwright::cli
