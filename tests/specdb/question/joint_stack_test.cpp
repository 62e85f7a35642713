// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a joint's record makes of order, angle and split pin.
#include "specdb/question/joint_stack.hpp"

#include <algorithm>
#include <functional>
#include <stdexcept>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/question/joint_answer.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::specdb {
namespace {

using finding::Code;
using testing::ElementsAre;
using testing::HasSubstr;

// M10 10.9 through 60 mm of steel, 20 N·m and then 15°.
JointRecord plate(const std::function<void(JointRecord&)>& change = {}) {
  JointRecord out;
  out.slug = "test/plate";
  out.quantity = 4;
  out.thread = "M10";
  out.strength_class = "10.9";
  out.grip = "60 mm";
  out.bolt_length = "80 mm";
  out.seat_material = "steel";
  out.pattern = "circle";
  out.figure.printed = "20 N·m + 15°";
  out.figure.value = 20;
  out.figure.unit = "N.m";
  out.figure.angle_deg = 15;
  out.figure.method = "torque-angle";
  out.figure.surfaces = "oiled";
  out.figure.source = {"Sheets of the test", "1", "page 1", Known::printed};
  if (change) change(out);
  return out;
}

JointAnswer answer(const JointRecord& joint, const JointRequest& request = {}) {
  auto out = answer_for(Catalogue(), joint, request);
  if (!out) throw std::runtime_error(out.error().message);
  return std::move(*out);
}

std::string text_of(const JointAnswer& joint) {
  std::string words;
  const report::Document document = joint_report(joint, {}, false);
  for (const report::Row& row : document.sections.front().rows)
    words += row.label + ": " + row.value + "\n";
  return words;
}

TEST(JointTurn, IsAddedWhereTheStackIsOnRecord) {
  const JointAnswer joint = answer(plate());
  ASSERT_TRUE(joint.figure.turned);
  EXPECT_THAT(text_of(joint), HasSubstr("then 15°: adds "));
  const auto found = std::ranges::find(joint.findings, Code::angle_final, &finding::Finding::code);
  ASSERT_NE(found, joint.findings.end());
  EXPECT_EQ(found->facts.size(), 1U);
}

TEST(JointTurn, NamesWhatTheRecordLacks) {
  const JointAnswer joint = answer(plate([](JointRecord& j) { j.grip.reset(); }));
  EXPECT_FALSE(joint.figure.turned);
  EXPECT_EQ(joint.figure.not_turned_because, "the record has no grip");
  EXPECT_THAT(answer(plate([](JointRecord& j) { j.seat_material.reset(); })).figure.not_turned_because,
              HasSubstr("material"));
}

TEST(JointTurn, IsSaidOfNoFigureWithoutAnAngle) {
  const JointAnswer joint = answer(plate([](JointRecord& j) { j.figure.angle_deg.reset(); }));
  EXPECT_FALSE(joint.figure.turned);
  EXPECT_EQ(joint.figure.not_turned_because, "");
}

TEST(JointTurn, StaysTheSameOnOtherSurfaces) {
  JointRequest dry;
  dry.as_fitted = "dry";
  const JointAnswer joint = answer(plate(), dry);
  EXPECT_EQ(std::ranges::count(joint.findings, Code::angle_final, &finding::Finding::code), 1);
}

TEST(JointOrder, IsComputedWhereTheRecordHasAPattern) {
  const JointAnswer joint = answer(plate());
  ASSERT_TRUE(joint.order);
  EXPECT_THAT(joint.order->order, ElementsAre(1, 3, 2, 4));
  EXPECT_FALSE(answer(plate([](JointRecord& j) { j.pattern.reset(); })).order);
  EXPECT_FALSE(answer(plate([](JointRecord& j) { j.quantity = 1; })).order);
  EXPECT_FALSE(answer(plate([](JointRecord& j) { j.quantity = 30; })).order);
}

TEST(JointOrder, IsLeftToAPageThatPrintsOne) {
  EXPECT_FALSE(answer(plate([](JointRecord& j) { j.figure.sequence = "1, 4, 2, 3"; })).order);
  EXPECT_TRUE(answer(plate([](JointRecord& j) { j.figure.sequence = "crosswise in 2 passes"; })).order);
  EXPECT_TRUE(prints_an_order("1-2", 2));
  EXPECT_FALSE(prints_an_order("", 4));
}

TEST(JointSlot, IsHintedAtWithASplitPin) {
  EXPECT_FALSE(answer(plate()).slot);
  const JointAnswer pinned = answer(plate([](JointRecord& j) { j.locks = {{"split-pin", {}}}; }));
  ASSERT_TRUE(pinned.slot);
  EXPECT_DOUBLE_EQ(quantity::in_degrees(pinned.slot->angle), 60);
  // Four times the 15° of the figure, on one stack.
  EXPECT_NEAR(pinned.slot->gain->likely / pinned.figure.turned->added.likely, 4, 1e-9);
  EXPECT_THAT(text_of(pinned), HasSubstr("never loosen to align"));
}

TEST(JointSlot, SaysWhatIsMissing) {
  const JointAnswer pinned = answer(plate([](JointRecord& j) {
    j.locks = {{"split-pin", {}}};
    j.grip.reset();
  }));
  EXPECT_EQ(pinned.slot->unknown_because, "the record has no grip");
  EXPECT_THAT(text_of(pinned), HasSubstr("what that adds is not known (the record has no grip)"));
}

} // namespace
} // namespace clampwright::specdb
