// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/locking/running.hpp"

namespace clampwright::locking {

namespace {

// A share that is met exactly is met, whatever the unit it was converted from.
constexpr double k_whisker = 1e-9;

bool is_greatest(const RunningLimit& limit) { return limit.kind.starts_with("greatest"); }

bool is_of_new_ones(const RunningLimit& limit) {
  return limit.kind.find("first-on") != std::string::npos || limit.kind.find("first-off") != std::string::npos;
}

} // namespace

RunningVerdict judge(const RunningLimit& limit, quantity::Torque measured) {
  if (!limit.torque) return RunningVerdict::not_judged;
  const double share = measured / *limit.torque;
  if (is_greatest(limit) && share > 1.0 + k_whisker) return RunningVerdict::no;
  if (is_of_new_ones(limit)) return RunningVerdict::not_judged;
  return is_greatest(limit) || share >= 1.0 - k_whisker ? RunningVerdict::ok : RunningVerdict::no;
}

Reuse judge(const std::vector<RunningLimit>& limits, quantity::Torque measured) {
  bool passed = false;
  bool too_little = false;
  bool too_much = false;
  bool within_greatest = false;
  for (const RunningLimit& limit : limits) {
    const RunningVerdict verdict = judge(limit, measured);
    if (is_greatest(limit)) {
      too_much = too_much || verdict == RunningVerdict::no;
      within_greatest = within_greatest || (limit.torque && verdict != RunningVerdict::no);
    } else {
      // Below the greatest alone nothing is said about wear.
      passed = passed || verdict == RunningVerdict::ok;
      too_little = too_little || verdict == RunningVerdict::no;
    }
  }
  if (too_much) return within_greatest ? Reuse::tables_differ : Reuse::drags_too_much;
  if (passed) return too_little ? Reuse::tables_differ : Reuse::ok;
  return too_little ? Reuse::drags_too_little : Reuse::not_known;
}

std::vector<RuleAnswer> add_running(quantity::Torque printed, quantity::Torque running,
                                    const std::vector<RunningRule>& rules) {
  std::vector<RuleAnswer> out;
  for (const RunningRule& rule : rules) {
    const bool adds = !rule.from_share || running >= (*rule.from_share - k_whisker) * printed;
    out.push_back({rule, adds, adds ? printed + running : printed});
  }
  return out;
}

} // namespace clampwright::locking
