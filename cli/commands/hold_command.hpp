// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"
#include "specdb/question/hold_question.hpp"

namespace clampwright::cli {

// What bears the torque while a crank is held.
class HoldCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "hold"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::HoldQuestion question_;
  std::optional<std::string> joint_;
};

} // namespace clampwright::cli
