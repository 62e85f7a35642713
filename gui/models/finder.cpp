// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/finder.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QStringList>

#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "gui/look/utf8.hpp"
#include "gui/text/wording.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/workshop/browse.hpp"
#include "specdb/workshop/search.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Finder", english); }

constexpr std::size_t k_most_joints = 60;
constexpr std::size_t k_most_of_others = 12;

// Every typed word begins a word of the text.
bool fits(const QString& text, const QStringList& typed) {
  const QStringList words = text.toCaseFolded().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return std::ranges::all_of(typed, [&](const QString& one) {
    return std::ranges::any_of(words, [&](const QString& word) { return word.startsWith(one); });
  });
}

// Without what people write in more than one way: "M10 fine", "m10x1.25", "M10 × 1.25".
QString bare(const QString& text) {
  QString out;
  for (const QChar c : text.toCaseFolded())
    if (c == QChar(0x00D7))
      out += QLatin1Char('x');
    else if (c != QLatin1Char(' ') && c != QLatin1Char('-') && c != QLatin1Char('"'))
      out += c;
  return out;
}

FoundLine joint_line(const specdb::Hit& hit) {
  QString detail = QStringLiteral("%1 / %2").arg(from_utf8(hit.machine), from_utf8(hit.assembly));
  detail += QStringLiteral("; ") + (hit.torque_printed ? from_utf8(*hit.torque_printed) : tr("no figure"));
  return {tr("Joint"), from_utf8(hit.name), detail, {Target::To::joint, hit.joint}};
}

// Those whose name has every typed word; all for none.
void add_machines(std::vector<FoundLine>& lines, const std::vector<specdb::MachineLine>& machines,
                  const QStringList& typed) {
  for (const specdb::MachineLine& machine : machines)
    if (fits(from_utf8(machine.name + " " + machine.kind + " " + machine.slug), typed))
      lines.push_back(
          {tr("Machine"),
           from_utf8(machine.name),
           QStringLiteral("%1; %2").arg(from_utf8(machine.kind),
                                        machine.joints == 1 ? tr("one joint") : tr("%1 joints").arg(machine.joints)),
           {Target::To::machine, machine.slug}});
}

void add_threads(std::vector<FoundLine>& lines, const std::vector<std::string>& threads, const QString& typed) {
  const QString wanted = bare(typed);
  std::size_t found = 0;
  for (const std::string& thread : threads)
    if (bare(from_utf8(thread)).startsWith(wanted) && found++ < k_most_of_others)
      lines.push_back({tr("Thread"),
                       from_utf8(thread),
                       tr("dimensions, holes, nuts, spanners"),
                       {Target::To::sentence, "thread", {{"THREAD", thread}}}});
}

void add_classes(std::vector<FoundLine>& lines, const std::vector<std::string>& classes, const QString& typed) {
  const QString wanted = bare(typed);
  for (const std::string& name : classes)
    if (bare(from_utf8(name)).startsWith(wanted))
      lines.push_back({tr("Class"),
                       from_utf8(name),
                       tr("what it bears"),
                       {Target::To::table, "strength-classes", {{k_table_words, name}}}});
}

void add_units(std::vector<FoundLine>& lines, const QString& typed) {
  for (const quantity::Unit& unit : quantity::all_units())
    if (from_utf8(unit.symbol).toCaseFolded() == typed.toCaseFolded() ||
        from_utf8(unit.name).toCaseFolded() == typed.toCaseFolded())
      lines.push_back({tr("Unit"),
                       from_utf8(unit.symbol),
                       tr("convert"),
                       {Target::To::sentence, "convert", {{"UNIT", std::string(unit.name)}}}});
}

} // namespace

std::vector<FoundLine> page_lines() {
  std::vector<FoundLine> lines;
  for (const Sentence& sentence : sentences())
    lines.push_back({tr("Calculator"),
                     QCoreApplication::translate("Sentences", sentence.name),
                     from_utf8(sentence.command),
                     {Target::To::sentence, sentence.id}});
  lines.push_back({tr("Records"), tr("Machines and joints"), tr("enter, revise"), {Target::To::records, "machines"}});
  lines.push_back({tr("Records"), tr("Torque wrenches"), tr("enter, revise"), {Target::To::records, "wrenches"}});
  lines.push_back(
      {tr("Records"), tr("Documents"), tr("from which figures are taken"), {Target::To::records, "documents"}});
  lines.push_back({tr("Help"), tr("Cautions, keys, versions and licences"), {}, {Target::To::about}});
  return lines;
}

Finder::Finder(const specdb::Catalogue& catalogue)
    : classes_(specdb::class_names(catalogue)), tables_(specdb::reference_tables(catalogue)) {
  for (const specdb::ThreadEntry& entry : specdb::all_threads(catalogue))
    threads_.push_back(thread::write_designation(entry.thread));
}

void Finder::take_up(const specdb::Workshop* workshop) {
  workshop_ = workshop;
  machines_ = workshop == nullptr ? std::vector<specdb::MachineLine>() : specdb::machines_with_counts(*workshop);
}

FoundLines Finder::find(const QString& typed) const {
  FoundLines found;
  const QString text = typed.trimmed();
  if (text.isEmpty()) {
    add_machines(found.lines, machines_, {});
    for (FoundLine& line : page_lines())
      found.lines.push_back(std::move(line));
    return found;
  }
  if (workshop_ != nullptr) {
    const specdb::Found joints = specdb::search(*workshop_, to_utf8(text), k_most_joints);
    for (const specdb::Hit& hit : joints.hits)
      found.lines.push_back(joint_line(hit));
    if (joints.more) found.note = tr("The first %1 joints; another word finds fewer.").arg(k_most_joints);
    if (!joints.read_as.empty()) found.note = tr("read as “%1”").arg(from_utf8(joints.read_as));
  }
  const QStringList words = text.toCaseFolded().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  add_machines(found.lines, machines_, words);
  for (FoundLine& line : page_lines()) {
    const Sentence* sentence = sentence_named(line.target.key);
    const QString also = sentence == nullptr ? QString() : QCoreApplication::translate("Sentences", sentence->also);
    if (fits(line.title + QLatin1Char(' ') + line.detail + QLatin1Char(' ') + also, words))
      found.lines.push_back(std::move(line));
  }
  add_threads(found.lines, threads_, text);
  add_classes(found.lines, classes_, text);
  add_units(found.lines, text);
  for (const specdb::TableSummary& table : tables_)
    if (fits(from_utf8(table.name + " " + text::without_hyphens(table.name) + " " + table.holds), words))
      found.lines.push_back({tr("Table"),
                             from_utf8(text::without_hyphens(table.name)),
                             worded(table.holds),
                             {Target::To::table, table.name}});
  if (found.lines.empty())
    found.note = tr("Nothing fits “%1”. Try fewer letters, a part (“head nut”), a thread (“M10”), a class (“8.8”) "
                    "or what is to be calculated (“hold”).")
                     .arg(text);
  return found;
}

FoundLines Finder::joints_of(const std::string& machine) const {
  FoundLines found;
  found.lines.push_back({tr("Back"), tr("All machines and pages"), {}, {Target::To::all_machines}});
  if (workshop_ == nullptr) return found;
  for (const specdb::Hit& joint : specdb::joints_of_machine(*workshop_, machine))
    found.lines.push_back(joint_line(joint));
  return found;
}

} // namespace clampwright::desk
