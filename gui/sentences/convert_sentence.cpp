// SPDX-License-Identifier: GPL-3.0-or-later
//
// A quantity in other units.
#include <algorithm>

#include <QCoreApplication>

#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "specdb/question/convert_question.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

// The unit that the desk shows quantities of that kind in; nothing where it has no wish.
const quantity::Unit* wished_unit(const quantity::DisplayUnits& units, quantity::Kind kind) {
  for (const quantity::Unit* unit : {units.torque, units.force, units.stress, units.length, units.angle})
    if (unit->kind == kind) return unit;
  return nullptr;
}

Result<Reply> answer_convert_sentence(const Words& words, const Place& place) {
  specdb::ConvertQuestion question{said(words, "QUANTITY").value_or(""), several(words, "UNIT"), nullptr};
  const auto told = specdb::answer_convert(question);
  if (!told) return beside(told.error(), "QUANTITY");
  const auto& values = told->values;
  const auto wished =
      std::ranges::find(values, wished_unit(place.units, told->reading.unit->kind), &specdb::Converted::unit);
  const auto wanted = question.units.empty() && wished != values.end() ? wished : values.begin();
  Reply reply;
  reply.page.figures.push_back(
      {from_utf8(quantity::write_value(wanted->value, *wanted->unit, 7)),
       tr("is %1").arg(from_utf8(quantity::write_value(told->reading.value, *told->reading.unit, 15)))});
  add_flags(reply.page, told->findings, place);
  reply.page.document = specdb::convert_document(*told);
  return reply;
}

} // namespace

std::vector<Sentence> convert_sentences() {
  return {
      {.id = "convert",
       .command = "convert",
       .name = QT_TRANSLATE_NOOP("Sentences", "The same in other units"),
       .also = QT_TRANSLATE_NOOP("Sentences", "units N·m lbf·ft mkg inch mm MPa psi conversion"),
       .text = QT_TRANSLATE_NOOP("Sentences", "{QUANTITY}, in {UNIT} or in all units, is"),
       .blanks = {{"QUANTITY", &any_quantity_blank(), QT_TRANSLATE_NOOP("Sentences", "quantity with its unit"),
                   "2.5 mkg", true},
                  {"UNIT", &unit_blank(), QT_TRANSLATE_NOOP("Sentences", "unit wanted"), "N.m", false, true}},
       .answer = &answer_convert_sentence},
  };
}

} // namespace clampwright::desk
