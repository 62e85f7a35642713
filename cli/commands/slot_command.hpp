// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "cli/commands/case_options.hpp"
#include "cli/commands/stack_options.hpp"

namespace clampwright::cli {

// Whether a castle nut meets a slot within its torque, and what one slot more adds.
class SlotCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "slot"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  CaseOptions options_;
  StackOptions stack_;
  std::optional<std::string> slots_;
  std::optional<std::string> pin_holes_;
  std::optional<std::string> torque_;
  std::optional<std::string> low_;
  std::optional<std::string> high_;
};

} // namespace clampwright::cli
