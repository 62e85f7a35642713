// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/sentences/case_blanks.hpp"

#include <algorithm>
#include <iterator>

#include <QtGlobal>

#include "specdb/question/case_fields.hpp"

namespace clampwright::desk {

namespace {

const BlankKind& part_blank() {
  static const auto kind = choice_blank(
      {{"head", QT_TRANSLATE_NOOP("Offers", "the head of the bolt")}, {"nut", QT_TRANSLATE_NOOP("Offers", "the nut")}},
      &checked<&specdb::read_turned>);
  return *kind;
}

} // namespace

const BlankKind& joint_kind_blank() {
  static const auto kind = choice_blank({{"bolt", QT_TRANSLATE_NOOP("Offers", "a bolt, or a nut on a stud")},
                                         {"hub", QT_TRANSLATE_NOOP("Offers", "a hub screwed onto a shaft")},
                                         {"plug", QT_TRANSLATE_NOOP("Offers", "a plug in a hole")},
                                         {"stud-set", QT_TRANSLATE_NOOP("Offers", "a stud set into a part")},
                                         {"union", QT_TRANSLATE_NOOP("Offers", "the nut of a pipe union")}},
                                        &checked<&specdb::read_joint_kind>);
  return *kind;
}

std::vector<Blank> case_blanks() {
  const BlankKind& length = quantity_blank(quantity::Kind::length);
  return {
      {"THREAD", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "thread"), "M10", true},
      {"--class", &class_blank(), QT_TRANSLATE_NOOP("Sentences", "strength class"), "8.8"},
      {"--surfaces", &surfaces_blank(), QT_TRANSLATE_NOOP("Sentences", "state of thread and face"), "oiled"},
      {"--lock", &lock_blank(), QT_TRANSLATE_NOOP("Sentences", "locked by"), "compound-medium"},
      {"--head", &head_blank(), QT_TRANSLATE_NOOP("Sentences", "head or nut"), "hex"},
      {"--turned", &part_blank(), QT_TRANSLATE_NOOP("Sentences", "part that is turned"), "head"},
      {"--washer", &size_pair_blank(), QT_TRANSLATE_NOOP("Sentences", "washer, outer by inner diameter"), "20x10.5mm"},
      {"--face-outer", &length, QT_TRANSLATE_NOOP("Sentences", "outer diameter of the face that rubs"), "16 mm"},
      {"--face-inner", &length, QT_TRANSLATE_NOOP("Sentences", "inner diameter of the face that rubs"), "11 mm"},
      {"--kind", &joint_kind_blank(), QT_TRANSLATE_NOOP("Sentences", "kind of joint"), "bolt"},
      {"--mu", &friction_blank(), QT_TRANSLATE_NOOP("Sentences", "friction of thread and face"), "0.08..0.16"},
      {"--mu-thread", &friction_blank(), QT_TRANSLATE_NOOP("Sentences", "friction in the thread"), "0.10..0.14"},
      {"--mu-head", &friction_blank(), QT_TRANSLATE_NOOP("Sentences", "friction under the turned part"), "0.10..0.14"},
      {"--nut-factor", &nut_factor_blank(), QT_TRANSLATE_NOOP("Sentences", "nut factor K"), "0.15..0.25"},
      {"--running-torque", &quantity_blank(quantity::Kind::torque),
       QT_TRANSLATE_NOOP("Sentences", "running torque of a locking nut"), "2 N.m"},
      {"--wrench-accuracy", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "accuracy of the wrench"), "4%"},
      {"--shank", &length, QT_TRANSLATE_NOOP("Sentences", "diameter of a waisted shank"), "7.2 mm"},
      {"--bore", &length, QT_TRANSLATE_NOOP("Sentences", "bore of a hollow bolt"), "4 mm"},
      {"--any-pitch", &tick_blank(), QT_TRANSLATE_NOOP("Sentences", "take a thread that no table lists"), "yes"},
  };
}

std::vector<Blank> with_case(std::vector<Blank> own) {
  constexpr int k_first = 3;
  std::vector<Blank> all = case_blanks();
  all.insert(all.begin() + k_first, std::make_move_iterator(own.begin()), std::make_move_iterator(own.end()));
  return all;
}

Blank case_blank(std::string_view option) {
  const std::vector<Blank> all = case_blanks();
  return *std::ranges::find(all, option, &Blank::option);
}

std::vector<Blank> case_blanks_but(std::initializer_list<std::string_view> options) {
  std::vector<Blank> all = case_blanks();
  std::erase_if(all, [&](const Blank& blank) { return std::ranges::find(options, blank.option) != options.end(); });
  return all;
}

specdb::CaseQuestion case_question(const Words& words) {
  specdb::CaseQuestion question;
  question.thread = said(words, "THREAD").value_or("");
  question.any_pitch = ticked(words, "--any-pitch");
  question.locks = several(words, "--lock");
  put_words(question, words, specdb::k_case_fields);
  return question;
}

} // namespace clampwright::desk
