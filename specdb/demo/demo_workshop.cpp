// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/demo/demo_workshop.hpp"

#include <string_view>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "specdb/catalogue/catalogue.hpp"
#include "specdb/demo/demo_joints.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

namespace {

using std::chrono::months;
using std::chrono::year_month_day;

void add_sources(const SQLite::Database& database) {
  add_source(database, {k_marrowfen_first, "Marrowfen workshop sheets (invented)", "1st print"});
  add_source(database, {k_marrowfen, "Marrowfen workshop sheets (invented)", "2nd print"});
  add_source(database, {k_marrowfen_bulletin, "Marrowfen bulletin (invented)", "sheet B2"});
  add_source(database, {k_tallisk, "Tallisk handbook (invented)", "rev C"});
  add_source(database, {k_notebook, "yard notebook (invented)", "undated", Known::second_hand});
  add_source(database, {k_ostrel, "Ostrel boat book (invented)", "1st edition"});
}

// The first of a month so many months away.
std::string first_of_month(year_month_day today, int away) {
  const year_month_day day = year_month_day{today.year(), today.month(), std::chrono::day{1}} + months{away};
  return fmt::format("{:04}-{:02}-{:02}", int(day.year()), unsigned(day.month()), unsigned(day.day()));
}

void add_wrenches(const SQLite::Database& database, year_month_day today) {
  add_wrench(database, {.slug = "A",
                        .name = "Bench wrench A",
                        .low = 10,
                        .high = 60,
                        .step = 0.5,
                        .accuracy = 0.04,
                        .accuracy_basis = "calibration sheet of wrench A (invented)",
                        .turns = "clockwise",
                        .due_on = first_of_month(today, 5),
                        .arm_mm = 300});
  add_wrench(database, {.slug = "B",
                        .name = "Long wrench B",
                        .low = 40,
                        .high = 200,
                        .step = 1.0,
                        .accuracy = 0.04,
                        .accuracy_basis = "calibration sheet of wrench B (invented)",
                        .turns = "both",
                        .due_on = first_of_month(today, -1),
                        .arm_mm = 560});
  add_wrench(database, {.slug = "C",
                        .name = "Small wrench C",
                        .low = 1,
                        .high = 12,
                        .step = 0.1,
                        .accuracy = 0.06,
                        .accuracy_basis = "calibration sheet of wrench C (invented)",
                        .turns = "both",
                        .due_on = first_of_month(today, 8),
                        .arm_mm = 180});
}

// The first print of the sheets had another figure for the head nuts.
void revise_head_nuts(const SQLite::Database& database, JointRecord joint) {
  const FigureRecord now = joint.figure;
  joint.figure.printed = "16 N·m";
  joint.figure.value = 16.0;
  joint.figure.passes = {5.0, 11.0, 16.0};
  joint.figure.sequence = "crosswise";
  joint.figure.source_slug = k_marrowfen_first;
  joint.figure.source.where = "page 5";
  joint.figure.revised_because.reset();
  add_joint(database, joint);
  Query first(database, "SELECT max(id) FROM figure");
  (void)first.next();
  if (const auto revised = revise_figure(database, first.integer(0), now); !revised)
    throw DatabaseError(revised.error().message, Trouble::internal);
}

void add_machine_with(const SQLite::Database& database, const MachineRecord& machine,
                      const std::vector<JointRecord>& joints) {
  add_machine(database, machine);
  for (JointRecord joint : joints) {
    joint.machine = machine;
    if (joint.figure.revised_because)
      revise_head_nuts(database, std::move(joint));
    else
      add_joint(database, joint);
  }
}

} // namespace

Result<void> make_demo_workshop(const std::filesystem::path& path, year_month_day today) {
  const std::string data_version = Catalogue().data_version();
  return Workshop::create(path, [&](SQLite::Database& database) {
    run(database, "INSERT INTO meta VALUES ('invented', 'yes'), ('workshop', 'Reedmarsh Volunteer Flood Crew')");
    run(database, "INSERT INTO meta VALUES ('data_version', ?)", data_version);
    add_sources(database);
    add_machine_with(database, demo_pump(), pump_joints());
    add_machine_with(database, demo_winch(), winch_joints());
    add_machine_with(database, demo_boat(), boat_joints());
    add_wrenches(database, today);
  });
}

} // namespace clampwright::specdb
