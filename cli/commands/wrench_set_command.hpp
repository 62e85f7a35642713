// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"
#include "specdb/question/wrench_question.hpp"

namespace clampwright::cli {

// Where to set a torque wrench, with an adaptor or without.
class WrenchSetCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "wrench set"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::WrenchSetQuestion question_;
  std::optional<std::string> wrench_;
  std::optional<std::string> joint_;
};

} // namespace clampwright::cli
