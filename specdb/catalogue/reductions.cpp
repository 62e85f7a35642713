// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/reductions.hpp"

#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

std::vector<friction::Reduction> reductions_between(const Catalogue& catalogue, std::string_view from_surfaces,
                                                    std::string_view to_surfaces) {
  return translated([&] {
    Query row(
        catalogue.connection(),
        "SELECT r.rule, r.factor, s.title, s.edition, r.\"where\", r.known FROM surface_reductions r JOIN sources s "
        "ON s.id = r.source WHERE r.from_surfaces = ? AND r.to_surfaces = ? ORDER BY r.factor, r.rowid",
        std::string_view(name_key(from_surfaces)), std::string_view(name_key(to_surfaces)));
    std::vector<friction::Reduction> out;
    while (row.next())
      out.push_back({row.text(0), row.real(1), row.source(2)});
    return out;
  });
}

std::vector<friction::Reduction> reductions_for_part(const Catalogue& catalogue, std::string_view family) {
  return translated([&] {
    Query row(catalogue.connection(),
              "SELECT r.rule, r.factor, s.title, s.edition, r.\"where\", r.known FROM part_reductions r JOIN sources s "
              "ON s.id = r.source WHERE instr(' ' || r.families || ' ', ' ' || ? || ' ') > 0 ORDER BY r.rowid",
              family);
    std::vector<friction::Reduction> out;
    while (row.next())
      out.push_back({row.text(0), row.real(1), row.source(2)});
    return out;
  });
}

} // namespace clampwright::specdb
