// SPDX-License-Identifier: GPL-3.0-or-later
//
// The contract, section 2, on friction: what fills which model, and what excludes what.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/question/case_question.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;

CaseQuestion m10() {
  CaseQuestion q;
  q.thread = "M10";
  q.strength_class = "8.8";
  return q;
}

tightening::Case asked(const CaseQuestion& q) {
  const auto resolved = resolve(Catalogue(), q);
  if (!resolved) throw std::runtime_error(resolved.error().message);
  return resolved->asked;
}

using Text = std::optional<std::string>;

struct ExclusionRow {
  Text surfaces, mu, mu_thread, mu_head;
  const char* code;
  const char* message; // part of it
};

struct RefusedRow {
  Text surfaces, mu, mu_thread, mu_head, nut_factor;
  const char* field;
  Trouble trouble;
};

// clang-format off
const ExclusionRow k_exclusions[] = {
    {"dry", "0.12", {},     {},     "surplus", "surfaces and a friction coefficient"},
    {"dry", {},     "0.12", "0.12", "surplus", "surfaces and a friction coefficient"},
    {"dry", {},     "0.12", {},     "surplus", "surfaces and a friction coefficient"},
    {"dry", {},     {},     "0.12", "surplus", "surfaces and a friction coefficient"},
    {{},    "0.12", "0.12", "0.12", "surplus", "--mu already stands for"},
    {{},    "0.12", "0.12", {},     "surplus", "--mu already stands for"},
    {{},    "0.12", {},     "0.12", "surplus", "--mu already stands for"},
    {{},    {},     "0.12", {},     "missing", "--mu-head is missing"},
    {{},    {},     {},     "0.12", "missing", "--mu-thread is missing"},
};

const RefusedRow k_refused[] = {
    {"honey", {},            {},     {},        {},          "--surfaces",   Trouble::no_such},
    {{},      "-0.1",        {},     {},        {},          "--mu",         Trouble::not_understood},
    {{},      "1.5",         {},     {},        {},          "--mu",         Trouble::not_understood},
    {{},      "little",      {},     {},        {},          "--mu",         Trouble::not_understood},
    {{},      "0.2..0.1",    {},     {},        {},          "--mu",         Trouble::not_understood},
    {{},      {},            "x",    "0.1",     {},          "--mu-thread",  Trouble::not_understood},
    {{},      {},            "0.1",  "0,1",     {},          "--mu-head",    Trouble::not_understood},
    {{},      {},            {},     {},        "0",         "--nut-factor", Trouble::not_understood},
    {"dry",   {},            {},     {},        "1.5",       "--nut-factor", Trouble::not_understood},
    {{},      "",            {},     {},        {},          "--mu",         Trouble::not_understood},
};
// clang-format on

TEST(Friction, ExcludesOtherFriction) {
  const Catalogue catalogue;
  for (const ExclusionRow& row : k_exclusions) {
    CaseQuestion q = m10();
    q.surfaces = row.surfaces;
    q.mu = row.mu;
    q.mu_thread = row.mu_thread;
    q.mu_head = row.mu_head;
    const Problem problem = problem_of(resolve(catalogue, q));
    EXPECT_EQ(problem.trouble, Trouble::usage) << row.message;
    EXPECT_EQ(problem.code, row.code) << row.message;
    EXPECT_THAT(problem.message, HasSubstr(row.message));
  }
}

TEST(Friction, IsRefusedUnderTheNameOfItsOption) {
  const Catalogue catalogue;
  for (const RefusedRow& row : k_refused) {
    CaseQuestion q = m10();
    q.surfaces = row.surfaces;
    q.mu = row.mu;
    q.mu_thread = row.mu_thread;
    q.mu_head = row.mu_head;
    q.nut_factor = row.nut_factor;
    const Problem problem = problem_of(resolve(catalogue, q));
    EXPECT_EQ(problem.field, row.field) << problem.message;
    EXPECT_EQ(problem.trouble, row.trouble) << row.field;
  }
}

TEST(Friction, OfNothingIsThatOfSurfacesNotStated) {
  const auto c = asked(m10());
  EXPECT_EQ(c.surfaces, "not-stated");
  EXPECT_FALSE(c.friction_stated);
  ASSERT_TRUE(c.mu_thread && c.mu_head && c.nut_factor);
  EXPECT_DOUBLE_EQ(c.mu_thread->high.value(), 0.24); // the contract's table
  EXPECT_DOUBLE_EQ(c.mu_head->high.value(), 0.24);
  EXPECT_DOUBLE_EQ(c.nut_factor->high.value(), 0.30);
}

