// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>
#include <QListView>
#include <QTest>

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

TEST_F(Find, SaysSoWhereNothingFits) {
  open_demo();
  QTest::keyClicks(&window().find_line(), QStringLiteral("zzqx"));
  EXPECT_EQ(window().found().lines().rowCount(), 0);
  EXPECT_TRUE(window().found().note().contains(QStringLiteral("zzqx")));
}

} // namespace

} // namespace clampwright::desk
