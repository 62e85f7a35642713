// SPDX-License-Identifier: GPL-3.0-or-later
//
// The gate for specdb/data: each value has a source and says how it is known, nothing stands there twice, and the files
// are written so that a change shows as a change of its own lines only.
#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/source/source.hpp"
#include "specdb/image/reference_tables.hpp"
#include "tests/house/data_tables.hpp"

namespace clampwright::house {

namespace {

using specdb::CsvRow;
using specdb::CsvTable;
using testing::ElementsAre;
using testing::IsEmpty;

template<class Check>
Faults over_all_tables(Check check) {
  Faults all;
  for (const DataTable& table : data_tables())
    for (std::string& found : check(table, data(table.name)))
      all.push_back(std::move(found));
  return all;
}

Faults text_faults(std::string_view name, std::string_view text) {
  Faults faults;
  if (text.starts_with("\xEF\xBB\xBF")) faults.push_back(data_fault(name, 1, "begins with a byte order mark"));
  if (text.find('\r') != std::string_view::npos) faults.push_back(data_fault(name, 1, "line ends are not LF alone"));
  if (!text.ends_with('\n')) faults.push_back(data_fault(name, 1, "the last line is not ended"));
  if (text.find("\n\n") != std::string_view::npos) faults.push_back(data_fault(name, 1, "holds an empty line"));
  return faults;
}

Faults blank_faults(const DataTable& table, const CsvTable& csv) {
  Faults faults;
  for (const CsvRow& row : csv.rows)
    for (std::size_t i = 0; i < row.fields.size(); ++i)
      if (row.fields[i].starts_with(' ') || row.fields[i].ends_with(' ') ||
          row.fields[i].find("  ") != std::string::npos)
        faults.push_back(data_fault(table.name, row.line, fmt::format("stray blank in column {}", csv.header[i])));
  return faults;
}

// Upper case and blanks make no other row.
Faults key_faults(const DataTable& table, const CsvTable& csv) {
  Faults faults;
  std::set<std::string> seen;
  for (const CsvRow& row : csv.rows) {
    const std::string shown = fields(csv, row, table.key);
    std::string key;
    for (const char c : shown)
      if (c != ' ') key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (!seen.insert(key).second) faults.push_back(data_fault(table.name, row.line, fmt::format("a second {}", shown)));
  }
  return faults;
}

bool is_source_column(std::string_view name) { return name == "source" || name.ends_with("_source"); }
bool is_known_column(std::string_view name) { return name == "known" || name.ends_with("_known"); }

std::set<std::string> source_ids() {
  std::set<std::string> ids;
  const CsvTable sources = data("sources");
  for (const CsvRow& row : sources.rows)
    ids.insert(row.fields[column(sources, "id")]);
  return ids;
}

Faults source_faults(const DataTable& table, const CsvTable& csv, const std::set<std::string>& ids) {
  Faults faults;
  for (std::size_t i = 0; i < csv.header.size(); ++i) {
    if (!is_source_column(csv.header[i])) continue;
    for (const CsvRow& row : csv.rows)
      // A column for part of a row is empty where the part is.
      if (csv.header[i] == "source" ? !ids.contains(row.fields[i])
                                    : !row.fields[i].empty() && !ids.contains(row.fields[i]))
        faults.push_back(data_fault(table.name, row.line, fmt::format("no source \"{}\"", row.fields[i])));
  }
  return faults;
}

Faults known_faults(const DataTable& table, const CsvTable& csv) {
  constexpr std::array words{Known::printed, Known::second_hand, Known::memory, Known::computed,
                             Known::common_practice};
  Faults faults;
  for (std::size_t i = 0; i < csv.header.size(); ++i) {
    if (!is_known_column(csv.header[i])) continue;
    for (const CsvRow& row : csv.rows) {
      const std::string& word = row.fields[i];
      const bool valid = std::ranges::any_of(words, [&](Known known) { return known_name(known) == word; });
      if (!valid && !(word.empty() && csv.header[i] != "known"))
        faults.push_back(data_fault(table.name, row.line, fmt::format("\"{}\" is no way of knowing", word)));
    }
  }
  return faults;
}

// A value and the columns that say how it is known come together.
struct Backed {
  std::string_view table;
  std::string_view value;
  std::vector<std::string_view> by;
};

const std::vector<Backed> k_backed{
    {"bolt_loads", "proof_load_N", {"proof_known"}},
    {"bolt_loads", "ultimate_load_N", {"ultimate_known"}},
    {"heads", "face_diameter", {"face_known"}},
    {"locks", "heat_limit_degC", {"heat_limit_source", "heat_limit_known"}},
    {"locks", "parts_from_degC", {"parts_to_degC", "parts_source", "parts_known"}},
    {"nuts", "face_diameter", {"face_known"}},
    {"nut_proof_stress", "hardness_scale", {"hardness_known"}},
    {"part_materials", "shear_MPa", {"shear_source", "shear_known"}},
    {"part_materials", "shear_high_MPa", {"shear_high_source", "shear_high_known"}},
    {"part_materials", "creep_above_degC", {"creep_source", "creep_known"}},
    {"part_materials", "seat_pressure_MPa", {"seat_pressure_source", "seat_pressure_known"}},
    {"strength_classes", "hv_max", {"hv_max_source", "hv_max_known"}},
    {"threads", "stress_area", {"stress_area_unit", "stress_area_source", "stress_area_known"}},
};

Faults backing_faults(const Backed& backed, const CsvTable& csv) {
  Faults faults;
  const std::size_t value = column(csv, backed.value);
  for (const std::string_view by : backed.by)
    for (const CsvRow& row : csv.rows)
      if (row.fields[value].empty() != row.fields[column(csv, by)].empty())
        faults.push_back(
            data_fault(backed.table, row.line, fmt::format("{} without {}, or the other way round", backed.value, by)));
  return faults;
}

TEST(Data, IsWhatTheReferenceImageIsBuiltFrom) {
  std::set<std::string> built;
  for (const auto& table : specdb::k_reference_tables)
    built.insert(fmt::format("{}.csv", table.name));
  std::set<std::string> checked;
  for (const DataTable& table : data_tables())
    checked.insert(fmt::format("{}.csv", table.name));
  const auto names = names_in("specdb/data");
  const std::set<std::string> there(names.begin(), names.end());
  EXPECT_EQ(there, built);
  EXPECT_EQ(there, checked);
}

TEST(Data, IsWrittenInPlainLines) {
  Faults faults;
  for (const DataTable& table : data_tables())
    for (std::string& found : text_faults(table.name, contents(fmt::format("specdb/data/{}.csv", table.name))))
      faults.push_back(std::move(found));
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Data, HasNoStrayBlanks) {
  const Faults faults = over_all_tables(blank_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Data, HasNoRowTwice) {
  const Faults faults = over_all_tables(key_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Data, NamesASourceThatExists) {
  const auto ids = source_ids();
  const Faults faults =
      over_all_tables([&](const DataTable& table, const CsvTable& csv) { return source_faults(table, csv, ids); });
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Data, SaysHowEachValueIsKnown) {
  const Faults faults = over_all_tables(known_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Data, HasNoValueWithoutBacking) {
  Faults faults;
  for (const Backed& backed : k_backed)
    for (std::string& found : backing_faults(backed, data(backed.table)))
      faults.push_back(std::move(found));
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Data, HasASourceColumnInEveryTableOfValues) {
  for (const DataTable& table : data_tables()) {
    // A surface's values are our choice; surface_sources holds what was published.
    if (table.name == "sources" || table.name == "surfaces") continue;
    const CsvTable csv = data(table.name);
    EXPECT_TRUE(std::ranges::any_of(csv.header, is_source_column)) << table.name;
    EXPECT_TRUE(std::ranges::any_of(csv.header, is_known_column)) << table.name;
  }
}

// What --head knows a face by, and the table of heads, are read by different people: they must not differ.
TEST(Data, HasTheSameFaceForAHeadInBothTables) {
  const CsvTable faces = data("faces");
  std::map<std::string, std::string> known;
  for (const CsvRow& row : faces.rows)
    if (row.fields[column(faces, "part")] == "head")
      known[fields(faces, row, {"name", "form", "size"})] = row.fields[column(faces, "face_diameter")];
  const CsvTable heads = data("heads");
  for (const CsvRow& row : heads.rows) {
    if (row.fields[column(heads, "face_name")].empty()) continue;
    const std::string key = fields(heads, row, {"face_name", "form", "size"});
    EXPECT_EQ(row.fields[column(heads, "face_diameter")], known.contains(key) ? known[key] : "") << row.line;
  }
}

TEST(Data, HasAPublishedValueForEverySurfaceAndModel) {
  std::set<std::pair<std::string, std::string>> published;
  const CsvTable sources = data("surface_sources");
  for (const CsvRow& row : sources.rows)
    published.emplace(row.fields[column(sources, "surface")], row.fields[column(sources, "model")]);
  const CsvTable surfaces = data("surfaces");
  for (const CsvRow& row : surfaces.rows)
    for (const char* model : {"mu", "k"})
      EXPECT_TRUE(published.contains({row.fields[column(surfaces, "name")], model})) << row.line << ": " << model;
}

TEST(Data, IsCheckedByATestThatSeesAFault) {
  EXPECT_EQ(text_faults("t", "a,b\r\n1,2\r\n").size(), 1U);
  EXPECT_EQ(text_faults("t", "a,b\n1,2").size(), 1U);
  EXPECT_EQ(text_faults("t", "a,b\n\n1,2\n").size(), 1U);
  EXPECT_EQ(text_faults("t", "\xEF\xBB\xBF"
                             "a,b\n")
                .size(),
            1U);
  const DataTable table{"t", {"a", "source"}};
  const auto csv = specdb::read_csv("a,source,known,b_source,b_known\n"
                                    "M6,x,memory,,\n"
                                    "m 6,x,memory,,\n"
                                    "\"M8 \",y,heard,z,rumour\n"
                                    "M10,,,,\n");
  ASSERT_TRUE(csv);
  EXPECT_THAT(blank_faults(table, *csv), ElementsAre("t.csv:4: stray blank in column a"));
  EXPECT_THAT(key_faults(table, *csv), ElementsAre("t.csv:3: a second m 6, x"));
  EXPECT_THAT(source_faults(table, *csv, {"x"}),
              ElementsAre("t.csv:4: no source \"y\"", "t.csv:5: no source \"\"", "t.csv:4: no source \"z\""));
  EXPECT_THAT(known_faults(table, *csv),
              ElementsAre("t.csv:4: \"heard\" is no way of knowing", "t.csv:5: \"\" is no way of knowing",
                          "t.csv:4: \"rumour\" is no way of knowing"));
  EXPECT_THAT(backing_faults({"t", "a", {"b_known"}}, *csv).size(), 3U);
}

} // namespace

} // namespace clampwright::house
