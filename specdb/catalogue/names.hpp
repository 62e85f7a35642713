// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/problem/problem.hpp"

namespace clampwright::specdb {

// The form in which names of surfaces, locks and materials are compared: "Zinc dry" is "zinc-dry".
[[nodiscard]] std::string name_key(std::string_view name);

// The form in which classes of bolts and nuts are compared: "SAE J429 Grade 5", "grade 5", "gr.5", "sae-5" are "sae5",
// "A2 70" is "a270", "A325" and "F3125 A325" are "astma325".
[[nodiscard]] std::string class_key(std::string_view name);

// Refusal of a name that is not in a list: the nearest one is suggested, then all are named. `what` is like "surfaces".
[[nodiscard]] Refusal no_such_name(std::string_view what, std::string_view given, std::span<const std::string> names);

// How many letters must be changed, added, dropped or swapped with their neighbour to make one word of the other
// (Damerau's distance, restricted), ignoring case.
[[nodiscard]] std::size_t letters_apart(std::string_view one, std::string_view other);

// The name nearest to `given`, "" if none is near: at most one letter in three differs.
[[nodiscard]] std::string nearest_name(std::string_view given, std::span<const std::string> names);

} // namespace clampwright::specdb
