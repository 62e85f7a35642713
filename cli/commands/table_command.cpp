// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/table_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/json/values_json.hpp"
#include "specdb/catalogue/tables.hpp"
#include "specdb/question/table_report.hpp"

namespace clampwright::cli {

namespace {

Json cell_json(const specdb::Cell& cell) {
  if (const auto* whole = std::get_if<std::int64_t>(&cell)) return *whole;
  if (const auto* real = std::get_if<double>(&cell)) return *real;
  if (const auto* text = std::get_if<std::string>(&cell)) return text->empty() ? Json(nullptr) : Json(*text);
  return nullptr;
}

Json rows_json(const specdb::TableAnswer& answer) {
  Json rows = Json::array();
  for (const specdb::TableRow& row : answer.rows) {
    Json object = Json::object();
    for (std::size_t i = 0; i < answer.columns.size(); ++i)
      object[answer.columns[i].name] = cell_json(row.cells[i]);
    rows.push_back(std::move(object));
  }
  return rows;
}

Outcome all_tables(const specdb::Catalogue& catalogue) {
  Outcome out;
  const auto tables = specdb::reference_tables(catalogue);
  Json list = Json::array();
  for (const specdb::TableSummary& table : tables)
    list.push_back({{"table", table.name}, {"holds", table.holds}, {"rows", table.rows}});
  out.input = std::make_shared<Json>(Json::object());
  out.result = std::make_shared<Json>(Json{{"tables", std::move(list)}});
  out.document = specdb::tables_document(tables);
  return out;
}

} // namespace

std::string_view TableCommand::summary() const { return "the reference tables, row by row with their sources"; }
std::string_view TableCommand::usage() const { return "table [NAME [WORDS...]]"; }
std::vector<Example> TableCommand::examples() const {
  return {{"table", "which tables there are"},
          {"table wrench-sizes M8", "spanners and keys for M8, by standard"},
          {"table heads 13", "heads with a 13 in them: across flats, diameter, height"},
          {"table spark-plugs M14 conical", "torques for a spark plug, all sources side by side"},
          {"table holes 5/16", "clearance holes"}};
}

std::vector<std::pair<std::string, std::string>> TableCommand::lists() const {
  const specdb::Catalogue catalogue;
  std::vector<std::string> names;
  for (const specdb::TableSummary& table : specdb::reference_tables(catalogue))
    names.push_back(table.name);
  return {{"TABLES", fmt::format("{}", fmt::join(names, ", "))}};
}

void TableCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> TableCommand::run(const Context& /*context*/) {
  const specdb::Catalogue catalogue;
  if (words_.empty()) return all_tables(catalogue);
  const std::vector<std::string> sought(words_.begin() + 1, words_.end());
  const std::string words = fmt::format("{}", fmt::join(sought, " "));
  const auto answer = specdb::read_table(catalogue, words_.front(), sought);
  if (!answer) return Refusal(answer.error());
  std::vector<std::string> columns;
  for (const specdb::TableColumn& column : answer->columns)
    columns.push_back(column.name);
  Outcome out;
  out.input = std::make_shared<Json>(Json{{"name", words_.front()}, {"words", words.empty() ? Json() : Json(words)}});
  out.result = std::make_shared<Json>(
      Json{{"table", answer->table.name}, {"columns", std::move(columns)}, {"rows", rows_json(*answer)}});
  if (specdb::gives_torques(*answer)) out.findings.push_back({finding::Code::maker_first, finding::Severity::note, {}});
  out.sources = specdb::used_sources(*answer);
  out.document = specdb::table_document(*answer, words);
  if (answer->rows.empty()) out.hints.emplace_back("fewer words find more; a size is written like M8 or 5/16");
  return out;
}

} // namespace clampwright::cli
