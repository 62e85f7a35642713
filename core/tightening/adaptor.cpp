// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/adaptor.hpp"

#include <cmath>

#include <fmt/format.h>

namespace clampwright::tightening {

namespace {

// With less of the arm left nobody knows what reaches the fastener; a tenth is our own figure.
constexpr double k_least_effective = 0.1;

} // namespace

Result<void> check_levers(const Levers& levers) {
  if (!levers.adaptor) return {};
  const double angle = quantity::in_degrees(levers.adaptor->angle);
  if (!(angle >= -180.0 && angle <= 180.0))
    return not_understood("out-of-range", fmt::format("an angle of {:.6g}° was understood", angle), {},
                          "write 0deg for straight ahead, 90deg for square to the wrench, 180deg for back over the "
                          "handle; nothing lies beyond that",
                          "--adaptor-angle");
  if (!(effective_arm(levers) > quantity::Length()))
    return not_understood(
        "out-of-range",
        fmt::format("an adaptor of {:.6g} mm at {:.6g}° on an arm of {:.6g} mm was understood: the fastener would lie "
                    "under the hand or behind it, where no pull tightens it",
                    quantity::in_millimetres(levers.adaptor->length), angle, quantity::in_millimetres(levers.arm)),
        {}, "give a shorter adaptor, a smaller angle, or a longer wrench with --arm", "--adaptor");
  if (effective_arm(levers) < k_least_effective * levers.arm)
    return not_understood(
        "out-of-range",
        fmt::format(
            "only {:.3g} mm of the arm of {:.6g} mm would be left: a hand that slips by a millimetre changes the "
            "torque by more than a fiftieth of it",
            quantity::in_millimetres(effective_arm(levers)), quantity::in_millimetres(levers.arm)),
        {}, "give a shorter adaptor, a smaller angle, or a longer wrench with --arm", "--adaptor");
  return {};
}

quantity::Length effective_arm(const Levers& levers) {
  if (!levers.adaptor) return levers.arm;
  return levers.arm + levers.adaptor->length * std::cos(quantity::in_radians(levers.adaptor->angle));
}

double setting_share(const Levers& levers) { return levers.arm / effective_arm(levers); }

quantity::Torque setting_for(quantity::Torque wanted, const Levers& levers) { return wanted * setting_share(levers); }

quantity::Torque applied_by(quantity::Torque setting, const Levers& levers) { return setting / setting_share(levers); }

} // namespace clampwright::tightening
