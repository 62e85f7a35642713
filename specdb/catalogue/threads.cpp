// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/threads.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "specdb/sql/query.hpp"

namespace clampwright::specdb {

namespace {

using thread::Designation;
using thread::Form;

// One row of the table, as far as finding needs it.
struct Listed {
  std::string designation;
  std::string size;
  double diameter;
  std::optional<double> pitch;
  std::optional<double> tpi;
  std::string series;
};

std::vector<Listed> all_of_form(const Catalogue& catalogue, Form form) {
  Query query(catalogue.connection(),
              "SELECT designation, size, diameter, pitch, tpi, series FROM threads WHERE form = ? ORDER BY diameter, "
              "coalesce(pitch, 25.4 / tpi)",
              thread::form_name(form));
  std::vector<Listed> rows;
  while (query.next())
    rows.push_back(
        {query.text(0), query.text(1), query.real(2), query.maybe_real(3), query.maybe_real(4), query.text(5)});
  return rows;
}

bool same(double one, double other) { return std::abs(one - other) < 1e-6; }

// "1/4", "1 1/4" and "0.25" are one size; "10" stands for #10 where no inch size of 10 exists.
std::optional<double> inches_of(std::string_view size) {
  if (size.starts_with('#')) return std::nullopt;
  const auto number = [](std::string_view text) {
    int value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
  };
  if (size.find('.') != std::string_view::npos) {
    const auto point = size.find('.');
    const std::string_view decimals = size.substr(point + 1);
    return number(size.substr(0, point)) + number(decimals) / std::pow(10.0, static_cast<double>(decimals.size()));
  }
  double whole = 0;
  if (const auto space = size.find(' '); space != std::string_view::npos) {
    whole = number(size.substr(0, space));
    size = size.substr(space + 1);
  }
  const auto slash = size.find('/');
  if (slash == std::string_view::npos) return whole + number(size);
  const int bottom = number(size.substr(slash + 1));
  if (bottom == 0) return std::nullopt;
  return whole + static_cast<double>(number(size.substr(0, slash))) / bottom;
}

bool has_size(const Designation& asked, const Listed& row) {
  switch (asked.form) {
  case Form::metric:
    return same(asked.diameter_mm, row.diameter);
  case Form::ba:
    return row.size == asked.size + " BA" || row.size == asked.size;
  case Form::unified:
    if (row.size.starts_with('#'))
      return row.size == asked.size || (row.size.substr(1) == asked.size && row.series.starts_with("UN"));
    break;
  case Form::whitworth:
  case Form::bsc:
    break;
  }
  const auto diameter = inches_of(asked.size);
  return diameter && same(*diameter, row.diameter);
}

bool has_rest(const Designation& asked, const Listed& row) {
  if (!asked.series.empty() && asked.series != row.series) return false;
  if (asked.tpi && !(row.tpi && same(*asked.tpi, *row.tpi))) return false;
  if (asked.form != Form::metric) return true;
  return asked.pitch_mm ? same(*asked.pitch_mm, *row.pitch) : row.series == "coarse";
}

std::vector<std::string> designations(const std::vector<Listed>& rows) {
  std::vector<std::string> out;
  for (const Listed& row : rows)
    out.push_back(row.designation);
  return out;
}

// The two listed sizes on either side.
std::string neighbours(const Designation& asked, const std::vector<Listed>& rows) {
  const double diameter = asked.form == Form::metric ? asked.diameter_mm
                          : asked.form == Form::ba   ? 0.0
                                                     : inches_of(asked.size).value_or(0.0);
  std::string below;
  std::string above;
  for (const Listed& row : rows) {
    if (row.diameter < diameter)
      below = row.size;
    else if (above.empty())
      above = row.size;
  }
  if (below.empty() || above.empty()) return fmt::format("listed are {} to {}", rows.front().size, rows.back().size);
  return fmt::format("the nearest listed sizes are {} and {}", below, above);
}

Refusal no_such_thread(const Designation& asked, std::string_view text, const std::vector<Listed>& rows,
                       const std::vector<Listed>& of_size) {
  const std::string input = text::quotable(text);
  if (of_size.empty())
    return refuse(Trouble::no_such, "no-such-thread", fmt::format("no thread of size {} is listed", asked.size), input,
                  neighbours(asked, rows));
  std::string what = asked.size;
  if (asked.pitch_mm)
    what = fmt::format("{} with a pitch of {} mm", asked.size, quantity::write_number(*asked.pitch_mm, 6));
  else if (asked.tpi)
    what = fmt::format("{} with {} threads per inch{}{}", asked.size, quantity::write_number(*asked.tpi, 6),
                       asked.series.empty() ? "" : " in series ", asked.series);
  else if (!asked.series.empty())
    what = fmt::format("{} in series {}", asked.size, asked.series);
  else
    what = fmt::format("{} with a coarse pitch", asked.size);
  return refuse(Trouble::no_such, "no-such-thread", fmt::format("{} is not a listed thread", what), input,
                fmt::format("listed for that size: {}", fmt::join(designations(of_size), ", ")));
}

quantity::Length length(double value, std::string_view unit) {
  return unit == "in" ? quantity::inches(value) : quantity::millimetres(value);
}

std::optional<thread::Limits> limits_of(const Catalogue& catalogue, const std::string& designation) {
  Query query(catalogue.connection(),
              "SELECT l.external_class, l.internal_class, l.unit, l.d_max, l.d_min, l.d2_max, l.d2_min, l.d3_max, "
              "l.D_min_internal, l.D2_min_internal, l.D2_max_internal, l.D1_min_internal, l.D1_max_internal, "
              "s.title, s.edition, l.\"where\", l.known FROM thread_limits l JOIN sources s ON s.id = l.source "
              "WHERE l.designation = ?",
              std::string_view(designation));
  if (!query.next()) return std::nullopt;
  const std::string unit = query.text(2);
  const auto at = [&](int column) { return length(query.real(column), unit); };
  return thread::Limits{query.text(0), at(3), at(4),  at(5),  at(6),  at(7),           query.text(1),
                        at(8),         at(9), at(10), at(11), at(12), query.source(13)};
}

// Are these the limits of that class? "6g", "6g6g", "6H/6g", in any case "2a"; no class named means the usual one.
bool is_class_of(const thread::Limits& limits, std::string_view tolerance) {
  const bool metric = limits.external_class == "6g";
  while (!tolerance.empty()) {
    const std::string_view one = tolerance.substr(0, 2);
    tolerance.remove_prefix(one.size());
    if (tolerance.starts_with('/')) tolerance.remove_prefix(1);
    const auto is = [&](const std::string& name) { return metric ? one == name : text::equal_fold(one, name); };
    if (!is(limits.external_class) && !is(limits.internal_class)) return false;
  }
  return true;
}

// An inch size without pitch or series: refused with the threads that it could be.
Refusal size_alone(const Catalogue& catalogue, const Designation& asked, std::string_view text) {
  std::vector<std::string> choices;
  for (const Form form : {Form::unified, Form::whitworth, Form::bsc}) {
    Designation of_form = asked;
    of_form.form = form;
    for (const Listed& row : all_of_form(catalogue, form))
      if (has_size(of_form, row)) choices.push_back(row.designation);
  }
  return refuse(Trouble::not_understood, "pitch-missing",
                fmt::format("the inch size {} has no pitch or series", asked.size), text,
                choices.empty() ? "write threads per inch or series with it, like 1/4-28 UNF"
                                : fmt::format("write one of {}", fmt::join(choices, ", ")));
}

ThreadEntry entry_of(const Catalogue& catalogue, const Designation& asked, const std::string& designation) {
  Query query(catalogue.connection(),
              "SELECT t.diameter, t.diameter_unit, t.pitch, t.tpi, t.series, t.stress_area, t.stress_area_unit, "
              "s.title, s.edition, t.\"where\", t.known, a.title, a.edition, t.stress_area_where, t.stress_area_known "
              "FROM threads t JOIN sources s ON s.id = t.source LEFT JOIN sources a ON a.id = t.stress_area_source "
              "WHERE t.designation = ?",
              std::string_view(designation));
  if (!query.next()) throw DatabaseError("a listed thread has gone", Trouble::internal);
  ThreadEntry entry;
  entry.thread.designation = designation;
  entry.thread.form = asked.form;
  entry.thread.diameter = length(query.real(0), query.text(1));
  entry.thread.tpi = query.maybe_real(3);
  entry.thread.pitch =
      entry.thread.tpi ? quantity::inches(1.0 / *entry.thread.tpi) : quantity::millimetres(query.real(2));
  entry.thread.series = query.text(4);
  entry.thread.hand = asked.hand;
  entry.thread.tolerance = asked.tolerance;
  entry.sources.push_back(query.source(7));
  if (const auto area = query.maybe_real(5)) {
    entry.stress_area_table =
        query.text(6) == "in2" ? quantity::square_inches(*area) : quantity::square_millimetres(*area);
    entry.sources.push_back(query.source(11));
  }
  entry.limits = limits_of(catalogue, designation);
  if (entry.limits && !is_class_of(*entry.limits, asked.tolerance)) entry.limits.reset();
  return entry;
}

} // namespace

Result<ThreadEntry> find_thread(const Catalogue& catalogue, std::string_view text) {
  const auto asked = thread::read_designation_or_size(text);
  if (!asked) return Refusal(asked.error());
  return translated([&]() -> Result<ThreadEntry> {
    if (!asked->is_complete()) return size_alone(catalogue, *asked, text);
    const auto rows = all_of_form(catalogue, asked->form);
    std::vector<Listed> of_size;
    std::ranges::copy_if(rows, std::back_inserter(of_size), [&](const Listed& row) { return has_size(*asked, row); });
    std::vector<Listed> found;
    std::ranges::copy_if(of_size, std::back_inserter(found), [&](const Listed& row) { return has_rest(*asked, row); });
    if (found.size() > 1)
      return refuse(Trouble::not_understood, "pitch-missing",
                    fmt::format("{} stands for more than one thread", asked->size), text,
                    fmt::format("write one of {}", fmt::join(designations(found), ", ")));
    if (found.empty()) return no_such_thread(*asked, text, rows, of_size);
    return entry_of(catalogue, *asked, found.front().designation);
  });
}

} // namespace clampwright::specdb
