// SPDX-License-Identifier: GPL-3.0-or-later
//
// What stands on the page of a joint, and where.
#include <algorithm>

#include <QTextBlock>

#include "gui/drawings/drawing.hpp"
#include "gui/look/utf8.hpp"
#include "gui/pages/joint_content.hpp"
#include "gui/text/page_text.hpp"
#include "specdb/workshop/browse.hpp"
#include "specdb/workshop/joints.hpp"
#include "tests/gui/desk.hpp"

namespace clampwright::desk {

namespace {

class JointContent : public Desk {
 protected:
  void SetUp() override { open_demo(); }

  specdb::JointAnswer answer(const std::string& slug, const std::optional<std::string>& as_fitted = {}) {
    specdb::JointRequest request;
    request.as_fitted = as_fitted;
    request.today = k_today;
    return specdb::answer_for(bench->catalogue(), specdb::joint_of_slug(*bench->workshop(), slug).value(), request)
        .value();
  }
  PageContent content(const specdb::JointAnswer& joint) { return joint_content(joint, bench->place(), true); }
};

QString words_of(const PageContent& content) {
  QString words;
  for (const Figure& figure : content.figures) {
    words += figure.value + QLatin1Char(' ') + figure.says + QLatin1Char('\n');
    for (const QString& line : figure.more)
      words += line + QLatin1Char('\n');
  }
  for (const Placed& placed : content.drawings)
    words += placed.drawing.in_words + QLatin1Char('\n');
  return words;
}

const Placed* drawing_named(const PageContent& content, const char* name) {
  const auto found = std::ranges::find_if(
      content.drawings, [&](const Placed& placed) { return placed.drawing.name == QLatin1String(name); });
  return found == content.drawings.end() ? nullptr : &*found;
}

// A left-hand thread is marked by LH behind its designation (ISO 965-1, from memory) and is undone clockwise.
TEST_F(JointContent, DrawsWhichWayToTurnByTheThread) {
  for (const auto& [slug, undo] : {std::pair{"pump/clutch-hub", "Undo clockwise, tighten anticlockwise"},
                                   {"pump/head-nuts", "Undo anticlockwise, tighten clockwise"}}) {
    const PageContent page = content(answer(slug));
    ASSERT_FALSE(page.drawings.empty());
    EXPECT_EQ(page.drawings.front().behind_section, 0) << "below the figures";
    EXPECT_TRUE(page.drawings.front().drawing.in_words.startsWith(QLatin1String(undo))) << slug;
  }
}

// Whatever the command line writes in the rows that figures and arrows stand for is in their words, for every joint of
// the demo.
TEST_F(JointContent, LosesNothingOfTheRowsItHides) {
  int joints = 0;
  for (const char* machine : {"pump", "winch", "boat"})
    for (const auto& one : specdb::joints_of_machine(*bench->workshop(), machine)) {
      ++joints;
      const PageContent page = content(answer(one.joint));
      const QString words = words_of(page);
      bool above = false;
      for (const report::Row& row : page.document.sections.front().rows) {
        if (!row.label.empty())
          above = std::ranges::find(page.rows_shown_above, row.label) != page.rows_shown_above.end();
        if (!above) continue;
        for (const QString& part : from_utf8(row.value).split(QStringLiteral(", ")))
          EXPECT_TRUE(words.contains(part)) << one.joint << ": " << row.value << "\n" << words.toStdString();
      }
    }
  EXPECT_GT(joints, 30);
}

// The demo's base nuts have 17 N·m on the sheets and 19 N·m in a bulletin: ../shared/DEMO.md.
TEST_F(JointContent, SetsFiguresThatDifferSideBySide) {
  const PageContent page = content(answer("pump/base-nuts"));
  ASSERT_GE(page.figures.size(), 2U);
  EXPECT_EQ(page.figures[0].value, QStringLiteral("17 N·m"));
  EXPECT_EQ(page.figures[1].value, QStringLiteral("19 N·m"));
  EXPECT_TRUE(page.figures[1].is_rival);
  for (const std::size_t i : {0U, 1U}) {
    const QString lines = QStringList(page.figures[i].more.begin(), page.figures[i].more.end()).join(QLatin1Char('\n'));
    EXPECT_TRUE(lines.contains(QStringLiteral("Marrowfen"))) << "no source: " << lines.toStdString();
    EXPECT_TRUE(lines.contains(QStringLiteral("surfaces oiled"))) << lines.toStdString();
  }
  // Each with its own bands, below its own heading.
  EXPECT_EQ(std::ranges::count_if(
                page.drawings,
                [](const Placed& placed) { return placed.drawing.name == QStringLiteral("Clamp load as bands"); }),
            2);
}

TEST_F(JointContent, DrawsTheStopBehindItsRow) {
  const PageContent page = content(answer("pump/flywheel-nut"));
  const Placed* crank = drawing_named(page, "Crank, rod and piston stop");
  ASSERT_NE(crank, nullptr);
  EXPECT_EQ(crank->behind_row, "Piston stop");
  EXPECT_TRUE(std::ranges::any_of(page.document.sections.front().rows,
                                  [](const report::Row& row) { return row.label == "Piston stop"; }));
  EXPECT_EQ(drawing_named(content(answer("pump/head-nuts")), "Crank, rod and piston stop"), nullptr);
}

// Six, twelve and seventeen newton-metres are for the page's own surfaces; on others only their shares hold.
TEST_F(JointContent, GivesNoPassesOfThePageOnOtherSurfaces) {
  const PageContent own = content(answer("pump/head-nuts"));
  ASSERT_NE(drawing_named(own, "Order of the bolts"), nullptr);
  EXPECT_TRUE(drawing_named(own, "Order of the bolts")->drawing.in_words.contains(QStringLiteral("6, 12, 17 N·m")));
  const PageContent other = content(answer("pump/head-nuts", "dry"));
  ASSERT_NE(drawing_named(other, "Order of the bolts"), nullptr);
  const QString words = drawing_named(other, "Order of the bolts")->drawing.in_words;
  EXPECT_FALSE(words.contains(QStringLiteral("N·m"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("1 3 2 4"))) << words.toStdString();
}

TEST_F(JointContent, HasTheCorrectedTorqueAsAFigure) {
  const specdb::JointAnswer joint = answer("pump/clutch-hub", "oiled");
  ASSERT_TRUE(joint.as_fitted && joint.as_fitted->torque);
  const PageContent page = content(joint);
  // Likely nut factors 0.2 dry and 0.18 oiled (table of surfaces): 42 · 0.9 = 37.8. The published rules of the page
  // begin with × 0.7: 29.4. By thread friction the likely load of the dry joint, 11.0 kN, wants 27.5.
  EXPECT_TRUE(std::ranges::any_of(page.figures, [](const Figure& figure) {
    return figure.value == QStringLiteral("27.5 to 37.8 N·m") &&
           figure.says.contains(QStringLiteral("rules that differ"));
  })) << to_utf8(page.figures[1].value);
  EXPECT_EQ(page.figures.front().value, QStringLiteral("42 N·m")) << "as printed stays first";
}

// 42 N·m is 4.28 kgf·m (9.80665 m/s²). A print that cannot be read for sure leaves the unit that is meant to be said.
TEST_F(JointContent, SaysWhatAnotherUnitInThePrintMeans) {
  specdb::JointAnswer joint = answer("pump/clutch-hub");
  joint.figure.figure.printed = "4,28 mkg";
  const Figure figure = content(joint).figures.front();
  EXPECT_EQ(figure.value, QStringLiteral("4,28 mkg"));
  EXPECT_TRUE(std::ranges::any_of(figure.more, [](const QString& line) {
    return line.contains(QStringLiteral("42.0 N·m"));
  })) << (figure.more.empty() ? "" : to_utf8(figure.more.front()));
}

PageContent with_rows() {
  PageContent content;
  content.document.title = "Title";
  content.document.sections.push_back({"", {{"One", "first"}, {"", "goes on"}, {"Two", "second"}, {"Three", "third"}}});
  return content;
}

Drawing small_drawing(const char* words) {
  Drawing drawing;
  drawing.name = drawing.in_words = QLatin1String(words);
  drawing.size = QSizeF(10, 10);
  drawing.paint = [](QPainter&, const Inks&) {};
  return drawing;
}

TEST(PageText, PutsADrawingBehindItsRow) {
  PageContent content = with_rows();
  content.drawings.push_back({small_drawing("drawing"), 1, "One"});
  content.drawings.push_back({small_drawing("at the end"), 1, "no such row"});
  const QString text = page_text(content, {}, {})->toPlainText();
  EXPECT_LT(text.indexOf(QStringLiteral("goes on")), text.indexOf(QStringLiteral("drawing")));
  EXPECT_LT(text.indexOf(QStringLiteral("drawing")), text.indexOf(QStringLiteral("Two")));
  EXPECT_LT(text.indexOf(QStringLiteral("third")), text.indexOf(QStringLiteral("at the end")));
}

TEST(PageText, PutsADrawingBehindARowThatIsHidden) {
  PageContent content = with_rows();
  content.rows_shown_above = {"Two"};
  content.drawings.push_back({small_drawing("drawing"), 1, "Two"});
  const QString text = page_text(content, {}, {})->toPlainText();
  EXPECT_FALSE(text.contains(QStringLiteral("second")));
  EXPECT_LT(text.indexOf(QStringLiteral("goes on")), text.indexOf(QStringLiteral("drawing")));
  EXPECT_LT(text.indexOf(QStringLiteral("drawing")), text.indexOf(QStringLiteral("Three")));
}

} // namespace

} // namespace clampwright::desk
