// SPDX-License-Identifier: GPL-3.0-or-later
//
// Entering what is kept on the bench and the shelf: wrenches, compounds and what happens to them.
#include "specdb/workshop/entries.hpp"

#include <fmt/format.h>

#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

// The only row that the statement before this was about.
void must_have_changed(const SQLite::Database& database, std::string_view slug) {
  Query changed(database, "SELECT changes()");
  if (!changed.next() || changed.integer(0) != 1)
    throw DatabaseError(fmt::format("nothing is entered under {}", slug), Trouble::internal);
}

} // namespace

void add_wrench(const SQLite::Database& database, const WrenchRecord& w) {
  run(database,
      "INSERT INTO wrench (slug, name, low, high, unit, step, accuracy, accuracy_basis, turns, due_on, accuracy_class, "
      "arm_mm, calibrated_on, calibration_months, calibration_cycles, retired_on, retired_because) VALUES (?, ?, ?, ?, "
      "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      w.slug, w.name, w.low, w.high, w.unit, w.step, w.accuracy, w.accuracy_basis, w.turns, w.due_on, w.accuracy_class,
      w.arm_mm, w.calibrated_on, w.calibration_months, w.calibration_cycles, w.retired_on, w.retired_because);
  for (const EventRecord& event : w.events)
    add_wrench_event(database, w.slug, event);
}

void revise_wrench(const SQLite::Database& database, const WrenchRecord& w) {
  run(database,
      "UPDATE wrench SET name = ?, low = ?, high = ?, unit = ?, step = ?, accuracy = ?, accuracy_basis = ?, turns = ?, "
      "due_on = ?, accuracy_class = ?, arm_mm = ?, calibrated_on = ?, calibration_months = ?, calibration_cycles = ?, "
      "retired_on = ?, retired_because = ? WHERE slug = ?",
      w.name, w.low, w.high, w.unit, w.step, w.accuracy, w.accuracy_basis, w.turns, w.due_on, w.accuracy_class,
      w.arm_mm, w.calibrated_on, w.calibration_months, w.calibration_cycles, w.retired_on, w.retired_because, w.slug);
  must_have_changed(database, w.slug);
}

void add_wrench_event(const SQLite::Database& database, std::string_view slug, const EventRecord& e) {
  run(database,
      "INSERT INTO kept_event (wrench_id, on_date, kind, words, cycles) SELECT id, ?, ?, ?, ? FROM wrench WHERE slug = "
      "?",
      e.on_date, e.kind, e.words, e.cycles, slug);
  must_have_changed(database, slug);
}

void add_compound(const SQLite::Database& database, const CompoundRecord& c) {
  run(database,
      "INSERT INTO compound (slug, label, grade, batch, expires_on, opened_on, bears_degC, sheet, retired_on, "
      "retired_because) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      c.slug, c.label, c.grade, c.batch, c.expires_on, c.opened_on, c.bears_degC, c.sheet, c.retired_on,
      c.retired_because);
  for (const EventRecord& event : c.events)
    add_compound_event(database, c.slug, event);
}

void revise_compound(const SQLite::Database& database, const CompoundRecord& c) {
  run(database,
      "UPDATE compound SET label = ?, grade = ?, batch = ?, expires_on = ?, opened_on = ?, bears_degC = ?, sheet = ?, "
      "retired_on = ?, retired_because = ? WHERE slug = ?",
      c.label, c.grade, c.batch, c.expires_on, c.opened_on, c.bears_degC, c.sheet, c.retired_on, c.retired_because,
      c.slug);
  must_have_changed(database, c.slug);
}

void add_compound_event(const SQLite::Database& database, std::string_view slug, const EventRecord& e) {
  run(database,
      "INSERT INTO kept_event (compound_id, on_date, kind, words, cycles) SELECT id, ?, ?, ?, ? FROM compound WHERE "
      "slug = ?",
      e.on_date, e.kind, e.words, e.cycles, slug);
  must_have_changed(database, slug);
}

} // namespace clampwright::specdb
