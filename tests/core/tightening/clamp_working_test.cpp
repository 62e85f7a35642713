// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/clamp_working.hpp"

#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace clampwright::tightening {
namespace {

using quantity::newton_metres;
using test::m10_case;

Working working(const Case& c, double torque_N_m = 45) { return clamp(c, newton_metres(torque_N_m))->working; }

std::map<std::string, double> values(const Working& steps) {
  std::map<std::string, double> out;
  for (const Step& step : steps)
    out[step.symbol] = step.value;
  return out;
}

} // namespace

// A person with a pocket calculator: F = (T - T_run)·1000/(l_t + l_h), σ_v from its parts, u_y over R.
TEST(Working, CanBeFollowedByHand) {
  const auto v = values(working(m10_case()));
  EXPECT_NEAR(v.at("F"), (v.at("T") - v.at("T_run")) * 1000.0 / (v.at("l_t") + v.at("l_h")), 1e-6);
  EXPECT_NEAR(v.at("σ"), v.at("F") / v.at("A0"), 1e-9);
  EXPECT_NEAR(v.at("τ"), v.at("F") * v.at("l_t") / v.at("W_P"), 1e-9);
  EXPECT_NEAR(v.at("σ_v"), std::sqrt(v.at("σ") * v.at("σ") + 3.0 * v.at("τ") * v.at("τ")), 1e-9);
  EXPECT_NEAR(v.at("u_y"), v.at("σ_v") / v.at("R"), 1e-12);
  EXPECT_NEAR(v.at("F_K"), (v.at("T") - v.at("T_run")) * 1000.0 / (v.at("K") * v.at("d")), 1e-6);
  EXPECT_NEAR(v.at("u_K"), v.at("F_K") / v.at("F_p"), 1e-12);
}

TEST(Working, CanBeFollowedByHandAtBothEnds) {
  const auto v = values(working(m10_case()));
  EXPECT_NEAR(v.at("T low"), v.at("T") * (1.0 - v.at("a")), 1e-9);
  EXPECT_NEAR(v.at("F low"), v.at("T low") * 1000.0 / (v.at("l_t low") + v.at("l_h low")), 1e-6);
  EXPECT_NEAR(v.at("F high"), v.at("T high") * 1000.0 / (v.at("l_t high") + v.at("l_h high")), 1e-6);
}

TEST(Working, TakesTheRunningTorqueIntoTorsion) {
  Case c = m10_case();
  c.running_torque = newton_metres(5);
  const auto v = values(working(c));
  EXPECT_NEAR(v.at("τ"), (v.at("F") * v.at("l_t") + 5000.0) / v.at("W_P"), 1e-9);
}

TEST(Working, EndsInTheShares) {
  const auto v = values(working(m10_case()));
  EXPECT_NEAR(v.at("s_l") + v.at("s_t") + v.at("s_h"), 1.0, 1e-12);
}

TEST(Working, GivesEverySymbolOnce) {
  std::set<std::string> symbols;
  for (const Step& step : working(m10_case()))
    EXPECT_TRUE(symbols.insert(step.symbol).second) << step.symbol;
}

TEST(Working, GivesMeaningFormulaAndSourceAtEveryStep) {
  for (const Step& step : working(m10_case())) {
    EXPECT_FALSE(step.meaning.empty()) << step.symbol;
    EXPECT_FALSE(step.formula.empty()) << step.symbol;
    EXPECT_FALSE(step.source.empty()) << step.symbol;
  }
}

TEST(Working, LeavesOutWhatIsNotKnown) {
  Case c = m10_case();
  c.face.reset();
  c.strength = strength::unknown_strength();
  const auto v = values(working(c));
  EXPECT_FALSE(v.contains("F"));
  EXPECT_FALSE(v.contains("u_K"));
  EXPECT_TRUE(v.contains("F_K"));
}

TEST(Working, OfWhatIsNoBoltHasNoShareOfStrength) {
  Case c = m10_case();
  c.kind = JointKind::hub;
  const auto v = values(working(c));
  EXPECT_FALSE(v.contains("u_y"));
  EXPECT_FALSE(v.contains("F_p"));
}

} // namespace clampwright::tightening
