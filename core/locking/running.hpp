// SPDX-License-Identifier: GPL-3.0-or-later
//
// The running torque of locking nuts and inserts: what the tables ask of a used one, and what it adds to a printed
// torque. The tables and the rules contradict each other, so each answers for itself and none is picked.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"

namespace clampwright::locking {

struct RunningLimit {
  std::string kind;                       // "least running torque"
  std::string nut;                        // "all-metal locking nut"
  std::optional<quantity::Torque> torque; // none where the table has words instead
  std::string printed;                    // as printed, with its unit
  std::string note;
  Source source;
  bool insert = false; // of a locking insert, not of a nut
};

enum class RunningVerdict { ok, no, not_judged };

// A used nut whose running torque was measured, by one line. A least value for new nuts, or for the first time that it
// comes off, judges no used one; the greatest one does, since it drags most when it is new.
[[nodiscard]] RunningVerdict judge(const RunningLimit& limit, quantity::Torque measured);

enum class Reuse { ok, drags_too_little, drags_too_much, tables_differ, not_known };

// By all lines together: `tables_differ` where one passes the nut and another does not.
[[nodiscard]] Reuse judge(const std::vector<RunningLimit>& limits, quantity::Torque measured);

// A rule for adding the running torque to a printed torque: from a share of it on, or always.
struct RunningRule {
  std::string name;
  std::optional<double> from_share;
  std::string words;
  Source source;
};

struct RuleAnswer {
  RunningRule rule;
  bool adds = false;
  quantity::Torque set; // on the wrench
};

[[nodiscard]] std::vector<RuleAnswer> add_running(quantity::Torque printed, quantity::Torque running,
                                                  const std::vector<RunningRule>& rules);

} // namespace clampwright::locking
