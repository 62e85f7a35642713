// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/uncertainty.hpp"

#include <cmath>
#include <numbers>
#include <utility>

namespace clampwright::tightening {

namespace {

double standard_of(const Influence& influence) {
  return influence.spread == Spread::limits ? influence.share * std::numbers::inv_sqrt3 : influence.share;
}

} // namespace

Influence wrench_influence(const WrenchAccuracy& accuracy) {
  return {"wrench", accuracy.share, Spread::limits, accuracy.basis};
}

Budget budget_of(std::vector<Influence> of_torque, Influence friction) {
  Budget budget{{}, 0, 0};
  double variance = 0;
  const auto add = [&](Influence influence) {
    const double standard = standard_of(influence);
    variance += standard * standard;
    budget.lines.push_back({std::move(influence), standard, 0});
  };
  for (Influence& influence : of_torque)
    add(std::move(influence));
  budget.torque = std::sqrt(variance);
  add(std::move(friction));
  budget.load = std::sqrt(variance);
  if (variance > 0)
    for (BudgetLine& line : budget.lines)
      line.of_variance = line.standard * line.standard / variance;
  return budget;
}

} // namespace clampwright::tightening
