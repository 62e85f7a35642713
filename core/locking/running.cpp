// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/locking/running.hpp"

namespace clampwright::locking {

namespace {

// A share that is met exactly is met, whatever the unit it was converted from.
constexpr double k_whisker = 1e-9;

bool judges_used_ones(const RunningLimit& limit) {
  return limit.torque && limit.kind.find("first-on") == std::string::npos &&
         limit.kind.find("first-off") == std::string::npos;
}

} // namespace

RunningVerdict judge(const RunningLimit& limit, quantity::Torque measured) {
  if (!judges_used_ones(limit)) return RunningVerdict::not_judged;
  const double share = measured / *limit.torque;
  const bool keeps = limit.kind.starts_with("greatest") ? share <= 1.0 + k_whisker : share >= 1.0 - k_whisker;
  return keeps ? RunningVerdict::ok : RunningVerdict::no;
}

Reuse judge(const std::vector<RunningLimit>& limits, quantity::Torque measured) {
  bool passed = false;
  bool failed = false;
  for (const RunningLimit& limit : limits) {
    const RunningVerdict verdict = judge(limit, measured);
    const bool least = limit.kind.starts_with("least");
    if (!least && verdict == RunningVerdict::no) return Reuse::no;
    // Below the greatest alone nothing is said about wear.
    passed = passed || (least && verdict == RunningVerdict::ok);
    failed = failed || (least && verdict == RunningVerdict::no);
  }
  if (passed) return failed ? Reuse::tables_differ : Reuse::ok;
  return failed ? Reuse::no : Reuse::not_known;
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
