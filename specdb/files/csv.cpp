// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/files/csv.hpp"

#include <algorithm>

#include <csv.h>
#include <fmt/format.h>

namespace clampwright::specdb {

namespace {

std::size_t line_ends_in(std::string_view text) { return static_cast<std::size_t>(std::ranges::count(text, '\n')); }

// Rows as they come, each with the line on which it begins.
struct Collector {
  std::vector<CsvRow> rows;
  CsvRow current{1, {}};
  std::size_t line = 1; // of the next character

  static void field(void* bytes, std::size_t length, void* self) {
    auto* collector = static_cast<Collector*>(self);
    auto& fields = collector->current.fields;
    fields.emplace_back(static_cast<const char*>(bytes), length);
    collector->line += line_ends_in(fields.back());
  }

  // Called for every line end outside quotes, and at the end of the text with -1.
  static void row(int terminator, void* self) {
    auto* collector = static_cast<Collector*>(self);
    if (!collector->current.fields.empty()) collector->rows.push_back(std::move(collector->current));
    if (terminator == '\n') ++collector->line;
    collector->current = {collector->line, {}};
  }
};

void write_row(std::string& out, const std::vector<std::string>& fields) {
  for (const std::string& field : fields) {
    if (&field != &fields.front()) out += ',';
    if (field.find_first_of(",\"\r\n") == std::string::npos) {
      out += field;
      continue;
    }
    out += '"';
    for (const char c : field)
      out.append(c == '"' ? 2 : 1, c);
    out += '"';
  }
  out += "\r\n";
}

Refusal damaged(std::size_t line, std::string what) {
  return refuse(Trouble::not_understood, "damaged", fmt::format("line {}: {}", line, what), {},
                "fields are separated by commas; a field with a comma or quote stands in quotes");
}

} // namespace

Result<CsvTable> read_csv(std::string_view text) {
  csv_parser parser;
  csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL);
  csv_set_space_func(&parser, [](unsigned char) { return 0; }); // spaces belong to their field
  Collector collector;
  const std::size_t read = csv_parse(&parser, text.data(), text.size(), Collector::field, Collector::row, &collector);
  const bool finished = read == text.size() && csv_fini(&parser, Collector::field, Collector::row, &collector) == 0;
  csv_free(&parser);
  if (!finished)
    return damaged(line_ends_in(text.substr(0, read)) + 1, "a quote stands where none may stand, or is not closed");
  if (collector.rows.empty()) return damaged(1, "the header row is missing");
  CsvTable table;
  table.header = std::move(collector.rows.front().fields);
  for (auto row = collector.rows.begin() + 1; row != collector.rows.end(); ++row) {
    if (row->fields.size() != table.header.size())
      return damaged(row->line,
                     fmt::format("{} fields where the header has {}", row->fields.size(), table.header.size()));
    table.rows.push_back(std::move(*row));
  }
  return table;
}

std::string write_csv(const CsvTable& table) {
  std::string out;
  write_row(out, table.header);
  for (const CsvRow& row : table.rows)
    write_row(out, row.fields);
  return out;
}

} // namespace clampwright::specdb
