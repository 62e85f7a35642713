// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/finding/finding.hpp"

#include <algorithm>

namespace clampwright::finding {

std::string_view code_name(Code code) {
  switch (code) {
  case Code::left_hand:
    return "left-hand";
  case Code::locking_compound:
    return "locking-compound";
  case Code::crank_reaction:
    return "crank-reaction";
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
  case Code::class_unknown:
    return "class-unknown";
  case Code::face_not_stated:
    return "face-not-stated";
  case Code::running_torque_added:
    return "running-torque-added";
  case Code::running_torque_missing:
    return "running-torque-missing";
  case Code::mass_as_force:
    return "mass-as-force";
  case Code::seating_torque:
    return "seating-torque";
  case Code::not_a_bolt:
    return "not-a-bolt";
  case Code::no_maker_value:
    return "no-maker-value";
  case Code::value_from_memory:
    return "value-from-memory";
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

void put_in_order(Findings& findings) {
  std::ranges::stable_sort(findings, {}, [](const Finding& finding) {
    return finding.code == Code::maker_first ? 3 : static_cast<int>(finding.severity);
  });
}

} // namespace clampwright::finding
