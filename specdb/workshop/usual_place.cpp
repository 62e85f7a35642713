// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/usual_place.hpp"

namespace clampwright::specdb {

std::optional<std::filesystem::path> usual_workshop(const std::optional<std::string>& xdg_data_home,
                                                    const std::optional<std::string>& home) {
  const auto absolute = [](const std::optional<std::string>& text) { return text && text->starts_with('/'); };
  const std::filesystem::path own = "clampwright/workshop.clampwright";
  if (absolute(xdg_data_home)) return *xdg_data_home / own;
  if (absolute(home)) return std::filesystem::path(*home) / ".local/share" / own;
  return std::nullopt;
}

} // namespace clampwright::specdb
