// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"
#include "specdb/question/shelf_question.hpp"

namespace clampwright::cli {

// The shelf of locking compounds: what stands on it, and the three ways to change that.
class ShelfListCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "shelf list"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  bool all_ = false;
};

class ShelfAddCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "shelf add"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::ShelfEntry entry_;
};

class ShelfReviseCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "shelf revise"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::ShelfEntry entry_;
  std::optional<std::string> because_;
};

class ShelfRetireCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "shelf retire"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  std::optional<std::string> because_;
};

} // namespace clampwright::cli
