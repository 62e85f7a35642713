// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/chart_question.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/tightening/wanted.hpp"

namespace clampwright::specdb {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;
using tightening::Chart;

ChartQuestion question(std::string classes, std::optional<std::string> from = {}, std::optional<std::string> to = {}) {
  ChartQuestion asked;
  asked.classes = std::move(classes);
  asked.from = std::move(from);
  asked.to = std::move(to);
  asked.each.surfaces = "oiled";
  return asked;
}

Result<Chart> asked(const ChartQuestion& question) {
  static const Catalogue catalogue;
  return chart_for(catalogue, question);
}

std::vector<std::string> threads(const Chart& chart) {
  std::vector<std::string> names;
  for (const auto& row : chart.rows)
    names.push_back(row.thread.designation);
  return names;
}

Problem refusal(const ChartQuestion& question) {
  const auto chart = asked(question);
  EXPECT_FALSE(chart.has_value());
  return chart ? Problem{} : chart.error();
}

} // namespace

// ISO 261, coarse series.
TEST(ChartQuestion, TakesTheCoarseThreadsBetweenItsEnds) {
  EXPECT_THAT(threads(*asked(question("8.8", "M6", "M12"))), ElementsAre("M6", "M7", "M8", "M9", "M10", "M11", "M12"));
}

TEST(ChartQuestion, TakesUncAndUnfForInchClasses) {
  EXPECT_THAT(threads(*asked(question("SAE 5", "1/4", "3/8"))),
              ElementsAre("1/4-20 UNC", "1/4-28 UNF", "5/16-18 UNC", "5/16-24 UNF", "3/8-16 UNC", "3/8-24 UNF"));
}

TEST(ChartQuestion, TakesAnotherSeriesWhereItIsNamed) {
  ChartQuestion fine = question("8.8", "M8", "M10");
  fine.series = "fine";
  EXPECT_THAT(threads(*asked(fine)), Contains("M10x1.25"));
  EXPECT_THAT(threads(*asked(fine)), Not(Contains("M10")));
  ChartQuestion all = question("grade 8", "1/4", "1/4");
  all.series = "ALL";
  EXPECT_THAT(threads(*asked(all)), ElementsAre("1/4-20 UNC", "1/4-28 UNF", "1/4-32 UNEF"));
}

TEST(ChartQuestion, TakesAThreadForItsSize) {
  EXPECT_EQ(threads(*asked(question("8.8", "M8x1", "M10x1.25"))), threads(*asked(question("8.8", "M8", "M10"))));
}

TEST(ChartQuestion, GoesClassByClassInTheOrderGiven) {
  const auto chart = *asked(question("10.9, 8.8,10.9", "M6", "M6"));
  EXPECT_THAT(chart.classes, ElementsAre("10.9", "8.8"));
  ASSERT_EQ(chart.rows.size(), 2U);
  EXPECT_EQ(chart.rows[0].class_name, "10.9");
}

TEST(ChartQuestion, AnswersEachRowAsTheTorqueForThatBoltIs) {
  const Catalogue catalogue;
  const auto chart = *asked(question("8.8,10.9,12.9"));
  for (const auto& row : chart.rows) {
    CaseQuestion one;
    one.thread = row.thread.designation;
    one.strength_class = row.class_name;
    one.surfaces = "oiled";
    const auto alone = resolve(catalogue, one).value();
    const auto torque = tightening::torque_for(alone.asked, chart.wanted, alone.accuracy).value();
    EXPECT_EQ(row.answer->clamp.torque, torque.clamp.torque) << one.thread;
    EXPECT_EQ(row.answer->preload, torque.preload) << one.thread;
  }
}

// ISO 898-1:2013, Table 3 (second-hand): 9.8 up to M16; all others up to M39, from M1.6.
TEST(ChartQuestion, SaysWhichSizesAClassDoesNotComeIn) {
  const auto chart = *asked(question("9.8,10.9", "M14", "M20"));
  ASSERT_EQ(chart.gaps.size(), 1U);
  EXPECT_EQ(chart.gaps[0].class_name, "9.8");
  EXPECT_THAT(chart.gaps[0].threads, ElementsAre("M18", "M20"));
}

