// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether a torque wrench can be relied on: calibrated, not past its time or its cycles, not dropped or overloaded
// since, and not taken out of use.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

#include "core/finding/finding.hpp"

namespace clampwright::tightening {

// ISO 6789:2003 as explained in a tool handbook (second hand); the shop's own procedure takes precedence.
inline constexpr int k_default_months = 12;
inline constexpr int k_default_cycles = 5000;

// A drop or an overload, after which a wrench is to be calibrated before it is used again (AC 43.13-1B, para 7-40;
// ISO 6789; both second hand).
enum class Mishap { drop, overload };

struct MishapOn {
  Mishap what;
  std::chrono::year_month_day day;
};

struct Retired {
  std::chrono::year_month_day day;
  std::string because;
};

struct Upkeep {
  std::optional<std::chrono::year_month_day> calibrated; // last
  std::optional<int> months;                             // between calibrations; the default where it is not said
  std::optional<int> cycle_limit;                        // likewise
  std::optional<std::chrono::year_month_day> due;        // as its sheet says
  int cycles = 0;                                        // since the last calibration, as logged
  std::optional<MishapOn> mishap;                        // the first since then
  std::optional<Retired> retired;
};

// So many months on; from the end of a month to the end of one, where that has fewer days.
[[nodiscard]] std::chrono::year_month_day months_on(std::chrono::year_month_day day, int months);

// The day on which the calibration is due: by its sheet or by months, whichever is first. Nothing where no calibration
// is on record.
[[nodiscard]] std::optional<std::chrono::year_month_day> due_day(const Upkeep& upkeep);

// Cycles until it is due by them; 0 where it is.
[[nodiscard]] int cycles_left(const Upkeep& upkeep);

// When it falls due if it is used so many times a day: by date or by cycles, whichever is first. Nothing where neither
// can be told.
struct NextDue {
  std::chrono::year_month_day day;
  bool by_cycles;
};
[[nodiscard]] std::optional<NextDue> next_due(const Upkeep& upkeep, std::chrono::year_month_day today,
                                              double cycles_a_day);

// wrench-retired; wrench-dropped; wrench-overdue, from the day and the cycle on which it is due (all stop);
// calibration-unknown (mind). Of a retired wrench nothing else is said.
[[nodiscard]] finding::Findings upkeep_findings(const std::string& wrench, const Upkeep& upkeep,
                                                std::chrono::year_month_day today);

} // namespace clampwright::tightening
