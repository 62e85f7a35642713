// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/stress.hpp"

#include <gtest/gtest.h>

namespace clampwright::tightening {
namespace {

using quantity::in_megapascals;
using quantity::megapascals;
using quantity::newton_metres;
using quantity::newtons;
using quantity::square_millimetres;

} // namespace

// √(4·58/π) by hand.
TEST(SectionDiameter, IsThatOfTheCircleOfTheArea) {
  EXPECT_NEAR(quantity::in_millimetres(section_diameter(square_millimetres(58))), 8.5934797140, 1e-9);
}

TEST(Tension, IsForceOverArea) {
  EXPECT_NEAR(in_megapascals(tension(newtons(25000), square_millimetres(58))), 431.0344828, 1e-6);
}

// W = π/12·8.593479714³ = 166.140607804 mm³ and π/16·… = 124.605455853 mm³ by hand; 20 N·m = 20 000 N·mm.
TEST(PlasticTorsion, TakesATwelfthOfPi) {
  EXPECT_NEAR(in_megapascals(plastic_torsion(newton_metres(20), square_millimetres(58))), 20000.0 / 166.140607804,
              1e-6);
}

TEST(ElasticTorsion, TakesASixteenthOfPi) {
  EXPECT_NEAR(in_megapascals(elastic_torsion(newton_metres(20), square_millimetres(58))), 20000.0 / 124.605455853,
              1e-6);
}

// √(300² + 3·100²) = √120000 by hand.
TEST(EquivalentStress, IsThatOfVonMises) {
  EXPECT_NEAR(in_megapascals(equivalent(megapascals(300), megapascals(100))), 346.4101615, 1e-6);
}

TEST(EquivalentStress, WithoutTorsionIsTheTension) {
  EXPECT_NEAR(in_megapascals(equivalent(megapascals(300), megapascals(0))), 300.0, 1e-9);
}

} // namespace clampwright::tightening
