// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/thread_question.hpp"

#include "core/report/thread_report.hpp"
#include "core/report/tightening_report.hpp"
#include "core/thread/designation.hpp"
#include "specdb/question/any_pitch.hpp"
#include "specdb/question/size_report.hpp"

namespace clampwright::specdb {

Result<ThreadReply> answer_thread(const Catalogue& catalogue, const ThreadQuestion& question) {
  auto entry = question.any_pitch ? find_thread_of_any_pitch(catalogue, question.thread)
                                  : find_thread(catalogue, question.thread);
  if (!entry) return with_any_pitch(catalogue, question.thread, entry.error());
  ThreadReply reply{std::move(*entry), {}, {}};
  const thread::Thread& thread = reply.entry.thread;
  reply.facts = size_facts(catalogue, thread);
  if (thread.hand == thread::Hand::left)
    reply.findings.push_back({finding::Code::left_hand, finding::Severity::mind, {}});
  if (!thread.listed)
    reply.findings.push_back({finding::Code::thread_not_listed,
                              finding::Severity::mind,
                              {thread.designation, std::string(thread::form_standard(thread.form))}});
  return reply;
}

report::Document thread_document(const ThreadReply& reply, const quantity::DisplayUnits& units) {
  const ThreadEntry& entry = reply.entry;
  report::Document document =
      report::thread_report(entry.thread, entry.stress_area_table, entry.limits, entry.sources, units);
  auto section = size_section(entry.thread, reply.facts, units);
  if (!section.rows.empty()) document.sections.push_back(std::move(section));
  for (const Source& source : reply.facts.sources)
    document.sources.push_back(source);
  document.remarks = report::remarks_of(reply.findings, {});
  return document;
}

} // namespace clampwright::specdb
