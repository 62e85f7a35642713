// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QAction>
#include <QFile>
#include <QPrintDialog>
#include <QRegularExpression>
#include <fmt/format.h>

#include "core/report/wording.hpp"
#include "gui/look/utf8.hpp"
#include "gui/pages/joint_page.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/printing/print_pages.hpp"
#include "gui/widgets/page_view.hpp"
#include "gui/window/printing.hpp"
#include "tests/gui/desk.hpp"
#include "tests/gui/drawn.hpp"
#include "tests/gui/paper.hpp"

namespace clampwright::desk {

namespace {

const Imprint k_imprint{QStringLiteral("Clampwright 9.8.7"), QStringLiteral("2026-11-26")};

class Print : public Desk {
 protected:
  [[nodiscard]] QString pdf(const char* name = "print.pdf") const { return folder.filePath(QLatin1String(name)); }

  Printable joint(const std::string& slug) {
    if (bench->workshop() == nullptr) open_demo();
    window().open({Target::To::joint, slug});
    return window().page()->printable().value();
  }

  Printable sentence(const std::string& id) {
    window().open({Target::To::sentence, id});
    static_cast<SentencePage*>(window().page())->fill_in_example();
    return window().page()->printable().value();
  }

  QString printed(const Printable& printable, PaperSize size = PaperSize::a4) {
    EXPECT_TRUE(write_pdf(pdf(), printable, size, k_imprint));
    return text_of(pdf());
  }
};

// Everything that the content says, by itself and not by how it is laid out.
QStringList all_words(const PageContent& content) {
  QStringList words{content.where};
  for (const Figure& figure : content.figures) {
    words << figure.value << figure.says;
    for (const QString& line : figure.more)
      words << line;
  }
  for (const QString& flag : content.flags)
    words << flag;
  for (const Placed& placed : content.drawings)
    words << placed.drawing.in_words;
  const report::Document& document = content.document;
  words << from_utf8(document.title) << from_utf8(document.banner);
  for (const report::Section& section : document.sections) {
    words << from_utf8(section.heading);
    bool above = false;
    for (const report::Row& row : section.rows) {
      if (!row.label.empty())
        above = std::ranges::find(content.rows_shown_above, row.label) != content.rows_shown_above.end();
      if (!above) words << from_utf8(row.label) << from_utf8(row.value);
    }
    if (!section.table) continue;
    for (const report::Column& column : section.table->columns)
      words << from_utf8(column.heading);
    for (const auto& row : section.table->rows)
      for (const std::string& cell : row)
        words << from_utf8(cell);
  }
  for (const report::Remark& remark : document.remarks)
    words << from_utf8(report::severity_word(remark.severity)) << from_utf8(remark.text) << from_utf8(remark.code);
  for (const Source& source : document.sources)
    words << from_utf8(report::full_source(source));
  if (document.has_foot) words << from_utf8(report::foot_line());
  return words;
}

void expect_all_in(const QString& text, const PageContent& content) {
  for (QString words : all_words(content)) {
    if (words.startsWith(QStringLiteral("– "))) words.remove(0, 2); // a point has one sign before it
    EXPECT_TRUE(text.contains(squeezed(by_blanks(words, content.blank_names))))
        << "not printed: " << words.toStdString();
  }
}

TEST_F(Print, HasEverythingThatAJointSays) {
  for (const char* slug : {"pump/clutch-hub", "pump/flywheel-nut", "pump/head-nuts", "pump/base-nuts"})
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
      SCOPED_TRACE(slug);
      const Printable printable = joint(slug);
      expect_all_in(printed(printable, size), printable.content);
    }
}

TEST_F(Print, HasEverythingThatASentenceSays) {
  for (const Sentence& one : sentences()) {
    SCOPED_TRACE(one.id);
    const Printable printable = sentence(one.id);
    expect_all_in(printed(printable), printable.content);
  }
}

// The rows Torque, Tighten and Undo of the command line's text are shown as figures and arrows: none of their words may
// get lost on the way.
TEST_F(Print, KeepsWhatFiguresAndArrowsTookOver) {
  const QString text = printed(joint("pump/clutch-hub"));
  for (const char* words : {"42 N·m", "as printed", "= 31.0 lbf·ft",
                            "Undo clockwise, tighten anticlockwise, looking at the clutch", "Left-hand thread"})
    EXPECT_TRUE(text.contains(squeezed(QString::fromUtf8(words)))) << words;
}

// ISO 216: A4 is 210 × 297 mm, 595.3 × 841.9 points; Letter is 8.5 × 11 in, 612 × 792 points.
TEST_F(Print, IsOfThePaperAskedFor) {
  const Printable printable = joint("pump/head-nuts");
  const QRegularExpression size(QStringLiteral("Page size:\\s+([\\d.]+) x ([\\d.]+) pts"));
  for (const auto& [paper, width, height] :
       {std::tuple{PaperSize::a4, 595.3, 841.9}, {PaperSize::letter, 612.0, 792.0}}) {
    ASSERT_TRUE(write_pdf(pdf(), printable, paper, k_imprint));
    const auto found = size.match(asked_about(QStringLiteral("pdfinfo"), {}, pdf()));
    EXPECT_NEAR(found.captured(1).toDouble(), width, 0.8);
    EXPECT_NEAR(found.captured(2).toDouble(), height, 0.8);
  }
}

TEST_F(Print, EmbedsItsFonts) {
  (void)printed(sentence("clamp"));
  const QStringList lines =
      asked_about(QStringLiteral("pdffonts"), {}, pdf()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  ASSERT_GT(lines.size(), 2);
  // Columns from the right: object, generation, uni, sub, emb.
  for (const QString& line : lines.mid(2)) {
    const QStringList columns = line.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    EXPECT_EQ(columns[columns.size() - 5], QStringLiteral("yes")) << line.toStdString();
    EXPECT_EQ(columns[columns.size() - 3], QStringLiteral("yes")) << "no text to select: " << line.toStdString();
  }
}

TEST_F(Print, NumbersItsPages) {
  const QString text = printed(joint("pump/flywheel-nut"));
  const int pages = pages_of(pdf());
  ASSERT_GT(pages, 1);
  for (int page = 1; page <= pages; ++page)
    EXPECT_TRUE(text.contains(QStringLiteral("page%1of%2").arg(page).arg(pages)));
  EXPECT_EQ(text.count(squeezed(QStringLiteral("Clampwright 9.8.7, 2026-11-26"))), pages);
}

// A sheet that has come away from the others still says what it is for and what ranks above it.
TEST_F(Print, SaysOnEachSheetWhatItIsFor) {
  const QString text = printed(joint("pump/flywheel-nut"));
  const int pages = pages_of(pdf());
  EXPECT_GE(text.count(squeezed(QStringLiteral("Pump Marrowfen P3 / flywheel [pump/flywheel-nut]"))), pages);
  EXPECT_EQ(text.count(squeezed(from_utf8(report::foot_line()))), pages);
  EXPECT_GE(text.count(squeezed(QStringLiteral("INVENTED, to try the program with"))), pages);
}

TEST_F(Print, LeavesTheMarginsWhite) {
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const Printable& printable : {joint("pump/flywheel-nut"), joint("pump/base-nuts"), sentence("clamp")}) {
      ASSERT_TRUE(write_pdf(pdf(), printable, size, k_imprint));
      constexpr int k_dpi = 60;
      const auto pages = pictures_of(pdf(), k_dpi);
      ASSERT_EQ(static_cast<int>(pages.size()), pages_of(pdf()));
      const int margin = static_cast<int>(17 / 25.4 * k_dpi); // of 18 mm
      for (const QImage& page : pages) {
        const QRect inside = page.rect().adjusted(margin, margin, -margin, -margin);
        for (const QRect& strip :
             {QRect(0, 0, page.width(), inside.top()), QRect(0, inside.bottom() + 1, page.width(), margin),
              QRect(0, 0, inside.left(), page.height()), QRect(inside.right() + 1, 0, margin, page.height())})
          EXPECT_FALSE(has_ink(page, strip));
        EXPECT_TRUE(has_ink(page, inside));
      }
    }
}

TEST_F(Print, HasTheWorkingByChoice) {
  Printable printable = sentence("clamp");
  ASSERT_FALSE(printable.content.document.working.empty());
  const QString formula = squeezed(from_utf8(printable.content.document.working.front().formula));
  printable.working = false;
  EXPECT_FALSE(printed(printable).contains(QStringLiteral("Theworking")));
  printable.working = true;
  const QString text = printed(printable);
  EXPECT_TRUE(text.contains(QStringLiteral("Theworking")));
  for (const Step& step : printable.content.document.working)
    EXPECT_TRUE(text.contains(squeezed(from_utf8(step.formula)))) << step.formula;
}

TEST_F(Print, FollowsWhatIsUnfoldedOnTheScreen) {
  (void)joint("pump/clutch-hub");
  auto* page = static_cast<JointPage*>(window().page());
  EXPECT_FALSE(page->printable()->working);
  page->view().unfold_working(true);
  EXPECT_TRUE(page->printable()->working);
}

TEST_F(Print, HasRoomToWriteInForAJointOnly) {
  const QString on_joint = printed(joint("pump/clutch-hub"));
  for (const char* words : {"torquereached", "wrench", "initials", "date", "done", "tightened", "rechecked"})
    EXPECT_TRUE(on_joint.contains(QLatin1String(words))) << words;
  EXPECT_FALSE(printed(sentence("clamp")).contains(QStringLiteral("torquereached")));
}

TEST_F(Print, HasTheCurveInLettersAndItsPoints) {
  const Printable printable = sentence("clamp");
  ASSERT_TRUE(printable.curve);
  const QString text = printed(printable);
  for (const QString& words :
       {printable.curve->x_title, printable.curve->y_title, printable.curve->chosen_name,
        printable.curve->levels.front().name, printable.curve->bands.front().name, printable.curve->in_words})
    EXPECT_TRUE(text.contains(squeezed(words))) << words.toStdString();
  EXPECT_TRUE(text.contains(QStringLiteral("Thepointsofthecurve")));
}

Printable with_table(int columns, int rows) {
  Printable printable;
  printable.content.document.title = "Table";
  report::Table table;
  for (int c = 0; c < columns; ++c)
    table.columns.push_back({"", fmt::format("head{}", c), true, false});
  for (int r = 0; r < rows; ++r) {
    table.rows.emplace_back();
    for (int c = 0; c < columns; ++c)
      table.rows.back().push_back(fmt::format("r{}c{};", r, c));
  }
  printable.content.document.sections.push_back({"", {}, std::move(table)});
  return printable;
}

TEST_F(Print, RepeatsTheHeadsOfALongTable) {
  const QString text = printed(with_table(3, 200));
  const int pages = pages_of(pdf());
  ASSERT_GT(pages, 2);
  EXPECT_EQ(text.count(QStringLiteral("head0")), pages);
  for (int row = 0; row < 200; ++row)
    EXPECT_EQ(text.count(QStringLiteral("r%1c2;").arg(row)), 1) << row;
}

TEST_F(Print, SetsAWideTableSmaller) {
  const QString text = printed(with_table(16, 4));
  EXPECT_EQ(pages_of(pdf()), 1);
  for (int column = 0; column < 16; ++column)
    EXPECT_TRUE(text.contains(QStringLiteral("r3c%1;").arg(column))) << column;
  const QImage page = pictures_of(pdf(), 60).front();
  const int margin = static_cast<int>(17 / 25.4 * 60);
  EXPECT_FALSE(has_ink(page, QRect(page.width() - margin, 0, margin, page.height())));
  EXPECT_FALSE(has_ink(page, QRect(0, 0, margin, page.height())));
}

TEST_F(Print, WritesNoHalfFile) {
  const QString nowhere = folder.filePath(QStringLiteral("not/there/print.pdf"));
  const auto refused = write_pdf(nowhere, with_table(2, 2), PaperSize::a4, k_imprint);
  ASSERT_FALSE(refused);
  EXPECT_FALSE(refused.error().message.empty());
  EXPECT_EQ(refused.error().hint, "name a file in a folder that is there and that may be written to");
  EXPECT_FALSE(QFile::exists(nowhere));
  // In place of an older file, and nothing beside it.
  ASSERT_TRUE(write_pdf(pdf(), with_table(2, 2), PaperSize::a4, k_imprint));
  ASSERT_TRUE(write_pdf(pdf(), with_table(2, 90), PaperSize::a4, k_imprint));
  EXPECT_EQ(pages_of(pdf()), 2);
  EXPECT_EQ(QDir(folder.path()).entryList({QStringLiteral("*")}, QDir::Files),
            QStringList{QStringLiteral("print.pdf")});
}

TEST(SuggestedFile, IsTheTitleInPlainLetters) {
  EXPECT_EQ(suggested_file(QStringLiteral("Clutch hub / M14x1.5-LH")), QStringLiteral("clutch-hub-m14x1-5-lh.pdf"));
  EXPECT_EQ(suggested_file(QStringLiteral("Prüfung")), QStringLiteral("prüfung.pdf"));
  EXPECT_EQ(suggested_file(QStringLiteral("../..")), QStringLiteral("page.pdf"));
}

// The real window: it is shown and waited for without a loop of its own, and calls back when it is let be.
TEST_F(Print, AsksForAPrinterInAWindow) {
  int answers = 0;
  asking_in_windows().printer(window(), sheet(PaperSize::letter), [&](QPrinter* printer) {
    ++answers;
    EXPECT_EQ(printer, nullptr);
  });
  auto* dialog = window().findChild<QPrintDialog*>();
  ASSERT_NE(dialog, nullptr);
  EXPECT_EQ(answers, 0);
  EXPECT_EQ(dialog->printer()->pageLayout().pageSize().id(), QPageSize::Letter);
  dialog->reject();
  EXPECT_EQ(answers, 1);
}

class PrintMenu : public Print {
 protected:
  void SetUp() override { printing = std::make_unique<Printing>(window(), *bench, asking); }
  void TearDown() override { printing.reset(); }
  std::unique_ptr<Printing> printing;
};

TEST_F(PrintMenu, SavesWhatIsShown) {
  (void)joint("pump/clutch-hub");
  asking.file = pdf();
  emit window().pdf_wanted();
  EXPECT_EQ(asking.suggested, QStringLiteral("clutch-hub.pdf"));
  EXPECT_TRUE(asking.told.isEmpty()) << asking.told.join(QLatin1Char(' ')).toStdString();
  EXPECT_TRUE(text_of(pdf()).contains(QStringLiteral("42N·m")));
}

TEST_F(PrintMenu, LetsItBeWhereThePersonDoes) {
  (void)joint("pump/clutch-hub");
  asking.file.reset();
  emit window().pdf_wanted();
  emit window().print_wanted();
  EXPECT_EQ(asking.asked, 2);
  EXPECT_TRUE(asking.told.isEmpty());
}

TEST_F(PrintMenu, SaysWhereThereIsNothing) {
  emit window().pdf_wanted();
  emit window().print_wanted();
  EXPECT_EQ(asking.told.size(), 2);
  EXPECT_EQ(asking.asked, 0);
}

TEST_F(PrintMenu, SaysWhyItCannotBeWritten) {
  (void)joint("pump/clutch-hub");
  asking.file = folder.filePath(QStringLiteral("not/there.pdf"));
  emit window().pdf_wanted();
  ASSERT_EQ(asking.told.size(), 1);
  EXPECT_TRUE(asking.told.front().contains(QStringLiteral("not/there.pdf"))) << asking.told.front().toStdString();
}

TEST_F(PrintMenu, OffersBothPapers) {
  (void)joint("pump/clutch-hub");
  asking.file = pdf();
  const QList<QAction*> actions = window().findChildren<QAction*>();
  for (const auto& [paper, size] : {std::pair{"Letter", "612 x 792"}, {"A4", "595 x 842"}}) {
    const auto action =
        std::ranges::find_if(actions, [&](QAction* one) { return one->text() == QLatin1String(paper); });
    ASSERT_NE(action, actions.end());
    (*action)->trigger();
    EXPECT_EQ(memory->text(Kept::paper_size), QLatin1String(paper));
    emit window().pdf_wanted();
    EXPECT_TRUE(asked_about(QStringLiteral("pdfinfo"), {}, pdf()).contains(QLatin1String(size))) << paper;
  }
}

TEST_F(PrintMenu, PrintsOnTheRememberedPaper) {
  memory->keep(Kept::paper_size, QStringLiteral("Letter"));
  (void)joint("pump/clutch-hub");
  asking.file = pdf();
  emit window().print_wanted();
  EXPECT_TRUE(asking.told.isEmpty());
  EXPECT_TRUE(asked_about(QStringLiteral("pdfinfo"), {}, pdf()).contains(QStringLiteral("612 x 792")));
  EXPECT_TRUE(text_of(pdf()).contains(QStringLiteral("42N·m")));
}

} // namespace

} // namespace clampwright::desk
