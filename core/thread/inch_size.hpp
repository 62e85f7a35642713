// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace clampwright::thread {

// The diameter in inches that the size of a designation means: "1/4", "1 1/4" and "0.25" as they stand, "#10" as 0.190
// (ASME B1.1: 0.060 in and 0.013 in for each number, #0 to #12). Nothing for a fraction of nothing or another number.
[[nodiscard]] std::optional<double> inch_size(std::string_view size);

} // namespace clampwright::thread
