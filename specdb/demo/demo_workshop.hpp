// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

#include "core/problem/problem.hpp"

namespace clampwright::specdb {

// Makes the demo workshop: the Reedmarsh Volunteer Flood Crew with its machines, sources and joints, all invented and
// marked so. Fails as Workshop::create does.
[[nodiscard]] Result<void> make_demo_workshop(const std::filesystem::path& path);

} // namespace clampwright::specdb
