// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/locking/running.hpp"

#include <gtest/gtest.h>

namespace clampwright::locking {
namespace {

using quantity::in_newton_metres;
using quantity::newton_metres;

RunningLimit limit(const char* kind, double torque_N_m) { return {kind, "nut", newton_metres(torque_N_m), "", "", {}}; }

std::vector<RunningRule> both_rules() { return {{"always", {}, "", {}}, {"third", 0.33, "", {}}}; }

TEST(RunningTorque, OfAUsedNutReachesTheLeast) {
  for (const char* kind : {"least running torque", "least breakaway torque", "least fifth-off torque"}) {
    EXPECT_EQ(judge(limit(kind, 1.0), newton_metres(1.0)), RunningVerdict::ok) << kind;
    EXPECT_EQ(judge(limit(kind, 1.0), newton_metres(0.99)), RunningVerdict::no) << kind;
  }
}

TEST(RunningTorque, OfAnInsertStaysBelowTheGreatest) {
  EXPECT_EQ(judge(limit("greatest running torque", 3.0), newton_metres(3.0)), RunningVerdict::ok);
  EXPECT_EQ(judge(limit("greatest running torque", 3.0), newton_metres(3.1)), RunningVerdict::no);
}

TEST(RunningTorque, OfANewNutJudgesAUsedOneByItsGreatestAlone) {
  EXPECT_EQ(judge(limit("greatest first-on torque", 1.0), newton_metres(1.1)), RunningVerdict::no);
  for (const char* kind : {"greatest first-on torque", "least first-off torque"})
    EXPECT_EQ(judge(limit(kind, 1.0), newton_metres(0.5)), RunningVerdict::not_judged) << kind;
  RunningLimit words = limit("least breakaway torque", 1.0);
  words.torque.reset();
  EXPECT_EQ(judge(words, newton_metres(0.5)), RunningVerdict::not_judged);
}

// 7/16-20 as two handbooks have it: 8 and 14 lbf·in, here 8 and 14 N·m.
TEST(RunningTorque, IsAnsweredByAllTablesTogether) {
  const std::vector<RunningLimit> tables{limit("least running torque", 8), limit("least breakaway torque", 14)};
  EXPECT_EQ(judge(tables, newton_metres(7)), Reuse::drags_too_little);
  EXPECT_EQ(judge(tables, newton_metres(8)), Reuse::tables_differ);
  EXPECT_EQ(judge(tables, newton_metres(13.9)), Reuse::tables_differ);
  EXPECT_EQ(judge(tables, newton_metres(14)), Reuse::ok);
}

TEST(RunningTorque, IsNotKnownWhereNoTableHasALeast) {
  EXPECT_EQ(judge(std::vector<RunningLimit>{}, newton_metres(1)), Reuse::not_known);
  EXPECT_EQ(judge(std::vector{limit("greatest first-on torque", 3)}, newton_metres(1)), Reuse::not_known);
  EXPECT_EQ(judge(std::vector{limit("greatest running torque", 3)}, newton_metres(1)), Reuse::not_known);
  EXPECT_EQ(judge(std::vector{limit("greatest running torque", 3)}, newton_metres(4)), Reuse::drags_too_much);
}

// M8 by ISO 2320 (read second hand): 6 N·m for a nut of class 04, 8 for 05 to 12. A nut drags most when it is new.
TEST(RunningTorque, AboveTheGreatestOfEveryNewNutIsTooMuch) {
  const std::vector<RunningLimit> tables{limit("greatest first-on torque", 6), limit("greatest first-on torque", 8),
                                         limit("least running torque", 1)};
  EXPECT_EQ(judge(tables, newton_metres(6)), Reuse::ok);
  EXPECT_EQ(judge(tables, newton_metres(7)), Reuse::tables_differ);
  EXPECT_EQ(judge(tables, newton_metres(9)), Reuse::drags_too_much);
}

// A least that is passed does not save an insert that drags too much.
TEST(RunningTorque, BeyondTheGreatestIsSeenBesideALeast) {
  const std::vector<RunningLimit> insert{limit("greatest running torque", 3), limit("least breakaway torque", 1)};
  EXPECT_EQ(judge(insert, newton_metres(2)), Reuse::ok);
  EXPECT_EQ(judge(insert, newton_metres(4)), Reuse::drags_too_much);
}

// By hand: 20 + 3; 3 is 0.15 of 20. 60 + 30; 30 is a half. 0.33 of 60 is 19.8.
TEST(RunningTorque, IsAddedByEitherRule) {
  // clang-format off
  struct Row { double printed, running, always, third; };
  const std::vector<Row> rows{{20, 3, 23, 20}, {60, 15, 75, 60}, {60, 19.7, 79.7, 60}, {60, 19.8, 79.8, 79.8}, {60, 30, 90, 90}};
  // clang-format on
  for (const Row& row : rows) {
    const auto answers = add_running(newton_metres(row.printed), newton_metres(row.running), both_rules());
    ASSERT_EQ(answers.size(), 2U);
    EXPECT_DOUBLE_EQ(in_newton_metres(answers[0].set), row.always) << row.running;
    EXPECT_DOUBLE_EQ(in_newton_metres(answers[1].set), row.third) << row.running;
    EXPECT_TRUE(answers[0].adds);
    EXPECT_EQ(answers[1].adds, row.third > row.printed) << row.running;
  }
}

} // namespace
} // namespace clampwright::locking
