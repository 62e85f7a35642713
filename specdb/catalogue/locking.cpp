// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/locking.hpp"

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/quantity/write.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

// The name under which the tables speak of all locks of a kind; the lock's own where there is no such name.
std::string kind_of(const friction::Lock& lock) {
  if (lock.family == friction::LockFamily::compound) return "compound";
  if (lock.family == friction::LockFamily::running_torque) return "locking-nut";
  return lock.name;
}

Together together_named(std::string_view name) {
  if (name == "ok") return Together::ok;
  return name == "mind" ? Together::mind : Together::no;
}

locking::Activity activity_named(std::string_view name) {
  if (name == "active") return locking::Activity::active;
  if (name == "inactive") return locking::Activity::inactive;
  return name == "never" ? locking::Activity::never : locking::Activity::not_known;
}

locking::CureStep step_named(std::string_view name) {
  if (name == "setting") return locking::CureStep::setting;
  if (name == "full strength") return locking::CureStep::full_strength;
  if (name == "primer") return locking::CureStep::primer;
  return name == "heat only" ? locking::CureStep::heat_only : locking::CureStep::heat_cure;
}

std::optional<quantity::Temperature> celsius(const std::optional<double>& degrees) {
  return degrees ? std::optional(quantity::degrees_celsius(*degrees)) : std::nullopt;
}

} // namespace

std::vector<LockRule> lock_rules(const Catalogue& catalogue, const friction::Lock& lock) {
  return translated([&] {
    std::vector<LockRule> rules;
    Query row(catalogue.connection(),
              "SELECT r.topic, r.rule, coalesce(r.note, ''), s.title, s.edition, r.\"where\", r.known FROM lock_rules "
              "r JOIN sources s ON s.id = r.source WHERE r.lock IN (?1, ?2) ORDER BY "
              "instr('about fit never heat undo check renew bears', r.topic), r.lock <> ?1, r.rowid",
              std::string_view(lock.name), std::string_view(kind_of(lock)));
    while (row.next())
      rules.push_back({row.text(0), row.text(1), row.text(2), row.source(3)});
    return rules;
  });
}

std::optional<LockPair> lock_pair(const Catalogue& catalogue, const friction::Lock& one, const friction::Lock& other) {
  return translated([&]() -> std::optional<LockPair> {
    Query row(catalogue.connection(),
              "SELECT p.verdict, p.why, coalesce(p.note, ''), s.title, s.edition, p.\"where\", p.known FROM lock_pairs "
              "p JOIN sources s ON s.id = p.source WHERE (p.one = ?1 AND p.other = ?2) OR (p.one = ?2 AND p.other = "
              "?1)",
              std::string_view(kind_of(one)), std::string_view(kind_of(other)));
    if (!row.next()) return std::nullopt;
    return LockPair{together_named(row.text(0)), row.text(1), row.text(2), row.source(3)};
  });
}

std::vector<locking::CureTime> cure_times(const Catalogue& catalogue) {
  return translated([&] {
    std::vector<locking::CureTime> times;
    Query row(catalogue.connection(),
              "SELECT t.what, t.surface, t.from_degC, t.to_degC, t.least_min, t.most_min, t.words, s.title, s.edition, "
              "t.\"where\", t.known FROM cure_times t JOIN sources s ON s.id = t.source ORDER BY t.rowid");
    while (row.next())
      times.push_back({step_named(row.text(0)), row.text(1) == "active", celsius(row.maybe_real(2)),
                       celsius(row.maybe_real(3)), row.maybe_real(4), row.maybe_real(5), row.text(6), row.source(7)});
    return times;
  });
}

Result<locking::CureSurface> find_cure_surface(const Catalogue& catalogue, std::string_view name) {
  return translated([&]() -> Result<locking::CureSurface> {
    Query row(catalogue.connection(),
              "SELECT c.name, c.description, c.activity, coalesce(c.note, ''), s.title, s.edition, c.\"where\", "
              "c.known FROM cure_surfaces c JOIN sources s ON s.id = c.source WHERE c.name = ?",
              std::string_view(name_key(name)));
    if (!row.next()) return no_such_name("surface for compound", name, cure_surface_names(catalogue));
    return locking::CureSurface{row.text(0), row.text(1), activity_named(row.text(2)), row.text(3), row.source(4)};
  });
}

std::vector<std::string> cure_surface_names(const Catalogue& catalogue) {
  return translated([&] {
    std::vector<std::string> names;
    Query row(catalogue.connection(), "SELECT name FROM cure_surfaces ORDER BY rowid");
    while (row.next())
      names.push_back(row.text(0));
    return names;
  });
}

std::vector<locking::RunningLimit> running_limits(const Catalogue& catalogue, const thread::Thread& thread) {
  return translated([&] {
    std::vector<locking::RunningLimit> limits;
    Query row(catalogue.connection(),
              "SELECT r.kind, r.nut, r.torque, r.unit, coalesce(r.note, ''), s.title, s.edition, r.\"where\", r.known "
              "FROM running_torques r JOIN sources s ON s.id = r.source JOIN threads t ON t.designation = ? WHERE "
              "r.thread = t.designation OR (r.thread IS NULL AND r.size = t.size AND t.form = 'unified') ORDER BY "
              "r.rowid",
              std::string_view(thread.designation));
    while (row.next()) {
      const auto value = row.maybe_real(2);
      const quantity::Unit& unit = quantity::unit_named(row.text(3) == "lbf·in" ? "lbf.in" : "N.m");
      std::optional<quantity::Torque> torque;
      if (value) torque = quantity::newton_metres(quantity::to_si(*value, unit));
      limits.push_back({row.text(0), row.text(1), torque,
                        value ? quantity::write_value(*value, unit, 6) : std::string(), row.text(4), row.source(5),
                        row.text(1) == "locking insert"});
    }
    return limits;
  });
}

std::vector<locking::RunningRule> running_rules(const Catalogue& catalogue) {
  return translated([&] {
    std::vector<locking::RunningRule> rules;
    Query row(catalogue.connection(),
              "SELECT r.name, r.from_share, r.words, s.title, s.edition, r.\"where\", r.known FROM running_rules r "
              "JOIN sources s ON s.id = r.source ORDER BY r.rowid");
    while (row.next())
      rules.push_back({row.text(0), row.maybe_real(1), row.text(2), row.source(3)});
    return rules;
  });
}

} // namespace clampwright::specdb
