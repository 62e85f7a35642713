// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/wrench.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace clampwright::tightening {

namespace {

using finding::Code;
using finding::Severity;

double on_scale(quantity::Torque torque, const Wrench& wrench) {
  return quantity::from_si(quantity::in_newton_metres(torque), *wrench.unit);
}

quantity::Torque torque_at(double mark, const Wrench& wrench) {
  return quantity::newton_metres(quantity::to_si(mark, *wrench.unit));
}

bool turns(const Wrench& wrench, thread::Turn turn) {
  return turn == thread::Turn::clockwise ? wrench.turns_clockwise : wrench.turns_anticlockwise;
}

std::string date_text(std::chrono::year_month_day day) {
  return fmt::format("{:04}-{:02}-{:02}", int(day.year()), unsigned(day.month()), unsigned(day.day()));
}

// The marks below and above the torque, the nearer one first.
std::optional<double> nearest_mark(const Wrench& wrench, const WrenchTask& task) {
  const double wanted = on_scale(task.torque, wrench);
  if (!wrench.step) return wanted;
  const double below = std::floor(wanted / *wrench.step + 1e-9) * *wrench.step;
  const double above = below + *wrench.step;
  const auto allowed = [&](double mark) {
    const bool in_range = mark >= wrench.low && mark <= wrench.high;
    return in_range && !(task.low && torque_at(mark, wrench) < *task.low) &&
           !(task.high && torque_at(mark, wrench) > *task.high);
  };
  const bool below_first = wanted - below <= above - wanted + 1e-9 * *wrench.step;
  for (const double mark : {below_first ? below : above, below_first ? above : below})
    if (allowed(mark)) return mark;
  return std::nullopt;
}

} // namespace

WrenchSetting set_wrench(const Wrench& wrench, const WrenchTask& task, std::chrono::year_month_day today) {
  WrenchSetting out;
  const double wanted = on_scale(task.torque, wrench);
  const auto scale_end = [&](double mark) { return torque_at(mark, wrench); };
  bool can = true;
  if (wanted < wrench.low) {
    out.findings.push_back({Code::below_tool_range, Severity::stop, {wrench.name, scale_end(wrench.low), task.torque}});
    can = false;
  }
  if (wanted > wrench.high) {
    out.findings.push_back(
        {Code::above_tool_range, Severity::stop, {wrench.name, scale_end(wrench.high), task.torque}});
    can = false;
  }
  if (!turns(wrench, task.turn)) {
    out.findings.push_back(
        {Code::wrench_direction, Severity::stop, {wrench.name, std::string(thread::turn_name(task.turn))}});
    can = false;
  }
  if (wrench.due && *wrench.due <= today)
    out.findings.push_back({Code::wrench_overdue, Severity::stop, {wrench.name, date_text(*wrench.due)}});
  if (can) out.setting = nearest_mark(wrench, task);
  out.suitable = out.setting.has_value() && out.findings.empty();
  return out;
}

} // namespace clampwright::tightening
