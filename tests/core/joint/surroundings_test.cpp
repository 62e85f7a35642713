// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the surroundings of a bolt make of it: each finding on both sides of its limit. The bolt is the M10 of
// tests/core/cases.hpp. By hand, at 45 N·m and 4 %: F = 45000/1.6393331019 = 27 450 N likely and
// 46800/1.1714321684 = 39 951 N at the most; at 8 N·m and 6 %: 8480/1.1714321684 = 7239 N at the most. Its proof load
// is 580 · 58.0 = 33 640 N.
#include "core/joint/surroundings.hpp"

#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace clampwright::joint {
namespace {

using finding::Code;
using finding::Finding;
using finding::Severity;
using quantity::degrees_celsius;
using quantity::in_megapascals;
using quantity::in_newtons;
using quantity::megapascals;
using quantity::millimetres;
using quantity::newton_metres;
using tightening::Case;
using tightening::JointKind;

std::optional<Finding> found(const Surroundings& around, const Case& c, double torque_N_m, Code code) {
  const auto clamp = tightening::clamp(c, newton_metres(torque_N_m)).value();
  for (const Finding& finding : findings_around(around, c, &clamp))
    if (finding.code == code) return finding;
  return std::nullopt;
}

std::optional<Severity> severity(const Surroundings& around, const Case& c, double torque_N_m, Code code) {
  const auto finding = found(around, c, torque_N_m, code);
  return finding ? std::optional(finding->severity) : std::nullopt;
}

Case of_kind(JointKind kind) {
  Case out = test::m10_case();
  out.kind = kind;
  return out;
}

constexpr JointKind k_other_kinds[] = {JointKind::hub, JointKind::plug, JointKind::stud_set, JointKind::union_nut};

// 20 mm² sheared for each millimetre, 100 MPa: 2000 N for each millimetre of engagement.
Surroundings tapped(double engagement_mm) {
  Surroundings out;
  strength::PartMaterial material;
  material.name = material.description = "soft metal";
  material.shear_strength = megapascals(100);
  out.tapped = TappedPart{"crankcase", material, millimetres(engagement_mm), millimetres(20), {}, {}};
  return out;
}

struct StripRow {
  const char* what;
  double engagement_mm;
  double torque_N_m;
  std::optional<Severity> severity;
};

// clang-format off
const StripRow k_strips[] = {
    {"40 000 N, above the 39 951 N at the most",   20.00, 45, std::nullopt},
    {"39 940 N, below it",                         19.97, 45, Severity::mind},
    {"27 460 N, above the 27 450 N likely",        13.73, 45, Severity::mind},
    {"27 440 N, below it",                         13.72, 45, Severity::stop},
    {"33 660 N, above the proof load of 33 640 N", 16.83,  8, std::nullopt},
    {"33 620 N, below it: before the bolt",        16.81,  8, Severity::mind},
};
// clang-format on

TEST(StripGoverns, StandsOnBothSidesOfItsLimits) {
  for (const StripRow& row : k_strips)
    EXPECT_EQ(severity(tapped(row.engagement_mm), test::m10_case(), row.torque_N_m, Code::strip_governs), row.severity)
        << row.what;
}

TEST(StripGoverns, NamesThePartTheLimitAndTheLoads) {
  const auto finding = found(tapped(13.72), test::m10_case(), 45, Code::strip_governs);
  ASSERT_TRUE(finding && finding->facts.size() == 4U);
  EXPECT_EQ(std::get<std::string>(finding->facts[0]), "crankcase");
  EXPECT_NEAR(in_newtons(std::get<quantity::Force>(finding->facts[1])), 27440, 1e-6);
  EXPECT_NEAR(in_newtons(std::get<quantity::Force>(finding->facts[2])), 27450, 0.5);
  EXPECT_NEAR(in_newtons(std::get<quantity::Force>(finding->facts[3])), 39951, 0.5);
}

TEST(StripGoverns, IsSilentWhereTheMaterialHasNoKnownStrength) {
  Surroundings around = tapped(1);
  around.tapped->material.shear_strength.reset();
  EXPECT_EQ(severity(around, test::m10_case(), 45, Code::strip_governs), std::nullopt);
}

TEST(StripGoverns, IsSilentForWhatIsNoBolt) {
  for (const JointKind kind : k_other_kinds)
    EXPECT_EQ(severity(tapped(1), of_kind(kind), 45, Code::strip_governs), std::nullopt);
}

TEST(StripGoverns, IsSilentWithoutAClampLoad) {
  EXPECT_TRUE(findings_around(tapped(1), test::m10_case(), nullptr).empty());
}

// 10 000 N is below any proof load but above the 7239 N that may be clamped.
TEST(StripGoverns, GoesByTheClampLoadAloneWhereTheClassIsUnknown) {
  Case c = test::m10_case();
  c.strength = strength::unknown_strength();
  EXPECT_EQ(severity(tapped(5), c, 8, Code::strip_governs), std::nullopt);
  EXPECT_EQ(severity(tapped(5), test::m10_case(), 8, Code::strip_governs), Severity::mind);
  EXPECT_EQ(severity(tapped(3.6), c, 8, Code::strip_governs), Severity::mind); // 7200 N
}

// By nut factor alone: 45/0.0018 = 25 000 N likely, 46.8/0.0012 = 39 000 N at the most.
TEST(StripGoverns, GoesByNutFactorWithoutAFace) {
  Case c = test::m10_case();
  c.face.reset();
  EXPECT_EQ(severity(tapped(19.51), c, 45, Code::strip_governs), std::nullopt);
  EXPECT_EQ(severity(tapped(19.49), c, 45, Code::strip_governs), Severity::mind);
  EXPECT_EQ(severity(tapped(12.51), c, 45, Code::strip_governs), Severity::mind);
  EXPECT_EQ(severity(tapped(12.49), c, 45, Code::strip_governs), Severity::stop);
}

Surroundings seat(std::optional<double> bears_MPa) {
  Surroundings out;
  out.seat = strength::PartMaterial{};
  out.seat->name = "soft-metal";
  if (bears_MPa) out.seat->seat_pressure = megapascals(*bears_MPa);
  return out;
}

struct SeatRow {
  double bears_MPa;
  std::optional<Severity> severity;
};

// The ring of 14.63 and 11 mm: π/4·(214.0369 - 121) = 73.0710 mm². At 45 N·m likely 27450.2/73.0710 = 375.66 MPa, at
// the most 39951.1/73.0710 = 546.74 MPa.
// clang-format off
const SeatRow k_seats[] = {
    {547, std::nullopt},
    {546, Severity::mind},
    {376, Severity::mind},
    {375, Severity::stop},
};
// clang-format on

TEST(SeatPressure, StandsOnBothSidesOfItsLimits) {
  for (const SeatRow& row : k_seats)
    EXPECT_EQ(severity(seat(row.bears_MPa), test::m10_case(), 45, Code::seat_pressure), row.severity) << row.bears_MPa;
}

TEST(SeatPressure, NamesTheSeatItsLimitAndThePressures) {
  const auto finding = found(seat(375), test::m10_case(), 45, Code::seat_pressure);
  ASSERT_TRUE(finding && finding->facts.size() == 4U);
  EXPECT_EQ(std::get<std::string>(finding->facts[0]), "soft metal");
  EXPECT_NEAR(in_megapascals(std::get<quantity::Stress>(finding->facts[1])), 375, 1e-9);
  EXPECT_NEAR(in_megapascals(std::get<quantity::Stress>(finding->facts[2])), 375.66, 0.01);
  EXPECT_NEAR(in_megapascals(std::get<quantity::Stress>(finding->facts[3])), 546.74, 0.01);
}

TEST(SeatPressure, IsSilentWhereNothingIsKnownOfSeatOrFace) {
  EXPECT_EQ(severity(seat({}), test::m10_case(), 45, Code::seat_pressure), std::nullopt);
  EXPECT_EQ(severity({}, test::m10_case(), 45, Code::seat_pressure), std::nullopt);
  Case faceless = test::m10_case();
  faceless.face.reset();
  EXPECT_EQ(severity(seat(1), faceless, 45, Code::seat_pressure), std::nullopt);
}

TEST(SeatPressure, IsSilentForWhatIsNoBolt) {
  for (const JointKind kind : k_other_kinds)
    EXPECT_EQ(severity(seat(1), of_kind(kind), 45, Code::seat_pressure), std::nullopt);
}

struct NutRow {
  const char* bolt;
  const char* nut;
  std::optional<std::string> highest;
  bool fires;
};

// ISO 898-2, table 2: nut 8 up to bolts 8.8 (second-hand), 10 up to 10.9, 12 up to 12.9 (memory). Thin nuts (04, 05)
// are paired with no bolt class.
// clang-format off
const NutRow k_nuts[] = {
    {"10.9",    "8",     "8.8",        true},
    {"12.9",    "10",    "10.9",       true},
    {"010.9",   "8",     "8.8",        true},
    {"8.8",     "8",     "8.8",        false},
    {"8.8",     "10",    "10.9",       false},
    {"08.8",    "8",     "8.8",        false},
    {"unknown", "8",     "8.8",        false},
    {"8.8",     "04",    std::nullopt, false},
    {"SAE 8",   "SAE 5", "SAE 5",      false}, // inch classes are not compared
};
// clang-format on

TEST(NutTooWeak, StandsWhereTheNutGoesOnlyWithWeakerBolts) {
  for (const NutRow& row : k_nuts) {
    Case c = test::m10_case();
    c.strength.class_name = row.bolt;
    Surroundings around;
    around.nut = Nut{row.nut, row.highest, {}};
    const auto expected = row.fires ? std::optional(Severity::stop) : std::nullopt;
    EXPECT_EQ(severity(around, c, 45, Code::nut_too_weak), expected) << row.bolt << " with " << row.nut;
  }
}

TEST(NutTooWeak, StandsAlsoWithoutATorque) {
  Case c = test::m10_case();
  c.strength.class_name = "10.9";
  Surroundings around;
  around.nut = Nut{"8", "8.8", {}};
  const auto findings = findings_around(around, c, nullptr);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings.front().code, Code::nut_too_weak);
}

