// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "gui/look/utf8.hpp"
#include "gui/text/sentence_table.hpp"

namespace clampwright::desk {

namespace {

SentenceTable table(const char* lines) { return SentenceTable(QString::fromUtf8(lines)); }

std::string in(const SentenceTable& table, const char* text) {
  return to_utf8(table.translated(QString::fromUtf8(text)));
}

TEST(SentenceTable, TakesAWholeLine) {
  const SentenceTable words = table("clamp load\tKlemmkraft\nload\tLast\n");
  EXPECT_EQ(in(words, "clamp load"), "Klemmkraft");
  EXPECT_EQ(words.line(QStringLiteral("load")), QStringLiteral("Last"));
  EXPECT_TRUE(words.line(QStringLiteral("clamp")).isNull()); // tr() then keeps to the English
}

TEST(SentenceTable, PassesOverRemarksAndEmptyLines) {
  const SentenceTable words = table("# nut\tMutter\n\nbolt\tSchraube\n");
  EXPECT_EQ(words.sources(), QStringList(QStringLiteral("bolt")));
  EXPECT_TRUE(words.faults().isEmpty());
}

TEST(SentenceTable, PutsWhatStandsInThePlacesWhereTheOtherLanguageWantsIt) {
  const SentenceTable words = table("%1 was dropped on %2.\tAm %2 fiel %1.\n");
  EXPECT_EQ(in(words, "A was dropped on 2026-11-26."), "Am 2026-11-26 fiel A.");
}

TEST(SentenceTable, PutsWhatStandsInAPlaceIntoWordsInItsTurn) {
  const SentenceTable words = table("pressing on %1\tdrückt auf %1\n%1 outside\taußen %1\ncast iron\tGusseisen\n");
  EXPECT_EQ(in(words, "pressing on cast iron"), "drückt auf Gusseisen");
  EXPECT_EQ(in(words, "pressing on 16 mm outside"), "drückt auf außen 16 mm");
}

TEST(SentenceTable, TakesTheLineThatSaysMost) {
  const SentenceTable words = table("%1 of the bolt\t%1 der Schraube\nthread of the %1\tGewinde (%1)\n"
                                    "the thread of the %1\tdas Gewinde (%1)\nthe thread of the bolt\tdas "
                                    "Schraubengewinde\nnut\tMutter\n");
  EXPECT_EQ(in(words, "the thread of the bolt"), "das Schraubengewinde");
  EXPECT_EQ(in(words, "the thread of the nut"), "das Gewinde (Mutter)");
}

// A line that says less, but leaves nothing, is better than one that says more and leaves words.
TEST(SentenceTable, TakesTheReadingThatLeavesLeast) {
  const SentenceTable words = table("%1 against the shoulder of %2\t%1 gegen den Absatz von %2\n"
                                    "nut against the %1\tMutter gegen %1\nshoulder of wood\tHolzabsatz\n");
  EXPECT_EQ(in(words, "nut against the shoulder of wood"), "Mutter gegen Holzabsatz");
}

TEST(SentenceTable, FindsTheRightOneOfSeveralPlacesToCut) {
  const SentenceTable words = table("%1 to %2\t%1 bis %2\nhard to reach\tschwer zugänglich\nfree\tfrei\n");
  EXPECT_EQ(in(words, "hard to reach to free"), "schwer zugänglich bis frei");
}

// What parts the text most is cut first: no place reaches over it.
TEST(SentenceTable, CutsBeforeAPlaceReachesOver) {
  const SentenceTable words = table("%1 medium hole\tDurchgangsloch %1\n%1 head face\tKopfauflage %1\n"
                                    "what %1 bears\twas %1 trägt\nwood\tHolz\nsoft\tweich\n");
  EXPECT_EQ(in(words, "ISO 4014 head face, ISO 273 medium hole"), "Kopfauflage ISO 4014, Durchgangsloch ISO 273");
  EXPECT_EQ(in(words, "what wood, soft bears"), "was Holz, weich trägt");
}

TEST(SentenceTable, LeavesWhatIsQuotedAsItStands) {
  const SentenceTable words = table("the page says \"%1\"\tdie Seite sagt „%=1“\nfirmly\tfest\n");
  EXPECT_EQ(in(words, "the page says \"firmly\""), "die Seite sagt „firmly“");
  EXPECT_TRUE(words.not_found().empty());
}

TEST(SentenceTable, BeginsASentenceWithACapital) {
  const SentenceTable words = table("The %1 is dry.\t%1 ist trocken.\nwood\tholz\n");
  EXPECT_EQ(in(words, "The wood is dry."), "Holz ist trocken.");
}

// "%1 to %2" fits half of all sentences: by it alone nothing of the owner's is torn apart.
TEST(SentenceTable, LeavesATextAloneThatAWeakLineFitsByChance) {
  const SentenceTable words = table("%1 to %2\t%1 bis %2\n");
  EXPECT_EQ(in(words, "6 to 8"), "6 bis 8");
  EXPECT_EQ(in(words, "gift to the crew"), "gift to the crew");
}

TEST(SentenceTable, TakesATextApartAtItsJoints) {
  const SentenceTable words = table("dry\ttrocken\noiled\tgeölt\nLook at it.\tSieh es an.\nnot known\tnicht bekannt\n");
  EXPECT_EQ(in(words, "Look at it. Look at it. Look at it."), "Sieh es an. Sieh es an. Sieh es an.");
  EXPECT_EQ(in(words, "dry; oiled"), "trocken; geölt");
  EXPECT_EQ(in(words, "M10: not known, dry (oiled)"), "M10: nicht bekannt, trocken (geölt)");
  EXPECT_EQ(in(words, "  dry "), "  trocken ");
}

TEST(SentenceTable, CutsNoLineThatStandsAmongOthers) {
  const SentenceTable words = table("clean; dry\tganz trocken\nclean\tsauber\noiled\tgeölt\n");
  EXPECT_EQ(in(words, "oiled; clean; dry; clean"), "geölt; ganz trocken; sauber");
}

TEST(SentenceTable, CutsNoLineThatHasItsSourceBehindIt) {
  const SentenceTable words = table("one strip, two above; never three\tein Streifen, darüber zwei; nie drei\n"
                                    "two above\tzwei oben\npage %1\tSeite %1\nno\tnein\noiled\tgeölt\n");
  EXPECT_EQ(in(words, "one strip, two above; never three (page 4)"), "ein Streifen, darüber zwei; nie drei (Seite 4)");
  EXPECT_EQ(in(words, "no: one strip, two above; never three [page 4]; oiled"),
            "nein: ein Streifen, darüber zwei; nie drei [Seite 4]; geölt");
}

TEST(SentenceTable, KeepsTheLetterOfAFootnote) {
  const SentenceTable words = table("By %1 it may slip: likely.\tNach %1 rutscht es womöglich.\ndrag\tReibung\n");
  EXPECT_EQ(in(words, "(a) By drag it may slip: likely."), "(a) Nach Reibung rutscht es womöglich.");
}

TEST(SentenceTable, KnowsAnInitialFromTheEndOfASentence) {
  const SentenceTable words = table("signed by J. Holm\tgezeichnet J. Holm\nclean.\tSauber.\n");
  EXPECT_EQ(in(words, "clean. signed by J. Holm"), "Sauber. gezeichnet J. Holm");
}

TEST(SentenceTable, NeverCutsWithinABracket) {
  const SentenceTable words = table("%1 (%2)\t%1 [%2]\ndry; not oiled\tganz trocken\nnut\tMutter\n");
  EXPECT_EQ(in(words, "nut (dry; not oiled)"), "Mutter (ganz trocken)");
}

TEST(SentenceTable, LeavesAndNamesWhatNoLineFits) {
  const SentenceTable words = table("dry\ttrocken\n");
  EXPECT_EQ(in(words, "dry; the drum brake"), "trocken; the drum brake");
  EXPECT_EQ(words.not_found(), std::set{QStringLiteral("the drum brake")});
}

TEST(SentenceTable, CountsNoUnitDesignationOrOptionAsEnglish) {
  const SentenceTable words = table("dry\ttrocken\n");
  for (const char* text : {"42 N·m", "M14x1.5-LH", "1/4-20 UNC", "compound-medium", "--face-outer", "ISO 898-1", "°C",
                           "150 lbf", "84122 psi"})
    EXPECT_EQ(in(words, text), std::string(text));
  EXPECT_TRUE(words.not_found().empty());
}

// What is German already is not English.
TEST(SentenceTable, LeavesItsOwnTranslationsAlone) {
  const SentenceTable words = table("dry\ttrocken\nBefore\tVorher oder nachher\n");
  EXPECT_EQ(in(words, "Vorher oder nachher"), "Vorher oder nachher");
  EXPECT_TRUE(words.not_found().empty());
}

TEST(SentenceTable, HasAFormForOneAndOneForSeveral) {
  const SentenceTable words = table("%n joint(s)\teine Verbindung | %n Verbindungen\nnut\tMutter\n");
  EXPECT_EQ(words.line(QStringLiteral("%n joint(s)"), 1), QStringLiteral("eine Verbindung"));
  EXPECT_EQ(words.line(QStringLiteral("%n joint(s)"), 2), QStringLiteral("%n Verbindungen"));
  EXPECT_EQ(words.line(QStringLiteral("nut")), QStringLiteral("Mutter"));
}

TEST(SentenceTable, NamesALineThatCannotBeUsed) {
  for (const char* line :
       {"no tab", "\tno text", "no translation\t", "%1 on %2\tauf %1", "%1 on %1\t%1 auf %1", "on %1\tauf %2"}) {
    const SentenceTable words = table(line);
    EXPECT_EQ(words.faults(), QStringList(QString::fromUtf8(line)));
    EXPECT_TRUE(words.sources().isEmpty()) << line;
  }
  EXPECT_EQ(table("nut\tMutter\nnut\tNuss\n").faults(), QStringList(QStringLiteral("nut\tNuss")));
}

// Places alone would fit everything.
TEST(SentenceTable, KeepsALineOfPlacesForItself) {
  const SentenceTable words = table("%1 %2\t%2 %1\n%1%2 end\tEnde %1%2\n");
  EXPECT_TRUE(words.faults().isEmpty());
  EXPECT_EQ(words.line(QStringLiteral("%1 %2")), QStringLiteral("%2 %1"));
  EXPECT_EQ(in(words, "drum brake"), "drum brake");
}

// A text that nests without end is given up, not followed for ever.
TEST(SentenceTable, GivesUpInTime) {
  QString text = QStringLiteral("nut");
  for (int i = 0; i < 40; ++i)
    text = QStringLiteral("pressing hard on ") + text;
  const SentenceTable words = table("pressing hard on %1\tdrückt fest auf %1\nnut\tMutter\n");
  EXPECT_TRUE(words.translated(text).startsWith(QStringLiteral("drückt fest auf drückt fest auf")));
}

} // namespace

} // namespace clampwright::desk
