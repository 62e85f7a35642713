// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/crank/hand.hpp"
#include "core/report/document.hpp"

namespace clampwright::report {

// What turns the rule of the steady load round.
struct Reversal {
  std::string_view name; // for programs: "braking"
  std::string_view words;
};
[[nodiscard]] std::vector<Reversal> reversals();

// Which hand is expected, why, what reverses it, what precession adds: and always to look at the thread. Sources are
// the caller's.
[[nodiscard]] Document hand_report(const crank::HandAnswer& answer);

} // namespace clampwright::report
