// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/tables.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/image/reference_tables.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

using text::is_digit;

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

std::string hyphenated(std::string_view name) {
  std::string out(name);
  std::ranges::replace(out, '_', '-');
  return out;
}

// In lower case, with one sign for "times".
std::string folded(std::string_view text) {
  std::string out = text::to_lower(text::plain_spaces(text));
  for (std::size_t at = 0; (at = out.find("×", at)) != std::string::npos;)
    out.replace(at, std::string_view("×").size(), "x");
  return out;
}

bool is_number(std::string_view word) {
  return !word.empty() && std::ranges::all_of(word, [](char c) { return is_digit(c) || c == '.'; });
}

// "13mm" is a number and a unit.
std::vector<std::string> split_words(const std::vector<std::string>& words) {
  std::vector<std::string> out;
  for (const std::string& given : words) {
    std::string rest = folded(given);
    while (!rest.empty()) {
      const std::size_t space = rest.find(' ');
      std::string word = rest.substr(0, space);
      rest.erase(0, space == std::string::npos ? rest.size() : space + 1);
      for (const std::string_view unit : {"mm", "in"})
        if (word.ends_with(unit) && is_number(std::string_view(word).substr(0, word.size() - unit.size()))) {
          out.emplace_back(unit);
          word.erase(word.size() - unit.size());
        }
      if (!word.empty()) out.push_back(std::move(word));
    }
  }
  return out;
}

// May a word begin at `at`? Not within a number, a fraction or a word; "x" stands between two numbers.
bool begins_at(std::string_view text, std::size_t at) {
  if (at == 0) return true;
  const char before = text[at - 1];
  const char first = text[at];
  if (is_digit(before)) return !is_digit(first) && first != '.' && first != '/' && !is_letter(first);
  if (before == 'x' && at > 1 && is_digit(text[at - 2])) return is_digit(first);
  if (is_letter(before)) return !is_letter(first) && !is_digit(first);
  if (!is_digit(first)) return true;
  if (before == '#') return false;
  // "1/4" in "1 1/4" is no quarter of an inch.
  return !(at > 1 && is_digit(text[at - 2]) && (before == '.' || before == '/' || before == ' '));
}

// May a word that ends in a digit end before `at`?
bool number_ends_at(std::string_view text, std::size_t at) {
  if (at == text.size()) return true;
  const char next = text[at];
  if (is_digit(next)) return false;
  const bool digit_follows = at + 1 < text.size() && is_digit(text[at + 1]);
  if (next == '.' || next == '/') return !digit_follows;
  if (next == ' ' && digit_follows) return text.find('/', at) == std::string_view::npos;
  if (next == 'x') return digit_follows;
  return !is_letter(next);
}

// What a column is about decides whether a number is looked for in it.
bool is_aside(std::string_view column) {
  return column == "note" || column == "source" || column.ends_with("_source") || column == "where" ||
         column.ends_with("_where") || column == "edition";
}

// "any" in the column of threads stands for each of them.
bool stands_for_any(std::string_view column, std::string_view cell, std::string_view word) {
  return column == "thread" && cell == "any" && (word.starts_with('m') || word.find('/') != std::string_view::npos) &&
         is_digit(word.back());
}

// "mm" stands in the name of key_mm.
bool is_unit_of(std::string_view word, std::string_view column) {
  return (word == "mm" || word == "in") && column.ends_with(fmt::format("_{}", word));
}

bool row_has(const std::vector<TableColumn>& columns, const TableRow& row, std::string_view word) {
  const bool ends_in_digit = is_digit(word.back());
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (ends_in_digit && is_aside(columns[i].name)) continue;
    const std::string cell = folded(cell_text(row.cells[i]));
    if (occurs(word, cell) || stands_for_any(columns[i].name, cell, word)) return true;
    if (!cell.empty() && is_unit_of(word, columns[i].name)) return true;
  }
  return !ends_in_digit &&
         std::ranges::any_of(row.sources, [&](const Source& source) { return occurs(word, folded(source.title)); });
}

const ReferenceTable* table_named(std::string_view name) {
  const std::string key = name_key(name);
  const auto found = std::ranges::find_if(k_reference_tables,
                                          [&](const ReferenceTable& table) { return key == hyphenated(table.name); });
  return found == k_reference_tables.end() ? nullptr : &*found;
}

TableSummary summary_of(const Catalogue& catalogue, const ReferenceTable& table) {
  Query count(catalogue.connection(), fmt::format("SELECT count(*) FROM {}", table.name).c_str());
  count.next();
  return {hyphenated(table.name), table.holds, count.integer(0)};
}

std::vector<TableColumn> columns_of(const Catalogue& catalogue, const ReferenceTable& table) {
  Query query(catalogue.connection(), "SELECT name, pk > 0 FROM pragma_table_info(?)", std::string_view(table.name));
  std::vector<TableColumn> columns;
  while (query.next())
    columns.push_back({query.text(0), query.integer(1) != 0});
  return columns;
}

