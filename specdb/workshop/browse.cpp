// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/browse.hpp"

#include "specdb/sql/query.hpp"
#include "specdb/workshop/hit_row.hpp"

namespace clampwright::specdb {

std::vector<MachineLine> machine_lines(const Workshop& workshop) {
  return translated([&] {
    Query query(workshop.connection(),
                "SELECT m.slug, m.name, m.kind, (SELECT count(*) FROM joint j JOIN assembly a ON a.id = j.assembly_id "
                "WHERE a.machine_id = m.id) FROM machine m ORDER BY m.id");
    std::vector<MachineLine> lines;
    while (query.next())
      lines.push_back({query.text(0), query.text(1), query.text(2), static_cast<int>(query.integer(3))});
    return lines;
  });
}

std::vector<Hit> joints_of_machine(const Workshop& workshop, std::string_view slug) {
  return translated([&] {
    Query query(workshop.connection(),
                "SELECT j.slug, m.name, a.name, j.name, j.thread, f.printed, f.value FROM machine m JOIN assembly a ON "
                "a.machine_id = m.id JOIN joint j ON j.assembly_id = a.id LEFT JOIN figure f ON f.id = (SELECT "
                "min(g.id) FROM figure g WHERE g.joint_id = j.id AND g.id NOT IN (SELECT supersedes FROM figure WHERE "
                "supersedes IS NOT NULL)) WHERE m.slug = ? ORDER BY j.id",
                slug);
    std::vector<Hit> hits;
    while (query.next())
      hits.push_back(hit_in(query));
    return hits;
  });
}

} // namespace clampwright::specdb
