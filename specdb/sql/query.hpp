// SPDX-License-Identifier: GPL-3.0-or-later
//
// For the .cpp files of specdb only: this header shows SQLiteCpp.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>

#include "core/source/source.hpp"
#include "specdb/sql/error.hpp"

namespace clampwright::specdb {

// A prepared statement whose columns are read by their true type: SQLite would hand out "" or 0 for NULL without a
// word.
class Query {
 public:
  template<class... Arguments>
  Query(const SQLite::Database& database, const char* sql, const Arguments&... arguments) : statement_(database, sql) {
    int index = 0;
    (bind(++index, arguments), ...);
  }

  bool next() { return statement_.executeStep(); }

  [[nodiscard]] std::string text(int column) const;
  [[nodiscard]] double real(int column) const;
  [[nodiscard]] long long integer(int column) const;
  [[nodiscard]] std::optional<std::string> maybe_text(int column) const;
  [[nodiscard]] std::optional<double> maybe_real(int column) const;
  [[nodiscard]] std::optional<long long> maybe_integer(int column) const;
  [[nodiscard]] std::optional<int> maybe_whole(int column) const;
  [[nodiscard]] bool is_null(int column) const { return statement_.getColumn(column).isNull(); }
  [[nodiscard]] bool is_integer(int column) const { return statement_.getColumn(column).isInteger(); }
  [[nodiscard]] bool is_real(int column) const { return statement_.getColumn(column).isFloat(); }

  // Four columns from `first`: title, edition, where, known.
  [[nodiscard]] Source source(int first) const;

 private:
  void bind(int index, std::string_view value) { statement_.bind(index, std::string(value)); }
  void bind(int index, double value) { statement_.bind(index, value); }
  void bind(int index, long long value) { statement_.bind(index, static_cast<std::int64_t>(value)); }
  void bind(int index, int value) { statement_.bind(index, value); }
  template<class T>
  void bind(int index, const std::optional<T>& value) {
    if (value)
      bind(index, *value);
    else
      statement_.bind(index);
  }

  mutable SQLite::Statement statement_;
};

// Runs a statement that returns nothing.
template<class... Arguments>
void run(const SQLite::Database& database, const char* sql, const Arguments&... arguments) {
  Query query(database, sql, arguments...);
  while (query.next()) {
  }
}

// `printed`, `second-hand`, …; throws DatabaseError for any other word.
[[nodiscard]] Known known_named(std::string_view name);

// What kind of trouble one of SQLite's result codes is.
[[nodiscard]] Trouble trouble_of(int result_code);

// Calls `work` and turns what SQLiteCpp throws into our own error.
template<class Work>
decltype(auto) translated(Work work) {
  try {
    return work();
  } catch (const SQLite::Exception& error) {
    throw DatabaseError(error.what(), trouble_of(error.getErrorCode()));
  }
}

} // namespace clampwright::specdb
