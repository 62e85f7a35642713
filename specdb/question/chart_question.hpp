// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>

#include "core/tightening/chart.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

// A chart as it was asked for. Every row is the question `each` with a thread and a class of its own.
struct ChartQuestion {
  std::string classes;             // "8.8, 10.9"
  std::optional<std::string> from; // a thread or a size: "M6", "1/4"
  std::optional<std::string> to;
  std::optional<std::string> series;         // "coarse", "fine", "UNC", …, "all"; coarse, or UNC and UNF, if not said
  CaseQuestion each;                         // thread and class are not read
  std::optional<std::string> proof_fraction; // 75% if neither is said
  std::optional<std::string> yield_fraction; // at the lowest friction
};

// Without --class, which is text, and what is said of each row.
inline constexpr std::array k_chart_fields{
    TextField<ChartQuestion>{"--from", &ChartQuestion::from},
    TextField<ChartQuestion>{"--to", &ChartQuestion::to},
    TextField<ChartQuestion>{"--series", &ChartQuestion::series},
    TextField<ChartQuestion>{"--proof-fraction", &ChartQuestion::proof_fraction},
    TextField<ChartQuestion>{"--yield-fraction", &ChartQuestion::yield_fraction},
};

// The chart, its rows by the very functions that answer for one bolt. Sizes that a class does not come in are its gaps;
// a size that has no answer because load or face is not known stays as a row that says so.
//
// Fails with usage for no class, classes of two thread systems, or where nothing could be answered for want of
// friction; with no-such for an unknown class or series, an end that is of the other system, or where no class has any
// of the sizes; with not-understood for texts, and ends the wrong way round.
[[nodiscard]] Result<tightening::Chart> chart_for(const Catalogue& catalogue, const ChartQuestion& question);

// Those of the rows, each once.
[[nodiscard]] finding::Findings findings_of(const tightening::Chart& chart);

} // namespace clampwright::specdb
