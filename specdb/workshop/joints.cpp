// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/joints.hpp"

#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/search.hpp"

namespace clampwright::specdb {

namespace {

FigureRecord figure_from(const Query& row, int first) {
  const auto at = [&](int offset) { return first + offset; };
  FigureRecord figure;
  figure.printed = row.text(at(0));
  figure.value = row.maybe_real(at(1));
  figure.unit = row.maybe_text(at(2));
  figure.tolerance = row.maybe_text(at(3));
  figure.low = row.maybe_real(at(4));
  figure.high = row.maybe_real(at(5));
  figure.angle_deg = row.maybe_real(at(6));
  figure.reading = row.maybe_text(at(7));
  figure.surfaces = row.text(at(8));
  figure.condition = row.maybe_text(at(9));
  figure.sequence = row.maybe_text(at(10));
  figure.recheck = row.maybe_text(at(11));
  figure.status = row.text(at(12));
  figure.source = row.source(at(13));
  return figure;
}

Refusal no_joint(std::string_view words, std::string code, std::string message, const std::vector<Hit>& hits) {
  std::string hint = "`clampwright find WORDS` searches; write the name that it shows, like pump/clutch-hub";
  if (!hits.empty()) {
    hint = "write one of";
    for (const Hit& hit : hits)
      hint += fmt::format("{} {}", &hit == &hits.front() ? "" : ",", hit.joint);
  }
  return refuse(Trouble::no_such, std::move(code), std::move(message), words, std::move(hint));
}

} // namespace

std::optional<JointRecord> joint_of_slug(const Workshop& workshop, std::string_view slug) {
  return translated([&]() -> std::optional<JointRecord> {
    Query row(
        workshop.connection(),
        "SELECT j.slug, m.name, a.name, j.name, j.kind, j.quantity, j.thread, j.class, j.turned, j.head, j.face_outer, "
        "j.face_inner, j.seat, j.lock, j.on_crank, j.seen_from, j.holding, m.stroke_mm, m.rod_mm, "
        "f.printed, f.value, f.unit, f.tolerance, f.low, f.high, f.angle_deg, f.reading, f.surfaces, f.condition, "
        "f.sequence, f.recheck, f.status, s.title, s.edition, f.place, s.known "
        "FROM joint j JOIN assembly a ON a.id = j.assembly_id JOIN machine m ON m.id = a.machine_id "
        "JOIN figure f ON f.joint_id = j.id JOIN source s ON s.id = f.source_id "
        "WHERE j.slug = lower(?) AND f.id NOT IN (SELECT supersedes FROM figure WHERE supersedes IS NOT NULL) "
        "ORDER BY f.id LIMIT 1",
        slug);
    if (!row.next()) return std::nullopt;
    JointRecord joint;
    joint.slug = row.text(0);
    joint.machine = row.text(1);
    joint.assembly = row.text(2);
    joint.name = row.text(3);
    joint.kind = row.text(4);
    joint.quantity = static_cast<int>(row.integer(5));
    joint.thread = row.text(6);
    joint.strength_class = row.text(7);
    joint.turned = row.text(8);
    joint.head = row.maybe_text(9);
    joint.face_outer = row.maybe_text(10);
    joint.face_inner = row.maybe_text(11);
    joint.seat = row.maybe_text(12);
    joint.lock = row.text(13);
    joint.on_crank = row.integer(14) == 1;
    joint.seen_from = row.text(15);
    joint.holding = row.maybe_text(16);
    const auto stroke = row.maybe_real(17);
    const auto rod = row.maybe_real(18);
    if (stroke && rod)
      joint.crank = crank::SliderCrank{quantity::millimetres(*stroke / 2.0), quantity::millimetres(*rod)};
    joint.figure = figure_from(row, 19);
    return joint;
  });
}

std::optional<std::string> first_joint(const Workshop& workshop) {
  return translated([&]() -> std::optional<std::string> {
    Query row(workshop.connection(), "SELECT slug FROM joint ORDER BY id LIMIT 1");
    if (!row.next()) return std::nullopt;
    return row.text(0);
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
