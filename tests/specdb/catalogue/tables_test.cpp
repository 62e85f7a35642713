// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/tables.hpp"

#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/image/reference_tables.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

std::size_t rows(std::string_view table, const std::vector<std::string>& words) {
  return read_table(Catalogue(), table, words)->rows.size();
}

struct Occurrence {
  const char* word;
  const char* text;
  bool occurs;
};

// clang-format off
// Decided by the rule in the header before the program was run.
constexpr Occurrence k_occurrences[] = {
    {"m8",       "m8",              true},
    {"m8",       "m8x1",            true},
    {"m8x1",     "m8x1",            true},
    {"m8x1",     "m8x1.25",         false},
    {"m8",       "m80",             false},
    {"m8",       "m8.8",            false},
    {"1",        "m8x1",            true},
    {"13",       "13",              true},
    {"13",       "13.5",            false},
    {"13",       "0.13",            false},
    {"13",       "2013",            false},
    {"5",        "13.5",            false},
    {"1/4",      "1/4",             true},
    {"1/4",      "1/4-20 unc",      true},
    {"20",       "1/4-20 unc",      true},
    {"1/4",      "1 1/4",           false},
    {"1/4",      "11/4",            false},
    {"4",        "1/4",             false},
    {"1",        "1 1/4",           false},
    {"1",        "1",               true},
    {"1 1/4",    "1 1/4",           true},
    {"#10",      "#10",             true},
    {"10",       "#10",             false},
    {"4014",     "iso 4014",        true},
    {"401",      "iso 4014",        false},
    {"7380",     "iso 7380-1",      true},
    {"7380-1",   "iso 7380-1",      true},
    {"flan",     "hexagon flange",  true},
    {"lange",    "hexagon flange",  false},
    {"ba",       "2 ba",            true},
    {"2",        "12 ba",           false},
    {"8.8",      "08.8",            false},
    {"a2-70",    "a2-70",           true},
    {"",         "m8",              false},
};
// clang-format on

TEST(Word, OccursByTheRule) {
  for (const Occurrence& row : k_occurrences)
    EXPECT_EQ(occurs(row.word, row.text), row.occurs) << row.word << " in " << row.text;
}

TEST(Tables, AreThoseThatTheImageIsBuiltFrom) {
  EXPECT_THAT(reference_tables(Catalogue()), SizeIs(k_reference_tables.size()));
}

TEST(Tables, AllSayWhatTheyHold) {
  for (const TableSummary& table : reference_tables(Catalogue())) {
    EXPECT_THAT(table.holds, testing::Not(IsEmpty())) << table.name;
    EXPECT_GT(table.rows, 0) << table.name;
  }
}

TEST(Tables, CanAllBeReadWhole) {
  const Catalogue catalogue;
  for (const TableSummary& table : reference_tables(catalogue))
    EXPECT_EQ(static_cast<std::int64_t>(read_table(catalogue, table.name, {})->rows.size()), table.rows) << table.name;
}

TEST(Tables, NameASourceInEveryRow) {
  const Catalogue catalogue;
  for (const TableSummary& table : reference_tables(catalogue)) {
    // A material may have no figure at all, and a surface's figures are our choice; surface-sources has what was
    // published.
    if (table.name == "sources" || table.name == "surfaces" || table.name == "part-materials") continue;
    const auto answer = read_table(catalogue, table.name, {});
    for (const TableRow& row : answer->rows)
      EXPECT_THAT(row.sources, testing::Not(IsEmpty())) << table.name << ' ' << cell_text(row.cells[0]);
  }
}

TEST(Tables, AreFoundByHyphenUnderscoreOrSpace) {
  EXPECT_EQ(rows("wrench-sizes", {"M8"}), rows("wrench_sizes", {"M8"}));
  EXPECT_EQ(rows("Wrench Sizes", {"M8"}), rows("wrench_sizes", {"M8"}));
}

TEST(Tables, AreRefusedByAnUnknownNameWithTheNearest) {
  const Problem problem = problem_of(read_table(Catalogue(), "wench-sizes", {}));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_THAT(problem.hint, HasSubstr("did you mean wrench-sizes?"));
}

TEST(TableRows, HaveEveryWord) {
  const auto answer = read_table(Catalogue(), "heads", {"iso 4014", "M10"});
  ASSERT_EQ(answer->rows.size(), 1U);
  EXPECT_EQ(cell_text(answer->rows[0].cells[3]), "M10");
}

TEST(TableRows, AreFoundByANumberWithItsUnit) {
  EXPECT_EQ(rows("hexagon-keys", {"8mm"}), 1U); // its columns carry the unit in their names
  EXPECT_EQ(rows("washers", {"M8", "16mm"}), rows("washers", {"M8", "16", "mm"}));
  EXPECT_GT(rows("washers", {"M8", "16mm"}), 0U);
}

TEST(TableRows, OfAnyThreadAreShownWithEachThread) {
  const auto answer = read_table(Catalogue(), "spark-plugs", {"M14", "conical"});
  EXPECT_TRUE(std::ranges::any_of(answer->rows, [](const TableRow& row) { return cell_text(row.cells[0]) == "any"; }));
}

TEST(TableRows, ComeInTheOrderOfTheirFile) {
  const auto answer = read_table(Catalogue(), "threads", {"metric", "coarse"});
  ASSERT_GT(answer->rows.size(), 10U);
  EXPECT_EQ(cell_text(answer->rows[0].cells[0]), "M1");
  EXPECT_EQ(cell_text(answer->rows.back().cells[0]), "M68");
}

TEST(TableRows, KeepNumbersAsNumbers) {
  const auto answer = read_table(Catalogue(), "holes", {"M10", "fine"});
  ASSERT_EQ(answer->rows.size(), 1U);
  EXPECT_EQ(std::get<double>(answer->rows[0].cells[4]), 10.5);
}

TEST(TableRows, AreNoneWhereAWordIsNowhere) { EXPECT_EQ(rows("heads", {"zeppelin"}), 0U); }

} // namespace
} // namespace clampwright::specdb
