// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/data_tables.hpp"

#include <algorithm>
#include <stdexcept>

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace clampwright::house {

const std::vector<DataTable>& data_tables() {
  static const std::vector<DataTable> tables{
      {"bolt_loads", {"thread", "class"}},
      {"faces", {"name", "part", "form", "size"}},
      {"holes", {"form", "size"}},
      {"locks", {"name"}},
      {"nut_pairing", {"nut_class"}},
      {"part_materials", {"name"}},
      {"reduced_classes", {"class"}},
      {"sources", {"id"}},
      {"strength_classes", {"class", "over"}},
      {"surface_reductions", {"from_surfaces", "to_surfaces", "rule", "source"}},
      {"surface_sources", {"surface", "model", "published", "source", "where"}},
      {"surfaces", {"name"}},
      {"thread_limits", {"designation"}},
      {"threads", {"designation"}},
  };
  return tables;
}

specdb::CsvTable data(std::string_view name) {
  auto table = specdb::read_csv(contents(fmt::format("specdb/data/{}.csv", name)));
  if (table) return *std::move(table);
  ADD_FAILURE() << name << ": " << table.error().message;
  return {};
}

std::size_t column(const specdb::CsvTable& table, std::string_view name) {
  const auto found = std::ranges::find(table.header, name);
  if (found == table.header.end()) throw std::runtime_error(fmt::format("there is no column {}", name));
  return static_cast<std::size_t>(found - table.header.begin());
}

std::string fields(const specdb::CsvTable& table, const specdb::CsvRow& row,
                   const std::vector<std::string_view>& columns) {
  std::string text;
  for (const std::string_view name : columns)
    text += (text.empty() ? "" : ", ") + row.fields[column(table, name)];
  return text;
}

std::string data_fault(std::string_view name, std::size_t line, std::string_view what) {
  return fmt::format("{}.csv:{}: {}", name, line, what);
}

} // namespace clampwright::house
