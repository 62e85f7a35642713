// SPDX-License-Identifier: GPL-3.0-or-later
//
// A printed torque that cannot be meant, and the units in which the same number could be. A slip between lbf·ft and
// N·m (1.36) or between kgf·m and m·daN (1.02) lies within what friction and the choice of a torque already spread, so
// it cannot be told from the number, and is not claimed.
#pragma once

#include <vector>

#include "core/quantity/unit.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::tightening {

// The limits of sense, as shares of the proof load. A torque is beyond sense where even the highest friction leaves the
// bolt past its proof load, or even the lowest leaves it under a fifth; another unit fits where both models, as far as
// they are known, come to likely shares that torques are commonly chosen for. The project's limits.
inline constexpr double k_senselessly_low = 0.20;
inline constexpr double k_sensible_from = 0.40;
inline constexpr double k_sensible_to = 1.00;

// Units that differ by less than this are never told apart: lbf·ft is 1.3558 N·m, lbf·in 1.152 kgf·cm.
inline constexpr double k_near_units = 1.36;

// A unit in which the number would make sense, and what it would come to.
struct UnitFit {
  const quantity::Unit* unit;
  quantity::Torque torque;
  double likely; // share of proof
};

// Every unit of torque, other than the printed one and those near it, in which `value` would make sense for the bolt of
// `answer`; none where `answer`, which is for value in the printed unit, makes sense itself, or where nothing can be
// said: another kind than a bolt, no proof load, an angle that follows, a soft part that sets the limit. Units that
// come to the same torque are all listed: which was meant, nobody can tell.
[[nodiscard]] std::vector<UnitFit> units_that_fit(const ClampAnswer& answer, double value,
                                                  const quantity::Unit& printed);

} // namespace clampwright::tightening
