// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/answer.hpp"

namespace clampwright::report {

// What a torque clamps.
[[nodiscard]] Document clamp_report(const tightening::ClampAnswer& answer, const quantity::DisplayUnits& units);

// What torque a clamp load wants.
[[nodiscard]] Document torque_report(const tightening::TorqueAnswer& answer, const quantity::DisplayUnits& units);

// The rows on clamp load and limits, for reports that begin with something else.
[[nodiscard]] Section clamp_section(const tightening::ClampAnswer& answer, const quantity::DisplayUnits& units);

// "oiled; μ 0.08 / 0.12 / 0.16; K 0.12 / 0.18 / 0.22"
[[nodiscard]] std::string surfaces_words(const tightening::Case& asked);

// Findings in words; maker-first is left to the foot line.
[[nodiscard]] std::vector<Remark> remarks_of(const finding::Findings& findings, const quantity::DisplayUnits& units);

// Everything that the answer rests on, each source once.
[[nodiscard]] std::vector<Source> sources_of(const tightening::ClampAnswer& answer);

} // namespace clampwright::report
