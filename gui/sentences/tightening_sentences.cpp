// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a torque clamps, and what torque a clamp load wants.
#include <QCoreApplication>

#include "core/report/tightening_report.hpp"
#include "core/report/wording.hpp"
#include "gui/drawings/band_picture.hpp"
#include "gui/drawings/clamp_curve.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/clamp_question.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

// Band picture and curve, and whether the thread turns the unusual way.
void add_pictures(Reply& reply, const tightening::ClampAnswer& answer, const Place& place) {
  if (auto picture = band_picture(answer, place.units))
    reply.page.drawings.push_back({std::move(*picture), static_cast<int>(reply.page.document.sections.size())});
  reply.curve = clamp_curve(answer, place.units);
  if (answer.asked.thread.hand == thread::Hand::left) reply.page.flags.push_back(tr("Left-hand thread"));
}

Result<Reply> answer_clamp_sentence(const Words& words, const Place& place) {
  const auto found = specdb::answer_clamp(*place.catalogue, {case_question(words), said(words, "--torque")});
  if (!found) return Refusal(found.error());
  const tightening::ClampAnswer& answer = found->answer;
  Reply reply;
  const auto load = tightening::leading_preload(answer);
  // Past yield the elastic line that the load is reckoned by has ended.
  if (load && answer.verdict == tightening::Verdict::over_limit)
    reply.page.figures.push_back({tr("not known"), tr("clamp load: likely past what the bolt bears")});
  else if (load)
    reply.page.figures.push_back({from_utf8(quantity::write(load->likely, place.units)),
                                  tr("likely clamp load; %1 to %2")
                                      .arg(from_utf8(quantity::write(load->low, place.units)),
                                           from_utf8(quantity::write(load->high, place.units)))});
  else
    reply.page.figures.push_back({tr("not known"), tr("clamp load")});
  reply.page.flags.push_back(worded(report::verdict_text(answer)));
  reply.page.document = report::clamp_report(answer, place.units);
  reply.page.document.working = answer.working;
  add_pictures(reply, answer, place);
  return reply;
}

Result<Reply> answer_torque_sentence(const Words& words, const Place& place) {
  const auto found =
      specdb::answer_torque(*place.catalogue, {case_question(words), said(words, "--preload"),
                                               said(words, "--proof-fraction"), said(words, "--yield-fraction")});
  if (!found) return Refusal(found.error());
  const tightening::ClampAnswer& answer = found->answer.clamp;
  Reply reply;
  reply.page.figures.push_back({from_utf8(quantity::write(answer.torque, place.units)),
                                tr("torque to set, for %1 at likely friction")
                                    .arg(from_utf8(quantity::write(found->answer.preload, place.units)))});
  reply.page.flags.push_back(worded(report::verdict_text(answer)));
  reply.page.document = report::torque_report(found->answer, place.units);
  reply.page.document.working = answer.working;
  add_pictures(reply, answer, place);
  return reply;
}

} // namespace

std::vector<Sentence> tightening_sentences() {
  return {
      {.id = "clamp",
       .command = "clamp",
       .name = QT_TRANSLATE_NOOP("Sentences", "Clamp load of a torque"),
       .also = QT_TRANSLATE_NOOP("Sentences", "preload tension torque clamp load proof yield nut factor friction"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences",
           "A fastener {THREAD} of class {--class}, surfaces {--surfaces}, tightened to {--torque}, clamps"),
       .blanks = with_case({{"--torque", &quantity_blank(quantity::Kind::torque),
                             QT_TRANSLATE_NOOP("Sentences", "torque as set on the wrench"), "45 N.m", true}}),
       .answer = &answer_clamp_sentence},
      {.id = "torque",
       .command = "torque",
       .name = QT_TRANSLATE_NOOP("Sentences", "Torque for a clamp load"),
       .also = QT_TRANSLATE_NOOP("Sentences", "torque from preload tension proof share yield"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences", "A fastener {THREAD} of class {--class}, surfaces {--surfaces}, is to clamp "
                        "{--preload}, or {--proof-fraction} of proof, or {--yield-fraction} of yield: it wants"),
       .blanks = with_case(
           {{"--preload", &quantity_blank(quantity::Kind::force), QT_TRANSLATE_NOOP("Sentences", "clamp load wanted"),
             "18 kN"},
            {"--proof-fraction", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "share of the proof load wanted"),
             "75%", false, true},
            {"--yield-fraction", &share_blank(),
             QT_TRANSLATE_NOOP("Sentences", "share of yield wanted, at the lowest friction"), "90%", false, true}}),
       .answer = &answer_torque_sentence},
  };
}

} // namespace clampwright::desk
