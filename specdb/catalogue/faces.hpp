// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

enum class Part { head, nut };

// A diameter that a standard gives, and what it is in words: "ISO 4014 washer face".
struct StandardDiameter {
  quantity::Length diameter;
  std::string words;
  Source source;
};

// The smallest outer diameter of the face under a head or nut of that name. Fails with no-such for a name that no table
// has for this part; nothing for a size that the table of that name does not list, or a head without a flat face.
[[nodiscard]] Result<std::optional<StandardDiameter>> find_face(const Catalogue& catalogue, std::string_view name,
                                                                Part part, const thread::Thread& thread);

// Why a head or nut of that name has no flat face that a standard gives, as a part of a sentence; "" where it has one.
[[nodiscard]] std::string why_no_face(const Catalogue& catalogue, std::string_view name, Part part);

// The usual clearance hole: ISO 273 medium, ASME B18.2.8 normal.
[[nodiscard]] std::optional<StandardDiameter> find_hole(const Catalogue& catalogue, const thread::Thread& thread);

[[nodiscard]] std::vector<std::string> face_names(const Catalogue& catalogue, Part part);

} // namespace clampwright::specdb
