// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "specdb/question/sequence_question.hpp"

namespace clampwright::cli {

// In which order the bolts of a joint are tightened, and in how many rounds.
class SequenceCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "sequence"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  [[nodiscard]] Json echo() const;

  specdb::SequenceQuestion question_;
  std::optional<std::string> joint_;
  std::optional<std::string> format_;
  std::optional<std::string> output_;
  bool replace_ = false;
};

} // namespace clampwright::cli
