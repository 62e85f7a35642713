// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every joint of the demo workshop is there for something that a fitter meets (DEMO.md). Here stands, joint by joint,
// what the program must say about it, and that it says nothing else: a warning on everything is a warning on nothing.
// `maker-first` stands with each and is not repeated in the table.
#include <algorithm>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/question/joint_answer.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/wrenches.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

using finding::Code;
using testing::ElementsAreArray;
using testing::UnorderedElementsAreArray;

// The demo workshop opened once, and the tables.
struct Desk {
  test::DemoFile demo;
  Workshop workshop = demo.open();
  Catalogue catalogue;

  [[nodiscard]] JointAnswer answer(std::string_view slug, const JointRequest& request = {}) const {
    const auto joint = joint_of_slug(workshop, slug);
    if (!joint) throw std::runtime_error(std::string(slug));
    auto found = answer_for(catalogue, *joint, request);
    if (!found) throw std::runtime_error(found.error().message);
    return std::move(*found);
  }

  [[nodiscard]] JointRequest with_wrench(std::string_view name) const {
    return {*find_wrench(workshop, name), {}, test::k_demo_day};
  }
};

std::vector<std::string> codes(const JointAnswer& answer) {
  std::vector<std::string> out;
  for (const auto& finding : answer.findings)
    out.emplace_back(finding::code_name(finding.code));
  return out;
}

struct Row {
  const char* slug;
  std::vector<std::string> codes;
};

// In the order of the file, which is the order of DEMO.md.
// clang-format off
const Row k_joints[] = {
    {"pump/clutch-hub",       {"left-hand", "crank-reaction", "class-unknown", "not-a-bolt"}},
    {"pump/flywheel-nut",     {"crank-reaction"}},
    {"pump/head-nuts",        {}},
    {"pump/spark-plug",       {"not-a-bolt"}},
    {"pump/base-nuts",        {"sources-conflict"}},
    {"pump/exhaust-nuts",     {}},
    {"pump/exhaust-studs",    {"seating-torque"}},
    {"pump/mounts",           {}},
    {"pump/crankcase",        {}},
    {"pump/blower-cover",     {"unit-slip", "over-proof", "over-yield"}},
    {"pump/coil",             {}},
    {"pump/carburettor",      {}},
    {"pump/reed-block",       {"strip-governs"}},
    {"pump/volute",           {"seat-pressure"}},
    {"pump/impeller",         {"locking-compound"}},
    {"pump/silencer",         {"locking-compound", "heat-limit"}},
    {"pump/seal-plate",       {"galling"}},
    {"winch/pulley-bolt",     {"crank-reaction", "holding-unknown"}},
    {"winch/drum-nut",        {"hand-doubt", "single-use"}},
    {"winch/drum-cap",        {"models-disagree", "low-preload"}},
    {"winch/gearbox-cover",   {"surfaces-not-stated"}},
    {"winch/gearbox-flange",  {"unit-slip", "low-preload"}},
    {"winch/frame-bolts",     {}},
    {"winch/fairlead",        {"over-proof", "over-yield"}},
    {"winch/rope-guide",      {"running-torque-added"}},
    {"winch/belt-guard",      {"lock-conflict", "locking-compound", "running-torque-missing"}},
    {"winch/clevis",          {"embrittlement"}},
    {"winch/gearbox-foot",    {"nut-too-weak"}},
    {"winch/anchor-frame",    {"class-unknown"}},
    {"winch/chain-cover",     {"reduced-head"}},
    {"winch/tensioner",       {"near-limit"}},
    {"winch/brake-pivot",     {"no-maker-value"}},
    {"winch/motor-plate",     {"angle-final"}},
    {"boat/propeller-hub",    {"soft-part"}},
    {"boat/cage-clamps",      {}},
    {"boat/steering-arm",     {"low-preload"}},
};
// clang-format on

TEST(DemoJoint, IsInTheTableOfThisTest) {
  const Desk desk;
  std::vector<std::string> expected;
  for (const Row& row : k_joints)
    expected.emplace_back(row.slug);
  EXPECT_THAT(joint_slugs(desk.workshop), ElementsAreArray(expected));
}

TEST(DemoJoint, HasTheFindingsThatItIsThereForAndNoOthers) {
  const Desk desk;
  for (const Row& row : k_joints) {
    std::vector<std::string> expected = row.codes;
    expected.emplace_back("maker-first");
    EXPECT_THAT(codes(desk.answer(row.slug)), UnorderedElementsAreArray(expected)) << row.slug;
  }
}

TEST(DemoJoint, HasEveryFindingOnce) {
  const Desk desk;
  for (const Row& row : k_joints) {
    const auto found = codes(desk.answer(row.slug));
    EXPECT_EQ(std::set(found.begin(), found.end()).size(), found.size()) << row.slug;
  }
}

TEST(DemoJoint, HasMakerFirstLast) {
  const Desk desk;
  for (const Row& row : k_joints)
    EXPECT_EQ(codes(desk.answer(row.slug)).back(), "maker-first") << row.slug;
}

TEST(DemoJoint, TurnsWithTheClockUnlessItSaysLeftHand) {
  const Desk desk;
  for (const Row& row : k_joints) {
    const JointAnswer found = desk.answer(row.slug);
    const bool left = std::string_view(row.slug) == "pump/clutch-hub";
    EXPECT_EQ(found.tighten, left ? thread::Turn::anticlockwise : thread::Turn::clockwise) << row.slug;
    EXPECT_EQ(found.undo, left ? thread::Turn::clockwise : thread::Turn::anticlockwise) << row.slug;
  }
}

TEST(DemoJoint, OnOtherSurfacesIsNoLongerItsFigure) {
  const Desk desk;
  const auto found = codes(desk.answer("pump/exhaust-nuts", {{}, "anti-seize", {}}));
  EXPECT_EQ(std::ranges::count(found, "surfaces-differ"), 1);
}

TEST(DemoJoint, LiesBelowTheScaleOfTheBigWrench) {
  const Desk desk;
  EXPECT_THAT(codes(desk.answer("pump/carburettor", desk.with_wrench("A"))),
              UnorderedElementsAreArray({"below-tool-range", "maker-first"}));
}

TEST(DemoJoint, WantsAWrenchThatIsAccurateItsWayRound) {
  const Desk desk;
  const auto found = codes(desk.answer("pump/clutch-hub", desk.with_wrench("A")));
  EXPECT_EQ(std::ranges::count(found, "wrench-direction"), 1);
}

TEST(DemoJoint, WantsAWrenchThatIsInDate) {
  const Desk desk;
  EXPECT_THAT(codes(desk.answer("winch/frame-bolts", desk.with_wrench("B"))),
              UnorderedElementsAreArray({"wrench-overdue", "maker-first"}));
}

} // namespace
} // namespace clampwright::specdb