TEST(NutTooWeak, IsSilentForWhatIsNoBoltAndWithoutANut) {
  Case c = of_kind(JointKind::hub);
  c.strength.class_name = "10.9";
  Surroundings around;
  around.nut = Nut{"8", "8.8", {}};
  EXPECT_EQ(severity(around, c, 45, Code::nut_too_weak), std::nullopt);
  EXPECT_EQ(severity({}, test::m10_case(), 45, Code::nut_too_weak), std::nullopt);
}

Case with_lock(friction::LockFamily family, std::optional<double> bears_degC, bool single_use = false) {
  Case out = test::m10_case();
  friction::Lock lock{"lock", "lock of the test", family, single_use};
  if (bears_degC) lock.heat_limit = degrees_celsius(*bears_degC);
  out.locks = {lock};
  return out;
}

Surroundings beside(double runs_at_degC) {
  Surroundings out;
  out.hot = {{"exhaust", degrees_celsius(runs_at_degC)}};
  return out;
}

TEST(HeatLimit, StandsAboveTheLimitAndNotAtIt) {
  const Case c = with_lock(friction::LockFamily::compound, 149);
  EXPECT_EQ(severity(beside(148), c, 45, Code::heat_limit), std::nullopt);
  EXPECT_EQ(severity(beside(149), c, 45, Code::heat_limit), std::nullopt);
  EXPECT_EQ(severity(beside(149.1), c, 45, Code::heat_limit), Severity::mind);
}

