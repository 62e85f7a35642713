// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/strength/nut_strength.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// What a nut of the named class bears on that thread: the load that the standard prints for the very size, stress ×
// area of the thread elsewhere. Where a class is made in several styles (8 above M16, 12) the mark does not tell which,
// so the one that bears least stands here and is named. Read like the class of find_nut_pairing; fails with no-such and
// the list. A class that has no figure at this size is no fault: its strengths are empty.
[[nodiscard]] Result<strength::NutStrength> find_nut_strength(const Catalogue& catalogue, std::string_view nut_class,
                                                              const thread::Thread& thread);

// Every class of a nut whose strength is known, in the order of the standards.
[[nodiscard]] std::vector<std::string> nut_strength_names(const Catalogue& catalogue);

} // namespace clampwright::specdb
