// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/reading_content.hpp"

#include <QCoreApplication>
#include <QtGlobal>

#include "core/report/wording.hpp"
#include "gui/look/utf8.hpp"
#include "specdb/catalogue/tables.hpp"
#include "specdb/question/table_report.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::desk {

namespace {

std::string tr(const char* english) { return to_utf8(QCoreApplication::translate("About", english)); }

std::vector<std::string> words_in(const std::string& text) {
  std::vector<std::string> words;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find(' ', begin), text.size());
    if (end > begin) words.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return words;
}

// Common practice at the bench, without a source: each is said by every workshop.
report::Section cautions() {
  return {tr("Before you tighten"),
          {{"", tr("The maker's current instruction ranks above anything shown here. Local rules and licensed practice "
                   "decide who may do the work.")},
           {"", tr("A torque belongs to its surfaces: oil, compound or plating change what it clamps.")},
           {"", tr("Look at the thread before you turn it: a left-hand thread tightens anticlockwise.")},
           {"", tr("Hold the part itself or the same shaft end. No impact tool against a piston stop.")},
           {"", tr("Eye protection; ignition off, plug out or its lead earthed; no heat near fuel, seals or "
                   "magnets.")},
           {"", tr("New: what is meant for one use, as split pins, tab washers, stretched bolts, gaskets.")},
           {"", tr("“Not known” is an answer: nothing is guessed in its place.")}}};
}

report::Section keys() {
  return {tr("Keys"),
          {{"Ctrl+F", tr("find; typing where nothing takes letters does the same")},
           {tr("arrows, Enter"), tr("choose in the list, open")},
           {"Esc", tr("back to the empty find line")},
           {"Tab", tr("from blank to blank")},
           {"F6", tr("next part of the window: find line, list, page")},
           {tr("Page up, Page down, Space"), tr("scroll the page")},
           {"F9", tr("bench mode: large, for gloves and from two metres")},
           {"F8", tr("light or dark")},
           {"Ctrl++  Ctrl+-  Ctrl+0", tr("larger, smaller, normal letters")},
           {"Ctrl+T", tr("a curve as a table of its points")},
           {"Ctrl+Shift+C", tr("copy the figure")},
           {"Ctrl+P", tr("print")},
           {"Ctrl+Shift+P", tr("save as PDF")},
           {tr("Numbers"), tr("written and read with a decimal point, 24.5; a comma is asked about")},
           {"F1", tr("this page")},
           {"Ctrl+O  Ctrl+N", tr("open a workshop, make an empty one")},
           {"Ctrl+Q", tr("quit")}}};
}

report::Section parts(const Place& place) {
  return {tr("Versions and licences"),
          {{"Clampwright", to_utf8(QCoreApplication::applicationVersion()) + "; " +
                               tr("free software under the GNU General Public License, version 3 or later; no "
                                  "warranty")},
           {tr("reference tables"), place.catalogue->data_version()},
           {"Qt", std::string(qVersion()) + "; " + tr("GNU Lesser General Public License, version 3")},
           {"QCustomPlot", tr("GNU General Public License, version 3 or later")},
           {"SQLite", tr("public domain")},
           {"SQLiteCpp, fmt", tr("MIT licence")},
           {"Boost.Units", tr("Boost Software License 1.0")},
           {"tl::expected", tr("Creative Commons Zero 1.0")},
           {"nettle", tr("GNU Lesser General Public License, version 3 or later")},
           {"libcsv", tr("GNU Lesser General Public License, version 2.1 or later")}}};
}

} // namespace

Result<PageContent> table_content(const Place& place, const std::string& table, const std::string& words) {
  const auto answer = specdb::read_table(*place.catalogue, table, words_in(words));
  if (!answer) return Refusal(answer.error());
  PageContent content;
  content.document = specdb::table_document(*answer, words);
  return content;
}

PageContent about_content(const Place& place) {
  PageContent content;
  content.document.title = tr("Clampwright: torque and clamp load for the service bench");
  content.document.sections = {cautions(), keys(), parts(place)};
  return content;
}

} // namespace clampwright::desk
