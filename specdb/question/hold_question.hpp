// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a crank is to be held: from words to a case. What the record of a machine has becomes the words that a person
// would have typed, so that whatever is missing is asked for by the same names.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/crank/holding.hpp"
#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// Every entry as text. What is empty was not said.
struct HoldQuestion {
  MaybeText by = {};   // a way: same-end, strap, gear, stop, far-end; a stop if not said
  MaybeText tool = {}; // hand, impact
  MaybeText torque = {};
  MaybeText undo_torque = {};
  MaybeText stroke = {};
  MaybeText rod = {};
  MaybeText angle = {};
  MaybeText below_tdc = {};
  MaybeText stop_length = {};
  MaybeText crown_depth = {};
  MaybeText tip_diameter = {};
  MaybeText port_depth = {};
  MaybeText plug_thread = {};
  MaybeText plug_engaged = {};
  MaybeText plug_material = {};
  MaybeText stop_incline = {};
  MaybeText crown_thickness = {};
  MaybeText crown_radius = {};
  MaybeText tip_limit = {};
  MaybeText plug_margin = {};
  MaybeText rod_limit = {};
  MaybeText stop_limit = {};
  MaybeText strap_radius = {};
  MaybeText gear_diameter = {};
  MaybeText pin_diameter = {};
  MaybeText pin_length = {};
  MaybeText pin_pressure = {}; // a band: 80..120MPa
  MaybeText pin_friction = {}; // a band: 0.10..0.20
  // Of a joint.
  std::optional<crank::WrenchTurns> turns = {};
  MaybeText holding = {};   // how it is held by the record, in words
  std::string machine = {}; // whose record was asked for what was not typed; empty for none
};

struct HoldReply {
  crank::HoldAnswer answer;
  MaybeText plug_material; // its name in the tables
  std::vector<Source> sources;
};

// Fails with usage for what is missing, surplus or said twice, naming it and what was understood; with not-understood
// for texts and ranges, and for an impact tool, whose peak torque nobody knows; with no-such for a thread or material
// that is not in the tables.
[[nodiscard]] Result<HoldReply> answer_hold(const Catalogue& catalogue, const HoldQuestion& question);

// The question with what that machine's record has, where nothing was typed. Where the piston stands is taken from one
// of the two, never from both; a plug thread only where both together have all that belongs to it.
[[nodiscard]] HoldQuestion with_record(HoldQuestion typed, const MachineRecord& machine);

// The stop on record for that machine at a torque; nothing where the record does not say where the piston meets it.
[[nodiscard]] std::optional<HoldReply> recorded_stop(const Catalogue& catalogue, const MachineRecord& machine,
                                                     quantity::Torque torque);

} // namespace clampwright::specdb
