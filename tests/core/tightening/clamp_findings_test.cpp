// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rules of the contract, section 2, "Findings": each finding with a case in which it must stand and one in which it
// must not. Uses worked out by hand as in verdict_test.cpp and clamp_test.cpp.
#include "core/tightening/clamp_findings.hpp"

#include "core/tightening/clamp.hpp"
#include "tests/core/cases.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace clampwright::tightening {
namespace {

using finding::Code;
using finding::Severity;
using quantity::newton_metres;
using test::m10_case;

finding::Findings findings(const Case& c, double torque_N_m) { return clamp(c, newton_metres(torque_N_m))->findings; }

bool fires(const Case& c, double torque_N_m, Code code) {
  return std::ranges::count(findings(c, torque_N_m), code, &finding::Finding::code) == 1;
}

bool is_silent(const Case& c, double torque_N_m, Code code) {
  return std::ranges::count(findings(c, torque_N_m), code, &finding::Finding::code) == 0;
}

std::optional<Severity> severity(const Case& c, double torque_N_m, Code code) {
  for (const auto& finding : findings(c, torque_N_m))
    if (finding.code == code) return finding.severity;
  return std::nullopt;
}

Case narrow() {
  Case out = m10_case();
  out.mu_thread = test::mu_band(0.12);
  out.mu_head = test::mu_band(0.12);
  out.nut_factor = test::k_band(0.164); // about what μ 0.12 amounts to on this face
  return out;
}

Case changed(void (*change)(Case&)) {
  Case out = m10_case();
  change(out);
  return out;
}

friction::Lock lock(friction::LockFamily family) { return {"lock", "of the test", family, false}; }

} // namespace

TEST(OverYield, StandsWhereTheHighUseExceedsOne) {
  EXPECT_EQ(severity(m10_case(), 45, Code::over_yield), Severity::mind);
}

TEST(OverYield, StopsWhereTheLikelyUseExceedsOne) {
  EXPECT_EQ(severity(m10_case(), 55, Code::over_yield), Severity::stop);
}

TEST(OverYield, IsSilentBelowOne) { EXPECT_TRUE(is_silent(m10_case(), 30, Code::over_yield)); }

TEST(OverYield, IsSilentForWhatIsNoBolt) {
  EXPECT_TRUE(is_silent(changed([](Case& c) { c.kind = JointKind::hub; }), 55, Code::over_yield));
}

TEST(OverProof, StandsWhereTheHighUseExceedsOne) {
  EXPECT_EQ(severity(m10_case(), 45, Code::over_proof), Severity::mind);
}

TEST(OverProof, StopsWhereTheLikelyUseExceedsOne) {
  EXPECT_EQ(severity(m10_case(), 65, Code::over_proof), Severity::stop);
}

TEST(OverProof, IsSilentBelowOne) { EXPECT_TRUE(is_silent(m10_case(), 30, Code::over_proof)); }

// Either model suffices: K 0.30 stays far below, μ does not.
TEST(OverProof, StandsWhereOneModelAloneExceeds) {
  EXPECT_TRUE(fires(changed([](Case& c) { c.nut_factor = test::k_band(0.3); }), 45, Code::over_proof));
}

TEST(NearLimit, StandsWithThatVerdict) {
  EXPECT_EQ(severity(narrow(), 51, Code::near_limit), Severity::mind); // likely 0.9473, high 0.9852
}

TEST(NearLimit, IsSilentWithAnyOtherVerdict) {
  EXPECT_TRUE(is_silent(narrow(), 30, Code::near_limit));
  EXPECT_TRUE(is_silent(narrow(), 53, Code::near_limit)); // may exceed
  EXPECT_TRUE(is_silent(narrow(), 56, Code::near_limit)); // over
}

TEST(NearLimit, StandsByProofWithoutAFace) {
  Case c = narrow();
  c.face.reset();
  EXPECT_TRUE(fires(c, 52, Code::near_limit)); // 52/(0.164·0.010)/33640 = 0.9426, high 0.9803
}

TEST(LowPreloadFinding, StandsUnderHalfOfProof) {
  EXPECT_EQ(severity(m10_case(), 27, Code::low_preload), Severity::note); // 16470/33640 = 0.4896
}

TEST(LowPreloadFinding, IsSilentFromHalfOfProofUp) {
  EXPECT_TRUE(is_silent(m10_case(), 28, Code::low_preload)); // 17080/33640 = 0.5077
}

TEST(LowPreloadFinding, IsSilentForWhatIsNoBolt) {
  EXPECT_TRUE(is_silent(changed([](Case& c) { c.kind = JointKind::plug; }), 27, Code::low_preload));
}

TEST(LowPreloadFinding, IsSilentWithoutAProofLoad) {
  EXPECT_TRUE(is_silent(changed([](Case& c) { c.strength = strength::unknown_strength(); }), 27, Code::low_preload));
}

