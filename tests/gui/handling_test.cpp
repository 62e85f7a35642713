// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a hand does between two answers: opening, scrolling, leaving.
#include <fstream>

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextLayout>

#include "gui/pages/joint_page.hpp"
#include "gui/pages/record_page.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/page_view.hpp"
#include "specdb/demo/demo_workshop.hpp"
#include "specdb/workshop/machines.hpp"
#include "tests/gui/desk.hpp"

namespace clampwright::desk {

namespace {

class Opening : public Desk {
 protected:
  QScrollBar& bar() {
    auto* scroll = window().page()->findChild<QScrollArea*>();
    EXPECT_NE(scroll, nullptr);
    return *scroll->verticalScrollBar();
  }
  void scroll_down() {
    settle();
    bar().setValue(bar().maximum());
    EXPECT_GT(bar().value(), 0);
  }
  void find(const char* words) {
    window().start_again();
    QTest::keyClicks(&window().find_line(), QLatin1String(words));
    QTest::keyClick(&window().find_line(), Qt::Key_Return);
    settle();
  }
};

// The figure and which way to turn stand at the top: opened further down, a page hides the left-hand thread.
TEST_F(Opening, BeginsAtTheTop) {
  open_demo();
  for (const QSize size : {QSize(1180, 800), QSize(800, 600)}) {
    window().resize(size);
    find("clutch hub");
    scroll_down();
    find("head nuts");
    ASSERT_EQ(qobject_cast<JointPage*>(window().page())->slug(), "pump/head-nuts");
    EXPECT_EQ(bar().value(), 0) << size.width();
    for (const auto& [before, next] :
         {std::pair{Target{Target::To::table, "strength-classes"}, Target{Target::To::about}},
          std::pair{Target{Target::To::record, "joint", {{k_record_of, "pump"}}},
                    Target{Target::To::record, "joint", {{k_record_key, "pump/head-nuts"}}}}}) {
      window().open(before);
      scroll_down();
      window().open(next);
      settle();
      EXPECT_EQ(bar().value(), 0) << before.key << ' ' << size.width();
    }
  }
}

TEST_F(Opening, AgainForOtherUnitsKeepsThePlace) {
  open_demo();
  find("clutch hub");
  settle();
  const int place = bar().maximum() / 2;
  ASSERT_GT(place, 0);
  bar().setValue(place);
  bench->use_torque_unit(&quantity::unit_named("lbf.in"));
  settle();
  EXPECT_EQ(bar().value(), place);
  // As after a change of the file.
  bench->show_workshop(std::make_shared<const specdb::Workshop>(*specdb::Workshop::open(bench->workshop_path())),
                       bench->workshop_path());
  settle();
  EXPECT_EQ(bar().value(), place);
}

class Scrolling : public Opening {};

TEST_F(Scrolling, IsDoneByKeys) {
  open_demo();
  find("clutch hub");
  ASSERT_GT(bar().maximum(), 0);
  const auto press = [this](Qt::Key key, Qt::KeyboardModifiers held = Qt::NoModifier) {
    QTest::keyClick(window().focusWidget(), key, held);
    return bar().value();
  };
  const int line = press(Qt::Key_Down);
  EXPECT_GT(line, 0);
  const int page = press(Qt::Key_PageDown);
  EXPECT_GT(page, line);
  EXPECT_EQ(press(Qt::Key_PageUp), line);
  EXPECT_EQ(press(Qt::Key_Space), page);
  EXPECT_EQ(press(Qt::Key_Space, Qt::ShiftModifier), line);
  EXPECT_EQ(press(Qt::Key_Up), 0);
  EXPECT_EQ(press(Qt::Key_End), bar().maximum());
  EXPECT_EQ(press(Qt::Key_Home), 0);
  // It is the page that has the focus all the while.
  EXPECT_NE(qobject_cast<PageView*>(window().focusWidget()), nullptr);
}

class Leaving : public Desk {
 protected:
  RecordPage& form(const RecordKey& key) {
    window().open({Target::To::record, "machine", {{k_record_key, key.key}}});
    auto* page = qobject_cast<RecordPage*>(window().page());
    EXPECT_NE(page, nullptr);
    return *page;
  }
  // With the key that quits.
  bool leaves() {
    QTest::keyClick(&window(), Qt::Key_Q, Qt::ControlModifier);
    settle();
    return window().isHidden();
  }
};

TEST_F(Leaving, AsksWhatIsNotEnteredYet) {
  open_demo();
  form({}).blank("--called")->write("Bilge pump Reedwater 2");
  window().open({Target::To::about}); // also where the form is not in front
  asking.yes = false;
  EXPECT_FALSE(leaves());
  ASSERT_EQ(asking.questions.size(), 1);
  EXPECT_TRUE(asking.questions.front().contains(QStringLiteral("New machine")))
      << asking.questions.front().toStdString();
  EXPECT_EQ(form({}).blank("--called")->words(), "Bilge pump Reedwater 2");
  asking.yes = true;
  EXPECT_TRUE(leaves());
  EXPECT_EQ(asking.questions.size(), 2);
}

TEST_F(Leaving, AsksNothingWhereNothingWasChanged) {
  open_demo();
  form({{}, "pump"});
  form({});
  EXPECT_TRUE(leaves());
  EXPECT_TRUE(asking.questions.isEmpty());
}

TEST_F(Leaving, AFormForAnotherRecordAsksAsWell) {
  open_demo();
  form({}).blank("--called")->write("Bilge pump Reedwater 2");
  asking.yes = false;
  EXPECT_EQ(form({{}, "pump"}).key().key, "");
  EXPECT_EQ(form({}).blank("--called")->words(), "Bilge pump Reedwater 2");
  asking.yes = true;
  EXPECT_EQ(form({{}, "pump"}).key().key, "pump");
}

TEST_F(Leaving, AsksBeforeAnotherLanguageMakesTheWindowAnew) {
  open_demo();
  form({}).blank("--called")->write("Bilge pump Reedwater 2");
  asking.yes = false;
  QAction* german = nullptr;
  for (QAction* action : window().findChildren<QAction*>())
    if (action->text() == QStringLiteral("Deutsch")) german = action;
  ASSERT_NE(german, nullptr);
  german->trigger();
  EXPECT_EQ(asking.questions.size(), 1);
  EXPECT_EQ(memory->text(Kept::language), QStringLiteral("en"));
  EXPECT_FALSE(german->isChecked());
  asking.yes = true;
  german->trigger();
  EXPECT_EQ(memory->text(Kept::language), QStringLiteral("de"));
  bench->speak_language(QStringLiteral("en"));
}

class KnownWorkshop : public Desk {
 protected:
  void open(const std::filesystem::path& path) {
    opener->open(path);
    ASSERT_TRUE(wait_for([this] { return !opener->is_busy(); }));
  }
};

// The desk is started from one folder today and from another tomorrow.
TEST_F(KnownWorkshop, IsRememberedFromAnyFolder) {
  ASSERT_TRUE(specdb::make_demo_workshop(file("mine.clampwright"), k_today));
  const std::filesystem::path here = std::filesystem::current_path();
  std::filesystem::current_path(file("."));
  open("mine.clampwright");
  std::filesystem::current_path(here);
  EXPECT_EQ(first_workshop({}, *memory, std::nullopt), file("mine.clampwright"));
}

TEST_F(KnownWorkshop, IsMissedInASentenceThatStays) {
  memory->keep(Kept::workshop, QString::fromStdString(file("gone.clampwright").string()));
  const auto path = first_workshop({}, *memory, file("usual.clampwright"));
  ASSERT_EQ(path, file("gone.clampwright"));
  window();
  open(*path);
  EXPECT_TRUE(window().banner().contains(QStringLiteral("gone.clampwright is not there")))
      << window().banner().toStdString();
  EXPECT_TRUE(window().banner().contains(QStringLiteral("menu Workshop"))) << window().banner().toStdString();
  open(file("named.clampwright"));
  EXPECT_TRUE(window().banner().contains(QStringLiteral("named.clampwright"))) << window().banner().toStdString();
  ASSERT_TRUE(specdb::make_demo_workshop(file("mine.clampwright"), k_today));
  open(file("mine.clampwright"));
  EXPECT_FALSE(window().banner().contains(QStringLiteral("not there"))) << window().banner().toStdString();
}

TEST_F(KnownWorkshop, IsTheUsualOneOnlyWhereItIs) {
  EXPECT_EQ(first_workshop({}, *memory, file("usual.clampwright")), std::nullopt);
  ASSERT_TRUE(specdb::make_demo_workshop(file("usual.clampwright"), k_today));
  EXPECT_EQ(first_workshop({}, *memory, file("usual.clampwright")), file("usual.clampwright"));
  EXPECT_EQ(first_workshop({QStringLiteral("named")}, *memory, file("usual.clampwright")), "named");
}

class OwnWorkshop : public Desk {
 protected:
  void make(const std::filesystem::path& path) {
    asking.file = QString::fromStdString(path.string());
    QAction* action = nullptr;
    for (QAction* one : window().findChildren<QAction*>())
      if (one->text() == QStringLiteral("&New workshop …")) action = one;
    ASSERT_NE(action, nullptr);
    action->trigger();
    ASSERT_TRUE(wait_for([this] { return !opener->is_busy(); }));
  }
};

TEST_F(OwnWorkshop, IsMadeEmptyAndOpened) {
  make(file("mine.clampwright"));
  ASSERT_NE(bench->workshop(), nullptr) << asking.told.join(QLatin1Char('\n')).toStdString();
  EXPECT_EQ(bench->workshop_path(), file("mine.clampwright"));
  EXPECT_FALSE(bench->is_invented());
  EXPECT_TRUE(specdb::all_machines(*bench->workshop()).empty());
  EXPECT_TRUE(asking.told.isEmpty());
}

TEST_F(OwnWorkshop, IsNeverMadeOverAnotherFile) {
  const auto path = file("notes.clampwright");
  std::ofstream(path) << "my notes";
  make(path);
  EXPECT_EQ(bench->workshop(), nullptr);
  ASSERT_EQ(asking.told.size(), 1);
  EXPECT_TRUE(asking.told.front().contains(QStringLiteral("notes.clampwright"))) << asking.told.front().toStdString();
  EXPECT_TRUE(asking.told.front().contains(QStringLiteral("there already"))) << asking.told.front().toStdString();
  std::string text;
  std::getline(std::ifstream(path), text);
  EXPECT_EQ(text, "my notes");
}

TEST_F(OwnWorkshop, IsAskedForBeforeAFormIsFilledIn) {
  window().open({Target::To::record, "machine"});
  auto* page = qobject_cast<RecordPage*>(window().page());
  EXPECT_TRUE(page->said_at_once().contains(QStringLiteral("No workshop is open")))
      << page->said_at_once().toStdString();
  make(file("mine.clampwright"));
  EXPECT_EQ(page->said_at_once(), QString());
}

class RefusedForm : public Desk {
 protected:
  RecordPage& press_on_form(const RecordKey& key, const std::vector<std::pair<const char*, const char*>>& filled) {
    window().resize(800, 600);
    window().open({Target::To::record, "machine", {{k_record_key, key.key}}});
    auto* page = qobject_cast<RecordPage*>(window().page());
    for (const auto& [option, text] : filled)
      page->blank(option)->write(text);
    settle();
    // By the keyboard, from the end of the form.
    auto& bar = *page->findChild<QScrollArea*>()->verticalScrollBar();
    bar.setValue(bar.maximum());
    page->keep_button().setFocus();
    QTest::keyClick(&page->keep_button(), Qt::Key_Space);
    EXPECT_TRUE(wait_for([&] { return !page->is_busy(); }));
    settle();
    return *page;
  }
  bool in_sight(const QWidget& widget) {
    return QRect(widget.mapTo(&window(), QPoint()), widget.size()).intersected(window().rect()).size() ==
               widget.size() &&
           widget.visibleRegion().boundingRect().size() == widget.size();
  }
  bool message_in_sight(const RecordPage& page) {
    for (const QLabel* label : page.findChildren<QLabel*>())
      if (label->text() == page.said()) return in_sight(*label);
    return false;
  }
};

TEST_F(RefusedForm, ShowsTheFaultyBlankAndWhatIsWrong) {
  open_demo();
  RecordPage& page =
      press_on_form({}, {{"--called", "Bilge pump"}, {"--kind", "pump"}, {"--stroke", "44 mm"}, {"--rod", "10 mm"}});
  EXPECT_TRUE(page.said().startsWith(QStringLiteral("Nothing was written"))) << page.said().toStdString();
  EXPECT_TRUE(message_in_sight(page));
  BlankEdit& blank = *page.blank("--rod"); // shorter than half of the stroke
  EXPECT_TRUE(blank.is_refused());
  EXPECT_TRUE(in_sight(blank));
  EXPECT_TRUE(blank.isAncestorOf(window().focusWidget()));
}

TEST_F(RefusedForm, AsksForTheReasonWhereItIsToBeWritten) {
  open_demo();
  RecordPage& page = press_on_form({{}, "pump"}, {{"--stroke", "51 mm"}});
  EXPECT_TRUE(page.said().startsWith(QStringLiteral("Nothing was written"))) << page.said().toStdString();
  EXPECT_TRUE(message_in_sight(page));
  EXPECT_TRUE(in_sight(page.because()));
  EXPECT_EQ(window().focusWidget(), &page.because());
}

TEST_F(RefusedForm, KeepsTheFocusWhereAllIsWell) {
  open_demo();
  RecordPage& page = press_on_form({}, {{"--called", "Bilge pump Reedwater 2"}, {"--kind", "bilge pump"}});
  EXPECT_EQ(page.said(), QStringLiteral("Kept."));
  EXPECT_TRUE(page.isAncestorOf(window().focusWidget()));
}

class Keys : public Desk {};

// "Copy the answer" has Alt+C, and is off while there is no answer.
TEST_F(Keys, OfWhatIsOffWriteNothing) {
  window().open({Target::To::sentence, "clamp"});
  auto* page = qobject_cast<SentencePage*>(window().page());
  for (const char* option : {"--torque", "--class", "THREAD"}) { // a quantity, a list, words
    QWidget* field = page->blank(option)->field();
    field->setFocus();
    QTest::keyClick(field, Qt::Key_C, Qt::AltModifier);
    EXPECT_EQ(page->blank(option)->words(), std::nullopt) << option;
  }
  window().start_again();
  QTest::keyClick(&window().find_line(), Qt::Key_C, Qt::AltModifier);
  EXPECT_EQ(window().find_line().text(), QString());
}

class LargeLetters : public Desk {};

// 17 N·m is printed, 8.5 N·m is what it comes to: two figures as wide as the page at this size.
TEST_F(LargeLetters, PartNoNumberFromItsUnit) {
  open_demo();
  bench->take_wrench("B");
  Look look = bench->look();
  look.scale = 2;
  window();
  bench->put_on_look(look);
  for (const QSize size : {QSize(1180, 800), QSize(800, 600)}) {
    window().resize(size);
    for (const char* joint : {"pump/head-nuts", "pump/base-nuts"}) {
      window().open({Target::To::joint, joint});
      settle();
      const PageView& view = qobject_cast<JointPage*>(window().page())->view();
      int large = 0;
      for (QTextBlock block = view.document()->begin(); block.isValid(); block = block.next()) {
        if (block.begin().fragment().charFormat().font().pixelSize() < look.figure() * 3 / 5) continue;
        ++large;
        EXPECT_EQ(block.layout()->lineCount(), 1) << block.text().toStdString() << ' ' << size.width();
      }
      EXPECT_GT(large, 1);
      EXPECT_LE(view.document()->size().width(), view.viewport()->width()) << joint << ' ' << size.width();
    }
  }
}

} // namespace

} // namespace clampwright::desk
