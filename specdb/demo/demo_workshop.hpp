// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <filesystem>

#include "core/problem/problem.hpp"

namespace clampwright::specdb {

// Makes a workshop file with the invented demo workshop. `today` sets when its wrenches are due: one last month, the
// others later. Fails like Workshop::create.
[[nodiscard]] Result<void> make_demo_workshop(const std::filesystem::path& path, std::chrono::year_month_day today);

} // namespace clampwright::specdb
