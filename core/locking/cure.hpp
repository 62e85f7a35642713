// SPDX-License-Identifier: GPL-3.0-or-later
//
// When a locking compound has cured. Published are a time for machined carbon steel at 10 °C and above, the advice of
// primer below that, and heat cures. Nothing is drawn between these points: where no time was published the answer is
// that it is not known, and whose sheet to ask.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/calendar/moment.hpp"
#include "core/finding/finding.hpp"
#include "core/friction/friction.hpp"
#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"

namespace clampwright::locking {

// Whether a surface makes the compound cure by itself.
enum class Activity { active, inactive, not_known, never };

struct CureSurface {
  std::string name;
  std::string description;
  Activity activity = Activity::not_known;
  std::string note;
  Source source;
};

enum class CureStep { setting, full_strength, primer, heat_only, heat_cure };

// A published line. Times are those of active surfaces where `active_only`.
struct CureTime {
  CureStep step;
  bool active_only = false;
  std::optional<quantity::Temperature> from;
  std::optional<quantity::Temperature> to;
  std::optional<double> least_min; // minutes
  std::optional<double> most_min;
  std::string words;
  Source source;
};

// What becomes of the compound.
enum class Course {
  cures,        // by itself
  wants_primer, // too cold by itself
  wants_heat,   // colder than a primer helps
  heat_cures,   // the part is held at the temperature of a heat cure
  too_hot,      // hotter than the compound bears
  not_here,     // a surface that it must not be used on
};

struct CureCase {
  friction::Lock compound;
  std::vector<CureSurface> surfaces; // of screw and part; the worst of them decides
  quantity::Temperature temperature;
  std::optional<calendar::Moment> fitted_at;
};

struct CureAnswer {
  CureCase asked;
  Activity activity = Activity::not_known; // of the worst surface
  Course course = Course::cures;
  std::optional<double> set_least_min; // it may be handled
  std::optional<double> set_most_min;
  std::optional<double> full_min;           // full strength at the latest
  std::string not_known_because;            // why there is no time; empty where there is one
  std::vector<CureTime> used;               // the published lines that decide
  std::vector<CureTime> heat_cures;         // the quicker ways, coolest first
  std::optional<calendar::Moment> set_from; // where the time of fitting was given
  std::optional<calendar::Moment> set_by;
  std::optional<calendar::Moment> full_at;
  finding::Findings findings;
};

// Precondition: at least one surface; `compound` is one. `times` are all published lines.
[[nodiscard]] CureAnswer cure(const CureCase& asked, const std::vector<CureTime>& times);

} // namespace clampwright::locking
