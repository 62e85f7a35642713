// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/friction/friction.hpp"
#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// The surfaces or the lock of that name, in any case. Fails with no-such and the list.
[[nodiscard]] Result<friction::Surfaces> find_surfaces(const Catalogue& catalogue, std::string_view name);
[[nodiscard]] Result<friction::Lock> find_lock(const Catalogue& catalogue, std::string_view name);

[[nodiscard]] std::vector<std::string> surfaces_names(const Catalogue& catalogue);
[[nodiscard]] std::vector<std::string> lock_names(const Catalogue& catalogue);

} // namespace clampwright::specdb
