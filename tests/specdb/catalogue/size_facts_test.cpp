// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/size_facts.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {
namespace {

using quantity::in_millimetres;
using testing::IsEmpty;

SizeFacts facts_of(std::string_view thread) {
  const Catalogue catalogue;
  return size_facts(catalogue, find_thread(catalogue, thread)->thread);
}

// The width that a fastener of a standard has; 0 for none.
double width_mm(const SizeFacts& facts, std::string_view fastener, std::string_view standard) {
  for (const ToolSize& tool : facts.tools)
    if (tool.fastener == fastener && tool.standard == standard) return in_millimetres(tool.width);
  return 0;
}

TEST(SizeFacts, HaveTheThreeHolesOfIso273) {
  // ISO 273:1979, M10 (second-hand).
  const auto holes = facts_of("M10x1.25").holes;
  EXPECT_DOUBLE_EQ(in_millimetres(holes.fine.value()), 10.5);
  EXPECT_DOUBLE_EQ(in_millimetres(holes.medium.value()), 11.0);
  EXPECT_DOUBLE_EQ(in_millimetres(holes.coarse.value()), 12.0);
}

TEST(SizeFacts, HaveTheThreeHolesOfAsmeB1828) {
  // ASME B18.2.8-1999, 1/2 in: 17/32, 9/16, 39/64 (second-hand).
  const auto holes = facts_of("1/2-13").holes;
  EXPECT_NEAR(in_millimetres(holes.fine.value()), 0.5312 * 25.4, 1e-9);
  EXPECT_NEAR(in_millimetres(holes.medium.value()), 0.5625 * 25.4, 1e-9);
  EXPECT_NEAR(in_millimetres(holes.coarse.value()), 0.6094 * 25.4, 1e-9);
}

// dimensions/README.md: "Across flats alone does not give the thread: M10 is 16 (ISO), 17 (DIN, JIS), 15 (DIN 6921), 14
// (JIS small) or 13 (small flange)".
TEST(SizeFacts, HaveFiveHexagonsForM10) {
  const auto m10 = facts_of("M10");
  EXPECT_DOUBLE_EQ(width_mm(m10, "hexagon", "ISO 4014"), 16);
  EXPECT_DOUBLE_EQ(width_mm(m10, "hexagon", "DIN 931"), 17);
  EXPECT_DOUBLE_EQ(width_mm(m10, "hexagon", "JIS B 1180 annex"), 17);
  EXPECT_DOUBLE_EQ(width_mm(m10, "hexagon flange", "DIN 6921"), 15);
  EXPECT_DOUBLE_EQ(width_mm(m10, "small hexagon", "JIS B 1180 annex"), 14);
  EXPECT_DOUBLE_EQ(width_mm(m10, "hexagon flange", "ISO 4162"), 13);
}

TEST(SizeFacts, CallASocketScrewOutsideIso4762ByDin912) {
  const auto m18 = facts_of("M18");
  EXPECT_DOUBLE_EQ(width_mm(m18, "socket", "DIN 912"), 14);
  EXPECT_DOUBLE_EQ(width_mm(m18, "socket", "ISO 4762"), 0);
}

TEST(SizeFacts, HaveNutsOfTheThreadsOwnPitchOnly) {
  std::vector<std::string> standards;
  for (const NutSize& nut : facts_of("M10x1.25").nuts)
    standards.push_back(nut.standard);
  EXPECT_THAT(standards, testing::UnorderedElementsAre("ISO 8673", "ISO 8675", "ISO 10512", "DIN 934"));
}

// BS 1083: BSW and BSF share one hexagon; the larger one, of spanners marked W, is that of the older BSW.
TEST(SizeFacts, HaveTheLargeHexagonForBswOnly) {
  EXPECT_NEAR(width_mm(facts_of("1/4 BSW"), "large hexagon", "BS 190"), 0.525 * 25.4, 1e-9);
  EXPECT_NEAR(width_mm(facts_of("1/4 BSW"), "hexagon", "BS 1083"), 0.445 * 25.4, 1e-9);
  EXPECT_NEAR(width_mm(facts_of("1/4 BSF"), "hexagon", "BS 1083"), 0.445 * 25.4, 1e-9);
  EXPECT_DOUBLE_EQ(width_mm(facts_of("1/4 BSF"), "large hexagon", "BS 190"), 0);
}

TEST(SizeFacts, NameTheMarkOfABritishSpanner) {
  const auto facts = facts_of("1/4 BSF");
  ASSERT_EQ(facts.tools.size(), 1U);
  EXPECT_EQ(facts.tools[0].marking, "3/16 W, 1/4 BS");
}

TEST(SizeFacts, AreNoneForASizeThatNoTableHas) {
  const auto facts = facts_of("1/4 BSC");
  EXPECT_FALSE(facts.holes.medium);
  EXPECT_THAT(facts.tools, IsEmpty());
  EXPECT_THAT(facts.sources, IsEmpty());
}

} // namespace
} // namespace clampwright::specdb
