// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/strengths.hpp"

#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/geometry.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/size_range.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

bool holds(const Query& row, const thread::Thread& thread) {
  const std::string unit = row.text(4);
  return SizeRange{row.real(1), row.integer(2) == 1, row.real(3), unit}.holds(thread.diameter);
}

std::optional<quantity::Stress> stress(const std::optional<double>& value, const quantity::Unit& unit) {
  if (!value) return std::nullopt;
  return quantity::pascals(quantity::to_si(*value, unit));
}

strength::PrintedLoads printed_loads(const Catalogue& catalogue, const std::string& class_name,
                                     const thread::Thread& thread) {
  strength::PrintedLoads loads;
  Query query(
      catalogue.connection(),
      "SELECT b.proof_load_N, b.proof_known, b.ultimate_load_N, b.ultimate_known, s.title, s.edition, b.proof_where, "
      "b.ultimate_where FROM bolt_loads b JOIN sources s ON s.id = b.source WHERE b.thread = ? AND b.class = ?",
      std::string_view(thread.designation), std::string_view(class_name));
  if (!query.next()) return loads;
  if (const auto proof = query.maybe_real(0))
    loads.proof = {quantity::newtons(*proof),
                   {query.text(4), query.text(5), query.text(6), known_named(query.text(1))}};
  if (const auto ultimate = query.maybe_real(2))
    loads.tensile = {quantity::newtons(*ultimate),
                     {query.text(4), query.text(5), query.text(7), known_named(query.text(3))}};
  return loads;
}

// A class with a leading zero, and the class whose stresses it has.
struct Reduced {
  strength::ReducedClass itself;
  std::string full_class;
};

std::optional<Reduced> reduced_class(const Catalogue& catalogue, const std::string& name) {
  Query query(catalogue.connection(),
              "SELECT r.class, r.share, r.full_class, s.title, s.edition, r.\"where\", r.known FROM reduced_classes r "
              "JOIN sources s ON s.id = r.source WHERE r.class = ?",
              std::string_view(name));
  if (!query.next()) return std::nullopt;
  return Reduced{{query.text(0), query.real(1), query.source(3)}, query.text(2)};
}

strength::Strength strength_with_loads(const Catalogue& catalogue, const strength::StrengthClass& found,
                                       const std::optional<Reduced>& reduced, const thread::Thread& thread) {
  strength::PrintedLoads printed = printed_loads(catalogue, found.name, thread);
  const auto area = thread::geometry_of(thread).stress_area;
  if (!reduced) return strength::strength_of(found, area, printed);
  const auto own = printed_loads(catalogue, reduced->itself.name, thread);
  // Not to be named as a source if it is not used.
  if (own.tensile) printed.tensile.reset();
  return strength::reduced(strength::strength_of(found, area, printed), reduced->itself, own.tensile);
}

// "1.6 to 16 mm" for the message.
std::string range_text(const Query& row) {
  if (!(row.real(1) > 0)) return fmt::format("up to {:g} {}", row.real(3), row.text(4));
  return fmt::format("{} {:g} to {:g} {}", row.integer(2) == 1 ? "from" : "over", row.real(1), row.real(3),
                     row.text(4));
}

} // namespace

std::vector<std::string> class_names(const Catalogue& catalogue) {
  return translated([&] {
    std::map<std::string, std::string> reduced;
    Query zeros(catalogue.connection(), "SELECT full_class, class FROM reduced_classes");
    while (zeros.next())
      reduced.emplace(zeros.text(0), zeros.text(1));
    Query query(catalogue.connection(),
                "SELECT DISTINCT class, system FROM strength_classes ORDER BY CASE system WHEN 'ISO 898-1' THEN 1 WHEN "
                "'SAE J429' THEN 2 WHEN 'ISO 3506-1' THEN 4 WHEN 'aircraft' THEN 5 ELSE 3 END, length(class), class");
    std::vector<std::string> names;
    while (query.next()) {
      names.push_back(query.text(0));
      if (const auto zero = reduced.find(names.back()); zero != reduced.end()) names.push_back(zero->second);
    }
    return names;
  });
}

Result<NamedClass> find_class(const Catalogue& catalogue, std::string_view class_name) {
  const std::string key = class_key(class_name);
  const auto names = class_names(catalogue);
  const auto name = std::ranges::find_if(names, [&](const std::string& known) { return class_key(known) == key; });
  if (name == names.end()) return no_such_name("strength class", class_name, names);
  return translated([&]() -> Result<NamedClass> {
    const auto reduced = reduced_class(catalogue, *name);
    Query row(catalogue.connection(), "SELECT form FROM strength_classes WHERE class = ?",
              std::string_view(reduced ? reduced->full_class : *name));
    if (!row.next()) throw DatabaseError("a listed class has gone", Trouble::internal);
    const std::string form = row.text(0);
    for (const thread::Form one : {thread::Form::metric, thread::Form::unified})
      if (thread::form_name(one) == form) return NamedClass{*name, one};
    throw DatabaseError("a class is for a form of thread that has none", Trouble::internal);
  });
}

Result<strength::Strength> find_strength(const Catalogue& catalogue, std::string_view class_name,
                                         const thread::Thread& thread) {
  const std::string key = class_key(class_name);
  if (key == "unknown" || key == "notknown") return strength::unknown_strength();
  const auto names = class_names(catalogue);
  const auto name = std::ranges::find_if(names, [&](const std::string& known) { return class_key(known) == key; });
  if (name == names.end()) {
    std::vector<std::string> listed = names;
    listed.emplace_back("unknown");
    return no_such_name("strength class", class_name, listed);
  }
  return translated([&]() -> Result<strength::Strength> {
    const auto reduced = reduced_class(catalogue, *name);
    const std::string full = reduced ? reduced->full_class : *name;
    Query row(
        catalogue.connection(),
        "SELECT c.form, c.over, c.over_inclusive, c.up_to, c.size_unit, c.proof, c.yield, c.yield_kind, c.tensile, "
        "c.stress_unit, c.system, s.title, s.edition, c.\"where\", c.known, c.hv_max FROM strength_classes c JOIN "
        "sources s ON "
        "s.id = c.source WHERE c.class = ? ORDER BY c.over",
        std::string_view(full));
    std::string ranges;
    while (row.next()) {
      if (row.text(0) == thread::form_name(thread.form) && holds(row, thread)) {
        const quantity::Unit& unit = quantity::unit_named(row.text(9));
        const strength::StrengthClass found{full,
                                            row.text(10),
                                            stress(row.maybe_real(5), unit),
                                            stress(row.maybe_real(6), unit),
                                            row.maybe_text(7).value_or("yield"),
                                            stress(row.maybe_real(8), unit),
                                            row.source(11),
                                            row.maybe_real(15),
                                            row.text(10) == "ISO 3506-1",
                                            row.text(10) == "aircraft"};
        return strength_with_loads(catalogue, found, reduced, thread);
      }
      ranges += fmt::format("{}{} threads {}", ranges.empty() ? "" : "; ", row.text(0), range_text(row));
    }
    return refuse(Trouble::no_such, "no-such-class", fmt::format("{} is not a class for {}", *name, thread.designation),
                  class_name,
                  fmt::format("{} is for {}; write --class unknown if the mark cannot be read", *name, ranges));
  });
}

} // namespace clampwright::specdb
