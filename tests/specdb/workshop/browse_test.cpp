// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/browse.hpp"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/workshop/joints.hpp"
#include "tests/specdb/demo_file.hpp"
#include "tests/specdb/small_workshop.hpp"

namespace clampwright::specdb {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

// 17, 16 and 3 joints (DEMO.md).
TEST(Browse, ListsTheMachinesOfTheDemo) {
  const test::DemoFile demo;
  const auto machines = machines_with_counts(demo.open());
  ASSERT_THAT(machines, SizeIs(3));
  EXPECT_EQ(machines[0].slug, "pump");
  EXPECT_EQ(machines[0].name, "Pump Marrowfen P3");
  EXPECT_EQ(machines[0].kind, "flood pump, two-stroke single");
  EXPECT_EQ(machines[0].joints, 17);
  EXPECT_EQ(machines[1].joints, 16);
  EXPECT_EQ(machines[2].joints, 3);
}

TEST(Browse, ListsAMachineThatHasNoJoints) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", [](SQLite::Database& database) {
    add_machine(database, {.slug = "m", .name = "machine", .kind = "saw"});
  });
  const auto workshop = Workshop::open(scratch / "w");
  ASSERT_THAT(machines_with_counts(*workshop), SizeIs(1));
  EXPECT_EQ(machines_with_counts(*workshop)[0].joints, 0);
  EXPECT_THAT(joints_of_machine(*workshop, "m"), IsEmpty());
  EXPECT_THAT(joints_of_machine(*workshop, "n"), IsEmpty());
}

TEST(Browse, ListsTheJointsOfAMachineByAssembly) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", [](SQLite::Database& database) {
    add_machine(database, {.slug = "m", .name = "machine", .kind = "saw"});
    add_machine(database, {.slug = "n", .name = "another", .kind = "saw"});
    for (const auto& [slug, assembly] :
         {std::pair{"m/a", "engine"}, std::pair{"m/b", "bar"}, std::pair{"m/c", "engine"}}) {
      JointRecord joint = test::small_joint(slug, "m");
      joint.assembly = assembly;
      add_joint(database, joint);
    }
    add_joint(database, test::small_joint("n/d", "n"));
    ASSERT_TRUE(revise_figure(
        database, 1,
        {.printed = "10 N·m", .value = 10.0, .unit = "N.m", .source_slug = "sheet", .source = {.where = "page 2"}}));
  });
  const auto joints = joints_of_machine(*Workshop::open(scratch / "w"), "M");
  ASSERT_THAT(joints, SizeIs(3));
  EXPECT_EQ(joints[0].joint, "m/a");
  EXPECT_EQ(joints[0].torque_printed, "10 N·m");
  EXPECT_EQ(joints[1].joint, "m/c");
  EXPECT_EQ(joints[1].torque_printed, "9 N·m");
  EXPECT_EQ(joints[2].joint, "m/b");
  EXPECT_EQ(joints[2].assembly, "bar");
}

} // namespace
} // namespace clampwright::specdb
