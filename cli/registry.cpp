// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/command.hpp"
#include "cli/commands/angle_command.hpp"
#include "cli/commands/chart_command.hpp"
#include "cli/commands/clamp_command.hpp"
#include "cli/commands/convert_command.hpp"
#include "cli/commands/cure_command.hpp"
#include "cli/commands/demo_command.hpp"
#include "cli/commands/find_command.hpp"
#include "cli/commands/gauge_command.hpp"
#include "cli/commands/hand_command.hpp"
#include "cli/commands/headmark_command.hpp"
#include "cli/commands/hold_command.hpp"
#include "cli/commands/lock_command.hpp"
#include "cli/commands/renew_command.hpp"
#include "cli/commands/running_command.hpp"
#include "cli/commands/sequence_command.hpp"
#include "cli/commands/shelf_commands.hpp"
#include "cli/commands/show_command.hpp"
#include "cli/commands/slot_command.hpp"
#include "cli/commands/strip_command.hpp"
#include "cli/commands/substitute_command.hpp"
#include "cli/commands/surfaces_command.hpp"
#include "cli/commands/table_command.hpp"
#include "cli/commands/thread_command.hpp"
#include "cli/commands/torque_command.hpp"
#include "cli/commands/vet_command.hpp"
#include "cli/commands/workup_command.hpp"
#include "cli/commands/wrench_register_commands.hpp"
#include "cli/commands/wrench_set_command.hpp"

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
  commands.push_back(std::make_unique<AngleCommand>());
  commands.push_back(std::make_unique<SlotCommand>());
  commands.push_back(std::make_unique<SequenceCommand>());
  commands.push_back(std::make_unique<StripCommand>());
  commands.push_back(std::make_unique<WrenchSetCommand>());
  commands.push_back(std::make_unique<ChartCommand>());
  commands.push_back(std::make_unique<SubstituteCommand>());
  commands.push_back(std::make_unique<WorkupCommand>());
  commands.push_back(std::make_unique<SurfacesCommand>());
  commands.push_back(std::make_unique<LockCommand>());
  commands.push_back(std::make_unique<CureCommand>());
  commands.push_back(std::make_unique<RunningCommand>());
  commands.push_back(std::make_unique<HoldCommand>());
  commands.push_back(std::make_unique<HandCommand>());
  commands.push_back(std::make_unique<DemoCommand>());
  commands.push_back(std::make_unique<FindCommand>());
  commands.push_back(std::make_unique<ShowCommand>());
  commands.push_back(std::make_unique<VetCommand>());
  commands.push_back(std::make_unique<RenewCommand>());
  commands.push_back(std::make_unique<ShelfListCommand>());
  commands.push_back(std::make_unique<ShelfAddCommand>());
  commands.push_back(std::make_unique<ShelfReviseCommand>());
  commands.push_back(std::make_unique<ShelfRetireCommand>());
  commands.push_back(std::make_unique<WrenchAddCommand>());
  commands.push_back(std::make_unique<WrenchListCommand>());
  commands.push_back(std::make_unique<WrenchReviseCommand>());
  commands.push_back(std::make_unique<WrenchRetireCommand>());
  commands.push_back(std::make_unique<WrenchLogCommand>());
  return commands;
}

} // namespace clampwright::cli
