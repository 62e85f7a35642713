// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"

namespace clampwright::cli {

// One joint, at a glance.
class ShowCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "show"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  std::optional<std::string> wrench_;
  bool wrenches_ = false;
  std::optional<std::string> as_fitted_;
};

} // namespace clampwright::cli
