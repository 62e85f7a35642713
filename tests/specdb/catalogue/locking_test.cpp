// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/locking.hpp"

#include <algorithm>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/surfaces.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {
namespace {

using friction::LockFamily;
using testing::Contains;
using testing::Each;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::vector<friction::Lock> every_lock(const Catalogue& catalogue) {
  std::vector<friction::Lock> locks;
  for (const std::string& name : lock_names(catalogue))
    if (auto lock = find_lock(catalogue, name).value(); lock.family != LockFamily::none)
      locks.push_back(std::move(lock));
  return locks;
}

std::vector<std::string> topics(const Catalogue& catalogue, std::string_view name) {
  std::vector<std::string> out;
  for (const LockRule& rule : lock_rules(catalogue, find_lock(catalogue, name).value()))
    if (std::ranges::find(out, rule.topic) == out.end()) out.push_back(rule.topic);
  return out;
}

Together verdict(const char* one, const char* other) {
  const Catalogue catalogue;
  return lock_pair(catalogue, find_lock(catalogue, one).value(), find_lock(catalogue, other).value()).value().verdict;
}

TEST(LockPairs, AreAnsweredForAnyTwoLocksAndEitherWayRound) {
  const Catalogue catalogue;
  const auto locks = every_lock(catalogue);
  EXPECT_EQ(locks.size(), 13U);
  for (const friction::Lock& one : locks)
    for (const friction::Lock& other : locks) {
      const auto pair = lock_pair(catalogue, one, other);
      ASSERT_TRUE(pair) << one.name << " " << other.name;
      EXPECT_THAT(pair->why, Not(IsEmpty()));
      EXPECT_EQ(pair->verdict, lock_pair(catalogue, other, one)->verdict) << one.name << " " << other.name;
    }
  const auto none = find_lock(catalogue, "none").value();
  EXPECT_FALSE(lock_pair(catalogue, none, locks.front()));
}

// Every name in the tables is a lock, or stands for all of a kind.
TEST(LockPairs, NameLocksThatThereAre) {
  const Catalogue catalogue;
  std::set<std::string> known{"compound", "locking-nut"};
  for (const friction::Lock& lock : every_lock(catalogue))
    known.insert(lock.name);
  Query row(catalogue.connection(),
            "SELECT one FROM lock_pairs UNION SELECT other FROM lock_pairs UNION SELECT lock FROM lock_rules");
  while (row.next())
    EXPECT_THAT(known, Contains(row.text(0)));
}

// TM 10-3930-643-20, para 2-12 (second-hand): not with wire, lock washers, lock plates.
TEST(LockPairs, KeepCompoundFromWireWashersAndPlates) {
  for (const char* compound : {"compound-low", "compound-medium", "compound-high"}) {
    for (const char* other : {"lock-wire", "spring-washer", "tab-washer"})
      EXPECT_EQ(verdict(compound, other), Together::no) << compound << " " << other;
    for (const char* nut : {"locking-nut-insert", "locking-nut-metal"})
      EXPECT_EQ(verdict(compound, nut), Together::no) << compound << " " << nut;
  }
  EXPECT_EQ(verdict("compound-low", "compound-high"), Together::no);
}

// AC 43.13-1B, para 7-68 to 7-70 (second-hand): check nuts need a second means.
TEST(LockPairs, AllowASecondMeansBesideACheckNut) {
  for (const char* other : {"lock-wire", "split-pin", "tab-washer"})
    EXPECT_EQ(verdict("second-nut", other), Together::ok) << other;
}

TEST(LockRules, SayOfEveryLockHowItIsUndoneAndRenewed) {
  const Catalogue catalogue;
  for (const friction::Lock& lock : every_lock(catalogue)) {
    EXPECT_THAT(topics(catalogue, lock.name), Contains("undo")) << lock.name;
    EXPECT_THAT(topics(catalogue, lock.name), Contains("renew")) << lock.name;
  }
}

TEST(LockRules, StandInTheOrderInWhichTheyAreNeeded) {
  EXPECT_THAT(topics(Catalogue(), "compound-medium"),
              testing::ElementsAre("fit", "never", "heat", "undo", "check", "renew", "bears"));
}

TEST(LockRules, BeginWithTheLocksOwn) {
  const Catalogue catalogue;
  std::vector<std::string> undo;
  for (const LockRule& rule : lock_rules(catalogue, find_lock(catalogue, "compound-high").value()))
    if (rule.topic == "undo") undo.push_back(rule.rule);
  EXPECT_THAT(undo.front(), HasSubstr("force alone shears"));
  EXPECT_GT(undo.size(), 1U);
  EXPECT_THAT(undo, Each(Not(HasSubstr("hand tools, with more force"))));
}

// FAA AC 43.13-1B, para 7-123 (second-hand): 0.032 in where the hole is over 0.045 in.
TEST(LockRules, HaveTheWireOfTheCircular) {
  const Catalogue catalogue;
  std::vector<std::string> rules;
  for (const LockRule& rule : lock_rules(catalogue, find_lock(catalogue, "lock-wire").value()))
    rules.push_back(rule.rule);
  EXPECT_THAT(rules, Contains(HasSubstr("0.032 in where the hole is larger than 0.045 in")));
}

// A breakaway torque of a grade was found nowhere; none may slip in.
TEST(LockRules, HoldNoBreakawayTorqueOfAGrade) {
  const Catalogue catalogue;
  for (const char* name : {"compound-low", "compound-medium", "compound-high"})
    for (const LockRule& rule : lock_rules(catalogue, find_lock(catalogue, name).value()))
      for (const char* unit : {"N·m", "lbf", "N.m"})
        EXPECT_THAT(rule.rule + rule.note, Not(HasSubstr(unit))) << name;
}

// Question page of a maker of adhesives (second-hand): 450 to 600 °F.
TEST(Compounds, ArePartedByHeat) {
  const Catalogue catalogue;
  for (const char* name : {"compound-low", "compound-medium", "compound-high"}) {
    const auto lock = find_lock(catalogue, name).value();
    EXPECT_EQ(quantity::in_degrees_celsius(lock.parts_from.value()), 232) << name;
    EXPECT_EQ(quantity::in_degrees_celsius(lock.parts_to.value()), 316) << name;
  }
  EXPECT_FALSE(find_lock(catalogue, "lock-wire").value().parts_from);
}

TEST(CureSurfaces, SayWhatLetsACompoundCure) {
  const Catalogue catalogue;
  const auto activity = [&](const char* name) { return find_cure_surface(catalogue, name).value().activity; };
  EXPECT_EQ(activity("steel"), locking::Activity::active);
  EXPECT_EQ(activity("Stainless"), locking::Activity::inactive);
  EXPECT_EQ(activity("plated"), locking::Activity::inactive);
  EXPECT_EQ(activity("aluminium"), locking::Activity::inactive);
  EXPECT_EQ(activity("magnesium"), locking::Activity::not_known);
  EXPECT_EQ(activity("brass"), locking::Activity::never);
  EXPECT_EQ(find_cure_surface(catalogue, "alu").error().code, "no-such-name");
}

// A metric thread takes no line of an inch size, nor a fine thread one of the coarse.
TEST(RunningTorques, AreThoseOfTheThread) {
  const Catalogue catalogue;
  const auto nuts = [&](const char* thread) {
    std::set<std::string> out;
    for (const auto& limit : running_limits(catalogue, find_thread(catalogue, thread).value().thread))
      out.insert(limit.printed);
    return out;
  };
  EXPECT_THAT(nuts("7/16-20"), Contains("8 lbf·in"));
  EXPECT_THAT(nuts("7/16-20"), Contains("14 lbf·in"));
  EXPECT_THAT(nuts("7/16-20"), Contains("15 lbf·in")); // by size alone
  EXPECT_THAT(nuts("7/16-14"), Not(Contains("14 lbf·in")));
  EXPECT_THAT(nuts("M8x1"), IsEmpty());
  EXPECT_THAT(nuts("3/8 BSW"), IsEmpty());
}

} // namespace
} // namespace clampwright::specdb
