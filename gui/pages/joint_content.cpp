// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/joint_content.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "gui/drawings/band_picture.hpp"
#include "gui/drawings/crank_picture.hpp"
#include "gui/drawings/turn_arrows.hpp"
#include "gui/drawings/turn_words.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/case_fields.hpp"
#include "specdb/question/joint_question.hpp"
#include "specdb/question/joint_report.hpp"
#include "specdb/question/sequence_question.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("JointContent", english); }

constexpr const char* k_torque = "Torque";
constexpr const char* k_beside = "Also in force";

// A row of the document and those that go on from it.
using Group = std::vector<std::string>;

std::vector<Group> groups_of(const report::Section& section, std::string_view label) {
  std::vector<Group> groups;
  bool within = false;
  for (const report::Row& row : section.rows) {
    if (!row.label.empty()) within = row.label == label;
    if (!within) continue;
    if (!row.label.empty()) groups.emplace_back();
    groups.back().push_back(row.value);
  }
  return groups;
}

// The figure as printed, and below it all that the document says of it, so that its rows need not be shown again. Where
// the page gives none that can be used, that is the big word.
Figure printed_figure(const specdb::FigureRecord& figure, const Group& group) {
  Figure out;
  out.value = figure.value ? from_utf8(figure.printed) : tr("No figure");
  for (const std::string& line : group) {
    QString words = worded(line);
    // "42 N·m ± 5 %, as printed": what stands large is not said again.
    if (figure.value && &line == &group.front() && words.startsWith(out.value)) {
      words = words.mid(out.value.size());
      while (words.startsWith(QLatin1Char(',')) || words.startsWith(QLatin1Char(' ')))
        words.remove(0, 1);
    }
    if (out.says.isEmpty())
      out.says = words;
    else
      out.more.push_back(words);
  }
  return out;
}

// The first in force and, as large, those that stand against it, each with its source and surfaces.
std::vector<Figure> figures_in_force(const specdb::JointAnswer& answer, const report::Section& glance) {
  std::vector<Figure> figures;
  for (const Group& group : groups_of(glance, k_torque))
    figures.push_back(printed_figure(answer.figure.figure, group));
  const std::vector<Group> beside = groups_of(glance, k_beside);
  for (std::size_t i = 0; i < std::min(beside.size(), answer.beside.size()); ++i) {
    figures.push_back(printed_figure(answer.beside[i].figure, beside[i]));
    figures.back().is_rival = true;
  }
  if (!beside.empty() && !figures.empty())
    for (const Group& group : groups_of(glance, "Surfaces"))
      figures.front().more.push_back(tr("surfaces %1").arg(worded(group.front())));
  return figures;
}

// The same in the wanted unit, where the page uses another.
std::optional<Figure> converted(const specdb::JointAnswer& answer, const Place& place) {
  if (!answer.figure.torque || !answer.not_to_be_used_because.empty()) return std::nullopt;
  const auto& unit = answer.figure.figure.unit;
  if (unit && *unit == place.units.torque->name) return std::nullopt;
  return Figure{QStringLiteral("= ") + from_utf8(quantity::write(*answer.figure.torque, place.units)),
                tr("in the unit you want")};
}

// The torque on other surfaces than the page is for, by each of the ways to reckon it: they differ, and none is the
// maker's.
std::optional<Figure> as_fitted(const specdb::JointAnswer& answer, const Place& place) {
  if (!answer.as_fitted || !answer.as_fitted->differs || !answer.as_fitted->torque) return std::nullopt;
  const specdb::AsFitted& fitted = *answer.as_fitted;
  std::vector<quantity::Torque> ways{*fitted.torque};
  if (fitted.by_thread_friction) ways.push_back(*fitted.by_thread_friction);
  for (const specdb::RivalReduction& rival : fitted.rivals)
    ways.push_back(rival.torque);
  const QString surfaces = from_utf8(fitted.surfaces);
  const QString all = torque_range(ways, place);
  const QString corrected = from_utf8(quantity::write(*fitted.torque, place.units));
  if (all == corrected) return Figure{all, tr("corrected for %1; not the maker's").arg(surfaces)};
  return Figure{all, tr("for %1, by rules that differ; none is the maker's. Below: %2").arg(surfaces, corrected)};
}

