// SPDX-License-Identifier: GPL-3.0-or-later
//
// A short list of threads whose limits stand here: 6g and 6H of M6, M8 and M8x1 by ISO 965-2 (second-hand), in
// millimetres; the others have none.
#include "core/thread/gauge.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace clampwright::thread {
namespace {

using quantity::in_millimetres;
using quantity::inches;
using quantity::Length;
using quantity::millimetres;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Optional;

Thread thread_of(const char* designation, Form form, Length diameter, Length pitch, const char* series) {
  Thread thread;
  thread.designation = designation;
  thread.form = form;
  thread.diameter = diameter;
  thread.pitch = pitch;
  thread.series = series;
  return thread;
}

Limits metric_limits(double d_max, double d_min, double d2_max, double d2_min, double D2_min, double D2_max,
                     double D1_min, double D1_max) {
  Limits out;
  out.external_class = "6g";
  out.internal_class = "6H";
  out.d_max = millimetres(d_max);
  out.d_min = millimetres(d_min);
  out.d2_max = millimetres(d2_max);
  out.d2_min = millimetres(d2_min);
  out.D2_min = millimetres(D2_min);
  out.D2_max = millimetres(D2_max);
  out.D1_min = millimetres(D1_min);
  out.D1_max = millimetres(D1_max);
  return out;
}

std::vector<KnownThread> short_list() {
  // clang-format off
  return {
      {thread_of("M6", Form::metric, millimetres(6), millimetres(1), "coarse"),
       metric_limits(5.974, 5.794, 5.324, 5.212, 5.350, 5.500, 4.917, 5.153), 1},
      {thread_of("0 BA", Form::ba, millimetres(6), millimetres(1), "BA"), std::nullopt, std::nullopt},
      {thread_of("M8", Form::metric, millimetres(8), millimetres(1.25), "coarse"),
       metric_limits(7.972, 7.760, 7.160, 7.042, 7.188, 7.348, 6.647, 6.912), 1},
      {thread_of("M8x1", Form::metric, millimetres(8), millimetres(1), "fine"),
       metric_limits(7.974, 7.794, 7.324, 7.212, 7.350, 7.500, 6.917, 7.153), 1},
      {thread_of("1/4-20 UNC", Form::unified, inches(0.25), inches(0.05), "UNC"), std::nullopt, std::nullopt},
      {thread_of("1/4 BSW", Form::whitworth, inches(0.25), inches(0.05), "BSW"), std::nullopt, std::nullopt},
      {thread_of("M48", Form::metric, millimetres(48), millimetres(5), "coarse"), std::nullopt, 1},
  };
  // clang-format on
}

std::vector<Candidate> gauged(double diameter_mm, std::optional<double> pitch_mm, bool internal = false) {
  Measurement measured{millimetres(diameter_mm), std::nullopt, internal};
  if (pitch_mm) measured.pitch = millimetres(*pitch_mm);
  return gauge(short_list(), measured).value();
}

std::vector<std::string> names(const std::vector<Candidate>& candidates) {
  std::vector<std::string> out;
  for (const Candidate& candidate : candidates)
    if (candidate.verdict != GaugeVerdict::unlikely) out.push_back(candidate.known.thread.designation);
  return out;
}

struct Row {
  double diameter_mm;
  double deviation_mm; // from 7.760 to 7.972
  GaugeVerdict verdict;
};

// M8 with its pitch: worn by up to a tenth of it, 0.125 mm, and read wrong by up to 0.05 mm.
// clang-format off
const std::vector<Row> k_m8{
    {7.850,  0.000, GaugeVerdict::fits},
    {7.760,  0.000, GaugeVerdict::fits},
    {7.972,  0.000, GaugeVerdict::fits},
    {7.759, -0.001, GaugeVerdict::worn_or_near},
    {7.585, -0.175, GaugeVerdict::worn_or_near}, // 7.760 - 0.125 - 0.050
    {7.584, -0.176, GaugeVerdict::unlikely},
    {8.000,  0.028, GaugeVerdict::worn_or_near},
    {8.050,  0.078, GaugeVerdict::worn_or_near}, // nominal and 0.05
    {8.051,  0.079, GaugeVerdict::unlikely},
};
// clang-format on

} // namespace

TEST(GaugedBolt, IsHeldAgainstItsLimitsWithWearAndDoubt) {
  for (const Row& row : k_m8) {
    const Candidate best = gauged(row.diameter_mm, 1.25).front();
    EXPECT_EQ(best.known.thread.designation, "M8") << row.diameter_mm;
    EXPECT_NEAR(in_millimetres(best.deviation), row.deviation_mm, 1e-9) << row.diameter_mm;
    EXPECT_EQ(best.verdict, row.verdict) << row.diameter_mm;
  }
}

