// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/cure_question.hpp"

namespace clampwright::cli {

// When a locking compound has cured.
class CureCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "cure"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::CureQuestion question_;
};

} // namespace clampwright::cli
