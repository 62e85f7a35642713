// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is entered into a workshop file comes out again, and nothing that once stood there is lost.
#include "specdb/workshop/entries.hpp"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/compounds.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/wrenches.hpp"
#include "tests/core/problem_of.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::ElementsAre;
using testing::SizeIs;

FigureRecord figure(std::string printed, double value) {
  return {.printed = std::move(printed), .value = value, .unit = "N.m", .source_slug = "S", .source = {.where = "p 1"}};
}

// A joint with everything that a record can hold.
JointRecord full_joint() {
  JointRecord joint{.slug = "m/j",
                    .assembly = "an assembly",
                    .name = "a joint",
                    .quantity = 3,
                    .thread = "M8",
                    .strength_class = "8.8",
                    .nut_class = "8",
                    .turned = "nut",
                    .head = "flange",
                    .washer = "16x8.4mm",
                    .seat = "a seat",
                    .seat_material = "steel",
                    .soft_material = "wood",
                    .taper = "1:10",
                    .mating_part = "case",
                    .mating_material = "cast-aluminium",
                    .engagement = "12 mm",
                    .bolt_length = "30 mm",
                    .grip = "16 mm",
                    .hole_depth = "18 mm",
                    .duty = "wet",
                    .pattern = "circle",
                    .must_clamp = "9 kN",
                    .must_clamp_because = "it must not slip",
                    .locks = {{"locking-nut-insert", {}}, {"compound-low", "a note"}},
                    .running_torque = "1 N·m",
                    .drive = "13 mm hexagon",
                    .neighbours = {{"exhaust", {}, 300.0}, {"seal", 120.0, {}}},
                    .on_crank = true,
                    .shaft_turn = "clockwise",
                    .driver = "part",
                    .seen_from = "looking at it",
                    .holding = "by hand",
                    .words = "other words",
                    .machine = {.slug = "m"}};
  joint.figure = figure("22 N·m", 22.0);
  joint.figure.tolerance = "± 2";
  joint.figure.low = 20.0;
  joint.figure.high = 24.0;
  joint.figure.method = "torque-angle";
  joint.figure.angle_deg = 30.0;
  joint.figure.reading = "read so";
  joint.figure.surfaces = "oiled";
  joint.figure.friction = "0.12";
  joint.figure.condition = "clean";
  joint.figure.temperature = "cold";
  joint.figure.sequence = "crosswise";
  joint.figure.passes = {10.0, 22.0};
  joint.figure.running_torque_rule = "included";
  joint.figure.reuse_rule = "never";
  joint.figure.reuse = "new each time";
  joint.figure.recheck = {{"after an hour", 1.0, {}, {}}, {"after a strike", {}, {}, "strike"}};
  joint.figure.status = "shop";
  return joint;
}

// A file with machine "m", source "S" and what `fill` enters.
Workshop workshop_with(const test::Scratch& scratch, const std::function<void(SQLite::Database&)>& fill) {
  const auto made = Workshop::create(scratch / "w", [&](SQLite::Database& database) {
    add_source(database, {"S", "a title", "an edition", Known::common_practice});
    add_machine(database, {.slug = "m",
                           .name = "machine",
                           .kind = "a kind",
                           .plug_reach_mm = 12.7,
                           .regulated_by = "a rule",
                           .crown_depth_mm = 21.0,
                           .stop_length_mm = 26.0,
                           .stop_tip_mm = 9.0,
                           .stop_tip_limit_MPa = 45.0,
                           .plug_thread = "M14x1.25",
                           .head_material = "cast-aluminium"});
    fill(database);
  });
  if (!made) throw std::runtime_error(made.error().message);
  return std::move(*Workshop::open(scratch / "w"));
}

