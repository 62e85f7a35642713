// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/locking/refit.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/cases.hpp"

namespace clampwright::locking {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

friction::Surfaces surfaces(const char* name, double factor) {
  return {name, "", test::mu_band(0.1), test::k_band(factor), false, {}};
}

const friction::Surfaces k_dry = surfaces("dry", 0.20);
const friction::Surfaces k_oiled = surfaces("oiled", 0.15);

// By hand: 0.12/0.27, 0.18/0.20, 0.22/0.16.
TEST(Refit, SetsTheEndsOfTheBandsAgainstEachOther) {
  const auto ratio = ratio_of(test::k_band(0.16, 0.20, 0.27), test::k_band(0.12, 0.18, 0.22));
  EXPECT_NEAR(ratio.low, 0.444444, 1e-6);
  EXPECT_NEAR(ratio.likely, 0.9, 1e-12);
  EXPECT_NEAR(ratio.high, 1.375, 1e-12);
}

// 2 + 0.75 · (25 - 2) = 19.25.
TEST(Refit, LeavesTheRunningTorqueOut) {
  const auto corrected = refitted(quantity::newton_metres(25), quantity::newton_metres(2), 0.75);
  EXPECT_DOUBLE_EQ(quantity::in_newton_metres(corrected), 19.25);
}

TEST(Refit, IsGivenBetweenPlainStates) {
  EXPECT_THAT(why_not_corrected({}, k_dry, k_oiled), IsEmpty());
  EXPECT_THAT(why_not_corrected({}, k_oiled, k_dry), IsEmpty());
}

TEST(Refit, IsRefusedWhereTheJointLivesByDrySurfaces) {
  RefitPlace taper;
  RefitPlace plug;
  RefitPlace compound;
  taper.taper = true;
  plug.plug = true;
  compound.compound = true;
  EXPECT_THAT(why_not_corrected(taper, k_dry, k_oiled), HasSubstr("taper"));
  EXPECT_THAT(why_not_corrected(plug, k_dry, k_oiled), HasSubstr("plugs"));
  EXPECT_THAT(why_not_corrected(compound, k_dry, k_oiled), HasSubstr("compound"));
  friction::Surfaces wet = surfaces("threadlocker-wet", 0.15);
  wet.wet_compound = true;
  EXPECT_THAT(why_not_corrected(compound, k_dry, wet), IsEmpty());
}

TEST(Refit, GoesNoHigherOnSomethingSoft) {
  RefitPlace soft;
  soft.soft_part = "wood";
  EXPECT_THAT(why_not_corrected(soft, k_oiled, k_dry), HasSubstr("wood"));
  EXPECT_THAT(why_not_corrected(soft, k_dry, k_oiled), IsEmpty());
}

TEST(Refit, NeedsBothStatesAndSurfacesThatTheFastenerCanHave) {
  RefitPlace steel;
  RefitPlace stainless;
  steel.stainless = false;
  stainless.stainless = true;
  friction::Surfaces zinc = surfaces("zinc-dry", 0.22);
  zinc.electroplated = true;
  EXPECT_THAT(why_not_corrected({}, surfaces("not-stated", 0.2), k_oiled), HasSubstr("nobody said"));
  EXPECT_THAT(why_not_corrected({}, k_dry, surfaces("not-stated", 0.2)), HasSubstr("not stated"));
  EXPECT_THAT(why_not_corrected({}, k_dry, surfaces("stainless-dry", 0.4)), HasSubstr("seizes"));
  EXPECT_THAT(why_not_corrected(steel, k_dry, surfaces("stainless-lubricated", 0.2)), HasSubstr("stainless"));
  EXPECT_THAT(why_not_corrected(stainless, k_dry, zinc), HasSubstr("zinc"));
  EXPECT_THAT(why_not_corrected({}, k_dry, surfaces("stainless-lubricated", 0.19)), IsEmpty());
}

} // namespace
} // namespace clampwright::locking
