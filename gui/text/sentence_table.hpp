// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <set>
#include <vector>

#include <QHash>
#include <QSet>
#include <QString>
#include <QStringList>

namespace clampwright::desk {

// Sentences of one language for those of another.
//
// A text is looked up as a whole, then as a line with places, the closest first, then taken apart at its sentences,
// semicolons, colons, commas and brackets, last as a line whose places reach over such a joint. The first way that
// leaves nothing is taken, else the one that leaves least. What has been read once is kept, as a page is written anew
// for every letter that is typed.
class SentenceTable {
 public:
  // %=1 in the second part is %1 as it stands, for what is quoted or a name; any other is put into words in its turn.
  // Lines "from, tab, to"; empty lines and those that begin with # are passed over. A line without a tab, whose
  // places (%1 … %9, each once) differ between the two, or whose first part stands twice, is a fault: it is left out
  // and named in faults().
  explicit SentenceTable(const QString& lines);

  [[nodiscard]] QString translated(const QString& text) const;
  // The parts that no line fitted, of all that was translated so far.
  [[nodiscard]] const std::set<QString>& not_found() const { return not_found_; }
  [[nodiscard]] const QStringList& faults() const { return faults_; }
  // The line for just this text, its places not filled in; null where there is none. A line of two forms, parted by
  // " | ", is for one and for several: the count chooses.
  [[nodiscard]] QString line(const QString& from, int count = -1) const;
  // Every line's first part.
  [[nodiscard]] QStringList sources() const;

 private:
  struct Pattern {
    QStringList between;     // what stands before, between and behind its places
    std::vector<int> places; // in the order in which they stand: 1 for %1
    QString to;
    qsizetype letters; // that are not places: the more, the closer it fits
    std::size_t joint; // the strongest in what is not a place; that count of joints: none
    bool is_close;     // says enough by itself to be right even where a place stays untranslated
  };
  struct Reading {
    QString text;
    QStringList left; // its parts that no line fitted
    [[nodiscard]] qsizetype letters_left() const;
  };
  using Filling = std::vector<QString>;

  void add(const QString& line);
  void keep_target(const QString& to);
  void sort_patterns();
  [[nodiscard]] std::vector<std::size_t> patterns_for(const QString& text) const;
  [[nodiscard]] Reading read(const QString& text, int depth) const;
  [[nodiscard]] Reading read_bare(const QString& text, int depth) const;
  [[nodiscard]] Reading filled(const Pattern& pattern, const Filling& filling, int depth) const;
  [[nodiscard]] static Reading begun_like(const QString& text, Reading reading);
  // Whether its places reach over a joint that parts the text more than the pattern does.
  [[nodiscard]] static bool reaches_over(const Pattern& pattern, const Filling& filling);
  // A line as it stands, with its source in brackets behind it or none.
  [[nodiscard]] bool is_line(const QString& text) const;
  // Where the colon stands behind which a line begins that would be cut before the colon is; nowhere: -1.
  [[nodiscard]] qsizetype label_end(const QString& text) const;
  // The name of a column and a line with semicolons: "rule clean it; then dry it".
  [[nodiscard]] bool is_named_line(const QString& text) const;
  [[nodiscard]] std::optional<Reading> beside_bracket(const QString& text, int depth) const;
  // Behind the letter of a footnote, "(a) …", a dash, or the label of such a line, "no: …".
  [[nodiscard]] std::optional<Reading> behind_label(const QString& text, int depth) const;
  // Behind the longest run of pieces that is a line as it stands, a bracket behind it or none.
  [[nodiscard]] qsizetype end_of_line_at(const QStringList& pieces, qsizetype from, const QString& joint) const;
  [[nodiscard]] std::optional<Reading> by_parts(const QString& text, int depth) const;

  QHash<QString, QString> exact_;                   // every line, its places as they stand
  QSet<QString> targets_;                           // every line's second part, and its pieces: German already
  std::vector<Pattern> patterns_;                   // the closest first
  QHash<QString, std::vector<std::size_t>> by_key_; // a word that a text must have for the pattern to fit
  mutable QHash<QString, Reading> read_before_;
  QStringList faults_;
  mutable std::set<QString> not_found_;
};

} // namespace clampwright::desk
