// SPDX-License-Identifier: GPL-3.0-or-later
//
// The joints are those of the demo workshop (DEMO.md, rows 1, 3, 8, 18, 23, 32).
#include "specdb/workshop/joints.hpp"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/problem_of.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::AllOf;
using testing::HasSubstr;

struct Row {
  const char* slug;
  const char* words; // that fit this joint only
  const char* machine;
  const char* name;
  const char* kind;
  int quantity;
  const char* thread;
  const char* strength_class;
  const char* printed;
  const char* surfaces;
  const char* status;
};

// clang-format off
constexpr Row k_joints[] = {
    {"pump/clutch-hub",   "clutch hub",    "Pump Marrowfen P3", "clutch hub",         "hub",  1, "M14x1.5-LH", "unknown", "42 N·m",         "dry",        "maker"},
    {"pump/head-nuts",    "head nuts",     "Pump Marrowfen P3", "cylinder head nuts", "bolt", 4, "M8",         "8.8",     "17 N·m",         "oiled",      "maker"},
    {"pump/mounts",       "mounts",        "Pump Marrowfen P3", "engine mount bolts", "bolt", 4, "M10",        "8.8",     "3,4 mkg",        "oiled",      "maker"},
    {"winch/pulley-bolt", "drive pulley",  "Winch Tallisk W1",  "drive pulley bolt",  "bolt", 1, "M10x1.25",   "8.8",     "46 N·m",         "dry",        "maker"},
    {"winch/frame-bolts", "frame chassis", "Winch Tallisk W1",  "frame bolts",        "bolt", 8, "3/8-24 UNF", "SAE 5",   "30 lbf·ft",      "zinc-dry",   "maker"},
    {"winch/brake-pivot", "pivot",         "Winch Tallisk W1",  "brake pivot bolt",   "bolt", 1, "M8",         "8.8",     "tighten firmly", "not-stated", "none"},
};
// clang-format on

TEST(Joints, AreFoundBySlug) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_joints) {
    const auto joint = joint_of_slug(workshop, row.slug);
    ASSERT_TRUE(joint.has_value()) << row.slug;
    EXPECT_EQ(joint->slug, row.slug);
  }
}

TEST(Joints, HaveTheirOwnWords) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_joints) {
    const auto joint = joint_of_slug(workshop, row.slug);
    ASSERT_TRUE(joint.has_value()) << row.slug;
    EXPECT_EQ(joint->machine.name, row.machine) << row.slug;
    EXPECT_EQ(joint->name, row.name) << row.slug;
    EXPECT_EQ(joint->kind, row.kind) << row.slug;
    EXPECT_EQ(joint->quantity, row.quantity) << row.slug;
    EXPECT_EQ(joint->thread, row.thread) << row.slug;
    EXPECT_EQ(joint->strength_class, row.strength_class) << row.slug;
  }
}

TEST(Joints, HaveTheirFigure) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_joints) {
    const auto joint = joint_of_slug(workshop, row.slug);
    ASSERT_TRUE(joint.has_value()) << row.slug;
    EXPECT_EQ(joint->figure.printed, row.printed) << row.slug;
    EXPECT_EQ(joint->figure.surfaces, row.surfaces) << row.slug;
    EXPECT_EQ(joint->figure.status, row.status) << row.slug;
    EXPECT_EQ(joint->figure.value.has_value(), std::string_view(row.status) != "none") << row.slug;
    EXPECT_THAT(joint->figure.source.title, HasSubstr("invented")) << row.slug;
  }
}

TEST(Joints, AreFoundByWordsThatFitOneOnly) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const Row& row : k_joints) {
    const auto joint = find_joint(workshop, row.words);
    ASSERT_TRUE(joint.has_value()) << row.words << ": " << joint.error().hint;
    EXPECT_EQ(joint->slug, row.slug) << row.words;
  }
}

TEST(Joints, AreFoundBySlugInAnyCaseAndWithSpaces) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const char* text : {"PUMP/Clutch-Hub", " pump/clutch-hub ", "\tpump/clutch-hub"}) {
    const auto joint = find_joint(workshop, text);
    ASSERT_TRUE(joint.has_value()) << text;
    EXPECT_EQ(joint->slug, "pump/clutch-hub") << text;
  }
}

TEST(Joints, AreRefusedWithTheCandidatesIfSeveralFit) {
  const test::DemoFile demo;
  const Problem problem = problem_of(find_joint(demo.open(), "cylinder nuts"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_EQ(problem.code, "several-joints");
  EXPECT_THAT(problem.message, HasSubstr("2 joints fit")); // head nuts and base nuts
  EXPECT_THAT(problem.hint, AllOf(HasSubstr("pump/head-nuts"), HasSubstr("pump/base-nuts")));
}

TEST(Joints, AreRefusedWithAWayOnIfNoneFits) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const char* text : {"locomotive", "", "pump/x", "%", "pump/clutch-hub' OR '1'='1"}) {
    const Problem problem = problem_of(find_joint(workshop, text));
    EXPECT_EQ(problem.trouble, Trouble::no_such) << text;
    EXPECT_FALSE(problem.hint.empty()) << text;
  }
}

TEST(Joints, BeginWithTheClutchHub) {
  const test::DemoFile demo;
  EXPECT_EQ(joint_slugs(demo.open()).front(), "pump/clutch-hub");
}

TEST(Joints, AreNoneInAFileWithoutAny) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", [](SQLite::Database&) {}).has_value());
  EXPECT_TRUE(joint_slugs(*Workshop::open(scratch / "w")).empty());
}

TEST(Joints, KnowTheMachineTheyAreOn) {
  const test::DemoFile demo;
  const auto joint = joint_of_slug(demo.open(), "pump/clutch-hub");
  ASSERT_TRUE(joint.has_value());
  EXPECT_TRUE(joint->on_crank);
  EXPECT_EQ(joint->machine.stroke_mm, 44.0);
  EXPECT_EQ(joint->machine.rod_mm, 88.0);
  EXPECT_EQ(joint->machine.crank_turn, "clockwise");
  EXPECT_EQ(joint->machine.crank_seen_from, "looking at the clutch");
  EXPECT_EQ(joint->machine.serial_from, "P3-0400");
}

TEST(Joints, LeaveEmptyWhatThePageDoesNotSay) {
  const test::DemoFile demo;
  const auto joint = joint_of_slug(demo.open(), "winch/brake-pivot");
  ASSERT_TRUE(joint.has_value());
  EXPECT_FALSE(joint->figure.value || joint->figure.unit || joint->figure.low || joint->figure.angle_deg);
  EXPECT_FALSE(joint->figure.sequence || joint->holding || joint->washer || joint->face_outer);
}

} // namespace
} // namespace clampwright::specdb
