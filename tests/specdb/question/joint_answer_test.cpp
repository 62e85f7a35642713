// SPDX-License-Identifier: GPL-3.0-or-later
//
// The answer for a joint of the demo workshop. Which findings each has is in demo_findings_test.cpp.
#include "specdb/question/joint_answer.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/workshop/joints.hpp"
#include "tests/core/problem_of.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::ElementsAre;
using testing::UnorderedElementsAreArray;

JointRecord joint(const char* slug) {
  const test::DemoFile demo;
  auto found = joint_of_slug(demo.open(), slug);
  if (!found) throw std::runtime_error(slug);
  return std::move(*found);
}

JointAnswer answer(const char* slug) {
  auto found = answer_for(Catalogue(), joint(slug));
  if (!found) throw std::runtime_error(found.error().message);
  return std::move(*found);
}

std::vector<std::string> codes(const JointAnswer& answer) {
  std::vector<std::string> out;
  for (const auto& finding : answer.findings)
    out.emplace_back(finding::code_name(finding.code));
  return out;
}

struct TorqueRow {
  const char* slug;
  double newton_metres;
};

// clang-format off
// As printed; 3.4 kgf.m = 3.4 x 9.80665 = 33.34261 N.m (standard gravity, exact), 30 lbf.ft = 30 x 0.45359237 x 9.80665
// x 0.3048 = 40.67453845 N.m (pound and foot, exact).
constexpr TorqueRow k_torques[] = {
    {"pump/clutch-hub",   42.0},
    {"pump/head-nuts",    17.0},
    {"pump/mounts",       33.34261},
    {"winch/pulley-bolt", 46.0},
    {"winch/frame-bolts", 40.67453845},
};
// clang-format on

TEST(JointAnswer, HasTheTorqueAsPrinted) {
  for (const TorqueRow& row : k_torques) {
    const auto found = answer(row.slug);
    ASSERT_TRUE(found.figure.torque.has_value()) << row.slug;
    EXPECT_NEAR(quantity::in_newton_metres(*found.figure.torque), row.newton_metres, 5e-9) << row.slug;
  }
}

TEST(JointAnswer, ClampsAtThePrintedTorque) {
  for (const TorqueRow& row : k_torques) {
    const auto found = answer(row.slug);
    ASSERT_TRUE(found.figure.clamp.has_value()) << row.slug;
    EXPECT_NEAR(quantity::in_newton_metres(found.figure.clamp->torque), row.newton_metres, 5e-9) << row.slug;
  }
}

TEST(JointAnswer, KeepsThePrintedWords) { EXPECT_EQ(answer("pump/mounts").joint.figure.printed, "3,4 mkg"); }

TEST(JointAnswer, HasNothingComputedInPlaceOfAMakersFigure) {
  const auto found = answer("winch/brake-pivot");
  EXPECT_FALSE(found.figure.torque.has_value());
  EXPECT_FALSE(found.figure.low.has_value());
  EXPECT_FALSE(found.figure.high.has_value());
  EXPECT_FALSE(found.figure.clamp.has_value());
}

TEST(JointAnswer, SaysWhatThePageSaysInsteadOfAFigure) {
  const auto found = answer("winch/brake-pivot");
  const auto none = std::ranges::find(found.findings, finding::Code::no_maker_value, &finding::Finding::code);
  ASSERT_NE(none, found.findings.end());
  EXPECT_THAT(none->facts, ElementsAre(finding::Fact("tighten firmly")));
}

TEST(JointAnswer, TurnsTheLeftHandHubAgainstTheClock) {
  const auto found = answer("pump/clutch-hub");
  EXPECT_EQ(found.tighten, thread::Turn::anticlockwise);
  EXPECT_EQ(found.undo, thread::Turn::clockwise);
}

// Slider-crank statics by hand, r = 22 mm (half of stroke 44), l = 88 mm, 15 degrees before top dead centre, 42 N.m:
//   sin t = 0.2588190, cos t = 0.9659258
//   sin p = 22/88 x 0.2588190 = 0.0647048, cos p = sqrt(1 - 0.0041867) = 0.9979045, tan p = 0.0648406
//   lever = r (sin t + cos t tan p) = 22 mm x (0.2588190 + 0.0626312) = 22 mm x 0.3214503 = 7.0719 mm
//   force = 42 N.m / 7.0719 mm = 5939.0 N
TEST(JointAnswer, NamesTheForceOnAPistonStop) {
  JointRecord hub = joint("pump/clutch-hub");
  hub.machine.stop_length_mm.reset(); // else the stop on record takes the place of the example
  const auto found = answer_for(Catalogue(), hub).value();
  const auto reaction = std::ranges::find(found.findings, finding::Code::crank_reaction, &finding::Finding::code);
  ASSERT_NE(reaction, found.findings.end());
  ASSERT_EQ(reaction->facts.size(), 2U);
  EXPECT_NEAR(quantity::in_degrees(std::get<quantity::Angle>(reaction->facts[0])), 15.0, 1e-9);
  EXPECT_NEAR(quantity::in_newtons(std::get<quantity::Force>(reaction->facts[1])), 5939.0, 0.1);
}