// 6.647 to 6.912, worn by up to 0.125 mm above and read wrong by up to 0.05 mm either way.
TEST(GaugedNut, IsWornWhereItReadsLarge) {
  EXPECT_EQ(gauged(6.7, 1.25, true).front().verdict, GaugeVerdict::fits);
  EXPECT_EQ(gauged(7.087, 1.25, true).front().verdict, GaugeVerdict::worn_or_near);
  EXPECT_EQ(gauged(7.088, 1.25, true).front().verdict, GaugeVerdict::unlikely);
  EXPECT_EQ(gauged(6.597, 1.25, true).front().verdict, GaugeVerdict::worn_or_near);
  EXPECT_EQ(gauged(6.596, 1.25, true).front().verdict, GaugeVerdict::unlikely);
}

// The doubt of the pitch is 2 %: up to it the thread fits, up to twice as much it is near.
TEST(GaugedPitch, FitsWithinItsDoubt) {
  EXPECT_EQ(gauged(7.85, 1.275).front().verdict, GaugeVerdict::fits);
  EXPECT_EQ(gauged(7.85, 1.225).front().verdict, GaugeVerdict::fits);
  EXPECT_EQ(gauged(7.85, 1.299).front().verdict, GaugeVerdict::worn_or_near);
  EXPECT_EQ(gauged(7.85, 1.31).front().verdict, GaugeVerdict::unlikely);
  EXPECT_THAT(gauged(7.85, 1.275).front().pitch_off, Optional(testing::DoubleNear(0.02, 1e-12)));
}

TEST(Equals, StandMetricFirst) { EXPECT_THAT(names(gauged(5.9, 1.0)), ElementsAre("M6", "0 BA")); }

TEST(Equals, StandTheCommonerFirst) {
  EXPECT_THAT(names(gauged(7.85, std::nullopt)), ElementsAre("M8", "M8x1"));
  EXPECT_THAT(names(gauged(6.3, 1.27)), ElementsAre("1/4-20 UNC", "1/4 BSW"));
}

TEST(Gauge, NamesThreeOfWhatIsUnlikely) {
  const auto candidates = gauged(7.0, 2.0);
  EXPECT_EQ(candidates.size(), 3U);
  EXPECT_TRUE(names(candidates).empty());
}

TEST(Gauge, RefusesWhatLiesOutsideOfTheList) {
  const auto answer = gauge(short_list(), {millimetres(60), std::nullopt});
  ASSERT_FALSE(answer);
  EXPECT_EQ(answer.error().trouble, Trouble::no_such);
  EXPECT_THAT(answer.error().hint, HasSubstr("48 mm"));
}

// ISO 965-1, grade 6 at a pitch of 1 mm, by formula: 180 - 3.15 + 15 + 11 = 202.85 µm for a bolt, 230 µm for a nut; the
// minor diameter of 0 BA is 6 - 1.2 mm.
TEST(CrestRange, OfABritishThreadIsAsWideAsThatOfAnIsoThread) {
  const CrestRange bolt = crest_range(short_list()[1], false);
  EXPECT_NEAR(in_millimetres(bolt.low), 5.79715, 1e-9);
  EXPECT_NEAR(in_millimetres(bolt.high), 6.0, 1e-9);
  EXPECT_EQ(bolt.by_class, "");
  const CrestRange nut = crest_range(short_list()[1], true);
  EXPECT_NEAR(in_millimetres(nut.low), 4.8, 1e-9);
  EXPECT_NEAR(in_millimetres(nut.high), 5.03, 1e-9);
}

TEST(LookAlike, IsToldByThePitchOverTenTurns) {
  const auto candidates = gauged(7.85, std::nullopt);
  ASSERT_EQ(candidates.front().look_alikes.size(), 1U);
  const LookAlike& other = candidates.front().look_alikes.front();
  EXPECT_TRUE(other.by_measurement);
  ASSERT_TRUE(other.tell.turns);
  EXPECT_EQ(other.tell.turns->count, 10);
  EXPECT_NEAR(in_millimetres(other.tell.turns->own), 12.5, 1e-9);
  EXPECT_NEAR(in_millimetres(other.tell.turns->others), 10.0, 1e-9);
  EXPECT_FALSE(other.tell.flanks);
}

// M8x1 nut, D2 at most 7.500 mm, on an M8 bolt, d2 at least 7.042 mm: 0.458 mm·tan 30° = 0.264 mm of play along the
// axis, used up by 0.25 mm a turn in 1.06 turns.
TEST(LookAlike, HasANutThatBinds) {
  const LookAlike fine_on_coarse = gauged(7.85, std::nullopt).front().look_alikes.front();
  ASSERT_TRUE(fine_on_coarse.tell.nut);
  EXPECT_TRUE(fine_on_coarse.tell.nut->starts);
  EXPECT_EQ(fine_on_coarse.tell.nut->turns, 2);
}

TEST(LookAlike, OfOnePitchIsToldByTheFlanks) {
  const LookAlike other = gauged(5.9, 1.0).front().look_alikes.front();
  EXPECT_EQ(other.other.thread.designation, "0 BA");
  EXPECT_TRUE(other.tell.flanks);
  EXPECT_FALSE(other.tell.turns);
  EXPECT_FALSE(other.tell.nut);
}

TEST(AllowedWear, IsATenthOfThePitch) {
  EXPECT_NEAR(in_millimetres(allowed_wear(short_list()[2].thread)), 0.125, 1e-12);
}

} // namespace clampwright::thread
