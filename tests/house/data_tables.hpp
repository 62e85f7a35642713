// SPDX-License-Identifier: GPL-3.0-or-later
//
// What specdb/data/*.csv must keep to beyond the types and CHECKs of specdb/image/reference_tables.hpp.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "specdb/files/csv.hpp"
#include "tests/house/source_tree.hpp"

namespace clampwright::house {

struct DataTable {
  std::string_view name;
  std::vector<std::string_view> key; // no two rows agree in all of these
};

[[nodiscard]] const std::vector<DataTable>& data_tables();

// A file of specdb/data, read; fails the running test and is empty if it cannot be read.
[[nodiscard]] specdb::CsvTable data(std::string_view name);

// Position of a column; throws if there is none of that name.
[[nodiscard]] std::size_t column(const specdb::CsvTable& table, std::string_view name);

// The fields of some columns of a row, as one text.
[[nodiscard]] std::string fields(const specdb::CsvTable& table, const specdb::CsvRow& row,
                                 const std::vector<std::string_view>& columns);

// "name.csv:line: what"
[[nodiscard]] std::string data_fault(std::string_view name, std::size_t line, std::string_view what);

} // namespace clampwright::house
