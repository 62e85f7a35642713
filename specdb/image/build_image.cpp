// SPDX-License-Identifier: GPL-3.0-or-later
//
// Build tool: turns specdb/data/*.csv into the SQLite image that the library embeds.
//   build_image DATA_FOLDER IMAGE_FILE DIGEST_FILE
// DIGEST_FILE receives the image's SHA-256 as a C++ string literal. Any fault in a file stops the build, with the
// file's name and line.
#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <stdexcept>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include "core/source/source.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/files/csv.hpp"
#include "specdb/image/digest.hpp"
#include "specdb/image/reference_tables.hpp"
#include "specdb/sql/query.hpp"

namespace {

namespace fs = std::filesystem;
using clampwright::specdb::CsvRow;
using clampwright::specdb::CsvTable;
using clampwright::specdb::ReferenceTable;

struct Fault : std::runtime_error {
  using std::runtime_error::runtime_error;
};

std::string contents(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) throw Fault(fmt::format("{}: cannot be read", path.string()));
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

// Column name and declared type, as SQLite understood the CREATE statement.
struct Column {
  std::string name;
  std::string type;
};

std::vector<Column> columns_of(const SQLite::Database& database, const ReferenceTable& table) {
  clampwright::specdb::Query query(database, "SELECT name, type FROM pragma_table_info(?)",
                                   std::string_view(table.name));
  std::vector<Column> columns;
  while (query.next())
    columns.push_back({query.text(0), query.text(1)});
  return columns;
}

double number(const std::string& text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value))
    throw Fault(fmt::format("\"{}\" is no number", text));
  return value;
}

std::int64_t whole_number(const std::string& text) {
  std::int64_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size())
    throw Fault(fmt::format("\"{}\" is no whole number", text));
  return value;
}

void bind(SQLite::Statement& insert, int index, const Column& column, const std::string& text) {
  if (!clampwright::text::is_printable(text))
    throw Fault(fmt::format("column {} holds control characters", column.name));
  // A source has a place even if it is not known which; an empty text is easier to show than a NULL.
  const bool is_place = column.name == "where" || column.name == "edition" || column.name.ends_with("_where");
  if (text.empty() && !is_place)
    insert.bind(index);
  else if (column.type == "REAL")
    insert.bind(index, number(text));
  else if (column.type == "INTEGER")
    insert.bind(index, whole_number(text));
  else
    insert.bind(index, text);
  if (!text.empty() && (column.name == "known" || column.name.ends_with("_known")))
    (void)clampwright::specdb::known_named(text);
}

void fill(SQLite::Database& database, const ReferenceTable& table, const CsvTable& csv, const std::string& file) {
  const auto columns = columns_of(database, table);
  if (columns.size() != csv.header.size())
    throw Fault(fmt::format("{}:1: {} columns where the table has {}", file, csv.header.size(), columns.size()));
  for (std::size_t i = 0; i < columns.size(); ++i)
    if (columns[i].name != csv.header[i])
      throw Fault(
          fmt::format("{}:1: column {} is \"{}\" and should be \"{}\"", file, i + 1, csv.header[i], columns[i].name));
  std::string marks;
  for (std::size_t i = 0; i < columns.size(); ++i)
    marks += i == 0 ? "?" : ",?";
  SQLite::Statement insert(database, fmt::format("INSERT INTO {} VALUES ({})", table.name, marks));
  for (const CsvRow& row : csv.rows) {
    try {
      insert.reset();
      for (std::size_t i = 0; i < columns.size(); ++i)
        bind(insert, static_cast<int>(i) + 1, columns[i], row.fields[i]);
      insert.exec();
    } catch (const std::exception& error) {
      throw Fault(fmt::format("{}:{}: {}", file, row.line, error.what()));
    }
  }
}

void build(const fs::path& data, const fs::path& image, const fs::path& digest_file) {
  fs::remove(image);
  std::string all;
  {
    SQLite::Database database(image.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec("PRAGMA journal_mode=DELETE; PRAGMA foreign_keys=ON;");
    SQLite::Transaction transaction(database);
    for (const ReferenceTable& table : clampwright::specdb::k_reference_tables) {
      const fs::path path = data / fmt::format("{}.csv", table.name);
      const std::string text = contents(path);
      all += fmt::format("{}\n{}\n", table.name, text);
      const auto csv = clampwright::specdb::read_csv(text);
      if (!csv) throw Fault(fmt::format("{}: {}", path.string(), csv.error().message));
      database.exec(table.create);
      fill(database, table, *csv, path.string());
    }
    database.exec("CREATE INDEX threads_by_size ON threads(form, size); CREATE INDEX surface_sources_by_surface ON "
                  "surface_sources(surface, model);");
    database.exec("CREATE TABLE meta (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID");
    clampwright::specdb::run(database, "INSERT INTO meta VALUES ('content_sha256', ?)",
                             std::string_view(clampwright::specdb::sha256(all)));
    transaction.commit();
  }
  std::ofstream out(digest_file, std::ios::binary);
  out << '"' << clampwright::specdb::sha256(contents(image)) << "\"\n";
  if (!out.flush()) throw Fault(fmt::format("{}: cannot be written", digest_file.string()));
}

} // namespace

int main(int argc, char** argv) {
  if (argc != 4) {
    std::cerr << "usage: build_image DATA_FOLDER IMAGE_FILE DIGEST_FILE\n";
    return 64;
  }
  try {
    build(argv[1], argv[2], argv[3]);
  } catch (const std::exception& error) {
    std::cerr << "build_image: " << error.what() << '\n';
    return 65;
  }
  return 0;
}
