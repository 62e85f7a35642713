// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/faces.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

std::string_view part_name(Part part) { return part == Part::head ? "head" : "nut"; }

quantity::Length length(double value, const std::string& unit) {
  return unit == "in" ? quantity::inches(value) : quantity::millimetres(value);
}

// Tables list sizes in millimetres or decimals of an inch; 5/16 in stands there as 0.3125.
bool same_size(quantity::Length one, quantity::Length other) {
  return std::abs(quantity::in_millimetres(one) - quantity::in_millimetres(other)) < 1e-3;
}

} // namespace

std::vector<std::string> face_names(const Catalogue& catalogue, Part part) {
  return translated([&] {
    Query query(catalogue.connection(), "SELECT DISTINCT name FROM faces WHERE part = ? ORDER BY name",
                part_name(part));
    std::vector<std::string> names;
    while (query.next())
      names.push_back(query.text(0));
    return names;
  });
}

Result<std::optional<StandardDiameter>> find_face(const Catalogue& catalogue, std::string_view name, Part part,
                                                  const thread::Thread& thread) {
  const auto names = face_names(catalogue, part);
  const auto known = std::ranges::find_if(names, [&](const std::string& n) { return text::equal_fold(n, name); });
  if (known == names.end()) return no_such_name(part_name(part), name, names);
  return translated([&]() -> std::optional<StandardDiameter> {
    Query row(
        catalogue.connection(),
        "SELECT f.diameter, f.diameter_unit, f.face_diameter, f.outer_unit, f.standard, f.grade, s.title, s.edition, "
        "f.\"where\", f.known FROM faces f JOIN sources s ON s.id = f.source WHERE f.name = ? AND f.part = ? AND "
        "f.form = ?",
        std::string_view(*known), part_name(part), thread::form_name(thread.form));
    while (row.next()) {
      if (!same_size(length(row.real(0), row.text(1)), thread.diameter) || row.is_null(2)) continue;
      const std::string grade = row.maybe_text(5).value_or("");
      return StandardDiameter{length(row.real(2), row.text(3)),
                              fmt::format("{} {} face{}", row.text(4), part_name(part),
                                          grade.empty() ? "" : fmt::format(", grade {}", grade)),
                              row.source(6)};
    }
    return std::nullopt;
  });
}

std::string why_no_face(const Catalogue& catalogue, std::string_view name, Part part) {
  return translated([&] {
    Query row(catalogue.connection(),
              "SELECT note FROM faces WHERE lower(name) = ? AND part = ? AND face_diameter IS NULL LIMIT 1",
              std::string_view(text::to_lower(name)), part_name(part));
    return row.next() ? row.text(0) : std::string();
  });
}

std::optional<StandardDiameter> find_hole(const Catalogue& catalogue, const thread::Thread& thread) {
  return translated([&]() -> std::optional<StandardDiameter> {
    Query row(
        catalogue.connection(),
        "SELECT h.diameter, h.diameter_unit, h.hole, h.hole_unit, h.fit, s.title, s.edition, h.\"where\", h.known FROM "
        "holes h JOIN sources s ON s.id = h.source WHERE h.form = ? AND h.fit IN ('medium','normal')",
        thread::form_name(thread.form));
    while (row.next()) {
      if (!same_size(length(row.real(0), row.text(1)), thread.diameter)) continue;
      const bool metric = thread.form == thread::Form::metric;
      return StandardDiameter{length(row.real(2), row.text(3)),
                              fmt::format("{} {} hole", metric ? "ISO 273" : "ASME B18.2.8", row.text(4)),
                              row.source(5)};
    }
    return std::nullopt;
  });
}

} // namespace clampwright::specdb
