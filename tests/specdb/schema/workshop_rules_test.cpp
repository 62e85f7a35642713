// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the tables of a workshop file take and what they refuse. Each row has both: two changes of one sound workshop
// that differ in the fault alone, so that a rule which refuses everything, or nothing, is seen.
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
#include "tests/specdb/scratch.hpp"
#include "tests/specdb/small_workshop.hpp"

namespace clampwright::specdb {
namespace {

struct Rule {
  const char* fault;
  const char* refused;
  const char* taken;
};

// clang-format off
constexpr Rule k_machine[] = {
    {"a rod shorter than the crank",      "UPDATE machine SET rod_mm = 22.0",                   "UPDATE machine SET rod_mm = 22.1"}, // stroke 44
    {"a stroke of nothing",               "UPDATE machine SET stroke_mm = 0.0",                 "UPDATE machine SET stroke_mm = 40.0"},
    {"text for a number",                 "UPDATE machine SET stroke_mm = 'long'",              "UPDATE machine SET stroke_mm = NULL"},
    {"a turn that is none",               "UPDATE machine SET crank_turn = 'left' WHERE id = 1", "UPDATE machine SET crank_turn = 'anticlockwise' WHERE id = 1"},
    {"a turn seen from nowhere",          "UPDATE machine SET crank_seen_from = NULL",          "UPDATE machine SET crank_seen_from = NULL, crank_turn = NULL"},
    {"a port above the top",              "UPDATE machine SET port_below_top_mm = 0.0",         "UPDATE machine SET port_below_top_mm = 27.0"},
    {"a plug without reach",              "UPDATE machine SET plug_reach_mm = -12.7",           "UPDATE machine SET plug_reach_mm = 12.7"},
    {"a crown above the plug",            "UPDATE machine SET crown_depth_mm = 0.0",            "UPDATE machine SET crown_depth_mm = 20.0"},
    {"a stop of nothing",                 "UPDATE machine SET stop_length_mm = 0.0",            "UPDATE machine SET stop_length_mm = 24.0"},
    {"a stop without a tip",              "UPDATE machine SET stop_tip_mm = 0.0",               "UPDATE machine SET stop_tip_mm = 8.0"},
    {"a crown that bears nothing",        "UPDATE machine SET stop_tip_limit_MPa = 0.0",        "UPDATE machine SET stop_tip_limit_MPa = 40.0"},
    {"no name",                           "UPDATE machine SET name = NULL",                     "UPDATE machine SET name = 'another'"},
    {"a slug twice",                      "UPDATE machine SET slug = 'm'",                      "UPDATE machine SET slug = 'n' WHERE id = 1"},
    {"an assembly twice",                 "INSERT INTO assembly (machine_id, name) VALUES (1, 'an assembly')",
                                          "INSERT INTO assembly (machine_id, name) VALUES (2, 'an assembly')"},
    {"an assembly of no machine",         "UPDATE assembly SET machine_id = 9",                 "UPDATE assembly SET machine_id = 2"},
    {"a way of knowing that is none",     "UPDATE source SET known = 'hearsay'",                "UPDATE source SET known = 'memory'"},
};

constexpr Rule k_joint[] = {
    {"a joint of no assembly",            "UPDATE joint SET assembly_id = 9",                   "UPDATE joint SET assembly_id = 1"},
    {"a kind that is none",               "UPDATE joint SET kind = 'rivet'",                    "UPDATE joint SET kind = 'union'"},
    {"no bolts at all",                   "UPDATE joint SET quantity = 0",                      "UPDATE joint SET quantity = 1"},
    {"a part that nobody turns",          "UPDATE joint SET turned = 'shank'",                  "UPDATE joint SET turned = 'nut'"},
    {"a face without inner diameter",     "UPDATE joint SET face_outer = '13 mm'",              "UPDATE joint SET face_outer = '13 mm', face_inner = '9 mm'"},
    {"half on the crank",                 "UPDATE joint SET on_crank = 2",                      "UPDATE joint SET on_crank = 1"},
    {"a shaft that turns left",           "UPDATE joint SET shaft_turn = 'left'",               "UPDATE joint SET shaft_turn = 'anticlockwise'"},
    {"a driver that is neither",          "UPDATE joint SET driver = 'belt'",                   "UPDATE joint SET driver = 'part'"},
    {"seen from nowhere",                 "UPDATE joint SET seen_from = NULL",                  "UPDATE joint SET seen_from = 'from above'"},
    {"a place neither dry nor wet",       "UPDATE joint SET duty = 'damp'",                     "UPDATE joint SET duty = 'wet'"},
    {"bolts that lie in a heap",          "UPDATE joint SET pattern = 'heap'",                  "UPDATE joint SET pattern = 'row'"},
    {"a demand without its reason",       "UPDATE joint SET must_clamp = '9 kN'",               "UPDATE joint SET must_clamp = '9 kN', must_clamp_because = 'x'"},
    {"a lock of no joint",                "UPDATE joint_lock SET joint_id = 9",                 "UPDATE joint_lock SET joint_id = 1"},
    {"a lock before the first",           "UPDATE joint_lock SET position = 0",                 "UPDATE joint_lock SET position = 2"},
    {"two locks in one place",            "INSERT INTO joint_lock (joint_id, position, lock) VALUES (1, 1, 'lock-wire')",
                                          "INSERT INTO joint_lock (joint_id, position, lock) VALUES (1, 2, 'lock-wire')"},
    {"a neighbour of no joint",           "UPDATE neighbour SET joint_id = 9",                  "UPDATE neighbour SET joint_id = 1"},
    {"a neighbour that heat is nothing to", "UPDATE neighbour SET bears_degC = NULL",           "UPDATE neighbour SET bears_degC = NULL, runs_at_degC = 90.0"},
    {"colder than anything bears",        "UPDATE neighbour SET bears_degC = -273.2",           "UPDATE neighbour SET bears_degC = -273.15"},
    {"hotter than anything bears",        "UPDATE neighbour SET bears_degC = 3000.1",           "UPDATE neighbour SET bears_degC = 3000.0"},
    {"colder than anything runs",         "UPDATE neighbour SET runs_at_degC = -273.2",         "UPDATE neighbour SET runs_at_degC = -273.15"},
    {"hotter than anything runs",         "UPDATE neighbour SET runs_at_degC = 3000.1",         "UPDATE neighbour SET runs_at_degC = 3000.0"},
    {"a neighbour twice",                 "INSERT INTO neighbour VALUES (1, 'seal', 90.0, NULL)", "INSERT INTO neighbour VALUES (1, 'hose', 90.0, NULL)"},
};

constexpr Rule k_figure[] = {
    {"a figure of no joint",              "UPDATE figure SET joint_id = 9",                     "UPDATE figure SET joint_id = 1"},
    {"a figure without source",           "UPDATE figure SET source_id = 9",                    "UPDATE figure SET source_id = 1"},
    {"no printed words",                  "UPDATE figure SET printed = NULL",                   "UPDATE figure SET printed = ''"},
    {"a value without unit",              "UPDATE figure SET unit = NULL",                      "UPDATE figure SET unit = 'lbf.ft'"},
    {"a maker's figure without value",    "UPDATE figure SET value = NULL, unit = NULL",        "UPDATE figure SET value = NULL, unit = NULL, status = 'none'"},
    {"a value where there is none",       "UPDATE figure SET status = 'none'",                  "UPDATE figure SET status = 'shop'"},
    {"a torque of nothing",               "UPDATE figure SET value = 0.0",                      "UPDATE figure SET value = 0.1"},
    {"a status that is none",             "UPDATE figure SET status = 'guess'",                 "UPDATE figure SET status = 'derived'"},
    {"a tolerance beside the value",      "UPDATE figure SET low = 9.1, high = 10.0",           "UPDATE figure SET low = 9.0, high = 10.0"},
    {"a tolerance below the value",       "UPDATE figure SET low = 8.0, high = 8.9",            "UPDATE figure SET low = 8.0, high = 9.0"},
    {"half a tolerance",                  "UPDATE figure SET low = 8.0",                        "UPDATE figure SET low = 8.0, high = 10.0"},
    {"a method that is none",             "UPDATE figure SET method = 'guess'",                 "UPDATE figure SET method = 'to-shoulder'"},
    {"an angle backwards",                "UPDATE figure SET angle_deg = -60.0",                "UPDATE figure SET angle_deg = 60.0"},
    {"a running torque ruled out",        "UPDATE figure SET running_torque_rule = 'left out'", "UPDATE figure SET running_torque_rule = 'included'"},
    {"a rule for use again that is none", "UPDATE figure SET reuse_rule = 'once', reuse = 'x'", "UPDATE figure SET reuse_rule = 'while-good', reuse = 'x'"},
    {"a rule for use again, no words",    "UPDATE figure SET reuse_rule = 'never'",             "UPDATE figure SET reuse_rule = 'never', reuse = 'a new one'"},
    {"words for use again, no rule",      "UPDATE figure SET reuse = 'a new one'",              "UPDATE figure SET reuse = 'a new one', reuse_rule = 'never'"},
    {"a reason for no revision",          "UPDATE figure SET revised_because = 'x' WHERE id = 1", "UPDATE figure SET revised_because = 'x' WHERE id = 2"}, // 2 supersedes 1
    {"the place of a figure that is not there", "UPDATE figure SET supersedes = 9 WHERE id = 3", "UPDATE figure SET supersedes = 2 WHERE id = 3"},
    {"two revisions of one figure",       "UPDATE figure SET supersedes = 1 WHERE id = 3",      "UPDATE figure SET supersedes = NULL WHERE id = 3"},
    {"a pass of nothing",                 "UPDATE figure_pass SET value = 0.0",                 "UPDATE figure_pass SET value = 0.1"},
    {"a pass before the first",           "UPDATE figure_pass SET position = 0",                "UPDATE figure_pass SET position = 2"},
    {"a pass of no figure",               "UPDATE figure_pass SET figure_id = 9",               "UPDATE figure_pass SET figure_id = 2"},
    {"two passes in one place",           "INSERT INTO figure_pass VALUES (1, 1, 9.0)",         "INSERT INTO figure_pass VALUES (1, 2, 9.0)"},
    {"a recheck at once",                 "UPDATE recheck SET hours = 0.0",                     "UPDATE recheck SET hours = 0.5"},
    {"a recheck the same day",            "UPDATE recheck SET days = 0.0",                      "UPDATE recheck SET days = 1.0"},
    {"a recheck without words",           "UPDATE recheck SET words = NULL",                    "UPDATE recheck SET words = 'cold'"},
    {"a recheck before the first",        "UPDATE recheck SET position = 0",                    "UPDATE recheck SET position = 2"},
    {"a recheck of no figure",            "UPDATE recheck SET figure_id = 9",                   "UPDATE recheck SET figure_id = 2"},
};

constexpr Rule k_wrench[] = {
    {"a scale from nothing",              "UPDATE wrench SET low = 0.0",                        "UPDATE wrench SET low = 0.1"},
    {"a scale of one mark",               "UPDATE wrench SET high = 10.0",                      "UPDATE wrench SET high = 10.1"}, // low 10
    {"marks on top of each other",        "UPDATE wrench SET step = 0.0",                       "UPDATE wrench SET step = NULL"},
    {"no error at all",                   "UPDATE wrench SET accuracy = 0.0",                   "UPDATE wrench SET accuracy = 0.01"},
    {"an error of everything",            "UPDATE wrench SET accuracy = 1.0",                   "UPDATE wrench SET accuracy = 0.99"},
    {"an accuracy from nowhere",          "UPDATE wrench SET accuracy_basis = NULL",            "UPDATE wrench SET accuracy_basis = 'a sheet'"},
    {"a wrench that turns right",         "UPDATE wrench SET turns = 'right'",                  "UPDATE wrench SET turns = 'clockwise'"},
    {"a day the other way round",         "UPDATE wrench SET due_on = '31.12.2026'",            "UPDATE wrench SET due_on = '2026-12-31'"},
    {"a day without its noughts",         "UPDATE wrench SET due_on = '2026-7-1'",              "UPDATE wrench SET due_on = '2026-07-01'"},
    {"a day with an hour",                "UPDATE wrench SET due_on = '2026-07-01T12:00'",      "UPDATE wrench SET due_on = NULL"},
    {"a month from twenty on",            "UPDATE wrench SET due_on = '2026-23-01'",            "UPDATE wrench SET due_on = '2026-12-01'"},
    {"an arm of nothing",                 "UPDATE wrench SET arm_mm = 0.0",                     "UPDATE wrench SET arm_mm = 300.0"},
    {"calibrated on no day",              "UPDATE wrench SET calibrated_on = 'May'",            "UPDATE wrench SET calibrated_on = '2026-05-01'"},
    {"due at once",                       "UPDATE wrench SET calibration_months = 0",           "UPDATE wrench SET calibration_months = 12"},
    {"due after no pull",                 "UPDATE wrench SET calibration_cycles = 0",           "UPDATE wrench SET calibration_cycles = 5000"},
    {"retired without a reason",          "UPDATE wrench SET retired_on = '2026-05-01'",        "UPDATE wrench SET retired_on = '2026-05-01', retired_because = 'x'"},
    {"a slug twice",                      "UPDATE wrench SET slug = 'A'",                       "UPDATE wrench SET slug = 'C' WHERE slug = 'A'"},
};

constexpr Rule k_kept[] = {
    {"a compound without a label",        "UPDATE compound SET label = ''",                     "UPDATE compound SET label = 'the small bottle'"},
    {"a compound of no grade",            "UPDATE compound SET grade = NULL",                   "UPDATE compound SET grade = 'compound-low'"},
    {"an expiry that is no day",          "UPDATE compound SET expires_on = 'soon'",            "UPDATE compound SET expires_on = '2027-01-31'"},
    {"opened on no day",                  "UPDATE compound SET opened_on = '2026-1-1'",         "UPDATE compound SET opened_on = '2026-01-01'"},
    {"colder than anything bears",        "UPDATE compound SET bears_degC = -300.0",            "UPDATE compound SET bears_degC = 150.0"},
    {"thrown away without a reason",      "UPDATE compound SET retired_on = '2026-05-01'",      "UPDATE compound SET retired_on = '2026-05-01', retired_because = 'x'"},
    {"an event of nothing",               "UPDATE kept_event SET wrench_id = NULL",             "UPDATE kept_event SET wrench_id = NULL, compound_id = 1"},
    {"an event of two things",            "UPDATE kept_event SET compound_id = 1",              "UPDATE kept_event SET wrench_id = 2"},
    {"an event of a wrench that is not there", "UPDATE kept_event SET wrench_id = 9",           "UPDATE kept_event SET wrench_id = 2"},
    {"an event on no day",                "UPDATE kept_event SET on_date = 'Monday'",           "UPDATE kept_event SET on_date = '2026-03-02'"},
    {"an event that is none",             "UPDATE kept_event SET kind = 'lent'",                "UPDATE kept_event SET kind = 'note'"},
    {"a use without its pulls",           "UPDATE kept_event SET kind = 'used'",                "UPDATE kept_event SET kind = 'used', cycles = 4"},
    {"pulls of a drop",                   "UPDATE kept_event SET cycles = 4",                   "UPDATE kept_event SET kind = 'overload'"},
};

constexpr Rule k_record[] = {
    {"a figure entered on no day",        "UPDATE figure SET entered_on = '26.11.2026'",        "UPDATE figure SET entered_on = '2026-11-26'"},
    {"an event of no record",             "INSERT INTO record_event (on_date, kind, words) VALUES ('2026-03-01', 'entered', '')",
                                          "INSERT INTO record_event (joint_id, on_date, kind, words) VALUES (1, '2026-03-01', 'entered', '')"},
    {"an event of two records",           "INSERT INTO record_event (machine_id, joint_id, on_date, kind, words) VALUES (1, 1, '2026-03-01', 'entered', '')",
                                          "INSERT INTO record_event (machine_id, on_date, kind, words) VALUES (1, '2026-03-01', 'entered', '')"},
    {"an event of a machine that is not there", "INSERT INTO record_event (machine_id, on_date, kind, words) VALUES (9, '2026-03-01', 'entered', '')",
                                          "INSERT INTO record_event (machine_id, on_date, kind, words) VALUES (2, '2026-03-01', 'entered', '')"},
    {"an event of a joint that is not there", "INSERT INTO record_event (joint_id, on_date, kind, words) VALUES (9, '2026-03-01', 'entered', '')",
                                          "INSERT INTO record_event (joint_id, on_date, kind, words) VALUES (1, '2026-03-01', 'entered', 'x')"},
    {"a revision on no day",              "INSERT INTO record_event (joint_id, on_date, kind, words, because) VALUES (1, 'May', 'revised', 'x', 'y')",
                                          "INSERT INTO record_event (joint_id, on_date, kind, words, because) VALUES (1, '2026-05-01', 'revised', 'x', 'y')"},
    {"a revision without a reason",       "INSERT INTO record_event (joint_id, on_date, kind, words) VALUES (1, '2026-05-01', 'revised', 'x')",
                                          "INSERT INTO record_event (joint_id, on_date, kind, words, because) VALUES (1, '2026-05-01', 'revised', '', 'y')"},
    {"a reason for being entered",        "INSERT INTO record_event (joint_id, on_date, kind, words, because) VALUES (1, '2026-05-01', 'entered', '', 'y')",
                                          "INSERT INTO record_event (joint_id, on_date, kind, words, because) VALUES (1, '2026-05-01', 'revised', '', 'z')"},
    {"what happened, changed",            "UPDATE record_event SET words = 'nothing'",          "UPDATE joint SET words = 'nothing'"},
    {"what happened, taken away",         "DELETE FROM record_event",                           "DELETE FROM kept_event"},
};
// clang-format on

// A sound workshop: machines 1 and 2, joint 1 with a lock and a neighbour, its figure 1 with a pass and a recheck, 2 in
// the place of 1, 3 beside them, wrenches A and B.
void fill(SQLite::Database& database) {
  add_machine(database, {.slug = "m",
                         .name = "machine",
                         .kind = "engine",
                         .crank_turn = "clockwise",
                         .crank_seen_from = "from the clutch",
                         .stroke_mm = 44.0,
                         .rod_mm = 88.0});
  add_machine(database, {.slug = "m2", .name = "machine", .kind = "saw"});
  JointRecord joint = test::small_joint("m/j", "m");
  joint.locks = {{"split-pin", {}}};
  joint.neighbours = {{"seal", 120.0, {}}};
  joint.figure.passes = {9.0};
  joint.figure.recheck = {{"after an hour", 1.0, {}, {}}};
  add_joint(database, joint);
  ASSERT_TRUE(revise_figure(database, 1, test::small_figure()).has_value());
  run(database, "INSERT INTO figure (joint_id, printed, value, unit, surfaces, source_id, place, status) SELECT "
                "joint_id, printed, value, unit, surfaces, source_id, place, status FROM figure WHERE id = 1");
  for (const char* slug : {"A", "B"})
    add_wrench(database, {.slug = slug, .name = slug, .low = 10, .high = 60, .step = 1.0, .accuracy_basis = "x"});
  add_wrench_event(database, "A", {"2026-03-01", "drop", "off the bench", {}});
  add_joint_event(database, "m/j", {.on_date = "2026-03-01", .kind = "entered"});
  add_compound(database, {.slug = "c", .label = "a bottle", .grade = "compound-medium"});
}

// Does the workshop take it? It is as it was afterwards.
bool takes(const SQLite::Database& database, const char* sql) {
  run(database, "SAVEPOINT before");
  bool taken = true;
  try {
    run(database, sql);
    Query changed(database, "SELECT changes()");
    EXPECT_TRUE(changed.next() && changed.integer(0) > 0) << sql << " is about nothing";
  } catch (const SQLite::Exception&) {
    taken = false;
  }
  run(database, "ROLLBACK TO before");
  run(database, "RELEASE before");
  return taken;
}

template<class Check>
void with_every_rule(Check check) {
  const test::Scratch scratch;
  test::make_small_workshop(scratch / "w", [&](SQLite::Database& database) {
    fill(database);
    for (const Rule& rule : k_machine)
      check(database, rule);
    for (const Rule& rule : k_joint)
      check(database, rule);
    for (const Rule& rule : k_figure)
      check(database, rule);
    for (const Rule& rule : k_wrench)
      check(database, rule);
    for (const Rule& rule : k_kept)
      check(database, rule);
    for (const Rule& rule : k_record)
      check(database, rule);
  });
}

TEST(WorkshopSchema, TakesWhatKeepsItsRules) {
  with_every_rule([](const SQLite::Database& database, const Rule& rule) {
    EXPECT_TRUE(takes(database, rule.taken)) << "but for " << rule.fault;
  });
}

TEST(WorkshopSchema, RefusesWhatBreaksItsRules) {
  with_every_rule([](const SQLite::Database& database, const Rule& rule) {
    EXPECT_FALSE(takes(database, rule.refused)) << rule.fault;
  });
}

} // namespace
} // namespace clampwright::specdb
