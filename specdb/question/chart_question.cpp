// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/chart_question.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "core/tightening/wanted.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/strengths.hpp"

namespace clampwright::specdb {

namespace {

using thread::Form;
using tightening::Chart;
using tightening::ChartRow;

constexpr const char* k_like = "write one class or several with commas between them, like --class 8.8,10.9";

std::string_view system_words(Form form) { return form == Form::metric ? "metric" : "inch"; }

// Classes of one system of threads, each once, as the tables write them.
Result<std::vector<NamedClass>> classes_of(const Catalogue& catalogue, std::string_view text) {
  std::vector<NamedClass> classes;
  for (std::string_view rest = text; !rest.empty() || classes.empty();) {
    const auto comma = rest.find(',');
    const std::string name = text::plain_spaces(rest.substr(0, comma));
    rest = comma == std::string_view::npos ? std::string_view() : rest.substr(comma + 1);
    if (name.empty() || (comma != std::string_view::npos && rest.empty()))
      return not_understood("not-understood", "a class is missing beside a comma", text, k_like, "--class");
    if (class_key(name) == "unknown" || class_key(name) == "notknown")
      return refuse(Trouble::usage, "class-missing", "a chart needs the class: without one no load is known", name,
                    k_like, "--class");
    const auto found = find_class(catalogue, name);
    if (!found) return in_field(found.error(), "--class");
    if (!classes.empty() && classes.front().form != found->form)
      return refuse(Trouble::usage, "two-systems",
                    fmt::format("{} is a class of {} threads, {} of {} threads", classes.front().name,
                                system_words(classes.front().form), found->name, system_words(found->form)),
                    text, "make a chart for each of the two systems", "--class");
    if (std::ranges::none_of(classes, [&](const NamedClass& one) { return one.name == found->name; }))
      classes.push_back(*found);
  }
  return classes;
}

Result<std::vector<std::string>> series_of(const std::optional<std::string>& text, Form form) {
  using Series = std::vector<std::string>;
  struct Choice {
    const char* name;
    Series series;
  };
  const std::vector<Choice> choices =
      form == Form::metric
          ? std::vector<Choice>{{"coarse", {"coarse"}}, {"fine", {"fine"}}, {"all", {"coarse", "fine"}}}
          : std::vector<Choice>{{"UNC", {"UNC"}},    {"UNF", {"UNF"}},  {"UNEF", {"UNEF"}},
                                {"coarse", {"UNC"}}, {"fine", {"UNF"}}, {"all", {"UNC", "UNF", "UNEF"}}};
  if (!text) return form == Form::metric ? Series{"coarse"} : Series{"UNC", "UNF"};
  for (const Choice& choice : choices)
    if (text::equal_fold(*text, choice.name)) return choice.series;
  Series names;
  for (const Choice& choice : choices)
    names.emplace_back(choice.name);
  return in_field(no_such_name(fmt::format("series of {} threads", system_words(form)), *text, names).value(),
                  "--series");
}

struct Ends {
  std::optional<quantity::Length> from;
  std::optional<quantity::Length> to;
};

Result<std::optional<quantity::Length>> end_of(const Catalogue& catalogue, const std::optional<std::string>& text,
                                               const char* field, Form form) {
  if (!text) return std::optional<quantity::Length>();
  const auto asked = thread::read_designation_or_size(*text);
  if (asked && (asked->hand == thread::Hand::left || !asked->tolerance.empty()))
    return not_understood("not-understood", "a chart goes from size to size; hand and tolerance have no place in it",
                          *text, "write a size like M6 or 1/4", field);
  const auto size = find_size(catalogue, *text, form);
  if (!size) return in_field(size.error(), field);
  return std::optional(*size);
}

Result<Ends> ends_of(const Catalogue& catalogue, const ChartQuestion& question, Form form) {
  const auto from = end_of(catalogue, question.from, "--from", form);
  if (!from) return Refusal(from.error());
  const auto to = end_of(catalogue, question.to, "--to", form);
  if (!to) return Refusal(to.error());
  if (*from && *to && **from > **to)
    return not_understood("out-of-range", fmt::format("the chart would begin at {} and end below it", *question.from),
                          *question.to, fmt::format("write --from {} --to {}", *question.to, *question.from), "--to");
  return Ends{*from, *to};
}

// A size without the load or the face that the share needs is no reason to refuse the others.
bool concerns_one_row(const Problem& problem) {
  constexpr std::array k_codes{"proof-load-missing", "yield-missing", "face-missing"};
  return std::ranges::find(k_codes, problem.code) != k_codes.end();
}

// Only sizes that one class at least comes in, unless an end was named: nobody asked for M68.
void drop_what_no_class_has(Chart& chart, const Ends& ends) {
  if (ends.from && ends.to) return;
  std::vector<std::string> had;
  for (const ChartRow& row : chart.rows)
    had.push_back(row.thread.designation);
  const auto first =
      std::ranges::find_if(chart.threads, [&](const std::string& t) { return std::ranges::find(had, t) != had.end(); });
  const auto last = std::find_if(chart.threads.rbegin(), chart.threads.rend(), [&](const std::string& t) {
                      return std::ranges::find(had, t) != had.end();
                    }).base();
  std::vector<std::string> kept(ends.from ? chart.threads.begin() : first, ends.to ? chart.threads.end() : last);
  chart.threads = std::move(kept);
  for (auto& gap : chart.gaps)
    std::erase_if(gap.threads,
                  [&](const std::string& t) { return std::ranges::find(chart.threads, t) == chart.threads.end(); });
  std::erase_if(chart.gaps, [](const tightening::ChartGap& gap) { return gap.threads.empty(); });
}

Result<tightening::Wanted> wanted_from(const std::optional<std::string>& proof,
                                       const std::optional<std::string>& yield) {
  if (proof && yield)
    return refuse(Trouble::usage, "surplus", "the torque can be for one thing only", {},
                  "give --proof-fraction 75% or --yield-fraction 90%");
  tightening::Wanted wanted{yield ? tightening::Aim::yield_share : tightening::Aim::proof_share, {}, 0.75};
  if (!proof && !yield) return wanted;
  const auto share = quantity::read_share(proof ? *proof : *yield);
  if (!share) return in_field(share.error(), proof ? "--proof-fraction" : "--yield-fraction");
  wanted.share = *share;
  return wanted;
}

// A share that cannot be had belongs to the option that asked for it.
Refusal beside_share(Problem problem, const ChartQuestion& question) {
  if (problem.code == "out-of-range" && problem.field.empty()) {
    problem.field = question.yield_fraction ? "--yield-fraction" : "--proof-fraction";
    problem.input = text::quotable(question.yield_fraction.value_or(question.proof_fraction.value_or("")));
  }
  return Refusal(std::move(problem));
}

} // namespace

finding::Findings findings_of(const Chart& chart) {
  finding::Findings findings;
  for (auto& shared : tightening::shared_findings(chart))
    findings.push_back(std::move(shared.finding));
  return findings;
}

Result<Chart> chart_for(const Catalogue& catalogue, const ChartQuestion& question) {
  const auto wanted = wanted_from(question.proof_fraction, question.yield_fraction);
  if (!wanted) return Refusal(wanted.error());
  const auto classes = classes_of(catalogue, question.classes);
  if (!classes) return Refusal(classes.error());
  const Form form = classes->front().form;
  const auto series = series_of(question.series, form);
  if (!series) return Refusal(series.error());
  const auto ends = ends_of(catalogue, question, form);
  if (!ends) return Refusal(ends.error());

  std::vector<thread::Thread> threads;
  for (thread::Thread& thread : threads_of(catalogue, form))
    if (std::ranges::find(*series, thread.series) != series->end() && (!ends->from || thread.diameter >= *ends->from) &&
        (!ends->to || thread.diameter <= *ends->to))
      threads.push_back(std::move(thread));

  Chart chart;
  chart.wanted = *wanted;
  for (const thread::Thread& thread : threads)
    chart.threads.push_back(thread.designation);
  for (const NamedClass& one : *classes) {
    chart.classes.push_back(one.name);
    tightening::ChartGap gap{one.name, {}};
    for (const thread::Thread& thread : threads) {
      CaseQuestion row = question.each;
      row.thread = thread.designation;
      row.strength_class = one.name;
      const auto resolved = resolve(catalogue, row);
      if (!resolved && resolved.error().code == "no-such-class") {
        gap.threads.push_back(thread.designation);
        continue;
      }
      if (!resolved) return beside_share(resolved.error(), question);
      if (chart.rows.empty()) chart.common = resolved->asked;
      if (resolved->asked.strength.approved_data) chart.approved_data_class = one.name;
      auto answer = tightening::torque_for(resolved->asked, *wanted, resolved->accuracy);
      if (!answer && !concerns_one_row(answer.error())) return beside_share(answer.error(), question);
      ChartRow made{thread, one.name, std::nullopt, {}};
      if (answer)
        made.answer = std::move(*answer);
      else
        made.none_because = answer.error().code == "proof-load-missing" && resolved->asked.strength.yield
                                ? answer.error().message + "; a share of yield can be asked for instead"
                                : answer.error().message;
      chart.rows.push_back(std::move(made));
    }
    if (!gap.threads.empty()) chart.gaps.push_back(std::move(gap));
  }
  if (chart.rows.empty())
    return refuse(Trouble::no_such, "no-such-class", "no thread between these ends comes in that class",
                  question.classes, "leave out --from and --to to see what there is, or name another --series");
  drop_what_no_class_has(chart, *ends);
  return chart;
}

} // namespace clampwright::specdb
