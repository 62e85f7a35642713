// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/joints.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/events.hpp"
#include "specdb/workshop/machines.hpp"
#include "specdb/workshop/search.hpp"
#include "specdb/workshop/stored_unit.hpp"

namespace clampwright::specdb {

namespace {

std::vector<double> passes_of(const SQLite::Database& database, long long figure) {
  Query row(database, "SELECT value FROM figure_pass WHERE figure_id = ? ORDER BY position", figure);
  std::vector<double> passes;
  while (row.next())
    passes.push_back(row.real(0));
  return passes;
}

std::vector<RecheckRecord> rechecks_of(const SQLite::Database& database, long long figure) {
  Query row(database, "SELECT words, hours, days, event FROM recheck WHERE figure_id = ? ORDER BY position", figure);
  std::vector<RecheckRecord> rechecks;
  while (row.next())
    rechecks.push_back({row.text(0), row.maybe_real(1), row.maybe_real(2), row.maybe_text(3)});
  return rechecks;
}

FigureRecord figure_from(const SQLite::Database& database, const Query& row) {
  FigureRecord figure;
  figure.id = row.integer(0);
  figure.printed = row.text(1);
  figure.value = row.maybe_real(2);
  if (auto unit = row.maybe_text(3)) figure.unit = stored_torque_unit(std::move(*unit));
  if (figure.value.has_value() != figure.unit.has_value())
    throw DatabaseError("a figure has a value without unit, or a unit without value", Trouble::not_understood);
  figure.tolerance = row.maybe_text(4);
  figure.low = row.maybe_real(5);
  figure.high = row.maybe_real(6);
  figure.method = row.text(7);
  figure.angle_deg = row.maybe_real(8);
  figure.reading = row.maybe_text(9);
  figure.surfaces = row.text(10);
  figure.friction = row.maybe_text(11);
  figure.condition = row.maybe_text(12);
  figure.temperature = row.maybe_text(13);
  figure.sequence = row.maybe_text(14);
  figure.running_torque_rule = row.maybe_text(15);
  figure.reuse_rule = row.maybe_text(16);
  figure.reuse = row.maybe_text(17);
  figure.status = row.text(18);
  figure.revised_because = row.maybe_text(19);
  figure.source_slug = row.text(20);
  figure.source = row.source(21);
  figure.entered_on = row.maybe_text(25);
  figure.supersedes = row.maybe_integer(26);
  figure.superseded_by = row.maybe_integer(27);
  figure.superseded_on = row.maybe_text(28);
  figure.superseded_because = row.maybe_text(29);
  figure.passes = passes_of(database, figure.id);
  figure.recheck = rechecks_of(database, figure.id);
  return figure;
}

// The figures in force, in the order in which they were entered, and behind them those whose place another has taken.
void read_figures(const SQLite::Database& database, long long joint, JointRecord& into) {
  Query row(database,
            "SELECT f.id, f.printed, f.value, f.unit, f.tolerance, f.low, f.high, f.method, f.angle_deg, f.reading, "
            "f.surfaces, f.friction, f.condition, f.temperature, f.sequence, f.running_torque_rule, f.reuse_rule, "
            "f.reuse, f.status, f.revised_because, s.slug, s.title, s.edition, f.place, s.known, f.entered_on, "
            "f.supersedes, n.id, n.entered_on, n.revised_because "
            "FROM figure f JOIN source s ON s.id = f.source_id LEFT JOIN figure n ON n.supersedes = f.id "
            "WHERE f.joint_id = ? ORDER BY n.id IS NOT NULL, CASE WHEN n.id IS NULL THEN f.id ELSE -f.id END",
            joint);
  bool first = true;
  while (row.next()) {
    FigureRecord figure = figure_from(database, row);
    if (figure.superseded_by)
      into.superseded.push_back(std::move(figure));
    else if (first)
      into.figure = std::move(figure), first = false;
    else
      into.beside.push_back(std::move(figure));
  }
  if (first) throw DatabaseError("a joint has no figure in force: " + into.slug, Trouble::not_understood);
}

void read_locks(const SQLite::Database& database, long long joint, JointRecord& into) {
  Query row(database, "SELECT lock, note FROM joint_lock WHERE joint_id = ? ORDER BY position", joint);
  while (row.next())
    into.locks.push_back({row.text(0), row.maybe_text(1)});
}

void read_neighbours(const SQLite::Database& database, long long joint, JointRecord& into) {
  Query row(database, "SELECT name, bears_degC, runs_at_degC FROM neighbour WHERE joint_id = ? ORDER BY name", joint);
  while (row.next())
    into.neighbours.push_back({row.text(0), row.maybe_real(1), row.maybe_real(2)});
}

Refusal no_joint(std::string_view words, std::string code, std::string message, const std::vector<Hit>& hits) {
  std::string hint = "`clampwright find WORDS` searches; write the name that it shows, like pump/clutch-hub";
  if (!hits.empty()) {
    constexpr std::size_t k_most = 8;
    hint = "write one of";
    for (std::size_t i = 0; i < std::min(hits.size(), k_most); ++i)
      hint += fmt::format("{} {}", i == 0 ? "" : ",", hits[i].joint);
    if (hits.size() > k_most) hint += fmt::format(" and {} more; `clampwright find` lists them", hits.size() - k_most);
  }
  return refuse(Trouble::no_such, std::move(code), std::move(message), words, std::move(hint));
}

} // namespace

std::optional<JointRecord> joint_of_slug(const SQLite::Database& database, std::string_view slug) {
  Query row(database,
            "SELECT j.id, j.slug, a.name, j.name, j.kind, j.quantity, j.thread, j.class, j.nut_class, j.turned, "
            "j.head, j.washer, j.face_outer, j.face_inner, j.seat, j.seat_material, j.soft_material, j.mating_part, "
            "j.mating_material, j.engagement, j.running_torque, j.drive, j.on_crank, j.shaft_turn, j.driver, "
            "j.seen_from, j.holding, j.words, j.taper, j.bolt_length, j.grip, j.hole_depth, j.duty, j.pattern, "
            "j.must_clamp, j.must_clamp_because, m.slug "
            "FROM joint j JOIN assembly a ON a.id = j.assembly_id JOIN machine m ON m.id = a.machine_id "
            "WHERE j.slug = lower(?)",
            slug);
  if (!row.next()) return std::nullopt;
  JointRecord joint;
  joint.slug = row.text(1);
  joint.assembly = row.text(2);
  joint.name = row.text(3);
  joint.kind = row.text(4);
  joint.quantity = static_cast<int>(row.integer(5));
  joint.thread = row.text(6);
  joint.strength_class = row.text(7);
  joint.nut_class = row.maybe_text(8);
  joint.turned = row.text(9);
  joint.head = row.maybe_text(10);
  joint.washer = row.maybe_text(11);
  joint.face_outer = row.maybe_text(12);
  joint.face_inner = row.maybe_text(13);
  joint.seat = row.maybe_text(14);
  joint.seat_material = row.maybe_text(15);
  joint.soft_material = row.maybe_text(16);
  joint.mating_part = row.maybe_text(17);
  joint.mating_material = row.maybe_text(18);
  joint.engagement = row.maybe_text(19);
  joint.running_torque = row.maybe_text(20);
  joint.drive = row.maybe_text(21);
  joint.on_crank = row.integer(22) == 1;
  joint.shaft_turn = row.maybe_text(23);
  joint.driver = row.maybe_text(24);
  joint.seen_from = row.text(25);
  joint.holding = row.maybe_text(26);
  joint.words = row.text(27);
  joint.taper = row.maybe_text(28);
  joint.bolt_length = row.maybe_text(29);
  joint.grip = row.maybe_text(30);
  joint.hole_depth = row.maybe_text(31);
  joint.duty = row.maybe_text(32);
  joint.pattern = row.maybe_text(33);
  joint.must_clamp = row.maybe_text(34);
  joint.must_clamp_because = row.maybe_text(35);
  joint.machine = *machine_of_slug(database, row.text(36));
  const long long id = row.integer(0);
  read_locks(database, id, joint);
  read_neighbours(database, id, joint);
  read_figures(database, id, joint);
  joint.events = record_events_of(
      database, "SELECT on_date, kind, words, because FROM record_event WHERE joint_id = ? ORDER BY id", id);
  return joint;
}

std::optional<JointRecord> joint_of_slug(const Workshop& workshop, std::string_view slug) {
  return translated([&] { return joint_of_slug(workshop.connection(), slug); });
}

std::vector<std::string> joint_slugs(const Workshop& workshop) {
  return translated([&] {
    Query row(workshop.connection(), "SELECT slug FROM joint ORDER BY id");
    std::vector<std::string> slugs;
    while (row.next())
      slugs.push_back(row.text(0));
    return slugs;
  });
}

Result<JointRecord> find_joint(const Workshop& workshop, std::string_view words) {
  if (auto joint = joint_of_slug(workshop, text::plain_spaces(words))) return std::move(*joint);
  const Found found = search(workshop, words);
  const auto& hits = found.hits;
  // Another joint is never shown in the place of the one that was named: what words may have meant is only suggested.
  if (hits.empty() || !found.read_as.empty())
    return no_joint(words, "no-such-joint", "no joint of that name was found", hits);
  if (hits.size() == 1) return *joint_of_slug(workshop, hits.front().joint);
  return no_joint(words, "several-joints", fmt::format("{} joints fit these words", hits.size()), hits);
}

} // namespace clampwright::specdb