// What must go along where somebody takes only the figure.
std::vector<QString> essentials_of(const specdb::JointAnswer& answer, const report::Section& glance) {
  std::vector<QString> out{tr("tighten %1, %2").arg(turn_word(answer.tighten), worded(answer.joint.seen_from))};
  for (const Group& group : groups_of(glance, "Surfaces"))
    out.push_back(tr("surfaces %1").arg(worded(group.front())));
  for (const Group& group : groups_of(glance, "Source"))
    out.push_back(worded(group.front()));
  return out;
}

std::optional<Figure> setting(const specdb::JointAnswer& answer) {
  if (!answer.wrench) return std::nullopt;
  const specdb::WrenchAnswer& wrench = *answer.wrench;
  const QString name = from_utf8(wrench.wrench.name);
  if (!wrench.setting.setting || !wrench.setting.suitable)
    return Figure{tr("no setting"), tr("%1: see below why").arg(name)};
  return Figure{QStringLiteral("%1 %2").arg(from_utf8(quantity::write_number(*wrench.setting.setting, 6)),
                                            from_utf8(wrench.wrench.unit->symbol)),
                tr("set %1").arg(name)};
}

std::vector<QString> flags_of(const specdb::JointAnswer& answer) {
  std::vector<QString> flags;
  if (!answer.not_to_be_used_because.empty())
    flags.push_back(tr("Do not tighten by it: %1").arg(worded(answer.not_to_be_used_because)));
  if (answer.thread.thread.hand == thread::Hand::left) flags.push_back(tr("Left-hand thread"));
  for (const friction::Lock& lock : answer.locks)
    if (lock.family != friction::LockFamily::none) flags.push_back(tr("Lock: %1").arg(worded(lock.description)));
  return flags;
}

// The order of the bolts where it is computed. On other surfaces the rounds are shares: those of the page are for its
// own torque.
std::optional<Drawing> computed_order(const specdb::JointAnswer& answer, const Place& place) {
  if (!answer.order) return std::nullopt;
  const bool on_others = answer.as_fitted && answer.as_fitted->differs;
  specdb::SequenceQuestion question;
  question.unit = place.units.torque;
  if (on_others) {
    question.bolts = quantity::write_number(answer.joint.quantity, 3);
    question.pattern = tightening::pattern_name(answer.order->pattern);
    question.unit = nullptr;
  }
  const auto reply = specdb::answer_sequence(question, on_others ? nullptr : &answer);
  if (!reply) return std::nullopt;
  return order_picture(reply->sequence, answer.joint.seen_from);
}

void add_band(std::vector<Placed>& drawings, const std::optional<tightening::ClampAnswer>& clamp, const Place& place,
              int behind_section) {
  if (!clamp) return;
  if (auto picture = band_picture(*clamp, place.units)) drawings.push_back({std::move(*picture), behind_section});
}

std::vector<Placed> drawings_of(const specdb::JointAnswer& answer, const Place& place) {
  const bool left_hand = answer.thread.thread.hand == thread::Hand::left;
  const std::string side = to_utf8(worded(answer.joint.seen_from));
  std::vector<Placed> drawings;
  drawings.push_back({turn_arrows(answer.tighten, answer.undo, side, left_hand)});
  if (answer.stop)
    drawings.push_back({crank_picture(*answer.stop, crank::WrenchTurns{answer.tighten, answer.undo, side}, place.units),
                        1, "Piston stop"});
  if (auto picture = computed_order(answer, place)) drawings.push_back({std::move(*picture), 1, "Sequence"});
  if (answer.beside.empty()) {
    const auto& clamp = answer.as_fitted && answer.as_fitted->clamp ? answer.as_fitted->clamp : answer.figure.clamp;
    add_band(drawings, clamp, place, 1);
    return drawings;
  }
  // Each of several figures has a section of its own for what it clamps.
  int section = 1;
  add_band(drawings, answer.figure.clamp, place, answer.figure.clamp ? ++section : section);
  for (const specdb::FigureAnswer& other : answer.beside)
    add_band(drawings, other.clamp, place, other.clamp ? ++section : section);
  return drawings;
}

} // namespace

