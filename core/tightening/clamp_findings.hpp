// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/finding/finding.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::tightening {

// Above this likely use of yield the verdict is near-limit (the project's own choice; VDI 2230-1 designs for 0.9).
inline constexpr double k_near_limit = 0.92;

// Under this likely share of proof a bolt is loosely tightened (the project's own choice; the textbook aim is 0.75).
inline constexpr double k_low_preload = 0.5;

// Harder bolts than this may break of hydrogen after electroplating: 390 HV (40 HRC) in SAE J1648, as quoted in a
// finishing forum; ISO 4042:2018 draws the line at the same hardness (from memory). Of ISO 898-1 only 12.9 is harder.
inline constexpr double k_brittle_from_HV = 390.0;

// Everything that must be said beside a clamp load, in order. Each finding fires on its condition alone.
[[nodiscard]] finding::Findings findings_of(const ClampAnswer& answer);

} // namespace clampwright::tightening
