// SPDX-License-Identifier: GPL-3.0-or-later
//
// What makes the desk pleasant and keeps it from being misread: numbers from any keyboard, units, what is remembered.
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "gui/pages/joint_page.hpp"
#include "gui/pages/reading_page.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/find_panel.hpp"
#include "gui/widgets/page_view.hpp"
#include "gui/widgets/plot_pane.hpp"
#include "tests/gui/desk.hpp"

namespace clampwright::desk {

namespace {

class Comfort : public Desk {
 protected:
  SentencePage& clamp_page() {
    window().open({Target::To::sentence, "clamp"});
    auto* page = qobject_cast<SentencePage*>(window().page());
    EXPECT_NE(page, nullptr);
    return *page;
  }
  static QLineEdit& line_of(BlankEdit& blank) { return *blank.findChild<QLineEdit*>(); }
  static QComboBox& unit_of(BlankEdit& blank) { return *blank.findChild<QComboBox*>(); }
};

class Numbers : public Comfort {};

TEST_F(Numbers, TakeTheDecimalKeyOfTheNumberPadForAPoint) {
  BlankEdit& torque = *clamp_page().blank("--torque");
  QTest::keyClicks(&line_of(torque), QStringLiteral("45"));
  QTest::keyClick(&line_of(torque), Qt::Key_Comma, Qt::KeypadModifier);
  QTest::keyClicks(&line_of(torque), QStringLiteral("5"));
  EXPECT_EQ(torque.words(), "45.5 N.m");
}

// 1,500 is one and a half in one country and fifteen hundred in the next.
TEST_F(Numbers, RefuseACommaWithBothReadings) {
  BlankEdit& torque = *clamp_page().blank("--torque");
  QTest::keyClicks(&line_of(torque), QStringLiteral("1,500"));
  EXPECT_TRUE(torque.is_refused());
  EXPECT_TRUE(torque.said_below().contains(QStringLiteral("1.5"))) << torque.said_below().toStdString();
  EXPECT_TRUE(torque.said_below().contains(QStringLiteral("1500"))) << torque.said_below().toStdString();
}

TEST_F(Numbers, NeverTakeAPointForThousands) {
  BlankEdit& torque = *clamp_page().blank("--torque");
  QTest::keyClicks(&line_of(torque), QStringLiteral("1.500"));
  EXPECT_FALSE(torque.is_refused());
  EXPECT_TRUE(torque.said_below().startsWith(QStringLiteral("1.5 N·m"))) << torque.said_below().toStdString();
}

// 1 lbf·ft is 1.3558 N·m: pound and foot of 1959, standard gravity.
TEST_F(Numbers, AreReadInTheUnitBesideThem) {
  BlankEdit& torque = *clamp_page().blank("--torque");
  QTest::keyClicks(&line_of(torque), QStringLiteral("10"));
  unit_of(torque).setCurrentIndex(unit_of(torque).findData(QStringLiteral("lbf.ft")));
  emit unit_of(torque).activated(unit_of(torque).currentIndex());
  EXPECT_EQ(torque.words(), "10 lbf.ft");
  EXPECT_TRUE(torque.said_below().contains(QStringLiteral("13.56 N·m"))) << torque.said_below().toStdString();
}

TEST_F(Numbers, GiveATypedUnitToTheListBesideThem) {
  BlankEdit& torque = *clamp_page().blank("--torque");
  QTest::keyClicks(&line_of(torque), QStringLiteral("33 lbf ft"));
  QTest::keyClick(&line_of(torque), Qt::Key_Return);
  EXPECT_EQ(line_of(torque).text(), QStringLiteral("33"));
  EXPECT_EQ(torque.words(), "33 lbf.ft");
}

TEST_F(Comfort, NoAnswerStandsBesideWordsThatItIsNotFor) {
  SentencePage& page = clamp_page();
  page.fill_in_example();
  ASSERT_TRUE(page.answer().has_page());
  const QString before = page.answer().content().figures.front().value;
  line_of(*page.blank("--torque")).setFocus();
  line_of(*page.blank("--torque")).setText(QStringLiteral("45 N·m and"));
  EXPECT_FALSE(page.answer().has_page());
  line_of(*page.blank("--torque")).setText(QStringLiteral("30"));
  ASSERT_TRUE(page.answer().has_page());
  EXPECT_NE(page.answer().content().figures.front().value, before);
}

TEST_F(Comfort, AJointFillsTheCalculator) {
  open_demo();
  window().open({Target::To::joint, "pump/head-nuts"});
  auto* joint = qobject_cast<JointPage*>(window().page());
  auto* button = joint->findChild<QPushButton*>(QStringLiteral("clamp"));
  ASSERT_NE(button, nullptr);
  QTest::mouseClick(button, Qt::LeftButton);
  auto* page = qobject_cast<SentencePage*>(window().page());
  ASSERT_NE(page, nullptr);
  EXPECT_TRUE(page->answer().has_page());
  // As the demo has it: ../shared/DEMO.md.
  EXPECT_EQ(page->blank("THREAD")->words(), "M8");
  EXPECT_EQ(page->blank("--torque")->words(), "17 N.m");
}

TEST_F(Comfort, UnitAndWrenchAreRemembered) {
  open_demo();
  bench->take_wrench("B");
  bench->use_torque_unit(&quantity::unit_named("lbf.in"));
  Look look = bench->look();
  look.bench = true;
  look.theme = Theme::dark;
  look.scale = 1.5;
  bench->put_on_look(look);
  Bench next(*memory, [] { return k_today; });
  EXPECT_EQ(next.wrench(), "B");
  EXPECT_EQ(next.place().units.torque, &quantity::unit_named("lbf.in"));
  EXPECT_EQ(next.look(), look);
}

TEST_F(Comfort, SettingsOutliveTheProgramAndSpoiltOnesDoNoHarm) {
  const QString path = folder.filePath(QStringLiteral("settings.ini"));
  {
    const auto kept = settings_memory(path);
    kept->keep(Kept::scale, 150);
    kept->keep(Kept::wrench, QStringLiteral("A"));
  }
  const auto again = settings_memory(path);
  EXPECT_EQ(again->get(Kept::scale).toInt(), 150);
  EXPECT_EQ(again->text(Kept::wrench), QStringLiteral("A"));
  again->keep(Kept::scale, QStringLiteral("as large as a barn"));
  EXPECT_EQ(Bench(*again, [] { return k_today; }).look().scale, 1);
}

TEST_F(Comfort, TheFigureCanBeReadFromTwoMetres) {
  // LOOK.md: 44 px or more, 20 minutes of arc at two metres.
  EXPECT_GE(Look{}.figure(), 44);
  EXPECT_GE(Look{.bench = true}.figure(), 44);
}

TEST_F(Comfort, KeysSwitchTheLook) {
  QTest::keyClick(&window(), Qt::Key_F9);
  EXPECT_TRUE(bench->look().bench);
  QTest::keyClick(&window(), Qt::Key_F8);
  EXPECT_NE(bench->look().theme, Theme::light);
  QTest::keyClick(&window(), Qt::Key_F1);
  EXPECT_NE(qobject_cast<ReadingPage*>(window().page()), nullptr);
}

TEST_F(Comfort, APageIsReachedWithoutTyping) {
  open_demo();
  QTest::keyClick(&window().find_line(), Qt::Key_Down); // the first machine
  QTest::keyClick(&window().find_line(), Qt::Key_Return);
  QTest::keyClick(&window().find_line(), Qt::Key_Down); // its first joint, behind the way back
  QTest::keyClick(&window().find_line(), Qt::Key_Return);
  EXPECT_NE(qobject_cast<JointPage*>(window().page()), nullptr);
}

TEST_F(Comfort, ACurveIsATableAKeyAway) {
  SentencePage& page = clamp_page();
  page.fill_in_example();
  ASSERT_FALSE(page.plot().shows_table());
  page.plot().show_table(true);
  EXPECT_TRUE(page.plot().shows_table());
}

} // namespace

} // namespace clampwright::desk
