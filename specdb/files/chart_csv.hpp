// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/chart_report.hpp"
#include "core/tightening/chart.hpp"
#include "specdb/files/csv.hpp"

namespace clampwright::specdb {

// A chart for spreadsheets and programs: metric, unrounded, the unit in the column's name, unknown is an empty field.
// CSV has no place for notes, and rows are copied alone: so each carries what it rests on, its sources and its caution.
[[nodiscard]] CsvTable chart_table(const tightening::Chart& chart, const report::Made& made);

} // namespace clampwright::specdb
