// SPDX-License-Identifier: GPL-3.0-or-later
//
// Findings that a joint has rather than its clamp load, and those that need the tables: when each must stand, and when
// it must not.
#include <algorithm>

#include <gtest/gtest.h>

#include "specdb/question/joint_answer.hpp"

namespace clampwright::specdb {
namespace {

using finding::Code;
using finding::Severity;

FigureRecord figure(double value, const char* unit = "N.m", const char* surfaces = "dry") {
  FigureRecord out;
  out.printed = "as printed";
  out.value = value;
  out.unit = unit;
  out.surfaces = surfaces;
  out.source = {"Sheets of the test", "1", "page 1", Known::printed};
  return out;
}

// 22 N·m on dry M8 8.8 is a likely half of proof and more: nothing but maker-first is said of it.
JointRecord m8() {
  JointRecord out;
  out.slug = "test/joint";
  out.thread = "M8";
  out.strength_class = "8.8";
  out.figure = figure(22);
  return out;
}

JointRecord changed(void (*change)(JointRecord&)) {
  JointRecord out = m8();
  change(out);
  return out;
}

std::optional<Severity> severity(const JointRecord& joint, Code code) {
  const auto answer = answer_for(Catalogue(), joint);
  if (!answer) throw std::runtime_error(answer.error().message);
  EXPECT_LE(std::ranges::count(answer->findings, code, &finding::Finding::code), 1);
  const auto found = std::ranges::find(answer->findings, code, &finding::Finding::code);
  return found == answer->findings.end() ? std::nullopt : std::optional(found->severity);
}

constexpr std::optional<Severity> k_silent = std::nullopt;

TEST(JointFindings, AreNoneWhereAllIsWell) {
  const auto answer = answer_for(Catalogue(), m8());
  ASSERT_TRUE(answer.has_value());
  ASSERT_EQ(answer->findings.size(), 1U);
  EXPECT_EQ(answer->findings.front().code, Code::maker_first);
}

TEST(SourcesConflict, StandsWhereFiguresInForceDiffer) {
  JointRecord joint = m8();
  joint.beside = {figure(24)};
  EXPECT_EQ(severity(joint, Code::sources_conflict), Severity::mind);
  joint.beside = {figure(22, "N.m", "oiled")};
  EXPECT_EQ(severity(joint, Code::sources_conflict), Severity::mind);
  joint.beside = {figure(22)};
  joint.beside.front().angle_deg = 90;
  EXPECT_EQ(severity(joint, Code::sources_conflict), Severity::mind);
}

TEST(SourcesConflict, IsSilentForTheSameTorqueOnTheSameSurfaces) {
  JointRecord joint = m8();
  EXPECT_EQ(severity(joint, Code::sources_conflict), k_silent);
  joint.beside = {figure(22)};
  EXPECT_EQ(severity(joint, Code::sources_conflict), k_silent);
  joint.beside = {figure(2.2, "daN.m")};
  EXPECT_EQ(severity(joint, Code::sources_conflict), k_silent);
}

// 2.2 kgf·m are 21.57 N·m: near, but not the same figure.
TEST(SourcesConflict, StandsBetweenNearUnits) {
  JointRecord joint = m8();
  joint.beside = {figure(2.2, "kgf.m")};
  EXPECT_EQ(severity(joint, Code::sources_conflict), Severity::mind);
}

TEST(NoMakerValue, StandsWithoutAFigureOnly) {
  EXPECT_EQ(severity(m8(), Code::no_maker_value), k_silent);
  const JointRecord none = changed([](JointRecord& joint) { joint.figure.value.reset(), joint.figure.unit.reset(); });
  EXPECT_EQ(severity(none, Code::no_maker_value), Severity::mind);
}

TEST(CrankReaction, StandsOnACrankOnly) {
  EXPECT_EQ(severity(m8(), Code::crank_reaction), k_silent);
  EXPECT_EQ(severity(changed([](JointRecord& joint) { joint.on_crank = true; }), Code::crank_reaction), Severity::mind);
}

TEST(HoldingUnknown, StandsOnACrankWhoseHoldingIsNotRecorded) {
  JointRecord joint = m8();
  EXPECT_EQ(severity(joint, Code::holding_unknown), k_silent);
  joint.on_crank = true;
  EXPECT_EQ(severity(joint, Code::holding_unknown), Severity::mind);
  joint.holding = "flywheel clamp";
  EXPECT_EQ(severity(joint, Code::holding_unknown), k_silent);
}

TEST(SingleUse, GoesByThePageBeforeTheLock) {
  JointRecord joint = m8();
  joint.locks = {{"split-pin", {}}};
  EXPECT_EQ(severity(joint, Code::single_use), Severity::note);
  joint.figure.reuse_rule = "while-good";
  joint.figure.reuse = "while the pin is whole";
  EXPECT_EQ(severity(joint, Code::single_use), k_silent);
  joint.locks.clear();
  joint.figure.reuse_rule = "never";
  EXPECT_EQ(severity(joint, Code::single_use), Severity::note);
}

struct FinishRow {
  const char* strength_class;
  const char* surfaces;
  bool fires;
};

// Zinc from a bath on a bolt that may be harder than 390 HV: of ISO 898-1 12.9 alone (435; 10.9 reaches 380).
// clang-format off
constexpr FinishRow k_finishes[] = {
    {"12.9",  "zinc-dry",   true},
    {"12.9",  "zinc-oiled", true},
    {"012.9", "zinc-oiled", true},
    {"12.9",  "zinc-flake", false},
    {"12.9",  "dry",        false},
    {"12.9",  "oiled",      false},
    {"10.9",  "zinc-dry",   false},
    {"010.9", "zinc-dry",   false},
    {"8.8",   "zinc-dry",   false},
};
// clang-format on

TEST(Embrittlement, StandsForZincFromABathOnTheHardestClass) {
  for (const FinishRow& row : k_finishes) {
    JointRecord joint = m8();
    joint.strength_class = row.strength_class;
    joint.figure.surfaces = row.surfaces;
    EXPECT_EQ(severity(joint, Code::embrittlement), row.fires ? std::optional(Severity::stop) : k_silent)
        << row.strength_class << " " << row.surfaces;
  }
}

TEST(Galling, GoesByThePartThatTheBoltScrewsInto) {
  JointRecord joint = m8();
  joint.strength_class = "A2-70";
  joint.figure.surfaces = "stainless-lubricated";
  EXPECT_EQ(severity(joint, Code::galling), Severity::note);
  joint.mating_material = "stainless-steel";
  EXPECT_EQ(severity(joint, Code::galling), Severity::mind);
  joint.mating_material = "cast-aluminium";
  EXPECT_EQ(severity(joint, Code::galling), k_silent);
}

TEST(ReducedHead, StandsForEveryLeadingZero) {
  for (const char* mark : {"08.8", "010.9", "012.9"}) {
    JointRecord joint = m8();
    joint.strength_class = mark;
    EXPECT_EQ(severity(joint, Code::reduced_head), Severity::note) << mark;
    joint.strength_class = mark + 1;
    EXPECT_EQ(severity(joint, Code::reduced_head), k_silent) << mark + 1;
  }
}

// M8, 10.9: u_y is that of the full class over 0.8, whatever its value.
TEST(ReducedHead, IsJudgedByItsShareOfProofAndYield) {
  for (const char* mark : {"08.8", "010.9", "012.9"}) {
    JointRecord joint = m8();
    joint.strength_class = mark;
    const auto reduced = answer_for(Catalogue(), joint)->figure.clamp->thread_friction.value();
    joint.strength_class = mark + 1;
    const auto full = answer_for(Catalogue(), joint)->figure.clamp->thread_friction.value();
    EXPECT_NEAR(reduced.use_of_yield->likely * 0.8, full.use_of_yield->likely, 1e-12) << mark;
    EXPECT_NEAR(reduced.use_of_proof->likely * 0.8, full.use_of_proof->likely, 1e-12) << mark;
  }
}

TEST(LockConflict, StandsForCompoundBesideALockingNut) {
  JointRecord joint = m8();
  joint.locks = {{"compound-medium", {}}, {"locking-nut-insert", {}}};
  EXPECT_EQ(severity(joint, Code::lock_conflict), Severity::mind);
  joint.locks = {{"locking-nut-insert", {}}};
  EXPECT_EQ(severity(joint, Code::lock_conflict), k_silent);
  joint.figure.surfaces = "threadlocker-wet";
  EXPECT_EQ(severity(joint, Code::lock_conflict), Severity::mind);
}

// Medium compound bears 149 °C (TM 10-3930-643-20, para 2-12, second-hand).
TEST(HeatLimit, StandsAboveTheLimitOfTheTable) {
  JointRecord joint = m8();
  joint.locks = {{"compound-medium", {}}};
  joint.neighbours = {{"silencer", {}, 149}};
  EXPECT_EQ(severity(joint, Code::heat_limit), k_silent);
  joint.neighbours = {{"silencer", {}, 150}};
  EXPECT_EQ(severity(joint, Code::heat_limit), Severity::mind);
  joint.locks = {{"lock-wire", {}}};
  EXPECT_EQ(severity(joint, Code::heat_limit), k_silent);
}

// A nut of class 8 goes with bolts up to 8.8; a thin nut (04) is paired with none (ISO 898-2, table 2).
TEST(NutTooWeak, GoesByTheTableOfNuts) {
  JointRecord joint = m8();
  joint.nut_class = "8";
  EXPECT_EQ(severity(joint, Code::nut_too_weak), k_silent);
  joint.strength_class = "10.9";
  EXPECT_EQ(severity(joint, Code::nut_too_weak), Severity::stop);
  joint.nut_class = "10";
  EXPECT_EQ(severity(joint, Code::nut_too_weak), k_silent);
  joint.nut_class = "04";
  EXPECT_EQ(severity(joint, Code::nut_too_weak), k_silent);
}

TEST(UnitSlip, StopsWhereTheBoltWouldBreakAndWhereItStaysLoose) {
  EXPECT_EQ(severity(m8(), Code::unit_slip), k_silent);
  EXPECT_EQ(severity(changed([](JointRecord& joint) { joint.figure.value = 200; }), Code::unit_slip), Severity::stop);
  EXPECT_EQ(severity(changed([](JointRecord& joint) { joint.figure.value = 2.2; }), Code::unit_slip), Severity::stop);
}

TEST(UnitSlip, IsSilentWhereTheClassIsUnknown) {
  for (const double value : {0.22, 2.2, 200.0, 2000.0}) {
    JointRecord joint = m8();
    joint.strength_class = "unknown";
    joint.figure.value = value;
    EXPECT_EQ(severity(joint, Code::unit_slip), k_silent) << value;
  }
}

} // namespace
} // namespace clampwright::specdb
