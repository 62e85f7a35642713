// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/gauge.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "core/quantity/write.hpp"
#include "core/thread/geometry.hpp"

namespace clampwright::thread {

namespace {

using quantity::in_millimetres;
using quantity::Length;
using quantity::millimetres;

constexpr double k_last_bits = 1e-9; // mm, and shares: what arithmetic may add to an equality
constexpr double k_equal_mm = 0.01;
constexpr double k_equal_pitch = 0.01;
constexpr double k_near_pitch = 2; // times the doubt
constexpr std::size_t k_unlikely_named = 3;

// Threads that start on each other: the list of confusable pairs was drawn up with these two (diameter, pitch).
constexpr double k_starts_diameter = 0.06;
constexpr double k_starts_pitch = 0.07;
// One size, and a pitch that is taken for the other over few turns: M8 and 5/16-18.
constexpr double k_one_size_pitch = 0.15;

Length between(Length one, Length other) { return one < other ? other - one : one - other; }

// Share of the larger by which the two differ.
double apart_by(Length one, Length other) { return between(one, other) / std::max(one, other); }

// ISO 965-1, clause 13, by formula in micrometres with the pitch in millimetres: tolerance of the crest of a bolt, of a
// nut, and the deviation g; grade 6.
Length metric_crest_width(Length pitch, bool internal) {
  const double p = in_millimetres(pitch);
  if (internal) return millimetres((p >= 1 ? 230 * std::pow(p, 0.7) : 433 * p - 190 * std::pow(p, 1.22)) / 1000);
  return millimetres((180 * std::pow(p, 2.0 / 3.0) - 3.15 / std::sqrt(p) + 15 + 11 * p) / 1000);
}

// The lower the commoner: what lies in more drawers. Judgement of the trade; no count is behind it.
int rarity(const KnownThread& known) {
  const std::string& series = known.thread.series;
  if (known.thread.form == Form::metric) return (series == "coarse" ? 0 : 1) + 2 * (known.choice.value_or(3) - 1);
  if (series == "UNC") return 0;
  if (series == "UNF") return 1;
  if (series == "BSW") return 2;
  if (series == "BSF" || series == "BA") return 3;
  return series == "UNEF" ? 4 : 5;
}

// A thread of the list against the measurement.
struct Misfit {
  const KnownThread* known;
  Length low, high;        // its crests, new
  double deviation_mm = 0; // outside of them
  double outside_mm = 0;   // beyond what a sound thread may have
  double pitch_off_mm = 0;
  double score = 0;
  bool by_diameter = false; // whatever its pitch
  GaugeVerdict verdict = GaugeVerdict::unlikely;
};

Misfit misfit(const KnownThread& known, const Measurement& measured) {
  const CrestRange crests = crest_range(known, measured.internal);
  Misfit out{&known, crests.low, crests.high};
  const Length reading = measured.diameter;
  const double doubt = in_millimetres(measured.diameter_doubt);
  const double wear = in_millimetres(allowed_wear(known.thread));
  const bool small = reading < out.low;
  out.deviation_mm = in_millimetres(small ? reading - out.low : std::max(reading - out.high, millimetres(0)));
  const Length top = measured.internal ? out.high : std::max(out.high, known.thread.diameter);
  out.outside_mm = small ? -out.deviation_mm : std::max(in_millimetres(reading - top), 0.0);
  const bool worn_side = small != measured.internal;
  double pitch_score = 0;
  if (measured.pitch) {
    out.pitch_off_mm = in_millimetres(between(*measured.pitch, known.thread.pitch));
    pitch_score = out.pitch_off_mm / (measured.pitch_doubt * in_millimetres(known.thread.pitch));
  }
  out.score = std::hypot(out.outside_mm / (worn_side ? doubt + wear / 2 : doubt), pitch_score);
  out.by_diameter = out.outside_mm <= doubt + (worn_side ? wear : 0.0) + k_last_bits;
  if (std::abs(out.deviation_mm) <= k_last_bits && pitch_score <= 1 + k_last_bits)
    out.verdict = GaugeVerdict::fits;
  else if (out.by_diameter && pitch_score <= k_near_pitch + k_last_bits)
    out.verdict = GaugeVerdict::worn_or_near;
  return out;
}

bool is_possible(const Misfit& m) { return m.verdict != GaugeVerdict::unlikely; }

// Best first; equals of the best by custom, then the next.
void rank(std::vector<Misfit>& list) {
  std::ranges::stable_sort(list, {}, [](const Misfit& m) { return std::pair(!is_possible(m), m.score); });
  for (auto from = list.begin(); from != list.end();) {
    const Misfit best = *from;
    const auto is_equal = [&](const Misfit& m) {
      return is_possible(m) == is_possible(best) &&
             std::abs(m.outside_mm - best.outside_mm) <= k_equal_mm + k_last_bits &&
             std::abs(m.pitch_off_mm - best.pitch_off_mm) <=
                 k_equal_pitch * in_millimetres(best.known->thread.pitch) + k_last_bits;
    };
    const auto end = std::stable_partition(from, list.end(), is_equal);
    std::stable_sort(from, end, [](const Misfit& one, const Misfit& other) {
      const auto custom = [](const Misfit& m) {
        return std::pair(m.known->thread.form != Form::metric, rarity(*m.known));
      };
      return custom(one) < custom(other);
    });
    from = end;
  }
}

std::optional<TellApart::Turns> turns_apart(const Thread& own, const Thread& other, Length doubt) {
  for (const int count : {10, 20}) {
    const auto length = [&](const Thread& thread) { return static_cast<double>(count) * thread.pitch; };
    if (between(length(own), length(other)) >= 2.0 * doubt) return TellApart::Turns{count, length(own), length(other)};
  }
  return std::nullopt;
}

// Two threads bind when the pitches, added up over the turns that are engaged, use up the play along the axis. At most
// that play is (D2_max - d2_min)·tan α: the loosest nut on the thinnest bolt within their limits.
std::optional<TellApart::Nut> nut_apart(const KnownThread& own, const KnownThread& other) {
  if (!own.limits || !other.limits) return std::nullopt;
  const Length play = other.limits->D2_max - own.limits->d2_min;
  if (play < millimetres(0)) return TellApart::Nut{false, 0};
  const Length step = between(own.thread.pitch, other.thread.pitch);
  const double nut_turns = 0.8 * (other.thread.diameter / other.thread.pitch); // a nut is about 0.8 d high
  const double turns = play * std::tan(quantity::in_radians(geometry_of(own.thread).flank_angle)) / step;
  if (!(turns < nut_turns - 1)) return std::nullopt;
  return TellApart::Nut{true, std::max(1, static_cast<int>(std::ceil(turns)))};
}

TellApart tell_apart(const KnownThread& own, const KnownThread& other, const Measurement& measured) {
  TellApart out;
  out.turns = turns_apart(own.thread, other.thread, measured.diameter_doubt);
  const CrestRange mine = crest_range(own, measured.internal);
  const CrestRange theirs = crest_range(other, measured.internal);
  if (mine.high < theirs.low || theirs.high < mine.low) {
    const Length gap = mine.high < theirs.low ? theirs.low - mine.high : mine.low - theirs.high;
    out.crests = TellApart::Crests{mine, theirs, gap < 2.0 * measured.diameter_doubt};
  }
  const Geometry geometry = geometry_of(own.thread);
  const Geometry others = geometry_of(other.thread);
  out.flanks = std::abs(quantity::in_degrees(geometry.flank_angle) - quantity::in_degrees(others.flank_angle)) > 1;
  const bool cycle = (own.thread.form == Form::bsc) != (other.thread.form == Form::bsc);
  if (cycle && !out.turns && !out.flanks && !measured.internal)
    out.roots = TellApart::Roots{geometry.root_diameter, others.root_diameter};
  if (out.turns && !measured.internal) out.nut = nut_apart(own, other);
  return out;
}

// Would a fitter take one for the other, whatever was measured?
bool start_on_each_other(const Misfit& one, const Misfit& other) {
  if (one.known->thread.form == other.known->thread.form) return false;
  const double pitch = apart_by(one.known->thread.pitch, other.known->thread.pitch);
  if (pitch > k_one_size_pitch) return false;
  if (one.low <= other.high && other.low <= one.high) return true;
  return pitch <= k_starts_pitch &&
         apart_by(one.known->thread.diameter, other.known->thread.diameter) <= k_starts_diameter + k_last_bits;
}

std::vector<LookAlike> look_alikes_of(const Misfit& self, const std::vector<Misfit>& ranked,
                                      const Measurement& measured) {
  std::vector<LookAlike> measured_alike;
  std::vector<LookAlike> start;
  for (const Misfit& other : ranked) {
    if (other.known == self.known) continue;
    const auto entry = [&](bool by_measurement) {
      return LookAlike{*other.known, by_measurement, tell_apart(*self.known, *other.known, measured)};
    };
    if (is_possible(self) && is_possible(other))
      measured_alike.push_back(entry(true));
    else if (start_on_each_other(self, other))
      start.push_back(entry(false));
  }
  std::ranges::move(start, std::back_inserter(measured_alike));
  return measured_alike;
}

Candidate candidate_of(const Misfit& one, const std::vector<Misfit>& ranked, const Measurement& measured) {
  Candidate out;
  out.known = *one.known;
  out.crests = crest_range(*one.known, measured.internal);
  out.deviation = millimetres(one.deviation_mm);
  if (measured.pitch) out.pitch_off = *measured.pitch / one.known->thread.pitch - 1.0;
  out.verdict = one.verdict;
  out.look_alikes = look_alikes_of(one, ranked, measured);
  return out;
}

Refusal outside_of_list(const Measurement& measured, Length least, Length most) {
  return refuse(
      Trouble::no_such, "no-such-thread",
      fmt::format("no listed thread has {} of {} mm", measured.internal ? "a minor diameter" : "an outside diameter",
                  quantity::write_number(in_millimetres(measured.diameter), 6)),
      {},
      fmt::format("the listed {} lie between {} and {} mm", measured.internal ? "minor diameters" : "outside diameters",
                  quantity::write_number(in_millimetres(least), 4), quantity::write_number(in_millimetres(most), 4)));
}

} // namespace

std::string_view gauge_verdict_name(GaugeVerdict verdict) {
  switch (verdict) {
  case GaugeVerdict::fits:
    return "fits";
  case GaugeVerdict::worn_or_near:
    return "worn-or-near";
  case GaugeVerdict::unlikely:
    return "unlikely";
  }
  return "";
}

CrestRange crest_range(const KnownThread& known, bool internal) {
  if (known.limits) {
    const Limits& limits = *known.limits;
    if (internal) return {limits.D1_min, limits.D1_max, limits.internal_class};
    return {limits.d_min, limits.d_max, limits.external_class};
  }
  const Length width = metric_crest_width(known.thread.pitch, internal);
  if (!internal) return {known.thread.diameter - width, known.thread.diameter, ""};
  const Length minor = geometry_of(known.thread).minor_diameter;
  return {minor, minor + width, ""};
}

Length allowed_wear(const Thread& thread) { return 0.1 * thread.pitch; }

Working gauge_working(const Candidate& candidate, const Measurement& measured) {
  const Thread& thread = candidate.known.thread;
  const std::string of = "of " + thread.designation;
  const std::string limits = candidate.known.limits ? candidate.known.limits->source.title
                             : measured.internal    ? "basic minor diameter; width by ISO 965-1, grade 6"
                                                    : "basic diameter; width by ISO 965-1, grade 6";
  const std::string given = "as given";
  Working steps;
  steps.push_back({"m", "diameter as measured", given, in_millimetres(measured.diameter), "mm", given});
  steps.push_back({"u", "doubt of the diameter", "±", in_millimetres(measured.diameter_doubt), "mm", given});
  steps.push_back({"low", "least crest of a new thread", of, in_millimetres(candidate.crests.low), "mm", limits});
  steps.push_back({"high", "greatest crest of a new thread", of, in_millimetres(candidate.crests.high), "mm", limits});
  steps.push_back({"dev", "deviation",
                   candidate.deviation < millimetres(0)   ? "m - low"
                   : candidate.deviation > millimetres(0) ? "m - high"
                                                          : "low to high holds m",
                   in_millimetres(candidate.deviation), "mm", "limits of size"});
  steps.push_back({"w", "wear that is allowed for", "0.1·P", in_millimetres(allowed_wear(thread)), "mm",
                   "our own figure, about what tolerance grade 8 has beyond 6"});
  if (measured.pitch && candidate.pitch_off)
    steps.push_back({"e", "pitch as measured beside the listed one", "(Pm/P - 1)·100", 100 * *candidate.pitch_off, "%",
                     "limit of the doubt " + quantity::write_share(measured.pitch_doubt)});
  return steps;
}

Result<std::vector<Candidate>> gauge(const std::vector<KnownThread>& list, const Measurement& measured) {
  std::vector<Misfit> ranked;
  ranked.reserve(list.size());
  std::optional<Length> least;
  Length most = millimetres(0);
  for (const KnownThread& known : list) {
    const Misfit one = misfit(known, measured);
    ranked.push_back(one);
    const Length wear = allowed_wear(known.thread);
    const Length low = measured.internal ? one.low : one.low - wear;
    least = least ? std::min(*least, low) : low;
    most = std::max(most, measured.internal ? one.high + wear : std::max(one.high, known.thread.diameter));
  }
  if (!least || measured.diameter + measured.diameter_doubt < *least ||
      measured.diameter - measured.diameter_doubt > most)
    return outside_of_list(measured, least.value_or(most), most);
  rank(ranked);
  std::vector<Candidate> out;
  std::size_t unlikely = 0;
  const bool something_fits = is_possible(ranked.front());
  for (const Misfit& one : ranked) {
    if (!is_possible(one)) {
      if (something_fits && !one.by_diameter) continue;
      if (++unlikely > k_unlikely_named) break;
    }
    out.push_back(candidate_of(one, ranked, measured));
  }
  return out;
}

} // namespace clampwright::thread
