// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/chart.hpp"

namespace clampwright::report {

// A letter for what holds for some rows and not for others.
struct Mark {
  std::string letter;
  const tightening::SharedFinding* shared;
};

// Letters for those of `shared` that not every answered row has. They point into `shared`.
[[nodiscard]] std::vector<Mark> marks_of(const tightening::Chart& chart,
                                         const std::vector<tightening::SharedFinding>& shared);

// The rows of one class. All classes of a chart have the same columns: those that one row at least can fill.
[[nodiscard]] Table class_table(const tightening::Chart& chart, const std::string& class_name,
                                const std::vector<Mark>& marks, const quantity::DisplayUnits& units);

// What a row was answered by.
[[nodiscard]] bool by_friction(const tightening::ChartRow& row);
[[nodiscard]] bool by_nut_factor(const tightening::ChartRow& row);

} // namespace clampwright::report