TEST(ChartQuestion, LeavesOutInSilenceOnlyWhatNobodyAskedFor) {
  const auto chart = *asked(question("8.8"));
  EXPECT_EQ(chart.threads.front(), "M1.6");
  EXPECT_EQ(chart.threads.back(), "M39");
  EXPECT_TRUE(chart.gaps.empty());
  EXPECT_THAT(asked(question("8.8", {}, "M42"))->gaps.at(0).threads, ElementsAre("M42"));
}

// ISO 3506-1 knows no proof stress.
TEST(ChartQuestion, KeepsARowWithoutAProofLoadAndSaysWhy) {
  const auto chart = *asked(question("8.8,A2-70", "M8", "M8"));
  ASSERT_EQ(chart.rows.size(), 2U);
  EXPECT_TRUE(chart.rows[0].answer);
  EXPECT_FALSE(chart.rows[1].answer);
  EXPECT_THAT(chart.rows[1].none_because, HasSubstr("no proof load"));
}

TEST(ChartQuestion, HasNoYieldShareForASizeWithoutAFace) {
  ChartQuestion yield = question("A2-70", "M8", "M9");
  yield.yield_fraction = "70%";
  const auto chart = *asked(yield);
  ASSERT_EQ(chart.rows.size(), 2U);
  EXPECT_TRUE(chart.rows[0].answer);
  EXPECT_THAT(chart.rows[1].none_because, HasSubstr("face"));
}

TEST(ChartQuestion, RefusesAYieldShareWhereFrictionIsNotStated) {
  ChartQuestion yield = question("8.8", "M8", "M10");
  yield.each.surfaces.reset();
  yield.yield_fraction = "90%";
  EXPECT_EQ(refusal(yield).code, "friction-missing");
}

TEST(ChartQuestion, RefusesWhatMakesNoChart) {
  struct Row {
    const char* classes;
    std::optional<std::string> from;
    std::optional<std::string> to;
    Trouble trouble;
    const char* says;
  };
  // clang-format off
  const Row rows[] = {
      {"8.8,SAE 5",  {},            {},           Trouble::usage,          "SAE 5 of inch threads"},
      {"unknown",    {},            {},           Trouble::usage,          "needs the class"},
      {"8.8,",       {},            {},           Trouble::not_understood, "missing beside a comma"},
      {",8.8",       {},            {},           Trouble::not_understood, "missing beside a comma"},
      {"",           {},            {},           Trouble::not_understood, "missing beside a comma"},
      {"8,8",        {},            {},           Trouble::no_such,        "names no strength class"},
      {"99",         {},            {},           Trouble::no_such,        "names no strength class"},
      {"8.8",        "M10",         "M6",         Trouble::not_understood, "begin at M10"},
      {"8.8",        "1/4",         {},           Trouble::no_such,        "no metric thread"},
      {"SAE 5",      {},            "M8",         Trouble::no_such,        "no unified thread"},
      {"8.8",        "M10.5",       {},           Trouble::no_such,        "M10.5"},
      {"SAE 5",      "7/32",        {},           Trouble::no_such,        "7/32"},
      {"8.8",        "bolt",        {},           Trouble::not_understood, ""},
      {"8.8",        "M10-LH",      {},           Trouble::not_understood, "hand"},
      {"9.8",        "M20",         "M30",        Trouble::no_such,        "no thread between"},
  };
  // clang-format on
  for (const Row& row : rows) {
    const Problem problem = refusal(question(row.classes, row.from, row.to));
    EXPECT_EQ(problem.trouble, row.trouble) << row.classes << ' ' << problem.message;
    EXPECT_THAT(problem.message, HasSubstr(row.says)) << row.classes;
    EXPECT_FALSE(problem.hint.empty()) << row.classes;
  }
}

TEST(ChartQuestion, RefusesASeriesOfTheOtherSystem) {
  ChartQuestion wrong = question("8.8");
  wrong.series = "UNC";
  EXPECT_EQ(refusal(wrong).trouble, Trouble::no_such);
  EXPECT_THAT(refusal(wrong).hint, HasSubstr("coarse, fine, all"));
}

} // namespace clampwright::specdb
