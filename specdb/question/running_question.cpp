// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/running_question.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/report/tightening_report.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "specdb/catalogue/locking.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/question/short_source.hpp"

namespace clampwright::specdb {

namespace {

using finding::Code;
using finding::Severity;
using locking::Reuse;
using locking::RuleAnswer;
using locking::RunningLimit;
using locking::RunningVerdict;

constexpr std::string_view k_of_class = "of class ";

void add_source(std::vector<Source>& sources, const Source& source) {
  if (std::ranges::find(sources, source) == sources.end()) sources.push_back(source);
}

// "05" and "10" in "locking nut of class 05, 10 or 12"; none where the line is for any class.
std::vector<std::string> classes_of(const RunningLimit& limit) {
  const std::size_t at = limit.nut.find(k_of_class);
  std::vector<std::string> classes;
  if (at == std::string::npos) return classes;
  std::string word;
  for (const char c : limit.nut.substr(at + k_of_class.size()) + " ") {
    if (text::is_digit(c))
      word += c;
    else if (!word.empty())
      classes.push_back(std::exchange(word, {}));
  }
  return classes;
}

Result<void> keep_class(const std::string& wanted, std::vector<RunningLimit>& limits) {
  std::vector<std::string> known;
  for (const RunningLimit& limit : limits)
    for (std::string& one : classes_of(limit))
      if (std::ranges::find(known, one) == known.end()) known.push_back(std::move(one));
  const std::string plain = text::plain_spaces(wanted);
  if (std::ranges::find(known, plain) == known.end()) {
    if (known.empty())
      return refuse(Trouble::no_such, "no-such-name", "no table names classes of locking nuts for this thread", wanted,
                    "leave --class away", "--class");
    return in_field(no_such_name("class with a running torque for this thread", wanted, known).value(), "--class");
  }
  std::erase_if(limits, [&](const RunningLimit& limit) {
    const auto classes = classes_of(limit);
    return !classes.empty() && std::ranges::find(classes, plain) == classes.end();
  });
  return {};
}

Result<void> put_torque(const std::optional<std::string>& text, const char* field, RunningReply& reply,
                        std::optional<quantity::Torque>& into) {
  if (!text) return {};
  const auto read = quantity::read_quantity(*text, quantity::Kind::torque);
  if (!read) return in_field(read.error(), field);
  into = quantity::newton_metres(read->si());
  if (&into == &reply.torque) reply.torque_unit = read->unit;
  reply.mass_as_force = reply.mass_as_force || read->mass_as_force;
  return {};
}

// The least that a line asks of a used nut, in words: "9.5 lbf·in (TM …, Table 2-8)".
std::string limit_words(const RunningLimit& limit) {
  return fmt::format("{} ({})", limit.printed, short_source(limit.source));
}

bool is_unfit(const RunningReply& reply) {
  return reply.reuse == Reuse::drags_too_little || reply.reuse == Reuse::drags_too_much;
}

void judge_measured(RunningReply& reply) {
  reply.reuse = locking::judge(reply.limits, *reply.measured);
  std::vector<std::string> under;
  std::vector<std::string> over;
  for (const RunningLimit& limit : reply.limits)
    if (locking::judge(limit, *reply.measured) == RunningVerdict::no)
      (limit.kind.starts_with("greatest") ? over : under).push_back(limit_words(limit));
  const auto add = [&](Code code, const std::vector<std::string>& broken) {
    if (!broken.empty())
      reply.findings.push_back({code,
                                is_unfit(reply) ? Severity::stop : Severity::mind,
                                {*reply.measured, fmt::format("{}", fmt::join(broken, "; "))}});
  };
  add(Code::running_torque_low, under);
  add(Code::running_torque_high, over);
}

// The tables ask different things of a used nut of one size.
void add_conflict_of_tables(RunningReply& reply) {
  finding::Finding conflict{Code::sources_conflict, Severity::mind, {}};
  std::vector<quantity::Torque> seen;
  for (const RunningLimit& limit : reply.limits) {
    if (!limit.torque || !(limit.kind == "least running torque" || limit.kind == "least breakaway torque")) continue;
    const bool is_new = std::ranges::none_of(seen, [&](quantity::Torque one) {
      const double share = *limit.torque / one;
      return share > 0.999 && share < 1.001;
    });
    if (!is_new) continue;
    seen.push_back(*limit.torque);
    conflict.facts.emplace_back(limit_words(limit));
  }
  if (conflict.facts.size() > 1) reply.findings.push_back(std::move(conflict));
}

void add_conflict_of_rules(RunningReply& reply) {
  if (reply.adding.empty()) return;
  const bool differ =
      std::ranges::any_of(reply.adding, [&](const RuleAnswer& one) { return one.adds != reply.adding.front().adds; });
  if (!differ) return;
  finding::Finding conflict{Code::sources_conflict, Severity::mind, {}};
  for (const RuleAnswer& one : reply.adding)
    conflict.facts.emplace_back(fmt::format("{} ({})", one.rule.words, short_source(one.rule.source)));
  reply.findings.push_back(std::move(conflict));
}

std::string verdict_words(RunningVerdict verdict) {
  switch (verdict) {
  case RunningVerdict::ok:
    return "passes";
  case RunningVerdict::no:
    return "fails";
  case RunningVerdict::not_judged:
    return "";
  }
  return "";
}

std::string reuse_words(Reuse reuse) {
  switch (reuse) {
  case Reuse::ok:
    return "passes every table that has this size; a page of the maker that says new each time goes before them";
  case Reuse::drags_too_little:
    return "no: it drags less than any table allows. Take a new one";
  case Reuse::drags_too_much:
    return "no: it drags more than any table allows a new one. Look at both threads, and take a new one";
  case Reuse::tables_differ:
    return "the tables differ: by the stricter one it is scrap. Take a new one unless your page names one of them";
  case Reuse::not_known:
    return "no table has a least running torque for a used one of this size";
  }
  return "";
}

void add_limits(report::Document& document, const RunningReply& reply, const quantity::DisplayUnits& units) {
  if (reply.limits.empty()) {
    document.sections.push_back({"", {{"Tables", "none has this size: the maker of the nut does"}}});
    return;
  }
  report::Section section{"What the tables ask", {}};
  std::string last;
  for (const RunningLimit& limit : reply.limits) {
    const std::string label = limit.kind;
    std::string value = limit.torque ? limit.printed : limit.note;
    if (limit.torque) {
      const std::string own = quantity::write(*limit.torque, units);
      if (own != limit.printed) value += fmt::format(" = {}", own);
    }
    value += fmt::format(", {} ({}{})", limit.nut, short_source(limit.source),
                         limit.source.known == Known::memory ? "; from memory" : "");
    if (reply.measured)
      if (const std::string verdict = verdict_words(locking::judge(limit, *reply.measured)); !verdict.empty())
        value += ": " + verdict;
    if (limit.torque && !limit.note.empty()) value += "; " + limit.note;
    section.rows.push_back({label == last ? std::string() : label, value});
    last = label;
  }
  document.sections.push_back(std::move(section));
}

// In the unit of the torque that was given, and in the one that is shown where that is another.
std::string set_words(const RunningReply& reply, quantity::Torque set, const quantity::DisplayUnits& units) {
  const std::string shown = quantity::write(set, units, 4);
  if (reply.torque_unit == nullptr || reply.torque_unit == units.torque) return shown;
  return fmt::format("{} = {}", quantity::write_si(quantity::in_newton_metres(set), *reply.torque_unit, 4), shown);
}

void add_rules(report::Document& document, const RunningReply& reply, const quantity::DisplayUnits& units) {
  report::Section section{"Added to a printed torque", {}};
  if (is_unfit(reply))
    section.rows.push_back({"", "nothing is set with this one"});
  else if (reply.adding.empty()) {
    for (const locking::RunningRule& rule : reply.rules)
      section.rows.push_back({rule.name, fmt::format("{} ({})", rule.words, short_source(rule.source))});
    section.rows.push_back({"", reply.torque ? "measure the running torque of this nut and give it with --measured; no "
                                               "table stands for it"
                                             : "give --torque and --measured for what to set"});
  }
  for (const RuleAnswer& one : reply.adding)
    section.rows.push_back({one.rule.name, fmt::format("set {}: {} ({})", set_words(reply, one.set, units),
                                                       one.rule.words, short_source(one.rule.source))});
  document.sections.push_back(std::move(section));
}

} // namespace

Result<RunningReply> answer_running(const Catalogue& catalogue, const RunningQuestion& q) {
  auto thread = find_thread(catalogue, q.thread);
  if (!thread) return Refusal(thread.error());
  RunningReply reply;
  reply.thread = std::move(*thread);
  reply.limits = running_limits(catalogue, reply.thread.thread);
  std::erase_if(reply.limits, [&](const RunningLimit& limit) { return limit.insert != q.insert; });
  reply.rules = running_rules(catalogue);
  if (q.nut_class)
    if (auto kept = keep_class(*q.nut_class, reply.limits); !kept) return Refusal(kept.error());
  if (auto done = put_torque(q.torque, "--torque", reply, reply.torque); !done) return Refusal(done.error());
  if (auto done = put_torque(q.measured, "--measured", reply, reply.measured); !done) return Refusal(done.error());
  if (reply.measured) judge_measured(reply);
  if (reply.torque && reply.measured && !is_unfit(reply))
    reply.adding = locking::add_running(*reply.torque, *reply.measured, reply.rules);
  add_conflict_of_tables(reply);
  add_conflict_of_rules(reply);
  for (const RunningLimit& limit : reply.limits) {
    add_source(reply.sources, limit.source);
    if (limit.source.known == Known::memory)
      if (std::ranges::find(reply.findings, Code::value_from_memory, &finding::Finding::code) == reply.findings.end())
        reply.findings.push_back({Code::value_from_memory, Severity::note, {limit.nut, limit.printed}});
  }
  for (const locking::RunningRule& rule : reply.rules)
    add_source(reply.sources, rule.source);
  if (reply.mass_as_force) reply.findings.push_back({Code::mass_as_force, Severity::note, {}});
  if (reply.torque) reply.findings.push_back({Code::maker_first, Severity::note, {}});
  return reply;
}

report::Document running_document(const RunningReply& reply, const quantity::DisplayUnits& units) {
  report::Document document;
  document.title = fmt::format("Running torque, {}", thread::write_designation(reply.thread.thread));
  report::Section section;
  if (reply.measured) section.rows.push_back({"Measured", quantity::write(*reply.measured, units)});
  if (reply.reuse) section.rows.push_back({"Use again", reuse_words(*reply.reuse)});
  section.rows.push_back({"Measure", "nothing clamped, two threads through the nut, from rest; when going on, one turn "
                                     "before it seats"});
  document.sections.push_back(std::move(section));
  add_limits(document, reply, units);
  add_rules(document, reply, units);
  document.sources = reply.sources;
  document.remarks = report::remarks_of(reply.findings, units);
  document.has_foot = reply.torque.has_value();
  return document;
}

} // namespace clampwright::specdb
