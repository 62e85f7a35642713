// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a fitter must be told beside the number. A finding is data: a stable code, how grave it is, and the facts that
// its sentence needs. The English sentence and its basis stand in core/report/wording; translations replace them there.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"

namespace clampwright::finding {

enum class Code {
  left_hand,
  thread_not_listed,
  hand_doubt,
  locking_compound,
  lock_conflict,
  heat_limit,
  crank_reaction,
  near_dead_centre,
  stop_over_limit,
  plug_strips,
  port_open,
  stop_limit_not_stated,
  press_fit_slips,
  look_at_thread,
  holding_unknown,
  over_proof,
  over_yield,
  near_limit,
  low_preload,
  models_disagree,
  surfaces_not_stated,
  surfaces_differ,
  class_unknown,
  face_not_stated,
  reduced_head,
  embrittlement,
  galling,
  approved_data,
  strip_governs,
  long_engagement,
  seat_pressure,
  nut_too_weak,
  soft_part,
  creep,
  unit_slip,
  below_tool_range,
  above_tool_range,
  wrench_direction,
  wrench_overdue,
  wrench_dropped,
  wrench_retired,
  calibration_unknown,
  no_mark,
  coarse_scale,
  wrench_wider_than_limits,
  running_torque_added,
  running_torque_missing,
  no_compound_here,
  primer_needed,
  cure_by_heat_only,
  cure_not_known,
  breakaway_not_known,
  running_torque_low,
  running_torque_high,
  compound_expired,
  mass_as_force,
  single_use,
  seating_torque,
  not_a_bolt,
  angle_final,
  beyond_elastic,
  slot_may_miss,
  no_maker_value,
  derived_torque,
  not_looked_at,
  sources_conflict,
  value_from_memory,
  measured_only,
  look_alikes,
  pitch_not_measured,
  limits_assumed,
  size_chart,
  mark_proves_nothing,
  maker_first,
};

enum class Severity { stop, mind, note };

// A value that a sentence needs. Shares of one are plain doubles and are written as per cent.
using Fact = std::variant<std::string, double, quantity::Torque, quantity::Force, quantity::Length, quantity::Angle,
                          quantity::Stress, quantity::Temperature>;

struct Finding {
  Code code;
  Severity severity;
  std::vector<Fact> facts;
};

using Findings = std::vector<Finding>;

// "left-hand", "over-proof", …: the names of the contract.
[[nodiscard]] std::string_view code_name(Code code);
[[nodiscard]] std::string_view severity_name(Severity severity);

// 0 for stop, 1 for mind, 2 for note, and the general maker-first last.
[[nodiscard]] int rank(const Finding& finding);

// Is there one that forbids to go on?
[[nodiscard]] bool has_stop(const Findings& findings);

// Gravest first, and the general maker-first last; otherwise in the order found.
void put_in_order(Findings& findings);

} // namespace clampwright::finding
