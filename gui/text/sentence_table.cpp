// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/text/sentence_table.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <QRegularExpression>

namespace clampwright::desk {

namespace {

constexpr int k_deepest = 8;
// Ways in which one line may fit one text, as where "to" stands in it three times.
constexpr std::size_t k_most_fillings = 6;
// A line with fewer letters, like "%1 to %2", fits many a text by chance: it is taken only where it leaves nothing.
constexpr int k_close_letters = 7;
// Texts with numbers are without end; so many are some hundred pages.
constexpr int k_most_kept = 8000;

// Where a text is taken apart, the strongest first.
const std::array k_joints{QStringLiteral(". "), QStringLiteral("; "),  QStringLiteral(": "), QStringLiteral(" – "),
                          QStringLiteral(", "), QStringLiteral(" / "), QStringLiteral("  ")};

const QString k_colon = QStringLiteral(": ");

const QRegularExpression& place_sign() {
  static const QRegularExpression sign(QStringLiteral("%(=?)([1-9])"));
  return sign;
}

std::vector<int> places_in(const QString& text) {
  std::vector<int> places;
  auto match = place_sign().globalMatch(text);
  while (match.hasNext())
    places.push_back(match.next().captured(2).toInt());
  return places;
}

// A word of a language, not a unit, a sign, a designation or an option's name: three small letters in a row.
bool has_words(const QString& text) {
  static const QRegularExpression word(QStringLiteral(
      "(?<![\\w.·-])(?!(?:lbf|kgf|ozf|psi|ksi|bar|rpm|mkg|mkp|deg|rad)\\b)[A-Za-z]?[a-z]{3,}(?![\\w·-])"));
  return word.match(text).hasMatch();
}

bool has_letters(const QString& text) {
  return std::ranges::any_of(text, [](QChar sign) { return sign.isLetter(); });
}

QStringList words_of(const QString& text) {
  QStringList words;
  QString word;
  for (const QChar sign : text + QLatin1Char(' '))
    if (sign.isLetter()) {
      word += sign;
    } else if (!word.isEmpty()) {
      words << word;
      word.clear();
    }
  return words;
}

// The longest word that surely stands alone in every text that fits; none where a place touches all of them.
QString key_of(const QStringList& between) {
  QString key;
  for (qsizetype i = 0; i < between.size(); ++i) {
    const QString& piece = between[i];
    const bool touches_place_before = i > 0 && !piece.isEmpty() && piece.front().isLetter();
    const bool touches_place_behind = i + 1 < between.size() && !piece.isEmpty() && piece.back().isLetter();
    QStringList words = words_of(piece);
    if (touches_place_before && !words.isEmpty()) words.removeFirst();
    if (touches_place_behind && !words.isEmpty()) words.removeLast();
    for (const QString& word : words)
      if (word.size() > key.size()) key = word;
  }
  return key;
}

// The strongest joint that stands in any of these; the count of joints where none does.
std::size_t strongest_joint(const QStringList& texts) {
  std::size_t strongest = 0;
  while (strongest < k_joints.size() &&
         std::ranges::none_of(texts, [&](const QString& text) { return text.contains(k_joints[strongest]); }))
    ++strongest;
  return strongest;
}

bool is_whole(const QString& text) {
  int open = 0;
  for (const QChar sign : text) {
    if (sign == QLatin1Char('(')) ++open;
    if (sign == QLatin1Char(')') && --open < 0) return false;
  }
  return open == 0 && !text.trimmed().isEmpty();
}

// All ways to put what is between the places onto the text, from left to right.
void fill(const QStringList& between, const QString& text, qsizetype at, std::vector<QString>& so_far,
          std::vector<std::vector<QString>>& found) {
  const auto next = static_cast<qsizetype>(so_far.size()) + 1;
  const QString& piece = between[next];
  const bool is_last = next + 1 == between.size();
  if (is_last) {
    const qsizetype end = text.size() - piece.size();
    if (end <= at || !text.endsWith(piece)) return;
    const QString place = text.mid(at, end - at);
    if (!is_whole(place)) return;
    so_far.push_back(place);
    found.push_back(so_far);
    so_far.pop_back();
    return;
  }
  for (qsizetype end = text.indexOf(piece, at + 1); end > 0 && found.size() < k_most_fillings;
       end = text.indexOf(piece, end + 1)) {
    const QString place = text.mid(at, end - at);
    if (!is_whole(place)) continue;
    so_far.push_back(place);
    fill(between, text, end + piece.size(), so_far, found);
    so_far.pop_back();
  }
}

// "J. Holm" is no sentence and another.
bool is_initial(const QString& text, qsizetype point) {
  return point >= 1 && text[point] == QLatin1Char('.') && text[point - 1].isUpper() &&
         (point == 1 || !text[point - 2].isLetterOrNumber());
}

// Cut at a joint that stands outside of brackets.
QStringList cut(const QString& text, const QString& joint) {
  QStringList pieces;
  int open = 0;
  qsizetype from = 0;
  for (qsizetype i = 0; i < text.size(); ++i) {
    if (text[i] == QLatin1Char('(')) ++open;
    if (text[i] == QLatin1Char(')')) --open;
    if (open != 0 || i == from || !QStringView(text).mid(i).startsWith(joint) || is_initial(text, i)) continue;
    pieces << text.mid(from, i - from);
    i += joint.size() - 1;
    from = i + 1;
  }
  pieces << text.mid(from);
  return pieces;
}

// Where the first bracket opens and where it closes; the same place twice where there is none.
std::pair<qsizetype, qsizetype> first_bracket(const QString& text) {
  static const QString k_open = QStringLiteral("([“„");
  static const QString k_close = QStringLiteral(")]”“");
  const auto* const first = std::ranges::find_if(text, [](QChar sign) { return k_open.contains(sign); });
  if (first == text.end()) return {0, 0};
  const qsizetype open = first - text.begin();
  const QChar closing = k_close[k_open.indexOf(*first)];
  int depth = 0;
  for (qsizetype i = open; i < text.size(); ++i) {
    if (text[i] == *first) ++depth;
    if (text[i] == closing && i > open && --depth == 0) return {open, i};
  }
  return {0, 0};
}

// Where the bracket opens with which the text ends; nowhere: -1.
qsizetype last_bracket(const QString& text) {
  static const QString k_open = QStringLiteral("([");
  static const QString k_close = QStringLiteral(")]");
  const qsizetype kind = text.isEmpty() ? -1 : k_close.indexOf(text.back());
  if (kind < 0) return -1;
  int depth = 0;
  for (qsizetype i = text.size() - 1; i >= 0; --i) {
    if (text[i] == k_close[kind]) ++depth;
    if (text[i] == k_open[kind] && --depth == 0) return i;
  }
  return -1;
}

// "grades are not mixed (AC 43.13-1B, para 2-12)" without its source.
QString before_bracket(const QString& text) {
  const qsizetype open = last_bracket(text);
  return open <= 0 ? QString() : text.left(open).trimmed();
}

} // namespace

qsizetype SentenceTable::Reading::letters_left() const {
  qsizetype letters = 0;
  for (const QString& part : left)
    letters += part.size();
  return letters;
}

SentenceTable::SentenceTable(const QString& lines) {
  for (const QString& line : lines.split(QLatin1Char('\n')))
    if (!line.isEmpty() && !line.startsWith(QLatin1Char('#'))) add(line);
  sort_patterns();
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
  if (tab <= 0 || to.isEmpty() || exact_.contains(from) || sorted != others ||
      std::ranges::adjacent_find(sorted) != sorted.end()) {
    faults_ << line;
    return;
  }
  exact_.insert(from, to);
  keep_target(to);
  if (places.empty()) return;
  const QStringList between = from.split(QRegularExpression(QStringLiteral("%[1-9]")));
  qsizetype letters = 0;
  for (const QString& piece : between)
    letters += std::ranges::count_if(piece, [](QChar sign) { return sign.isLetter(); });
  // Two places side by side could be parted anywhere, and places alone fit everything: only for tr().
  const bool side_by_side =
      std::any_of(between.begin() + 1, between.end() - 1, [](const QString& piece) { return piece.isEmpty(); });
  if (letters == 0 || side_by_side) return;
  patterns_.push_back({between, std::move(places), to, letters, strongest_joint(between), letters >= k_close_letters});
}

void SentenceTable::keep_target(const QString& to) {
  if (targets_.contains(to)) return;
  targets_.insert(to);
  for (const QString& joint : k_joints)
    if (const QStringList pieces = cut(to, joint); pieces.size() > 1)
      for (const QString& piece : pieces)
        keep_target(piece);
}

void SentenceTable::sort_patterns() {
  std::ranges::stable_sort(patterns_, std::greater<>(), &Pattern::letters);
  for (std::size_t i = 0; i < patterns_.size(); ++i)
    by_key_[key_of(patterns_[i].between)].push_back(i);
}

QString SentenceTable::line(const QString& from, int count) const {
  const auto found = exact_.find(from);
  if (found == exact_.end()) return {};
  const QStringList forms = found->split(QStringLiteral(" | "));
  return count == 1 ? forms.first() : forms.last();
}

QStringList SentenceTable::sources() const { return exact_.keys(); }

QString SentenceTable::translated(const QString& text) const {
  const Reading reading = read(text, 0);
  not_found_.insert(reading.left.begin(), reading.left.end());
  return reading.text;
}

std::vector<std::size_t> SentenceTable::patterns_for(const QString& text) const {
  std::vector<std::size_t> fitting = by_key_.value(QString());
  QStringList words = words_of(text);
  words.removeDuplicates();
  for (const QString& word : words)
    if (const auto found = by_key_.find(word); found != by_key_.end())
      fitting.insert(fitting.end(), found->begin(), found->end());
  std::ranges::sort(fitting);
  return fitting;
}

SentenceTable::Reading SentenceTable::read(const QString& text, int depth) const {
  const QString bare = text.trimmed();
  if (!has_letters(bare)) return {text, {}};
  const auto before = read_before_.find(bare);
  if (before == read_before_.end()) {
    Reading reading = read_bare(bare, depth);
    if (read_before_.size() >= k_most_kept) read_before_.clear();
    // What was given up for its depth may be read better from above.
    if (depth < k_deepest) read_before_.insert(bare, reading);
    if (bare.size() == text.size()) return reading;
    const qsizetype at = text.indexOf(bare);
    return {text.left(at) + reading.text + text.mid(at + bare.size()), std::move(reading.left)};
  }
  const qsizetype at = text.indexOf(bare);
  return {text.left(at) + before->text + text.mid(at + bare.size()), before->left};
}

SentenceTable::Reading SentenceTable::read_bare(const QString& text, int depth) const {
  if (const auto found = exact_.find(text); found != exact_.end()) return {*found, {}};
  if (targets_.contains(text)) return {text, {}};
  if (text.endsWith(QLatin1Char('.')))
    if (const auto found = exact_.find(text.chopped(1)); found != exact_.end()) return {*found + QLatin1Char('.'), {}};
  const Reading untouched{text, has_words(text) ? QStringList(text) : QStringList()};
  if (depth >= k_deepest) return untouched;
  std::optional<Reading> best;
  const auto consider = [&](Reading reading) {
    if (!best || reading.letters_left() < best->letters_left()) best = std::move(reading);
    return best->left.isEmpty();
  };
  if (auto reading = beside_bracket(text, depth); reading && consider(std::move(*reading))) return *best;
  if (auto reading = behind_label(text, depth); reading && consider(std::move(*reading))) return *best;
  std::vector<std::pair<const Pattern*, Filling>> over;
  for (const std::size_t i : patterns_for(text)) {
    const Pattern& pattern = patterns_[i];
    if (!text.startsWith(pattern.between.front()) || !text.endsWith(pattern.between.back())) continue;
    std::vector<Filling> fillings;
    Filling so_far;
    fill(pattern.between, text, pattern.between.front().size(), so_far, fillings);
    for (Filling& filling : fillings) {
      if (reaches_over(pattern, filling)) {
        over.emplace_back(&pattern, std::move(filling));
        continue;
      }
      Reading reading = begun_like(text, filled(pattern, filling, depth));
      if ((pattern.is_close || reading.left.isEmpty()) && consider(std::move(reading))) return *best;
    }
  }
  if (auto reading = by_parts(text, depth); reading && consider(std::move(*reading))) return *best;
  for (const auto& [pattern, filling] : over) {
    Reading reading = begun_like(text, filled(*pattern, filling, depth));
    if ((pattern->is_close || reading.left.isEmpty()) && consider(std::move(reading))) return *best;
  }
  return best ? *best : untouched;
}

bool SentenceTable::is_line(const QString& text) const {
  return exact_.contains(text) || exact_.contains(before_bracket(text));
}

qsizetype SentenceTable::label_end(const QString& text) const {
  for (qsizetype at = text.indexOf(k_colon); at > 0; at = text.indexOf(k_colon, at + 1))
    if (const QString line = text.mid(at + k_colon.size()); line.contains(k_joints[1]) && is_line(line)) return at;
  return -1;
}

bool SentenceTable::is_named_line(const QString& text) const {
  qsizetype at = -1;
  for (int words = 0; words < 3 && (at = text.indexOf(QLatin1Char(' '), at + 1)) > 0; ++words)
    if (!text[at - 1].isLetterOrNumber() || exact_.contains(text.mid(at + 1)))
      return text[at - 1].isLetterOrNumber() && text.indexOf(k_joints[1], at) > 0;
  return false;
}

std::optional<SentenceTable::Reading> SentenceTable::beside_bracket(const QString& text, int depth) const {
  const QString stop = text.endsWith(QLatin1Char('.')) ? QStringLiteral(".") : QString();
  const QString bare = text.chopped(stop.size());
  const auto found = exact_.find(before_bracket(bare));
  if (found == exact_.end()) return std::nullopt;
  const qsizetype open = last_bracket(bare);
  Reading out = read(bare.mid(open + 1, bare.size() - open - 2), depth + 1);
  out.text = *found + QLatin1Char(' ') + bare[open] + out.text + bare.back() + stop;
  return out;
}

std::optional<SentenceTable::Reading> SentenceTable::behind_label(const QString& text, int depth) const {
  static const QRegularExpression mark(QStringLiteral("^(?:\\([a-z]\\)|–) "));
  if (const auto match = mark.match(text); match.hasMatch() && match.capturedEnd() < text.size()) {
    Reading out = read(text.mid(match.capturedEnd()), depth + 1);
    out.text.prepend(match.captured());
    return out;
  }
  const qsizetype at = label_end(text);
  if (at < 0) return std::nullopt;
  Reading out = read(text.left(at), depth + 1);
  Reading line = read(text.mid(at + k_colon.size()), depth + 1);
  out.text += k_colon + line.text;
  out.left += line.left;
  return out;
}

// A sentence begins with a capital letter, whatever stands in its first place.
SentenceTable::Reading SentenceTable::begun_like(const QString& text, Reading reading) {
  if (text.front().isUpper() && text.endsWith(QLatin1Char('.')) && !reading.text.isEmpty())
    reading.text.front() = reading.text.front().toUpper();
  return reading;
}

bool SentenceTable::reaches_over(const Pattern& pattern, const Filling& filling) {
  for (std::size_t i = 0; i < filling.size(); ++i) {
    if (pattern.to.contains(QStringLiteral("%=%1").arg(pattern.places[i]))) continue;
    for (std::size_t joint = 0; joint < std::min(pattern.joint, k_joints.size()); ++joint)
      if (cut(filling[i], k_joints[joint]).size() > 1) return true;
  }
  return false;
}

SentenceTable::Reading SentenceTable::filled(const Pattern& pattern, const Filling& filling, int depth) const {
  Reading out;
  qsizetype at = 0;
  auto signs = place_sign().globalMatch(pattern.to);
  while (signs.hasNext()) {
    const auto sign = signs.next();
    const auto place = std::ranges::find(pattern.places, sign.captured(2).toInt()) - pattern.places.begin();
    const QString& text = filling[static_cast<std::size_t>(place)];
    const Reading inner = sign.captured(1).isEmpty() ? read(text, depth + 1) : Reading{text, {}};
    out.text += pattern.to.mid(at, sign.capturedStart() - at) + inner.text;
    out.left += inner.left;
    at = sign.capturedEnd();
  }
  out.text += pattern.to.mid(at);
  return out;
}

qsizetype SentenceTable::end_of_line_at(const QStringList& pieces, qsizetype from, const QString& joint) const {
  for (qsizetype end = pieces.size(); end > from + 1; --end) {
    QString whole = pieces.mid(from, end - from).join(joint);
    if (is_line(whole) || (joint == k_joints[1] && (label_end(whole) > 0 || is_named_line(whole)))) return end;
    if (whole.endsWith(QLatin1Char('.'))) whole.chop(1);
    if (exact_.contains(whole)) return end;
  }
  return from + 1;
}

std::optional<SentenceTable::Reading> SentenceTable::by_parts(const QString& text, int depth) const {
  for (const QString& joint : k_joints) {
    const QStringList pieces = cut(text, joint);
    if (pieces.size() < 2) continue;
    // The full stop belongs to its sentence.
    const qsizetype kept = joint == k_joints.front() ? 1 : 0;
    Reading out;
    for (qsizetype i = 0; i < pieces.size();) {
      const qsizetype end = end_of_line_at(pieces, i, joint);
      const bool is_last = end == pieces.size();
      const QString piece = pieces.mid(i, end - i).join(joint);
      const Reading inner = read(is_last ? piece : piece + joint.left(kept), depth + 1);
      out.text += inner.text + (is_last ? QString() : joint.mid(kept));
      out.left += inner.left;
      i = end;
    }
    return out;
  }
  if (const auto [open, close] = first_bracket(text); close > open) {
    Reading out;
    for (const auto& [from, to] :
         {std::pair(qsizetype(0), open), std::pair(open + 1, close), std::pair(close + 1, text.size())}) {
      const Reading inner = read(text.mid(from, to - from), depth + 1);
      out.text += inner.text + (to < text.size() ? text.mid(to, 1) : QString());
      out.left += inner.left;
    }
    return out;
  }
  static const QRegularExpression ended(QStringLiteral("^(.+)([:;,.]|\\.\\.\\.)$"));
  if (const auto match = ended.match(text); match.hasMatch()) {
    Reading out = read(match.captured(1), depth + 1);
    out.text += match.captured(2);
    return out;
  }
  return std::nullopt;
}

} // namespace clampwright::desk
