// SPDX-License-Identifier: GPL-3.0-or-later
//
// The printed working of a joint: clamp load, then what is around it, then the stop on the piston. One document, so no
// symbol may be taken before its value or stand for two things.
#include <map>

#include <gtest/gtest.h>

#include "specdb/question/joint_report.hpp"
#include "specdb/workshop/joints.hpp"
#include "tests/core/working_order.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

Working working_of(const JointRecord& joint) {
  const auto answer = answer_for(Catalogue(), joint);
  if (!answer) throw std::runtime_error(answer.error().message);
  return joint_report(*answer, quantity::DisplayUnits(), true).working;
}

JointRecord joint(std::string_view slug) {
  const test::DemoFile demo;
  return joint_of_slug(demo.open(), slug).value();
}

std::map<std::string, double> values(const Working& steps) {
  std::map<std::string, double> out;
  for (const Step& step : steps)
    out[step.symbol] = step.value;
  return out;
}

TEST(JointWorking, CanBeFollowedForEveryJointOfTheDemo) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const std::string& slug : joint_slugs(workshop)) {
    const Working working = working_of(joint_of_slug(workshop, slug).value());
    EXPECT_EQ(test::used_too_early(working), "") << slug;
    EXPECT_EQ(test::given_twice(working), "") << slug;
  }
}

TEST(JointWorking, CanBeFollowedForABoltOfACrankInAWeakPart) {
  JointRecord asked = joint("pump/flywheel-nut");
  asked.mating_part = "crankcase";
  asked.mating_material = "cast-aluminium";
  asked.engagement = "7 mm";
  asked.seat_material = "cast-aluminium";
  const Working working = working_of(asked);
  EXPECT_EQ(test::used_too_early(working), "");
  EXPECT_EQ(test::given_twice(working), "");
  const auto v = values(working);
  EXPECT_TRUE(v.contains("F_m") && v.contains("F_s")); // strips the thread; presses on the stop
}

TEST(JointWorking, CanBeFollowedWithoutAFigure) {
  JointRecord asked = joint("pump/reed-block");
  asked.figure.value.reset();
  asked.figure.unit.reset();
  EXPECT_EQ(test::used_too_early(working_of(asked)), "");
}

// ISO 965 limits of M6, 6g and 6H (computed): d_min 5.794, D2_max 5.500 mm. By hand:
//   A_s1 = π/1 · 5.794 · (0.5 + 0.5773503 · (5.794 - 5.500)) = 18.20239 · 0.6697410 = 12.19089 mm²/mm
//   C3   = 1.055184, its last value: the bolt's thread is much the stronger (VDI 2230-1, step R11, from memory)
//   F_m  = 1.055184 · 12.19089 · 6.5 mm · 130 MPa = 10 869.8 N, below the proof load of 11 600 N (ISO 898-1)
TEST(JointWorking, OfTheReedBlockComesToItsStripLoad) {
  const auto v = values(working_of(joint("pump/reed-block")));
  EXPECT_NEAR(v.at("d_min"), 5.794, 1e-9);
  EXPECT_NEAR(v.at("D2_max"), 5.5, 1e-9);
  EXPECT_NEAR(v.at("A_s1"), 12.19089, 1e-4);
  EXPECT_NEAR(v.at("m_e"), 6.5, 1e-9);
  EXPECT_NEAR(v.at("τ_B"), 130, 1e-9);
  EXPECT_NEAR(v.at("C3"), 1.055184, 1e-6);
  EXPECT_NEAR(v.at("F_m"), 10869.8, 0.5);
  EXPECT_NEAR(v.at("F_p"), 11600, 1e-6);
}

// M8 with a socket head of 12.33 mm over a 9 mm hole, dry, μ 0.19, 31 N·m. By hand: d2 7.188101 mm, φ 3.168295°,
// ρ′ 12.374247°, l_t 0.9995928 and l_h 0.19 · 10.665/2 = 1.013175 mm; F = 31000/2.0127678 = 15 401.7 N; the ring is
// π/4 · (152.0289 - 81) = 55.78597 mm²; 276.09 MPa on a seat that bears 220.
TEST(JointWorking, OfTheVoluteComesToThePressureOnItsSeat) {
  const auto v = values(working_of(joint("pump/volute")));
  EXPECT_NEAR(v.at("F"), 15401.7, 0.1);
  EXPECT_NEAR(v.at("F_K"), 19375.0, 0.1); // 31 N.m / (0.20 x 8 mm), the graver of the two models
  EXPECT_NEAR(v.at("D_o"), 12.33, 1e-9);
  EXPECT_NEAR(v.at("D_i"), 9.0, 1e-9);
  EXPECT_NEAR(v.at("p_B"), 347.310, 0.005); // 19375 N on pi/4 (12.33^2 - 9^2) = 55.7860 mm2
  EXPECT_NEAR(v.at("p_G"), 220, 1e-9);
}

} // namespace
} // namespace clampwright::specdb
