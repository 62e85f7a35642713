// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/problem/problem.hpp"
#include "core/tightening/answer.hpp"
#include "core/tightening/case.hpp"

namespace clampwright::tightening {

// What a torque clamps, by both models, as bands: `likely` at the set torque and likely friction, `low` at the least
// torque the wrench may give and the highest friction (0 where that does not exceed the running torque), `high` the
// reverse. Without `accuracy` the wrench is taken by ISO 6789. A model whose friction or face is not known is left out.
//
// Fails with out-of-range where the torque does not exceed the running torque, or shank and bore do not fit.
// Postcondition: every band rises; shares add to 1; findings are in order.
[[nodiscard]] Result<ClampAnswer> clamp(const Case& asked, quantity::Torque torque,
                                        std::optional<WrenchAccuracy> accuracy = std::nullopt);

// Von Mises stress over yield while a torque of `torque` is on the bolt and its thread friction is `mu_thread`, the
// head's `mu_head`. Precondition: face, section and yield are known and torque exceeds the running torque.
[[nodiscard]] double use_of_yield(const Case& asked, quantity::Torque torque, friction::FrictionCoefficient mu_thread,
                                  friction::FrictionCoefficient mu_head);

// The same for a given clamp load: what its thread torque and the running torque do to the bolt.
[[nodiscard]] double use_of_yield_at(const Case& asked, quantity::Force preload,
                                     friction::FrictionCoefficient mu_thread);

} // namespace clampwright::tightening
