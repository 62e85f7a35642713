// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/case_question.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;
using tightening::JointKind;
using Text = std::optional<std::string>;

struct KindRow {
  const char* text;
  JointKind kind;
};

// What is asked beside M10, and which option is refused.
struct RefusedRow {
  const char* thread;
  Text strength_class, wrench_accuracy, running_torque, lock, shank, bore;
  Trouble trouble;
  const char* field;
};

// clang-format off
constexpr KindRow k_kinds[] = {
    {"bolt",     JointKind::bolt},
    {"hub",      JointKind::hub},
    {"plug",     JointKind::plug},
    {"stud-set", JointKind::stud_set},
    {"union",    JointKind::union_nut},
    {"HUB",      JointKind::hub},
    {"Stud-Set", JointKind::stud_set},
};

const RefusedRow k_refused[] = {
    {"M10x1.3", {},      {},     {},       {},        {},      {},       Trouble::no_such,        ""},
    {"",        {},      {},     {},       {},        {},      {},       Trouble::not_understood, ""},
    {"M10",     "8.9",   {},     {},       {},        {},      {},       Trouble::no_such,        "--class"},
    {"M10",     "SAE 5", {},     {},       {},        {},      {},       Trouble::no_such,        "--class"},
    {"M10",     {},      "100%", {},       {},        {},      {},       Trouble::not_understood, "--wrench-accuracy"},
    {"M10",     {},      "4",    {},       {},        {},      {},       Trouble::not_understood, "--wrench-accuracy"},
    {"M10",     {},      "-4%",  {},       {},        {},      {},       Trouble::not_understood, "--wrench-accuracy"},
    {"M10",     {},      "fine", {},       {},        {},      {},       Trouble::not_understood, "--wrench-accuracy"},
    {"M10",     {},      {},     "2",      {},        {},      {},       Trouble::not_understood, "--running-torque"},
    {"M10",     {},      {},     "2 N",    {},        {},      {},       Trouble::not_understood, "--running-torque"},
    {"M10",     {},      {},     "-2 N.m", {},        {},      {},       Trouble::not_understood, "--running-torque"},
    {"M10",     {},      {},     {},       "glue",    {},      {},       Trouble::no_such,        "--lock"},
    {"M10",     {},      {},     {},       {},        "11 mm", {},       Trouble::not_understood, "--shank"},
    {"M10",     {},      {},     {},       {},        "0 mm",  {},       Trouble::not_understood, "--shank"},
    {"M10",     {},      {},     {},       {},        "7",     {},       Trouble::not_understood, "--shank"},
    {"M10",     {},      {},     {},       {},        {},      "9 mm",   Trouble::not_understood, "--bore"},
    {"M10",     {},      {},     {},       {},        {},      "wide",   Trouble::not_understood, "--bore"},
};
// clang-format on

CaseQuestion m10() {
  CaseQuestion q;
  q.thread = "M10";
  return q;
}

ResolvedCase answered(const CaseQuestion& q) {
  auto resolved = resolve(Catalogue(), q);
  if (!resolved) throw std::runtime_error(resolved.error().message);
  return std::move(*resolved);
}

TEST(JointKindText, IsReadInAnyCase) {
  for (const KindRow& row : k_kinds) {
    const auto kind = read_joint_kind(row.text);
    ASSERT_TRUE(kind.has_value()) << row.text;
    EXPECT_EQ(*kind, row.kind) << row.text;
  }
}

TEST(JointKindText, IsRefusedWithTheKinds) {
  for (const char* text : {"rivet", "", "stud set", "bolts", "hu"}) {
    const Problem problem = problem_of(read_joint_kind(text));
    EXPECT_EQ(problem.trouble, Trouble::not_understood) << text;
    EXPECT_EQ(problem.field, "--kind") << text;
    EXPECT_THAT(problem.hint, HasSubstr("bolt, hub, plug, stud-set or union")) << text;
  }
}

TEST(CaseQuestion, IsABoltIfNothingElseIsSaid) { EXPECT_EQ(answered(m10()).asked.kind, JointKind::bolt); }

