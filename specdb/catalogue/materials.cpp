// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/materials.hpp"

#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

// A stress and the four columns of its source behind it; the source joins the others.
std::optional<quantity::Stress> stress(const Query& row, int first, std::vector<Source>& sources) {
  const auto value = row.maybe_real(first);
  if (!value) return std::nullopt;
  sources.push_back(row.source(first + 1));
  return quantity::megapascals(*value);
}

} // namespace

std::vector<std::string> material_names(const Catalogue& catalogue) {
  return translated([&] {
    Query query(catalogue.connection(), "SELECT name FROM part_materials ORDER BY rowid");
    std::vector<std::string> names;
    while (query.next())
      names.push_back(query.text(0));
    return names;
  });
}

Result<strength::PartMaterial> find_material(const Catalogue& catalogue, std::string_view name) {
  return translated([&]() -> Result<strength::PartMaterial> {
    Query row(
        catalogue.connection(),
        "SELECT m.name, m.description, m.soft, m.shear_MPa, a.title, a.edition, m.shear_where, m.shear_known, "
        "m.seat_pressure_MPa, b.title, b.edition, m.seat_pressure_where, m.seat_pressure_known FROM part_materials "
        "m LEFT JOIN sources a ON a.id = m.shear_source LEFT JOIN sources b ON b.id = m.seat_pressure_source "
        "WHERE m.name = ?",
        std::string_view(name_key(name)));
    if (!row.next()) return no_such_name("material", name, material_names(catalogue));
    strength::PartMaterial out;
    out.name = row.text(0);
    out.description = row.text(1);
    out.soft = row.integer(2) == 1;
    out.shear_strength = stress(row, 3, out.sources);
    out.seat_pressure = stress(row, 8, out.sources);
    return out;
  });
}

} // namespace clampwright::specdb
