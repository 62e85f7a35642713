// SPDX-License-Identifier: GPL-3.0-or-later
//
// Each file of this folder that defines a form gives it by one function of this list; and what they share.
#pragma once

#include <span>

#include "gui/records/record_form.hpp"
#include "specdb/question/figure_record.hpp"
#include "specdb/question/word_field.hpp"

namespace clampwright::desk {

[[nodiscard]] RecordForm machine_form();
[[nodiscard]] RecordForm joint_form();
[[nodiscard]] RecordForm figure_form();
[[nodiscard]] RecordForm document_form();
[[nodiscard]] RecordForm wrench_form();

// From the words of a form to those of a question, and back.
template<class Question>
void fill_question(Question& question, std::span<const specdb::WordField<Question>> fields, const Words& words) {
  for (const auto& field : fields)
    if (auto text = said(words, field.option)) question.*(field.text) = std::move(text);
}
template<class Question>
[[nodiscard]] Words filled_from(const Question& question, std::span<const specdb::WordField<Question>> fields) {
  Words words;
  for (const auto& field : fields)
    if (const auto& text = question.*(field.text)) words[field.option] = *text;
  return words;
}

// The log of a record as a section; empty without events.
[[nodiscard]] report::Section log_section(const std::vector<specdb::EventRecord>& events);

// The blanks of what a page prints, for a figure and for a new joint's first one.
[[nodiscard]] std::vector<BlankGroup> figure_groups();
// What was said in them. Fails where the line of rechecks cannot be read.
[[nodiscard]] Result<specdb::FigureWords> figure_words(const Words& said);

// Kinds of blanks that only records have.
[[nodiscard]] const BlankKind& part_turned_blank(); // head, nut, part
[[nodiscard]] const BlankKind& yes_blank();         // yes, no
[[nodiscard]] const BlankKind& locks_line_blank();
[[nodiscard]] const BlankKind& neighbours_line_blank();
[[nodiscard]] const BlankKind& rechecks_line_blank();
[[nodiscard]] const BlankKind& document_blank(); // a document of the open workshop

} // namespace clampwright::desk
