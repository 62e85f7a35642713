// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <map>
#include <optional>
#include <set>
#include <vector>

#include <QHash>
#include <QRegularExpression>
#include <QString>

namespace clampwright::desk {

// Sentences of one language for those of another.
class SentenceTable {
 public:
  // Lines "from, tab, to"; empty lines and those that begin with # are passed over. A line without a tab, or whose
  // places (%1 …) differ between the two, is a fault: it is left out and named in faults().
  explicit SentenceTable(const QString& lines);

  [[nodiscard]] QString translated(const QString& text) const;
  [[nodiscard]] const std::set<QString>& not_found() const { return not_found_; }
  [[nodiscard]] const QStringList& faults() const { return faults_; }
  // The line for just this text, its places not filled in; null where there is none.
  [[nodiscard]] QString line(const QString& from) const;
  // Every line's first part.
  [[nodiscard]] QStringList sources() const;

 private:
  struct Pattern {
    QString from;
    QString begins; // the letters before the first place
    QRegularExpression shape;
    std::vector<int> places; // in the order in which they stand: 1 for %1
    QString to;
    qsizetype letters; // that are not places: the more, the closer it fits
  };
  void add(const QString& line);
  [[nodiscard]] std::optional<QString> whole(const QString& text, int depth) const;
  [[nodiscard]] QString parts(const QString& text, int depth) const;
  [[nodiscard]] QString translated(const QString& text, int depth) const;

  QHash<QString, QString> exact_; // every line, its places as they stand
  std::vector<Pattern> patterns_; // the closest first
  QStringList faults_;
  mutable std::set<QString> not_found_;
};

} // namespace clampwright::desk
