// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a thread is and what goes with it, which one was measured, and what a mark on a head says.
#include <QCoreApplication>

#include "core/thread/designation.hpp"
#include "core/thread/geometry.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/gauge_question.hpp"
#include "specdb/question/head_mark.hpp"
#include "specdb/question/head_mark_report.hpp"
#include "specdb/question/head_mark_words.hpp"
#include "specdb/question/thread_question.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

Result<void> check_part(std::string_view text) {
  if (specdb::part_named(text)) return {};
  return specdb::no_such_part(text);
}

const BlankKind& marked_part_blank() {
  static const auto kind = choice_blank({{"bolt", QT_TRANSLATE_NOOP("Offers", "the head of a bolt")},
                                         {"screw", QT_TRANSLATE_NOOP("Offers", "the head of a screw")},
                                         {"stud", QT_TRANSLATE_NOOP("Offers", "the end of a stud")},
                                         {"nut", QT_TRANSLATE_NOOP("Offers", "a nut")}},
                                        &check_part);
  return *kind;
}

Result<Reply> answer_thread_sentence(const Words& words, const Place& place) {
  const auto told =
      specdb::answer_thread(*place.catalogue, {said(words, "THREAD").value_or(""), ticked(words, "--any-pitch")});
  if (!told) return beside(told.error(), "THREAD");
  const thread::Thread& thread = told->entry.thread;
  Reply reply;
  for (const specdb::ToolSize& tool : told->facts.tools)
    if (!tool.is_key) {
      reply.page.figures.push_back(
          {shown_length(tool.width, place), tr("spanner, for: %1").arg(worded(tool.fastener))});
      break;
    }
  reply.page.figures.push_back(
      {thread.tpi ? tr("%1 per inch").arg(*thread.tpi) : shown(thread.pitch, place),
       thread.tpi ? tr("threads, a pitch of %1").arg(shown(thread.pitch, place)) : tr("pitch")});
  if (const auto hole = thread::tapping_hole(thread))
    reply.page.figures.push_back({shown_length(*hole, place), tr("tapping hole")});
  if (told->facts.holes.medium)
    reply.page.figures.push_back({shown_length(*told->facts.holes.medium, place), tr("clearance hole, medium")});
  add_flags(reply.page, told->findings, place);
  reply.page.document = specdb::thread_document(*told, place.units);
  return reply;
}

QString gauge_words(thread::GaugeVerdict verdict) {
  switch (verdict) {
  case thread::GaugeVerdict::fits:
    return tr("fits best");
  case thread::GaugeVerdict::worn_or_near:
    return tr("is the nearest, worn or not quite it");
  case thread::GaugeVerdict::unlikely:
    break;
  }
  return tr("is the nearest, and unlikely");
}

Result<Reply> answer_gauge_sentence(const Words& words, const Place& place) {
  specdb::GaugeQuestion question;
  put_words(question, words, specdb::k_gauge_fields);
  question.internal = ticked(words, "--internal");
  const auto answer = specdb::which_thread(*place.catalogue, question);
  if (!answer) return Refusal(answer.error());
  const thread::Candidate& best = answer->candidates.front();
  Reply reply;
  reply.page.figures.push_back({from_utf8(best.known.thread.designation), gauge_words(best.verdict)});
  QStringList alike;
  for (const thread::LookAlike& other : best.look_alikes)
    if (other.by_measurement) alike << from_utf8(other.other.thread.designation);
  if (!alike.isEmpty()) reply.page.flags.push_back(tr("Fits as well: %1").arg(alike.join(QStringLiteral(", "))));
  add_flags(reply.page, answer->findings, place);
  reply.page.document = specdb::gauge_document(*answer, place.units);
  return reply;
}

QString mark_verdict(const std::string& verdict) {
  if (verdict == "means") return tr("is what it stands for");
  if (verdict == "may-mean") return tr("is what it may stand for");
  return tr("is what it would stand for: not known");
}

Result<Reply> answer_headmark_sentence(const Words& words, const Place& place) {
  const std::string text = said(words, "TEXT").value_or("");
  const auto answer = specdb::read_head_mark(*place.catalogue, text, said(words, "--part"));
  if (!answer) return beside(answer.error(), "TEXT");
  Reply reply;
  for (const specdb::HeadMark& row : answer->readings)
    if (row.class_name && reply.page.figures.size() < 3)
      reply.page.figures.push_back({from_utf8(*row.class_name), mark_verdict(row.verdict)});
  if (reply.page.figures.empty()) reply.page.figures.push_back({tr("no class"), tr("can be read from this mark")});
  if (answer->hand == thread::Hand::left) reply.page.flags.push_back(tr("Left-hand thread"));
  add_flags(reply.page, answer->findings, place);
  reply.page.document = specdb::head_mark_report(*answer, text);
  return reply;
}

} // namespace

std::vector<Sentence> thread_sentences() {
  const BlankKind& length = quantity_blank(Kind::length);
  return {
      {.id = "thread",
       .command = "thread",
       .name = QT_TRANSLATE_NOOP("Sentences", "A thread and what goes with it"),
       .also = QT_TRANSLATE_NOOP("Sentences", "dimensions pitch holes drill nuts spanner wrench size heads washers"),
       .text = QT_TRANSLATE_NOOP("Sentences", "The thread {THREAD} has these dimensions, holes, nuts and spanners:"),
       .blanks = {case_blank("THREAD"), case_blank("--any-pitch")},
       .answer = &answer_thread_sentence},
      {.id = "gauge",
       .command = "gauge",
       .name = QT_TRANSLATE_NOOP("Sentences", "Which thread it is"),
       .also = QT_TRANSLATE_NOOP("Sentences", "measure identify unknown thread pitch calliper look-alike"),
       .text = QT_TRANSLATE_NOOP("Sentences",
                                 "A thread that measures {--diameter} over its crests, with {--pitch} from crest to "
                                 "crest, or {--tpi} threads in one inch, is"),
       .blanks = {{"--diameter", &length, QT_TRANSLATE_NOOP("Sentences", "diameter over the crests"), "7.85 mm", true},
                  {"--pitch", &length, QT_TRANSLATE_NOOP("Sentences", "pitch"), "1.25 mm"},
                  {"--tpi", &threads_per_inch_blank(), QT_TRANSLATE_NOOP("Sentences", "threads in one inch"), "20",
                   false, true},
                  {"--internal", &tick_blank(), QT_TRANSLATE_NOOP("Sentences", "a nut or hole: its minor diameter"),
                   "yes"},
                  {"--diameter-uncertainty", &length, QT_TRANSLATE_NOOP("Sentences", "how far the diameter may be off"),
                   "0.05 mm"},
                  {"--pitch-uncertainty", &share_blank(),
                   QT_TRANSLATE_NOOP("Sentences", "how far the pitch may be off"), "2%"}},
       .answer = &answer_gauge_sentence},
      {.id = "headmark",
       .command = "headmark",
       .name = QT_TRANSLATE_NOOP("Sentences", "What a mark on a head says"),
       .also = QT_TRANSLATE_NOOP("Sentences", "head mark nut class lines grade strength clock face"),
       .text = QT_TRANSLATE_NOOP("Sentences", "A {--part} marked {TEXT} is of class"),
       .blanks = {{"TEXT", &head_mark_blank(), QT_TRANSLATE_NOOP("Sentences", "mark, as it is seen"), "8.8", true},
                  {"--part", &marked_part_blank(), QT_TRANSLATE_NOOP("Sentences", "part that bears the mark"), "bolt"}},
       .answer = &answer_headmark_sentence},
  };
}

} // namespace clampwright::desk
