// SPDX-License-Identifier: GPL-3.0-or-later
//
// Stress in the bolt while it is tightened: tension by the clamp load together with torsion by the thread's torque.
// VDI 2230-1 since 2001 takes the section as fully plastic in torsion, W_P = π/12·d0³; editions before that took the
// elastic π/16·d0³, which loads the bolt 4 to 15 % earlier. A table without its edition must be classified before use.
#pragma once

#include "core/quantity/quantity.hpp"

namespace clampwright::tightening {

// d0: the circle that has that area.
[[nodiscard]] quantity::Length section_diameter(quantity::Area section);

[[nodiscard]] quantity::Stress tension(quantity::Force preload, quantity::Area section);
[[nodiscard]] quantity::Stress plastic_torsion(quantity::Torque torque, quantity::Area section);
[[nodiscard]] quantity::Stress elastic_torsion(quantity::Torque torque, quantity::Area section);

// √(σ² + 3·τ²), von Mises.
[[nodiscard]] quantity::Stress equivalent(quantity::Stress tension, quantity::Stress torsion);

} // namespace clampwright::tightening
