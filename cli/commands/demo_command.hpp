// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"

namespace clampwright::cli {

// Makes the invented demo workshop and shows its first joint.
class DemoCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "demo"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  [[nodiscard]] Result<Outcome> made_or_shown(const Context& context) const;
};

} // namespace clampwright::cli
