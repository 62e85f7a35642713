// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/threads.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "core/thread/inch_size.hpp"
#include "specdb/catalogue/thread_neighbours.hpp"
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
  if (asked.size.starts_with('#')) return false;
  const auto diameter = thread::inch_size(asked.size);
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
                                                     : thread::inch_size(asked.size).value_or(0.0);
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

// What else might have been meant, as far as diameter and pitch are said.
std::string near_by(const Catalogue& catalogue, const Designation& asked) {
  const auto stated = stated_size(asked);
  if (!stated) return {};
  const std::string words = neighbour_words(catalogue, asked.form, *stated);
  return words.empty() ? words : "; " + words;
}

Refusal no_such_thread(const Catalogue& catalogue, const Designation& asked, std::string_view text,
                       const std::vector<Listed>& rows, const std::vector<Listed>& of_size) {
  const std::string input = text::quotable(text);
  if (of_size.empty())
    return refuse(Trouble::no_such, "no-such-thread", fmt::format("no thread of size {} is listed", asked.size), input,
                  neighbours(asked, rows) + near_by(catalogue, asked));
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
  return refuse(
      Trouble::no_such, "no-such-thread", fmt::format("{} is not a listed thread", what), input,
      fmt::format("listed for that size: {}{}", fmt::join(designations(of_size), ", "), near_by(catalogue, asked)));
}

quantity::Length length(double value, std::string_view unit) {
  return unit == "in" ? quantity::inches(value) : quantity::millimetres(value);
}

// The columns that `limits_in` reads.
constexpr std::string_view k_limits_query =
    "SELECT l.external_class, l.internal_class, l.unit, l.d_max, l.d_min, l.d2_max, l.d2_min, l.d3_max, "
    "l.D_min_internal, l.D2_min_internal, l.D2_max_internal, l.D1_min_internal, l.D1_max_internal, "
    "s.title, s.edition, l.\"where\", l.known, l.designation FROM thread_limits l JOIN sources s ON s.id = l.source ";

thread::Limits limits_in(const Query& query) {
  const std::string unit = query.text(2);
  const auto at = [&](int column) { return length(query.real(column), unit); };
  return thread::Limits{query.text(0), at(3), at(4),  at(5),  at(6),  at(7),           query.text(1),
                        at(8),         at(9), at(10), at(11), at(12), query.source(13)};
}

std::optional<thread::Limits> limits_of(const Catalogue& catalogue, const std::string& designation) {
  Query query(catalogue.connection(), (std::string(k_limits_query) + "WHERE l.designation = ?").c_str(),
              std::string_view(designation));
  if (!query.next()) return std::nullopt;
  return limits_in(query);
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

// The columns that `entry_in` reads.
constexpr std::string_view k_thread_query =
    "SELECT t.diameter, t.diameter_unit, t.pitch, t.tpi, t.series, t.stress_area, t.stress_area_unit, "
    "s.title, s.edition, t.\"where\", t.known, a.title, a.edition, t.stress_area_where, t.stress_area_known, "
    "t.designation, t.form, t.choice "
    "FROM threads t JOIN sources s ON s.id = t.source LEFT JOIN sources a ON a.id = t.stress_area_source ";

Form form_named(std::string_view name) {
  for (const Form form : {Form::metric, Form::unified, Form::whitworth, Form::ba, Form::bsc})
    if (thread::form_name(form) == name) return form;
  throw DatabaseError("a listed thread is of a form that is not known", Trouble::internal);
}

ThreadEntry entry_in(const Query& query) {
  ThreadEntry entry;
  entry.thread.designation = query.text(15);
  entry.thread.form = form_named(query.text(16));
  entry.thread.diameter = length(query.real(0), query.text(1));
  entry.thread.tpi = query.maybe_real(3);
  entry.thread.pitch =
      entry.thread.tpi ? quantity::inches(1.0 / *entry.thread.tpi) : quantity::millimetres(query.real(2));
  entry.thread.series = query.text(4);
  entry.sources.push_back(query.source(7));
  if (const auto area = query.maybe_real(5)) {
    entry.stress_area_table =
        query.text(6) == "in2" ? quantity::square_inches(*area) : quantity::square_millimetres(*area);
    entry.sources.push_back(query.source(11));
  }
  if (!query.is_null(17)) entry.choice = static_cast<int>(query.integer(17));
  return entry;
}

ThreadEntry entry_of(const Catalogue& catalogue, const Designation& asked, const std::string& designation) {
  Query query(catalogue.connection(), (std::string(k_thread_query) + "WHERE t.designation = ?").c_str(),
              std::string_view(designation));
  if (!query.next()) throw DatabaseError("a listed thread has gone", Trouble::internal);
  ThreadEntry entry = entry_in(query);
  entry.thread.hand = asked.hand;
  entry.thread.tolerance = asked.tolerance;
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
    if (found.empty()) return no_such_thread(catalogue, *asked, text, rows, of_size);
    return entry_of(catalogue, *asked, found.front().designation);
  });
}

std::vector<ThreadEntry> all_threads(const Catalogue& catalogue) {
  return translated([&] {
    std::map<std::string, thread::Limits> limits;
    Query limits_query(catalogue.connection(), std::string(k_limits_query).c_str());
    while (limits_query.next())
      limits.emplace(limits_query.text(17), limits_in(limits_query));
    std::vector<ThreadEntry> entries;
    Query query(catalogue.connection(),
                (std::string(k_thread_query) + "ORDER BY t.form, t.diameter, t.designation").c_str());
    while (query.next()) {
      ThreadEntry entry = entry_in(query);
      if (const auto found = limits.find(entry.thread.designation); found != limits.end()) entry.limits = found->second;
      entries.push_back(std::move(entry));
    }
    return entries;
  });
}

std::vector<thread::Thread> threads_of(const Catalogue& catalogue, Form form) {
  std::vector<thread::Thread> threads;
  for (ThreadEntry& entry : all_threads(catalogue))
    if (entry.thread.form == form) threads.push_back(std::move(entry.thread));
  std::ranges::stable_sort(threads, [](const thread::Thread& one, const thread::Thread& other) {
    return one.diameter < other.diameter || (!(other.diameter < one.diameter) && one.pitch > other.pitch);
  });
  return threads;
}

Result<quantity::Length> find_size(const Catalogue& catalogue, std::string_view text, Form form) {
  const auto asked = thread::read_designation_or_size(text);
  if (!asked) return Refusal(asked.error());
  if (asked->form != form)
    return refuse(Trouble::no_such, "no-such-thread",
                  fmt::format("{} is no {} thread", asked->size, thread::form_name(form)), text,
                  form == Form::metric ? "write a metric size like M6" : "write an inch size like 1/4");
  if (asked->is_complete()) {
    const auto entry = find_thread(catalogue, text);
    if (!entry) return Refusal(entry.error());
    return entry->thread.diameter;
  }
  return translated([&]() -> Result<quantity::Length> {
    const auto rows = all_of_form(catalogue, form);
    const auto row = std::ranges::find_if(rows, [&](const Listed& listed) { return has_size(*asked, listed); });
    if (row == rows.end()) return no_such_thread(catalogue, *asked, text, rows, {});
    return entry_of(catalogue, *asked, row->designation).thread.diameter;
  });
}

} // namespace clampwright::specdb
