// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/look/memory.hpp"

#include <algorithm>
#include <map>
#include <vector>

#include <QSettings>

namespace clampwright::desk {

namespace {

class SettingsMemory : public Memory {
 public:
  explicit SettingsMemory(const QString& file)
      : settings_(file.isEmpty() ? std::make_unique<QSettings>(QSettings::IniFormat, QSettings::UserScope,
                                                               QStringLiteral("clampwright"), QStringLiteral("desk"))
                                 : std::make_unique<QSettings>(file, QSettings::IniFormat)) {}

 private:
  [[nodiscard]] QVariant read(const QString& key) const override { return settings_->value(key); }
  void write(const QString& key, const QVariant& value) override { settings_->setValue(key, value); }
  std::unique_ptr<QSettings> settings_;
};

class ShortMemory : public Memory {
 private:
  [[nodiscard]] QVariant read(const QString& key) const override {
    const auto found = kept_.find(key);
    return found == kept_.end() ? QVariant() : found->second;
  }
  void write(const QString& key, const QVariant& value) override { kept_[key] = value; }
  std::map<QString, QVariant> kept_;
};

} // namespace

const std::vector<KeptRow>& kept_rows() {
  static const std::vector<KeptRow> rows{
      {Kept::theme, "look/theme", QString()},
      {Kept::bench, "look/bench", false},
      {Kept::scale, "look/scale", 100},
      {Kept::language, "look/language", QString()},
      {Kept::imperial, "units/imperial", false},
      {Kept::torque_unit, "units/torque", QString()},
      {Kept::wrench, "bench/wrench", QString()},
      {Kept::workshop, "bench/workshop", QString()},
      {Kept::window_place, "window/place", QByteArray()},
      {Kept::splitter, "window/splitter", QByteArray()},
      {Kept::paper_size, "print/paper", QStringLiteral("A4")},
      {Kept::last_sentence, "window/sentence", QString()},
  };
  return rows;
}

const KeptRow& row_of(Kept what) { return *std::ranges::find(kept_rows(), what, &KeptRow::what); }

QVariant Memory::get(Kept what) const {
  const KeptRow& row = row_of(what);
  QVariant value = read(QLatin1String(row.key));
  if (!value.isValid()) return row.normally;
  // A settings file holds text; what cannot be read as the wanted kind was spoilt by hand.
  if (!value.convert(row.normally.metaType())) return row.normally;
  return value;
}

void Memory::keep(Kept what, const QVariant& value) { write(QLatin1String(row_of(what).key), value); }

std::unique_ptr<Memory> settings_memory(const QString& file) { return std::make_unique<SettingsMemory>(file); }
std::unique_ptr<Memory> short_memory() { return std::make_unique<ShortMemory>(); }

} // namespace clampwright::desk
