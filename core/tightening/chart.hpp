// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque chart: one question, put to many sizes and classes. Each row is the answer that `torque_for` gives; nothing
// is worked out in another way here.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::tightening {

struct ChartRow {
  thread::Thread thread;
  std::string class_name;
  std::optional<TorqueAnswer> answer;
  std::string none_because; // where there is no answer
};

// Sizes that were asked for and that the class does not come in.
struct ChartGap {
  std::string class_name;
  std::vector<std::string> threads;
};

struct Chart {
  std::string approved_data_class = {}; // an aircraft class among those asked for, or empty
  Wanted wanted;
  Case common;                      // what was said of every row: surfaces, friction, locks
  std::vector<std::string> threads; // by rising diameter
  std::vector<std::string> classes; // as they were named
  std::vector<ChartRow> rows;       // class by class, threads in their order
  std::vector<ChartGap> gaps;
};

// A finding of one row or more, its facts those of the gravest.
struct SharedFinding {
  finding::Finding finding;
  std::size_t at;                // that row
  std::vector<std::size_t> rows; // every row that has it, in order
};

// What the rows have found, each code once, gravest first; before it the caution that belongs to a chart of sizes,
// with no row.
[[nodiscard]] std::vector<SharedFinding> shared_findings(const Chart& chart);

// Would the torque bring the bolt past its limit at likely friction? Then it is not to be set.
[[nodiscard]] bool is_not_to_be_set(const ChartRow& row);

} // namespace clampwright::tightening
