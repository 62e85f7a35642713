// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/nut_strengths.hpp"

#include <algorithm>

#include "core/quantity/unit.hpp"
#include "core/thread/geometry.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/size_range.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

// The standards of nuts know two kinds of thread: coarse, and everything finer.
std::string_view series_of(const thread::Thread& thread) {
  return thread.series == "coarse" || thread.series == "UNC" ? "coarse" : "fine";
}

void take_load(const Catalogue& catalogue, const thread::Thread& thread, strength::NutStrength& nut) {
  Query query(catalogue.connection(),
              "SELECT l.proof_load_N, s.title, s.edition, l.\"where\", l.known FROM nut_loads l JOIN sources s ON "
              "s.id = l.source WHERE l.nut_class = ? AND l.style = ? AND l.thread = ?",
              std::string_view(nut.nut_class), std::string_view(nut.style), std::string_view(thread.designation));
  if (query.next()) {
    nut.proof_load = quantity::newtons(query.real(0));
    nut.basis = strength::LoadBasis::table;
    nut.sources.push_back(query.source(1));
  } else if (const auto area = thread::geometry_of(thread).stress_area; area && nut.proof_stress) {
    nut.proof_load = *nut.proof_stress * *area;
    nut.basis = strength::LoadBasis::stress_area;
  }
  nut.from_memory = nut.sources.back().known == Known::memory;
}

bool bears_less(const strength::NutStrength& one, const strength::NutStrength& other) {
  if (one.proof_load && other.proof_load) return *one.proof_load < *other.proof_load;
  return *one.proof_stress < *other.proof_stress;
}

} // namespace

std::vector<std::string> nut_strength_names(const Catalogue& catalogue) {
  return translated([&] {
    Query query(catalogue.connection(),
                "SELECT nut_class FROM nut_proof_stress GROUP BY nut_class ORDER BY min(rowid)");
    std::vector<std::string> names;
    while (query.next())
      names.push_back(query.text(0));
    return names;
  });
}

Result<strength::NutStrength> find_nut_strength(const Catalogue& catalogue, std::string_view nut_class,
                                                const thread::Thread& thread) {
  const auto names = nut_strength_names(catalogue);
  const auto name = std::ranges::find(names, class_key(nut_class), class_key);
  if (name == names.end()) return no_such_name("nut class", nut_class, names);
  return translated([&]() -> Result<strength::NutStrength> {
    Query row(
        catalogue.connection(),
        "SELECT n.style, n.form, n.series, n.over, n.over_inclusive, n.up_to, n.size_unit, n.proof, n.stress_unit, "
        "s.title, s.edition, n.\"where\", n.known FROM nut_proof_stress n JOIN sources s ON s.id = n.source "
        "WHERE n.nut_class = ? ORDER BY n.rowid",
        std::string_view(*name));
    strength::NutStrength least;
    least.nut_class = *name;
    while (row.next()) {
      // A thin nut is thin at any size, and made in no other style.
      least.thin = least.thin || row.text(0) == "thin";
      const std::string series = row.text(2);
      const std::string unit = row.text(6);
      const SizeRange sizes{row.real(3), row.integer(4) == 1, row.real(5), unit};
      if (row.text(1) != thread::form_name(thread.form) || !sizes.holds(thread.diameter)) continue;
      if (series != "any" && series != series_of(thread)) continue;
      strength::NutStrength found;
      found.nut_class = *name;
      found.style = row.text(0);
      found.thin = least.thin;
      found.proof_stress = quantity::pascals(quantity::to_si(row.real(7), quantity::unit_named(row.text(8))));
      found.sources.push_back(row.source(9));
      take_load(catalogue, thread, found);
      if (!least.proof_stress || bears_less(found, least)) least = std::move(found);
    }
    return least;
  });
}

} // namespace clampwright::specdb
