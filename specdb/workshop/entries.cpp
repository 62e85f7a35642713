// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/entries.hpp"

#include <set>
#include <string>

#include <fmt/format.h>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/index_words.hpp"

namespace clampwright::specdb {

namespace {

long long last_id(const SQLite::Database& database) {
  Query row(database, "SELECT last_insert_rowid()");
  (void)row.next();
  return row.integer(0);
}

long long id_of(const SQLite::Database& database, const char* sql, std::string_view slug) {
  Query row(database, sql, slug);
  if (!row.next()) throw DatabaseError(fmt::format("nothing is entered under {}", slug), Trouble::internal);
  return row.integer(0);
}

long long add_figure(const SQLite::Database& database, long long joint, const FigureRecord& f,
                     std::optional<long long> supersedes) {
  const long long source = id_of(database, "SELECT id FROM source WHERE slug = ?", f.source_slug);
  run(database,
      "INSERT INTO figure (joint_id, printed, value, unit, tolerance, low, high, method, angle_deg, reading, surfaces, "
      "friction, condition, temperature, sequence, running_torque_rule, reuse_rule, reuse, source_id, place, status, "
      "supersedes, revised_because, entered_on) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
      "?, ?, ?)",
      joint, f.printed, f.value, f.unit, f.tolerance, f.low, f.high, f.method, f.angle_deg, f.reading, f.surfaces,
      f.friction, f.condition, f.temperature, f.sequence, f.running_torque_rule, f.reuse_rule, f.reuse, source,
      f.source.where, f.status, supersedes, f.revised_because, f.entered_on);
  const long long figure = last_id(database);
  int position = 0;
  for (const double pass : f.passes)
    run(database, "INSERT INTO figure_pass (figure_id, position, value) VALUES (?, ?, ?)", figure, ++position, pass);
  position = 0;
  for (const RecheckRecord& r : f.recheck)
    run(database, "INSERT INTO recheck (figure_id, position, words, hours, days, event) VALUES (?, ?, ?, ?, ?, ?)",
        figure, ++position, r.words, r.hours, r.days, r.event);
  return figure;
}

long long machine_id(const SQLite::Database& database, std::string_view slug) {
  return id_of(database, "SELECT id FROM machine WHERE slug = ?", slug);
}

long long joint_id(const SQLite::Database& database, std::string_view slug) {
  return id_of(database, "SELECT id FROM joint WHERE slug = ?", slug);
}

void add_assembly(const SQLite::Database& database, long long machine, const std::string& name) {
  run(database, "INSERT OR IGNORE INTO assembly (machine_id, name) VALUES (?, ?)", machine, name);
}

void add_locks_and_neighbours(const SQLite::Database& database, long long joint, const JointRecord& j) {
  int position = 0;
  for (const LockRecord& lock : j.locks)
    run(database, "INSERT INTO joint_lock (joint_id, position, lock, note) VALUES (?, ?, ?, ?)", joint, ++position,
        lock.lock, lock.note);
  for (const NeighbourRecord& n : j.neighbours)
    run(database, "INSERT INTO neighbour (joint_id, name, bears_degC, runs_at_degC) VALUES (?, ?, ?, ?)", joint, n.name,
        n.bears_degC, n.runs_at_degC);
}

// The index words of all columns of its row in the search index; none where it has no row yet.
std::set<std::string> words_of_joint(const SQLite::Database& database, long long joint) {
  Query row(database,
            "SELECT name || ' ' || assembly || ' ' || machine || ' ' || thread || ' ' || words FROM joint_search "
            "WHERE rowid = ?",
            joint);
  if (!row.next()) return {};
  const auto words = index_words_in(database, row.text(0));
  return {words.begin(), words.end()};
}

// Index words hold letters and digits only, so nothing in them is an operator.
bool is_found(const SQLite::Database& database, const std::string& word) {
  return Query(database, "SELECT 1 FROM joint_search WHERE joint_search MATCH '\"' || ? || '\"' LIMIT 1", word).next();
}

// The words by which it is found, in the place of those by which it was. A word that no joint has any more must go: it
// would be in the way of the one that is meant.
void index_joint(const SQLite::Database& database, long long joint) {
  const std::set<std::string> before = words_of_joint(database, joint);
  run(database, "DELETE FROM joint_search WHERE rowid = ?", joint);
  run(database,
      "INSERT INTO joint_search (rowid, name, assembly, machine, thread, words) SELECT j.id, j.name, a.name, m.name || "
      "' ' || m.kind, j.thread, j.slug || ' ' || j.words FROM joint j JOIN assembly a ON a.id = j.assembly_id JOIN "
      "machine m ON m.id = a.machine_id WHERE j.id = ?",
      joint);
  const std::set<std::string> now = words_of_joint(database, joint);
  for (const std::string& word : now)
    if (!before.contains(word)) run(database, "INSERT OR IGNORE INTO search_word VALUES (?)", word);
  for (const std::string& word : before)
    if (!now.contains(word) && !is_found(database, word)) run(database, "DELETE FROM search_word WHERE word = ?", word);
}

} // namespace

void add_source(const SQLite::Database& database, const SourceRecord& s) {
  run(database, "INSERT INTO source (slug, title, edition, known) VALUES (?, ?, ?, ?)", s.slug, s.title, s.edition,
      known_name(s.known));
}

void add_machine(const SQLite::Database& database, const MachineRecord& m) {
  run(database,
      "INSERT INTO machine (slug, name, kind, serial_from, serial_to, crank_turn, crank_seen_from, stroke_mm, rod_mm, "
      "port_below_top_mm, plug_reach_mm, regulated_by, crown_depth_mm, stop_length_mm, stop_tip_mm, "
      "stop_tip_limit_MPa, plug_thread, head_material) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      m.slug, m.name, m.kind, m.serial_from, m.serial_to, m.crank_turn, m.crank_seen_from, m.stroke_mm, m.rod_mm,
      m.port_below_top_mm, m.plug_reach_mm, m.regulated_by, m.crown_depth_mm, m.stop_length_mm, m.stop_tip_mm,
      m.stop_tip_limit_MPa, m.plug_thread, m.head_material);
  for (const EventRecord& event : m.events)
    add_machine_event(database, m.slug, event);
}

void revise_machine(const SQLite::Database& database, const MachineRecord& m) {
  const long long machine = machine_id(database, m.slug);
  run(database,
      "UPDATE machine SET name = ?, kind = ?, serial_from = ?, serial_to = ?, crank_turn = ?, crank_seen_from = ?, "
      "stroke_mm = ?, rod_mm = ?, port_below_top_mm = ?, plug_reach_mm = ?, regulated_by = ?, crown_depth_mm = ?, "
      "stop_length_mm = ?, stop_tip_mm = ?, stop_tip_limit_MPa = ?, plug_thread = ?, head_material = ? WHERE id = ?",
      m.name, m.kind, m.serial_from, m.serial_to, m.crank_turn, m.crank_seen_from, m.stroke_mm, m.rod_mm,
      m.port_below_top_mm, m.plug_reach_mm, m.regulated_by, m.crown_depth_mm, m.stop_length_mm, m.stop_tip_mm,
      m.stop_tip_limit_MPa, m.plug_thread, m.head_material, machine);
  Query joint(database, "SELECT j.id FROM joint j JOIN assembly a ON a.id = j.assembly_id WHERE a.machine_id = ?",
              machine);
  while (joint.next())
    index_joint(database, joint.integer(0));
}

void add_machine_event(const SQLite::Database& database, std::string_view slug, const EventRecord& e) {
  run(database, "INSERT INTO record_event (machine_id, on_date, kind, words, because) VALUES (?, ?, ?, ?, ?)",
      machine_id(database, slug), e.on_date, e.kind, e.words, e.because);
}

void add_joint(const SQLite::Database& database, const JointRecord& j) {
  const long long machine = machine_id(database, j.machine.slug);
  add_assembly(database, machine, j.assembly);
  run(database,
      "INSERT INTO joint (slug, assembly_id, name, kind, quantity, thread, class, nut_class, turned, head, washer, "
      "face_outer, face_inner, seat, seat_material, soft_material, taper, mating_part, mating_material, engagement, "
      "drive, running_torque, on_crank, shaft_turn, driver, seen_from, holding, words, bolt_length, grip, hole_depth, "
      "duty, pattern, must_clamp, must_clamp_because) SELECT ?, id, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
      "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
      "?, ?, ? FROM assembly WHERE machine_id = ? AND name = ?",
      j.slug, j.name, j.kind, j.quantity, j.thread, j.strength_class, j.nut_class, j.turned, j.head, j.washer,
      j.face_outer, j.face_inner, j.seat, j.seat_material, j.soft_material, j.taper, j.mating_part, j.mating_material,
      j.engagement, j.drive, j.running_torque, j.on_crank ? 1 : 0, j.shaft_turn, j.driver, j.seen_from, j.holding,
      j.words, j.bolt_length, j.grip, j.hole_depth, j.duty, j.pattern, j.must_clamp, j.must_clamp_because, machine,
      j.assembly);
  const long long joint = last_id(database);
  add_locks_and_neighbours(database, joint, j);
  add_figure(database, joint, j.figure, std::nullopt);
  for (const FigureRecord& figure : j.beside)
    add_figure(database, joint, figure, std::nullopt);
  index_joint(database, joint);
  for (const EventRecord& event : j.events)
    add_joint_event(database, j.slug, event);
}

void revise_joint(const SQLite::Database& database, const JointRecord& j) {
  const long long joint = joint_id(database, j.slug);
  Query place(database, "SELECT a.machine_id FROM joint j JOIN assembly a ON a.id = j.assembly_id WHERE j.id = ?",
              joint);
  (void)place.next();
  const long long machine = place.integer(0);
  add_assembly(database, machine, j.assembly);
  run(database,
      "UPDATE joint SET assembly_id = (SELECT id FROM assembly WHERE machine_id = ? AND name = ?), name = ?, kind = ?, "
      "quantity = ?, thread = ?, class = ?, nut_class = ?, turned = ?, head = ?, washer = ?, face_outer = ?, "
      "face_inner = ?, seat = ?, seat_material = ?, soft_material = ?, taper = ?, mating_part = ?, mating_material = "
      "?, engagement = ?, drive = ?, running_torque = ?, on_crank = ?, shaft_turn = ?, driver = ?, seen_from = ?, "
      "holding = ?, words = ?, bolt_length = ?, grip = ?, hole_depth = ?, duty = ?, pattern = ?, must_clamp = ?, "
      "must_clamp_because = ? WHERE id = ?",
      machine, j.assembly, j.name, j.kind, j.quantity, j.thread, j.strength_class, j.nut_class, j.turned, j.head,
      j.washer, j.face_outer, j.face_inner, j.seat, j.seat_material, j.soft_material, j.taper, j.mating_part,
      j.mating_material, j.engagement, j.drive, j.running_torque, j.on_crank ? 1 : 0, j.shaft_turn, j.driver,
      j.seen_from, j.holding, j.words, j.bolt_length, j.grip, j.hole_depth, j.duty, j.pattern, j.must_clamp,
      j.must_clamp_because, joint);
  run(database, "DELETE FROM joint_lock WHERE joint_id = ?", joint);
  run(database, "DELETE FROM neighbour WHERE joint_id = ?", joint);
  add_locks_and_neighbours(database, joint, j);
  index_joint(database, joint);
}

void add_joint_event(const SQLite::Database& database, std::string_view slug, const EventRecord& e) {
  run(database, "INSERT INTO record_event (joint_id, on_date, kind, words, because) VALUES (?, ?, ?, ?, ?)",
      joint_id(database, slug), e.on_date, e.kind, e.words, e.because);
}

long long add_figure_beside(const SQLite::Database& database, std::string_view joint, const FigureRecord& figure) {
  return add_figure(database, joint_id(database, joint), figure, std::nullopt);
}

Result<void> revise_figure(const SQLite::Database& database, long long superseded, const FigureRecord& figure) {
  Query old(database,
            "SELECT joint_id, (SELECT count(*) FROM figure n WHERE n.supersedes = f.id) FROM figure f WHERE "
            "f.id = ?",
            superseded);
  if (!old.next())
    return refuse(Trouble::no_such, "no-such-figure", "there is no such figure in the workshop file", {},
                  "look the joint up again; nothing was changed");
  if (old.integer(1) > 0)
    return refuse(Trouble::busy, "revised-meanwhile", "another revision has taken the place of this figure meanwhile",
                  {}, "look the joint up again and revise what stands there now; nothing was changed");
  add_figure(database, old.integer(0), figure, superseded);
  return {};
}

} // namespace clampwright::specdb
