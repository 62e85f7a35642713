// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/report/document.hpp"

namespace clampwright::report {

// The table as lines of plain text, headings first. A row is never folded, because a figure in the wrong column is a
// wrong figure: where `width` characters are not enough the columns move together, and what is wider then stays wider.
[[nodiscard]] std::vector<std::string> table_lines(const Table& table, std::size_t width);

} // namespace clampwright::report
