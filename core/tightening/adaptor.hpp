// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque wrench shows the torque at its own drive. An adaptor (crow's foot, offset ring) moves the fastener away from
// the drive, and another torque reaches it. Moment of a force square to the handle, from the grip to the fastener; a
// plain extension bar in line with the fastener moves nothing and changes nothing.
#pragma once

#include <optional>

#include "core/problem/problem.hpp"
#include "core/quantity/quantity.hpp"

namespace clampwright::tightening {

// From the drive to the fastener, and at what angle from the line of the wrench: 0° straight ahead, 90° square to it,
// 180° back over the handle. To which side it points makes no difference.
struct Adaptor {
  quantity::Length length;
  quantity::Angle angle;
};

// From the middle of the grip to the drive, and on to the fastener.
struct Levers {
  quantity::Length arm;
  std::optional<Adaptor> adaptor;
};

// Fails with out-of-range where the angle is past 180° either way, and where the adaptor points back so far that the
// fastener lies under the hand or behind it (L + A·cos a ≤ 0).
[[nodiscard]] Result<void> check_levers(const Levers& levers);

// L + A·cos a: from the grip to the fastener, along the wrench.
[[nodiscard]] quantity::Length effective_arm(const Levers& levers);

// L/(L + A·cos a): what is set over what is applied.
[[nodiscard]] double setting_share(const Levers& levers);

// What to set so that `wanted` reaches the fastener, and what reaches it at a setting.
// Precondition: check_levers(levers).
[[nodiscard]] quantity::Torque setting_for(quantity::Torque wanted, const Levers& levers);
[[nodiscard]] quantity::Torque applied_by(quantity::Torque setting, const Levers& levers);

} // namespace clampwright::tightening
