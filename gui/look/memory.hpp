// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the desk remembers from one day to the next. All of it stands in one table (memory.cpp): key, kind, default.
#pragma once

#include <memory>
#include <vector>

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <QVariant>

namespace clampwright::desk {

enum class Kept {
  theme,         // "light", "dark", "" for that of the system
  bench,         // bool
  scale,         // per cent: 100 to 300
  language,      // "en", "de", "" for that of the system
  imperial,      // bool: which units stand first
  torque_unit,   // name of a unit, "" for that of the system of units
  wrench,        // slug, "" for none
  workshop,      // the file that was open last
  window_place,  // QByteArray
  splitter,      // QByteArray
  paper_size,    // "A4", "Letter"
  last_sentence, // id of the calculator that was open last
};

struct KeptRow {
  Kept what;
  const char* key;
  QVariant normally;
};
[[nodiscard]] const std::vector<KeptRow>& kept_rows();
[[nodiscard]] const KeptRow& row_of(Kept what);

class Memory {
 public:
  virtual ~Memory() = default;
  // The default where nothing was kept, or what was kept is of another kind.
  [[nodiscard]] QVariant get(Kept what) const;
  [[nodiscard]] QString text(Kept what) const { return get(what).toString(); }
  [[nodiscard]] bool is(Kept what) const { return get(what).toBool(); }
  void keep(Kept what, const QVariant& value);

 private:
  [[nodiscard]] virtual QVariant read(const QString& key) const = 0; // invalid: nothing kept
  virtual void write(const QString& key, const QVariant& value) = 0;
};

// In the user's settings, or in the given file.
[[nodiscard]] std::unique_ptr<Memory> settings_memory(const QString& file = {});
// Forgets with the program: for pictures and tests.
[[nodiscard]] std::unique_ptr<Memory> short_memory();

} // namespace clampwright::desk
