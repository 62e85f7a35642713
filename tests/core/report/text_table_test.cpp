// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text_table.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/text_writer.hpp"

namespace clampwright::report {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

Table small_table() {
  return {{{"", "Thread", false}, {"", "Set N·m"}, {"load, kN", "low"}, {"load, kN", "high"}, {"", "Note", false}},
          {{"M8", "24.5", "9.1", "20", "a"}, {"M10x1.25", "5", "—", "—", ""}},
          "what it rests on",
          "caution"};
}

} // namespace

TEST(TextTable, StandsInColumnsUnderItsHeadings) {
  EXPECT_THAT(table_lines(small_table(), 80), ElementsAre("             Set  load, kN",       //
                                                          "  Thread     N·m  low high  Note", //
                                                          "  ------------------------------", //
                                                          "  M8        24.5  9.1   20  a",    //
                                                          "  M10x1.25     5    —    —"));
}

TEST(TextTable, MovesTogetherWhereThePageIsNarrow) {
  EXPECT_EQ(table_lines(small_table(), 32).back(), "  M10x1.25     5    —    —");
  EXPECT_EQ(table_lines(small_table(), 31).back(), "  M10x1.25    5   —    —");
  EXPECT_EQ(table_lines(small_table(), 28).back(), "M10x1.25    5   —    —");
}

TEST(TextTable, KeepsAShortHeadingOnOneLine) {
  const Table table{{{"", "high K"}, {"", "at most"}}, {{"1", "2"}}, "", ""};
  EXPECT_THAT(table_lines(table, 80),
              ElementsAre("            at", "  high K  most", "  ------------", "       1     2"));
}

TEST(TextTable, NeverFoldsARow) { EXPECT_EQ(table_lines(small_table(), 10).size(), 5U); }

TEST(TextTable, MakesRoomForALongWordOverNarrowColumns) {
  const Table table{{{"", "x", false}, {"circumference", "a"}, {"circumference", "b"}}, {{"1", "2", "3"}}, "", ""};
  EXPECT_THAT(table_lines(table, 80), ElementsAre("     circumference", //
                                                  "  x            a b", //
                                                  "  ----------------", //
                                                  "  1            2 3"));
}

TEST(TextTable, IsPartOfTheTextOfItsDocument) {
  Document document;
  document.sections.push_back({"Class 8.8", {}, small_table()});
  EXPECT_THAT(write_text(document, 80), HasSubstr("Class 8.8\n             Set  load, kN\n"));
  EXPECT_THAT(write_text(document, 80, Charset::ascii), HasSubstr("  M10x1.25     5    -    -\n"));
}

} // namespace clampwright::report
