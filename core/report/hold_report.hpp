// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/crank/holding.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"

namespace clampwright::report {

// How the crank is held: what bears it, the most that may be pulled, and all ways ranked by their load path. Sources
// are the caller's.
[[nodiscard]] Document hold_report(const crank::HoldAnswer& answer, const quantity::DisplayUnits& units);

// What a stop that is on record makes of a torque, in a few rows: for a joint at a glance.
[[nodiscard]] std::vector<Row> stop_rows(const crank::StopAnswer& stop, const quantity::DisplayUnits& units);

} // namespace clampwright::report
