// SPDX-License-Identifier: GPL-3.0-or-later
//
// What holds of the order for every number of bolts that is answered.
#include "core/tightening/sequence.hpp"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <numeric>

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

// From one bolt to another round the circle, the shorter way, over the whole of it.
double apart(int one, int other, int bolts) {
  const int steps = std::abs(one - other);
  return static_cast<double>(std::min(steps, bolts - steps)) / bolts;
}

// The load of the first k bolts, one each, and how far it stands off the middle.
double one_sided(const std::vector<int>& order, std::size_t first) {
  std::complex<double> sum = 0;
  for (std::size_t i = 0; i < first; ++i)
    sum += std::polar(1.0, 2 * std::numbers::pi * order[i] / static_cast<double>(order.size()));
  return std::abs(sum);
}

template<class Function>
void for_every_number(Function function) {
  for (int bolts = k_fewest_bolts; bolts <= k_most_bolts; ++bolts)
    function(bolts);
}

} // namespace

TEST(SequenceProperty, EveryBoltHasItsTurnOnce) {
  for (const Pattern pattern : {Pattern::circle, Pattern::row, Pattern::two_rows})
    for_every_number([&](int bolts) {
      if (!check_bolts(pattern, bolts)) return;
      std::vector<int> order = order_of(pattern, bolts);
      std::ranges::sort(order);
      std::vector<int> all(static_cast<std::size_t>(bolts));
      std::iota(all.begin(), all.end(), 1);
      EXPECT_EQ(order, all) << pattern_name(pattern) << bolts;
    });
}

TEST(SequenceProperty, ACircleIsNeverLoadedByMoreThanOneBoltOnOneSide) {
  for_every_number([](int bolts) {
    const auto order = order_of(Pattern::circle, bolts);
    for (std::size_t k = 1; k <= order.size(); ++k)
      EXPECT_LE(one_sided(order, k), 1 + 1e-9) << bolts << " after " << k;
  });
}

TEST(SequenceProperty, TheSecondOfAPairStandsOpposite) {
  for_every_number([](int bolts) {
    if (bolts % 2 == 1) return;
    const auto order = order_of(Pattern::circle, bolts);
    for (std::size_t i = 0; i < order.size(); i += 2)
      EXPECT_EQ(std::abs(order[i] - order[i + 1]), bolts / 2) << bolts;
  });
}

TEST(SequenceProperty, OfAnOddNumberEachNextOneIsAtLeastAThirdOfTheCircleOn) {
  for_every_number([](int bolts) {
    if (bolts % 2 == 0) return;
    const auto order = order_of(Pattern::circle, bolts);
    for (std::size_t i = 1; i < order.size(); ++i)
      EXPECT_GE(apart(order[i - 1], order[i], bolts), 1.0 / 3.0 - 1e-9) << bolts;
  });
}

// From one pair to the next it is a sixth of the circle at the least; the published order of 20 once steps from 20 to
// 2, a tenth of it, and 10 as half of that from 10 to 2, a fifth.
TEST(SequenceProperty, FromPairToPairItIsASixthOfTheCircleButForTwenty) {
  for_every_number([](int bolts) {
    if (bolts < 4) return;
    const auto order = order_of(Pattern::circle, bolts);
    for (std::size_t i = 1; i < order.size(); ++i)
      EXPECT_GE(apart(order[i - 1], order[i], bolts), (bolts == 20 ? 1.0 / 10.0 : 1.0 / 6.0) - 1e-9) << bolts;
  });
}

TEST(SequenceProperty, ARowGoesOutwardsAndChangesSides) {
  for_every_number([](int bolts) {
    const auto order = order_of(Pattern::row, bolts);
    const double middle = (bolts + 1) / 2.0;
    for (std::size_t i = 1; i < order.size(); ++i)
      EXPECT_GE(std::abs(order[i] - middle), std::abs(order[i - 1] - middle)) << bolts;
    double sum = 0;
    for (const int position : order) {
      sum += position - middle;
      EXPECT_LE(std::abs(sum), bolts / 2.0) << bolts;
    }
  });
}

TEST(SequenceProperty, LooseningTwiceBackwardsIsTightening) {
  for_every_number([](int bolts) {
    const auto order = order_of(Pattern::circle, bolts);
    EXPECT_EQ(undoing_order(undoing_order(order)), order);
    EXPECT_EQ(undoing_order(order).front(), order.back());
  });
}

} // namespace clampwright::tightening
