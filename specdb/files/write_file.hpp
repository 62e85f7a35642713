// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string_view>

#include "core/problem/problem.hpp"

namespace clampwright::specdb {

enum class IfThere { refuse, replace };

// Writes a file in one step: whoever looks sees the old file or the whole new one. A link is followed; the new file has
// the permissions of the old one. Fails with cannot-create where a file is there that may not be replaced, the folder
// is missing, or the name is no plain file's; with no-permission; with input-output where the disk fails, and then
// nothing has changed.
[[nodiscard]] Result<void> write_file(const std::filesystem::path& path, std::string_view bytes, IfThere if_there);

} // namespace clampwright::specdb
