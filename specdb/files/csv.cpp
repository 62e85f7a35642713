// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/files/csv.hpp"

#include <algorithm>

#include <csv.h>
#include <fmt/format.h>

namespace clampwright::specdb {

namespace {

struct Collector {
  std::vector<std::vector<std::string>> rows;
  std::vector<std::string> current;

  static void field(void* bytes, std::size_t length, void* self) {
    static_cast<Collector*>(self)->current.emplace_back(static_cast<const char*>(bytes), length);
  }
  static void row(int, void* self) {
    auto* collector = static_cast<Collector*>(self);
    collector->rows.push_back(std::move(collector->current));
    collector->current.clear();
  }
};

Refusal damaged(std::size_t line, std::string what) {
  return Refusal(Problem{Trouble::not_understood,
                         "damaged",
                         fmt::format("line {}: {}", line, what),
                         {},
                         "fields are separated by commas; a field with a comma or quote stands in quotes",
                         {}});
}

std::size_t lines_in(std::string_view text) { return static_cast<std::size_t>(std::ranges::count(text, '\n')); }

} // namespace

Result<CsvTable> read_csv(std::string_view text) {
  csv_parser parser;
  csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI);
  Collector collector;
  const std::size_t read = csv_parse(&parser, text.data(), text.size(), Collector::field, Collector::row, &collector);
  const bool finished = read == text.size() && csv_fini(&parser, Collector::field, Collector::row, &collector) == 0;
  csv_free(&parser);
  if (!finished)
    return damaged(lines_in(text.substr(0, read)) + 1, "a quote stands where none may stand, or is not closed");
  if (collector.rows.empty()) return damaged(1, "the header row is missing");
  CsvTable table;
  table.header = std::move(collector.rows.front());
  std::size_t line = 1;
  for (std::size_t i = 0; i < collector.rows.size(); ++i) {
    auto& fields = i == 0 ? table.header : collector.rows[i];
    if (i > 0 && fields.size() != table.header.size())
      return damaged(line, fmt::format("{} fields where the header has {}", fields.size(), table.header.size()));
    std::size_t height = 1;
    for (const std::string& field : fields)
      height += lines_in(field);
    if (i > 0) table.rows.push_back({line, std::move(fields)});
    line += height;
  }
  return table;
}

} // namespace clampwright::specdb
