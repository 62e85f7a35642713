// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/locking/cure.hpp"

#include <algorithm>

namespace clampwright::locking {

namespace {

using finding::Code;
using finding::Severity;

// Worst first.
int rank(Activity activity) {
  switch (activity) {
  case Activity::never:
    return 0;
  case Activity::not_known:
    return 1;
  case Activity::inactive:
    return 2;
  case Activity::active:
    return 3;
  }
  return 0;
}

const CureSurface& worst(const std::vector<CureSurface>& surfaces) {
  return *std::ranges::min_element(surfaces, {}, [](const CureSurface& one) { return rank(one.activity); });
}

// The ends of a line: at its upper end the next line holds.
bool holds_at(const CureTime& line, quantity::Temperature temperature) {
  return (!line.from || temperature >= *line.from) && (!line.to || temperature < *line.to);
}

std::vector<CureTime> heat_cures_of(const std::vector<CureTime>& times) {
  std::vector<CureTime> out;
  std::ranges::copy_if(times, std::back_inserter(out),
                       [](const CureTime& line) { return line.step == CureStep::heat_cure; });
  std::ranges::sort(out, {}, [](const CureTime& line) { return quantity::in_degrees_celsius(*line.from); });
  return out;
}

void take_line(CureAnswer& answer, const CureTime& line) {
  answer.used.push_back(line);
  switch (line.step) {
  case CureStep::setting:
    answer.set_least_min = line.least_min;
    answer.set_most_min = line.most_min;
    break;
  case CureStep::full_strength:
    answer.full_min = line.most_min;
    break;
  case CureStep::primer:
    answer.course = Course::wants_primer;
    answer.not_known_because = "no time with primer was published: the sheet of compound and primer has it";
    break;
  case CureStep::heat_only:
    answer.course = Course::wants_heat;
    answer.not_known_because = "it does not cure at this temperature: warm the part";
    break;
  case CureStep::heat_cure:
    break;
  }
}

// By itself, by the lines that hold at that temperature.
void cure_by_itself(CureAnswer& answer, const std::vector<CureTime>& times) {
  for (const CureTime& line : times)
    if (line.step != CureStep::heat_cure && holds_at(line, answer.asked.temperature) &&
        (!line.active_only || answer.activity == Activity::active))
      take_line(answer, line);
  if (answer.course != Course::cures || answer.activity == Activity::active) return;
  answer.not_known_because = answer.activity == Activity::inactive
                                 ? "the times published are for active surfaces; this one wants a primer or a stronger "
                                   "grade: the sheet of the compound has its time"
                                 : "whether this surface lets it cure was not published: the sheet of the compound "
                                   "says";
}

// The hottest step that the part reaches: a warmer part cures no slower.
void cure_by_heat(CureAnswer& answer) {
  answer.course = Course::heat_cures;
  const auto reached =
      std::ranges::find_if(answer.heat_cures.rbegin(), answer.heat_cures.rend(),
                           [&](const CureTime& line) { return answer.asked.temperature >= *line.from; });
  answer.used.push_back(*reached);
  if (answer.activity == Activity::active)
    answer.full_min = reached->least_min;
  else
    answer.not_known_because = "the heat cures published name no surface; for any but machined carbon steel the sheet "
                               "of the compound has the time";
}

void add_findings(CureAnswer& answer, const CureSurface& surface) {
  const CureCase& asked = answer.asked;
  if (answer.course == Course::not_here)
    answer.findings.push_back({Code::no_compound_here, Severity::stop, {surface.description, surface.note}});
  if (answer.course == Course::wants_heat)
    answer.findings.push_back({Code::cure_by_heat_only, Severity::mind, {asked.temperature}});
  if (answer.course == Course::wants_primer ||
      (answer.course == Course::cures && answer.activity == Activity::inactive))
    answer.findings.push_back(
        {Code::primer_needed,
         Severity::mind,
         {answer.activity == Activity::inactive ? surface.description : std::string("the cold"), asked.temperature}});
  if (answer.course != Course::not_here && !answer.full_min)
    answer.findings.push_back({Code::cure_not_known, Severity::mind, {}});
  if (asked.compound.heat_limit && asked.temperature > *asked.compound.heat_limit)
    answer.findings.push_back(
        {Code::heat_limit,
         Severity::stop,
         {std::string("curing part"), asked.temperature, asked.compound.description, *asked.compound.heat_limit}});
}

} // namespace

CureAnswer cure(const CureCase& asked, const std::vector<CureTime>& times) {
  CureAnswer answer;
  answer.asked = asked;
  const CureSurface& surface = worst(asked.surfaces);
  answer.activity = surface.activity;
  answer.heat_cures = heat_cures_of(times);
  if (answer.activity == Activity::never) {
    answer.course = Course::not_here;
    answer.not_known_because = "it is not used here";
  } else if (asked.compound.heat_limit && asked.temperature > *asked.compound.heat_limit) {
    answer.course = Course::too_hot;
    answer.not_known_because = "it loses its hold at that heat, and no cure so hot was published";
  } else if (!answer.heat_cures.empty() && asked.temperature >= *answer.heat_cures.front().from) {
    cure_by_heat(answer);
  } else {
    cure_by_itself(answer, times);
  }
  if (asked.fitted_at) {
    const auto at = [&](const std::optional<double>& minutes) {
      return minutes ? std::optional(calendar::later(*asked.fitted_at, *minutes)) : std::nullopt;
    };
    answer.set_from = at(answer.set_least_min);
    answer.set_by = at(answer.set_most_min);
    answer.full_at = at(answer.full_min);
  }
  add_findings(answer, surface);
  return answer;
}

} // namespace clampwright::locking
