// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/machines.hpp"

#include <string>

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/events.hpp"

namespace clampwright::specdb {

namespace {

// Of one machine by its slug, or of all by NULL.
constexpr const char* k_machines =
    "SELECT id, slug, name, kind, serial_from, serial_to, crank_turn, crank_seen_from, stroke_mm, rod_mm, "
    "port_below_top_mm, "
    "plug_reach_mm, regulated_by, crown_depth_mm, stop_length_mm, stop_tip_mm, stop_tip_limit_MPa, plug_thread, "
    "head_material FROM machine WHERE ?1 IS NULL OR slug = lower(?1) ORDER BY id";

MachineRecord machine_from(const SQLite::Database& database, const Query& row) {
  return {row.text(1),
          row.text(2),
          row.text(3),
          row.maybe_text(4),
          row.maybe_text(5),
          row.maybe_text(6),
          row.maybe_text(7),
          row.maybe_real(8),
          row.maybe_real(9),
          row.maybe_real(10),
          row.maybe_real(11),
          row.maybe_text(12),
          row.maybe_real(13),
          row.maybe_real(14),
          row.maybe_real(15),
          row.maybe_real(16),
          row.maybe_text(17),
          row.maybe_text(18),
          record_events_of(database,
                           "SELECT on_date, kind, words, because FROM record_event WHERE machine_id = ? ORDER BY id",
                           row.integer(0))};
}

} // namespace

std::optional<MachineRecord> machine_of_slug(const SQLite::Database& database, std::string_view slug) {
  Query row(database, k_machines, slug);
  if (!row.next()) return std::nullopt;
  return machine_from(database, row);
}

std::vector<MachineRecord> all_machines(const SQLite::Database& database) {
  Query row(database, k_machines, MaybeText());
  std::vector<MachineRecord> machines;
  while (row.next())
    machines.push_back(machine_from(database, row));
  return machines;
}

Result<MachineRecord> find_machine(const SQLite::Database& database, std::string_view name) {
  const std::string wanted = text::plain_spaces(name);
  if (auto machine = machine_of_slug(database, wanted)) return std::move(*machine);
  std::vector<std::string> slugs;
  for (MachineRecord& machine : all_machines(database)) {
    if (text::equal_fold(machine.name, wanted)) return std::move(machine);
    slugs.push_back(machine.slug);
  }
  if (slugs.empty())
    return refuse(Trouble::no_such, "no-such-machine", "no machine is recorded in the workshop file", name,
                  "enter the machine first, with its name and what it is");
  return no_such_name("machine", name, slugs);
}

std::optional<MachineRecord> machine_of_slug(const Workshop& workshop, std::string_view slug) {
  return translated([&] { return machine_of_slug(workshop.connection(), slug); });
}

std::vector<MachineRecord> all_machines(const Workshop& workshop) {
  return translated([&] { return all_machines(workshop.connection()); });
}

Result<MachineRecord> find_machine(const Workshop& workshop, std::string_view name) {
  return translated([&] { return find_machine(workshop.connection(), name); });
}

} // namespace clampwright::specdb
