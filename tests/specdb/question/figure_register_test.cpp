// SPDX-License-Identifier: GPL-3.0-or-later
//
// RecordedFigures are entered beside each other and take each other's place; none is ever overwritten.
#include "specdb/question/figure_register.hpp"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/joints.hpp"
#include "tests/core/problem_of.hpp"
#include "tests/specdb/scratch.hpp"
#include "tests/specdb/small_workshop.hpp"
#include "tests/specdb/wrong_words.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

const FigureWords k_figure{
    .printed = "80 lbf·in", .torque = "80 lbf.in", .source = "sheet", .page = "p 2", .status = "maker"};

// One joint with a figure of 9 N·m.
class RecordedFigures : public testing::Test {
 protected:
  RecordedFigures() {
    test::make_small_workshop(file, [](SQLite::Database& database) {
      add_source(database, {"second", "a sheet", "2nd print", Known::second_hand});
      add_machine(database, {.slug = "m", .name = "machine", .kind = "saw"});
      add_joint(database, test::small_joint("m/j", "m"));
    });
  }
  [[nodiscard]] Result<KeptFigure> add(const FigureWords& words) const {
    return add_figure(catalogue, file, "m/j", words, test::k_entry_day);
  }
  [[nodiscard]] Result<KeptFigure> revise(const FigureWords& words, const MaybeText& because = "a new print") const {
    return revise_figure(catalogue, file, "m/j", joint().figure.id, words, because, test::k_entry_day);
  }
  [[nodiscard]] JointRecord joint() const { return *joint_of_slug(*Workshop::open(file), "m/j"); }

  const Catalogue catalogue;
  const test::Scratch scratch;
  const std::filesystem::path file = scratch / "w";
};

TEST_F(RecordedFigures, StandBesideEachOther) {
  const auto kept = add(k_figure);
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_EQ(kept->figure.printed, "80 lbf·in");
  const JointRecord now = joint();
  EXPECT_EQ(now.figure.printed, "9 N·m");
  ASSERT_THAT(now.beside, SizeIs(1));
  EXPECT_EQ(now.beside[0].value, 80.0);
  EXPECT_EQ(now.beside[0].unit, "lbf.in");
  EXPECT_EQ(now.beside[0].entered_on, "2026-11-26");
  EXPECT_EQ(now.beside[0].id, kept->figure.id);
}

TEST_F(RecordedFigures, KeepWhatIsPrintedWordForWord) {
  FigureWords words = k_figure;
  words.printed = "  9,5  N·m (dry), +10 % ";
  EXPECT_EQ(add(words)->figure.printed, "9,5  N·m (dry), +10 %");
}

// 2.5 kgf·m is 24.52 N·m (9.80665 m/s²): pages round it to 25. Ten times as much is a slip, unless it is said why.
TEST_F(RecordedFigures, MayBeRoundedFromWhatIsPrinted) {
  FigureWords words = k_figure;
  words.printed = "2,5 mkg";
  words.torque = "25 Nm";
  EXPECT_TRUE(add(words));
  words.torque = "250 Nm";
  EXPECT_FALSE(add(words));
  words.reading = "the bulletin says that a figure is missing in the print";
  EXPECT_TRUE(add(words));
  // What may part thousands says nothing for sure.
  words.reading.reset();
  words.printed = "1,500 lbf.in";
  words.torque = "1.5 lbf.in";
  EXPECT_TRUE(add(words));
}

