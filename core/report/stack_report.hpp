// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/joint/angle_turn.hpp"
#include "core/joint/slot.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"

namespace clampwright::report {

// "11.4 kN (10.2 to 12.1)": likely, and the ends where they differ.
[[nodiscard]] std::string load_words(const quantity::Band<quantity::Force>& band, const quantity::DisplayUnits& units);

// How one goes on where the turn was interrupted: rows of a section.
[[nodiscard]] std::vector<Row> interruption_rows();

[[nodiscard]] Document angle_report(const joint::AngleAnswer& answer, const quantity::DisplayUnits& units);
[[nodiscard]] Document slot_report(const joint::SlotAnswer& answer, const quantity::DisplayUnits& units);

} // namespace clampwright::report
