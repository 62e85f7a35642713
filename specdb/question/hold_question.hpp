// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a crank is to be held: from words to a case. What the record of a machine has becomes the words that a person
// would have typed, so that whatever is missing is asked for by the same names.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/crank/holding.hpp"
#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/text_field.hpp"
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

// In the order in which a person is asked for them.
inline constexpr std::array k_hold_fields{
    TextField<HoldQuestion>{"--torque", &HoldQuestion::torque},
    TextField<HoldQuestion>{"--undo-torque", &HoldQuestion::undo_torque},
    TextField<HoldQuestion>{"--by", &HoldQuestion::by},
    TextField<HoldQuestion>{"--tool", &HoldQuestion::tool},
    TextField<HoldQuestion>{"--stroke", &HoldQuestion::stroke},
    TextField<HoldQuestion>{"--rod", &HoldQuestion::rod},
    TextField<HoldQuestion>{"--angle", &HoldQuestion::angle},
    TextField<HoldQuestion>{"--below-tdc", &HoldQuestion::below_tdc},
    TextField<HoldQuestion>{"--stop-length", &HoldQuestion::stop_length},
    TextField<HoldQuestion>{"--crown-depth", &HoldQuestion::crown_depth},
    TextField<HoldQuestion>{"--port-depth", &HoldQuestion::port_depth},
    TextField<HoldQuestion>{"--tip-diameter", &HoldQuestion::tip_diameter},
    TextField<HoldQuestion>{"--stop-incline", &HoldQuestion::stop_incline},
    TextField<HoldQuestion>{"--plug-thread", &HoldQuestion::plug_thread},
    TextField<HoldQuestion>{"--plug-engaged", &HoldQuestion::plug_engaged},
    TextField<HoldQuestion>{"--plug-material", &HoldQuestion::plug_material},
    TextField<HoldQuestion>{"--tip-limit", &HoldQuestion::tip_limit},
    TextField<HoldQuestion>{"--plug-margin", &HoldQuestion::plug_margin},
    TextField<HoldQuestion>{"--rod-limit", &HoldQuestion::rod_limit},
    TextField<HoldQuestion>{"--stop-limit", &HoldQuestion::stop_limit},
    TextField<HoldQuestion>{"--crown-thickness", &HoldQuestion::crown_thickness},
    TextField<HoldQuestion>{"--crown-radius", &HoldQuestion::crown_radius},
    TextField<HoldQuestion>{"--strap-radius", &HoldQuestion::strap_radius},
    TextField<HoldQuestion>{"--gear-diameter", &HoldQuestion::gear_diameter},
    TextField<HoldQuestion>{"--pin-diameter", &HoldQuestion::pin_diameter},
    TextField<HoldQuestion>{"--pin-length", &HoldQuestion::pin_length},
    TextField<HoldQuestion>{"--pin-pressure", &HoldQuestion::pin_pressure},
    TextField<HoldQuestion>{"--pin-friction", &HoldQuestion::pin_friction},
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
