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

// The engagement at which a thread of that width bears the load.
[[nodiscard]] quantity::Length strip_length(quantity::Force load, quantity::Length width, quantity::Stress shear);

// Basic sizes in the place of limits: no clearance at all. Areas by them are about a third too large; only for showing
// by how much.
[[nodiscard]] Limits basic_limits(const Thread& thread);

// The thread in a part that takes a wire insert for `thread`: each diameter is larger by 1.5·H = 3·√3/4·P, for the
// wire, a rhombus of 60°, lies with a whole thread inside and one outside (ASME B18.29.1, from memory). The tolerances
// of such holes are not in the tables; those of the bolt's own thread are taken for them. Precondition: a form of 60°.
[[nodiscard]] Limits wire_insert_limits(const Thread& thread, const Limits& limits);

} // namespace clampwright::thread
