// SPDX-License-Identifier: GPL-3.0-or-later
//
// Blake and Kurtz, tests of 1965, as printed in Shigley, 9th ed., Tables 8-13 and 8-14: preload in kN of bolts 1/2-20
// UNF tightened to 90 N·m. The 20 unlubricated ones are from memory (their mean and deviation are the book's), the 10
// lubricated ones were seen. Measured against our bands of not-stated and oiled surfaces.
//
// By hand, d = 12.7 mm, wrench 4 %: K band of not-stated 86.4/(0.30·0.0127) = 22.68 kN to 93.6/(0.12·0.0127) = 61.42
// kN; of oiled 86.4/(0.22·0.0127) = 30.92 kN to 61.42 kN. Friction band: levers at μ 0.08, 0.16, 0.24 on d2 = 11.8751
// mm and D_m = (0.675 + 0.5625)/2 in = 15.716 mm are 1.38163, 2.56462 and 3.75114 mm, so not-stated is 23.03 to 67.75
// kN, oiled 33.69 to 67.75 kN. With an exact torque (no wrench scatter) the low ends are 23.62 and 32.21 kN by K, 23.99
// and 35.09 kN by friction.
#include "core/tightening/clamp.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <span>

namespace clampwright {
namespace {

using quantity::newton_metres;
using quantity::newtons;
using tightening::ClampAnswer;
using tightening::WrenchAccuracy;

// clang-format off
constexpr double k_unlubricated_from_memory_kN[] = {
    23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8,
    34.7, 35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0, 40.5, 42.7};
constexpr double k_lubricated_kN[] = {30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5};
// clang-format on

ClampAnswer answer(const char* surfaces, std::optional<WrenchAccuracy> accuracy = std::nullopt) {
  specdb::CaseQuestion question;
  question.thread = "1/2-20 UNF";
  question.surfaces = surfaces;
  return tightening::clamp(test::resolved(question).asked, newton_metres(90), std::move(accuracy)).value();
}

const WrenchAccuracy k_exact{0.0, "the torque was measured"};

std::ptrdiff_t inside(std::span<const double> preloads_kN, const quantity::Band<quantity::Force>& band) {
  return std::ranges::count_if(preloads_kN, [&](double kN) { return quantity::contains(band, newtons(kN * 1000.0)); });
}

std::ptrdiff_t by_k(std::span<const double> preloads, const ClampAnswer& a) {
  return inside(preloads, a.nut_factor->preload);
}
std::ptrdiff_t by_friction(std::span<const double> preloads, const ClampAnswer& a) {
  return inside(preloads, a.thread_friction->preload);
}

} // namespace

TEST(MeasuredUnlubricatedFromMemory, LieAllInTheBandOfNotStated) {
  EXPECT_EQ(by_k(k_unlubricated_from_memory_kN, answer("not-stated")), 20);
  EXPECT_EQ(by_friction(k_unlubricated_from_memory_kN, answer("not-stated")), 20);
}

// At an exact torque one of 20 lies outside by both models: 23.6 kN, K 0.3003 (the band ends at 0.30) and a friction of
// 0.243 (the band ends at 0.24): the worst bolt of a dry batch lies just at the edge of what we reckon with.
TEST(MeasuredUnlubricatedFromMemory, LieAllButOneInTheBandOfAnExactTorque) {
  EXPECT_EQ(by_k(k_unlubricated_from_memory_kN, answer("not-stated", k_exact)), 19);
  EXPECT_EQ(by_friction(k_unlubricated_from_memory_kN, answer("not-stated", k_exact)), 19);
}

// Outside: 30.3 kN, K 0.2339, where our band of oiled ends at 0.22.
TEST(MeasuredLubricated, LieAllButOneInTheBandOfOiledByNutFactor) {
  EXPECT_EQ(by_k(k_lubricated_kN, answer("oiled")), 9);
  EXPECT_EQ(by_k(k_lubricated_kN, answer("oiled", k_exact)), 9);
}

// Outside: the five of 30.3 to 32.9 kN, whose friction works out at 0.17 to 0.19. "Oiled" is friction class B, 0.08 to
// 0.16; the lubricant of these tests is not named and was the poorer one, and the face under the head (0.675 in) rests
// on a rule from memory. The nut factor band takes these tests in because the textbook's K was drawn from them. At an
// exact torque only 37.4 and 40.5 kN lie inside.
TEST(MeasuredLubricated, LieHalfInTheBandOfOiledByThreadFriction) {
  EXPECT_EQ(by_friction(k_lubricated_kN, answer("oiled")), 5);
  EXPECT_EQ(by_friction(k_lubricated_kN, answer("oiled", k_exact)), 2);
}

TEST(MeasuredLubricated, NeverExceedTheHighEndOfOiled) {
  const auto a = answer("oiled", k_exact);
  const auto highest = newtons(1000.0 * std::ranges::max(k_lubricated_kN));
  EXPECT_LT(highest, a.nut_factor->preload.high);
  EXPECT_LT(highest, a.thread_friction->preload.high);
}

// The limits worked out by hand above.
TEST(BandOfHalfInchBolts, IsThatOfTheHandCalculation) {
  const auto kN = [](quantity::Force force) { return quantity::in_newtons(force) / 1000.0; };
  EXPECT_NEAR(kN(answer("not-stated").nut_factor->preload.low), 22.68, 0.005);
  EXPECT_NEAR(kN(answer("not-stated").thread_friction->preload.low), 23.03, 0.005);
  EXPECT_NEAR(kN(answer("oiled").nut_factor->preload.low), 30.92, 0.005);
  EXPECT_NEAR(kN(answer("oiled").thread_friction->preload.low), 33.69, 0.005);
  EXPECT_NEAR(kN(answer("oiled").nut_factor->preload.high), 61.42, 0.005);
  EXPECT_NEAR(kN(answer("oiled").thread_friction->preload.high), 67.75, 0.005);
}

} // namespace clampwright
