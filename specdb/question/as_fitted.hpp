// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/locking/refit.hpp"
#include "core/problem/problem.hpp"
#include "specdb/question/joint_answer.hpp"

namespace clampwright::specdb {

// The joint on the surfaces that are fitted. A torque belongs to its surfaces: where they differ it is corrected once,
// by the ratio of the likely nut factors (T = K·F·d), the running torque left out of it, its passes in proportion;
// published factors for the same change stand beside. No correction where the figure itself cannot be used
// (`unusable_because` says why), where either state of the surfaces is not stated, where the figure names its own
// friction or an angle follows; none on surfaces that the fastener cannot have, for anything slippery on a taper, a
// plug or a compound lock, nor upwards where something soft sets the limit. Fails with no-such for surfaces that are
// not known.
[[nodiscard]] Result<AsFitted> as_fitted(const Catalogue& catalogue, const JointRecord& joint,
                                         const FigureAnswer& figure, const std::string& surfaces,
                                         const std::optional<tightening::WrenchAccuracy>& accuracy,
                                         const std::string& unusable_because);

// What of the joint decides whether its torque may be corrected.
[[nodiscard]] locking::RefitPlace place_of(const JointRecord& joint, const tightening::Case& asked);

} // namespace clampwright::specdb