TEST(LowPreloadFinding, GoesByNutFactorWithoutAFace) {
  Case c = m10_case();
  c.face.reset();
  EXPECT_TRUE(fires(c, 30, Code::low_preload));     // 16667/33640 = 0.4954
  EXPECT_TRUE(is_silent(c, 31, Code::low_preload)); // 17222/33640 = 0.5120
}

// By μ 20.5 to 40.0 kN, likely 27.5. K 0.40 alone is 10.8 to 11.7 kN: apart.
TEST(ModelsDisagree, StandsWhereTheBandsAreApart) {
  const Case c = changed([](Case& x) { x.nut_factor = test::k_band(0.4); });
  EXPECT_EQ(severity(c, 45, Code::models_disagree), Severity::mind);
}

// K 0.12 / 0.25 / 0.26: likely 18.0 kN, below the 20.5 kN of the other, though the bands overlap.
TEST(ModelsDisagree, StandsWhereOneLikelyLiesOutsideTheOtherBand) {
  const Case c = changed([](Case& x) { x.nut_factor = test::k_band(0.12, 0.25, 0.26); });
  EXPECT_TRUE(fires(c, 45, Code::models_disagree));
}

// K 0.18 / 0.18 / 0.22: 19.6 to 26.0 kN, which leaves the other's likely 27.5 kN outside.
TEST(ModelsDisagree, StandsAlsoTheOtherWayRound) {
  const Case c = changed([](Case& x) { x.nut_factor = test::k_band(0.18, 0.18, 0.22); });
  EXPECT_TRUE(fires(c, 45, Code::models_disagree));
}

TEST(ModelsDisagree, IsSilentWhereEachLikelyLiesInTheOtherBand) {
  EXPECT_TRUE(is_silent(m10_case(), 45, Code::models_disagree));
}

TEST(ModelsDisagree, IsSilentWithOneModelOnly) {
  EXPECT_TRUE(
      is_silent(changed([](Case& c) { c.nut_factor = test::k_band(0.4), c.face.reset(); }), 45, Code::models_disagree));
}

TEST(ClassUnknown, StandsForTheClassUnknown) {
  const Case c = changed([](Case& x) { x.strength = strength::unknown_strength(); });
  EXPECT_EQ(severity(c, 45, Code::class_unknown), Severity::mind);
}

TEST(ClassUnknown, IsSilentForANamedClass) { EXPECT_TRUE(is_silent(m10_case(), 45, Code::class_unknown)); }

TEST(ValueFromMemory, StandsForARememberedClass) {
  EXPECT_TRUE(fires(changed([](Case& c) { c.strength.from_memory = true; }), 45, Code::value_from_memory));
}

TEST(ValueFromMemory, IsSilentForAClassThatWasRead) { EXPECT_TRUE(is_silent(m10_case(), 45, Code::value_from_memory)); }

TEST(SurfacesNotStated, StandsWhereNobodyStatedTheFriction) {
  const Case c = changed([](Case& x) { x.friction_stated = false; });
  EXPECT_EQ(severity(c, 45, Code::surfaces_not_stated), Severity::mind);
}

TEST(SurfacesNotStated, IsSilentWhereTheyAre) { EXPECT_TRUE(is_silent(m10_case(), 45, Code::surfaces_not_stated)); }

TEST(FaceNotStated, StandsWhereFrictionIsKnownAndTheFaceIsNot) {
  EXPECT_EQ(severity(changed([](Case& c) { c.face.reset(); }), 45, Code::face_not_stated), Severity::mind);
}

TEST(FaceNotStated, SaysWhyAHeadHasNone) {
  const Case c = changed([](Case& x) { x.face.reset(), x.no_face_because = "it bears on a cone"; });
  const auto all = findings(c, 45);
  const auto found = std::ranges::find(all, Code::face_not_stated, &finding::Finding::code);
  ASSERT_NE(found, all.end());
  EXPECT_EQ(std::get<std::string>(found->facts.at(0)), "it bears on a cone");
}

TEST(FaceNotStated, IsSilentWhereTheFaceIsKnown) { EXPECT_TRUE(is_silent(m10_case(), 45, Code::face_not_stated)); }

TEST(FaceNotStated, IsSilentWhereOnlyANutFactorWasGiven) {
  const Case c = changed([](Case& x) { x.face.reset(), x.mu_thread.reset(), x.mu_head.reset(); });
  EXPECT_TRUE(is_silent(c, 45, Code::face_not_stated));
}

TEST(NotABolt, StandsForHubPlugAndUnion) {
  EXPECT_EQ(severity(changed([](Case& c) { c.kind = JointKind::hub; }), 45, Code::not_a_bolt), Severity::note);
  EXPECT_TRUE(fires(changed([](Case& c) { c.kind = JointKind::plug; }), 45, Code::not_a_bolt));
  EXPECT_TRUE(fires(changed([](Case& c) { c.kind = JointKind::union_nut; }), 45, Code::not_a_bolt));
}

