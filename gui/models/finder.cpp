// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/finder.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QStringList>

#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "core/text/slips.hpp"
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

FoundLine thread_line(const std::string& thread) {
  return {tr("Thread"),
          from_utf8(thread),
          tr("dimensions, holes, nuts, spanners"),
          {Target::To::sentence, "thread", {{"THREAD", thread}}}};
}

// Those whose name begins so, else the one that is written in another way: "M8x1.25" is the coarse M8.
void add_threads(std::vector<FoundLine>& lines, const specdb::Catalogue& catalogue,
                 const std::vector<std::string>& threads, const QString& typed) {
  const QString wanted = bare(typed);
  if (wanted.isEmpty()) return;
  std::size_t found = 0;
  for (const std::string& thread : threads)
    if (bare(from_utf8(thread)).startsWith(wanted) && found++ < k_most_of_others) lines.push_back(thread_line(thread));
  if (found > 0 || std::ranges::none_of(typed, [](QChar c) { return c.isDigit(); })) return;
  if (const auto one = specdb::find_thread(catalogue, to_utf8(typed)))
    lines.push_back(thread_line(thread::write_designation(one->thread)));
}

void add_classes(std::vector<FoundLine>& lines, const std::vector<std::string>& classes, const QString& typed) {
  const QString wanted = bare(typed);
  if (wanted.isEmpty()) return;
  for (const std::string& name : classes)
    if (bare(from_utf8(name)).startsWith(wanted))
      lines.push_back({tr("Class"),
                       from_utf8(name),
                       tr("what it bears"),
                       {Target::To::table, "strength-classes", {{k_table_words, name}}}});
}

// In any spelling that a quantity may have behind its number: "Nm", "ft-lb".
void add_units(std::vector<FoundLine>& lines, const QString& typed) {
  if (!typed.front().isLetter()) return;
  const auto read = quantity::read_quantity("1 " + to_utf8(typed));
  if (!read) return;
  lines.push_back({tr("Unit"),
                   from_utf8(read->unit->symbol),
                   tr("convert"),
                   {Target::To::sentence, "convert", {{"UNIT", std::string(read->unit->name)}}}});
}

// One letter in three may be wrong, as in the names of joints; shorter words are all near to one another.
bool is_near(const QString& typed, const QString& word) {
  constexpr qsizetype k_letters_a_slip = 3;
  const auto slips = text::slips(typed.toStdU32String(), word.toStdU32String());
  return typed.size() > k_letters_a_slip && static_cast<qsizetype>(slips.whole) <= typed.size() / k_letters_a_slip;
}

// Each typed word begins a word of the text, or is one with a slip in it.
bool nearly_fits(const QString& text, const QStringList& typed) {
  const QStringList words = text.toCaseFolded().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return std::ranges::all_of(typed, [&](const QString& one) {
    return std::ranges::any_of(words, [&](const QString& word) { return word.startsWith(one) || is_near(one, word); });
  });
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
    : catalogue_(catalogue), classes_(specdb::class_names(catalogue)), tables_(specdb::reference_tables(catalogue)) {
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
  std::vector<FoundLine> nearly;
  for (FoundLine& line : page_lines()) {
    const Sentence* sentence = sentence_named(line.target.key);
    const QString also = sentence == nullptr ? QString() : QCoreApplication::translate("Sentences", sentence->also);
    const QString all = QStringList{line.kind, line.title, line.detail, also}.join(QLatin1Char(' '));
    if (fits(all, words))
      found.lines.push_back(std::move(line));
    else if (nearly_fits(all, words))
      nearly.push_back(std::move(line));
  }
  add_threads(found.lines, catalogue_, threads_, text);
  add_classes(found.lines, classes_, text);
  add_units(found.lines, text);
  for (const specdb::TableSummary& table : tables_)
    if (fits(from_utf8(table.name + " " + text::without_hyphens(table.name) + " " + table.holds), words))
      found.lines.push_back({tr("Table"),
                             from_utf8(text::without_hyphens(table.name)),
                             worded(table.holds),
                             {Target::To::table, table.name}});
  if (found.lines.empty() && !nearly.empty()) {
    found.lines = std::move(nearly);
    found.note = tr("Nothing is called “%1”; this is near it.").arg(text);
  }
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
