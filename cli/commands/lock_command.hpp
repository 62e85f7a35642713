// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/lock_question.hpp"

namespace clampwright::cli {

// Everything about a way of locking.
class LockCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "lock"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::LockQuestion question_;
};

} // namespace clampwright::cli
