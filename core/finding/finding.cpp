// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/finding/finding.hpp"

#include <algorithm>

namespace clampwright::finding {

std::string_view code_name(Code code) {
  switch (code) {
  case Code::left_hand:
    return "left-hand";
  case Code::thread_not_listed:
    return "thread-not-listed";
  case Code::hand_doubt:
    return "hand-doubt";
  case Code::locking_compound:
    return "locking-compound";
  case Code::lock_conflict:
    return "lock-conflict";
  case Code::heat_limit:
    return "heat-limit";
  case Code::crank_reaction:
    return "crank-reaction";
  case Code::near_dead_centre:
    return "near-dead-centre";
  case Code::stop_over_limit:
    return "stop-over-limit";
  case Code::plug_strips:
    return "plug-strips";
  case Code::port_open:
    return "port-open";
  case Code::stop_limit_not_stated:
    return "stop-limit-not-stated";
  case Code::press_fit_slips:
    return "press-fit-slips";
  case Code::look_at_thread:
    return "look-at-thread";
  case Code::holding_unknown:
    return "holding-unknown";
  case Code::over_proof:
    return "over-proof";
  case Code::over_yield:
    return "over-yield";
  case Code::near_limit:
    return "near-limit";
  case Code::low_preload:
    return "low-preload";
  case Code::models_disagree:
    return "models-disagree";
  case Code::surfaces_not_stated:
    return "surfaces-not-stated";
  case Code::surfaces_differ:
    return "surfaces-differ";
  case Code::class_unknown:
    return "class-unknown";
  case Code::face_not_stated:
    return "face-not-stated";
  case Code::reduced_head:
    return "reduced-head";
  case Code::embrittlement:
    return "embrittlement";
  case Code::galling:
    return "galling";
  case Code::approved_data:
    return "approved-data";
  case Code::strip_governs:
    return "strip-governs";
  case Code::long_engagement:
    return "long-engagement";
  case Code::seat_pressure:
    return "seat-pressure";
  case Code::nut_too_weak:
    return "nut-too-weak";
  case Code::soft_part:
    return "soft-part";
  case Code::creep:
    return "creep";
  case Code::unit_slip:
    return "unit-slip";
  case Code::below_tool_range:
    return "below-tool-range";
  case Code::above_tool_range:
    return "above-tool-range";
  case Code::wrench_direction:
    return "wrench-direction";
  case Code::wrench_overdue:
    return "wrench-overdue";
  case Code::wrench_dropped:
    return "wrench-dropped";
  case Code::wrench_retired:
    return "wrench-retired";
  case Code::calibration_unknown:
    return "calibration-unknown";
  case Code::no_mark:
    return "no-mark";
  case Code::wrench_wider_than_limits:
    return "wrench-wider-than-limits";
  case Code::coarse_scale:
    return "coarse-scale";
  case Code::running_torque_added:
    return "running-torque-added";
  case Code::running_torque_missing:
    return "running-torque-missing";
  case Code::no_compound_here:
    return "no-compound-here";
  case Code::primer_needed:
    return "primer-needed";
  case Code::cure_by_heat_only:
    return "cure-by-heat-only";
  case Code::cure_not_known:
    return "cure-not-known";
  case Code::breakaway_not_known:
    return "breakaway-not-known";
  case Code::running_torque_high:
    return "running-torque-high";
  case Code::running_torque_low:
    return "running-torque-low";
  case Code::compound_expired:
    return "compound-expired";
  case Code::mass_as_force:
    return "mass-as-force";
  case Code::single_use:
    return "single-use";
  case Code::seating_torque:
    return "seating-torque";
  case Code::not_a_bolt:
    return "not-a-bolt";
  case Code::angle_final:
    return "angle-final";
  case Code::beyond_elastic:
    return "beyond-elastic";
  case Code::slot_may_miss:
    return "slot-may-miss";
  case Code::derived_torque:
    return "derived-torque";
  case Code::not_looked_at:
    return "not-looked-at";
  case Code::no_maker_value:
    return "no-maker-value";
  case Code::sources_conflict:
    return "sources-conflict";
  case Code::value_from_memory:
    return "value-from-memory";
  case Code::measured_only:
    return "measured-only";
  case Code::look_alikes:
    return "look-alikes";
  case Code::pitch_not_measured:
    return "pitch-not-measured";
  case Code::limits_assumed:
    return "limits-assumed";
  case Code::size_chart:
    return "size-chart";
  case Code::mark_proves_nothing:
    return "mark-proves-nothing";
  case Code::maker_first:
    return "maker-first";
  }
  return "";
}

std::string_view severity_name(Severity severity) {
  switch (severity) {
  case Severity::stop:
    return "stop";
  case Severity::mind:
    return "mind";
  case Severity::note:
    return "note";
  }
  return "";
}

int rank(const Finding& finding) { return finding.code == Code::maker_first ? 3 : static_cast<int>(finding.severity); }

bool has_stop(const Findings& findings) {
  return std::ranges::any_of(findings, [](const Finding& one) { return one.severity == Severity::stop; });
}

void put_in_order(Findings& findings) { std::ranges::stable_sort(findings, {}, rank); }

} // namespace clampwright::finding
