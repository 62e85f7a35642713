// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/temperatures.hpp"

#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

std::optional<quantity::Temperature> temperature(const std::optional<double>& degrees) {
  if (!degrees) return std::nullopt;
  return quantity::degrees_celsius(*degrees);
}

} // namespace

std::optional<ClassTemperature> class_temperature(const Catalogue& catalogue, std::string_view class_name) {
  const std::string key = class_key(class_name);
  return translated([&]() -> std::optional<ClassTemperature> {
    // A class with a leading zero is made of the steel of its full class.
    Query row(catalogue.connection(),
              "SELECT c.class, r.class, t.low_degC, t.high_degC, s.title, s.edition, t.\"where\", t.known FROM "
              "strength_classes c LEFT JOIN reduced_classes r ON r.full_class = c.class JOIN class_temperatures t ON "
              "t.system = c.system AND (t.class IS NULL OR t.class = c.class) JOIN sources s ON s.id = t.source "
              "ORDER BY t.class IS NULL, t.rowid");
    while (row.next()) {
      const auto reduced = row.maybe_text(1);
      if (class_key(row.text(0)) == key || (reduced && class_key(*reduced) == key))
        return ClassTemperature{temperature(row.maybe_real(2)), temperature(row.maybe_real(3)), row.source(4)};
    }
    return std::nullopt;
  });
}

} // namespace clampwright::specdb