TEST(HeatLimit, IsSilentForALockWithoutALimitAndForNoLock) {
  EXPECT_EQ(severity(beside(600), with_lock(friction::LockFamily::positive, {}), 45, Code::heat_limit), std::nullopt);
  EXPECT_EQ(severity(beside(600), test::m10_case(), 45, Code::heat_limit), std::nullopt);
}

TEST(HeatLimit, IsSilentWhereNothingIsHot) {
  EXPECT_EQ(severity({}, with_lock(friction::LockFamily::compound, 149), 45, Code::heat_limit), std::nullopt);
}

struct DriveRow {
  thread::Turn shaft;
  crank::Driver driver;
  thread::Hand hand;
  bool fires;
};

// By reasoning: a shaft that turns clockwise, seen from the free end of the thread, and drives its part is held back by
// the part, so the part turns anticlockwise on it: that tightens a left-hand thread and undoes a right-hand one. Where
// the part drives, it is the other way round.
// clang-format off
constexpr DriveRow k_drives[] = {
    {thread::Turn::clockwise,     crank::Driver::shaft, thread::Hand::left,  false},
    {thread::Turn::clockwise,     crank::Driver::shaft, thread::Hand::right, true},
    {thread::Turn::anticlockwise, crank::Driver::shaft, thread::Hand::right, false},
    {thread::Turn::anticlockwise, crank::Driver::shaft, thread::Hand::left,  true},
    {thread::Turn::clockwise,     crank::Driver::part,  thread::Hand::right, false},
    {thread::Turn::clockwise,     crank::Driver::part,  thread::Hand::left,  true},
    {thread::Turn::anticlockwise, crank::Driver::part,  thread::Hand::left,  false},
    {thread::Turn::anticlockwise, crank::Driver::part,  thread::Hand::right, true},
};
// clang-format on

