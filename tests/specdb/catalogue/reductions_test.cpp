// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/reductions.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::specdb {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<double> factors(std::string_view from, std::string_view to) {
  std::vector<double> out;
  for (const friction::Reduction& one : reductions_between(Catalogue(), from, to))
    out.push_back(one.factor);
  return out;
}

// TM 55-1520-240-23-1 note 2, manuals of grounds machines, charts of the trade (nut factor 0.20 to 0.15), TM
// 9-2320-362-14&P: second-hand; 0.79 is the mean of 56 pairs of a farm-machine chart, computed.
TEST(Reductions, FromDryToOiledAreFive) {
  EXPECT_THAT(factors("dry", "oiled"), ElementsAre(0.70, 0.75, 0.75, 0.79, 0.90));
}

// TM 9-2320-362-14&P, new plated cap screws, against a tractor manual, zinc M5 to M24: second-hand. They go opposite
// ways.
TEST(Reductions, FromDryToZincContradictEachOther) { EXPECT_THAT(factors("dry", "zinc-dry"), ElementsAre(0.80, 1.33)); }

// Manual of a small engine, threads found bare; appendix of a machine manual, adhesive in the thread: second-hand.
TEST(Reductions, MayRaiseTheTorque) {
  EXPECT_THAT(factors("zinc-dry", "dry"), ElementsAre(1.15));
  EXPECT_THAT(factors("oiled", "threadlocker-wet"), ElementsAre(1.1));
}

// TM 9-6115-604-34, Table 1-2 note 6: second-hand.
TEST(Reductions, ForAluminiumAreOne) {
  for (const char* family : {"cast-aluminium", "wrought-aluminium", "aluminium-pure"}) {
    const auto found = reductions_for_part(Catalogue(), family);
    ASSERT_EQ(found.size(), 1U) << family;
    EXPECT_DOUBLE_EQ(found.front().factor, 0.7) << family;
  }
  EXPECT_THAT(reductions_for_part(Catalogue(), "aluminium"), IsEmpty());
  EXPECT_THAT(reductions_for_part(Catalogue(), "steel-400"), IsEmpty());
}

// Metric torque guide, phosphate and oil; TM 55-1520-240-23-1, lubricated threads: second-hand.
TEST(Reductions, FromDryToOtherSurfacesAreOneEach) {
  EXPECT_THAT(factors("dry", "phosphate-oiled"), ElementsAre(0.70));
  EXPECT_THAT(factors("dry", "moly-paste"), ElementsAre(0.70));
  EXPECT_THAT(factors("dry", "anti-seize"), ElementsAre(0.70));
}

TEST(Reductions, HoldInOneDirection) { EXPECT_THAT(factors("oiled", "dry"), IsEmpty()); }

TEST(Reductions, AreNoneBetweenSurfacesThatNoRuleNames) {
  EXPECT_THAT(factors("zinc-dry", "zinc-oiled"), IsEmpty());
  EXPECT_THAT(factors("dry", "dry"), IsEmpty());
  EXPECT_THAT(factors("dry", "treacle"), IsEmpty());
}

TEST(Reductions, AreFoundInAnyCase) { EXPECT_EQ(factors("Dry", "ZINC DRY").size(), 2U); }

TEST(Reductions, SayRuleAndSource) {
  const auto found = reductions_between(Catalogue(), "dry", "oiled");
  ASSERT_EQ(found.size(), 5U);
  EXPECT_THAT(found.back().rule, HasSubstr("engine oil"));
  EXPECT_THAT(found.back().source.title, HasSubstr("TM 9-2320-362-14&P"));
  EXPECT_EQ(found.back().source.known, Known::second_hand);
  EXPECT_EQ(found[3].source.known, Known::computed);
}

TEST(Reductions, StayWithinAThirdAndDouble) {
  const Catalogue catalogue;
  for (const std::string& from : surfaces_names(catalogue))
    for (const std::string& to : surfaces_names(catalogue))
      for (const friction::Reduction& one : reductions_between(catalogue, from, to)) {
        EXPECT_GT(one.factor, 0.3) << from << ' ' << to;
        EXPECT_LT(one.factor, 2.0) << from << ' ' << to;
      }
}

} // namespace
} // namespace clampwright::specdb
