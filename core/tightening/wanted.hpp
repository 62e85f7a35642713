// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/problem/problem.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::tightening {

// The torque for the wanted clamp load, and what that torque clamps. For a load or a share of proof it is taken at
// likely friction; for a share of yield at the lowest friction, where the bolt is loaded most. By thread friction where
// that is known, else by nut factor.
//
// Fails with usage where something that the aim needs is missing: the proof load, a stated friction with a known face,
// the yield; with out-of-range for a load or share that cannot be meant.
[[nodiscard]] Result<TorqueAnswer> torque_for(const Case& asked, const Wanted& wanted,
                                              std::optional<WrenchAccuracy> accuracy = std::nullopt);

} // namespace clampwright::tightening
