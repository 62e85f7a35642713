// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/nut_pairing.hpp"

#include <gtest/gtest.h>

namespace clampwright::strength {
namespace {

struct Pair {
  const char* bolt;
  const char* highest; // bolt class that the nut is made for
  std::optional<bool> weaker;
};

// clang-format off
// By ISO 898-2, table 2 (second-hand): a nut of class n is for bolts up to the class named beside it.
constexpr Pair k_pairs[] = {
    {"10.9",      "8.8",       true},
    {"8.8",       "10.9",      false},
    {"8.8",       "8.8",       false},
    {"9.8",       "8.8",       true},
    {"12.9",      "10.9",      true},
    {"4.6",       "5.8",       false},
    {"5.6",       "5.8",       false}, // the same tensile strength, a lower yield
    {"5.8",       "5.6",       true},
    {"6.8",       "5.8",       true},
    {"08.8",      "8.8",       false}, // its thread is that of the full class
    {"08.8",      "6.8",       true},
    {"010.9",     "8.8",       true},
    {"012.9",     "12.9",      false},
    {"SAE 8",     "SAE 5",     std::nullopt}, // no metric class
    {"SAE 8",     "8.8",       std::nullopt},
    {"8.8",       "SAE 5",     std::nullopt},
    {"A2-70",     "8.8",       std::nullopt},
    {"ASTM A574", "8.8",       std::nullopt},
    {"unknown",   "8.8",       std::nullopt},
    {"",          "8.8",       std::nullopt},
    {"8",         "8.8",       std::nullopt},
    {"8.",        "8.8",       std::nullopt},
    {".8",        "8.8",       std::nullopt},
    {"0.8",       "8.8",       std::nullopt},
    {"008.8",     "8.8",       std::nullopt},
    {"8.88",      "8.8",       std::nullopt},
    {"123.9",     "8.8",       std::nullopt},
    {"8.8.8",     "8.8",       std::nullopt},
    {"-8.8",      "8.8",       std::nullopt},
};
// clang-format on

TEST(Nut, IsWeakerThanABoltAboveTheHighestThatItIsMadeFor) {
  for (const Pair& pair : k_pairs)
    EXPECT_EQ(nut_is_weaker(pair.bolt, pair.highest), pair.weaker) << pair.bolt << " on a nut for " << pair.highest;
}

} // namespace
} // namespace clampwright::strength
