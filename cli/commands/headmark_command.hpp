// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"

namespace clampwright::cli {

// What the mark on a head, a nut or a stud stands for.
class HeadmarkCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "headmark"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  std::optional<std::string> part_;
};

} // namespace clampwright::cli
