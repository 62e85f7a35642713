// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/strength.hpp"

#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

namespace clampwright::strength {
namespace {

using quantity::in_megapascals;
using quantity::in_newtons;
using quantity::newtons;
using quantity::square_millimetres;
using test::class_8_8;
using test::strength_8_8;

const Source k_table{"Mechanical properties of bolts", "2013", "Table 5", Known::second_hand};

// ISO 898-1:2013, Table 5: M10, class 8.8, proof load 33 700 N and Table 4: ultimate load 46 400 N (seen second-hand).
PrintedLoads printed_m10() { return {PrintedLoad{newtons(33700), k_table}, PrintedLoad{newtons(46400), k_table}}; }

} // namespace

TEST(Strength, KeepsTheStressesOfItsClass) {
  const Strength strength = strength_of(class_8_8(), square_millimetres(58.0), {});
  EXPECT_EQ(strength.class_name, "8.8");
  EXPECT_NEAR(in_megapascals(*strength.proof_stress), 580.0, 1e-9);
  EXPECT_NEAR(in_megapascals(*strength.yield), 640.0, 1e-9);
  EXPECT_NEAR(in_megapascals(*strength.tensile), 800.0, 1e-9);
  EXPECT_EQ(strength.yield_kind, "Rp0.2");
}

// 580 · 58, 640 · 58 and 800 · 58 by hand.
TEST(Strength, IsStressTimesAreaWhereNothingIsPrinted) {
  const Strength strength = strength_of(class_8_8(), square_millimetres(58.0), {});
  EXPECT_NEAR(in_newtons(*strength.proof_load), 33640.0, 1e-6);
  EXPECT_NEAR(in_newtons(*strength.yield_load), 37120.0, 1e-6);
  EXPECT_NEAR(in_newtons(*strength.tensile_load), 46400.0, 1e-6);
  EXPECT_EQ(strength.proof_load_basis, LoadBasis::stress_area);
}

TEST(Strength, IsThePrintedLoadWhereOneIsPrinted) {
  const Strength strength = strength_of(class_8_8(), square_millimetres(58.0), printed_m10());
  EXPECT_DOUBLE_EQ(in_newtons(*strength.proof_load), 33700.0);
  EXPECT_DOUBLE_EQ(in_newtons(*strength.tensile_load), 46400.0);
  EXPECT_EQ(strength.proof_load_basis, LoadBasis::table);
}

TEST(Strength, TakesTheYieldLoadFromTheAreaAlways) {
  EXPECT_NEAR(in_newtons(*strength_of(class_8_8(), square_millimetres(58.0), printed_m10()).yield_load), 37120.0, 1e-6);
}

TEST(Strength, NamesTheSourcesOfClassAndLoads) {
  EXPECT_EQ(strength_of(class_8_8(), square_millimetres(58.0), {}).sources.size(), 1U);
  EXPECT_EQ(strength_of(class_8_8(), square_millimetres(58.0), printed_m10()).sources.size(), 3U);
}

TEST(Strength, HasNoLoadsWithoutAnArea) {
  const Strength strength = strength_of(class_8_8(), std::nullopt, {});
  EXPECT_FALSE(strength.proof_load);
  EXPECT_FALSE(strength.yield_load);
  EXPECT_FALSE(strength.tensile_load);
  EXPECT_FALSE(strength.proof_load_basis);
}

TEST(Strength, OfAClassWithoutProofStressHasNoProofLoad) {
  StrengthClass stainless = class_8_8();
  stainless.proof_stress.reset();
  const Strength strength = strength_of(stainless, square_millimetres(58.0), {});
  EXPECT_FALSE(strength.proof_load);
  EXPECT_TRUE(strength.yield_load);
}

TEST(Strength, OfARememberedClassSaysSo) {
  StrengthClass remembered = class_8_8();
  EXPECT_FALSE(strength_of(remembered, square_millimetres(58.0), {}).from_memory);
  remembered.source.known = Known::memory;
  EXPECT_TRUE(strength_of(remembered, square_millimetres(58.0), {}).from_memory);
}

TEST(UnknownStrength, IsEmptyThroughout) {
  const Strength unknown = unknown_strength();
  EXPECT_EQ(unknown.class_name, "unknown");
  EXPECT_FALSE(unknown.proof_stress || unknown.yield || unknown.tensile);
  EXPECT_FALSE(unknown.proof_load || unknown.yield_load || unknown.tensile_load || unknown.proof_load_basis);
}

// 580 · 38.5, 640 · 38.5, 800 · 38.5 by hand.
TEST(WeakenedStrength, IsStressTimesTheSectionLeft) {
  const Strength weak =
      weakened(strength_of(class_8_8(), square_millimetres(58.0), printed_m10()), square_millimetres(38.5));
  EXPECT_NEAR(in_newtons(*weak.proof_load), 22330.0, 1e-6);
  EXPECT_NEAR(in_newtons(*weak.yield_load), 24640.0, 1e-6);
  EXPECT_NEAR(in_newtons(*weak.tensile_load), 30800.0, 1e-6);
}

TEST(WeakenedStrength, IsNoLongerThePrintedOne) {
  const Strength weak =
      weakened(strength_of(class_8_8(), square_millimetres(58.0), printed_m10()), square_millimetres(38.5));
  EXPECT_EQ(weak.proof_load_basis, LoadBasis::stress_area);
}

TEST(WeakenedStrength, OfAnUnknownBoltStaysUnknown) {
  EXPECT_FALSE(weakened(unknown_strength(), square_millimetres(38.5)).proof_load);
}

const ReducedClass k_08_8{"08.8", 0.8, {"Countersunk screws", "2019", "0.8 of the loads", Known::memory}};

// 0.8 · 33700, 0.8 · (640 · 58) and 0.8 · 46400 by hand.
TEST(ReducedStrength, BearsItsShareOfTheLoads) {
  const Strength screw = reduced(strength_of(class_8_8(), square_millimetres(58.0), printed_m10()), k_08_8, {});
  EXPECT_EQ(screw.class_name, "08.8");
  EXPECT_DOUBLE_EQ(screw.loadability, 0.8);
  EXPECT_NEAR(in_newtons(*screw.proof_load), 26960.0, 1e-6);
  EXPECT_NEAR(in_newtons(*screw.yield_load), 29696.0, 1e-6);
  EXPECT_NEAR(in_newtons(*screw.tensile_load), 37120.0, 1e-6);
}

TEST(ReducedStrength, KeepsTheStressesOfTheFullClass) {
  const Strength screw = reduced(strength_8_8(58.0), k_08_8, {});
  EXPECT_NEAR(in_megapascals(*screw.proof_stress), 580.0, 1e-9);
  EXPECT_NEAR(in_megapascals(*screw.yield), 640.0, 1e-9);
  EXPECT_NEAR(in_megapascals(*screw.tensile), 800.0, 1e-9);
}

TEST(ReducedStrength, KeepsTheBasisOfTheProofLoadAndNamesTheShare) {
  const Strength screw = reduced(strength_of(class_8_8(), square_millimetres(58.0), printed_m10()), k_08_8, {});
  EXPECT_EQ(screw.proof_load_basis, LoadBasis::table);
  EXPECT_EQ(screw.sources.back(), k_08_8.source);
}

TEST(ReducedStrength, TakesATensileLoadOfItsOwn) {
  const Strength screw = reduced(strength_8_8(58.0), k_08_8, PrintedLoad{newtons(37100), k_table});
  EXPECT_DOUBLE_EQ(in_newtons(*screw.tensile_load), 37100.0);
  EXPECT_EQ(screw.sources.back(), k_table);
}

TEST(ReducedStrength, OfAThreadWithoutAreaHasNoLoads) {
  const Strength screw = reduced(strength_of(class_8_8(), std::nullopt, {}), k_08_8, {});
  EXPECT_FALSE(screw.proof_load || screw.yield_load || screw.tensile_load);
}

// 0.8 · 580 · 38.5 by hand.
TEST(WeakenedStrength, KeepsAReducedLoadability) {
  const Strength weak = weakened(reduced(strength_8_8(58.0), k_08_8, {}), square_millimetres(38.5));
  EXPECT_DOUBLE_EQ(weak.loadability, 0.8);
  EXPECT_NEAR(in_newtons(*weak.proof_load), 17864.0, 1e-6);
}

TEST(Strength, KeepsHardnessAndStainlessOfItsClass) {
  StrengthClass hard = class_8_8();
  EXPECT_FALSE(strength_of(hard, std::nullopt, {}).hardest_HV);
  EXPECT_FALSE(strength_of(hard, std::nullopt, {}).stainless);
  hard.hardest_HV = 320.0;
  hard.stainless = true;
  EXPECT_EQ(strength_of(hard, std::nullopt, {}).hardest_HV, 320.0);
  EXPECT_TRUE(strength_of(hard, std::nullopt, {}).stainless);
}

TEST(LoadBasisName, IsThatOfTheContract) {
  EXPECT_EQ(load_basis_name(LoadBasis::table), "table");
  EXPECT_EQ(load_basis_name(LoadBasis::stress_area), "stress-area");
}

TEST(KnownName, IsThatOfTheContract) {
  EXPECT_EQ(known_name(Known::printed), "printed");
  EXPECT_EQ(known_name(Known::second_hand), "second-hand");
  EXPECT_EQ(known_name(Known::memory), "memory");
  EXPECT_EQ(known_name(Known::computed), "computed");
  EXPECT_EQ(known_name(Known::common_practice), "common-practice");
}

} // namespace clampwright::strength
