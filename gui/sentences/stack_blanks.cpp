// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/sentences/stack_blanks.hpp"

#include <QtGlobal>

namespace clampwright::desk {

using quantity::Kind;

std::vector<Blank> stack_blanks() {
  const BlankKind& length = quantity_blank(Kind::length);
  const BlankKind& stress = quantity_blank(Kind::stress);
  return {
      {"--grip", &length, QT_TRANSLATE_NOOP("Sentences", "what is clamped, from face to face"), "60 mm", true},
      {"--part-material", &elastic_blank(), QT_TRANSLATE_NOOP("Sentences", "what the parts are made of"), "steel", true,
       false, "--part-modulus"},
      {"--part-modulus", &stress, QT_TRANSLATE_NOOP("Sentences", "or their modulus of elasticity"), "70 GPa", false,
       true},
      {"--bolt-length", &length, QT_TRANSLATE_NOOP("Sentences", "length of the bolt, under the head"), "80 mm"},
      {"--shank-length", &length, QT_TRANSLATE_NOOP("Sentences", "shank in the grip"), "10 mm"},
      {"--thread-length", &length, QT_TRANSLATE_NOOP("Sentences", "free thread in the grip"), "15 mm"},
      {"--bolt-modulus", &stress, QT_TRANSLATE_NOOP("Sentences", "modulus of elasticity of the bolt"), "205 GPa"},
      {"--part-outer", &length, QT_TRANSLATE_NOOP("Sentences", "how wide the parts are round the bolt"), "25 mm"},
      {"--hole", &length, QT_TRANSLATE_NOOP("Sentences", "hole in the parts"), "11 mm"},
      {"--into-part", &tick_blank(), QT_TRANSLATE_NOOP("Sentences", "it screws into the part, without a nut"), "yes"},
  };
}

specdb::StackQuestion stack_question(const Words& words) {
  specdb::StackQuestion question;
  put_words(question, words, specdb::k_stack_fields);
  question.into_part = ticked(words, "--into-part");
  return question;
}

} // namespace clampwright::desk
