// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/sql/query.hpp"

#include <limits>

#include <fmt/format.h>
#include <sqlite3.h>

namespace clampwright::specdb {

namespace {

[[noreturn]] void wrong_type(int column, const char* wanted) {
  throw DatabaseError(fmt::format("column {} is no {}", column, wanted), Trouble::not_understood);
}

} // namespace

std::string Query::text(int column) const {
  const SQLite::Column value = statement_.getColumn(column);
  if (!value.isText()) wrong_type(column, "text");
  return value.getString();
}

double Query::real(int column) const {
  const SQLite::Column value = statement_.getColumn(column);
  if (!value.isFloat() && !value.isInteger()) wrong_type(column, "number");
  return value.getDouble();
}

long long Query::integer(int column) const {
  const SQLite::Column value = statement_.getColumn(column);
  if (!value.isInteger()) wrong_type(column, "whole number");
  return value.getInt64();
}

std::optional<std::string> Query::maybe_text(int column) const {
  if (is_null(column)) return std::nullopt;
  return text(column);
}

std::optional<double> Query::maybe_real(int column) const {
  if (is_null(column)) return std::nullopt;
  return real(column);
}

std::optional<long long> Query::maybe_integer(int column) const {
  if (is_null(column)) return std::nullopt;
  return integer(column);
}

std::optional<int> Query::maybe_whole(int column) const {
  if (is_null(column)) return std::nullopt;
  const long long value = integer(column);
  if (value < std::numeric_limits<int>::min() || value > std::numeric_limits<int>::max())
    wrong_type(column, "number of that size");
  return static_cast<int>(value);
}

Source Query::source(int first) const {
  return {text(first), text(first + 1), text(first + 2), known_named(text(first + 3))};
}

Trouble trouble_of(int result_code) {
  switch (result_code & 0xFF) { // the lowest byte is the code, the rest extends it
  case SQLITE_BUSY:
  case SQLITE_LOCKED:
    return Trouble::busy;
  case SQLITE_IOERR:
  case SQLITE_FULL:
  case SQLITE_CANTOPEN:
    return Trouble::input_output;
  case SQLITE_CORRUPT:
  case SQLITE_NOTADB:
    return Trouble::not_understood;
  default:
    return Trouble::internal;
  }
}

Known known_named(std::string_view name) {
  for (const Known known : {Known::printed, Known::second_hand, Known::memory, Known::computed, Known::common_practice})
    if (known_name(known) == name) return known;
  throw DatabaseError(fmt::format("\"{}\" is no way of knowing", name), Trouble::not_understood);
}

} // namespace clampwright::specdb