TEST(CaseQuestion, HasNoStrengthIfNoClassIsSaid) {
  const auto found = answered(m10());
  EXPECT_EQ(found.asked.strength.class_name, "unknown");
  EXPECT_FALSE(found.asked.strength.proof_load.has_value());
}

TEST(CaseQuestion, LeavesOutWhatWasNotSaid) {
  const auto found = answered(m10());
  EXPECT_FALSE(found.accuracy.has_value());
  EXPECT_FALSE(found.asked.running_torque.has_value());
  EXPECT_FALSE(!found.asked.locks.empty());
  EXPECT_FALSE(found.asked.shank.has_value());
  EXPECT_FALSE(found.asked.bore.has_value());
}

TEST(CaseQuestion, TakesTheThreadWithItsHand) {
  CaseQuestion q;
  q.thread = "M14x1.5-LH";
  const auto found = answered(q);
  EXPECT_EQ(found.asked.thread.designation, "M14x1.5");
  EXPECT_EQ(found.asked.thread.hand, thread::Hand::left);
  EXPECT_EQ(found.thread.thread.designation, "M14x1.5");
}

TEST(CaseQuestion, TakesTheAccuracyAsGiven) {
  CaseQuestion q = m10();
  for (const char* text : {"4%", "0.04", "4 %"}) {
    q.wrench_accuracy = text;
    const auto found = answered(q);
    ASSERT_TRUE(found.accuracy.has_value()) << text;
    EXPECT_DOUBLE_EQ(found.accuracy->share, 0.04) << text;
    EXPECT_EQ(found.accuracy->basis, "as given") << text;
  }
}

// 0.2 kgf.m = 0.2 x 9.80665 N.m, the standard gravity being exact.
TEST(CaseQuestion, TakesARunningTorqueWithAMassForAForce) {
  CaseQuestion q = m10();
  q.running_torque = "0.2 mkg";
  const auto found = answered(q);
  ASSERT_TRUE(found.asked.running_torque.has_value());
  EXPECT_NEAR(quantity::in_newton_metres(*found.asked.running_torque), 1.96133, 1e-12);
  EXPECT_TRUE(found.asked.mass_as_force);
}

TEST(CaseQuestion, TakesALock) {
  CaseQuestion q = m10();
  q.locks = {"Tab Washer"};
  ASSERT_EQ(answered(q).asked.locks.size(), 1U);
  EXPECT_EQ(answered(q).asked.locks.front().name, "tab-washer");
}

TEST(CaseQuestion, TakesSeveralLocks) {
  CaseQuestion q = m10();
  q.locks = {"locking-nut-insert", "compound-low"};
  EXPECT_EQ(answered(q).asked.locks.size(), 2U);
}

TEST(CaseQuestion, TakesShankAndBore) {
  CaseQuestion q = m10();
  q.shank = "7.5 mm";
  q.bore = "1/8 in";
  const auto found = answered(q);
  EXPECT_NEAR(quantity::in_millimetres(*found.asked.shank), 7.5, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(*found.asked.bore), 3.175, 1e-9);
}

TEST(CaseQuestion, IsRefusedUnderTheNameOfItsOption) {
  const Catalogue catalogue;
  for (const RefusedRow& row : k_refused) {
    CaseQuestion q;
    q.thread = row.thread;
    q.strength_class = row.strength_class;
    q.wrench_accuracy = row.wrench_accuracy;
    q.running_torque = row.running_torque;
    if (row.lock) q.locks = {*row.lock};
    q.shank = row.shank;
    q.bore = row.bore;
    const Problem problem = problem_of(resolve(catalogue, q));
    EXPECT_EQ(problem.trouble, row.trouble) << row.thread << ' ' << row.field << ": " << problem.message;
    EXPECT_EQ(problem.field, row.field) << row.thread << ": " << problem.message;
    EXPECT_FALSE(problem.hint.empty()) << row.thread << ' ' << row.field;
  }
}

} // namespace
} // namespace clampwright::specdb