TEST(NotABolt, IsSilentForABoltAndASetStud) {
  EXPECT_TRUE(is_silent(m10_case(), 45, Code::not_a_bolt));
  EXPECT_TRUE(is_silent(changed([](Case& c) { c.kind = JointKind::stud_set; }), 45, Code::not_a_bolt));
}

TEST(SeatingTorque, StandsForASetStud) {
  EXPECT_EQ(severity(changed([](Case& c) { c.kind = JointKind::stud_set; }), 45, Code::seating_torque), Severity::note);
}

TEST(SeatingTorque, IsSilentForABoltAndAHub) {
  EXPECT_TRUE(is_silent(m10_case(), 45, Code::seating_torque));
  EXPECT_TRUE(is_silent(changed([](Case& c) { c.kind = JointKind::hub; }), 45, Code::seating_torque));
}

TEST(LockingCompound, StandsForWetSurfaces) {
  EXPECT_EQ(severity(changed([](Case& c) { c.wet_compound = true; }), 45, Code::locking_compound), Severity::mind);
}

TEST(LockingCompound, StandsForACompoundLock) {
  EXPECT_TRUE(
      fires(changed([](Case& c) { c.locks = {lock(friction::LockFamily::compound)}; }), 45, Code::locking_compound));
}

TEST(LockingCompound, StandsOnceForBoth) {
  const Case c = changed([](Case& x) { x.wet_compound = true, x.locks = {lock(friction::LockFamily::compound)}; });
  EXPECT_TRUE(fires(c, 45, Code::locking_compound));
}

TEST(LockingCompound, IsSilentForOtherLocks) {
  EXPECT_TRUE(is_silent(m10_case(), 45, Code::locking_compound));
  EXPECT_TRUE(is_silent(changed([](Case& c) { c.locks = {lock(friction::LockFamily::positive)}; }), 45,
                        Code::locking_compound));
}

TEST(RunningTorqueAdded, StandsWheneverOneIsGiven) {
  EXPECT_EQ(severity(changed([](Case& c) { c.running_torque = newton_metres(3); }), 45, Code::running_torque_added),
            Severity::note);
  EXPECT_TRUE(fires(changed([](Case& c) { c.running_torque = newton_metres(0); }), 45, Code::running_torque_added));
}

TEST(RunningTorqueAdded, IsSilentWithoutOne) { EXPECT_TRUE(is_silent(m10_case(), 45, Code::running_torque_added)); }

TEST(RunningTorqueMissing, StandsForASelfLockingNutWithoutOne) {
  const Case c = changed([](Case& x) { x.locks = {lock(friction::LockFamily::running_torque)}; });
  EXPECT_EQ(severity(c, 45, Code::running_torque_missing), Severity::mind);
}

TEST(RunningTorqueMissing, IsSilentWhereOneIsGiven) {
  const Case c = changed([](Case& x) {
    x.locks = {lock(friction::LockFamily::running_torque)};
    x.running_torque = newton_metres(3);
  });
  EXPECT_TRUE(is_silent(c, 45, Code::running_torque_missing));
  EXPECT_TRUE(is_silent(m10_case(), 45, Code::running_torque_missing));
}

TEST(LeftHand, StandsForALeftHandThread) {
  EXPECT_EQ(severity(changed([](Case& c) { c.thread.hand = thread::Hand::left; }), 45, Code::left_hand),
            Severity::mind);
}

TEST(LeftHand, IsSilentForARightHandThread) { EXPECT_TRUE(is_silent(m10_case(), 45, Code::left_hand)); }

TEST(MassAsForce, StandsWhereAMassWasRead) {
  EXPECT_EQ(severity(changed([](Case& c) { c.mass_as_force = true; }), 45, Code::mass_as_force), Severity::note);
}

TEST(MassAsForce, IsSilentWhereAForceWasRead) { EXPECT_TRUE(is_silent(m10_case(), 45, Code::mass_as_force)); }

TEST(MakerFirst, StandsLastInEveryAnswer) {
  EXPECT_EQ(findings(m10_case(), 30).back().code, Code::maker_first);
  EXPECT_EQ(findings(m10_case(), 60).back().code, Code::maker_first);
  EXPECT_EQ(findings(changed([](Case& c) { c.kind = JointKind::hub; }), 45).back().code, Code::maker_first);
}

TEST(FindingsOfAClamp, BeginWithTheGravest) {
  EXPECT_EQ(findings(changed([](Case& c) { c.thread.hand = thread::Hand::left; }), 65).front().severity,
            Severity::stop);
}

TEST(FindingsOfAClamp, AreFewWhereAllIsWell) { ASSERT_EQ(findings(m10_case(), 30).size(), 1U); }

} // namespace clampwright::tightening
