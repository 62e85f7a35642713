// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// Between which temperatures the figures of a class are meant to be used; an end that was not read is empty.
struct ClassTemperature {
  std::optional<quantity::Temperature> low;
  std::optional<quantity::Temperature> high;
  Source source;
};

// By the class itself where it has a line of its own, else by its standard. Nothing for a class that is not known, or
// for which no figure was found (stainless steel).
[[nodiscard]] std::optional<ClassTemperature> class_temperature(const Catalogue& catalogue,
                                                                std::string_view class_name);

} // namespace clampwright::specdb
