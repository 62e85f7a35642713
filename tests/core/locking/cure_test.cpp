// SPDX-License-Identifier: GPL-3.0-or-later
//
// The lines of the tests are those of TM 5-3820-256-24-5, introduction (second-hand): full strength in 72 h down to
// 10 °C, primer advised from 10 to -18 °C, below that heat alone; 65 °C 60 min, 93 °C 45 min, 120 °C 30 min; set in 6
// to 24 h on machined carbon steel.
#include "core/locking/cure.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::locking {
namespace {

using finding::Code;
using quantity::degrees_celsius;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::vector<CureTime> published() {
  const auto c = [](double value) { return std::optional(degrees_celsius(value)); };
  return {{CureStep::setting, true, c(10), {}, 360, 1440, "setting", {}},
          {CureStep::full_strength, true, c(10), {}, {}, 4320, "full", {}},
          {CureStep::primer, false, c(-18), c(10), {}, {}, "primer", {}},
          {CureStep::heat_only, false, {}, c(-18), {}, {}, "heat only", {}},
          {CureStep::heat_cure, false, c(65), {}, 60, {}, "65", {}},
          {CureStep::heat_cure, false, c(93), {}, 45, {}, "93", {}},
          {CureStep::heat_cure, false, c(120), {}, 30, {}, "120", {}}};
}

CureCase on(std::vector<Activity> activities, double celsius) {
  CureCase asked;
  asked.compound.description = "locking compound";
  asked.compound.family = friction::LockFamily::compound;
  asked.compound.heat_limit = degrees_celsius(149);
  for (const Activity activity : activities)
    asked.surfaces.push_back({"a", "a surface", activity, "because", {}});
  asked.temperature = degrees_celsius(celsius);
  return asked;
}

CureAnswer at(double celsius, Activity activity = Activity::active) {
  return cure(on({activity}, celsius), published());
}

std::vector<Code> codes(const CureAnswer& answer) {
  std::vector<Code> out;
  for (const finding::Finding& one : answer.findings)
    out.push_back(one.code);
  return out;
}

// TM 10-3930-643-20, para 2-12 (second-hand): 149 °C; above it the compound lets go, and no cure so hot is published.
TEST(Cure, HasNoTimeHotterThanTheCompoundBears) {
  EXPECT_EQ(at(149.0).full_min, 30.0);
  const CureAnswer hot = at(150.0);
  EXPECT_EQ(hot.full_min, std::nullopt);
  EXPECT_NE(hot.not_known_because, "");
  EXPECT_TRUE(finding::has_stop(hot.findings));
}

TEST(Cure, TakesThreeDaysOnSteelFromTenDegreesUp) {
  for (const double celsius : {10.0, 20.0, 64.9}) {
    const CureAnswer answer = at(celsius);
    EXPECT_EQ(answer.course, Course::cures) << celsius;
    EXPECT_EQ(answer.full_min, 72 * 60.0) << celsius;
    EXPECT_EQ(answer.set_least_min, 6 * 60.0) << celsius;
    EXPECT_EQ(answer.set_most_min, 24 * 60.0) << celsius;
    EXPECT_THAT(answer.findings, IsEmpty()) << celsius;
  }
}

TEST(Cure, WantsAPrimerBelowTenDegreesAndHasNoTime) {
  for (const double celsius : {9.99, 0.0, -18.0}) {
    const CureAnswer answer = at(celsius);
    EXPECT_EQ(answer.course, Course::wants_primer) << celsius;
    EXPECT_FALSE(answer.full_min) << celsius;
    EXPECT_FALSE(answer.set_most_min) << celsius;
    EXPECT_THAT(codes(answer), ElementsAre(Code::primer_needed, Code::cure_not_known)) << celsius;
  }
}

TEST(Cure, IsByHeatAloneBelowMinusEighteen) {
  const CureAnswer answer = at(-18.5);
  EXPECT_EQ(answer.course, Course::wants_heat);
  EXPECT_FALSE(answer.full_min);
  EXPECT_THAT(codes(answer), ElementsAre(Code::cure_by_heat_only, Code::cure_not_known));
}

// A part between two steps takes the time of the cooler one: nothing is drawn between them.
TEST(Cure, ByHeatGoesByTheStepReached) {
  // clang-format off
  const std::vector<std::pair<double, double>> rows{{65, 60}, {80, 60}, {93, 45}, {100, 45}, {120, 30}, {149, 30}};
  // clang-format on
  for (const auto& [celsius, minutes] : rows) {
    EXPECT_EQ(at(celsius).course, Course::heat_cures) << celsius;
    EXPECT_EQ(at(celsius).full_min, minutes) << celsius;
    EXPECT_FALSE(at(celsius).set_most_min) << celsius;
    EXPECT_THAT(at(celsius).findings, IsEmpty()) << celsius;
  }
}

TEST(Cure, SaysWhereThePartIsHotterThanTheCompoundBears) {
  EXPECT_THAT(codes(at(150)), Contains(Code::heat_limit));
  EXPECT_EQ(at(150).course, Course::too_hot);
  EXPECT_FALSE(at(150).full_min);
  EXPECT_THAT(codes(at(149)), Not(Contains(Code::heat_limit)));
}

TEST(Cure, HasNoTimeForSurfacesThatAreNotActive) {
  for (const double celsius : {20.0, 93.0})
    for (const Activity activity : {Activity::inactive, Activity::not_known}) {
      const CureAnswer answer = at(celsius, activity);
      EXPECT_FALSE(answer.full_min) << celsius;
      EXPECT_FALSE(answer.set_least_min) << celsius;
      EXPECT_THAT(answer.not_known_because, HasSubstr("sheet")) << celsius;
      EXPECT_THAT(codes(answer), Contains(Code::cure_not_known)) << celsius;
    }
  EXPECT_THAT(codes(at(20, Activity::inactive)), Contains(Code::primer_needed));
  EXPECT_THAT(codes(at(20, Activity::not_known)), Not(Contains(Code::primer_needed)));
}

TEST(Cure, GoesByTheWorseOfTwoSurfaces) {
  EXPECT_EQ(cure(on({Activity::active, Activity::inactive}, 20), published()).activity, Activity::inactive);
  EXPECT_EQ(cure(on({Activity::inactive, Activity::not_known}, 20), published()).activity, Activity::not_known);
  EXPECT_EQ(cure(on({Activity::never, Activity::active}, 20), published()).course, Course::not_here);
}

TEST(Cure, IsNothingForASurfaceThatMustNotHaveIt) {
  const CureAnswer answer = at(20, Activity::never);
  EXPECT_FALSE(answer.full_min);
  EXPECT_THAT(codes(answer), ElementsAre(Code::no_compound_here));
}

TEST(Cure, SaysWhenItIsReady) {
  CureCase asked = on({Activity::active}, 20);
  asked.fitted_at = calendar::read_moment("2026-11-26 09:30").value();
  const CureAnswer answer = cure(asked, published());
  EXPECT_EQ(calendar::write_moment(answer.full_at.value()), "2026-11-29 09:30");
  EXPECT_EQ(calendar::write_moment(answer.set_from.value()), "2026-11-26 15:30");
  EXPECT_EQ(calendar::write_moment(answer.set_by.value()), "2026-11-27 09:30");
  asked.temperature = degrees_celsius(0);
  EXPECT_FALSE(cure(asked, published()).full_at);
}

} // namespace
} // namespace clampwright::locking
