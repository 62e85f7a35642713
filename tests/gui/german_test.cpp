// SPDX-License-Identifier: GPL-3.0-or-later
//
// German is complete: every string of the desk has its line, no line is left over, and the pages of the demo workshop
// leave nothing in English but what is the owner's or a source's.
#include <filesystem>
#include <fstream>
#include <sstream>

#include <QRegularExpression>
#include <QTextBlock>
#include <SQLiteCpp/SQLiteCpp.h>

#include "gui/look/utf8.hpp"
#include "gui/pages/page.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/text/page_text.hpp"
#include "gui/text/sentence_table.hpp"
#include "gui/text/wording.hpp"
#include "gui/widgets/page_view.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/catalogue/tables.hpp"
#include "specdb/workshop/browse.hpp"
#include "tests/gui/desk.hpp"
#include "tests/gui/sentence_cases.hpp"

namespace clampwright::desk {

namespace {

const QString k_german = QStringLiteral("de");

// The lines behind this heading are those of tr(); those behind the next ones are of answers.
const QString k_own_heading = QStringLiteral("# Der Tisch selbst");

QStringList own_lines() {
  QStringList lines;
  bool own = false;
  for (const QString& line : table_text(k_german).split(QLatin1Char('\n'))) {
    if (line.startsWith(QLatin1Char('#'))) own = line.startsWith(k_own_heading);
    if (own && line.contains(QLatin1Char('\t'))) lines << line.section(QLatin1Char('\t'), 0, 0);
  }
  return lines;
}

QString literal_of(const QString& adjacent) {
  static const QRegularExpression one(QStringLiteral(R"re("((?:[^"\\]|\\.)*)")re"));
  QString text;
  auto pieces = one.globalMatch(adjacent);
  while (pieces.hasNext())
    text += pieces.next().captured(1);
  return text.replace(QStringLiteral("\\\""), QStringLiteral("\""))
      .replace(QStringLiteral("\\n"), QStringLiteral("\n"));
}

// What stands in tr("…"), QT_TRANSLATE_NOOP("…", "…") and translate("…", "…"), literals side by side joined.
QStringList strings_of_the_desk() {
  static const QRegularExpression call(
      QStringLiteral(R"re(\b(?:tr\(|(?:QT_TRANSLATE_NOOP|translate)\(\s*"\w+",)\s*((?:"(?:[^"\\]|\\.)*"\s*)+))re"));
  QStringList strings;
  for (const auto& entry :
       std::filesystem::recursive_directory_iterator(std::string(CLAMPWRIGHT_SOURCE_DIR) + "/gui")) {
    if (entry.path().extension() != ".cpp" && entry.path().extension() != ".hpp") continue;
    std::ostringstream source;
    source << std::ifstream(entry.path()).rdbuf();
    auto found = call.globalMatch(QString::fromStdString(source.str()));
    while (found.hasNext())
      strings << literal_of(found.next().captured(1));
  }
  strings.removeDuplicates();
  return strings;
}

std::string list_of(const QStringList& lines) { return '\n' + to_utf8(lines.join(QLatin1Char('\n'))); }

QStringList without(const QStringList& these, const QStringList& those) {
  QStringList rest;
  for (const QString& one : these)
    if (!those.contains(one)) rest << one;
  return rest;
}

TEST(German, HasALineForEveryStringOfTheDesk) {
  const QStringList strings = strings_of_the_desk();
  ASSERT_GT(strings.size(), 200);
  const QStringList missing = without(strings, SentenceTable(table_text(k_german)).sources());
  EXPECT_TRUE(missing.isEmpty()) << list_of(missing);
}

TEST(German, HasNoLineOfTheDeskLeftOver) {
  ASSERT_FALSE(own_lines().isEmpty());
  const QStringList left_over = without(own_lines(), strings_of_the_desk());
  EXPECT_TRUE(left_over.isEmpty()) << list_of(left_over);
}

TEST(German, HasNoLineThatCannotBeUsed) {
  const QStringList faults = SentenceTable(table_text(k_german)).faults();
  EXPECT_TRUE(faults.isEmpty()) << list_of(faults);
}

// A blank of a sentence that is lost in translation could not be filled in.
TEST(German, KeepsEveryBlankOfASentence) {
  static const QRegularExpression blank(QStringLiteral("\\{[^}]*\\}"));
  const auto blanks_in = [](const QString& text) {
    QStringList blanks;
    auto found = blank.globalMatch(text);
    while (found.hasNext())
      blanks << found.next().captured();
    blanks.sort();
    return blanks;
  };
  const SentenceTable table(table_text(k_german));
  for (const QString& english : table.sources())
    EXPECT_EQ(blanks_in(table.line(english)), blanks_in(english)) << to_utf8(english);
}

// An access key in English is one in German, and the name before "|" or " …" stays a name.
TEST(German, KeepsEveryAccessKey) {
  const SentenceTable table(table_text(k_german));
  for (const QString& english : own_lines())
    EXPECT_EQ(table.line(english).count(QLatin1Char('&')), english.count(QLatin1Char('&'))) << to_utf8(english);
}

TEST(German, WritesItsOwnQuotationMarks) {
  const SentenceTable table(table_text(k_german));
  for (const QString& english : table.sources()) {
    const QString german = table.line(english);
    EXPECT_EQ(german.count(QStringLiteral("„")), german.count(QStringLiteral("“"))) << to_utf8(german);
    EXPECT_FALSE(german.contains(QStringLiteral("”"))) << to_utf8(german);
  }
  // Those of what is typed on a command line stay in the lines of answers.
  for (const QString& english : own_lines())
    EXPECT_FALSE(table.line(english).contains(QLatin1Char('"'))) << to_utf8(english);
}

QStringList blocks_of(const QTextDocument& document) {
  QStringList blocks;
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next())
    if (!block.text().isEmpty()) blocks << block.text();
  return blocks;
}

struct Asked {
  const Sentence* sentence;
  Words words;
};

// The calculators' cases; their examples with one thing more or other each time: its example, what cannot be read, and
// each thing that the blank offers, classes, surfaces, metals, heads, locks.
std::vector<Asked> many_questions(const Place& place) {
  constexpr std::size_t k_most_offers = 80; // of the threads there are some hundreds, and they say the same
  std::vector<Asked> questions;
  for (const testing_support::SentenceCase& one : testing_support::sentence_cases())
    questions.push_back({sentence_named(one.sentence), testing_support::words_of(one)});
  for (const Sentence& sentence : sentences())
    for (const Blank& blank : sentence.blanks) {
      std::vector<std::string> texts{blank.example, "zz9", "0"};
      const auto offers = blank.kind->offers(place);
      if (offers.size() <= k_most_offers)
        for (const Offer& offer : offers)
          texts.push_back(offer.word);
      if (blank.kind->shape() == Shape::tick) texts = {"yes"};
      for (const std::string& text : texts) {
        Words words = testing_support::example_of(sentence);
        words[blank.option] = text;
        questions.push_back({&sentence, std::move(words)});
      }
    }
  return questions;
}

// All that the page of these words says, or why there is none.
QStringList texts_of(const Asked& one, const Place& place) {
  const auto reply = one.sentence->answer(one.words, place);
  if (!reply) return {worded(reply.error().message), worded(reply.error().hint)};
  return blocks_of(*page_text(reply->page, Look{}, PageState{true, false}));
}

class GermanPages : public Desk {
 protected:
  [[nodiscard]] std::vector<Target> every_target() const {
    std::vector<Target> targets = all_targets();
    for (const specdb::MachineLine& machine : specdb::machines_with_counts(*bench->workshop()))
      for (const specdb::Hit& joint : specdb::joints_of_machine(*bench->workshop(), machine.slug))
        targets.push_back({Target::To::joint, joint.joint});
    for (const specdb::TableSummary& table : specdb::reference_tables(bench->catalogue()))
      if (table.name != "sources") targets.push_back({Target::To::table, table.name, {{k_table_words, "M10"}}});
    return targets;
  }

  void open(const Target& target) {
    window().open(target);
    if (auto* page = qobject_cast<SentencePage*>(window().page())) {
      page->fill_in_example();
      page->show_more(true);
    }
    settle();
    for (PageView* view : window().page()->findChildren<PageView*>())
      view->unfold_working(true);
  }

  // The pieces of text on the page, in their order: a paragraph or a cell each.
  [[nodiscard]] QStringList blocks() {
    QStringList blocks;
    for (const PageView* view : window().page()->findChildren<PageView*>())
      blocks << blocks_of(*view->document());
    return blocks;
  }

  // All texts that are the owner's or a source's.
  [[nodiscard]] QStringList own_texts() const {
    QStringList texts;
    const SQLite::Database workshop(bench->workshop_path().string());
    for (const SQLite::Database* database : {&workshop, &bench->catalogue().connection()}) {
      std::vector<std::string> tables;
      SQLite::Statement names(*database,
                              database == &workshop
                                  ? "SELECT name FROM sqlite_master WHERE type = 'table'"
                                  : "SELECT name FROM sqlite_master WHERE type = 'table' AND name = 'sources'");
      while (names.executeStep())
        tables.push_back(names.getColumn(0).getString());
      for (const std::string& table : tables) {
        SQLite::Statement rows(*database, "SELECT * FROM \"" + table + '"');
        while (rows.executeStep())
          for (int i = 0; i < rows.getColumnCount(); ++i)
            if (rows.getColumn(i).isText()) texts << from_utf8(rows.getColumn(i).getString());
      }
    }
    for (const Sentence& sentence : sentences())
      for (const Blank& blank : sentence.blanks)
        texts << from_utf8(blank.example);
    return texts;
  }
};

// What stays English after these pages were opened, without the owner's texts and the sources.
class WhatIsLeft : public GermanPages {
 protected:
  void SetUp() override {
    open_demo();                                                    // targets and questions name its joints
    QCoreApplication::setApplicationVersion(QStringLiteral("1.0")); // as main() does
    bench->speak_language(k_german);
  }

  [[nodiscard]] QStringList left() const {
    const QString own = own_texts().join(QLatin1Char('\n'));
    QStringList left;
    for (const QString& part : left_in_english())
      if (!own.contains(part, Qt::CaseInsensitive)) left << part;
    return left;
  }
};

TEST_F(WhatIsLeft, IsNothing) {
  for (const Target& target : every_target())
    open(target);
  EXPECT_TRUE(left().isEmpty()) << list_of(left());
}

TEST_F(WhatIsLeft, OfTheAnswersIsNothing) {
  const Place place = bench->place();
  const std::vector<Asked> questions = many_questions(place);
  EXPECT_GT(questions.size(), 2000U);
  for (const Asked& one : questions)
    (void)texts_of(one, place);
  EXPECT_TRUE(left().isEmpty()) << list_of(left());
}

TEST_F(WhatIsLeft, OfTheAnswersInOtherUnitsIsNothing) {
  Place place = bench->place();
  place.units = quantity::DisplayUnits::imperial();
  for (const testing_support::SentenceCase& one : testing_support::sentence_cases())
    (void)texts_of({sentence_named(one.sentence), testing_support::words_of(one)}, place);
  EXPECT_TRUE(left().isEmpty()) << list_of(left());
}

// Every row of every table, not those about one size alone.
TEST_F(WhatIsLeft, OfTheReferenceTablesIsNothing) {
  for (const specdb::TableSummary& table : specdb::reference_tables(bench->catalogue()))
    if (table.name != "sources") open({Target::To::table, table.name});
  EXPECT_TRUE(left().isEmpty()) << list_of(left());
}

QStringList numbers_in(const QString& text) {
  static const QRegularExpression digits(QStringLiteral("\\d+(?:\\.\\d+)?"));
  QStringList numbers;
  auto found = digits.globalMatch(text);
  while (found.hasNext())
    numbers << found.next().captured();
  return numbers;
}

// The remarks are sentences, in which German may want another order.
bool is_remark(const QString& block) { return block.contains(QLatin1Char('[')) && block.endsWith(QLatin1Char(']')); }

void expect_same_numbers(const std::string& of, const QStringList& english, const QStringList& german) {
  ASSERT_EQ(german.size(), english.size()) << of;
  for (qsizetype i = 0; i < english.size(); ++i) {
    QStringList wanted = numbers_in(english[i]);
    QStringList has = numbers_in(german[i]);
    if (is_remark(english[i])) {
      wanted.sort();
      has.sort();
    }
    EXPECT_EQ(has, wanted) << of << '\n' << to_utf8(english[i]) << '\n' << to_utf8(german[i]);
  }
}

TEST_F(GermanPages, HaveTheNumbersOfTheEnglishOnes) {
  open_demo();
  for (const Target& target : every_target()) {
    bench->speak_language(QStringLiteral("en"));
    open(target);
    const QStringList english = blocks();
    bench->speak_language(k_german);
    window().open({Target::To::about});
    open(target);
    expect_same_numbers(target.key, english, blocks());
  }
}

// Of every calculator's cases and of what its blanks offer, whether it is answered or refused. In parts: under the
// sanitizers all of it takes minutes.
constexpr std::size_t k_parts = 4;
class GermanAnswers : public GermanPages, public testing::WithParamInterface<std::size_t> {};

TEST_P(GermanAnswers, HaveTheNumbersOfTheEnglishOnes) {
  open_demo();
  std::vector<Asked> questions;
  std::size_t number = 0;
  for (Asked& one : many_questions(bench->place()))
    if (number++ % k_parts == GetParam()) questions.push_back(std::move(one));
  ASSERT_GT(questions.size(), 500U);
  const auto said = [&] {
    std::vector<QStringList> all;
    for (const Asked& one : questions)
      all.push_back(texts_of(one, bench->place()));
    return all;
  };
  bench->speak_language(QStringLiteral("en"));
  const auto english = said();
  bench->speak_language(k_german);
  const auto german = said();
  for (std::size_t i = 0; i < questions.size(); ++i)
    expect_same_numbers(questions[i].sentence->id, english[i], german[i]);
}

INSTANTIATE_TEST_SUITE_P(InParts, GermanAnswers, testing::Range<std::size_t>(0, k_parts));

} // namespace

} // namespace clampwright::desk
