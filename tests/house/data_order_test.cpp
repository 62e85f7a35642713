// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rows of specdb/data stand in the order of a printed table, so that a row is found by eye and a change is small.
// cure_surfaces.csv, cure_times.csv, lock_pairs.csv, lock_rules.csv, locks.csv, material_elastic.csv,
// part_materials.csv, surfaces.csv and thread_engagement.csv are in the order in which a reader should meet them;
// threads.csv in that of its forms.
#include <algorithm>
#include <charconv>
#include <map>
#include <set>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/house/data_tables.hpp"

namespace clampwright::house {

namespace {

using specdb::CsvRow;
using specdb::CsvTable;
using testing::ElementsAre;
using testing::IsEmpty;

using Columns = std::vector<std::string_view>;

// Rows that agree in these columns stand together.
Faults scattered(std::string_view name, const CsvTable& csv, const Columns& columns) {
  Faults faults;
  std::set<std::string> seen;
  std::string before;
  for (const CsvRow& row : csv.rows) {
    const std::string group = fields(csv, row, columns);
    if (group != before && !seen.insert(group).second)
      faults.push_back(data_fault(name, row.line, fmt::format("{} stands apart from the others of its kind", group)));
    before = group;
  }
  return faults;
}

double number(const std::string& text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  EXPECT_TRUE(error == std::errc{} && end == text.data() + text.size()) << text;
  return value;
}

// Within rows that agree in some columns a number never falls.
Faults falling(std::string_view name, const CsvTable& csv, const Columns& columns, std::string_view rising) {
  Faults faults;
  std::map<std::string, double> last;
  for (const CsvRow& row : csv.rows) {
    const double value = number(row.fields[column(csv, rising)]);
    const auto [place, is_first] = last.try_emplace(fields(csv, row, columns), value);
    if (!is_first && value < place->second)
      faults.push_back(data_fault(name, row.line, fmt::format("{} falls", rising)));
    place->second = value;
  }
  return faults;
}

// A column follows the order of another table's column, and holds nothing that is not there.
Faults unlike(std::string_view name, const CsvTable& csv, std::string_view own, const CsvTable& other,
              std::string_view leading) {
  Faults faults;
  std::size_t last = 0;
  for (const CsvRow& row : csv.rows) {
    const std::string& value = row.fields[column(csv, own)];
    const auto found = std::ranges::find(
        other.rows, value, [&](const CsvRow& one) -> const std::string& { return one.fields[column(other, leading)]; });
    const auto place = static_cast<std::size_t>(found - other.rows.begin());
    if (found == other.rows.end())
      faults.push_back(data_fault(name, row.line, fmt::format("{} is unknown", value)));
    else if (place < last)
      faults.push_back(data_fault(name, row.line, fmt::format("{} comes too late", value)));
    last = std::max(last, place);
  }
  return faults;
}

void expect_none(const Faults& faults) { EXPECT_THAT(faults, IsEmpty()) << listed(faults); }

TEST(DataOrder, OfSourcesIsByName) {
  const CsvTable csv = data("sources");
  EXPECT_TRUE(std::ranges::is_sorted(csv.rows, {}, [&](const CsvRow& row) { return row.fields[column(csv, "id")]; }));
}

TEST(DataOrder, OfThreadsIsBySizeWithinAForm) {
  const CsvTable csv = data("threads");
  expect_none(scattered("threads", csv, {"form"}));
  expect_none(scattered("threads", csv, {"form", "size"}));
  expect_none(falling("threads", csv, {"form"}, "diameter"));
}

TEST(DataOrder, OfHolesIsBySizeWithinAForm) {
  const CsvTable csv = data("holes");
  expect_none(scattered("holes", csv, {"form"}));
  expect_none(scattered("holes", csv, {"form", "size"}));
  expect_none(falling("holes", csv, {"form"}, "diameter"));
}

TEST(DataOrder, OfFacesIsBySizeWithinAKind) {
  const CsvTable csv = data("faces");
  expect_none(scattered("faces", csv, {"form", "name", "part"}));
  expect_none(falling("faces", csv, {"form", "name", "part"}, "diameter"));
}

TEST(DataOrder, OfHeadsNutsAndWashersIsBySizeWithinAKind) {
  for (const char* name : {"heads", "nuts", "washers"}) {
    const CsvTable csv = data(name);
    expect_none(scattered(name, csv, {"standard", "kind"}));
    expect_none(falling(name, csv, {"standard", "kind"}, "diameter"));
  }
}

TEST(DataOrder, OfToolsIsBySize) {
  const CsvTable wrenches = data("wrench_sizes");
  expect_none(scattered("wrench_sizes", wrenches, {"form"}));
  expect_none(scattered("wrench_sizes", wrenches, {"form", "size"}));
  expect_none(falling("hexagon_keys", data("hexagon_keys"), {"source"}, "key_mm"));
}

TEST(DataOrder, OfSparkPlugsIsByThreadAndSeat) {
  for (const char* name : {"spark_plugs", "spark_plug_threads"})
    expect_none(scattered(name, data(name), {"thread", "seat"}));
}

TEST(DataOrder, OfStrengthClassesIsBySizeWithinAClass) {
  const CsvTable csv = data("strength_classes");
  expect_none(scattered("strength_classes", csv, {"system"}));
  expect_none(scattered("strength_classes", csv, {"class"}));
  expect_none(falling("strength_classes", csv, {"class"}, "over"));
}

TEST(DataOrder, OfLoadsAndLimitsIsThatOfThreads) {
  const CsvTable threads = data("threads");
  expect_none(unlike("bolt_loads", data("bolt_loads"), "thread", threads, "designation"));
  expect_none(unlike("thread_limits", data("thread_limits"), "designation", threads, "designation"));
}

TEST(DataOrder, OfSurfaceSourcesIsThatOfSurfaces) {
  const CsvTable csv = data("surface_sources");
  expect_none(unlike("surface_sources", csv, "surface", data("surfaces"), "name"));
  expect_none(scattered("surface_sources", csv, {"surface", "model"}));
}

TEST(DataOrder, OfSurfaceReductionsIsThatOfSurfaces) {
  const CsvTable csv = data("surface_reductions");
  expect_none(unlike("surface_reductions", csv, "from_surfaces", data("surfaces"), "name"));
  const CsvTable surfaces = data("surfaces");
  for (const CsvRow& surface : surfaces.rows) {
    CsvTable from = csv;
    std::erase_if(from.rows, [&](const CsvRow& row) {
      return row.fields[column(csv, "from_surfaces")] != surface.fields.front();
    });
    expect_none(unlike("surface_reductions", from, "to_surfaces", surfaces, "name"));
  }
  expect_none(falling("surface_reductions", csv, {"from_surfaces", "to_surfaces"}, "factor"));
}

TEST(DataOrder, OfReducedAndPairedClassesIsThatOfClasses) {
  expect_none(unlike("reduced_classes", data("reduced_classes"), "full_class", data("strength_classes"), "class"));
  CsvTable nuts = data("nut_pairing");
  expect_none(scattered("nut_pairing", nuts, {"system"}));
  std::erase_if(nuts.rows,
                [&](const CsvRow& row) { return row.fields[column(nuts, "highest_bolt_class")].empty(); }); // thin nuts
  expect_none(unlike("nut_pairing", nuts, "highest_bolt_class", data("strength_classes"), "class"));
}

TEST(DataOrder, OfBreakingTorquesIsThatOfThreads) {
  const CsvTable csv = data("breaking_torques");
  expect_none(scattered("breaking_torques", csv, {"system"}));
  for (const char* system : {"ISO 898-7", "ISO 3506-1"}) {
    CsvTable part = csv;
    std::erase_if(part.rows, [&](const CsvRow& row) { return row.fields[column(csv, "system")] != system; });
    expect_none(unlike("breaking_torques", part, "thread", data("threads"), "designation"));
  }
}

TEST(DataOrder, OfHotYieldIsByTemperature) {
  const CsvTable csv = data("hot_yield");
  expect_none(scattered("hot_yield", csv, {"class"}));
  expect_none(falling("hot_yield", csv, {"class"}, "temperature_degC"));
}

TEST(DataOrder, OfNutsIsByClassStyleAndSize) {
  const CsvTable stresses = data("nut_proof_stress");
  expect_none(scattered("nut_proof_stress", stresses, {"nut_class"}));
  expect_none(falling("nut_proof_stress", stresses, {"nut_class", "style", "series"}, "over"));
  const CsvTable loads = data("nut_loads");
  expect_none(unlike("nut_loads", loads, "nut_class", stresses, "nut_class"));
  expect_none(scattered("nut_loads", loads, {"nut_class", "style"}));
}

TEST(DataOrder, IsCheckedByATestThatSeesAFault) {
  const auto csv = specdb::read_csv("kind,size\nhex,8\nhex,6\nsocket,5\nhex,10\n");
  ASSERT_TRUE(csv);
  EXPECT_THAT(scattered("t", *csv, {"kind"}), ElementsAre("t.csv:5: hex stands apart from the others of its kind"));
  EXPECT_THAT(falling("t", *csv, {"kind"}, "size"), ElementsAre("t.csv:3: size falls"));
  const auto other = specdb::read_csv("name\nsocket\nhex\n");
  ASSERT_TRUE(other);
  EXPECT_THAT(unlike("t", *csv, "kind", *other, "name"), ElementsAre("t.csv:4: socket comes too late"));
  EXPECT_THAT(unlike("t", *other, "name", *csv, "kind").size(), 1U);
}

} // namespace

} // namespace clampwright::house
