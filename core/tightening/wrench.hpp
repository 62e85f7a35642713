// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>

#include "core/finding/finding.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"
#include "core/thread/turning.hpp"
#include "core/tightening/case.hpp"

namespace clampwright::tightening {

// A torque wrench as its scale and its calibration sheet say. Numbers are in the unit of the scale.
struct Wrench {
  std::string name;
  double low;
  double high;
  const quantity::Unit* unit;
  std::optional<double> step; // between two marks; none for a display
  WrenchAccuracy accuracy;
  bool turns_clockwise; // is accurate that way
  bool turns_anticlockwise;
  std::optional<std::chrono::year_month_day> due; // for its next calibration
};

// What is wanted of it: the torque, its limits where the figure prints a tolerance, and which way.
struct WrenchTask {
  quantity::Torque torque;
  std::optional<quantity::Torque> low;
  std::optional<quantity::Torque> high;
  thread::Turn turn;
};

// Where to set it. `setting` is empty where this wrench cannot do it; the findings say why.
struct WrenchSetting {
  std::optional<double> setting; // in the unit of the scale, on a mark
  bool suitable = false;         // in range, that way round, in date
  finding::Findings findings;
};

// The mark nearest to the torque that lies in the wrench's range and within the limits of the figure; of two equally
// near the lower one. Findings: below-tool-range, above-tool-range and wrench-direction, which leave no setting;
// wrench-overdue from the day on which the calibration is due. "Below" means below the lowest mark (ISO 6789-1:2017);
// older rules leave out the lowest fifth or quarter of the scale, and the finding's text names them.
[[nodiscard]] WrenchSetting set_wrench(const Wrench& wrench, const WrenchTask& task, std::chrono::year_month_day today);

} // namespace clampwright::tightening
