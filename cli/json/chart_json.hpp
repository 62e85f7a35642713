// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "core/tightening/chart.hpp"

namespace clampwright::cli {

// The `result` of chart: each row has the keys of torque.
[[nodiscard]] Json chart_json(const tightening::Chart& chart, const std::string& data_version);

} // namespace clampwright::cli
