// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/table_report.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

// Units that stand at the end of a column's name.
struct NamedUnit {
  std::string_view ending;
  std::string_view sign;
};
constexpr std::array k_named_units{
    NamedUnit{"_N_m", "N·m"}, NamedUnit{"_mm2", "mm²"}, NamedUnit{"_mm", "mm"},     NamedUnit{"_in", "in"},
    NamedUnit{"_um", "µm"},   NamedUnit{"_N", "N"},     NamedUnit{"_MPa", "MPa"},   NamedUnit{"_deg", "°"},
    NamedUnit{"_degC", "°C"}, NamedUnit{"_kN", "kN"},   NamedUnit{"_percent", "%"},
};

std::string unit_sign(const std::string& unit) {
  if (unit == "mm2") return "mm²";
  if (unit == "in2") return "in²";
  return unit;
}

bool has_column(const TableAnswer& answer, std::string_view name) {
  return std::ranges::find(answer.columns, name, &TableColumn::name) != answer.columns.end();
}

bool is_unit_column(const std::string& name) { return name == "unit" || name.ends_with("_unit"); }

bool is_source_column(const TableAnswer& answer, const std::string& name) {
  if (name == "source" || name == "where" || name == "known") return true;
  if (name.ends_with("_source")) return true;
  // "face_known" without a face_source says something of its own.
  const auto belongs = [&](std::string_view ending) {
    if (!name.ends_with(ending)) return false;
    const std::string prefix = name.substr(0, name.size() - ending.size());
    return has_column(answer, prefix + "_source") || !has_column(answer, "known");
  };
  return belongs("_known") || belongs("_where");
}

// The column in which the unit of another stands: "unit" for the whole table; diameter_unit for the diameter; a unit
// that has no column of its own name for all numbers before it, back to the unit before.
std::optional<std::size_t> unit_column_of(const TableAnswer& answer, std::size_t column) {
  const auto& columns = answer.columns;
  const std::string own = columns[column].name + "_unit";
  bool passed = false;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (columns[i].name == own || columns[i].name == "unit") return i;
    if (i <= column || passed || !columns[i].name.ends_with("_unit")) continue;
    passed = true;
    if (!has_column(answer, columns[i].name.substr(0, columns[i].name.size() - 5)))
      if (!std::any_of(columns.begin() + static_cast<std::ptrdiff_t>(column),
                       columns.begin() + static_cast<std::ptrdiff_t>(i),
                       [&](const TableColumn& between) { return is_unit_column(between.name); }))
        return i;
  }
  return std::nullopt;
}

std::string words_of(std::string name) {
  std::ranges::replace(name, '_', ' ');
  return name;
}

// "across flats 13 mm"
std::string value_words(const TableAnswer& answer, const TableRow& row, std::size_t column) {
  std::string name = answer.columns[column].name;
  std::string unit;
  for (const NamedUnit& named : k_named_units)
    if (name.ends_with(named.ending)) {
      unit = named.sign;
      name.erase(name.size() - named.ending.size());
      break;
    }
  if (std::holds_alternative<double>(row.cells[column]) && unit.empty())
    if (const auto at = unit_column_of(answer, column)) unit = unit_sign(cell_text(row.cells[*at]));
  return fmt::format("{} {}{}{}", words_of(name), cell_text(row.cells[column]), unit.empty() || unit == "°" ? "" : " ",
                     unit);
}

// What the row is about: the texts of its key, or of its first columns where the table has none.
std::vector<std::size_t> heading_columns(const TableAnswer& answer) {
  std::vector<std::size_t> heading;
  for (std::size_t i = 0; i < answer.columns.size(); ++i)
    if (answer.columns[i].is_key) heading.push_back(i);
  for (std::size_t i = 0; heading.size() < 2 && i < answer.columns.size(); ++i)
    if (std::ranges::find(heading, i) == heading.end() && !is_source_column(answer, answer.columns[i].name) &&
        heading.size() == i)
      heading.push_back(i);
  return heading;
}

std::string source_words(const Source& source) {
  std::string words = source.title;
  if (!source.edition.empty()) words += fmt::format(" ({})", source.edition);
  if (!source.where.empty()) words += ", " + source.where;
  return fmt::format("{} [{}]", words, known_name(source.known));
}

report::Section row_section(const TableAnswer& answer, const TableRow& row, const std::vector<std::size_t>& heading) {
  report::Section section;
  for (const std::size_t column : heading) {
    const Cell& cell = row.cells[column];
    if (std::holds_alternative<std::monostate>(cell)) continue;
    if (!section.heading.empty()) section.heading += ", ";
    section.heading += std::holds_alternative<std::string>(cell) ? cell_text(cell) : value_words(answer, row, column);
  }
  std::string values;
  std::string note;
  for (std::size_t i = 0; i < answer.columns.size(); ++i) {
    const std::string& name = answer.columns[i].name;
    if (std::holds_alternative<std::monostate>(row.cells[i]) || cell_text(row.cells[i]).empty() ||
        is_source_column(answer, name) || is_unit_column(name) || std::ranges::find(heading, i) != heading.end())
      continue;
    if (name == "note")
      note = cell_text(row.cells[i]);
    else
      values += (values.empty() ? "" : "; ") + value_words(answer, row, i);
  }
  if (!values.empty()) section.rows.push_back({"", values});
  if (!note.empty()) section.rows.push_back({"note", note});
  for (const Source& source : row.sources)
    section.rows.push_back({&source == &row.sources.front() ? "from" : "", source_words(source)});
  return section;
}

} // namespace

report::Document tables_document(const std::vector<TableSummary>& tables) {
  report::Document document;
  document.title =
      fmt::format("{} reference tables. A row is read by its words, like: table wrench-sizes M8", tables.size());
  report::Section section;
  for (const TableSummary& table : tables)
    section.rows.push_back({table.name, fmt::format("{} ({} rows)", table.holds, table.rows)});
  document.sections.push_back(std::move(section));
  return document;
}

report::Document table_document(const TableAnswer& answer, const std::string& words) {
  report::Document document;
  const std::string sought = words.empty() ? "" : fmt::format(" with \"{}\"", text::quotable(words));
  if (answer.rows.empty())
    document.title = fmt::format("No row of {} has all of \"{}\". It holds: {}.", answer.table.name,
                                 text::quotable(words), answer.table.holds);
  else
    document.title = fmt::format("{}: {}. {} of {} rows{}", answer.table.name, answer.table.holds, answer.rows.size(),
                                 answer.table.rows, sought);
  const auto heading = heading_columns(answer);
  for (const TableRow& row : answer.rows)
    document.sections.push_back(row_section(answer, row, heading));
  document.has_foot = gives_torques(answer);
  return document;
}

bool gives_torques(const TableAnswer& answer) {
  return !answer.rows.empty() && std::ranges::any_of(answer.columns, [](const TableColumn& column) {
    return column.name.starts_with("torque") && column.name != "torque_unit";
  });
}

std::vector<Source> used_sources(const TableAnswer& answer) {
  std::vector<Source> sources;
  for (const TableRow& row : answer.rows)
    for (const Source& source : row.sources)
      if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
  return sources;
}

} // namespace clampwright::specdb
