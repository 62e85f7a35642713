// SPDX-License-Identifier: GPL-3.0-or-later
//
// May another fastener go in where one was?
#include <iterator>

#include <QCoreApplication>

#include "core/report/substitute_words.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

const BlankKind& coating_blank() {
  static const auto kind = choice_blank({{"plain", QT_TRANSLATE_NOOP("Offers", "no coating")},
                                         {"electroplated", QT_TRANSLATE_NOOP("Offers", "plated in a bath")},
                                         {"hot-dip", QT_TRANSLATE_NOOP("Offers", "dipped in molten zinc")},
                                         {"zinc-flake", QT_TRANSLATE_NOOP("Offers", "zinc flakes, baked on")},
                                         {"phosphate", QT_TRANSLATE_NOOP("Offers", "phosphated")}},
                                        &checked<&specdb::read_coating>);
  return *kind;
}

const BlankKind& duty_blank() {
  static const auto kind = choice_blank({{"dry", QT_TRANSLATE_NOOP("Offers", "stays dry in service")},
                                         {"wet", QT_TRANSLATE_NOOP("Offers", "gets wet in service")}},
                                        &checked<&specdb::read_duty>);
  return *kind;
}

const BlankKind& condition_blank() {
  static const auto kind = choice_blank({{"new", QT_TRANSLATE_NOOP("Offers", "never tightened")},
                                         {"used", QT_TRANSLATE_NOOP("Offers", "was tightened before")}},
                                        &checked<&specdb::read_used>);
  return *kind;
}

QString verdict_words(substitute::Verdict verdict) {
  switch (verdict) {
  case substitute::Verdict::adequate:
    return tr("will do");
  case substitute::Verdict::adequate_at_other_torque:
    return tr("will do at another torque");
  case substitute::Verdict::not_adequate:
    return tr("will not do");
  case substitute::Verdict::not_known:
    break;
  }
  return tr("not known");
}

Result<Reply> answer_substitute_sentence(const Words& words, const Place& place) {
  specdb::SubstituteQuestion question;
  put_words(question, words, specdb::k_substitute_fields);
  question.original = said(words, "ORIGINAL").value_or("");
  question.offered = said(words, "--with").value_or("");
  question.approval_needed = ticked(words, "--aircraft");
  question.how = case_question(words);
  const auto told =
      specdb::tell_substitute(*place.catalogue, place.workshop, said(words, "--joint"), std::move(question));
  if (!told) return beside(told.error(), "ORIGINAL");
  const substitute::Answer& answer = told->answer.answer;
  Reply reply;
  reply.page.figures.push_back({verdict_words(answer.verdict), worded(report::verdict_text(answer))});
  if (answer.verdict == substitute::Verdict::adequate_at_other_torque && answer.other_torque)
    reply.page.figures.push_back({shown(answer.other_torque->set, place), tr("gives the clamp load of the original")});
  if (const auto not_told = substitute::links_not_told(answer);
      !not_told.empty() && answer.verdict != substitute::Verdict::not_adequate) {
    QStringList links;
    for (const substitute::Link link : not_told)
      links << worded(report::link_words(link));
    reply.page.flags.push_back(tr("Not told, so look at it: %1").arg(links.join(QStringLiteral(", "))));
  }
  add_flags(reply.page, answer.findings, place);
  reply.page.document = specdb::substitute_document(*told, place.units);
  return reply;
}

std::vector<Blank> substitute_blanks() {
  const BlankKind& length = quantity_blank(Kind::length);
  std::vector<Blank> all = {
      {"ORIGINAL", &fastener_blank(), QT_TRANSLATE_NOOP("Sentences", "what was there: thread and class"), "M10 8.8",
       true, false, "--joint"},
      {"--joint", &joint_blank(), QT_TRANSLATE_NOOP("Sentences", "joint that knows what was there"),
       "winch/frame-bolts", false, true},
      {"--with", &fastener_blank(), QT_TRANSLATE_NOOP("Sentences", "what is offered: thread and class"), "M10 10.9",
       true},
      {"--with-surfaces", &surfaces_blank(), QT_TRANSLATE_NOOP("Sentences", "finish of the one offered"), "oiled"},
      case_blank("--surfaces"),
      {"--mating", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "what it screws into"), "steel"},
      {"--torque", &quantity_blank(Kind::torque), QT_TRANSLATE_NOOP("Sentences", "torque of the original"), "45 N.m"},
      {"--with-mu", &friction_blank(), QT_TRANSLATE_NOOP("Sentences", "friction of the one offered"), "0.08..0.16"},
      {"--with-nut-factor", &nut_factor_blank(), QT_TRANSLATE_NOOP("Sentences", "nut factor of the one offered"),
       "0.15..0.25"},
      {"--with-head", &head_blank(), QT_TRANSLATE_NOOP("Sentences", "head of the one offered"), "hex"},
      {"--coating", &coating_blank(), QT_TRANSLATE_NOOP("Sentences", "coating of the one offered"), "electroplated"},
      {"--nut", &nut_class_blank(), QT_TRANSLATE_NOOP("Sentences", "class of the nut"), "8"},
      {"--engagement", &length, QT_TRANSLATE_NOOP("Sentences", "length of thread engaged in that part"), "15 mm"},
      {"--seat", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "material under the turned part"), "cast-aluminium"},
      {"--length", &length, QT_TRANSLATE_NOOP("Sentences", "length of the one offered, under the head"), "40 mm"},
      {"--original-length", &length, QT_TRANSLATE_NOOP("Sentences", "length of the original"), "40 mm"},
      {"--grip", &length, QT_TRANSLATE_NOOP("Sentences", "what is clamped, between head and thread"), "20 mm"},
      {"--hole-depth", &length, QT_TRANSLATE_NOOP("Sentences", "depth of thread in the hole"), "25 mm"},
      {"--duty", &duty_blank(), QT_TRANSLATE_NOOP("Sentences", "dry or wet in service"), "dry"},
      {"--temperature", &quantity_blank(Kind::temperature), QT_TRANSLATE_NOOP("Sentences", "how hot the joint runs"),
       "80 degC"},
      {"--condition", &condition_blank(), QT_TRANSLATE_NOOP("Sentences", "new or used"), "new"},
      {"--aircraft", &tick_blank(), QT_TRANSLATE_NOOP("Sentences", "an aircraft part, or a certified machine"), "yes"},
  };
  auto rest = case_blanks_but({"THREAD", "--class", "--surfaces"});
  std::ranges::move(rest, std::back_inserter(all));
  return all;
}

} // namespace

std::vector<Sentence> substitute_sentences() {
  return {
      {.id = "substitute",
       .command = "substitute",
       .name = QT_TRANSLATE_NOOP("Sentences", "Another bolt in its place"),
       .also = QT_TRANSLATE_NOOP("Sentences", "substitute replace spare instead other class finish stainless"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences", "Where {ORIGINAL} was, surfaces {--surfaces}, or in the joint {--joint}, a {--with} with "
                        "surfaces {--with-surfaces}, screwed into {--mating}, at the torque {--torque}"),
       .blanks = substitute_blanks(),
       .answer = &answer_substitute_sentence},
  };
}

} // namespace clampwright::desk
