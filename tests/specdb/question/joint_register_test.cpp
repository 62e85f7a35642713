// SPDX-License-Identifier: GPL-3.0-or-later
//
// Joints are entered and revised by words; what was is kept, and nothing is written that could not be shown.
#include "specdb/question/joint_register.hpp"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/question/source_register.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/search.hpp"
#include "specdb/workshop/sources.hpp"
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

const JointWords k_bolt{.assembly = "cylinder", .called = "head bolts", .thread = "M8", .strength_class = "8.8"};
const FigureWords k_figure{
    .printed = "22,5 N·m", .torque = "22.5 Nm", .source = "sheet", .page = "page 4", .status = "maker"};

class RecordedJoints : public testing::Test {
 protected:
  RecordedJoints() {
    test::make_small_workshop(file, [](SQLite::Database& database) {
      add_machine(database, {.slug = "saw", .name = "Saw Tarn 5", .kind = "chain saw"});
    });
  }
  [[nodiscard]] Result<KeptJoint> add(const JointWords& words, const FigureWords& figure = k_figure) const {
    return add_joint(catalogue, file, "saw tarn 5", words, figure, test::k_entry_day);
  }
  [[nodiscard]] Result<KeptJoint> revise(const JointWords& words, const Revision& revision = {"read again", {}}) const {
    return revise_joint(catalogue, file, "saw/head-bolts", words, revision, test::k_entry_day);
  }
  [[nodiscard]] Workshop open() const { return std::move(*Workshop::open(file)); }

  const Catalogue catalogue;
  const test::Scratch scratch;
  const std::filesystem::path file = scratch / "w";
};

