// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/designation.hpp"
#include "specdb/question/lock_question.hpp"
#include "specdb/question/short_source.hpp"

namespace clampwright::specdb {

namespace {

using report::Row;
using report::Section;

std::string degrees(quantity::Temperature temperature) {
  return quantity::write_si(temperature.value(), quantity::unit_named("degC"));
}

struct TopicLabel {
  std::string_view topic;
  std::string_view label;
};

constexpr std::array k_labels{TopicLabel{"about", "About"},     TopicLabel{"fit", "Fit"},
                              TopicLabel{"never", "Never"},     TopicLabel{"heat", "Heat"},
                              TopicLabel{"undo", "Undo"},       TopicLabel{"check", "Check"},
                              TopicLabel{"renew", "Use again"}, TopicLabel{"bears", "Breaks loose"}};

std::string label_of(std::string_view topic) {
  for (const TopicLabel& one : k_labels)
    if (one.topic == topic) return std::string(one.label);
  return std::string(topic);
}

std::string family_words(friction::LockFamily family) {
  switch (family) {
  case friction::LockFamily::none:
    return "none";
  case friction::LockFamily::compound:
    return "bonds the thread";
  case friction::LockFamily::running_torque:
    return "brakes the thread";
  case friction::LockFamily::positive:
    return "stands in the way of turning";
  case friction::LockFamily::washer:
    return "works under the head or nut";
  }
  return "";
}

// What is not ours to claim is marked where it stands.
std::string known_mark(const Source& source) {
  if (source.known == Known::memory) return " [memory]";
  if (source.known == Known::common_practice) return "";
  return fmt::format(" ({})", short_source(source));
}

Section rules_section(const LockReply& reply) {
  Section section;
  section.rows.push_back({"Lock", fmt::format("{}: {}", reply.lock.name, family_words(reply.lock.family))});
  std::string_view last;
  for (const LockRule& rule : reply.rules) {
    section.rows.push_back(
        {rule.topic == last ? std::string() : label_of(rule.topic),
         fmt::format("{}{}{}", rule.rule, known_mark(rule.source), rule.note.empty() ? "" : "; " + rule.note)});
    last = rule.topic;
  }
  return section;
}

std::string verdict_word(Together verdict) {
  switch (verdict) {
  case Together::ok:
    return "yes";
  case Together::mind:
    return "mind";
  case Together::no:
    return "no";
  }
  return "";
}

Section together_section(const LockReply& reply, bool asked) {
  Section section{asked ? "Together with" : "Together with others", {}};
  for (const LockTogether& one : reply.together)
    section.rows.push_back({one.other.name, fmt::format("{}: {}{}", verdict_word(one.pair.verdict), one.pair.why,
                                                        known_mark(one.pair.source))});
  return section;
}

std::string strips_words(int strips) {
  if (strips == 1) return "one strip of compound along the thread";
  return strips == 2 ? "two strips of compound along the thread, opposite each other"
                     : "three strips of compound along the thread";
}

Section asked_section(const LockReply& reply) {
  Section section{"Here", {}};
  if (reply.thread) {
    const std::string thread = thread::write_designation(reply.thread->thread);
    if (reply.strips)
      section.rows.push_back({thread, strips_words(*reply.strips)});
    else if (reply.lock.family != friction::LockFamily::running_torque)
      section.rows.push_back({thread, "nothing that depends on the size is in the tables"});
    else
      section.rows.push_back({thread, reply.running.empty()
                                          ? "no table has a running torque for it"
                                          : fmt::format("{} lines on its running torque: clampwright running {}",
                                                        reply.running.size(), thread)});
  }
  if (reply.temperature) {
    std::string words = "no limit is known";
    if (reply.bears_temperature)
      words = fmt::format("{}: up to {} ({})", *reply.bears_temperature ? "bears it" : "too hot",
                          degrees(*reply.lock.heat_limit), reply.lock.heat_limit_basis);
    section.rows.push_back({degrees(*reply.temperature), words});
  }
  for (const locking::CureSurface& surface : reply.surfaces)
    section.rows.push_back(
        {surface.name, reply.lock.family != friction::LockFamily::compound ? "does not matter to this lock"
                       : surface.activity == locking::Activity::active     ? "the compound cures on it by itself"
                       : surface.activity == locking::Activity::inactive ? "the compound cures poorly without a primer"
                       : surface.activity == locking::Activity::never    ? "no compound: " + surface.note
                                                                      : "not known: the sheet of the compound says"});
  return section;
}

} // namespace

report::Document locks_document(const std::vector<friction::Lock>& locks) {
  report::Document document;
  document.title = "Locks";
  Section section;
  for (const friction::Lock& lock : locks)
    section.rows.push_back(
        {lock.name, fmt::format("{}{}{}", lock.description, lock.single_use ? "; fresh each time" : "",
                                lock.heat_limit ? fmt::format("; up to {}", degrees(*lock.heat_limit)) : "")});
  document.sections.push_back(std::move(section));
  return document;
}

report::Document lock_document(const LockReply& reply, bool pairs_asked) {
  report::Document document;
  document.title = reply.lock.description;
  Section together = together_section(reply, pairs_asked);
  if (pairs_asked) document.sections.push_back(together);
  if (Section asked = asked_section(reply); !asked.rows.empty()) document.sections.push_back(std::move(asked));
  // Who asks whether two go together has the answer above.
  if (!pairs_asked) document.sections.push_back(rules_section(reply));
  if (!pairs_asked) document.sections.push_back(std::move(together));
  document.sources = reply.sources;
  document.remarks = report::remarks_of(reply.findings, {});
  return document;
}

} // namespace clampwright::specdb
