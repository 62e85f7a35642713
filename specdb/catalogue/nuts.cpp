// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/nuts.hpp"

#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

std::vector<std::string> nut_class_names(const Catalogue& catalogue) {
  return translated([&] {
    Query query(catalogue.connection(), "SELECT nut_class FROM nut_pairing ORDER BY rowid");
    std::vector<std::string> names;
    while (query.next())
      names.push_back(query.text(0));
    return names;
  });
}

Result<NutPairing> find_nut_pairing(const Catalogue& catalogue, std::string_view nut_class) {
  const std::string key = class_key(nut_class);
  return translated([&]() -> Result<NutPairing> {
    Query row(catalogue.connection(),
              "SELECT n.nut_class, n.highest_bolt_class, s.title, s.edition, n.\"where\", n.known FROM nut_pairing n "
              "JOIN sources s ON s.id = n.source ORDER BY n.rowid");
    while (row.next())
      if (class_key(row.text(0)) == key) return NutPairing{row.text(0), row.maybe_text(1), row.source(2)};
    return no_such_name("nut class", nut_class, nut_class_names(catalogue));
  });
}

} // namespace clampwright::specdb
