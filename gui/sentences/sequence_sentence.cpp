// SPDX-License-Identifier: GPL-3.0-or-later
//
// In which order to tighten.
#include <QCoreApplication>

#include "core/report/sequence_report.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

const BlankKind& pattern_blank() {
  static const auto kind = choice_blank({{"circle", QT_TRANSLATE_NOOP("Offers", "in a circle")},
                                         {"row", QT_TRANSLATE_NOOP("Offers", "in one row")},
                                         {"rows", QT_TRANSLATE_NOOP("Offers", "in two rows")}},
                                        &checked<&tightening::read_pattern>);
  return *kind;
}

Result<Reply> answer_sequence_sentence(const Words& words, const Place& place) {
  specdb::SequenceQuestion question;
  put_words(question, words, specdb::k_sequence_fields);
  question.undo = ticked(words, "--undo");
  const auto told = specdb::tell_sequence(*place.catalogue, place.workshop, said(words, "--joint"), question);
  if (!told) return Refusal(told.error());
  const tightening::Sequence& sequence = told->reply.sequence;
  Reply reply;
  reply.page.figures.push_back({from_utf8(report::order_words(sequence.order)),
                                sequence.undo ? tr("is the order of loosening") : tr("is the order")});
  if (!sequence.undo) reply.page.figures.push_back({from_utf8(report::rounds_words(sequence)), tr("are the rounds")});
  reply.page.flags.push_back(tr("Positions: %1").arg(worded(report::positions_words(sequence.pattern))));
  add_flags(reply.page, told->reply.findings, place);
  reply.page.document = specdb::sequence_document(*told, place.units);
  reply.page.drawings.push_back({order_picture(sequence, told->reply.seen_from)});
  return reply;
}

} // namespace

std::vector<Sentence> sequence_sentences() {
  static const auto bolts = count_blank(tightening::k_fewest_bolts, tightening::k_most_bolts);
  return {
      {.id = "sequence",
       .command = "sequence",
       .name = QT_TRANSLATE_NOOP("Sentences", "In which order to tighten"),
       .also = QT_TRANSLATE_NOOP("Sentences", "star pattern cross rounds passes flange cylinder head loosen"),
       .text = QT_TRANSLATE_NOOP("Sentences",
                                 "{--bolts} bolts in a {--pattern}, or those of {--joint}, tightened to {--torque} in "
                                 "rounds of {--passes}, follow each other like this:"),
       .blanks = {{"--bolts", bolts.get(), QT_TRANSLATE_NOOP("Sentences", "how many bolts"), "6", true, false,
                   "--joint"},
                  {"--pattern", &pattern_blank(), QT_TRANSLATE_NOOP("Sentences", "how they lie"), "circle"},
                  {"--joint", &joint_blank(), QT_TRANSLATE_NOOP("Sentences", "joint"), "pump/head-nuts", false, true},
                  {"--torque", &quantity_blank(quantity::Kind::torque), QT_TRANSLATE_NOOP("Sentences", "final torque"),
                   "24 N.m"},
                  {"--passes", &passes_blank(), QT_TRANSLATE_NOOP("Sentences", "rounds, as shares of the torque"),
                   "50%,75%,100%"},
                  {"--undo", &tick_blank(), QT_TRANSLATE_NOOP("Sentences", "the order of loosening"), "yes"}},
       .answer = &answer_sequence_sentence},
  };
}

} // namespace clampwright::desk
