// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "cli/commands/case_options.hpp"

namespace clampwright::cli {

// What a torque clamps.
class ClampCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "clamp"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  CaseOptions options_;
  std::optional<std::string> torque_;
};

} // namespace clampwright::cli
