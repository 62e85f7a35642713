// SPDX-License-Identifier: GPL-3.0-or-later
//
// Torque wrenches between words, records of the workshop and the core.
#pragma once

#include <chrono>
#include <string>
#include <string_view>

#include "core/problem/problem.hpp"
#include "core/quantity/unit.hpp"
#include "core/thread/turning.hpp"
#include "core/tightening/wrench.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// A scale as its ends are written: "10..60Nm". Above nothing, and rising.
struct ScaleRange {
  double low;
  double high;
  const quantity::Unit* unit;
};
[[nodiscard]] Result<ScaleRange> read_scale_range(std::string_view text);

// The distance of two marks on a scale in that unit; it must be written in that unit, for a scale has one.
[[nodiscard]] Result<double> read_scale_step(std::string_view text, const quantity::Unit& unit);

// A share above nothing and under one: how far a wrench may be off.
[[nodiscard]] Result<double> read_accuracy(std::string_view text);

// A day of the calendar, 2026-12-31, that is not after today.
[[nodiscard]] Result<std::chrono::year_month_day> read_past_day(std::string_view text,
                                                                std::chrono::year_month_day today);

// What the register knows of a wrench, as the core reckons with it: its last calibration, what befell it since, and
// how often it was used.
[[nodiscard]] tightening::Wrench registered_wrench(const WrenchRecord& record);
[[nodiscard]] tightening::Upkeep upkeep_of(const WrenchRecord& record);

// "10 to 60 N·m, marks 0.5 apart", "both ways", "clockwise only".
[[nodiscard]] std::string scale_words(const tightening::Wrench& wrench);
[[nodiscard]] std::string direction_words(const tightening::Wrench& wrench);

} // namespace clampwright::specdb
