// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"

namespace clampwright::cli {

// The reference tables: which there are, and the rows in which words occur.
class TableCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "table"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;
};

} // namespace clampwright::cli
