// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/crank/hand.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::crank {
namespace {

using finding::Code;
using quantity::millimetres;
using testing::Contains;
using testing::Not;
using thread::Hand;
using thread::Turn;

std::vector<Code> codes(const HandCase& asked) {
  std::vector<Code> out;
  for (const auto& finding : hand_for(asked).findings)
    out.push_back(finding.code);
  return out;
}

constexpr Turn k_turns[] = {Turn::clockwise, Turn::anticlockwise};
constexpr Driver k_drivers[] = {Driver::shaft, Driver::part};

} // namespace

TEST(Hand, AlwaysAsksToLookAtTheThread) {
  for (const Turn turn : k_turns)
    for (const Driver driver : k_drivers)
      for (const auto fitted : {std::optional<Hand>(), std::optional(Hand::left), std::optional(Hand::right)})
        EXPECT_THAT(codes({{turn, driver}, {}, fitted}), Contains(Code::look_at_thread));
}

TEST(Hand, DoubtsAThreadOfTheOtherHand) {
  const Drive drive{Turn::clockwise, Driver::shaft}; // calls for left
  EXPECT_THAT(codes({drive, {}, Hand::right}), Contains(Code::hand_doubt));
  EXPECT_THAT(codes({drive, {}, Hand::left}), Not(Contains(Code::hand_doubt)));
  EXPECT_THAT(codes({drive, {}, {}}), Not(Contains(Code::hand_doubt)));
  EXPECT_THAT(codes({drive, {}, Hand::left}), Contains(Code::left_hand));
}

// A load that stands still turns backwards in the shaft's frame; a hub goes with it, a pin in a bore against it. So the
// hub's creep calls for the hand of the drive where the shaft drives, and for the other where the part does.
TEST(Precession, AgreesWithTheDriveOnlyWhereTheShaftDrives) {
  for (const Turn turn : k_turns) {
    EXPECT_TRUE(creep_agrees({turn, Driver::shaft}));
    EXPECT_FALSE(creep_agrees({turn, Driver::part}));
    EXPECT_NE(hub_creeps(turn), turn);
    EXPECT_EQ(pin_creeps(turn), turn);
  }
}

// By hand: 0.02 mm on 20 mm: 0.02/20.02 and 0.02/20 of a turn. Of rolling on the inside: a pin of half the bore would
// roll one whole turn back, a hub of twice the shaft half a turn on.
TEST(Precession, IsBoundedByTheClearance) {
  const LooseFit fit{millimetres(20.02), millimetres(20)};
  EXPECT_NEAR(hub_creep(fit), 0.02 / 20.02, 1e-12);
  EXPECT_NEAR(pin_creep(fit), 0.001, 1e-12);
  EXPECT_DOUBLE_EQ(pin_creep({millimetres(20), millimetres(10)}), 1.0);
  EXPECT_DOUBLE_EQ(hub_creep({millimetres(20), millimetres(10)}), 0.5);
  EXPECT_DOUBLE_EQ(hub_creep({millimetres(20), millimetres(20)}), 0.0);
}

TEST(Precession, HasNoBoundWithoutTheDiameters) {
  EXPECT_FALSE(hand_for({{Turn::clockwise, Driver::shaft}, {}, {}}).hub_turns);
}

} // namespace clampwright::crank
