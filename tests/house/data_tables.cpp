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
      {"bolt_shear", {"class"}},
      {"breaking_torques", {"system", "thread", "class"}},
      {"class_cross", {"metric_class", "metric_range", "inch_class", "inch_range"}},
      {"class_cross_warnings", {"number"}},
      {"class_temperatures", {"system", "class"}},
      {"cure_surfaces", {"name"}},
      {"cure_times", {"what", "surface", "from_degC", "to_degC"}},
      {"embrittlement", {"topic", "condition"}},
      {"faces", {"name", "part", "form", "size"}},
      {"friction_pairs", {"use", "one", "other", "lubrication", "model", "source"}},
      {"head_marks", {"mark", "part", "meaning"}},
      {"heads", {"standard", "kind", "form", "size"}},
      {"hexagon_keys", {"key_mm"}},
      {"holes", {"form", "size", "fit"}},
      {"hot_yield", {"class", "temperature_degC"}},
      {"lock_pairs", {"one", "other"}},
      {"lock_rules", {"lock", "topic", "rule"}},
      {"locks", {"name"}},
      {"material_elastic", {"name"}},
      {"nut_loads", {"nut_class", "style", "thread"}},
      {"nut_pairing", {"nut_class"}},
      {"nut_proof_stress", {"nut_class", "style", "series", "over"}},
      {"nuts", {"standard", "kind", "form", "size"}},
      {"part_materials", {"name"}},
      {"part_reductions", {"families", "source"}},
      {"reduced_classes", {"class"}},
      {"running_rules", {"name"}},
      {"running_torques", {"kind", "nut", "size", "source"}},
      {"sources", {"id"}},
      {"spark_plug_threads", {"thread", "seat"}},
      {"spark_plugs", {"thread", "seat", "head_material", "printed", "turn_new", "source"}},
      {"strength_classes", {"class", "over"}},
      {"surface_reductions", {"from_surfaces", "to_surfaces", "rule", "source"}},
      {"surface_sources", {"surface", "model", "published", "source", "where"}},
      {"surfaces", {"name"}},
      {"thread_engagement", {"tapped_material", "class_from", "pitch", "source"}},
      {"taper_seats", {"item", "taper", "large_diameter"}},
      {"thread_limits", {"designation"}},
      {"threads", {"designation"}},
      {"washers", {"standard", "kind", "form", "size"}},
      {"wrench_sizes", {"form", "size", "fastener", "standard"}},
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
