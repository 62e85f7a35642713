// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque chart never leaves as a bare grid: what it rests on stands at its head, over every piece that a page or a
// pair of scissors may make of it, and in every row of a file.
#pragma once

#include <chrono>
#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/chart.hpp"

namespace clampwright::report {

// From what a chart was made, so that one found on a wall in five years can be told from one of today.
struct Made {
  std::string program; // "clampwright 0.1.0"
  std::string data_version;
  std::chrono::year_month_day on{};
};

[[nodiscard]] Document chart_report(const tightening::Chart& chart, const Made& made,
                                    const quantity::DisplayUnits& units);

// "75 % of the proof load": what the torques are for.
[[nodiscard]] std::string chart_purpose(const tightening::Wanted& wanted);

// The two cautions in one line, for wherever a piece of the chart may go.
[[nodiscard]] std::string_view chart_caution();

// Everything that the rows rest on, each source once.
[[nodiscard]] std::vector<Source> sources_of(const tightening::Chart& chart);

} // namespace clampwright::report
