// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/materials.hpp"

#include <array>
#include <charconv>
#include <utility>

#include <fmt/format.h>

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

// The kind of metal that a family is of: "grey-iron-220" is iron.
strength::Metal metal_of(const std::string& family) {
  using strength::Metal;
  constexpr std::array<std::pair<std::string_view, Metal>, 7> k_metals{{{"stainless", Metal::stainless},
                                                                        {"steel", Metal::steel},
                                                                        {"iron", Metal::iron},
                                                                        {"aluminium", Metal::aluminium},
                                                                        {"magnesium", Metal::magnesium},
                                                                        {"copper", Metal::copper},
                                                                        {"titanium", Metal::titanium}}};
  for (const auto& [word, metal] : k_metals)
    if (family.find(word) != std::string::npos) return metal;
  return Metal::none;
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
    Query row(catalogue.connection(),
              "SELECT m.name, m.description, m.soft, m.shear_MPa, a.title, a.edition, m.shear_where, m.shear_known, "
              "m.seat_pressure_MPa, b.title, b.edition, m.seat_pressure_where, m.seat_pressure_known, m.family, "
              "m.shear_high_MPa, c.title, c.edition, m.shear_high_where, m.shear_high_known, "
              "m.creep_above_degC, d.title, d.edition, m.creep_where, m.creep_known, coalesce(m.note, '') FROM "
              "part_materials m "
              "LEFT JOIN sources a ON a.id = m.shear_source LEFT JOIN sources b ON b.id = m.seat_pressure_source "
              "LEFT JOIN sources c ON c.id = m.shear_high_source LEFT JOIN sources d ON d.id = m.creep_source "
              "WHERE m.name = ?",
              std::string_view(name_key(name)));
    if (!row.next()) return no_such_name("material", name, material_names(catalogue));
    strength::PartMaterial out;
    out.name = row.text(0);
    out.description = row.text(1);
    out.soft = row.integer(2) == 1;
    out.shear_strength = stress(row, 3, out.sources);
    out.seat_pressure = stress(row, 8, out.sources);
    out.family = row.text(13);
    out.metal = metal_of(out.family);
    if (const auto high = row.maybe_real(14)) {
      out.shear_highest = quantity::megapascals(*high);
      out.shear_highest_source = row.source(15);
    }
    if (const auto creep = row.maybe_real(19)) {
      out.creeps_above = quantity::degrees_celsius(*creep);
      out.creep_source = row.source(20);
    }
    out.note = row.text(24);
    return out;
  });
}

Result<strength::Elastic> find_elastic(const Catalogue& catalogue, std::string_view name) {
  const std::string key = name_key(name);
  return translated([&]() -> Result<strength::Elastic> {
    Query row(catalogue.connection(),
              "SELECT e.name, e.description, e.modulus_least_GPa, e.modulus_most_GPa, e.expansion_1e_6_per_K, "
              "e.expansion_range, s.title, s.edition, e.\"where\", e.known FROM material_elastic e JOIN sources s ON "
              "s.id = e.source WHERE e.name = coalesce((SELECT p.elastic FROM part_materials p WHERE p.name = ?), ?)",
              std::string_view(key), std::string_view(key));
    if (row.next()) {
      const auto expansion = row.maybe_real(4);
      return strength::Elastic{row.text(0),
                               row.text(1),
                               quantity::megapascals(row.real(2) * 1000.0),
                               quantity::megapascals(row.real(3) * 1000.0),
                               expansion ? std::optional(*expansion / 1e6) : std::nullopt,
                               row.maybe_text(5).value_or(""),
                               row.source(6)};
    }
    std::vector<std::string> names = elastic_names(catalogue);
    Query all(catalogue.connection(), "SELECT name FROM material_elastic ORDER BY rowid");
    while (all.next())
      names.push_back(all.text(0));
    return no_such_name("material with known stiffness", name, names);
  });
}

std::vector<std::string> elastic_names(const Catalogue& catalogue) {
  return translated([&] {
    Query query(catalogue.connection(), "SELECT name FROM part_materials WHERE elastic IS NOT NULL ORDER BY rowid");
    std::vector<std::string> names;
    while (query.next())
      names.push_back(query.text(0));
    return names;
  });
}

std::vector<strength::EngagementRule> engagement_rules(const Catalogue& catalogue,
                                                       const strength::PartMaterial& material,
                                                       std::string_view bolt_class, const thread::Thread& thread) {
  const bool fine = thread.series == "fine" || thread.series == "UNF" || thread.series == "UNEF";
  // The leading zero of 08.8 does not count; "A2-70" and "SAE 5" are none of the metric classes.
  double figure = 0;
  const auto [end, error] = std::from_chars(bolt_class.data(), bolt_class.data() + bolt_class.size(), figure);
  if (error != std::errc{} || end != bolt_class.data() + bolt_class.size()) figure = 0;
  return translated([&] {
    Query row(catalogue.connection(),
              "SELECT e.tapped_material, e.class_from, e.class_to, e.pitch, e.engagement_over_d, e.note, s.title, "
              "s.edition, e.\"where\", e.known FROM thread_engagement e JOIN sources s ON s.id = e.source "
              "WHERE instr(' ' || e.families || ' ', ' ' || ? || ' ') > 0 "
              "AND (e.class_from IS NULL OR ? BETWEEN e.class_from AND e.class_to) "
              "AND (e.pitch IS NULL OR e.pitch = ?) ORDER BY e.engagement_over_d DESC, e.rowid",
              std::string_view(material.family), figure, std::string_view(fine ? "fine" : "coarse"));
    std::vector<strength::EngagementRule> rules;
    while (row.next()) {
      std::string words = row.text(0);
      if (const auto from = row.maybe_real(1))
        words += *from < row.real(2) ? fmt::format(", class {} to {}", *from, row.real(2))
                                     : fmt::format(", class {}", *from);
      if (const auto pitch = row.maybe_text(3)) words += fmt::format(", {} pitch", *pitch);
      rules.push_back({words, row.real(4), row.maybe_text(5).value_or(""), row.source(6)});
    }
    return rules;
  });
}

strength::ShearRatio find_bolt_shear(const Catalogue& catalogue, std::string_view bolt_class) {
  while (bolt_class.starts_with('0'))
    bolt_class.remove_prefix(1);
  return translated([&] {
    Query row(catalogue.connection(),
              "SELECT b.share, s.title, s.edition, b.\"where\", b.known FROM bolt_shear b JOIN sources s ON s.id = "
              "b.source WHERE b.class IN (?, 'any') ORDER BY b.class = 'any'",
              bolt_class);
    if (!row.next()) throw DatabaseError("the rule for the shear strength of bolts has gone", Trouble::internal);
    return strength::ShearRatio{row.real(0), row.source(1)};
  });
}

} // namespace clampwright::specdb
