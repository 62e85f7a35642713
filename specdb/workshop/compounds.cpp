// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/compounds.hpp"

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/events.hpp"

namespace clampwright::specdb {

namespace {

Result<CompoundRecord> named(const std::vector<CompoundRecord>& compounds, std::string_view name) {
  const std::string wanted = text::plain_spaces(name);
  for (const CompoundRecord& compound : compounds)
    if (text::equal_fold(compound.slug, wanted) || text::equal_fold(compound.label, wanted)) return compound;
  if (compounds.empty())
    return refuse(Trouble::no_such, "no-such-compound", "no compound is on the shelf of the workshop file", name,
                  "enter one with `clampwright shelf add`");
  std::vector<std::string> names;
  for (const CompoundRecord& compound : compounds)
    names.push_back(compound.slug);
  return no_such_name("compound", name, names);
}

} // namespace

std::vector<CompoundRecord> all_compounds(const SQLite::Database& database) {
  Query row(database, "SELECT id, slug, label, grade, batch, expires_on, opened_on, bears_degC, sheet, retired_on, "
                      "retired_because FROM compound ORDER BY id");
  std::vector<CompoundRecord> compounds;
  while (row.next())
    compounds.push_back(
        {row.text(1), row.text(2), row.text(3), row.maybe_text(4), row.maybe_text(5), row.maybe_text(6),
         row.maybe_real(7), row.maybe_text(8), row.maybe_text(9), row.maybe_text(10),
         events_of(database, "SELECT on_date, kind, words, cycles FROM kept_event WHERE compound_id = ? ORDER BY id",
                   row.integer(0))});
  return compounds;
}

std::vector<CompoundRecord> all_compounds(const Workshop& workshop) {
  return translated([&] { return all_compounds(workshop.connection()); });
}

Result<CompoundRecord> find_compound(const SQLite::Database& database, std::string_view name) {
  return named(all_compounds(database), name);
}

Result<CompoundRecord> find_compound(const Workshop& workshop, std::string_view name) {
  return named(all_compounds(workshop), name);
}

} // namespace clampwright::specdb
