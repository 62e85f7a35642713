// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <limits>
#include <optional>
#include <string>

#include "core/finding/finding.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"
#include "core/thread/turning.hpp"
#include "core/tightening/adaptor.hpp"
#include "core/tightening/case.hpp"
#include "core/tightening/uncertainty.hpp"
#include "core/tightening/upkeep.hpp"

namespace clampwright::tightening {

// A torque wrench as its scale and its calibration sheet say. Numbers are in the unit of the scale.
struct Wrench {
  std::string name;
  double low;
  double high; // k_no_end where the end of the scale is not known
  const quantity::Unit* unit;
  std::optional<double> step; // between two marks; none for a display, or where it is not known
  WrenchAccuracy accuracy;
  bool turns_clockwise; // is accurate that way
  bool turns_anticlockwise;
  std::optional<Upkeep> upkeep = std::nullopt;        // of a wrench of the register
  std::optional<quantity::Length> arm = std::nullopt; // from the middle of the grip to the drive
};

inline constexpr double k_no_end = std::numeric_limits<double>::infinity();

// What is wanted of it: the torque that is to reach the fastener, its limits where the figure prints a tolerance, and
// which way, where that is known.
struct WrenchTask {
  quantity::Torque torque;
  std::optional<quantity::Torque> low;
  std::optional<quantity::Torque> high;
  std::optional<thread::Turn> turn;
};

// Where to set it. `setting` is empty where this wrench cannot do it; the findings say why.
struct WrenchSetting {
  std::optional<double> setting; // in the unit of the scale, on a mark
  bool suitable = false;         // in range, that way round, known to be in date
  finding::Findings findings;
};

// The mark nearest to the torque that lies in the wrench's range and within the limits of the figure; of two equally
// near the lower one. Where the figure names no limits a mark lies within 10 % of it, or there is none
// (k_usual_tolerance). Marks are whole steps from nothing. Findings: below-tool-range, above-tool-range,
// wrench-direction and no-mark, which leave no setting; those of its upkeep; coarse-scale and wrench-wider-than-limits,
// which leave it suitable.
// "Below" means below the lowest mark (ISO 6789-1:2017); older rules leave out the lowest fifth or quarter of the
// scale, and the finding's text names them.
[[nodiscard]] WrenchSetting set_wrench(const Wrench& wrench, const WrenchTask& task, std::chrono::year_month_day today);

// The same through an adaptor: what to set, what then reaches the fastener, and what would if the torque itself were
// set, the adaptor being forgotten.
struct LeverSetting {
  Levers levers;
  quantity::Torque exact; // to set, before it is brought to a mark
  WrenchSetting on_scale; // the torques of its findings are those of the scale, not of the fastener
  std::optional<quantity::Torque> setting = {};
  std::optional<quantity::Torque> applied = {};
  quantity::Torque applied_if_forgotten;
};

// Precondition: check_levers(levers).
[[nodiscard]] LeverSetting set_wrench(const Wrench& wrench, const WrenchTask& task, const Levers& levers,
                                      std::chrono::year_month_day today);

// What a torque may be off where its page names nothing: TB 9-2320-279-13&P-2, torque limits (read second hand).
inline constexpr double k_usual_tolerance = 0.1;

// How far a reading may be off: ISO 6789 states it as a share of the reading.
[[nodiscard]] quantity::Torque permissible_deviation(quantity::Torque reading, const WrenchAccuracy& accuracy);

// The division of the scale above which it is too coarse for a torque: a tenth of it (TM 1-1500-204-23-9, para 8-3).
[[nodiscard]] quantity::Torque coarsest_division(quantity::Torque torque);

} // namespace clampwright::tightening
