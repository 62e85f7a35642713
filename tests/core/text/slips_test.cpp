// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/text/slips.hpp"

#include <gtest/gtest.h>

namespace clampwright::text {
namespace {

struct Row {
  std::u32string_view typed;
  std::u32string_view word;
  std::size_t whole;
  std::size_t beginning;
};

// By hand.
// clang-format off
constexpr Row k_rows[] = {
    {U"",        U"",         0, 0},
    {U"",        U"hub",      3, 0},
    {U"hub",     U"",         3, 3},
    {U"hub",     U"hub",      0, 0},
    {U"plly",    U"pulley",   2, 2}, // u and e added
    {U"clucth",  U"clutch",   1, 1}, // c and t swapped
    {U"fly",     U"flywheel", 5, 0},
    {U"flywha",  U"flywheel", 3, 1}, // a for e, and e l behind it
    {U"exhua",   U"exhaust",  3, 1}, // u and a swapped, s and t behind them
    {U"bolts",   U"bolt",     1, 1},
    {U"ca",      U"abc",      3, 1}, // restricted: c may not be swapped and move on; "a" is one letter off
    {U"螺栓",    U"螺母",     1, 1}, // letters, not bytes
};
// clang-format on

TEST(Slips, AreCountedToTheWholeWordAndToItsNearestBeginning) {
  for (const Row& row : k_rows) {
    EXPECT_EQ(slips(row.typed, row.word).whole, row.whole) << &row - k_rows;
    EXPECT_EQ(slips(row.typed, row.word).beginning, row.beginning) << &row - k_rows;
  }
}

TEST(Slips, OfEndlessWordsAreCountedToALimit) {
  EXPECT_EQ(slips(std::u32string(100000, U'a'), std::u32string(100000, U'b')).whole, 64U);
}

} // namespace
} // namespace clampwright::text
