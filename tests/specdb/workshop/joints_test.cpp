// SPDX-License-Identifier: GPL-3.0-or-later
//
// The joints are those of the demo workshop (DEMO.md, rows 1, 3, 8, 18, 23, 32).
#include "specdb/workshop/joints.hpp"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
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
    EXPECT_EQ(joint->machine, row.machine) << row.slug;
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
  const Problem problem = problem_of(find_joint(demo.open(), "bolt"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_EQ(problem.code, "several-joints");
  EXPECT_THAT(problem.message, HasSubstr("4 joints fit")); // mounts, pulley, frame and pivot bolts
  EXPECT_THAT(problem.hint, AllOf(HasSubstr("pump/mounts"), HasSubstr("winch/pulley-bolt"),
                                  HasSubstr("winch/frame-bolts"), HasSubstr("winch/brake-pivot")));
}

TEST(Joints, AreRefusedWithAWayOnIfNoneFits) {
  const test::DemoFile demo;
  const Workshop workshop = demo.open();
  for (const char* text : {"propeller", "", "pump/", "%", "pump/clutch-hub' OR '1'='1"}) {
    const Problem problem = problem_of(find_joint(workshop, text));
    EXPECT_EQ(problem.trouble, Trouble::no_such) << text;
    EXPECT_FALSE(problem.hint.empty()) << text;
  }
}

TEST(Joints, BeginWithTheClutchHub) {
  const test::DemoFile demo;
  EXPECT_EQ(first_joint(demo.open()), "pump/clutch-hub");
}

TEST(Joints, HaveNoFirstInAFileWithoutAny) {
  const test::Scratch scratch;
  ASSERT_TRUE(Workshop::create(scratch / "w", [](SQLite::Database&) {}).has_value());
  EXPECT_FALSE(first_joint(*Workshop::open(scratch / "w")).has_value());
}

TEST(Joints, KnowTheCrankTheyAreOn) {
  const test::DemoFile demo;
  const auto joint = joint_of_slug(demo.open(), "pump/clutch-hub");
  ASSERT_TRUE(joint && joint->crank);
  EXPECT_TRUE(joint->on_crank);
  EXPECT_NEAR(quantity::in_millimetres(joint->crank->radius), 22.0, 1e-9); // half of stroke 44
  EXPECT_NEAR(quantity::in_millimetres(joint->crank->rod), 88.0, 1e-9);
}

TEST(Joints, KnowNoCrankWhereTheMachineHasNone) {
  const test::DemoFile demo;
  const auto joint = joint_of_slug(demo.open(), "winch/pulley-bolt");
  ASSERT_TRUE(joint.has_value());
  EXPECT_TRUE(joint->on_crank);
  EXPECT_FALSE(joint->crank.has_value());
}

TEST(Joints, LeaveEmptyWhatThePageDoesNotSay) {
  const test::DemoFile demo;
  const auto joint = joint_of_slug(demo.open(), "winch/brake-pivot");
  ASSERT_TRUE(joint.has_value());
  EXPECT_FALSE(joint->figure.value || joint->figure.unit || joint->figure.low || joint->figure.angle_deg);
  EXPECT_FALSE(joint->figure.sequence || joint->figure.recheck || joint->holding || joint->face_outer);
}

TEST(Joints, ShowTheFigureInForce) {
  const test::Scratch scratch;
  const auto made = Workshop::create(scratch / "w", [](SQLite::Database& database) {
    run(database, "INSERT INTO source VALUES (1,'s','s','s','printed')");
    run(database, "INSERT INTO machine VALUES (1,'m','m','m',NULL,NULL,NULL,NULL)");
    run(database, "INSERT INTO assembly VALUES (1,1,'a')");
    run(database,
        "INSERT INTO joint VALUES (1,'m/j',1,'j','bolt',1,'M8','8.8','head',NULL,NULL,NULL,NULL,'none',0,'x',NULL,'')");
    for (const char* row :
         {"(1,1,'20 N·m',20.0,'N.m',NULL,NULL,NULL,NULL,NULL,'dry',NULL,NULL,NULL,1,'p','maker',NULL)",
          "(2,1,'22 N·m',22.0,'N.m',NULL,NULL,NULL,NULL,NULL,'dry',NULL,NULL,NULL,1,'p','maker',1)",
          "(3,1,'24 N·m',24.0,'N.m',NULL,NULL,NULL,NULL,NULL,'dry',NULL,NULL,NULL,1,'p','maker',2)"})
      run(database, (std::string("INSERT INTO figure VALUES ") + row).c_str());
    run(database,
        "INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) VALUES (1,'j','a','m','M8','')");
  });
  ASSERT_TRUE(made.has_value());
  EXPECT_EQ(joint_of_slug(*Workshop::open(scratch / "w"), "m/j")->figure.printed, "24 N·m");
}

} // namespace
} // namespace clampwright::specdb