TEST(Entries, ComeOutAsTheyWentIn) {
  const test::Scratch scratch;
  const JointRecord in = full_joint();
  const Workshop workshop = workshop_with(scratch, [&](SQLite::Database& database) { add_joint(database, in); });
  const auto out = joint_of_slug(workshop, "m/j");
  ASSERT_TRUE(out.has_value());
  EXPECT_EQ(out->assembly, in.assembly);
  EXPECT_EQ(out->name, in.name);
  EXPECT_EQ(out->quantity, in.quantity);
  EXPECT_EQ(out->nut_class, in.nut_class);
  EXPECT_EQ(out->turned, in.turned);
  EXPECT_EQ(out->head, in.head);
  EXPECT_EQ(out->washer, in.washer);
  EXPECT_EQ(out->seat, in.seat);
  EXPECT_EQ(out->seat_material, in.seat_material);
  EXPECT_EQ(out->soft_material, in.soft_material);
  EXPECT_EQ(out->taper, in.taper);
  EXPECT_EQ(out->mating_part, in.mating_part);
  EXPECT_EQ(out->mating_material, in.mating_material);
  EXPECT_EQ(out->engagement, in.engagement);
  EXPECT_EQ(out->bolt_length, in.bolt_length);
  EXPECT_EQ(out->grip, in.grip);
  EXPECT_EQ(out->hole_depth, in.hole_depth);
  EXPECT_EQ(out->duty, in.duty);
  EXPECT_EQ(out->pattern, in.pattern);
  EXPECT_EQ(out->must_clamp, in.must_clamp);
  EXPECT_EQ(out->must_clamp_because, in.must_clamp_because);
  EXPECT_EQ(out->running_torque, in.running_torque);
  EXPECT_EQ(out->drive, in.drive);
  EXPECT_EQ(out->on_crank, in.on_crank);
  EXPECT_EQ(out->shaft_turn, in.shaft_turn);
  EXPECT_EQ(out->driver, in.driver);
  EXPECT_EQ(out->seen_from, in.seen_from);
  EXPECT_EQ(out->holding, in.holding);
  EXPECT_EQ(out->words, in.words);
  EXPECT_EQ(out->machine.plug_reach_mm, 12.7);
  EXPECT_EQ(out->machine.regulated_by, "a rule");
  EXPECT_EQ(out->machine.crown_depth_mm, 21.0);
  EXPECT_EQ(out->machine.stop_length_mm, 26.0);
  EXPECT_EQ(out->machine.stop_tip_mm, 9.0);
  EXPECT_EQ(out->machine.stop_tip_limit_MPa, 45.0);
  EXPECT_EQ(out->machine.plug_thread, "M14x1.25");
  EXPECT_EQ(out->machine.head_material, "cast-aluminium");
}

TEST(Entries, KeepLocksAndNeighbours) {
  const test::Scratch scratch;
  const auto out = joint_of_slug(
      workshop_with(scratch, [](SQLite::Database& database) { add_joint(database, full_joint()); }), "m/j");
  ASSERT_TRUE(out && out->locks.size() == 2 && out->neighbours.size() == 2);
  EXPECT_EQ(out->locks[0].lock, "locking-nut-insert");
  EXPECT_EQ(out->locks[1].note, "a note");
  EXPECT_EQ(out->neighbours[0].runs_at_degC, 300.0);
  EXPECT_EQ(out->neighbours[1].bears_degC, 120.0);
}

TEST(Entries, KeepTheWholeFigure) {
  const test::Scratch scratch;
  const FigureRecord in = full_joint().figure;
  const auto joint = joint_of_slug(
      workshop_with(scratch, [](SQLite::Database& database) { add_joint(database, full_joint()); }), "m/j");
  ASSERT_TRUE(joint.has_value());
  const FigureRecord& out = joint->figure;
  EXPECT_EQ(out.printed, in.printed);
  EXPECT_EQ(out.value, in.value);
  EXPECT_EQ(out.tolerance, in.tolerance);
  EXPECT_EQ(out.low, in.low);
  EXPECT_EQ(out.high, in.high);
  EXPECT_EQ(out.method, in.method);
  EXPECT_EQ(out.angle_deg, in.angle_deg);
  EXPECT_EQ(out.reading, in.reading);
  EXPECT_EQ(out.surfaces, in.surfaces);
  EXPECT_EQ(out.friction, in.friction);
  EXPECT_EQ(out.condition, in.condition);
  EXPECT_EQ(out.temperature, in.temperature);
  EXPECT_EQ(out.sequence, in.sequence);
  EXPECT_EQ(out.running_torque_rule, in.running_torque_rule);
  EXPECT_EQ(out.reuse_rule, in.reuse_rule);
  EXPECT_EQ(out.reuse, in.reuse);
  EXPECT_EQ(out.status, in.status);
  EXPECT_THAT(out.passes, ElementsAre(10.0, 22.0));
  ASSERT_THAT(out.recheck, SizeIs(2));
  EXPECT_EQ(out.recheck[0].hours, 1.0);
  EXPECT_EQ(out.recheck[1].event, "strike");
  EXPECT_EQ(out.source, (Source{"a title", "an edition", "p 1", Known::common_practice}));
}

