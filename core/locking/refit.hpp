// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque that was given for one state of the surfaces, used on another. It is corrected once: T = K·F·d, so for one
// clamp load torques go like nut factors. Where that must not be done, the reason is said instead.
#pragma once

#include <optional>
#include <string>

#include "core/friction/friction.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"

namespace clampwright::locking {

// Fitted over stated: the likely nut factors over each other, and the ends of the two bands set against each other.
[[nodiscard]] quantity::Band<double> ratio_of(const friction::NutFactorBand& stated,
                                              const friction::NutFactorBand& fitted);

// The running torque drags whatever the surfaces are: it is left out of the correction.
[[nodiscard]] quantity::Torque refitted(quantity::Torque stated, quantity::Torque running, double factor);

// What of the joint decides whether a torque may be corrected at all.
struct RefitPlace {
  std::optional<bool> stainless; // the fastener; empty where it is not known
  bool taper = false;            // a cone holds by friction
  bool plug = false;
  bool compound = false;      // locked with a compound
  std::string soft_part = {}; // wood, plastic, gasket; empty: none
};

// Why a fastener cannot have these surfaces: those of stainless steel on plain steel, zinc on stainless. Empty where it
// can.
[[nodiscard]] std::string why_not_these_surfaces(const RefitPlace& place, const friction::Surfaces& fitted);

// Why nothing slippery may come in: the joint lives by dry surfaces. Empty where it may, and for surfaces that hold a
// wet compound, which is not a lubricant.
[[nodiscard]] std::string why_nothing_slippery(const RefitPlace& place, const friction::Surfaces& fitted);

// Why there is no correction by the two states of the surfaces and the place; empty where there is one. The two differ.
[[nodiscard]] std::string why_not_corrected(const RefitPlace& place, const friction::Surfaces& stated,
                                            const friction::Surfaces& fitted);

} // namespace clampwright::locking
