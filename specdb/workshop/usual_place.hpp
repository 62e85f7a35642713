// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>

namespace clampwright::specdb {

// The file that is used where none is named: the place that the XDG Base Directory Specification gives to data, by the
// values of XDG_DATA_HOME and HOME; a relative value is to be ignored. Nothing where neither says a place.
[[nodiscard]] std::optional<std::filesystem::path> usual_workshop(const std::optional<std::string>& xdg_data_home,
                                                                  const std::optional<std::string>& home);

} // namespace clampwright::specdb
