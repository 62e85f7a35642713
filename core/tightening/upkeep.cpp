// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/upkeep.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/calendar/moment.hpp"

namespace clampwright::tightening {

namespace {

using finding::Code;
using finding::Severity;
using std::chrono::year_month_day;

// Further ahead than anybody plans; keeps the sum inside the calendar.
constexpr double k_longest_days = 366.0 * 1000;

int cycle_limit(const Upkeep& upkeep) { return upkeep.cycle_limit.value_or(k_default_cycles); }

} // namespace

year_month_day months_on(year_month_day day, int months) {
  const year_month_day there = day + std::chrono::months(months);
  if (there.ok()) return there;
  return there.year() / there.month() / std::chrono::last;
}

std::optional<year_month_day> due_day(const Upkeep& upkeep) {
  std::optional<year_month_day> due = upkeep.due;
  if (upkeep.calibrated) {
    const year_month_day by_months = months_on(*upkeep.calibrated, upkeep.months.value_or(k_default_months));
    if (!due || by_months < *due) due = by_months;
  }
  return due;
}

int cycles_left(const Upkeep& upkeep) { return std::max(0, cycle_limit(upkeep) - upkeep.cycles); }

std::optional<NextDue> next_due(const Upkeep& upkeep, year_month_day today, double cycles_a_day) {
  std::optional<NextDue> next;
  if (const auto day = due_day(upkeep)) next = NextDue{*day, false};
  if (!(cycles_a_day > 0)) return next;
  const double days = std::floor(cycles_left(upkeep) / cycles_a_day);
  if (days > k_longest_days) return next;
  const year_month_day by_cycles = std::chrono::sys_days(today) + std::chrono::days(static_cast<int>(days));
  if (!next || by_cycles < next->day) next = NextDue{by_cycles, true};
  return next;
}

finding::Findings upkeep_findings(const std::string& wrench, const Upkeep& upkeep, year_month_day today) {
  if (upkeep.retired)
    return {{Code::wrench_retired,
             Severity::stop,
             {wrench, calendar::write_day(upkeep.retired->day), upkeep.retired->because}}};
  finding::Findings findings;
  if (upkeep.mishap)
    findings.push_back({Code::wrench_dropped,
                        Severity::stop,
                        {wrench, std::string(upkeep.mishap->what == Mishap::drop ? "dropped" : "overloaded"),
                         calendar::write_day(upkeep.mishap->day)}});
  const auto due = due_day(upkeep);
  if (due && *due <= today)
    findings.push_back({Code::wrench_overdue, Severity::stop, {wrench, calendar::write_day(*due)}});
  else if (cycles_left(upkeep) == 0)
    findings.push_back({Code::wrench_overdue,
                        Severity::stop,
                        {wrench, fmt::format("{}", upkeep.cycles), fmt::format("{}", cycle_limit(upkeep))}});
  if (!due) findings.push_back({Code::calibration_unknown, Severity::mind, {wrench}});
  return findings;
}

} // namespace clampwright::tightening
