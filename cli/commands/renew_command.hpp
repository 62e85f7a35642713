// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"

namespace clampwright::cli {

// The parts of single use, before a machine is taken apart.
class RenewCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "renew"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;
};

} // namespace clampwright::cli
