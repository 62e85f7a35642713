// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/surfaces_question.hpp"

namespace clampwright::cli {

// A torque on other surfaces than it is for, corrected once.
class SurfacesCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "surfaces"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> lists() const override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::SurfacesQuestion question_;
};

} // namespace clampwright::cli
