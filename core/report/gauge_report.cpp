// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/gauge_report.hpp"

#include <cmath>
#include <string_view>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/report/thread_report.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/geometry.hpp"

namespace clampwright::report {

namespace {

using quantity::DisplayUnits;
using quantity::write_number;
using thread::Candidate;
using thread::CrestRange;
using thread::GaugeVerdict;
using thread::LookAlike;
using thread::Measurement;

constexpr std::size_t k_look_alikes_shown = 8;

std::string rounded(quantity::Length length, const DisplayUnits& units, int digits = 4) {
  return quantity::write_si_rounded(quantity::in_metres(length), *units.length, digits);
}

std::string range_text(const CrestRange& crests, const DisplayUnits& units) {
  const std::string low = rounded(crests.low, units);
  return fmt::format("{} to {}", low.substr(0, low.rfind(' ')), rounded(crests.high, units)); // the unit once
}

std::string pitch_text(const thread::Thread& thread, const DisplayUnits& units) {
  const std::string pitch = quantity::write(thread.pitch, units);
  return thread.tpi ? fmt::format("pitch {} ({} per inch)", pitch, write_number(*thread.tpi, 4)) : "pitch " + pitch;
}

// "60° (crests flat)"
std::string flanks_text(const thread::Thread& thread) {
  const double angle = 2 * quantity::in_degrees(thread::geometry_of(thread).flank_angle);
  const bool flat = thread.form == thread::Form::metric || thread.form == thread::Form::unified;
  return fmt::format("{}° (crests {})", write_number(angle, 4), flat ? "flat" : "rounded");
}

std::string_view verdict_words(GaugeVerdict verdict) {
  switch (verdict) {
  case GaugeVerdict::fits:
    return "fits";
  case GaugeVerdict::worn_or_near:
    return "worn or near";
  case GaugeVerdict::unlikely:
    return "unlikely";
  }
  return "";
}

// "0.030 mm below 7.760 to 7.972 mm (6g)"
std::string place_text(const Candidate& candidate, const DisplayUnits& units) {
  const double deviation = quantity::in_metres(candidate.deviation);
  const std::string range =
      range_text(candidate.crests, units) +
      (candidate.crests.by_class.empty() ? std::string() : fmt::format(" ({})", candidate.crests.by_class));
  if (candidate.verdict == GaugeVerdict::fits || std::abs(deviation) < 1e-9) return range;
  return fmt::format("{} {} {}", quantity::write_si(std::abs(deviation), *units.length, 2),
                     deviation < 0 ? "below" : "above", range);
}

std::string candidate_text(const Candidate& candidate, const Measurement& measured, const DisplayUnits& units) {
  std::string text = fmt::format("{}: {}, {}", verdict_words(candidate.verdict), place_text(candidate, units),
                                 pitch_text(candidate.known.thread, units));
  if (candidate.pitch_off && std::abs(*candidate.pitch_off) > measured.pitch_doubt)
    text += fmt::format(", the measured one {} {}", quantity::write_share(std::abs(*candidate.pitch_off)),
                        *candidate.pitch_off < 0 ? "finer" : "coarser");
  return text;
}

std::string title(const Candidate& best, const Measurement& measured, const DisplayUnits& units) {
  const std::string name =
      fmt::format("{}, {} thread", best.known.thread.designation, form_words(best.known.thread.form));
  switch (best.verdict) {
  case GaugeVerdict::fits:
    return "Fits best: " + name;
  case GaugeVerdict::worn_or_near: {
    const quantity::Length off = best.deviation < quantity::millimetres(0) ? -best.deviation : best.deviation;
    if (off <= measured.diameter_doubt)
      return fmt::format("Most likely {}: {} off, which is within the doubt of the measurement", name,
                         off > quantity::millimetres(1e-6) ? quantity::write(off, units, 2) : "its pitch");
    const bool worn_side = (best.deviation < quantity::millimetres(0)) != measured.internal;
    return fmt::format("Nearest: {}, if it is {} or roughly made", name, worn_side ? "worn" : "plated");
  }
  case GaugeVerdict::unlikely:
    break;
  }
  return fmt::format("No listed thread fits; the nearest is {}", name);
}

} // namespace

std::string tell_apart_text(const Candidate& candidate, const LookAlike& look_alike, bool internal,
                            const DisplayUnits& units) {
  const thread::TellApart& tell = look_alike.tell;
  std::vector<std::string> ways;
  if (tell.turns)
    ways.push_back(fmt::format("pitch over {} turns: {} against {}", tell.turns->count, rounded(tell.turns->own, units),
                               rounded(tell.turns->others, units)));
  if (tell.crests)
    ways.push_back(fmt::format("{}{}, new: {} against {}", internal ? "minor diameter" : "outside diameter",
                               tell.crests->finer ? " by micrometer" : "", range_text(tell.crests->own, units),
                               range_text(tell.crests->others, units)));
  if (tell.flanks)
    ways.push_back(fmt::format("flank angle {} against {}: hold a thread profile gauge of each to it",
                               flanks_text(candidate.known.thread), flanks_text(look_alike.other.thread)));
  if (tell.roots)
    ways.push_back(fmt::format(
        "crests and roots: {} and {} against {} and {}",
        candidate.known.thread.form == thread::Form::bsc ? "rounded" : "flat", rounded(tell.roots->own, units),
        look_alike.other.thread.form == thread::Form::bsc ? "rounded" : "flat", rounded(tell.roots->others, units)));
  if (tell.nut) {
    const std::string& other = look_alike.other.thread.designation;
    ways.push_back(!tell.nut->starts ? fmt::format("a known {} nut does not go on", other)
                                     : fmt::format("a known {} nut binds within {} turn{}", other, tell.nut->turns,
                                                   tell.nut->turns == 1 ? "" : "s"));
  }
  if (ways.empty()) return "size and pitch are too near: only a thread gauge of each, or the maker's word, tells";
  return fmt::format("{}", fmt::join(ways, "; "));
}

Document gauge_report(const Measurement& measured, const std::vector<Candidate>& candidates,
                      const finding::Findings& findings, const std::vector<Source>& sources,
                      const DisplayUnits& units) {
  const Candidate& best = candidates.front();
  Document document;
  document.title = title(best, measured, units);
  Section read{"", {}};
  read.rows.push_back({"Diameter", fmt::format("{} ± {}, {}", quantity::write(measured.diameter, units),
                                               quantity::write(measured.diameter_doubt, units, 2),
                                               measured.internal ? "minor diameter of an internal thread"
                                                                 : "outside diameter of an external thread")});
  read.rows.push_back({"Pitch", measured.pitch ? fmt::format("{} ± {}", quantity::write(*measured.pitch, units),
                                                             quantity::write_share(measured.pitch_doubt))
                                               : "not measured"});
  document.sections.push_back(std::move(read));
  Section all{"Candidates, best first: crests of a new thread by class", {}};
  for (const Candidate& candidate : candidates)
    all.rows.push_back({candidate.known.thread.designation, candidate_text(candidate, measured, units)});
  document.sections.push_back(std::move(all));
  if (!best.look_alikes.empty()) {
    Section apart{fmt::format("To tell {} from", best.known.thread.designation), {}};
    for (const LookAlike& other : best.look_alikes) {
      if (apart.rows.size() == k_look_alikes_shown) {
        apart.rows.push_back({"…", fmt::format("{} more with --json", best.look_alikes.size() - k_look_alikes_shown)});
        break;
      }
      apart.rows.push_back({other.other.thread.designation, tell_apart_text(best, other, measured.internal, units)});
    }
    document.sections.push_back(std::move(apart));
  }
  document.remarks = remarks_of(findings, units);
  document.working = thread::gauge_working(best, measured);
  document.sources = sources;
  return document;
}

} // namespace clampwright::report
