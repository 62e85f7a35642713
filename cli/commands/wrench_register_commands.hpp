// SPDX-License-Identifier: GPL-3.0-or-later
//
// The commands that keep the register of torque wrenches.
#pragma once

#include <optional>
#include <string>

#include "cli/command.hpp"
#include "specdb/question/wrench_register.hpp"

namespace clampwright::cli {

// Enters a wrench.
class WrenchAddCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "wrench add"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::WrenchWords said_;
};

// The wrenches of the workshop, or one with its log.
class WrenchListCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "wrench list"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;
};

// Changes what is recorded of a wrench; what was is kept in its log.
class WrenchReviseCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "wrench revise"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::WrenchWords said_;
  std::optional<std::string> because_;
};

// Takes a wrench out of use.
class WrenchRetireCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "wrench retire"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  std::optional<std::string> because_;
  std::optional<std::string> on_;
};

// Logs what happened to a wrench: pulls, a drop, an overload, a calibration.
class WrenchLogCommand : public Command {
 public:
  [[nodiscard]] std::string_view name() const override { return "wrench log"; }
  [[nodiscard]] std::string_view summary() const override;
  [[nodiscard]] std::string_view usage() const override;
  [[nodiscard]] std::vector<Example> examples() const override;
  void declare(CLI::App& app) override;
  [[nodiscard]] Result<Outcome> run(const Context& context) override;

 private:
  specdb::WrenchHappening happening_;
};

} // namespace clampwright::cli
