// SPDX-License-Identifier: GPL-3.0-or-later
//
// RecordedMachines are entered and revised by words; what was is kept.
#include "specdb/question/machine_register.hpp"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/machines.hpp"
#include "specdb/workshop/search.hpp"
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

const MachineWords k_saw{.called = "Saw Tarn 5", .kind = "chain saw, two-stroke"};

class RecordedMachines : public testing::Test {
 protected:
  [[nodiscard]] Result<KeptMachine> add(const MachineWords& words) const {
    return add_machine(catalogue, file, words, test::k_entry_day);
  }
  [[nodiscard]] Result<KeptMachine> revise(const MachineWords& words,
                                           Revision revision = {"measured again", {}}) const {
    return revise_machine(catalogue, file, "saw-tarn-5", words, revision, test::k_entry_day);
  }
  [[nodiscard]] Workshop open() const { return std::move(*Workshop::open(file)); }

  const Catalogue catalogue;
  const test::Scratch scratch;
  const std::filesystem::path file = scratch / "w";
};

TEST_F(RecordedMachines, AreEnteredIntoANewFile) {
  const auto kept = add({.called = "Saw Tarn 5",
                         .kind = "chain saw, two-stroke",
                         .serial_from = "T5-100",
                         .crank_turn = "CCW",
                         .crank_seen_from = "looking at the clutch",
                         .stroke = "34mm",
                         .rod = "2.5 in",
                         .tip_limit = "60 N/mm2",
                         .plug_thread = "m14X1.25",
                         .plug_material = "Cast Aluminium"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_TRUE(kept->made_file);
  EXPECT_THAT(kept->changes, ElementsAre("entered"));
  const Workshop workshop = open();
  EXPECT_FALSE(workshop.is_invented());
  const auto machine = machine_of_slug(workshop, "Saw-Tarn-5");
  ASSERT_TRUE(machine.has_value());
  EXPECT_EQ(machine->name, "Saw Tarn 5");
  EXPECT_EQ(machine->crank_turn, "anticlockwise");
  EXPECT_EQ(machine->stroke_mm, 34.0);
  EXPECT_DOUBLE_EQ(*machine->rod_mm, 63.5); // 2.5 × 25.4
  EXPECT_EQ(machine->stop_tip_limit_MPa, 60.0);
  EXPECT_EQ(machine->plug_thread, "M14x1.25");
  EXPECT_EQ(machine->head_material, "cast-aluminium");
  ASSERT_THAT(machine->events, SizeIs(1));
  EXPECT_EQ(machine->events[0].kind, "entered");
  EXPECT_EQ(machine->events[0].on_date, "2026-11-26");
  EXPECT_THAT(all_machines(workshop), SizeIs(1));
}

TEST_F(RecordedMachines, HaveTheShortNameThatIsSaid) {
  MachineWords words = k_saw;
  words.short_name = "Saw";
  EXPECT_EQ(add(words)->machine.slug, "saw");
}

TEST_F(RecordedMachines, AreRevisedWithWhatWasAndWhy) {
  MachineWords words = k_saw;
  words.stroke = "50 mm";
  words.rod = "88 mm";
  ASSERT_TRUE(add(words).has_value());
  const auto kept = revise({.stroke = "52 mm", .rod = "none"});
  ASSERT_TRUE(kept.has_value()) << kept.error().message;
  EXPECT_THAT(kept->changes, ElementsAre("stroke: 50 mm -> 52 mm", "rod: 88 mm -> none"));
  const auto machine = machine_of_slug(open(), "saw-tarn-5");
  EXPECT_EQ(machine->stroke_mm, 52.0);
  EXPECT_EQ(machine->rod_mm, std::nullopt);
  ASSERT_THAT(machine->events, SizeIs(2));
  EXPECT_EQ(machine->events[1].kind, "revised");
  EXPECT_EQ(machine->events[1].words, "stroke: 50 mm -> 52 mm; rod: 88 mm -> none");
  EXPECT_EQ(machine->events[1].because, "measured again");
}

TEST_F(RecordedMachines, AreFoundByTheirNewNameAndNoLongerByTheOld) {
  test::make_small_workshop(file, [](SQLite::Database& database) {
    add_machine(database, {.slug = "saw-tarn-5", .name = "Saw Tarn 5", .kind = "chain saw"});
    add_joint(database, test::small_joint("saw-tarn-5/bolt", "saw-tarn-5"));
  });
  ASSERT_TRUE(revise({.called = "Saw Kestrel"}).has_value());
  EXPECT_THAT(search(open(), "kestrel").hits, SizeIs(1));
  EXPECT_THAT(search(open(), "saw kestrel bolt").hits, SizeIs(1));
  EXPECT_EQ(joint_of_slug(open(), "saw-tarn-5/bolt")->machine.name, "Saw Kestrel");
}

TEST_F(RecordedMachines, AreNotRevisedFromWhatIsNoLongerThere) {
  ASSERT_TRUE(add(k_saw).has_value());
  ASSERT_TRUE(revise({.stroke = "50 mm"}, {"first", 1}).has_value());
  const Problem late = problem_of(revise({.stroke = "52 mm"}, {"second", 1}));
  EXPECT_EQ(late.trouble, Trouble::busy);
  EXPECT_EQ(late.code, "revised-meanwhile");
  EXPECT_THAT(late.message, HasSubstr("stroke: none -> 50 mm"));
  EXPECT_EQ(machine_of_slug(open(), "saw-tarn-5")->stroke_mm, 50.0);
  EXPECT_TRUE(revise({.stroke = "52 mm"}, {"second", 2}).has_value());
}

TEST_F(RecordedMachines, LeaveNoEventWhereNothingWouldChange) {
  ASSERT_TRUE(add(k_saw).has_value());
  EXPECT_EQ(problem_of(revise({.called = "Saw Tarn 5", .stroke = "none"})).code, "nothing-to-change");
  EXPECT_THAT(machine_of_slug(open(), "saw-tarn-5")->events, SizeIs(1));
}

TEST_F(RecordedMachines, WantAReason) {
  ASSERT_TRUE(add(k_saw).has_value());
  for (const Revision& revision : {Revision{}, Revision{" "}}) {
    const Problem problem = problem_of(revise({.stroke = "50 mm"}, revision));
    EXPECT_EQ(problem.code, "missing");
    EXPECT_EQ(problem.field, "--because");
  }
}

TEST_F(RecordedMachines, NeedANameOfTheirOwn) {
  ASSERT_TRUE(add(k_saw).has_value());
  const Problem name = problem_of(add({.short_name = "other", .called = "saw tarn 5", .kind = "saw"}));
  EXPECT_EQ(name.trouble, Trouble::cannot_create);
  EXPECT_EQ(name.field, "--called");
  const Problem slug = problem_of(add({.short_name = "saw-tarn-5", .called = "Another", .kind = "saw"}));
  EXPECT_EQ(slug.code, "name-taken");
  EXPECT_EQ(slug.field, "--short-name");
  ASSERT_TRUE(add({.called = "Another", .kind = "saw"}).has_value());
  EXPECT_EQ(problem_of(revise({.called = "another"})).code, "name-taken");
  EXPECT_THAT(all_machines(open()), SizeIs(2));
}

TEST_F(RecordedMachines, AreNotRevisedWhereThereAreNone) {
  ASSERT_TRUE(add(k_saw).has_value());
  const Problem problem =
      problem_of(revise_machine(catalogue, file, "saw-tarm-5", {.stroke = "5 mm"}, {"x", {}}, test::k_entry_day));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_THAT(problem.hint, HasSubstr("did you mean saw-tarn-5"));
}

TEST_F(RecordedMachines, AreRefusedWithWhatWasUnderstoodAndAnExample) {
  // clang-format off
  const test::WrongWords<MachineWords> wrong[] = {
      {"no name",             [](MachineWords& w) { w.called.reset(); },                                                  Trouble::usage,          "missing",        "--called",          "--kind"},
      {"no kind",             [](MachineWords& w) { w.kind.reset(); },                                                    Trouble::usage,          "missing",        "--kind",            "--called"},
      {"a name taken away",   [](MachineWords& w) { w.called = "none"; },                                                 Trouble::usage,          "missing",        "--called",          "--called"},
      {"two lines",           [](MachineWords& w) { w.called = "Saw\nTarn"; },                                            Trouble::not_understood, "not-understood", "--called",          "one line"},
      {"a bare number",       [](MachineWords& w) { w.stroke = "44"; },                                                   Trouble::not_understood, "bare-number",    "--stroke",          "44"},
      {"a comma",             [](MachineWords& w) { w.stroke = "44,5 mm"; },                                              Trouble::not_understood, "comma",          "--stroke",          "44.5"},
      {"a force",             [](MachineWords& w) { w.rod = "88 N"; },                                                    Trouble::not_understood, "wrong-kind",     "--rod",             "force"},
      {"a length of nothing", [](MachineWords& w) { w.plug_reach = "0 mm"; },                                             Trouble::not_understood, "out-of-range",   "--plug-reach",      "nothing"},
      {"a turn to the left",  [](MachineWords& w) { w.crank_turn = "left"; w.crank_seen_from = "x"; },                    Trouble::not_understood, "not-understood", "--crank-turn",      "clockwise"},
      {"a turn from nowhere", [](MachineWords& w) { w.crank_turn = "cw"; },                                               Trouble::usage,          "missing",        "--crank-seen-from", "looking at the clutch"},
      {"a side without turn", [](MachineWords& w) { w.crank_seen_from = "x"; },                                           Trouble::usage,          "missing",        "--crank-turn",      "clockwise"},
      {"a short rod",         [](MachineWords& w) { w.stroke = "44mm"; w.rod = "22mm"; },                                 Trouble::not_understood, "out-of-range",   "--rod",             "44 mm"},
      {"a port too low",      [](MachineWords& w) { w.stroke = "44mm"; w.port_depth = "44mm"; },                          Trouble::not_understood, "out-of-range",   "--port-depth",      "27mm"},
      {"a stop too short",    [](MachineWords& w) { w.crown_depth = "14mm"; w.stop_length = "14mm"; },                    Trouble::not_understood, "out-of-range",   "--stop-length",     "never meet"},
      {"a stop too long",     [](MachineWords& w) { w.stroke = "44mm"; w.crown_depth = "14mm"; w.stop_length = "58mm"; }, Trouble::not_understood, "out-of-range",   "--stop-length",     "longer"},
      {"no such thread",      [](MachineWords& w) { w.plug_thread = "M14x1.3"; },                                         Trouble::no_such,        "no-such-thread", "--plug-thread",     "M14"},
      {"no such material",    [](MachineWords& w) { w.plug_material = "cheese"; },                                        Trouble::no_such,        "no-such-name",   "--plug-material",   "cast-aluminium"},
      {"a short name of two", [](MachineWords& w) { w.short_name = "the saw"; },                                          Trouble::not_understood, "not-understood", "--short-name",      "clutch-hub"},
  };
  // clang-format on
  for (const auto& row : wrong) {
    MachineWords words = k_saw;
    row.spoil(words);
    test::expect_refused(row, problem_of(add(words)));
  }
  EXPECT_THAT(scratch.names(), IsEmpty()); // nor was a file made for any of them
}

// What lies just inside the limits above.
TEST_F(RecordedMachines, AreTakenUpToTheirLimits) {
  EXPECT_TRUE(add({.called = "A", .kind = "s", .stroke = "44mm", .rod = "22.01mm"}).has_value());
  EXPECT_TRUE(add({.called = "B", .kind = "s", .stroke = "44mm", .port_depth = "43.9mm"}).has_value());
  EXPECT_TRUE(
      add({.called = "C", .kind = "s", .stroke = "44mm", .crown_depth = "14mm", .stop_length = "57.9mm"}).has_value());
  EXPECT_TRUE(add({.called = "D", .kind = "s", .crown_depth = "14mm", .stop_length = "14.1mm"}).has_value());
}

} // namespace
} // namespace clampwright::specdb
