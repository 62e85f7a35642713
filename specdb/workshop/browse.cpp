// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/browse.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

std::vector<MachineLine> machines_with_counts(const Workshop& workshop) {
  return translated([&] {
    Query row(workshop.connection(), "SELECT slug, name, kind, (SELECT count(*) FROM assembly a JOIN joint j ON "
                                     "j.assembly_id = a.id WHERE a.machine_id = m.id) FROM machine m ORDER BY id");
    std::vector<MachineLine> machines;
    while (row.next())
      machines.push_back({row.text(0), row.text(1), row.text(2), row.integer(3)});
    return machines;
  });
}

std::vector<Hit> joints_of_machine(const Workshop& workshop, std::string_view machine) {
  return translated([&] {
    Query row(workshop.connection(),
              "SELECT j.id FROM machine m JOIN assembly a ON a.machine_id = m.id JOIN joint j ON j.assembly_id = a.id "
              "WHERE m.slug = lower(?) ORDER BY a.id, j.id",
              machine);
    std::vector<long long> joints;
    while (row.next())
      joints.push_back(row.integer(0));
    return hits_of(workshop, joints);
  });
}

// The figure in force that was entered first stands for the joint.
std::vector<Hit> hits_of(const Workshop& workshop, const std::vector<long long>& joints) {
  Query row(workshop.connection(),
            "SELECT j.slug, m.name, a.name, j.name, j.thread, f.printed, f.value FROM json_each(?) e JOIN joint j ON "
            "j.id = e.value JOIN assembly a ON a.id = j.assembly_id JOIN machine m ON m.id = a.machine_id LEFT JOIN "
            "figure f ON f.id = (SELECT min(g.id) FROM figure g WHERE g.joint_id = j.id AND NOT EXISTS (SELECT 1 FROM "
            "figure n WHERE n.supersedes = g.id)) ORDER BY e.key",
            std::string_view(fmt::format("[{}]", fmt::join(joints, ","))));
  std::vector<Hit> hits;
  while (row.next()) {
    Hit hit{row.text(0), row.text(1), row.text(2), row.text(3), row.text(4), std::nullopt};
    if (!row.is_null(6)) hit.torque_printed = row.maybe_text(5);
    hits.push_back(std::move(hit));
  }
  return hits;
}

} // namespace clampwright::specdb
