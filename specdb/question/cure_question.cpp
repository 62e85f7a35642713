// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/cure_question.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/quantity/write.hpp"
#include "core/report/tightening_report.hpp"
#include "specdb/catalogue/locking.hpp"
#include "specdb/catalogue/surfaces.hpp"

namespace clampwright::specdb {

namespace {

using locking::Activity;
using locking::Course;
using locking::CureAnswer;
using locking::CureTime;

constexpr const char* k_not_stated = "not-stated";
constexpr const char* k_example = "write cure --lock compound-medium --temperature 20degC --surface steel";
constexpr double k_minutes_of_hour = 60;
constexpr double k_hours_of_day = 24;

Result<friction::Lock> compound_named(const Catalogue& catalogue, const std::string& name) {
  auto lock = find_lock(catalogue, name);
  if (!lock) return in_field(lock.error(), "--lock");
  if (lock->family == friction::LockFamily::compound) return lock;
  std::vector<std::string> compounds;
  for (const std::string& one : lock_names(catalogue))
    if (find_lock(catalogue, one)->family == friction::LockFamily::compound) compounds.push_back(one);
  return refuse(Trouble::usage, "no-compound", fmt::format("{} does not cure", lock->description), name,
                fmt::format("compounds are {}", fmt::join(compounds, ", ")), "--lock");
}

void add_source(std::vector<Source>& sources, const Source& source) {
  if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
}

std::string degrees(quantity::Temperature temperature) {
  return quantity::write_si(temperature.value(), quantity::unit_named("degC"));
}

std::string surfaces_words(const CureAnswer& answer) {
  std::vector<std::string> words;
  for (const locking::CureSurface& surface : answer.asked.surfaces)
    words.push_back(surface.description);
  return fmt::format("{}", fmt::join(words, " and "));
}

std::string activity_words(Activity activity) {
  switch (activity) {
  case Activity::active:
    return "active: it cures by itself";
  case Activity::inactive:
    return "inactive: it cures poorly without a primer";
  case Activity::not_known:
    return "active or inactive: not known";
  case Activity::never:
    return "not for compound";
  }
  return "";
}

std::string by_itself_words(const CureAnswer& answer) {
  if (answer.activity == Activity::active) return "by itself";
  const auto is_stated = [](const locking::CureSurface& surface) { return surface.name != k_not_stated; };
  return std::ranges::none_of(answer.asked.surfaces, is_stated)
             ? "not known while nobody says on what: add --surface steel, or what it is"
             : "not by itself, as far as is known";
}

std::string course_words(const CureAnswer& answer) {
  switch (answer.course) {
  case Course::cures:
    return by_itself_words(answer);
  case Course::wants_primer:
    return "below 10 °C a primer is advised";
  case Course::wants_heat:
    return "by heat alone";
  case Course::heat_cures:
    return fmt::format("by heat: the step of {}, reckoned from when the part itself is that hot",
                       degrees(*answer.used.front().from));
  case Course::too_hot:
    return "not at that heat: it is hotter than the compound bears";
  case Course::not_here:
    return "do not use it here";
  }
  return "";
}

std::string heat_words(const CureAnswer& answer) {
  std::vector<std::string> words;
  for (const CureTime& line : answer.heat_cures)
    words.push_back(fmt::format("{} at {}", duration_words(*line.least_min), degrees(*line.from)));
  return fmt::format("{}; measured on the part, and no hotter than its neighbours bear", fmt::join(words, ", "));
}

void add_times(report::Section& section, const CureAnswer& answer) {
  if (answer.set_most_min)
    section.rows.push_back(
        {"Set", fmt::format("in {} to {}: it may be handled, and is no longer moved",
                            duration_words(*answer.set_least_min), duration_words(*answer.set_most_min))});
  if (answer.set_by)
    section.rows.push_back({"", fmt::format("between {} and {}", calendar::write_moment(*answer.set_from),
                                            calendar::write_moment(*answer.set_by))});
  if (answer.full_min) {
    section.rows.push_back({"Full strength", answer.course == Course::heat_cures
                                                 ? fmt::format("after {}", duration_words(*answer.full_min))
                                                 : fmt::format("within {}", duration_words(*answer.full_min))});
    if (answer.full_at)
      section.rows.push_back(
          {"Ready at", fmt::format("{}: run it then, not before", calendar::write_moment(*answer.full_at))});
    else
      section.rows.push_back({"", "not run before, unless its sheet allows it"});
  } else {
    section.rows.push_back({"Full strength", "not known: " + answer.not_known_because});
    if (answer.asked.fitted_at) section.rows.push_back({"Ready at", "not known"});
  }
}

} // namespace

std::string duration_words(double minutes) {
  const double hours = minutes / k_minutes_of_hour;
  if (hours < 2) return fmt::format("{} min", quantity::write_number(minutes, 4));
  if (hours < 2 * k_hours_of_day) return fmt::format("{} h", quantity::write_number(hours, 4));
  return fmt::format("{} h ({} days)", quantity::write_number(hours, 4),
                     quantity::write_number(hours / k_hours_of_day, 3));
}

Result<CureReply> answer_cure(const Catalogue& catalogue, const CureQuestion& q) {
  if (!q.lock) return refuse(Trouble::usage, "missing", "the compound is missing", {}, k_example, "--lock");
  auto compound = compound_named(catalogue, *q.lock);
  if (!compound) return Refusal(compound.error());
  if (!q.temperature)
    return refuse(Trouble::usage, "missing", "the temperature of the part is missing", {}, k_example, "--temperature");
  const auto temperature = quantity::read_quantity(*q.temperature, quantity::Kind::temperature);
  if (!temperature) return in_field(temperature.error(), "--temperature");
  locking::CureCase asked{std::move(*compound), {}, quantity::Temperature::from_value(temperature->si()), {}};
  const std::vector<std::string> names = q.surfaces.empty() ? std::vector<std::string>{k_not_stated} : q.surfaces;
  for (const std::string& name : names) {
    auto surface = find_cure_surface(catalogue, name);
    if (!surface) return in_field(surface.error(), "--surface");
    asked.surfaces.push_back(std::move(*surface));
  }
  if (q.fitted_at) {
    const auto fitted_at = calendar::read_moment(*q.fitted_at);
    if (!fitted_at) return in_field(fitted_at.error(), "--fitted-at");
    asked.fitted_at = *fitted_at;
  }
  CureReply reply{locking::cure(asked, cure_times(catalogue)), {}};
  for (const CureTime& line : reply.answer.used)
    add_source(reply.sources, line.source);
  if (reply.answer.course != Course::not_here)
    for (const CureTime& line : reply.answer.heat_cures)
      add_source(reply.sources, line.source);
  for (const locking::CureSurface& surface : asked.surfaces)
    if (surface.name != k_not_stated) add_source(reply.sources, surface.source);
  // Of the compound its own row, and the one of its heat limit.
  for (std::size_t i = 0; i < asked.compound.sources.size() && i < 2; ++i)
    add_source(reply.sources, asked.compound.sources[i]);
  return reply;
}

report::Document cure_document(const CureReply& reply) {
  const CureAnswer& answer = reply.answer;
  const locking::CureCase& asked = answer.asked;
  report::Document document;
  document.title = fmt::format("{} at {}", asked.compound.name, degrees(asked.temperature));
  report::Section section;
  section.rows.push_back({"On", fmt::format("{} ({})", surfaces_words(answer), activity_words(answer.activity))});
  section.rows.push_back({"Cures", course_words(answer)});
  if (answer.course != Course::not_here) {
    add_times(section, answer);
    if (answer.course != Course::heat_cures) section.rows.push_back({"Or by heat", heat_words(answer)});
  }
  if (asked.compound.heat_limit)
    section.rows.push_back({"In service", fmt::format("up to {} ({})", degrees(*asked.compound.heat_limit),
                                                      asked.compound.heat_limit_basis)});
  section.rows.push_back({"Its sheet", "the maker's sheet of the very compound goes before all of this"});
  document.sections.push_back(std::move(section));
  document.sources = reply.sources;
  document.remarks = report::remarks_of(answer.findings, {});
  return document;
}

} // namespace clampwright::specdb
