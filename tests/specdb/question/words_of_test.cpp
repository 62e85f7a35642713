// SPDX-License-Identifier: GPL-3.0-or-later
//
// The words of a record enter it again as it is: a form that is filled with them and sent off unchanged changes
// nothing.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/question/figure_record.hpp"
#include "specdb/question/joint_record.hpp"
#include "specdb/question/machine_record.hpp"
#include "specdb/question/wrench_record.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/machines.hpp"
#include "specdb/workshop/sources.hpp"
#include "specdb/workshop/wrenches.hpp"
#include "tests/specdb/demo_file.hpp"

namespace clampwright::specdb {
namespace {

using testing::IsEmpty;

// Every digit, which `differences` need not show.
void expect_same_numbers(const MachineRecord& one, const MachineRecord& other) {
  EXPECT_EQ(one.stroke_mm, other.stroke_mm);
  EXPECT_EQ(one.rod_mm, other.rod_mm);
  EXPECT_EQ(one.port_below_top_mm, other.port_below_top_mm);
  EXPECT_EQ(one.plug_reach_mm, other.plug_reach_mm);
  EXPECT_EQ(one.crown_depth_mm, other.crown_depth_mm);
  EXPECT_EQ(one.stop_length_mm, other.stop_length_mm);
  EXPECT_EQ(one.stop_tip_mm, other.stop_tip_mm);
  EXPECT_EQ(one.stop_tip_limit_MPa, other.stop_tip_limit_MPa);
}

TEST(WordsOf, MachinesOfTheDemoChangeNothing) {
  const test::DemoFile demo;
  const Catalogue catalogue;
  for (const MachineRecord& machine : all_machines(demo.open())) {
    const auto again = with_words(catalogue, machine, words_of(machine));
    ASSERT_TRUE(again.has_value()) << machine.slug << again.error().message;
    EXPECT_THAT(differences(machine, *again), IsEmpty());
    expect_same_numbers(machine, *again);
  }
}

TEST(WordsOf, AMachineMakeItFromNothing) {
  const test::DemoFile demo;
  const auto pump = machine_of_slug(demo.open(), "pump");
  const auto again = with_words(Catalogue(), {}, words_of(*pump));
  ASSERT_TRUE(again.has_value()) << again.error().message;
  EXPECT_EQ(again->name, "Pump Marrowfen P3");
  EXPECT_EQ(again->plug_thread, "M14x1.25");
  expect_same_numbers(*pump, *again);
  EXPECT_THAT(differences(*pump, *again), IsEmpty());
}

TEST(WordsOf, JointsOfTheDemoMakeThemFromNothing) {
  const test::DemoFile demo;
  const Catalogue catalogue;
  const Workshop workshop = demo.open();
  for (const std::string& slug : joint_slugs(workshop)) {
    const auto joint = joint_of_slug(workshop, slug);
    const auto again = with_words(catalogue, {}, words_of(*joint));
    ASSERT_TRUE(again.has_value()) << slug << again.error().message << again.error().field;
    EXPECT_THAT(differences(*joint, *again), IsEmpty()) << slug;
    EXPECT_EQ(joint->thread, again->thread);
    EXPECT_EQ(joint->locks.size(), again->locks.size());
    EXPECT_EQ(joint->on_crank, again->on_crank);
  }
}

TEST(WordsOf, FiguresOfTheDemoMakeThemFromNothing) {
  const test::DemoFile demo;
  const Catalogue catalogue;
  const Workshop workshop = demo.open();
  const auto sources = all_sources(workshop);
  for (const std::string& slug : joint_slugs(workshop)) {
    const auto joint = joint_of_slug(workshop, slug);
    std::vector<FigureRecord> figures = joint->beside;
    figures.push_back(joint->figure);
    figures.insert(figures.end(), joint->superseded.begin(), joint->superseded.end());
    for (const FigureRecord& figure : figures) {
      const auto again = new_figure(catalogue, sources, words_of(figure));
      ASSERT_TRUE(again.has_value()) << slug << again.error().message << again.error().field;
      EXPECT_THAT(differences(figure, *again), IsEmpty()) << slug;
      EXPECT_EQ(figure.value, again->value);
      EXPECT_EQ(figure.low, again->low);
      EXPECT_EQ(figure.passes, again->passes);
      EXPECT_EQ(figure.source, again->source);
    }
  }
}

TEST(WordsOf, WrenchesOfTheDemoChangeNothing) {
  const test::DemoFile demo;
  for (WrenchRecord wrench : all_wrenches(demo.open())) {
    wrench.accuracy_class = "type II";
    wrench.calibration_months = 6;
    wrench.calibration_cycles = 2500;
    const auto again = with_words(wrench, words_of(wrench));
    ASSERT_TRUE(again.has_value()) << again.error().message;
    EXPECT_THAT(differences(wrench, *again), IsEmpty()) << wrench.slug;
    EXPECT_EQ(wrench.step, again->step);
    EXPECT_EQ(wrench.arm_mm, again->arm_mm);
    EXPECT_EQ(wrench.accuracy, again->accuracy);
  }
}

TEST(WordsOf, AWrenchNameWhatIsRecorded) {
  const WrenchWords words = words_of({.slug = "A", .name = "Bench", .low = 10, .high = 60, .step = 0.5, .arm_mm = 300});
  EXPECT_EQ(words.range, "10..60N.m");
  EXPECT_EQ(words.step, "0.5 N.m");
  EXPECT_EQ(words.arm, "300 mm");
  EXPECT_EQ(words.due, std::nullopt);
}

} // namespace
} // namespace clampwright::specdb
