// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a turn of the nut does: an angle after a snug torque, and the way to the next slot of a castle nut.
#include <iterator>

#include <QCoreApplication>

#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/sentences/stack_blanks.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

QString degrees(quantity::Angle angle) {
  return from_utf8(quantity::write_si(quantity::in_radians(angle), quantity::unit_named("deg")));
}

Result<Reply> answer_angle_sentence(const Words& words, const Place& place) {
  specdb::AngleQuestion question;
  put_words(question, words, specdb::k_angle_fields);
  question.fastener = case_question(words);
  question.stack = stack_question(words);
  const auto told = specdb::answer_angle(*place.catalogue, question);
  if (!told) return beside(told.error(), "THREAD");
  const joint::AngleAnswer& answer = told->answer;
  Reply reply;
  // What the elastic line gives beyond yield is no load that the bolt carries.
  if (answer.beyond_elastic) {
    reply.page.figures.push_back({tr("not known"), tr("clamp load: the turn may bring the bolt past yield")});
  } else {
    reply.page.figures.push_back(clamp_figure(answer.preload, place));
    reply.page.figures.push_back(
        {shown(answer.added.likely, place), tr("of it likely by the angle; %1 to %2")
                                                .arg(shown(answer.added.low, place), shown(answer.added.high, place))});
  }
  add_flags(reply.page, answer.findings, place);
  reply.page.document = specdb::angle_document(*told, place.units);
  return reply;
}

QString meets_words(joint::Meets meets) {
  switch (meets) {
  case joint::Meets::surely:
    return tr("surely");
  case joint::Meets::likely:
    return tr("likely");
  case joint::Meets::by_chance:
    break;
  }
  return tr("by chance");
}

Result<Reply> answer_slot_sentence(const Words& words, const Place& place) {
  specdb::SlotQuestion question;
  put_words(question, words, specdb::k_slot_fields);
  question.fastener = specdb::with_castle_nut(case_question(words));
  question.stack = stack_question(words);
  const auto told = specdb::answer_slot(*place.catalogue, question);
  if (!told) return beside(told.error(), "THREAD");
  const joint::SlotAnswer& answer = told->answer;
  Reply reply;
  reply.page.figures.push_back(
      {meets_words(answer.meets),
       tr("meets a slot between the two torques: %1 in 100").arg(static_cast<int>(answer.chance * 100.0 + 0.5))});
  if (answer.next_is_too_much())
    reply.page.figures.push_back(
        {degrees(answer.angle), tr("from one slot to the next: with one just missed no such bolt bears the next")});
  else
    reply.page.figures.push_back(
        {shown(answer.gain.likely, place),
         tr("more clamp load, likely, from one slot to the next (%1)").arg(degrees(answer.angle))});
  add_flags(reply.page, answer.findings, place);
  reply.page.document = specdb::slot_document(*told, place.units);
  return reply;
}

// It is the nut whose face is asked for.
std::vector<Blank> of_nut(std::vector<Blank> blanks) {
  for (Blank& blank : blanks)
    if (blank.option == "--head") blank.kind = &nut_face_blank();
  return blanks;
}

std::vector<Blank> with_stack(std::vector<Blank> own) {
  auto stack = stack_blanks();
  std::ranges::move(stack, std::back_inserter(own));
  return with_case(std::move(own));
}

} // namespace

std::vector<Sentence> turn_sentences() {
  const BlankKind& torque = quantity_blank(Kind::torque);
  static const auto slot_count = count_blank(2, 24);
  static const auto holes = count_blank(1, 4);
  return {
      {.id = "angle",
       .command = "angle",
       .name = QT_TRANSLATE_NOOP("Sentences", "Torque and then an angle"),
       .also = QT_TRANSLATE_NOOP("Sentences", "degrees turn snug stretch elastic"),
       .text = QT_TRANSLATE_NOOP("Sentences",
                                 "A fastener {THREAD} of class {--class}, surfaces {--surfaces}, snugged with "
                                 "{--snug} and turned on by {--angle}, on {--grip} of {--part-material}, clamps"),
       .blanks =
           with_stack({{"--snug", &torque, QT_TRANSLATE_NOOP("Sentences", "torque before the angle"), "20 N.m", true},
                       {"--angle", &quantity_blank(Kind::angle), QT_TRANSLATE_NOOP("Sentences", "the turn after it"),
                        "20 deg", true}}),
       .answer = &answer_angle_sentence},
      {.id = "slot",
       .command = "slot",
       .name = QT_TRANSLATE_NOOP("Sentences", "Castle nut and split pin"),
       .also = QT_TRANSLATE_NOOP("Sentences", "slot slotted nut cotter hole align"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences", "A castle nut on {THREAD} of class {--class}, surfaces {--surfaces}, between {--low} and "
                        "{--high}, or about {--torque}, on {--grip} of {--part-material},"),
       .blanks = of_nut(with_stack(
           {{"--low", &torque, QT_TRANSLATE_NOOP("Sentences", "low end of the torque"), "30 N.m", true, false,
             "--torque"},
            {"--high", &torque, QT_TRANSLATE_NOOP("Sentences", "high end of the torque"), "45 N.m", true, false,
             "--torque"},
            {"--torque", &torque, QT_TRANSLATE_NOOP("Sentences", "one torque, where the page gives no range"), "40 N.m",
             false, true},
            {"--slots", slot_count.get(), QT_TRANSLATE_NOOP("Sentences", "slots of the nut"), "6"},
            {"--pin-holes", holes.get(), QT_TRANSLATE_NOOP("Sentences", "holes across the bolt"), "1"}})),
       .answer = &answer_slot_sentence},
  };
}

} // namespace clampwright::desk
