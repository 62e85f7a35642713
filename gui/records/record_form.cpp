// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/records/record_form.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "gui/look/utf8.hpp"
#include "gui/records/all_forms.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Records", english); }

} // namespace

const Blank* RecordForm::blank(std::string_view option) const {
  for (const BlankGroup& group : groups)
    if (const auto found = std::ranges::find(group.blanks, option, &Blank::option); found != group.blanks.end())
      return &*found;
  return nullptr;
}

const std::vector<RecordForm>& record_forms() {
  static const std::vector<RecordForm> forms{machine_form(), joint_form(), figure_form(), document_form(),
                                             wrench_form()};
  return forms;
}

const RecordForm* record_form(std::string_view id) {
  const auto found = std::ranges::find(record_forms(), id, &RecordForm::id);
  return found == record_forms().end() ? nullptr : &*found;
}

Words differing(const Words& recorded, const Words& filled) {
  Words out;
  for (const auto& [option, text] : filled)
    if (const auto was = recorded.find(option); was == recorded.end() || was->second != text) out[option] = text;
  for (const auto& [option, text] : recorded)
    if (!filled.contains(option)) out[option] = "none";
  return out;
}

report::Section log_section(const std::vector<specdb::EventRecord>& events) {
  report::Section section;
  if (events.empty()) return section;
  section.heading = to_utf8(tr("What happened to this record"));
  for (const specdb::EventRecord& event : events)
    section.rows.push_back({event.on_date, event.kind + (event.words.empty() ? "" : ": " + event.words) +
                                               (event.because ? "; " + *event.because : "")});
  return section;
}

} // namespace clampwright::desk