TEST_F(RecordedFigures, KeepEverythingThatIsSaid) {
  FigureWords words = k_figure;
  words.tolerance = "± 5";
  words.low = "75 lbf.in";
  words.high = "85 lbf.in";
  words.angle = "90 deg";
  words.reading = "in-lb read as lbf·in";
  words.surfaces = "Oiled";
  words.mu = "0.12";
  words.condition = "clean";
  words.temperature = "cold";
  words.sequence = "crosswise";
  words.passes = "40 lbf.in, 80 lbf.in";
  words.running_rule = "add";
  words.reuse_rule = "never";
  words.reuse = "a new nut";
  words.recheck =
      std::vector<RecheckWords>{{"after the first hour", "1 h", {}, "first heat"}, {"after two weeks", {}, "14 d", {}}};
  words.status = "shop";
  const auto kept = add(words);
  ASSERT_TRUE(kept.has_value()) << kept.error().message << kept.error().field;
  const FigureRecord f = joint().beside.front();
  EXPECT_EQ(f.tolerance, "± 5");
  EXPECT_EQ(f.low, 75.0);
  EXPECT_EQ(f.high, 85.0);
  EXPECT_EQ(f.method, "torque-angle");
  EXPECT_EQ(f.angle_deg, 90.0);
  EXPECT_EQ(f.reading, "in-lb read as lbf·in");
  EXPECT_EQ(f.surfaces, "oiled");
  EXPECT_EQ(f.friction, "0.12");
  EXPECT_EQ(f.condition, "clean");
  EXPECT_EQ(f.temperature, "cold");
  EXPECT_EQ(f.sequence, "crosswise");
  EXPECT_THAT(f.passes, ElementsAre(40.0, 80.0));
  EXPECT_EQ(f.running_torque_rule, "add");
  EXPECT_EQ(f.reuse_rule, "never");
  EXPECT_EQ(f.reuse, "a new nut");
  ASSERT_THAT(f.recheck, SizeIs(2));
  EXPECT_EQ(f.recheck[0].hours, 1.0);
  EXPECT_EQ(f.recheck[0].event, "first heat");
  EXPECT_EQ(f.recheck[1].days, 14.0);
  EXPECT_EQ(f.status, "shop");
}

TEST_F(RecordedFigures, TakeTheLimitsInAnotherUnit) {
  FigureWords words = k_figure;
  words.low = "8 Nm";
  words.high = "10 Nm";
  const FigureRecord f = add(words)->figure;
  EXPECT_NEAR(*f.low, 70.805966,
              1e-6); // 8 / (4.4482216152605 × 0.0254): pound 0.45359237 kg, g 9.80665 m/s2, inch 25.4 mm
  EXPECT_NEAR(*f.high, 88.507458, 1e-6);
}