TEST(Friction, OfSurfacesNotStatedIsNotStatedEvenIfSaid) {
  CaseQuestion q = m10();
  q.surfaces = "not-stated";
  EXPECT_FALSE(asked(q).friction_stated);
}

TEST(Friction, OfSurfacesFillsBothModels) {
  CaseQuestion q = m10();
  q.surfaces = "oiled";
  const auto c = asked(q);
  EXPECT_TRUE(c.friction_stated);
  ASSERT_TRUE(c.mu_thread && c.mu_head && c.nut_factor);
  EXPECT_DOUBLE_EQ(c.mu_thread->likely.value(), 0.12);
  EXPECT_DOUBLE_EQ(c.mu_head->likely.value(), 0.12);
  EXPECT_DOUBLE_EQ(c.nut_factor->likely.value(), 0.18);
  EXPECT_FALSE(c.friction_sources.empty());
}

TEST(Friction, OfACoefficientAloneLeavesTheNutFactorEmpty) {
  CaseQuestion q = m10();
  q.mu = "0.12";
  const auto c = asked(q);
  EXPECT_FALSE(c.nut_factor.has_value());
  EXPECT_EQ(c.surfaces, "");
  EXPECT_TRUE(c.friction_stated);
  ASSERT_TRUE(c.mu_thread && c.mu_head);
  EXPECT_DOUBLE_EQ(c.mu_head->likely.value(), 0.12);
}

TEST(Friction, OfANutFactorAloneLeavesThreadFrictionEmpty) {
  CaseQuestion q = m10();
  q.nut_factor = "0.18";
  const auto c = asked(q);
  EXPECT_FALSE(c.mu_thread.has_value());
  EXPECT_FALSE(c.mu_head.has_value());
  EXPECT_EQ(c.surfaces, "");
  EXPECT_TRUE(c.friction_stated);
  EXPECT_DOUBLE_EQ(c.nut_factor->likely.value(), 0.18);
}

TEST(Friction, OfSurfacesTakesAGivenNutFactorBeforeItsOwn) {
  CaseQuestion q = m10();
  q.surfaces = "dry";
  q.nut_factor = "0.21..0.25";
  const auto c = asked(q);
  EXPECT_DOUBLE_EQ(c.mu_thread->likely.value(), 0.19); // the contract's table, dry
  EXPECT_DOUBLE_EQ(c.nut_factor->low.value(), 0.21);
  EXPECT_DOUBLE_EQ(c.nut_factor->likely.value(), 0.23);
  EXPECT_DOUBLE_EQ(c.nut_factor->high.value(), 0.25);
}

TEST(Friction, OfSurfacesNotStatedIsStatedWithANutFactor) {
  CaseQuestion q = m10();
  q.surfaces = "not-stated";
  q.nut_factor = "0.2";
  EXPECT_TRUE(asked(q).friction_stated);
}

TEST(Friction, OfCoefficientAndNutFactorFillsAModelEach) {
  CaseQuestion q = m10();
  q.mu = "0.1..0.12..0.2";
  q.nut_factor = "0.18";
  const auto c = asked(q);
  EXPECT_DOUBLE_EQ(c.mu_thread->low.value(), 0.1);
  EXPECT_DOUBLE_EQ(c.mu_thread->likely.value(), 0.12);
  EXPECT_DOUBLE_EQ(c.mu_thread->high.value(), 0.2);
  EXPECT_DOUBLE_EQ(c.nut_factor->high.value(), 0.18);
}

TEST(Friction, OfThreadAndHeadMayDiffer) {
  CaseQuestion q = m10();
  q.mu_thread = "0.10";
  q.mu_head = "0.14";
  const auto c = asked(q);
  EXPECT_DOUBLE_EQ(c.mu_thread->likely.value(), 0.10);
  EXPECT_DOUBLE_EQ(c.mu_head->likely.value(), 0.14);
}

TEST(Friction, OfWetThreadlockerIsMarked) {
  CaseQuestion q = m10();
  q.surfaces = "threadlocker-wet";
  EXPECT_TRUE(asked(q).wet_compound);
  q.surfaces = "dry";
  EXPECT_FALSE(asked(q).wet_compound);
}

} // namespace
} // namespace clampwright::specdb
