// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which gives first, the bolt or a thread.
#include <QCoreApplication>

#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "specdb/question/strip_question.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

const BlankKind& insert_blank() {
  static const auto kind = choice_blank({{"wire", QT_TRANSLATE_NOOP("Offers", "a coil of wire")},
                                         {"keyed", QT_TRANSLATE_NOOP("Offers", "a sleeve with keys")}},
                                        &checked<&specdb::read_insert_kind>);
  return *kind;
}

QString gives_words(const std::optional<joint::Gives>& gives) {
  if (!gives) return tr("not known");
  switch (*gives) {
  case joint::Gives::bolt:
    return tr("the bolt");
  case joint::Gives::bolt_thread:
    return tr("the bolt's thread");
  case joint::Gives::part_thread:
    return tr("the thread in the part");
  }
  return {};
}

Result<Reply> answer_strip_sentence(const Words& words, const Place& place) {
  specdb::StripQuestion question;
  put_words(question, words, specdb::k_strip_fields);
  question.fastener = case_question(words);
  const auto told = specdb::answer_strip(*place.catalogue, question);
  if (!told) return beside(told.error(), "THREAD");
  const joint::StripAnswer& answer = told->answer;
  Reply reply;
  if (answer.asked.length)
    reply.page.figures.push_back({gives_words(answer.loads.first), tr("gives first, with the strongest bolt")});
  if (answer.needed)
    reply.page.figures.push_back({shown_length(*answer.needed, place), tr("engaged, and the bolt breaks first")});
  else
    reply.page.figures.push_back({tr("not known"), tr("the length that makes the bolt break first")});
  add_flags(reply.page, answer.findings, place);
  reply.page.document = specdb::strip_document(*told, place.units);
  return reply;
}

} // namespace

std::vector<Sentence> strip_sentences() {
  const BlankKind& length = quantity_blank(Kind::length);
  return {
      {.id = "strip",
       .command = "strip",
       .name = QT_TRANSLATE_NOOP("Sentences", "What gives first: bolt or thread"),
       .also = QT_TRANSLATE_NOOP("Sentences", "strip engagement length thread depth insert casting aluminium"),
       .text = QT_TRANSLATE_NOOP("Sentences",
                                 "Of a {THREAD} of class {--class}, screwed {--length} deep into {--material},"),
       .blanks = {case_blank("THREAD"),
                  case_blank("--class"),
                  {"--length", &length, QT_TRANSLATE_NOOP("Sentences", "length of thread engaged"), "12 mm"},
                  {"--material", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "what the thread is cut in"),
                   "cast-aluminium", true},
                  {"--incomplete", &incomplete_blank(), QT_TRANSLATE_NOOP("Sentences", "what of it does not bear"),
                   "2"},
                  {"--insert", &insert_blank(), QT_TRANSLATE_NOOP("Sentences", "steel insert in the part"), "wire"},
                  {"--outer-thread", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "outer thread of a keyed insert"),
                   "M12x1.25"},
                  {"--torque", &quantity_blank(Kind::torque), QT_TRANSLATE_NOOP("Sentences", "torque, held against it"),
                   "24 N.m"},
                  case_blank("--surfaces"),
                  case_blank("--mu"),
                  case_blank("--nut-factor"),
                  case_blank("--head"),
                  case_blank("--washer")},
       .answer = &answer_strip_sentence},
  };
}

} // namespace clampwright::desk
