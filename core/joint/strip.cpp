// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/joint/strip.hpp"

#include <algorithm>

#include "core/joint/strip_working.hpp"
#include "core/thread/geometry.hpp"
#include "core/thread/stripping.hpp"

namespace clampwright::joint {

namespace {

using finding::Code;
using finding::Severity;
using quantity::Force;
using quantity::Length;
using quantity::Stress;

// The thread that is cut in the part: the bolt's own, or the outer one of an insert.
const thread::Thread& part_thread(const StripCase& asked) { return asked.insert ? asked.insert->outer : asked.thread; }
const thread::Limits& part_limits(const StripCase& asked) {
  return asked.insert ? asked.insert->outer_limits : asked.limits;
}

// Basic sizes of what is cut in the part. The thread for a wire insert is of no series: its basic sizes are the bolt's,
// shifted like its limits.
thread::Limits basic_part_limits(const StripCase& asked) {
  if (asked.insert && asked.insert->kind == InsertKind::wire)
    return thread::wire_insert_limits(asked.thread, thread::basic_limits(asked.thread));
  return thread::basic_limits(part_thread(asked));
}

void add_widths(StripAnswer& out) {
  const StripCase& asked = out.asked;
  out.bolt_width = thread::external_strip_width(asked.thread, asked.limits);
  out.part_width = thread::internal_strip_width(part_thread(asked), part_limits(asked));
  const Length bolt_basic = thread::external_strip_width(asked.thread, thread::basic_limits(asked.thread));
  const Length part_basic = thread::internal_strip_width(part_thread(asked), basic_part_limits(asked));
  out.bolt_overstated = bolt_basic / out.bolt_width - 1.0;
  out.part_overstated = part_basic / out.part_width - 1.0;
}

// Each factor is taken at the bolt with which it is least: C3 at the weakest of its class, C2 at the strongest. With an
// insert the part's thread has a steel thread against it that hardly bends, and what the bolt turns in is steel.
void add_factors(StripAnswer& out) {
  const auto& tensile = out.asked.bolt.tensile;
  const auto& shear = out.asked.part.shear_strength;
  out.c2 = bolt_thread_factor(0);
  out.c3 = out.asked.insert ? 1.0 : part_thread_factor(1);
  if (!tensile || !out.asked.bolt_shear || !shear) return;
  const auto bolt = out.asked.bolt_shear->share * *tensile * out.bolt_width;
  out.strength_ratio = *shear * out.part_width / bolt;
  out.strength_ratio_highest = *out.strength_ratio / k_highest_over_least;
  if (out.asked.insert) return;
  out.c2 = bolt_thread_factor(*out.strength_ratio_highest);
  out.c3 = part_thread_factor(*out.strength_ratio);
}

void add_break(StripAnswer& out) {
  const auto& bolt = out.asked.bolt;
  if (!bolt.tensile) return;
  out.bolt_break = bolt.tensile_load;
  out.tensile_highest = k_highest_over_least * *bolt.tensile;
  if (const auto area = thread::geometry_of(out.asked.thread).stress_area)
    out.bolt_break_highest = *out.tensile_highest * *area;
}

// What bears, so that a bolt that breaks at `load` does so before either thread strips.
std::optional<Length> bearing_for(const StripAnswer& answer, const std::optional<Force>& load,
                                  const std::optional<Stress>& tensile, const std::optional<Stress>& part_shear) {
  const auto& ratio = answer.asked.bolt_shear;
  if (!load || !tensile || !ratio || !part_shear) return std::nullopt;
  return std::max(thread::strip_length(*load, answer.part_width, answer.c3 * *part_shear),
                  thread::strip_length(*load, answer.bolt_width, answer.c2 * ratio->share * *tensile));
}

void add_needed(StripAnswer& out) {
  const auto engaged = [&](std::optional<Length> bearing) {
    if (bearing) *bearing += out.asked.incomplete;
    return bearing;
  };
  const auto& part = out.asked.part;
  out.needed = engaged(bearing_for(out, out.bolt_break_highest, out.tensile_highest, part.shear_strength));
  out.needed_with_weakest = engaged(bearing_for(out, out.bolt_break, out.asked.bolt.tensile, part.shear_strength));
  out.needed_at_highest_shear =
      engaged(bearing_for(out, out.bolt_break_highest, out.tensile_highest, part.shear_highest));
}

std::optional<Gives> first_of(const std::optional<Force>& breaks, const std::optional<Force>& bolt_thread,
                              const std::optional<Force>& part) {
  if (!breaks || !bolt_thread || !part) return std::nullopt;
  // At the very length that is needed the bolt governs; a product and a quotient may differ by the last bits.
  const Force just_under = (1.0 - 1e-12) * *breaks;
  if (*bolt_thread >= just_under && *part >= just_under) return Gives::bolt;
  return *part <= *bolt_thread ? Gives::part_thread : Gives::bolt_thread;
}

std::string words_of(Gives gives, const StripCase& asked) {
  return gives == Gives::part_thread ? "thread in the part (" + asked.part.description + ")" : "thread of the bolt";
}

void add_findings(StripAnswer& out) {
  const StripCase& asked = out.asked;
  if (asked.bolt.class_name == "unknown") out.findings.push_back({Code::class_unknown, Severity::mind, {}});
  if (asked.bolt.from_memory)
    out.findings.push_back({Code::value_from_memory, Severity::mind, {asked.bolt.class_name}});
  if (out.loads.first && *out.loads.first != Gives::bolt && out.needed)
    out.findings.push_back(
        {Code::strip_governs,
         Severity::mind,
         {words_of(*out.loads.first, asked),
          *out.loads.first == Gives::part_thread ? *out.loads.part_thread : *out.loads.bolt_thread_highest,
          *out.bolt_break_highest, *out.needed}});
  if (out.needed && *out.needed > k_useful_diameters * asked.thread.diameter)
    out.findings.push_back({Code::long_engagement, Severity::note, {*out.needed, asked.thread.diameter}});
  if (!asked.part.shear_strength) {
    if (asked.part.soft) out.findings.push_back({Code::soft_part, Severity::mind, {asked.part.name}});
  } else if (!asked.part.sources.empty() && asked.part.sources.front().known == Known::memory) {
    out.findings.push_back({Code::value_from_memory,
                            Severity::mind,
                            {"the shear strength of " + asked.part.description, *asked.part.shear_strength}});
  }
  if (asked.part.creeps_above)
    out.findings.push_back({Code::creep, Severity::note, {asked.part.description, *asked.part.creeps_above}});
}

} // namespace

Length usual_incomplete(const thread::Thread& thread) { return 2.0 * thread.pitch; }

std::string_view gives_name(Gives gives) {
  switch (gives) {
  case Gives::bolt:
    return "bolt";
  case Gives::bolt_thread:
    return "bolt-thread";
  case Gives::part_thread:
    return "part-thread";
  }
  return "";
}

double bolt_thread_factor(double strength_ratio) {
  const double r = std::clamp(strength_ratio, 1.0, 2.2);
  return 5.594 + r * (-13.682 + r * (14.107 + r * (-6.057 + r * 0.9353)));
}

double part_thread_factor(double strength_ratio) {
  const double r = std::clamp(strength_ratio, 0.4, 1.0);
  return 0.728 + r * (1.769 + r * (-2.896 + r * 1.296));
}

std::vector<double> insert_lengths() { return {1.0, 1.5, 2.0}; }

StripLoads loads_at(const StripAnswer& answer, Length engaged) {
  const StripCase& asked = answer.asked;
  const Length bearing = engaged - asked.incomplete;
  StripLoads out;
  if (asked.part.shear_strength)
    out.part_thread = thread::strip_load(answer.part_width, bearing, answer.c3 * *asked.part.shear_strength);
  if (asked.bolt_shear && asked.bolt.tensile) {
    out.bolt_thread =
        thread::strip_load(answer.bolt_width, bearing, answer.c2 * asked.bolt_shear->share * *asked.bolt.tensile);
    out.bolt_thread_highest = k_highest_over_least * *out.bolt_thread;
  }
  out.first = first_of(answer.bolt_break_highest, out.bolt_thread_highest, out.part_thread);
  out.first_with_weakest = first_of(answer.bolt_break, out.bolt_thread, out.part_thread);
  if (out.first) out.margin = std::min(*out.part_thread, *out.bolt_thread_highest) / *answer.bolt_break_highest;
  return out;
}

StripAnswer strip(const StripCase& asked) {
  StripAnswer out;
  out.asked = asked;
  add_widths(out);
  add_factors(out);
  add_break(out);
  add_needed(out);
  if (asked.length) {
    out.bearing = *asked.length - asked.incomplete;
    out.loads = loads_at(out, *asked.length);
  }
  add_findings(out);
  out.working = strip_working(out);
  return out;
}

} // namespace clampwright::joint
