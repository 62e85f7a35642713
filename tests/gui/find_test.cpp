// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QLineEdit>
#include <QListView>
#include <QTest>

#include "gui/look/utf8.hpp"
#include "gui/models/find_list.hpp"
#include "gui/pages/joint_page.hpp"
#include "gui/widgets/find_panel.hpp"
#include "gui/widgets/page_view.hpp"
#include "tests/gui/desk.hpp"

namespace clampwright::desk {

namespace {

class Find : public Desk {};

TEST_F(Find, HasTheFocusAtTheStart) {
  open_demo();
  QTest::keyClicks(window().focusWidget(), QStringLiteral("clutch hub"));
  EXPECT_EQ(window().find_line().text(), QStringLiteral("clutch hub"));
  EXPECT_EQ(window().found().lines().index(0).data().toString(), QStringLiteral("clutch hub"));
}

TEST_F(Find, OpensTheFirstWithEnter) {
  open_demo();
  QTest::keyClicks(&window().find_line(), QStringLiteral("clutch hub"));
  QTest::keyClick(&window().find_line(), Qt::Key_Return);
  auto* page = qobject_cast<JointPage*>(window().page());
  ASSERT_NE(page, nullptr);
  EXPECT_EQ(page->slug(), "pump/clutch-hub");
  // The demo's own figure: ../shared/DEMO.md.
  EXPECT_EQ(page->view().content().figures.front().value, QStringLiteral("42 N·m"));
}

TEST_F(Find, BeginsWhereNothingTakesLetters) {
  open_demo();
  window().found().list().setFocus();
  QTest::keyClick(&window().found().list(), Qt::Key_M);
  EXPECT_EQ(window().find_line().text(), QStringLiteral("m"));
}

TEST_F(Find, IsEmptyAfterEscape) {
  open_demo();
  QTest::keyClicks(&window().find_line(), QStringLiteral("hub"));
  QTest::keyClick(&window().find_line(), Qt::Key_Escape);
  EXPECT_EQ(window().find_line().text(), QString());
}

// Ways in which people write one thing. The first line is the one meant.
TEST_F(Find, FindsWhatIsWrittenInAnotherWay) {
  const Finder finder(bench->catalogue());
  for (const auto& [typed, title] :
       std::vector<std::pair<const char*, const char*>>{{"M8x1.25", "M8"},
                                                        {"10-32", "#10-32 UNF"},
                                                        {"Nm", "N·m"},
                                                        {"ft-lb", "lbf·ft"},
                                                        {"calculator clamp", "Clamp load of a torque"},
                                                        {"tourqe chart", "A torque chart"}}) {
    const FoundLines found = finder.find(QString::fromUtf8(typed));
    EXPECT_TRUE(
        std::ranges::any_of(found.lines, [&](const FoundLine& line) { return line.title == QString::fromUtf8(title); }))
        << typed << (found.lines.empty() ? "" : ": " + to_utf8(found.lines.front().title));
  }
  // Nothing but a sign begins every name, and says none.
  EXPECT_TRUE(finder.find(QStringLiteral("\"")).lines.empty());
}

TEST_F(Find, SaysSoWhereNothingFits) {
  open_demo();
  QTest::keyClicks(&window().find_line(), QStringLiteral("zzqx"));
  EXPECT_EQ(window().found().lines().rowCount(), 0);
  EXPECT_TRUE(window().found().note().contains(QStringLiteral("zzqx")));
}

} // namespace

} // namespace clampwright::desk
