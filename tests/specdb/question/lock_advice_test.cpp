// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/lock_advice.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/joint_answer.hpp"

namespace clampwright::specdb {
namespace {

using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

LockAdvice advice(std::vector<const char*> names, const std::vector<NeighbourRecord>& neighbours = {},
                  const char* surfaces = "dry") {
  const Catalogue catalogue;
  std::vector<friction::Lock> locks;
  for (const char* name : names)
    locks.push_back(find_lock(catalogue, name).value());
  return lock_advice(catalogue, locks, neighbours, surfaces);
}

// Question page of a maker of adhesives (second-hand): 232 to 316 °C.
TEST(LockAdvice, HoldsTheHeatThatPartsACompoundAgainstTheNeighbours) {
  const auto undo = advice({"compound-high"}, {{"oil seal", 120.0, {}}, {"casting", 300.0, {}}}).undo;
  EXPECT_THAT(undo, ElementsAre(AllOf(HasSubstr("232 to 316 °C"), HasSubstr("the oil seal bears 120 °C"),
                                      Not(HasSubstr("casting")))));
  EXPECT_THAT(advice({"compound-high"}).undo, ElementsAre(Not(HasSubstr("bears"))));
}

TEST(LockAdvice, KeepsACuredCompoundFromBeingTurnedToCheck) {
  EXPECT_THAT(advice({"compound-low"}).check, ElementsAre(HasSubstr("never by movement")));
  EXPECT_THAT(advice({"compound-low"}).cure, HasSubstr("72 h"));
}

// Inactive surfaces (J. Failure Anal. Prev. 12 (2012) 724: plated and stainless fasteners cured poorly): no time there.
TEST(LockAdvice, HasNoCureTimeForAPlatedJoint) {
  for (const char* surfaces : {"zinc-dry", "zinc-flake", "stainless-dry"})
    EXPECT_THAT(advice({"compound-medium"}, {}, surfaces).cure, AllOf(HasSubstr("not known"), Not(HasSubstr("72 h"))));
}

TEST(LockAdvice, TakesALockThatStandsInTheWayOffFirst) {
  EXPECT_THAT(advice({"tab-washer"}).undo, ElementsAre("bend the tab back first"));
  EXPECT_THAT(advice({"split-pin", "lock-wire"}).undo, ElementsAre(HasSubstr("pin"), HasSubstr("cut it")));
  EXPECT_THAT(advice({"tab-washer"}).cure, IsEmpty());
}

TEST(LockAdvice, SaysNothingOfLocksThatComeOffWithTheTurning) {
  for (const char* name : {"none", "locking-nut-insert", "spring-washer", "wedge-washer"}) {
    EXPECT_THAT(advice({name}).undo, IsEmpty()) << name;
    EXPECT_THAT(advice({name}).check, IsEmpty()) << name;
  }
}

JointRecord locking_nut() {
  JointRecord joint;
  joint.slug = "test/nut";
  joint.thread = "M8";
  joint.strength_class = "8.8";
  joint.locks = {{"locking-nut-insert", {}}};
  joint.running_torque = "3 N.m";
  joint.figure.printed = "20 N·m";
  joint.figure.value = 20;
  joint.figure.unit = "N.m";
  joint.figure.surfaces = "dry";
  return joint;
}

// AC 43.13-1B, para 7-40d: 20 + 3; TM 5-2330-325-13&P, item 3: 3 is less than a third of 20 (PREV-17 and its kind).
TEST(JointAnswer, HasBothRulesWhereThePageSaysNothingOfTheRunningTorque) {
  const auto answer = answer_for(Catalogue(), locking_nut()).value();
  ASSERT_EQ(answer.running.size(), 2U);
  EXPECT_NEAR(quantity::in_newton_metres(answer.running[0].set), 23, 1e-9);
  EXPECT_NEAR(quantity::in_newton_metres(answer.running[1].set), 20, 1e-9);
}

TEST(JointAnswer, LeavesTheRulesOutWhereThePageDecides) {
  for (const char* rule : {"add", "included"}) {
    JointRecord joint = locking_nut();
    joint.figure.running_torque_rule = rule;
    EXPECT_TRUE(answer_for(Catalogue(), joint).value().running.empty()) << rule;
  }
}

} // namespace
} // namespace clampwright::specdb
