// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/surfaces.hpp"

#include <fmt/format.h>

#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

std::vector<std::string> first_column(const Catalogue& catalogue, const char* sql) {
  return translated([&] {
    Query query(catalogue.connection(), sql);
    std::vector<std::string> out;
    while (query.next())
      out.push_back(query.text(0));
    return out;
  });
}

template<class Coefficient>
quantity::Band<Coefficient> band(const Query& row, int first) {
  const auto made = [&](int column) {
    const auto coefficient = Coefficient::try_make(row.real(column));
    if (!coefficient)
      throw DatabaseError(fmt::format("friction out of range: {}", coefficient.error().message), Trouble::internal);
    return *coefficient;
  };
  return {made(first), made(first + 1), made(first + 2)};
}

friction::LockFamily family_named(std::string_view name) {
  if (name == "compound") return friction::LockFamily::compound;
  if (name == "running-torque") return friction::LockFamily::running_torque;
  if (name == "positive") return friction::LockFamily::positive;
  if (name == "washer") return friction::LockFamily::washer;
  return friction::LockFamily::none;
}

} // namespace

std::vector<std::string> surfaces_names(const Catalogue& catalogue) {
  return first_column(catalogue, "SELECT name FROM surfaces ORDER BY rowid");
}

std::vector<std::string> lock_names(const Catalogue& catalogue) {
  return first_column(catalogue, "SELECT name FROM locks ORDER BY rowid");
}

Result<friction::Surfaces> find_surfaces(const Catalogue& catalogue, std::string_view name) {
  const std::string key = name_key(name);
  return translated([&]() -> Result<friction::Surfaces> {
    Query row(catalogue.connection(),
              "SELECT name, description, mu_low, mu_likely, mu_high, k_low, k_likely, k_high, wet_compound, "
              "electroplated FROM surfaces "
              "WHERE name = ?",
              std::string_view(key));
    if (!row.next()) return no_such_name("surfaces", name, surfaces_names(catalogue));
    friction::Surfaces out{row.text(0),
                           row.text(1),
                           band<friction::FrictionCoefficient>(row, 2),
                           band<friction::NutFactor>(row, 5),
                           row.integer(8) == 1,
                           {},
                           row.integer(9) == 1};
    Query sources(
        catalogue.connection(),
        "SELECT DISTINCT s.title, s.edition, f.\"where\", f.known FROM surface_sources f JOIN sources s ON s.id = "
        "f.source WHERE f.surface = ? ORDER BY f.model DESC, f.rowid",
        std::string_view(key));
    while (sources.next())
      out.sources.push_back(sources.source(0));
    return out;
  });
}

Result<friction::Lock> find_lock(const Catalogue& catalogue, std::string_view name) {
  const std::string key = name_key(name);
  return translated([&]() -> Result<friction::Lock> {
    Query row(catalogue.connection(),
              "SELECT l.name, l.description, l.family, l.single_use, l.heat_limit_degC, h.title, l.heat_limit_where, "
              "l.parts_from_degC, l.parts_to_degC, coalesce(l.note, ''), s.title, s.edition, l.\"where\", l.known, "
              "h.title, h.edition, l.heat_limit_where, l.heat_limit_known, p.title, p.edition, l.parts_where, "
              "l.parts_known FROM locks l JOIN sources s ON s.id = l.source LEFT JOIN sources h ON h.id = "
              "l.heat_limit_source LEFT JOIN sources p ON p.id = l.parts_source WHERE l.name = ?",
              std::string_view(key));
    if (!row.next()) {
      Problem problem = no_such_name("lock", name, lock_names(catalogue)).value();
      problem.hint += "; a compound goes by its strength, from the sheet of the bottle: compound-medium";
      return Refusal(std::move(problem));
    }
    friction::Lock out{row.text(0), row.text(1), family_named(row.text(2)), row.integer(3) == 1};
    out.note = row.text(9);
    out.sources.push_back(row.source(10));
    if (const auto limit = row.maybe_real(4)) {
      out.heat_limit = quantity::degrees_celsius(*limit);
      out.heat_limit_basis = fmt::format("{}, {}", row.text(5), row.text(6));
      out.sources.push_back(row.source(14));
    }
    if (const auto from = row.maybe_real(7)) {
      out.parts_from = quantity::degrees_celsius(*from);
      out.parts_to = quantity::degrees_celsius(row.real(8));
      out.sources.push_back(row.source(18));
    }
    return out;
  });
}

} // namespace clampwright::specdb
