// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"
#include "specdb/question/hand_question.hpp"

namespace clampwright::cli {

// The hand of thread that the steady load tightens.
class HandCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "hand"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::HandQuestion question_;
  std::optional<std::string> joint_;
};

} // namespace clampwright::cli
