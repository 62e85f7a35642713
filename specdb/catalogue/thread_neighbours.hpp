// SPDX-License-Identifier: GPL-3.0-or-later
//
// What stands near a thread that is not listed: a pitch read off wrongly, or a thread of another system.
#pragma once

#include <optional>
#include <string>

#include "core/quantity/quantity.hpp"
#include "core/thread/designation.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

struct StatedSize {
  quantity::Length diameter;
  quantity::Length pitch;
};

// Diameter and pitch as far as a designation says both; nothing where it leaves one to a table.
[[nodiscard]] std::optional<StatedSize> stated_size(const thread::Designation& asked);

// "nearest in diameter and pitch are M8 (8 x 1.25 mm) and …; of other systems …": two of the form asked for, and up to
// three of the others that lie within 5 % in diameter and 15 % in pitch.
[[nodiscard]] std::string neighbour_words(const Catalogue& catalogue, thread::Form form, const StatedSize& size);

} // namespace clampwright::specdb
