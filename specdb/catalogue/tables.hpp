// SPDX-License-Identifier: GPL-3.0-or-later
//
// The reference tables as they stand, for reading: which there are, and the rows in which words occur. Generic over
// specdb/image/reference_tables.hpp, so a new table is readable without a line here.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/source/source.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

struct TableSummary {
  std::string name; // "wrench-sizes": with hyphens, as people write it
  std::string holds;
  std::int64_t rows;
};

using Cell = std::variant<std::monostate, std::int64_t, double, std::string>;

struct TableColumn {
  std::string name; // the table's own: "torque_low_N_m"
  bool is_key = false;
};

struct TableRow {
  std::vector<Cell> cells; // one a column
  std::vector<Source> sources;
};

struct TableAnswer {
  TableSummary table;
  std::vector<TableColumn> columns;
  std::vector<TableRow> rows;
};

// All tables, in the order of their names.
[[nodiscard]] std::vector<TableSummary> reference_tables(const Catalogue& catalogue);

// The rows of a table in which every word occurs, all rows without a word. A word fits the beginning of a word in a
// row; a word that ends in a digit fits a whole number or designation only ("M8" fits M8 and M8x1, not M80; "13" fits
// 13, not 13.5), and is not looked for in notes. `13mm` is 13 and mm. Fails with no-such for the name of no table.
[[nodiscard]] Result<TableAnswer> read_table(const Catalogue& catalogue, std::string_view name,
                                             const std::vector<std::string>& words);

// Does the word occur in the text, by the rule above?
[[nodiscard]] bool occurs(std::string_view word, std::string_view text);

// A number as the tables print it, in the fewest digits that are the same number.
[[nodiscard]] std::string cell_text(const Cell& cell);

} // namespace clampwright::specdb
