// SPDX-License-Identifier: GPL-3.0-or-later
//
// The format is that of RFC 4180 (October 2005), section 2 (from memory).
#include "specdb/files/csv.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::ElementsAre;
using testing::HasSubstr;

// The fields of the first row under a header of two columns.
std::vector<std::string> row_of(const std::string& row) {
  const auto table = read_csv("a,b\n" + row);
  if (!table) return {"refused", table.error().message};
  if (table->rows.size() != 1) return {"not one row"};
  return table->rows.front().fields;
}

// The line numbers of all rows.
std::vector<std::size_t> lines_of(const std::string& text) {
  std::vector<std::size_t> lines;
  const auto table = read_csv(text);
  if (!table) return {0};
  for (const CsvRow& row : table->rows)
    lines.push_back(row.line);
  return lines;
}

struct Row {
  const char* text;
  const char* first;
  const char* second;
};

struct RefusedRow {
  const char* text;
  const char* message; // part of it
};

// clang-format off
constexpr Row k_rows[] = {
    {"1,2\n",                   "1",           "2"},
    {"1,2\r\n",                 "1",           "2"},
    {"1,2",                     "1",           "2"},
    {",\n",                     "",            ""},
    {"\"\",\"\"\n",             "",            ""},
    {"\"1,5\",2\n",             "1,5",         "2"},
    {"\"say \"\"M10\"\"\",2\n", "say \"M10\"", "2"},
    {"\"\"\"\",2\n",            "\"",          "2"},
    {"\"two\nlines\",2\n",      "two\nlines",  "2"},
    {"\"two\r\nlines\",2\r\n",  "two\r\nlines", "2"},
    {"\" kept \",2\n",          " kept ",      "2"},
    {"N·m,°\n",                 "N·m",         "°"},
    {"a b,c\td\n",              "a b",         "c\td"},
};

constexpr RefusedRow k_refused[] = {
    {"",                         "line 1: the header row is missing"},
    {"\n",                       "line 1: the header row is missing"},
    {"a,b\n1\n",                 "line 2: 1 fields where the header has 2"},
    {"a,b\n1,2\n1,2,3\n",        "line 3: 3 fields where the header has 2"},
    {"a,b\n1,2,\n",              "line 2: 3 fields where the header has 2"},
    {"a,b\n\"1\n2\",2\n1\n",     "line 4: 1 fields where the header has 2"},
    {"a,b\n1,2\"3\n",            "line 2: a quote"},
    {"a,b\n\"1\"2,3\n",          "line 2: a quote"},
    {"a,b\n1,2\n1,\"2",          "line 3: a quote"},
};
// clang-format on

TEST(Csv, ReadsEveryWayToWriteAField) {
  for (const Row& row : k_rows)
    EXPECT_THAT(row_of(row.text), ElementsAre(row.first, row.second)) << row.text;
}

TEST(Csv, TakesTheFirstRowAsTheHeader) {
  const auto table = read_csv("thread,\"proof load, N\"\r\nM10,33700\r\n");
  ASSERT_TRUE(table.has_value());
  EXPECT_THAT(table->header, ElementsAre("thread", "proof load, N"));
}

TEST(Csv, ReadsAHeaderWithoutRows) {
  const auto table = read_csv("a,b\n");
  ASSERT_TRUE(table.has_value());
  EXPECT_TRUE(table->rows.empty());
}

TEST(Csv, CountsLinesFromTheHeader) { EXPECT_THAT(lines_of("a\n1\n2\n3\n"), ElementsAre(2U, 3U, 4U)); }

TEST(Csv, CountsOneLineForACarriageReturnAndALineFeed) {
  EXPECT_THAT(lines_of("a\r\n1\r\n2\r\n"), ElementsAre(2U, 3U));
}

TEST(Csv, CountsTheLinesInsideAField) {
  EXPECT_THAT(lines_of("a,b\n\"1\n1\n1\",2\n3,4\n\"5\r\n5\",6\n7,8\n"), ElementsAre(2U, 5U, 6U, 8U));
}

TEST(Csv, CountsTheLinesInsideTheHeader) { EXPECT_THAT(lines_of("\"a\na\",b\n1,2\n"), ElementsAre(3U)); }

// "`line` of a row is its number in the file as an editor counts" (specdb/files/csv.hpp).
TEST(Csv, CountsEmptyLines) { EXPECT_THAT(lines_of("a,b\n\n1,2\n\n\n3,4\n"), ElementsAre(3U, 6U)); }

// RFC 4180, section 2, 4: "Spaces are considered part of a field and should not be ignored."
TEST(Csv, KeepsSpacesRoundAField) { EXPECT_THAT(row_of(" 1 , 2\n"), ElementsAre(" 1 ", " 2")); }

TEST(Csv, RefusesWithTheLine) {
  for (const RefusedRow& row : k_refused)
    EXPECT_THAT(problem_of(read_csv(row.text)).message, HasSubstr(row.message)) << row.text;
}

TEST(Csv, RefusesAsDamaged) {
  for (const RefusedRow& row : k_refused) {
    const Problem problem = problem_of(read_csv(row.text));
    EXPECT_EQ(problem.code, "damaged") << row.text;
    EXPECT_EQ(problem.trouble, Trouble::not_understood) << row.text;
  }
}

// RFC 4180, section 2, 1 and 5 to 7: CRLF ends a row; fields with commas, quotes or line ends stand in quotes, and a
// quote in them is doubled.
TEST(Csv, IsWrittenAsTheRfcHasIt) {
  EXPECT_EQ(write_csv({{"a", "b"}, {{2, {"1,5", "6\" hex"}}, {3, {"two\nlines", " "}}}}),
            "a,b\r\n\"1,5\",\"6\"\" hex\"\r\n\"two\nlines\", \r\n");
}

TEST(Csv, ReadsWhatItWrites) {
  const CsvTable table{{"a", "b,c"}, {{2, {"", "\""}}, {3, {"x\r\ny", "N·m"}}}};
  const auto again = read_csv(write_csv(table)).value();
  EXPECT_EQ(again.header, table.header);
  EXPECT_EQ(again.rows[0].fields, table.rows[0].fields);
  EXPECT_EQ(again.rows[1].fields, table.rows[1].fields);
}

} // namespace
} // namespace clampwright::specdb
