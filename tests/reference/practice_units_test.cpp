// SPDX-License-Identifier: GPL-3.0-or-later
//
// Rows of the reference collection's practice/examples.csv on units and nut factors; the row's name stands in each
// line.
#include "core/quantity/read.hpp"
#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"
#include "tests/core/ulps.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace clampwright::quantity {
namespace {

struct Row {
  const char* row;
  const char* text;
  double N_m;
};

// Exact by the definitions of standard gravity (CGPM 1901), pound and inch (1959), as used in NIST SP 811, appendix B:
// computed in decimals; definitions from memory, the table of SP 811 not read. Each trade spelling means the same.
// clang-format off
constexpr Row k_exact[] = {
    {"UNIT-01", "1 kgf.m",     9.80665},
    {"UNIT-01", "1 mkg",       9.80665},
    {"UNIT-01", "1 mkp",       9.80665},
    {"UNIT-01", "1 kgm",       9.80665},
    {"UNIT-01", "1 kpm",       9.80665},
    {"UNIT-01", "1 kg/m",      9.80665},
    {"UNIT-02", "1 kgf.cm",    0.0980665},
    {"UNIT-02", "1 cm.kg",     0.0980665},
    {"UNIT-03", "1 m.daN",     10.0},
    {"UNIT-04", "1 N.cm",      0.01},
    {"UNIT-05", "1 lbf.ft",    1.3558179483314004},
    {"UNIT-05", "1 ft-lb",     1.3558179483314004},
    {"UNIT-05", "1 foot-pounds", 1.3558179483314004},
    {"UNIT-06", "1 lbf.in",    0.1129848290276167},
    {"UNIT-06", "1 in-lb",     0.1129848290276167},
    {"UNIT-07", "1 ozf.in",    0.00706155181422604375},
    {"UNIT-07", "1 oz-in",     0.00706155181422604375},
    {"UNIT-10", "2.5 kgf.m",   24.516625},
    {"UNIT-10", "2.5 mkg",     24.516625},
    {"UNIT-11", "2.5 m.daN",   25.0},
};
// clang-format on

double from_newton_metre(const char* unit) { return convert(1.0, unit_named("N.m"), unit_named(unit)); }

// T/(K·d) with a wrench without scatter.
double preload_N(double torque_N_m, double k, double diameter_mm) {
  tightening::Case c;
  c.thread = test::metric_thread("M8", diameter_mm, 1.25);
  c.nut_factor = test::k_band(k);
  const auto answer = tightening::clamp(c, newton_metres(torque_N_m), tightening::WrenchAccuracy{0.0, "none"});
  return in_newtons(answer->nut_factor->preload.likely);
}

} // namespace

TEST(PracticeUnits, AreExact) {
  for (const Row& row : k_exact)
    EXPECT_LE(test::ulps_apart(in_newton_metres(*read_torque(row.text)), row.N_m), 4U) << row.row << ' ' << row.text;
}

// UNIT-08 and UNIT-09: printed to six decimals, 1e-6 relative.
TEST(PracticeUnits, TurnNewtonMetresIntoInchUnits) {
  EXPECT_NEAR(from_newton_metre("lbf.ft"), 0.737562, 0.737562e-6);
  EXPECT_NEAR(from_newton_metre("lbf.in"), 8.850746, 8.850746e-6);
}

// UNIT-12: taking kgf·m for m·daN is off by 2 %.
TEST(PracticeUnits, KeepKilogramMetreAndDecanewtonMetreApart) {
  EXPECT_NEAR(read_torque("1kgf.m").value() / read_torque("1m.daN").value(), 0.980665, 1e-15);
}

// UNIT-13: taking lbf·in for lbf·ft overtightens twelve times.
TEST(PracticeUnits, KeepPoundInchAndPoundFootApart) {
  EXPECT_NEAR(read_torque("1 ft-lb").value() / read_torque("1 in-lb").value(), 12.0, 1e-14);
}

// UNIT-14: TM 10-3510-209-24, Table D-2 prints 6.5 lb-in as 0.73 N·m (seen); 0.734401 computed.
TEST(PracticeUnits, MeetThePrintedPairOfAnArmyTable) {
  EXPECT_NEAR(in_newton_metres(*read_torque("6.5 lb-in")), 0.73, 0.01);
  EXPECT_NEAR(in_newton_metres(*read_torque("6.5 lb-in")), 0.734401, 1e-6);
}

// UNC-01: NASA-STD-5020 as quoted in J. Failure Anal. Prev. 19 (2019), equation 1 (formula seen; computed): 25 N·m, K
// 0.20, 8 mm.
TEST(PracticeNutFactor, GivesTheNominalPreload) { EXPECT_NEAR(preload_N(25, 0.20, 8), 15625.0, 15625e-6); }

// UNC-07 and UNC-08: an aircraft-mechanic tutorial pairs 28.9 lbf·ft with 5788 lbf on 3/8-24, cadmium plated dry (pair
// seen; K 0.159779 computed), and 19.9 lbf·ft with the same load in molybdenum anti-seize, with K 0.11 printed beside
// it (seen; 0.110021 computed). The tutorial's figures have three digits: 0.001 in K, that is 0.7 %.
TEST(PracticeNutFactor, FitsThePairsOfATorqueAndALoad) {
  const double load = in_newtons(*read_force("5788 lbf"));
  EXPECT_NEAR(preload_N(in_newton_metres(*read_torque("28.9 ft-lb")), 0.159779, 9.525) / load, 1.0, 0.007);
  EXPECT_NEAR(preload_N(in_newton_metres(*read_torque("19.9 ft-lb")), 0.110021, 9.525) / load, 1.0, 0.007);
}

} // namespace clampwright::quantity
