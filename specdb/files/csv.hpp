// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"

namespace clampwright::specdb {

// A table with a header row. `line` of a row is its number in the file as an editor counts, for messages.
struct CsvRow {
  std::size_t line;
  std::vector<std::string> fields;
};

struct CsvTable {
  std::vector<std::string> header;
  std::vector<CsvRow> rows;
};

// Reads comma-separated text as RFC 4180 has it: quoted fields, doubled quotes, CRLF or LF. Fails with `damaged` and a
// line number on a bare quote, or a row whose number of fields differs from the header's.
[[nodiscard]] Result<CsvTable> read_csv(std::string_view text);

// The same the other way: CRLF, quotes where a field needs them.
[[nodiscard]] std::string write_csv(const CsvTable& table);

} // namespace clampwright::specdb
