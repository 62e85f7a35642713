// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/gauge_question.hpp"

namespace clampwright::cli {

// Which threads fit what was measured.
class GaugeCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "gauge"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::GaugeQuestion question_;
};

} // namespace clampwright::cli