TEST(Figures, StandSideBySideWhereNeitherTakesTheOthersPlace) {
  const test::Scratch scratch;
  const auto joint = joint_of_slug(workshop_with(scratch,
                                                 [](SQLite::Database& database) {
                                                   JointRecord in = full_joint();
                                                   in.beside = {figure("25 N·m", 25.0), figure("27 N·m", 27.0)};
                                                   add_joint(database, in);
                                                 }),
                                   "m/j");
  ASSERT_TRUE(joint && joint->beside.size() == 2);
  EXPECT_EQ(joint->figure.printed, "22 N·m");
  EXPECT_EQ(joint->beside[0].printed, "25 N·m");
  EXPECT_EQ(joint->beside[1].printed, "27 N·m");
  EXPECT_TRUE(joint->superseded.empty());
}

TEST(Figures, GiveWayToTheirRevisionAndStayInTheFile) {
  const test::Scratch scratch;
  const auto joint = joint_of_slug(workshop_with(scratch,
                                                 [](SQLite::Database& database) {
                                                   add_joint(database, full_joint());
                                                   ASSERT_TRUE(revise_figure(database, 1, figure("24 N·m", 24.0)));
                                                   ASSERT_TRUE(revise_figure(database, 2, figure("26 N·m", 26.0)));
                                                 }),
                                   "m/j");
  ASSERT_TRUE(joint && joint->superseded.size() == 2);
  EXPECT_EQ(joint->figure.printed, "26 N·m");
  EXPECT_TRUE(joint->beside.empty());
  EXPECT_EQ(joint->superseded[0].printed, "24 N·m");
  EXPECT_EQ(joint->superseded[1].printed, "22 N·m");
}

TEST(Figures, AreRevisedOnceOnly) {
  const test::Scratch scratch;
  (void)workshop_with(scratch, [](SQLite::Database& database) {
    add_joint(database, full_joint());
    ASSERT_TRUE(revise_figure(database, 1, figure("24 N·m", 24.0)));
    const Problem problem = problem_of(revise_figure(database, 1, figure("25 N·m", 25.0)));
    EXPECT_EQ(problem.trouble, Trouble::busy);
    EXPECT_EQ(problem.code, "revised-meanwhile");
  });
}

TEST(Figures, ThatAreNotThereCannotBeRevised) {
  const test::Scratch scratch;
  (void)workshop_with(scratch, [](SQLite::Database& database) {
    EXPECT_EQ(problem_of(revise_figure(database, 7, figure("24 N·m", 24.0))).code, "no-such-figure");
  });
}

TEST(Wrenches, ComeOutAsTheyWentIn) {
  const test::Scratch scratch;
  const WrenchRecord in{
      .slug = "W",
      .name = "a wrench",
      .low = 10,
      .high = 60,
      .unit = "lbf.ft",
      .step = 0.5,
      .accuracy_basis = "a sheet",
      .turns = "clockwise",
      .due_on = "2026-12-31",
      .accuracy_class = "a class",
      .arm_mm = 300.0,
      .calibrated_on = "2026-01-31",
      .calibration_months = 12,
      .calibration_cycles = 5000,
      .events = {{"2026-02-01", "used", "head nuts", 4}, {"2026-03-01", "drop", "off the bench", {}}}};
  const Workshop workshop = workshop_with(scratch, [&](SQLite::Database& database) { add_wrench(database, in); });
  for (const char* name : {"W", "w", "a wrench", " A Wrench "}) {
    const auto out = find_wrench(workshop, name);
    ASSERT_TRUE(out.has_value()) << name;
    EXPECT_EQ(out->unit, "lbf.ft");
    EXPECT_EQ(out->step, 0.5);
    EXPECT_EQ(out->turns, "clockwise");
    EXPECT_EQ(out->due_on, "2026-12-31");
    EXPECT_EQ(out->accuracy_class, "a class");
    EXPECT_EQ(out->arm_mm, 300.0);
    EXPECT_EQ(out->calibrated_on, "2026-01-31");
    EXPECT_EQ(out->calibration_months, 12);
    EXPECT_EQ(out->calibration_cycles, 5000);
    ASSERT_THAT(out->events, SizeIs(2));
    EXPECT_EQ(out->events[0].cycles, 4);
    EXPECT_EQ(out->events[1].kind, "drop");
    EXPECT_EQ(out->events[1].words, "off the bench");
  }
}