TEST(JointAnswer, NamesNoForceWhereTheCrankIsNotKnown) {
  const auto found = answer("winch/pulley-bolt");
  const auto reaction = std::ranges::find(found.findings, finding::Code::crank_reaction, &finding::Finding::code);
  ASSERT_NE(reaction, found.findings.end());
  EXPECT_TRUE(reaction->facts.empty());
}

TEST(JointAnswer, DescribesSurfacesAndLockInWords) {
  const auto found = answer("pump/head-nuts");
  EXPECT_EQ(found.figure.surfaces_description, "steel with engine or machine oil on thread and face");
  EXPECT_TRUE(found.locks.empty());
  ASSERT_EQ(answer("winch/drum-nut").locks.size(), 1U);
  EXPECT_EQ(answer("winch/drum-nut").locks.front().description, "washer with tabs bent against the flats");
}

// ISO 4032 nut and ISO 273 medium hole for M8: 11.63 and 9 mm (seen second-hand), mean 10.315 mm.
TEST(JointAnswer, TakesTheFaceOfTheNutThatIsTurned) {
  const auto found = answer("pump/head-nuts");
  ASSERT_TRUE(found.figure.clamp && found.figure.clamp->asked.face);
  EXPECT_EQ(found.figure.clamp->asked.face->basis, "ISO 4032 nut face, grade A, ISO 273 medium hole");
  EXPECT_NEAR(quantity::in_millimetres(found.figure.clamp->asked.face->mean_diameter()), 10.315, 1e-9);
}

TEST(JointAnswer, TakesTheFaceOfTheHubAsMeasured) {
  const auto found = answer("pump/clutch-hub");
  ASSERT_TRUE(found.figure.clamp && found.figure.clamp->asked.face);
  EXPECT_NEAR(quantity::in_millimetres(found.figure.clamp->asked.face->mean_diameter()), 22.5, 1e-9); // (30 + 15)/2
}

TEST(JointAnswer, TakesTheTolerancesOfTheFigure) {
  JointRecord asked = joint("pump/mounts");
  asked.figure.low = 3.2;
  asked.figure.high = 3.6;
  const auto found = answer_for(Catalogue(), asked);
  ASSERT_TRUE(found && found->figure.low && found->figure.high);
  EXPECT_NEAR(quantity::in_newton_metres(*found->figure.low), 31.38128, 1e-9);  // 3.2 x 9.80665
  EXPECT_NEAR(quantity::in_newton_metres(*found->figure.high), 35.30394, 1e-9); // 3.6 x 9.80665
}

TEST(JointAnswer, SaysLeftHandEvenWithoutAFigure) {
  JointRecord asked = joint("winch/brake-pivot");
  asked.thread = "M8-LH";
  const auto found = answer_for(Catalogue(), asked);
  ASSERT_TRUE(found.has_value());
  EXPECT_THAT(codes(*found), UnorderedElementsAreArray({"left-hand", "no-maker-value", "maker-first"}));
}

struct RefusedRow {
  const char* what;
  void (*spoil)(JointRecord&);
};

constexpr RefusedRow k_refused[] = {
    {"thread", [](JointRecord& spoilt) { spoilt.thread = "M10x1.3"; }},
    {"class", [](JointRecord& spoilt) { spoilt.strength_class = "8.9"; }},
    {"surfaces", [](JointRecord& spoilt) { spoilt.figure.surfaces = "honey"; }},
    {"lock",
     [](JointRecord& spoilt) {
       spoilt.locks = {{"glue", {}}};
     }},
    {"nut class", [](JointRecord& spoilt) { spoilt.nut_class = "7½"; }},
    {"seat", [](JointRecord& spoilt) { spoilt.seat_material = "cheese"; }},
    {"part", [](JointRecord& spoilt) { spoilt.mating_material = "cheese"; }},
    {"soft part", [](JointRecord& spoilt) { spoilt.soft_material = "cheese"; }},
    {"kind", [](JointRecord& spoilt) { spoilt.kind = "rivet"; }},
};

TEST(JointAnswer, IsRefusedWhereAWordIsNotInTheTables) {
  const JointRecord good = joint("pump/mounts");
  for (const RefusedRow& row : k_refused) {
    JointRecord spoilt = good;
    row.spoil(spoilt);
    EXPECT_NE(problem_of(answer_for(Catalogue(), spoilt)).code, "answered") << row.what;
  }
}

} // namespace
} // namespace clampwright::specdb