PageContent joint_content(const specdb::JointAnswer& answer, const Place& place, bool invented) {
  PageContent content;
  content.blank_names = names_for({});
  const specdb::JointRecord& joint = answer.joint;
  content.document = specdb::joint_report(answer, place.units, invented);
  content.document.title = joint.name;
  content.where = QStringLiteral("%1 / %2 [%3]")
                      .arg(from_utf8(joint.machine.name), from_utf8(joint.assembly), from_utf8(joint.slug));
  content.figures = figures_in_force(answer, content.document.sections.front());
  if (auto figure = converted(answer, place)) content.figures.push_back(std::move(*figure));
  if (auto figure = as_fitted(answer, place)) content.figures.push_back(std::move(*figure));
  if (auto figure = setting(answer)) content.figures.push_back(std::move(*figure));
  content.rows_shown_above = {k_torque, k_beside, "Tighten", "Undo"};
  if (!answer.beside.empty()) content.rows_shown_above.emplace_back("Surfaces");
  content.flags = flags_of(answer);
  content.essentials = essentials_of(answer, content.document.sections.front());
  content.drawings = drawings_of(answer, place);
  return content;
}

Words words_for(const Sentence& sentence, const specdb::JointAnswer& answer) {
  Words words;
  const auto put = [&](std::string_view option, const std::optional<std::string>& text) {
    if (text && !text->empty() && sentence.blank(option) != nullptr) words[std::string(option)] = *text;
  };
  const specdb::JointRecord& joint = answer.joint;
  if (sentence.blank("--joint") != nullptr || sentence.blank("JOINT") != nullptr) {
    put("--joint", joint.slug);
    put("JOINT", joint.slug);
    if (answer.wrench) put("--wrench", answer.wrench->slug);
    return words;
  }
  const specdb::FigureRecord& figure = answer.figure.figure;
  const specdb::CaseQuestion question = specdb::question_of(joint, figure);
  put("THREAD", question.thread);
  put("--thread", question.thread);
  for (const specdb::CaseField& field : specdb::k_case_fields)
    put(field.option, question.*field.text);
  put("--stated", question.surfaces);
  std::string locks;
  for (const std::string& lock : question.locks)
    locks += (locks.empty() ? "" : " + ") + lock;
  // A chart has no row for a class that is not known, and of several locks one compound cures.
  if (sentence.id == "chart" && question.strength_class == "unknown") words.erase("--class");
  if (sentence.id == "cure") {
    const auto compound = std::ranges::find(answer.locks, friction::LockFamily::compound, &friction::Lock::family);
    locks = compound == answer.locks.end() ? std::string() : compound->name;
  }
  put("--lock", locks);
  if (!question.locks.empty()) put("NAME", question.locks.front());
  put("--material", joint.mating_material);
  put("--into", joint.mating_material);
  put("--grip", joint.grip);
  put("--bolt-length", joint.bolt_length);
  put("--part-material", joint.seat_material ? joint.seat_material : joint.mating_material);
  // A length on record is thread that bears, all of it.
  put("--length", joint.engagement);
  if (joint.engagement) put("--incomplete", "0");
  if (figure.angle_deg) put("--angle", quantity::write_number(*figure.angle_deg, 9) + " deg");
  if (figure.value && figure.unit) {
    const std::string torque = quantity::write_number(*figure.value, 9) + " " + *figure.unit;
    for (const char* option : {"--torque", "--snug", "QUANTITY"})
      put(option, torque);
  }
  // What a torque does to a thread is asked with both; what makes a clamp load of it says nothing without it.
  if (sentence.id == "strip" && !(words.contains("--torque") && words.contains("--length")))
    for (const char* option : {"--torque", "--surfaces", "--mu", "--nut-factor", "--head", "--washer"})
      words.erase(option);
  return words;
}

} // namespace clampwright::desk