TEST(Wrenches, AreRevisedInTheirPlaceAndKeepTheirEvents) {
  const test::Scratch scratch;
  const Workshop workshop = workshop_with(scratch, [](SQLite::Database& database) {
    WrenchRecord wrench{.slug = "W", .name = "a wrench", .low = 10, .high = 60, .accuracy_basis = "x"};
    add_wrench(database, wrench);
    wrench.high = 80;
    wrench.retired_on = "2026-05-01";
    wrench.retired_because = "worn out";
    revise_wrench(database, wrench);
    add_wrench_event(database, "W", {"2026-05-01", "retired", "worn out", {}});
  });
  const auto out = find_wrench(workshop, "W");
  ASSERT_TRUE(out.has_value());
  EXPECT_EQ(out->high, 80);
  EXPECT_EQ(out->retired_because, "worn out");
  ASSERT_THAT(out->events, SizeIs(1));
  EXPECT_EQ(out->events[0].on_date, "2026-05-01");
}

TEST(Compounds, ComeOutAsTheyWentInAndAreRevised) {
  const test::Scratch scratch;
  const Workshop workshop = workshop_with(scratch, [](SQLite::Database& database) {
    CompoundRecord compound{.slug = "red-box",
                            .label = "the bottle in the box",
                            .grade = "compound-medium",
                            .batch = "B 7",
                            .expires_on = "2027-06-30",
                            .opened_on = "2026-06-30",
                            .bears_degC = 120.0,
                            .sheet = "full strength after a day",
                            .events = {{"2026-06-30", "note", "opened", {}}}};
    add_compound(database, compound);
    compound.batch = "B 8";
    revise_compound(database, compound);
    add_compound_event(database, "red-box", {"2026-07-01", "revised", "batch: B 7 -> B 8", {}});
  });
  for (const char* name : {"RED-BOX", "the bottle in the box"}) {
    const auto out = find_compound(workshop, name);
    ASSERT_TRUE(out.has_value()) << name;
    EXPECT_EQ(out->grade, "compound-medium");
    EXPECT_EQ(out->batch, "B 8");
    EXPECT_EQ(out->expires_on, "2027-06-30");
    EXPECT_EQ(out->opened_on, "2026-06-30");
    EXPECT_EQ(out->bears_degC, 120.0);
    EXPECT_EQ(out->sheet, "full strength after a day");
    ASSERT_THAT(out->events, SizeIs(2));
    EXPECT_EQ(out->events[1].words, "batch: B 7 -> B 8");
  }
  EXPECT_EQ(problem_of(find_compound(workshop, "green")).code, "no-such-name");
}

TEST(Wrenches, AreRefusedWithTheList) {
  const test::Scratch scratch;
  const Workshop workshop = workshop_with(scratch, [](SQLite::Database& database) {
    add_wrench(database, {.slug = "W", .name = "a wrench", .low = 10, .high = 60, .accuracy_basis = "x"});
  });
  const Problem problem = problem_of(find_wrench(workshop, "Q"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_THAT(problem.hint, testing::HasSubstr("known are W"));
}

TEST(Wrenches, AreRefusedWhereThereAreNone) {
  const test::Scratch scratch;
  const Workshop workshop = workshop_with(scratch, [](SQLite::Database&) {});
  EXPECT_EQ(problem_of(find_wrench(workshop, "A")).code, "no-such-wrench");
}

} // namespace
} // namespace clampwright::specdb
