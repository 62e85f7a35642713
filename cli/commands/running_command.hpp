// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/running_question.hpp"

namespace clampwright::cli {

// The running torque of locking nuts: what the tables ask of a used one, and what it adds to a torque.
class RunningCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "running"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::RunningQuestion question_;
};

} // namespace clampwright::cli
