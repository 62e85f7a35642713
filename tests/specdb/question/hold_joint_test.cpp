// SPDX-License-Identifier: GPL-3.0-or-later
//
// Holding a crank by the record of a machine: what is on record is not asked for, what is not is asked for by name.
#include "specdb/question/hold_joint.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/workshop/joints.hpp"
#include "tests/core/problem_of.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;

JointRecord joint(const char* slug) {
  const test::DemoFile demo;
  auto found = joint_of_slug(demo.open(), slug);
  if (!found) throw std::runtime_error(slug);
  return std::move(*found);
}

JointAnswer answer_of(const JointRecord& record) {
  auto found = answer_for(Catalogue(), record);
  if (!found) throw std::runtime_error(found.error().message);
  return std::move(*found);
}

Result<HoldReply> held(const JointRecord& record, HoldQuestion typed = {}) {
  const auto question = hold_for_joint(answer_of(record), std::move(typed));
  if (!question) return Refusal(question.error());
  return answer_hold(Catalogue(), *question);
}

MachineRecord bare_machine() { return {.slug = "m", .name = "Bare machine", .stroke_mm = 44.0, .rod_mm = 88.0}; }

const finding::Finding& crank_reaction(const JointAnswer& answer) {
  return *std::ranges::find(answer.findings, finding::Code::crank_reaction, &finding::Finding::code);
}

} // namespace

// By hand: x = 9 mm of a stroke of 44 and a rod of 88 mm: cos t = 1 - 9·167/(2·22·101) = 0.66179, t = 48.564°;
// sin p = sin t/4 = 0.18742, p = 10.802°; lever 22·sin(59.366°)/cos(10.802°) = 19.270 mm; 42 N·m make 2179.6 N.
TEST(HoldOfAJoint, IsReckonedFromTheRecordAlone) {
  const auto reply = held(joint("pump/clutch-hub"));
  ASSERT_TRUE(reply) << reply.error().message;
  const auto& stop = *reply->answer.stop;
  EXPECT_NEAR(quantity::in_newtons(stop.fitting.forces.piston), 2179.6, 1.0);
  // 60 MPa on 78.540 mm² is 4712.4 N: 90.81 N·m.
  EXPECT_NEAR(quantity::in_newton_metres(stop.governs->torque), 90.81, 0.05);
}

TEST(HoldOfAJoint, DoesNotTakeAFigureThatCannotBeUsed) {
  JointRecord record = joint("pump/clutch-hub");
  record.figure.value.reset();
  record.figure.unit.reset();
  record.figure.printed = "tighten firmly";
  const Problem none = problem_of(held(record));
  EXPECT_EQ(none.field, "--torque");
  EXPECT_THAT(none.message, HasSubstr("tighten firmly"));
  HoldQuestion typed;
  typed.torque = "40Nm";
  EXPECT_TRUE(held(record, typed));
  record = joint("pump/clutch-hub");
  record.figure.angle_deg = 60.0;
  EXPECT_THAT(problem_of(held(record)).message, HasSubstr("an angle follows"));
}

TEST(HoldOfAJoint, IsRefusedOffTheCrank) { EXPECT_EQ(problem_of(held(joint("pump/coil"))).code, "not-on-crank"); }

TEST(HoldRecord, GivesAPlugThreadWhollyOrNotAtAll) {
  MachineRecord machine = bare_machine();
  machine.plug_reach_mm = 12.7;
  EXPECT_FALSE(with_record({}, machine).plug_engaged);
  machine.plug_thread = "M14x1.25";
  machine.head_material = "cast-aluminium";
  EXPECT_EQ(with_record({}, machine).plug_engaged, "12.7mm");
}

TEST(HoldRecord, GivesOneWayToSayWhereThePistonStands) {
  MachineRecord machine = bare_machine();
  machine.stop_length_mm = 23.0;
  machine.crown_depth_mm = 14.0;
  HoldQuestion typed;
  typed.angle = "30deg";
  EXPECT_FALSE(with_record(typed, machine).stop_length);
  typed = {};
  typed.stop_length = "25mm";
  EXPECT_EQ(with_record(typed, machine).stop_length, "25mm");
  EXPECT_EQ(with_record(typed, machine).crown_depth, "14mm");
}

TEST(HoldRecord, GivesATipLimitOnlyWithATip) {
  MachineRecord machine = bare_machine();
  machine.stop_tip_limit_MPa = 60.0;
  EXPECT_FALSE(with_record({}, machine).tip_limit);
  machine.stop_tip_mm = 10.0;
  EXPECT_EQ(with_record({}, machine).tip_limit, "60MPa");
}

// Show goes by the stop on record, and where there is none by its example of 15°.
TEST(ShowOnTheCrank, TakesTheRecordedStopInThePlaceOfTheExample) {
  JointRecord record = joint("pump/clutch-hub");
  const JointAnswer with = answer_of(record);
  ASSERT_TRUE(with.stop);
  EXPECT_EQ(crank_reaction(with).facts.size(), 3U);
  record.machine.crown_depth_mm.reset();
  const JointAnswer without = answer_of(record);
  EXPECT_FALSE(without.stop);
  ASSERT_EQ(crank_reaction(without).facts.size(), 2U);
  EXPECT_DOUBLE_EQ(quantity::in_degrees(std::get<quantity::Angle>(crank_reaction(without).facts[0])), 15.0);
}

// A stop that does not reach the piston is no stop: nothing is made of it.
TEST(ShowOnTheCrank, MakesNothingOfAStopThatDoesNotReach) {
  JointRecord record = joint("pump/clutch-hub");
  record.machine.stop_length_mm = 13.0;
  EXPECT_FALSE(answer_of(record).stop);
  EXPECT_EQ(problem_of(held(record)).field, "--stop-length");
}

} // namespace clampwright::specdb
