// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque worked up where the maker gives none.
#include <iterator>

#include <QCoreApplication>

#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

QString verdict_words(const workup::Answer& answer) {
  switch (answer.verdict) {
  case workup::Verdict::torque:
    return tr("to set; does for what the joint carries and what its parts bear");
  case workup::Verdict::at_most:
    return tr("at the most: what the joint must carry, or a part of it, was not told");
  case workup::Verdict::none:
    return tr("does for both what the joint carries and what its parts bear");
  case workup::Verdict::not_known:
    break;
  }
  return tr("the torque: what a part bears is not known");
}

Result<Reply> answer_workup_sentence(const Words& words, const Place& place) {
  specdb::WorkupQuestion question;
  put_words(question, words, specdb::k_workup_fields);
  question.how = case_question(words);
  question.how.thread = said(words, "--thread").value_or("");
  const auto joint = said(words, "JOINT");
  if (joint && said(words, "--thread")) return specdb::joint_and_thread();
  const auto told = specdb::tell_workup(*place.catalogue, place.workshop, joint, std::move(question));
  if (!told) return beside(told.error(), joint ? "JOINT" : "--thread");
  const workup::Answer& answer = told->reply.answer;
  Reply reply;
  QString value = tr("not known");
  if (answer.verdict == workup::Verdict::none)
    value = tr("no torque");
  else if (answer.set)
    value = shown(*answer.set, place);
  reply.page.figures.push_back({value, verdict_words(answer)});
  if (answer.lowest && answer.highest)
    reply.page.figures.push_back({shown(*answer.lowest, place), tr("at the least, for what the joint carries")});
  add_flags(reply.page, answer.findings, place);
  reply.page.document = specdb::workup_document(*told, place.units);
  return reply;
}

std::vector<Blank> workup_blanks() {
  const BlankKind& length = quantity_blank(Kind::length);
  const BlankKind& force = quantity_blank(Kind::force);
  static const auto faces = count_blank(1, 20);
  static const auto bolts = count_blank(1, 200);
  std::vector<Blank> all = {
      {"--thread", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "thread"), "M8", true, false, "JOINT"},
      case_blank("--class"),
      case_blank("--surfaces"),
      {"JOINT", &joint_blank(), QT_TRANSLATE_NOOP("Sentences", "joint"), "winch/brake-pivot", false, true},
      {"--material", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "what it screws into"), "cast-aluminium", false,
       true},
      {"--engagement", &length, QT_TRANSLATE_NOOP("Sentences", "length of thread engaged in it"), "16 mm", false, true},
      {"--nut", &nut_strength_blank(), QT_TRANSLATE_NOOP("Sentences", "class of the nut"), "8"},
      {"--seat", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "material under the turned part"), "steel-s235"},
      {"--must-clamp", &force, QT_TRANSLATE_NOOP("Sentences", "clamp load that each bolt must keep"), "3 kN"},
      {"--soft", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "wood, plastic or a gasket between"), "wood"},
      {"--soft-limit", &quantity_blank(Kind::stress), QT_TRANSLATE_NOOP("Sentences", "pressure that it bears"),
       "8 MPa"},
      {"--pull", &force, QT_TRANSLATE_NOOP("Sentences", "pull along each bolt in service"), "2 kN"},
      {"--carry", &quantity_blank(Kind::torque), QT_TRANSLATE_NOOP("Sentences", "torque that the faces carry"),
       "40 N.m"},
      {"--radius", &length, QT_TRANSLATE_NOOP("Sentences", "radius at which they rub"), "30 mm"},
      {"--slip", &force, QT_TRANSLATE_NOOP("Sentences", "force across the bolts that they carry"), "2 kN"},
      {"--face-friction", &number_blank(), QT_TRANSLATE_NOOP("Sentences", "friction of those faces, the least"),
       "0.12"},
      {"--faces", faces.get(), QT_TRANSLATE_NOOP("Sentences", "faces that would have to slip"), "1"},
      {"--pressure", &quantity_blank(Kind::stress), QT_TRANSLATE_NOOP("Sentences", "pressure that pushes them apart"),
       "4 MPa"},
      {"--sealed-diameter", &length, QT_TRANSLATE_NOOP("Sentences", "diameter that it works on"), "54 mm"},
      {"--bolts", bolts.get(), QT_TRANSLATE_NOOP("Sentences", "bolts that share all this"), "6"},
      {"--loss", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "share of the clamp load that goes later"), "10%"},
      {"--proof-share", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "share of the proof load that is used"), "75%"},
      {"--yield-share", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "share of yield, with torsion"), "90%"},
      {"--thread-margin", &number_blank(), QT_TRANSLATE_NOOP("Sentences", "how many times its load the thread bears"),
       "1.5"},
  };
  auto rest = case_blanks_but({"THREAD", "--class", "--surfaces"});
  std::ranges::move(rest, std::back_inserter(all));
  return all;
}

} // namespace

std::vector<Sentence> workup_sentences() {
  return {
      {.id = "workup",
       .command = "workup",
       .name = QT_TRANSLATE_NOOP("Sentences", "A torque where the maker gives none"),
       .also = QT_TRANSLATE_NOOP("Sentences", "work up missing figure must clamp pressure slip gasket"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences",
           "A {--thread} of class {--class}, surfaces {--surfaces}, or the joint {JOINT}, with a nut of class {--nut}, "
           "or {--engagement} deep in {--material}, on a seat of {--seat}, that must keep {--must-clamp}, takes"),
       .blanks = workup_blanks(),
       .answer = &answer_workup_sentence},
  };
}

} // namespace clampwright::desk
