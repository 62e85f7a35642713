// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/bench.hpp"

#include <algorithm>
#include <utility>

#include <QLocale>

#include "gui/look/utf8.hpp"
#include "gui/text/wording.hpp"

namespace clampwright::desk {

namespace {

const quantity::Unit* torque_unit_named(const std::string& name) {
  for (const quantity::Unit& unit : quantity::all_units())
    if (unit.kind == quantity::Kind::torque && unit.name == name) return &unit;
  return nullptr;
}

} // namespace

Bench::Bench(Memory& memory, Today today, QObject* parent)
    : QObject(parent), memory_(memory), today_(std::move(today)), catalogue_(std::make_unique<specdb::Catalogue>()) {
  take_up();
}

Bench::~Bench() = default;

void Bench::take_up() {
  const QString theme = memory_.text(Kept::theme);
  look_.theme = theme.isEmpty() ? system_theme() : theme == QStringLiteral("dark") ? Theme::dark : Theme::light;
  const QString language = memory_.text(Kept::language);
  speak(language.isEmpty() ? QLocale::system().name().left(2) : language);
  look_.bench = memory_.is(Kept::bench);
  look_.scale = std::clamp(memory_.get(Kept::scale).toInt(), 100, 300) / 100.0;
  imperial_ = memory_.is(Kept::imperial);
  torque_unit_ = torque_unit_named(to_utf8(memory_.text(Kept::torque_unit)));
  wrench_ = to_utf8(memory_.text(Kept::wrench));
}

void Bench::put_on_look(const Look& look) {
  if (look == look_) return;
  look_ = look;
  memory_.keep(Kept::theme, look.theme == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light"));
  memory_.keep(Kept::bench, look.bench);
  memory_.keep(Kept::scale, static_cast<int>(look.scale * 100 + 0.5));
  emit look_changed();
}

Place Bench::place() const {
  Place place;
  place.catalogue = catalogue_.get();
  place.workshop = workshop_.get();
  if (imperial_) place.units = quantity::DisplayUnits::imperial();
  if (torque_unit_ != nullptr) place.units.prefer(*torque_unit_);
  place.today = today_();
  return place;
}

void Bench::use_imperial(bool imperial) {
  imperial_ = imperial;
  memory_.keep(Kept::imperial, imperial);
  emit changed();
}

void Bench::use_torque_unit(const quantity::Unit* unit) {
  torque_unit_ = unit;
  memory_.keep(Kept::torque_unit, unit == nullptr ? QString() : from_utf8(unit->name));
  emit changed();
}

void Bench::speak_language(const QString& language) {
  memory_.keep(Kept::language, language);
  speak(language);
  emit language_changed();
}

void Bench::take_wrench(const std::string& slug) {
  if (slug == wrench_) return;
  wrench_ = slug;
  memory_.keep(Kept::wrench, from_utf8(slug));
  emit changed();
}

bool Bench::is_invented() const { return workshop_ && workshop_->is_invented(); }

void Bench::show_workshop(std::shared_ptr<const specdb::Workshop> workshop, const std::filesystem::path& path) {
  // Whoever hears of the change may still hold pointers into what was shown before.
  const std::shared_ptr<const specdb::Workshop> before = std::exchange(workshop_, std::move(workshop));
  path_ = path;
  emit workshop_changed();
  emit changed();
}

} // namespace clampwright::desk
