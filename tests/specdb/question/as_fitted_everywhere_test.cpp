// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every joint of the demo workshop on every state of the surfaces: whatever is fitted, nothing that the joint must not
// bear is answered with a torque, and no warning of the fastener itself goes away.
#include <algorithm>

#include <gtest/gtest.h>

#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/workshop/joints.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

using finding::Code;
using quantity::in_newton_metres;

// Calls `check` for every joint and all surfaces.
template<class Check>
void everywhere(Check check) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  const Catalogue catalogue;
  for (const std::string& slug : joint_slugs(workshop))
    for (const std::string& surfaces : surfaces_names(catalogue)) {
      const auto plain = answer_for(catalogue, *joint_of_slug(workshop, slug));
      const auto fitted = answer_for(catalogue, *joint_of_slug(workshop, slug), {{}, surfaces, {}});
      ASSERT_TRUE(plain && fitted) << slug << " " << surfaces;
      check(*plain, *fitted, slug + " " + surfaces);
    }
}

bool has(const JointAnswer& answer, Code code) {
  return std::ranges::find(answer.findings, code, &finding::Finding::code) != answer.findings.end();
}

TEST(AsFittedEverywhere, KeepsWhatTheFastenerItselfBringsWithIt) {
  everywhere([](const JointAnswer& plain, const JointAnswer& fitted, const std::string& where) {
    for (const Code code : {Code::embrittlement, Code::nut_too_weak, Code::unit_slip, Code::sources_conflict,
                            Code::left_hand, Code::crank_reaction, Code::hand_doubt, Code::heat_limit,
                            Code::class_unknown, Code::reduced_head, Code::soft_part, Code::no_maker_value})
      EXPECT_FALSE(has(plain, code) && !has(fitted, code)) << where << " " << finding::code_name(code);
  });
}

TEST(AsFittedEverywhere, HasATorqueOrAReasonNotToHaveOne) {
  everywhere([](const JointAnswer&, const JointAnswer& fitted, const std::string& where) {
    const AsFitted& as_fitted = *fitted.as_fitted;
    if (!as_fitted.differs) return;
    EXPECT_NE(as_fitted.torque.has_value(), !as_fitted.no_correction_because.empty()) << where;
    EXPECT_EQ(as_fitted.torque.has_value(), as_fitted.clamp.has_value()) << where;
  });
}

TEST(AsFittedEverywhere, NeverRaisesWhatSomethingSoftLimits) {
  everywhere([](const JointAnswer&, const JointAnswer& fitted, const std::string& where) {
    if (!fitted.joint.soft_material || !fitted.as_fitted->torque) return;
    EXPECT_LE(in_newton_metres(*fitted.as_fitted->torque), in_newton_metres(*fitted.figure.set)) << where;
  });
}

TEST(AsFittedEverywhere, PutsNothingSlipperyOnATaperAPlugOrCompound) {
  everywhere([](const JointAnswer&, const JointAnswer& fitted, const std::string& where) {
    const AsFitted& as_fitted = *fitted.as_fitted;
    const bool compound =
        std::ranges::any_of(fitted.locks, [](const auto& l) { return l.family == friction::LockFamily::compound; });
    if (!fitted.joint.taper && fitted.joint.kind != "plug" && !compound) return;
    EXPECT_FALSE(as_fitted.factor && *as_fitted.factor < 1.0 && as_fitted.surfaces != "threadlocker-wet") << where;
  });
}

TEST(AsFittedEverywhere, EndsItsPassesAtTheCorrectedTorque) {
  everywhere([](const JointAnswer&, const JointAnswer& fitted, const std::string& where) {
    const AsFitted& as_fitted = *fitted.as_fitted;
    if (!as_fitted.torque || as_fitted.passes.empty()) return;
    EXPECT_NEAR(in_newton_metres(as_fitted.passes.back()), in_newton_metres(*as_fitted.torque), 1e-9) << where;
  });
}

TEST(AsFittedEverywhere, GivesPlainSteelNoStainlessSurfaces) {
  everywhere([](const JointAnswer&, const JointAnswer& fitted, const std::string& where) {
    if (!fitted.as_fitted->surfaces.starts_with("stainless") || fitted.joint.strength_class != "8.8") return;
    EXPECT_FALSE(fitted.as_fitted->torque.has_value()) << where;
  });
}

} // namespace
} // namespace clampwright::specdb
