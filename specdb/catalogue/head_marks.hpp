// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/source/source.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// What a mark on a head, a nut or the end of a stud stands for: one row of the table. A mark may have several.
struct HeadMark {
  std::string mark;                      // as the table writes it: "8.8", "3 lines", "bar at 8 o'clock"
  std::string part;                      // "nut", "bolt screw stud"
  std::optional<std::string> system;     // the standard, short
  std::optional<std::string> class_name; // none where the mark says something else than a class
  std::string meaning;
  std::string verdict; // "means", "may-mean", "not-known": where it is the only reading
  bool in_tables;      // `clamp --class` reads the class, or a nut's class has its pairing
  std::string rule;    // where it stands and how it looks
  std::vector<std::string> look_alikes;
  Source source;

  // "bolt", "screw", "stud" or "nut".
  [[nodiscard]] bool is_on(std::string_view one_part) const;
  // "bolt, screw or stud"
  [[nodiscard]] std::string parts_in_words() const;
};

// The form in which marks are compared: "A2 70" is "a270", "bar at 8 o'clock" is "barat8oclock".
[[nodiscard]] std::string mark_key(std::string_view mark);

// All rows, in the order of the table.
[[nodiscard]] std::vector<HeadMark> head_marks(const Catalogue& catalogue);

} // namespace clampwright::specdb
