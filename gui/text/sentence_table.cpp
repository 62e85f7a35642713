// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/text/sentence_table.hpp"

#include <algorithm>

namespace clampwright::desk {

namespace {

constexpr int k_deepest = 6;

// Where a text is taken apart, the strongest first.
constexpr std::array k_joints{". ", "; ", ": ", " – ", ", ", " (", ")"};

const QRegularExpression& place_sign() {
  static const QRegularExpression sign(QStringLiteral("%([1-9])"));
  return sign;
}

std::vector<int> places_in(const QString& text) {
  std::vector<int> places;
  auto match = place_sign().globalMatch(text);
  while (match.hasNext())
    places.push_back(match.next().captured(1).toInt());
  return places;
}

// A word of a language, not a unit, a sign or a designation: three small letters in a row.
bool has_words(const QString& text) {
  static const QRegularExpression word(QStringLiteral("(?<![\\w.])[A-Za-z]?[a-z]{3,}(?!\\w)"));
  return word.match(text).hasMatch();
}

} // namespace

SentenceTable::SentenceTable(const QString& lines) {
  for (const QString& line : lines.split(QLatin1Char('\n')))
    if (!line.isEmpty() && !line.startsWith(QLatin1Char('#'))) add(line);
  std::ranges::stable_sort(patterns_, std::greater<>(), &Pattern::letters);
}

void SentenceTable::add(const QString& line) {
  const qsizetype tab = line.indexOf(QLatin1Char('\t'));
  const QString from = line.left(tab);
  const QString to = line.mid(tab + 1);
  std::vector<int> places = places_in(from);
  std::vector<int> others = places_in(to);
  std::ranges::sort(others);
  std::vector<int> sorted = places;
  std::ranges::sort(sorted);
  if (tab <= 0 || to.isEmpty() || sorted != others || std::ranges::adjacent_find(sorted) != sorted.end()) {
    faults_ << line;
    return;
  }
  exact_.insert(from, to);
  if (places.empty()) return;
  QString shape = QRegularExpression::escape(from);
  shape.replace(QRegularExpression(QStringLiteral("\\\\%[1-9]")), QStringLiteral("(.+?)"));
  patterns_.push_back({from, from.left(from.indexOf(place_sign())),
                       QRegularExpression(QRegularExpression::anchoredPattern(shape)), std::move(places), to,
                       from.size() - 2 * static_cast<qsizetype>(others.size())});
}

QString SentenceTable::line(const QString& from) const { return exact_.value(from); }

QStringList SentenceTable::sources() const { return exact_.keys(); }

QString SentenceTable::translated(const QString& text) const { return translated(text, 0); }

QString SentenceTable::translated(const QString& text, int depth) const {
  if (!has_words(text)) return text;
  if (auto found = whole(text, depth)) return *found;
  return parts(text, depth);
}

std::optional<QString> SentenceTable::whole(const QString& text, int depth) const {
  if (const auto found = exact_.find(text); found != exact_.end()) return *found;
  if (depth >= k_deepest) return std::nullopt;
  for (const Pattern& pattern : patterns_) {
    if (!text.startsWith(pattern.begins)) continue;
    const auto match = pattern.shape.match(text);
    if (!match.hasMatch()) continue;
    QString out;
    qsizetype at = 0;
    auto signs = place_sign().globalMatch(pattern.to);
    while (signs.hasNext()) {
      const auto sign = signs.next();
      const auto place = std::ranges::find(pattern.places, sign.captured(1).toInt()) - pattern.places.begin();
      out += pattern.to.mid(at, sign.capturedStart() - at);
      out += translated(match.captured(static_cast<int>(place) + 1), depth + 1);
      at = sign.capturedEnd();
    }
    return out + pattern.to.mid(at);
  }
  return std::nullopt;
}

QString SentenceTable::parts(const QString& text, int depth) const {
  if (depth < k_deepest)
    for (const char* joint : k_joints) {
      const QString between = QLatin1String(joint);
      const qsizetype at = text.indexOf(between);
      if (at <= 0 && between.size() > 1) continue;
      if (at < 0) continue;
      // The full stop belongs to its sentence.
      const qsizetype kept = joint == k_joints.front() ? 1 : 0;
      return translated(text.left(at + kept), depth + 1) + between.mid(kept) +
             translated(text.mid(at + between.size()), depth + 1);
    }
  const QString bare = text.trimmed();
  if (has_words(bare)) not_found_.insert(bare);
  return text;
}

} // namespace clampwright::desk
