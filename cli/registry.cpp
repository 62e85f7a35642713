// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/command.hpp"
#include "cli/commands/chart_command.hpp"
#include "cli/commands/clamp_command.hpp"
#include "cli/commands/convert_command.hpp"
#include "cli/commands/demo_command.hpp"
#include "cli/commands/find_command.hpp"
#include "cli/commands/gauge_command.hpp"
#include "cli/commands/hand_command.hpp"
#include "cli/commands/headmark_command.hpp"
#include "cli/commands/hold_command.hpp"
#include "cli/commands/show_command.hpp"
#include "cli/commands/strip_command.hpp"
#include "cli/commands/substitute_command.hpp"
#include "cli/commands/table_command.hpp"
#include "cli/commands/thread_command.hpp"
#include "cli/commands/torque_command.hpp"
#include "cli/commands/vet_command.hpp"

namespace clampwright::cli {

std::vector<std::unique_ptr<Command>> make_commands() {
  std::vector<std::unique_ptr<Command>> commands;
  commands.push_back(std::make_unique<ConvertCommand>());
  commands.push_back(std::make_unique<ThreadCommand>());
  commands.push_back(std::make_unique<TableCommand>());
  commands.push_back(std::make_unique<GaugeCommand>());
  commands.push_back(std::make_unique<HeadmarkCommand>());
  commands.push_back(std::make_unique<ClampCommand>());
  commands.push_back(std::make_unique<TorqueCommand>());
  commands.push_back(std::make_unique<StripCommand>());
  commands.push_back(std::make_unique<ChartCommand>());
  commands.push_back(std::make_unique<SubstituteCommand>());
  commands.push_back(std::make_unique<HoldCommand>());
  commands.push_back(std::make_unique<HandCommand>());
  commands.push_back(std::make_unique<DemoCommand>());
  commands.push_back(std::make_unique<FindCommand>());
  commands.push_back(std::make_unique<ShowCommand>());
  commands.push_back(std::make_unique<VetCommand>());
  return commands;
}

} // namespace clampwright::cli
