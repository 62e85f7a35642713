// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/wrenches.hpp"

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/events.hpp"
#include "specdb/workshop/stored_unit.hpp"

namespace clampwright::specdb {

namespace {

Result<WrenchRecord> named(const std::vector<WrenchRecord>& wrenches, std::string_view name) {
  const std::string wanted = text::plain_spaces(name);
  for (const WrenchRecord& wrench : wrenches)
    if (text::equal_fold(wrench.slug, wanted) || text::equal_fold(wrench.name, wanted)) return wrench;
  if (wrenches.empty())
    return refuse(Trouble::no_such, "no-such-wrench", "no wrench is recorded in the workshop file", name,
                  "enter yours: clampwright wrench add A --range 10..60Nm --turns both; or leave --wrench away");
  std::vector<std::string> names;
  for (const WrenchRecord& wrench : wrenches)
    names.push_back(wrench.slug);
  return no_such_name("wrench", name, names);
}

} // namespace

std::vector<WrenchRecord> all_wrenches(const SQLite::Database& database) {
  Query row(database,
            "SELECT slug, name, low, high, unit, step, accuracy, accuracy_basis, turns, due_on, accuracy_class, "
            "arm_mm, calibrated_on, calibration_months, calibration_cycles, retired_on, retired_because, id "
            "FROM wrench ORDER BY id");
  std::vector<WrenchRecord> wrenches;
  while (row.next())
    wrenches.push_back(
        {row.text(0), row.text(1), row.real(2), row.real(3), stored_torque_unit(row.text(4)), row.maybe_real(5),
         row.real(6), row.text(7), row.text(8), row.maybe_text(9), row.maybe_text(10), row.maybe_real(11),
         row.maybe_text(12), row.maybe_whole(13), row.maybe_whole(14), row.maybe_text(15), row.maybe_text(16),
         events_of(database, "SELECT on_date, kind, words, cycles FROM kept_event WHERE wrench_id = ? ORDER BY id",
                   row.integer(17))});
  return wrenches;
}

Result<WrenchRecord> find_wrench(const SQLite::Database& database, std::string_view name) {
  return named(all_wrenches(database), name);
}

std::vector<WrenchRecord> all_wrenches(const Workshop& workshop) {
  return translated([&] { return all_wrenches(workshop.connection()); });
}

Result<WrenchRecord> find_wrench(const Workshop& workshop, std::string_view name) {
  return named(all_wrenches(workshop), name);
}

} // namespace clampwright::specdb
