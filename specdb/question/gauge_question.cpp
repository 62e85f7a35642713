// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/gauge_question.hpp"

#include <algorithm>
#include <map>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/report/gauge_report.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {

namespace {

using quantity::in_millimetres;
using quantity::Length;
using thread::Candidate;
using thread::GaugeVerdict;
using thread::Measurement;

// Listed are 4 to 80 threads per inch; BA, counted so, goes up to 134.
constexpr double k_least_tpi = 2;
constexpr double k_most_tpi = 150;
constexpr Length k_most_doubt = quantity::millimetres(1);
constexpr double k_most_pitch_doubt = 0.2;

std::string mm(Length length) { return quantity::write_number(in_millimetres(length), 6) + " mm"; }

Result<Length> read_field(const std::string& text, const char* field) {
  auto length = quantity::read_length(text);
  if (!length) return in_field(length.error(), field);
  return length;
}

// The doubts, where they were said.
Result<void> read_doubts(const GaugeQuestion& question, Measurement& measured) {
  if (question.diameter_doubt) {
    const auto doubt = read_field(*question.diameter_doubt, "--diameter-uncertainty");
    if (!doubt) return Refusal(doubt.error());
    if (*doubt > k_most_doubt || *doubt > 0.1 * measured.diameter)
      return not_understood(
          "out-of-range", fmt::format("an uncertainty of {} on {} tells nothing", mm(*doubt), mm(measured.diameter)),
          *question.diameter_doubt, "at most 1 mm and a tenth of the diameter; a calliper has about 0.05mm",
          "--diameter-uncertainty");
    measured.diameter_doubt = *doubt;
  }
  if (!question.pitch_doubt) return {};
  if (!measured.pitch)
    return refuse(Trouble::usage, "missing", "--pitch-uncertainty is given without a pitch", *question.pitch_doubt,
                  "add --pitch or --tpi", "--pitch-uncertainty");
  const auto doubt = quantity::read_share(*question.pitch_doubt);
  if (!doubt) return in_field(doubt.error(), "--pitch-uncertainty");
  if (!(*doubt > 0 && *doubt <= k_most_pitch_doubt))
    return not_understood("out-of-range", fmt::format("{} was understood", quantity::write_share(*doubt)),
                          *question.pitch_doubt, "more than nothing and at most 20%, like --pitch-uncertainty 2%",
                          "--pitch-uncertainty");
  measured.pitch_doubt = *doubt;
  return {};
}

Result<GaugeAnswer> read_question(const GaugeQuestion& question) {
  if (!question.diameter)
    return refuse(Trouble::usage, "missing", "--diameter is missing", {},
                  "write clampwright gauge --diameter 7.85mm --pitch 1.25mm", "--diameter");
  if (question.pitch && question.tpi)
    return refuse(Trouble::usage, "surplus", "--pitch and --tpi say the same thing", *question.tpi,
                  "give one of the two", "--tpi");
  GaugeAnswer out;
  const auto diameter = read_field(*question.diameter, "--diameter");
  if (!diameter) return Refusal(diameter.error());
  out.measured.diameter = *diameter;
  out.measured.internal = question.internal;
  if (question.pitch) {
    const auto pitch = read_field(*question.pitch, "--pitch");
    if (!pitch) return Refusal(pitch.error());
    out.measured.pitch = *pitch;
  }
  if (question.tpi) {
    const auto tpi = read_tpi(*question.tpi);
    if (!tpi) return Refusal(tpi.error());
    out.tpi = *tpi;
    out.measured.pitch = quantity::inches(1.0 / *tpi);
  }
  if (out.measured.pitch && *out.measured.pitch >= out.measured.diameter)
    return not_understood("out-of-range",
                          fmt::format("a pitch of {} is not smaller than the diameter, {}", mm(*out.measured.pitch),
                                      mm(out.measured.diameter)),
                          question.pitch ? *question.pitch : *question.tpi,
                          "the pitch is from crest to crest; measure ten turns and take a tenth",
                          question.pitch ? "--pitch" : "--tpi");
  if (const auto doubts = read_doubts(question, out.measured); !doubts) return Refusal(doubts.error());
  return out;
}

finding::Findings findings_of(const GaugeAnswer& answer) {
  using finding::Code;
  using finding::Severity;
  finding::Findings findings;
  const Candidate& best = answer.candidates.front();
  std::vector<std::string> alike;
  for (const thread::LookAlike& other : best.look_alikes)
    if (other.by_measurement) alike.push_back(other.other.thread.designation);
  if (!alike.empty())
    findings.push_back({Code::look_alikes,
                        Severity::mind,
                        {best.known.thread.designation, fmt::format("{}", fmt::join(alike, ", "))}});
  if (!answer.measured.pitch) findings.push_back({Code::pitch_not_measured, Severity::note, {}});
  if (std::ranges::any_of(answer.candidates, [](const Candidate& c) { return c.crests.by_class.empty(); }))
    findings.push_back({Code::limits_assumed,
                        Severity::note,
                        {std::string(answer.measured.internal ? "6H, from the minor diameter up"
                                                              : "6g, from the nominal size down")}});
  findings.push_back({Code::measured_only, Severity::note, {}});
  finding::put_in_order(findings);
  return findings;
}

} // namespace

Result<double> read_tpi(std::string_view text) {
  const auto count = quantity::read_number(text);
  if (!count) {
    Problem problem = count.error();
    problem.hint =
        "write the number of threads in one inch without a unit, like --tpi 20, or the pitch, like --pitch 1.27mm";
    return in_field(std::move(problem), "--tpi");
  }
  if (!(*count >= k_least_tpi && *count <= k_most_tpi))
    return not_understood(
        "out-of-range",
        fmt::format("{} threads per inch were understood; that is no thread", quantity::write_number(*count, 6)), text,
        fmt::format("between {} and {}, like --tpi 20", k_least_tpi, k_most_tpi), "--tpi");
  return count;
}

Result<GaugeAnswer> which_thread(const Catalogue& catalogue, const GaugeQuestion& question) {
  auto answer = read_question(question);
  if (!answer) return answer;
  std::vector<thread::KnownThread> list;
  std::map<std::string, std::vector<Source>> sources;
  for (ThreadEntry& entry : all_threads(catalogue)) {
    auto& of_thread = sources[entry.thread.designation];
    of_thread.push_back(entry.sources.front());
    if (entry.limits) of_thread.push_back(entry.limits->source);
    list.push_back({std::move(entry.thread), std::move(entry.limits), entry.choice});
  }
  auto candidates = thread::gauge(list, answer->measured);
  if (!candidates) {
    Problem problem = candidates.error();
    problem.input = *question.diameter;
    return in_field(std::move(problem), "--diameter");
  }
  answer->candidates = std::move(*candidates);
  answer->findings = findings_of(*answer);
  for (const Candidate& candidate : answer->candidates)
    for (const Source& source : sources[candidate.known.thread.designation])
      if (std::ranges::find(answer->sources, source) == answer->sources.end()) answer->sources.push_back(source);
  if (std::ranges::any_of(answer->candidates, [](const Candidate& c) { return c.crests.by_class.empty(); }))
    answer->sources.push_back({"ISO 965-1, ISO general purpose metric screw threads - Tolerances", "1998",
                               "clause 13: formulas of grade 6", Known::computed});
  return answer;
}

report::Document gauge_document(const GaugeAnswer& answer, const quantity::DisplayUnits& units) {
  return report::gauge_report(answer.measured, answer.candidates, answer.findings, answer.sources, units);
}

} // namespace clampwright::specdb
