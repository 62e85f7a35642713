// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/wrench.hpp"

#include <algorithm>
#include <cmath>

namespace clampwright::tightening {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Torque;

// Two torques that differ by less are the same: conversions and levers leave the last bits uncertain.
constexpr double k_same = 1e-9;

double on_scale(Torque torque, const Wrench& wrench) {
  return quantity::from_si(quantity::in_newton_metres(torque), *wrench.unit);
}

Torque torque_at(double mark, const Wrench& wrench) {
  return quantity::newton_metres(quantity::to_si(mark, *wrench.unit));
}

bool turns(const Wrench& wrench, thread::Turn turn) {
  return turn == thread::Turn::clockwise ? wrench.turns_clockwise : wrench.turns_anticlockwise;
}

bool is_below(double one, double other) { return one < other * (1 - k_same); }

// 3 steps of 0.1 are the mark 0.3 and not its neighbour.
double mark_at(double steps, double step) {
  const double mark = steps * step;
  return mark < 1e6 ? std::round(mark * 1e9) / 1e9 : mark;
}

// What the scale and the limits of the figure leave, in the unit of the scale.
struct Allowed {
  double low;
  double high;
};

Allowed allowed_on(const Wrench& wrench, const WrenchTask& task) {
  const bool has_limits = task.low || task.high;
  const auto low = has_limits ? task.low : std::optional((1.0 - k_usual_tolerance) * task.torque);
  const auto high = has_limits ? task.high : std::optional((1.0 + k_usual_tolerance) * task.torque);
  return {low ? std::max(wrench.low, on_scale(*low, wrench)) : wrench.low,
          high ? std::min(wrench.high, on_scale(*high, wrench)) : wrench.high};
}

// What the figure allows on its tighter side.
std::optional<Torque> tighter_limit(const WrenchTask& task) {
  std::optional<Torque> out;
  if (task.low) out = task.torque - *task.low;
  if (task.high) out = out ? std::min(*out, *task.high - task.torque) : *task.high - task.torque;
  return out;
}

// The marks below and above the torque, the nearer one first.
std::optional<double> nearest_mark(const Wrench& wrench, double wanted, const Allowed& allowed) {
  if (!wrench.step) return wanted;
  const double steps = std::floor(wanted / *wrench.step + k_same);
  const double below = mark_at(steps, *wrench.step);
  const double above = mark_at(steps + 1, *wrench.step);
  const auto fits = [&](double mark) {
    return mark > 0 && !is_below(mark, allowed.low) && !is_below(allowed.high, mark);
  };
  const bool below_first = wanted - below <= above - wanted + k_same * *wrench.step;
  for (const double mark : {below_first ? below : above, below_first ? above : below})
    if (fits(mark)) return mark;
  return std::nullopt;
}

} // namespace

Torque permissible_deviation(Torque reading, const WrenchAccuracy& accuracy) { return reading * accuracy.share; }

Torque coarsest_division(Torque torque) { return torque * 0.1; }

WrenchSetting set_wrench(const Wrench& wrench, const WrenchTask& task, std::chrono::year_month_day today) {
  WrenchSetting out;
  const double wanted = on_scale(task.torque, wrench);
  const auto refuse_scale = [&](Code code, double end) {
    out.findings.push_back({code, Severity::stop, {wrench.name, torque_at(end, wrench), task.torque}});
  };
  if (is_below(wanted, wrench.low)) refuse_scale(Code::below_tool_range, wrench.low);
  if (is_below(wrench.high, wanted)) refuse_scale(Code::above_tool_range, wrench.high);
  const bool on_its_scale = out.findings.empty();
  if (task.turn && !turns(wrench, *task.turn))
    out.findings.push_back(
        {Code::wrench_direction, Severity::stop, {wrench.name, std::string(thread::turn_name(*task.turn))}});
  if (out.findings.empty()) {
    const Allowed allowed = allowed_on(wrench, task);
    out.setting = nearest_mark(wrench, wanted, allowed);
    if (!out.setting)
      out.findings.push_back({Code::no_mark,
                              Severity::stop,
                              {wrench.name, torque_at(allowed.low, wrench), torque_at(allowed.high, wrench)}});
  }
  if (wrench.upkeep) {
    const finding::Findings more = upkeep_findings(wrench.name, *wrench.upkeep, today);
    out.findings.insert(out.findings.end(), more.begin(), more.end());
  }
  out.suitable = out.setting.has_value() && out.findings.empty();
  const Torque off = permissible_deviation(task.torque, wrench.accuracy);
  if (const auto limit = tighter_limit(task); on_its_scale && limit && is_below(*limit / off, 1.0))
    out.findings.push_back({Code::wrench_wider_than_limits, Severity::mind, {wrench.name, off, *limit}});
  // Off its scale there is nothing to set well.
  if (on_its_scale && wrench.step &&
      is_below(quantity::in_newton_metres(coarsest_division(task.torque)),
               quantity::in_newton_metres(torque_at(*wrench.step, wrench))))
    out.findings.push_back(
        {Code::coarse_scale, Severity::mind, {wrench.name, torque_at(*wrench.step, wrench), task.torque}});
  return out;
}

LeverSetting set_wrench(const Wrench& wrench, const WrenchTask& task, const Levers& levers,
                        std::chrono::year_month_day today) {
  const auto through = [&](Torque torque) { return setting_for(torque, levers); };
  const auto maybe = [&](const std::optional<Torque>& torque) {
    return torque ? std::optional(through(*torque)) : std::nullopt;
  };
  LeverSetting out{levers, through(task.torque), {}, {}, {}, applied_by(task.torque, levers)};
  out.on_scale = set_wrench(wrench, {out.exact, maybe(task.low), maybe(task.high), task.turn}, today);
  if (out.on_scale.setting) {
    // Without marks the setting is the torque itself, whatever the unit of the display leaves of its last bits.
    out.setting = wrench.step ? torque_at(*out.on_scale.setting, wrench) : out.exact;
    out.applied = wrench.step ? applied_by(*out.setting, levers) : task.torque;
  }
  return out;
}

} // namespace clampwright::tightening
