// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/adaptor.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace clampwright::tightening {
namespace {

using quantity::degrees;
using quantity::in_newton_metres;
using quantity::millimetres;
using quantity::newton_metres;

Levers levers(double arm, double adaptor, double angle) {
  return {millimetres(arm), Adaptor{millimetres(adaptor), degrees(angle)}};
}

double setting(double arm, double adaptor, double angle) {
  return in_newton_metres(setting_for(newton_metres(100), levers(arm, adaptor, angle)));
}

struct Row {
  double angle;
  double setting;
};

// 100 N·m, arm 400 mm, adaptor 100 mm: 40000/(400 + 100·cos a), with cos 60° = 1/2.
// clang-format off
constexpr Row k_angles[] = {
    {  0,  80.0},
    { 60,  88.888888888888889},
    { 90, 100.0},
    {120, 114.285714285714286},
    {180, 133.333333333333333},
};
// clang-format on

TEST(Adaptor, ChangesTheSettingByTheLineOfItsAngle) {
  for (const Row& row : k_angles)
    EXPECT_NEAR(setting(400, 100, row.angle), row.setting, 1e-10) << row.angle;
}

TEST(Adaptor, MakesNoDifferenceToWhichSideItPoints) {
  for (const Row& row : k_angles)
    EXPECT_DOUBLE_EQ(setting(400, 100, -row.angle), setting(400, 100, row.angle)) << row.angle;
}

TEST(Adaptor, SquareToTheWrenchChangesNothingAtAll) { EXPECT_EQ(setting(300, 50, 90), 100.0); }

TEST(Adaptor, LeftAwayChangesNothing) {
  const Levers bare{millimetres(300), {}};
  EXPECT_EQ(setting_for(newton_metres(25), bare), newton_metres(25));
  EXPECT_EQ(applied_by(newton_metres(25), bare), newton_metres(25));
  EXPECT_TRUE(check_levers(bare).has_value());
}

struct Checked {
  double arm;
  double adaptor;
  double angle;
  const char* field; // that is refused; empty where nothing is
};

// clang-format off
constexpr Checked k_checked[] = {
    {300,  50,  180.0, ""},
    {300,  50, -180.0, ""},
    {300,  50,  180.1, "--adaptor-angle"},
    {300,  50, -181.0, "--adaptor-angle"},
    {300,  50,  360.0, "--adaptor-angle"},
    {300, 269,  180.0, ""},          // 31 mm are left
    {300, 271,  180.0, "--adaptor"},
    {300, 300,  180.0, "--adaptor"}, // under the hand
    {300, 400,  180.0, "--adaptor"},
    {300, 500,  120.0, ""},          // 300 - 250
    {300, 590,  120.0, "--adaptor"}, // 5 mm left
    {300, 601,  120.0, "--adaptor"}, // 300 - 300.5
    {300, 900,    0.0, ""},
};
// clang-format on

TEST(Levers, AreRefusedPastHalfATurnAndBehindTheHand) {
  for (const Checked& row : k_checked) {
    const auto checked = check_levers(levers(row.arm, row.adaptor, row.angle));
    EXPECT_EQ(checked.has_value(), *row.field == '\0') << row.adaptor << " at " << row.angle;
    if (!checked) {
      EXPECT_EQ(checked.error().field, row.field) << row.adaptor << " at " << row.angle;
      EXPECT_EQ(checked.error().trouble, Trouble::not_understood);
    }
  }
}

} // namespace
} // namespace clampwright::tightening