// Where the source of a row stands, its place and how it is known. Some tables name one source and say place and
// knowledge for each value.
struct SourceColumns {
  std::string source;
  std::string where; // "" if the table has none
  std::string known;
};

std::vector<SourceColumns> source_columns_of(const std::vector<TableColumn>& columns) {
  const auto has = [&](const std::string& name) {
    return std::ranges::any_of(columns, [&](const TableColumn& column) { return column.name == name; });
  };
  const auto or_none = [&](std::string name) { return has(name) ? std::move(name) : std::string(); };
  std::vector<SourceColumns> all;
  for (const TableColumn& column : columns) {
    if (column.name == "source" && has("known")) all.push_back({"source", or_none("where"), "known"});
    if (column.name.ends_with("_source")) {
      const std::string prefix = column.name.substr(0, column.name.size() - std::string_view("source").size());
      all.push_back({column.name, or_none(prefix + "where"), or_none(prefix + "known")});
    }
    if (column.name.ends_with("_known") && has("source") && !has("known")) {
      const std::string prefix = column.name.substr(0, column.name.size() - std::string_view("known").size());
      if (!has(prefix + "source")) all.push_back({"source", or_none(prefix + "where"), column.name});
    }
  }
  return all;
}

std::size_t index_of(const std::vector<TableColumn>& columns, std::string_view name) {
  return static_cast<std::size_t>(std::ranges::find(columns, name, &TableColumn::name) - columns.begin());
}

// Title and edition, by the id of the source.
using Titles = std::map<std::string, std::pair<std::string, std::string>>;

Titles titles_of(const Catalogue& catalogue) {
  Query query(catalogue.connection(), "SELECT id, title, edition FROM sources");
  Titles titles;
  while (query.next())
    titles.emplace(query.text(0), std::pair(query.text(1), query.maybe_text(2).value_or("")));
  return titles;
}

std::vector<Source> sources_of(const Titles& titles, const std::vector<TableColumn>& columns,
                               const std::vector<SourceColumns>& places, const std::vector<Cell>& cells) {
  std::vector<Source> sources;
  const auto text_at = [&](const std::string& column) {
    if (column.empty()) return std::string();
    return cell_text(cells[index_of(columns, column)]);
  };
  for (const SourceColumns& place : places) {
    const std::string id = text_at(place.source);
    const std::string known = text_at(place.known);
    if (id.empty() || known.empty()) continue;
    const auto& [title, edition] = titles.at(id);
    Source source{title, edition, text_at(place.where), known_named(known)};
    if (std::ranges::find(sources, source) == sources.end()) sources.push_back(std::move(source));
  }
  return sources;
}

Cell cell_of(const Query& query, int column) {
  if (query.is_null(column)) return {};
  if (query.is_integer(column)) return std::int64_t{query.integer(column)};
  if (query.is_real(column)) return query.real(column);
  return query.text(column);
}

} // namespace

bool occurs(std::string_view word, std::string_view text) {
  if (word.empty()) return false;
  for (std::size_t at = 0; (at = text.find(word, at)) != std::string_view::npos; ++at)
    if (begins_at(text, at) && (!is_digit(word.back()) || number_ends_at(text, at + word.size()))) return true;
  return false;
}

std::string cell_text(const Cell& cell) {
  if (const auto* whole = std::get_if<std::int64_t>(&cell)) return fmt::format("{}", *whole);
  if (const auto* real = std::get_if<double>(&cell)) return fmt::format("{}", *real);
  if (const auto* text = std::get_if<std::string>(&cell)) return *text;
  return {};
}

std::vector<TableSummary> reference_tables(const Catalogue& catalogue) {
  return translated([&] {
    std::vector<TableSummary> all;
    for (const ReferenceTable& table : k_reference_tables)
      all.push_back(summary_of(catalogue, table));
    std::ranges::sort(all, {}, &TableSummary::name);
    return all;
  });
}

Result<TableAnswer> read_table(const Catalogue& catalogue, std::string_view name,
                               const std::vector<std::string>& words) {
  const ReferenceTable* const table = table_named(name);
  if (table == nullptr) {
    std::vector<std::string> names;
    for (const TableSummary& one : reference_tables(catalogue))
      names.push_back(one.name);
    return no_such_name("table", name, names);
  }
  return translated([&] {
    TableAnswer answer{summary_of(catalogue, *table), columns_of(catalogue, *table), {}};
    const auto sought = split_words(words);
    const auto places = source_columns_of(answer.columns);
    const Titles titles = titles_of(catalogue);
    Query query(catalogue.connection(), fmt::format("SELECT * FROM {}", table->name).c_str());
    while (query.next()) {
      TableRow row;
      for (std::size_t i = 0; i < answer.columns.size(); ++i)
        row.cells.push_back(cell_of(query, static_cast<int>(i)));
      row.sources = sources_of(titles, answer.columns, places, row.cells);
      if (std::ranges::all_of(sought, [&](const std::string& word) { return row_has(answer.columns, row, word); }))
        answer.rows.push_back(std::move(row));
    }
    return answer;
  });
}

} // namespace clampwright::specdb