TEST_F(RecordedFigures, TakeThePlaceOfEachOtherWithAReason) {
  const long long first = joint().figure.id;
  const auto kept = revise({.printed = "10 N·m", .torque = "10 Nm", .source = "second", .page = "page 3"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_THAT(kept->changes, ElementsAre("printed: 9 N·m -> 10 N·m", "torque: 9 N.m -> 10 N.m",
                                         "source: sheet -> second", "page: page 1 -> page 3"));
  const JointRecord now = joint();
  EXPECT_EQ(now.figure.printed, "10 N·m");
  EXPECT_EQ(now.figure.supersedes, first);
  EXPECT_EQ(now.figure.revised_because, "a new print");
  EXPECT_EQ(now.figure.source, (Source{"a sheet", "2nd print", "page 3", Known::second_hand}));
  EXPECT_THAT(now.beside, IsEmpty());
  ASSERT_THAT(now.superseded, SizeIs(1));
  EXPECT_EQ(now.superseded[0].id, first);
  EXPECT_EQ(now.superseded[0].printed, "9 N·m");
  EXPECT_EQ(now.superseded[0].superseded_by, now.figure.id);
  EXPECT_EQ(now.superseded[0].superseded_on, "2026-11-26");
  EXPECT_EQ(now.superseded[0].superseded_because, "a new print");
}

TEST_F(RecordedFigures, AreNotRevisedTwiceFromOneState) {
  const long long first = joint().figure.id;
  ASSERT_TRUE(revise({.printed = "10 Nm", .torque = "10 Nm"}).has_value());
  const Problem late = problem_of(
      revise_figure(catalogue, file, "m/j", first, {.printed = "11 Nm", .torque = "11 Nm"}, "late", test::k_entry_day));
  EXPECT_EQ(late.trouble, Trouble::busy);
  EXPECT_THAT(late.message, HasSubstr("on 2026-11-26: a new print"));
  EXPECT_EQ(joint().figure.value, 10.0);
  EXPECT_EQ(problem_of(revise_figure(catalogue, file, "m/j", 99, {.printed = "11 Nm", .torque = "11 Nm"}, "x",
                                     test::k_entry_day))
                .code,
            "no-such-figure");
}

TEST_F(RecordedFigures, WantAReasonAndAChange) {
  EXPECT_EQ(problem_of(revise({.torque = "10 Nm"}, {})).field, "--because");
  EXPECT_EQ(problem_of(revise({.torque = "9 Nm"})).code, "nothing-to-change");
  EXPECT_THAT(joint().superseded, IsEmpty());
}

TEST_F(RecordedFigures, LoseWhatHoldsForATorqueWithTheTorque) {
  ASSERT_TRUE(revise({.low = "8 Nm", .high = "10 Nm", .passes = "5 Nm, 9 Nm"}).has_value());
  const auto kept = revise({.printed = "tighten firmly", .torque = "none"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_EQ(kept->figure.status, "none");
  EXPECT_EQ(kept->figure.method, "by-feel");
  EXPECT_EQ(kept->figure.low, std::nullopt);
  EXPECT_THAT(kept->changes, testing::Contains("passes: 5 N.m, 9 N.m -> none"));
  const auto again = revise({.printed = "9 N·m", .torque = "9 Nm"});
  ASSERT_TRUE(again.has_value()) << again.error().message;
  EXPECT_EQ(again->figure.status, "maker");
  EXPECT_EQ(again->figure.method, "torque");
}

TEST_F(RecordedFigures, WhoseUnitChangesWantTheirLimitsAnew) {
  ASSERT_TRUE(revise({.low = "8 Nm", .high = "10 Nm"}).has_value());
  const Problem problem = problem_of(revise({.torque = "80 lbf.in"}));
  EXPECT_EQ(problem.code, "missing");
  EXPECT_EQ(problem.field, "--low");
  EXPECT_TRUE(revise({.torque = "80 lbf.in", .low = "none", .high = "none"}).has_value());
}

// clang-format off
const test::WrongWords<FigureWords> k_wrong[] = {
    {"nothing printed",         [](FigureWords& w) { w.printed.reset(); },                 Trouble::usage,          "missing",        "--printed",  "word for word"},
    {"print of two lines",      [](FigureWords& w) { w.printed = "9 N·m\ndry"; },          Trouble::not_understood, "not-understood", "--printed",  "one line"},
    {"no torque",               [](FigureWords& w) { w.torque.reset(); },                  Trouble::usage,          "missing",        "--torque",   "--torque none"},
    {"another than is printed", [](FigureWords& w) { w.torque = "80 Nm"; },                Trouble::not_understood, "contradiction",  "--torque",   "9.04 N·m"},
    {"another, with a comma",   [](FigureWords& w) { w.printed = "2,7 mkg"; w.torque = "25 Nm"; }, Trouble::not_understood, "contradiction", "--torque", "26.5 N·m"},
    {"nobody's figure",         [](FigureWords& w) { w.status.reset(); },                  Trouble::usage,          "missing",        "--status",   "general-table"},
    {"a bare torque",           [](FigureWords& w) { w.torque = "80"; },                   Trouble::not_understood, "bare-number",    "--torque",   "80"},
    {"a comma in the torque",   [](FigureWords& w) { w.torque = "9,5 Nm"; },               Trouble::not_understood, "comma",          "--torque",   "9.5"},
    {"an energy",               [](FigureWords& w) { w.torque = "80 J"; },                 Trouble::not_understood, "wrong-kind",     "--torque",   "energy"},
    {"a torque of nothing",     [](FigureWords& w) { w.torque = "0 Nm"; },                 Trouble::not_understood, "out-of-range",   "--torque",   "nothing"},
    {"no source",               [](FigureWords& w) { w.source.reset(); },                  Trouble::usage,          "missing",        "--source",   "document"},
    {"no such source",          [](FigureWords& w) { w.source = "shet"; },                 Trouble::no_such,        "no-such-name",   "--source",   "did you mean sheet"},
    {"no page",                 [](FigureWords& w) { w.page.reset(); },                    Trouble::usage,          "missing",        "--page",     "page 4"},
    {"one limit",               [](FigureWords& w) { w.low = "75 lbf.in"; },               Trouble::usage,          "missing",        "--high",     "--high"},
    {"limits beside it",        [](FigureWords& w) { w.low = "81 lbf.in"; w.high = "85 lbf.in"; }, Trouble::not_understood, "out-of-range", "--low", "between 81 and 85"},
    {"limits of no torque",     [](FigureWords& w) { w.torque = "none"; w.low = "8 Nm"; w.high = "9 Nm"; }, Trouble::usage, "surplus", "--low",     "--torque"},
    {"falling passes",          [](FigureWords& w) { w.passes = "50 lbf.in, 40 lbf.in"; }, Trouble::not_understood, "out-of-range",   "--passes",   "rise"},
    {"a pass too far",          [](FigureWords& w) { w.passes = "50 lbf.in, 81 lbf.in"; }, Trouble::not_understood, "out-of-range",   "--passes",   "none is above"},
    {"a bare pass",             [](FigureWords& w) { w.passes = "40, 80 lbf.in"; },        Trouble::not_understood, "bare-number",    "--passes",   "40"},
    {"a method that is none",   [](FigureWords& w) { w.method = "guess"; },                Trouble::not_understood, "not-understood", "--method",   "to-shoulder"},
    {"an angle to no method",   [](FigureWords& w) { w.method = "torque"; w.angle = "90deg"; }, Trouble::usage,     "surplus",        "--angle",    "torque-angle"},
    {"a method without angle",  [](FigureWords& w) { w.method = "torque-angle"; },         Trouble::usage,          "missing",        "--angle",    "90deg"},
    {"by feel with a torque",   [](FigureWords& w) { w.method = "by-feel"; },              Trouble::usage,          "surplus",        "--method",   "torque"},
    {"a torque without one",    [](FigureWords& w) { w.torque = "none"; w.method = "torque"; }, Trouble::usage,     "missing",        "--method",   "by-feel"},
    {"no such surfaces",        [](FigureWords& w) { w.surfaces = "buttered"; },           Trouble::no_such,        "no-such-name",   "--surfaces", "oiled"},
    {"surfaces taken away",     [](FigureWords& w) { w.surfaces = "none"; },               Trouble::usage,          "missing",        "--surfaces", "not-stated"},
    {"a slippery number",       [](FigureWords& w) { w.mu = "-0.1"; },                     Trouble::not_understood, "out-of-range",   "--mu",       "0.1"},
    {"a rule that is none",     [](FigureWords& w) { w.running_rule = "left out"; },       Trouble::not_understood, "not-understood", "--running-rule", "add or included"},
    {"a rule without words",    [](FigureWords& w) { w.reuse_rule = "never"; },            Trouble::usage,          "missing",        "--reuse",    "new washer"},
    {"words without a rule",    [](FigureWords& w) { w.reuse = "a new one"; },             Trouble::usage,          "missing",        "--reuse-rule", "never"},
    {"a recheck of no words",   [](FigureWords& w) { w.recheck = std::vector<RecheckWords>{{"", "1 h", {}, {}}}; }, Trouble::usage,          "missing",        "--recheck",  "first hour"},
    {"a recheck in bare hours", [](FigureWords& w) { w.recheck = std::vector<RecheckWords>{{"hot", "1", {}, {}}}; }, Trouble::not_understood, "bare-number",   "--recheck",  "1"},
    {"a status that is none",   [](FigureWords& w) { w.status = "hearsay"; },              Trouble::not_understood, "not-understood", "--status",   "general-table"},
    {"a status of no figure",   [](FigureWords& w) { w.torque = "none"; w.status = "maker"; }, Trouble::usage,      "surplus",        "--status",   "--status"},
};
// clang-format on

TEST_F(RecordedFigures, AreRefusedWithWhatWasUnderstoodAndAnExample) {
  for (const auto& row : k_wrong) {
    FigureWords words = k_figure;
    row.spoil(words);
    test::expect_refused(row, problem_of(add(words)));
  }
  EXPECT_THAT(joint().beside, IsEmpty());
}

} // namespace
} // namespace clampwright::specdb