TEST(HandDoubt, StandsWhereTheSteadyLoadWouldUndoTheThread) {
  for (const DriveRow& row : k_drives) {
    Case c = test::m10_case();
    c.thread.hand = row.hand;
    Surroundings around;
    around.drive = crank::Drive{row.shaft, row.driver};
    const auto expected = row.fires ? std::optional(Severity::mind) : std::nullopt;
    EXPECT_EQ(severity(around, c, 45, Code::hand_doubt), expected);
  }
}

TEST(HandDoubt, IsSilentWhereTheDriveIsNotKnown) {
  Case c = test::m10_case();
  c.thread.hand = thread::Hand::left;
  EXPECT_EQ(severity({}, c, 45, Code::hand_doubt), std::nullopt);
}

TEST(SingleUse, StandsForALockThatIsNewEachTime) {
  EXPECT_EQ(severity({}, with_lock(friction::LockFamily::positive, {}, true), 45, Code::single_use), Severity::note);
}

TEST(SingleUse, IsSilentForALockThatServesAgainAndForNoLock) {
  EXPECT_EQ(severity({}, with_lock(friction::LockFamily::positive, {}, false), 45, Code::single_use), std::nullopt);
  EXPECT_EQ(severity({}, test::m10_case(), 45, Code::single_use), std::nullopt);
}

// Its own finding says that it is made fresh.
TEST(SingleUse, IsSilentForACompound) {
  EXPECT_EQ(severity({}, with_lock(friction::LockFamily::compound, {}, true), 45, Code::single_use), std::nullopt);
}

TEST(SingleUse, GoesByTheFiguresPageBeforeTheLock) {
  Surroundings again;
  again.reuse = ReuseRule{false, "while the tabs are whole"};
  EXPECT_EQ(severity(again, with_lock(friction::LockFamily::positive, {}, true), 45, Code::single_use), std::nullopt);
  Surroundings never;
  never.reuse = ReuseRule{true, "new bolts each time"};
  const auto finding = found(never, test::m10_case(), 45, Code::single_use);
  ASSERT_TRUE(finding.has_value());
  EXPECT_EQ(std::get<std::string>(finding->facts.at(0)), "new bolts each time");
}

TEST(SingleUse, IsSaidOnceWherePageAndLockAgree) {
  Surroundings never;
  never.reuse = ReuseRule{true, "new nut each time"};
  const auto findings = findings_around(never, with_lock(friction::LockFamily::positive, {}, true), nullptr);
  EXPECT_EQ(std::ranges::count(findings, Code::single_use, &Finding::code), 1);
}

TEST(Surroundings, OfWhichNothingIsKnownSayNothing) {
  const auto clamp = tightening::clamp(test::m10_case(), newton_metres(45)).value();
  EXPECT_TRUE(findings_around({}, test::m10_case(), &clamp).empty());
}

} // namespace
} // namespace clampwright::joint