TEST_F(RecordedJoints, AreEnteredWithTheirFirstFigure) {
  const auto kept =
      add({.assembly = "cylinder",
           .called = "head bolts",
           .quantity = "4",
           .thread = "m8",
           .strength_class = "8.8",
           .washer = "16x8.4mm",
           .seat = "Cast Aluminium",
           .mating_part = "cylinder",
           .mating = "cast aluminium",
           .engagement = "5/8 in",
           .must_clamp = "9 kN",
           .must_clamp_because = "the gasket must hold",
           .locks = std::vector<LockRecord>{{"Compound Low", "one drop"}},
           .neighbours = std::vector<NeighbourWords>{{"seal", "120 degC", {}}, {"exhaust", {}, "572 degF"}},
           .on_crank = "no",
           .words = "gasket top"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message << kept.error().field;
  const auto joint = joint_of_slug(open(), "saw/head-bolts");
  ASSERT_TRUE(joint.has_value());
  EXPECT_EQ(joint->machine.slug, "saw");
  EXPECT_EQ(joint->assembly, "cylinder");
  EXPECT_EQ(joint->kind, "bolt");
  EXPECT_EQ(joint->quantity, 4);
  EXPECT_EQ(joint->thread, "M8");
  EXPECT_EQ(joint->strength_class, "8.8");
  EXPECT_EQ(joint->washer, "16x8.4mm");
  EXPECT_EQ(joint->seat_material, "cast-aluminium");
  EXPECT_EQ(joint->mating_material, "cast-aluminium");
  EXPECT_EQ(joint->engagement, "5/8 in");
  EXPECT_EQ(joint->must_clamp, "9 kN");
  EXPECT_EQ(joint->seen_from, "looking at the bolt head");
  ASSERT_THAT(joint->locks, SizeIs(1));
  EXPECT_EQ(joint->locks[0].lock, "compound-low");
  EXPECT_EQ(joint->locks[0].note, "one drop");
  ASSERT_THAT(joint->neighbours, SizeIs(2));
  EXPECT_EQ(joint->neighbours[0].name, "exhaust");
  EXPECT_NEAR(*joint->neighbours[0].runs_at_degC, 300.0, 1e-9); // (572 − 32) × 5/9
  EXPECT_EQ(joint->neighbours[1].bears_degC, 120.0);
  EXPECT_EQ(joint->figure.printed, "22,5 N·m");
  EXPECT_EQ(joint->figure.value, 22.5);
  EXPECT_EQ(joint->figure.unit, "N.m");
  EXPECT_EQ(joint->figure.source, (Source{"a sheet", "1st print", "page 4", Known::printed}));
  EXPECT_EQ(joint->figure.entered_on, "2026-11-26");
  ASSERT_THAT(joint->events, SizeIs(1));
  EXPECT_EQ(joint->events[0].kind, "entered");
  EXPECT_THAT(search(open(), "gasket tarn").hits, SizeIs(1));
}

TEST_F(RecordedJoints, AreEnteredWhereThePageGivesNoFigure) {
  ASSERT_TRUE(add(k_bolt, {.printed = "tighten firmly", .torque = "none", .source = "sheet", .page = "p 6"}));
  const auto joint = joint_of_slug(open(), "saw/head-bolts");
  EXPECT_EQ(joint->figure.value, std::nullopt);
  EXPECT_EQ(joint->figure.status, "none");
  EXPECT_EQ(joint->figure.method, "by-feel");
  EXPECT_EQ(joint->figure.printed, "tighten firmly");
}

TEST_F(RecordedJoints, OfTheSameNameGetShortNamesOfTheirOwn) {
  ASSERT_TRUE(add(k_bolt).has_value());
  EXPECT_EQ(add(k_bolt)->joint.slug, "saw/head-bolts-2");
  JointWords named = k_bolt;
  named.short_name = "head-bolts";
  const Problem taken = problem_of(add(named));
  EXPECT_EQ(taken.trouble, Trouble::cannot_create);
  EXPECT_EQ(taken.field, "--short-name");
  EXPECT_THAT(joint_slugs(open()), ElementsAre("saw/head-bolts", "saw/head-bolts-2"));
}

TEST_F(RecordedJoints, OfAHubAreSeenFromThePart) {
  const auto kept = add({.assembly = "clutch", .called = "hub", .kind = "HUB", .thread = "M14x1.5-LH"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_EQ(kept->joint.kind, "hub");
  EXPECT_EQ(kept->joint.turned, "part");
  EXPECT_EQ(kept->joint.seen_from, "looking at the part");
  EXPECT_EQ(kept->joint.strength_class, "unknown");
}

TEST_F(RecordedJoints, AreRevisedWithWhatWasAndWhy) {
  ASSERT_TRUE(add(k_bolt).has_value());
  const auto kept = revise({.assembly = "crankcase",
                            .strength_class = "10.9",
                            .locks = std::vector<LockRecord>{{"split-pin", {}}},
                            .neighbours = std::vector<NeighbourWords>{{"seal", "120 degC", {}}},
                            .words = "barrel"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_THAT(kept->changes,
              ElementsAre("assembly: cylinder -> crankcase", "class: 8.8 -> 10.9", "words: none -> barrel",
                          "lock: none -> split-pin", "neighbour: none -> seal (bears 120 degC)"));
  const auto joint = joint_of_slug(open(), "saw/head-bolts");
  EXPECT_EQ(joint->assembly, "crankcase");
  EXPECT_EQ(joint->strength_class, "10.9");
  EXPECT_THAT(joint->locks, SizeIs(1));
  EXPECT_THAT(joint->neighbours, SizeIs(1));
  EXPECT_EQ(joint->figure.printed, "22,5 N·m");
  ASSERT_THAT(joint->events, SizeIs(2));
  EXPECT_EQ(joint->events[1].because, "read again");
  EXPECT_THAT(joint->events[1].words, HasSubstr("class: 8.8 -> 10.9"));
  EXPECT_THAT(search(open(), "barrel crankcase").hits, SizeIs(1));
  EXPECT_THAT(search(open(), "cylinder").hits, IsEmpty());
  ASSERT_TRUE(revise({.locks = std::vector<LockRecord>{}, .neighbours = std::vector<NeighbourWords>{}}));
  EXPECT_THAT(joint_of_slug(open(), "saw/head-bolts")->locks, IsEmpty());
}

TEST_F(RecordedJoints, AreNotRevisedFromWhatIsNoLongerThere) {
  ASSERT_TRUE(add(k_bolt).has_value());
  ASSERT_TRUE(revise({.strength_class = "10.9"}, {"first", 1}).has_value());
  const Problem late = problem_of(revise({.strength_class = "12.9"}, {"second", 1}));
  EXPECT_EQ(late.trouble, Trouble::busy);
  EXPECT_EQ(joint_of_slug(open(), "saw/head-bolts")->strength_class, "10.9");
}

TEST_F(RecordedJoints, LeaveNoEventWhereNothingWouldChange) {
  ASSERT_TRUE(add(k_bolt).has_value());
  EXPECT_EQ(problem_of(revise({.thread = "M8", .washer = "none"})).code, "nothing-to-change");
  EXPECT_EQ(problem_of(revise({.thread = "M10"}, {})).field, "--because");
  EXPECT_THAT(joint_of_slug(open(), "saw/head-bolts")->events, SizeIs(1));
}

TEST_F(RecordedJoints, OfAMachineOrNameThatIsNotThereAreRefused) {
  const Problem machine = problem_of(add_joint(catalogue, file, "mill", k_bolt, k_figure, test::k_entry_day));
  EXPECT_EQ(machine.trouble, Trouble::no_such);
  EXPECT_EQ(machine.field, "--machine");
  EXPECT_THAT(machine.hint, HasSubstr("saw"));
  EXPECT_EQ(problem_of(revise({.thread = "M10"})).code, "no-such-joint");
}

// clang-format off
const test::WrongWords<JointWords> k_wrong[] = {
    {"no assembly",             [](JointWords& w) { w.assembly.reset(); },           Trouble::usage,          "missing",        "--assembly",           "clutch"},
    {"no name",                 [](JointWords& w) { w.called.reset(); },             Trouble::usage,          "missing",        "--called",             "clutch hub"},
    {"no thread",               [](JointWords& w) { w.thread.reset(); },             Trouble::usage,          "missing",        "--thread",             "M14x1.5-LH"},
    {"a thread taken away",     [](JointWords& w) { w.thread = "none"; },            Trouble::usage,          "missing",        "--thread",             "M10x1.25"},
    {"no such thread",          [](JointWords& w) { w.thread = "M8x1.1"; },          Trouble::no_such,        "no-such-thread", "--thread",             "M8"},
    {"no such class",           [](JointWords& w) { w.strength_class = "8.7"; },     Trouble::no_such,        "no-such-name",   "--class",              "8.8"},
    {"an inch class",           [](JointWords& w) { w.strength_class = "SAE 5"; },   Trouble::no_such,        "no-such-class",  "--class",              "unified"},
    {"no such nut",             [](JointWords& w) { w.nut = "7.5"; },                Trouble::no_such,        "no-such-name",   "--nut",                "8"},
    {"a rivet",                 [](JointWords& w) { w.kind = "rivet"; },             Trouble::not_understood, "not-understood", "--kind",               "stud-set"},
    {"no bolts",                [](JointWords& w) { w.quantity = "0"; },             Trouble::not_understood, "out-of-range",   "--quantity",           "1"},
    {"the shank is turned",     [](JointWords& w) { w.turned = "shank"; },           Trouble::not_understood, "not-understood", "--turned",             "head or nut or part"},
    {"no such head",            [](JointWords& w) { w.head = "heart"; },             Trouble::no_such,        "no-such-name",   "--head",               "hex"},
    {"a washer of one number",  [](JointWords& w) { w.washer = "24mm"; },            Trouble::not_understood, "not-understood", "--washer",             "24x13"},
    {"half a face",             [](JointWords& w) { w.face_outer = "13 mm"; },       Trouble::usage,          "missing",        "--face-inner",         "--face-inner 15mm"},
    {"a face inside out",       [](JointWords& w) { w.face_outer = "9 mm"; w.face_inner = "13 mm"; },
                                                                                     Trouble::not_understood, "out-of-range",   "--face-outer",         "30mm"},
    {"no such material",        [](JointWords& w) { w.mating = "cheese"; },          Trouble::no_such,        "no-such-name",   "--mating",             "cast-aluminium"},
    {"a bare length",           [](JointWords& w) { w.engagement = "12"; },          Trouble::not_understood, "bare-number",    "--engagement",         "12"},
    {"a comma",                 [](JointWords& w) { w.grip = "12,5 mm"; },           Trouble::not_understood, "comma",          "--grip",               "12.5"},
    {"a taper in degrees",      [](JointWords& w) { w.taper = "11 deg"; },           Trouble::not_understood, "not-understood", "--taper",              "1:5"},
    {"a damp place",            [](JointWords& w) { w.duty = "damp"; },              Trouble::not_understood, "not-understood", "--duty",               "dry or wet"},
    {"a pattern that is none",  [](JointWords& w) { w.pattern = "star"; },           Trouble::not_understood, "not-understood", "--pattern",            "circle or row"},
    {"a load without a reason", [](JointWords& w) { w.must_clamp = "9 kN"; },        Trouble::usage,          "missing",        "--must-clamp-because", "must not slip"},
    {"a load in grams",         [](JointWords& w) { w.must_clamp = "9 kg"; w.must_clamp_because = "x"; },
                                                                                     Trouble::not_understood, "wrong-kind",     "--must-clamp",         "mass"},
    {"no such lock",            [](JointWords& w) { w.locks = std::vector<LockRecord>{{"chewing gum", {}}}; }, Trouble::no_such,     "no-such-name",   "--lock",               "split-pin"},
    {"a lock twice",            [](JointWords& w) { w.locks = std::vector<LockRecord>{{"split-pin", {}}, {"Split pin", {}}}; },
                                                                                     Trouble::usage,          "surplus",        "--lock",               "once"},
    {"a neighbour of nothing",  [](JointWords& w) { w.neighbours = std::vector<NeighbourWords>{{"seal", {}, {}}}; }, Trouble::usage,     "missing",        "--neighbour",          "120 degC"},
    {"a neighbour twice",       [](JointWords& w) { w.neighbours = std::vector<NeighbourWords>{{"seal", "90 degC", {}}, {"seal", {}, "80 degC"}}; },
                                                                                     Trouble::usage,          "surplus",        "--neighbour",          "together"},
    {"a neighbour in bare degrees", [](JointWords& w) { w.neighbours = std::vector<NeighbourWords>{{"seal", "90", {}}}; },
                                                                                     Trouble::not_understood, "bare-number",    "--neighbour",          "90"},
    {"perhaps on the crank",    [](JointWords& w) { w.on_crank = "perhaps"; },       Trouble::not_understood, "not-understood", "--on-crank",           "yes or no"},
    {"a shaft without driver",  [](JointWords& w) { w.shaft_turn = "cw"; },          Trouble::usage,          "missing",        "--driver",             "shaft"},
    {"a belt drives it",        [](JointWords& w) { w.driver = "belt"; w.shaft_turn = "cw"; },
                                                                                     Trouble::not_understood, "not-understood", "--driver",             "shaft or part"},
    {"seen from nowhere",       [](JointWords& w) { w.seen_from = "none"; },         Trouble::usage,          "missing",        "--seen-from",          "looking at"},
    {"more drag than torque",   [](JointWords& w) { w.running_torque = "23 N.m"; },  Trouble::not_understood, "out-of-range",   "--torque",             "running torque"},
};
// clang-format on

TEST_F(RecordedJoints, AreRefusedWithWhatWasUnderstoodAndAnExample) {
  for (const auto& row : k_wrong) {
    JointWords words = k_bolt;
    row.spoil(words);
    test::expect_refused(row, problem_of(add(words)));
  }
  EXPECT_THAT(joint_slugs(open()), IsEmpty());
  EXPECT_TRUE(add(k_bolt).has_value()); // nothing is wrong with the rest of them
}

TEST_F(RecordedJoints, WhoseThreadLeavesItsClassBehindAreRefused) {
  ASSERT_TRUE(add(k_bolt).has_value());
  const Problem problem = problem_of(revise({.thread = "1/4-20"}));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_EQ(problem.field, "--class");
  EXPECT_TRUE(revise({.thread = "1/4-20", .strength_class = "SAE 5"}).has_value());
}

TEST(RecordedSources, AreEnteredAndListed) {
  const test::Scratch scratch;
  const auto kept =
      add_source(scratch / "w", {.title = "Tarn workshop sheets", .edition = "2nd print", .known = "Second-hand"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_TRUE(kept->made_file);
  EXPECT_EQ(kept->source.slug, "tarn-workshop-sheets");
  ASSERT_TRUE(add_source(scratch / "w", {.title = "Tarn workshop sheets", .edition = "3rd print", .known = "memory"}));
  const auto sources = all_sources(*Workshop::open(scratch / "w"));
  ASSERT_THAT(sources, SizeIs(2));
  EXPECT_EQ(sources[0].known, Known::second_hand);
  EXPECT_EQ(sources[1].slug, "tarn-workshop-sheets-2");
}

TEST(RecordedSources, AreRefusedWhereSomethingIsMissingOrThere) {
  const test::Scratch scratch;
  const auto field = [&](const SourceWords& words) { return problem_of(add_source(scratch / "w", words)).field; };
  EXPECT_EQ(field({.edition = "e", .known = "printed"}), "--title");
  EXPECT_EQ(field({.title = "t", .known = "printed"}), "--edition");
  EXPECT_EQ(field({.title = "t", .edition = "e"}), "--known");
  EXPECT_EQ(field({.title = "t", .edition = "e", .known = "hearsay"}), "--known");
  EXPECT_THAT(scratch.names(), IsEmpty());
  ASSERT_TRUE(add_source(scratch / "w", {.title = "t", .edition = "e", .known = "printed"}).has_value());
  EXPECT_EQ(field({.title = "T", .edition = "E", .known = "memory"}), "--edition");
  EXPECT_EQ(field({.short_name = "t", .title = "t", .edition = "f", .known = "memory"}), "--short-name");
}

} // namespace
} // namespace clampwright::specdb
