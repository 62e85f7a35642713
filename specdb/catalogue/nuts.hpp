// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// Which bolts a nut is made for.
struct NutPairing {
  std::string nut_class;                         // "8", "04", "SAE 5"
  std::optional<std::string> highest_bolt_class; // none for a thin nut: it strips before any bolt breaks
  Source source;
};

// The class of a nut as it is marked, read like the class of a bolt. Fails with no-such and the list.
[[nodiscard]] Result<NutPairing> find_nut_pairing(const Catalogue& catalogue, std::string_view nut_class);

[[nodiscard]] std::vector<std::string> nut_class_names(const Catalogue& catalogue);

} // namespace clampwright::specdb
