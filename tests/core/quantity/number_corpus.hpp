// SPDX-License-Identifier: GPL-3.0-or-later
//
// The table of number texts beside this file, read. Shared by the tests that put it to the readers and to the program.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/unit.hpp"

namespace clampwright::test {

// One text in the place of a number. A decision is the value as a decimal literal, or the code of the refusal.
struct NumberRow {
  std::string name; // as the table writes it
  std::string text;
  std::vector<std::string> with_unit; // a decision for each of number_kinds()
  std::string as_number;
  std::string as_share;
  bool in_a_process = false;
};

struct NumberKind {
  quantity::Kind kind;
  std::string_view name; // in the table
  std::string_view unit;
};

[[nodiscard]] const std::vector<NumberKind>& number_kinds();
[[nodiscard]] const std::vector<NumberRow>& number_corpus();

[[nodiscard]] bool is_value(std::string_view decision);

// The nearest double to a decision that is a value.
[[nodiscard]] double value_of(std::string_view decision);

} // namespace clampwright::test
