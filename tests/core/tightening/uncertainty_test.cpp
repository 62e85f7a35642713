// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/uncertainty.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

Influence share(double of, Spread spread = Spread::standard) { return {"x", of, spread, "test"}; }

// 3² + 4² = 5²; with friction of 12: 13².
TEST(Budget, AddsAsSquares) {
  const Budget budget = budget_of({share(0.03), share(0.04)}, share(0.12));
  EXPECT_NEAR(budget.torque, 0.05, 1e-15);
  EXPECT_NEAR(budget.load, 0.13, 1e-15);
  EXPECT_NEAR(budget.lines[0].of_variance, 9.0 / 169.0, 1e-12);
  EXPECT_NEAR(budget.lines[1].of_variance, 16.0 / 169.0, 1e-12);
  EXPECT_NEAR(budget.lines[2].of_variance, 144.0 / 169.0, 1e-12);
}

// Even between its limits: the variance is a third of their square.
TEST(Budget, TakesLimitsByTheirRootOfThree) {
  const Budget budget = budget_of({share(0.06, Spread::limits)}, share(0.0));
  EXPECT_NEAR(budget.torque * budget.torque, 0.0036 / 3.0, 1e-15);
}

TEST(Budget, SharesOutNothingWhereEverythingIsExact) {
  const Budget budget = budget_of({share(0)}, share(0));
  EXPECT_EQ(budget.load, 0.0);
  for (const BudgetLine& line : budget.lines)
    EXPECT_EQ(line.of_variance, 0.0);
}

TEST(Budget, TakesTheWrenchByItsLimits) {
  const Influence wrench = wrench_influence({0.04, "sheet"});
  EXPECT_EQ(wrench.spread, Spread::limits);
  EXPECT_EQ(wrench.basis, "sheet");
}

} // namespace
} // namespace clampwright::tightening
