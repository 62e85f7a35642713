// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/names.hpp"

#include <array>
#include <string>

#include <gtest/gtest.h>

namespace clampwright::specdb {
namespace {

struct Row {
  const char* one;
  const char* other;
  std::size_t letters;
};

// By hand: letters changed, added, dropped, or swapped with the neighbour, each letter once.
// clang-format off
constexpr Row k_rows[] = {
    {"",        "",        0},
    {"",        "oiled",   5},
    {"oiled",   "oiled",   0},
    {"Oiled",   "oILED",   0},
    {"oild",    "oiled",   1}, // one added
    {"oilled",  "oiled",   1}, // one dropped
    {"oilet",   "oiled",   1}, // one changed
    {"olied",   "oiled",   1}, // two swapped
    {"doiel",   "oiled",   3},
    {"kitten",  "sitting", 3}, // k-s, e-i, +g: the usual example
    {"ca",      "abc",     3}, // the restricted distance; the unrestricted one is 2
    {"dry",     "oiled",   5},
};
// clang-format on

const std::array<std::string, 4> k_names{"dry", "oiled", "zinc-dry", "zinc-oiled"};

TEST(Letters, AreCountedBetweenWords) {
  for (const Row& row : k_rows)
    EXPECT_EQ(letters_apart(row.one, row.other), row.letters) << row.one << ' ' << row.other;
}

TEST(Letters, AreCountedAlikeEitherWay) {
  for (const Row& row : k_rows)
    EXPECT_EQ(letters_apart(row.other, row.one), row.letters) << row.one << ' ' << row.other;
}

TEST(Letters, OfEndlessWordsAreCountedToALimit) {
  EXPECT_LE(letters_apart(std::string(100000, 'a'), std::string(100000, 'b')), 100U);
}

TEST(NearestName, IsTheOneWithFewestLettersChanged) {
  EXPECT_EQ(nearest_name("olied", k_names), "oiled");
  EXPECT_EQ(nearest_name("zink-dry", k_names), "zinc-dry");
  EXPECT_EQ(nearest_name("DRX", k_names), "dry");
}

TEST(NearestName, IsNoneIfMoreThanOneLetterInThreeDiffers) {
  EXPECT_EQ(nearest_name("greasy", k_names), "");
  EXPECT_EQ(nearest_name("oxxxd", k_names), "");
  EXPECT_EQ(nearest_name("", k_names), "");
  EXPECT_EQ(nearest_name("Q", std::array<std::string, 2>{"A", "B"}), "");
}

} // namespace
} // namespace clampwright::specdb
