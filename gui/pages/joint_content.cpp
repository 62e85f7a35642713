// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/joint_content.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "gui/drawings/band_picture.hpp"
#include "gui/look/utf8.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/case_fields.hpp"
#include "specdb/question/joint_question.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("JointContent", english); }

// The figure as printed. Where the page gives none that can be used, that is the big word.
Figure main_figure(const specdb::JointAnswer& answer) {
  const specdb::FigureRecord& figure = answer.figure.figure;
  if (!figure.value) return {tr("No figure"), from_utf8(figure.printed)};
  return {from_utf8(figure.printed), tr("as printed")};
}

// The same in the wanted unit, where the page uses another.
std::optional<Figure> converted(const specdb::JointAnswer& answer, const Place& place) {
  if (!answer.figure.torque || !answer.not_to_be_used_because.empty()) return std::nullopt;
  const auto& unit = answer.figure.figure.unit;
  if (unit && *unit == place.units.torque->name) return std::nullopt;
  return Figure{QStringLiteral("= ") + from_utf8(quantity::write(*answer.figure.torque, place.units)),
                tr("in the unit you want")};
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

} // namespace

PageContent joint_content(const specdb::JointAnswer& answer, const Place& place, bool invented) {
  PageContent content;
  const specdb::JointRecord& joint = answer.joint;
  content.document = specdb::joint_report(answer, place.units, invented);
  content.document.title = joint.name;
  content.where = QStringLiteral("%1 / %2 [%3]")
                      .arg(from_utf8(joint.machine.name), from_utf8(joint.assembly), from_utf8(joint.slug));
  content.figures.push_back(main_figure(answer));
  if (auto figure = converted(answer, place)) content.figures.push_back(std::move(*figure));
  if (auto figure = setting(answer)) content.figures.push_back(std::move(*figure));
  content.flags = flags_of(answer);
  const auto& clamp = answer.as_fitted && answer.as_fitted->clamp ? answer.as_fitted->clamp : answer.figure.clamp;
  if (clamp)
    if (auto picture = band_picture(*clamp, place.units)) content.drawings.push_back({std::move(*picture), 1});
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
