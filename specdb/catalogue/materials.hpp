// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/strength/material.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// What a part is made of, by name in any case. Fails with no-such and the list.
[[nodiscard]] Result<strength::PartMaterial> find_material(const Catalogue& catalogue, std::string_view name);

[[nodiscard]] std::vector<std::string> material_names(const Catalogue& catalogue);

} // namespace clampwright::specdb
