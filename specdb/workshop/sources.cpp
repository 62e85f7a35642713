// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/sources.hpp"

#include <string>

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

std::vector<SourceRecord> all_sources(const SQLite::Database& database) {
  Query row(database, "SELECT slug, title, edition, known FROM source ORDER BY id");
  std::vector<SourceRecord> sources;
  while (row.next())
    sources.push_back({row.text(0), row.text(1), row.text(2), known_named(row.text(3))});
  return sources;
}

std::vector<SourceRecord> all_sources(const Workshop& workshop) {
  return translated([&] { return all_sources(workshop.connection()); });
}

Result<SourceRecord> find_source(const std::vector<SourceRecord>& sources, std::string_view name) {
  const std::string wanted = text::plain_spaces(name);
  std::vector<std::string> slugs;
  for (const SourceRecord& source : sources) {
    if (text::equal_fold(source.slug, wanted)) return source;
    slugs.push_back(source.slug);
  }
  if (slugs.empty())
    return refuse(Trouble::no_such, "no-such-source", "no source is recorded in the workshop file", name,
                  "enter the document first, with its title and edition, and say how it is known");
  return no_such_name("source", name, slugs);
}

} // namespace clampwright::specdb
