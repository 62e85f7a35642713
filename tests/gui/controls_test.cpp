// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every control of every page: it has a name, can be reached, is as large as the mode asks, and shows all of its words.
#include <map>
#include <set>

#include <QAbstractButton>
#include <QAccessible>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QTableView>
#include <QTest>
#include <QWheelEvent>

#include "gui/look/inks.hpp"
#include "gui/look/utf8.hpp"
#include "gui/pages/page.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/widgets/find_panel.hpp"
#include "gui/widgets/plot_pane.hpp"
#include "tests/gui/desk.hpp"

namespace clampwright::desk {

namespace {

std::string told(const QWidget& widget) {
  QStringList path;
  for (const QWidget* at = &widget; at != nullptr; at = at->parentWidget())
    path.prepend(QString::fromLatin1(at->metaObject()->className()).section(QLatin1Char(':'), -1) +
                 (at->objectName().isEmpty() ? QString() : QLatin1Char('#') + at->objectName()));
  return to_utf8(path.join(QLatin1Char('/')));
}

// What a person can get at on the page that is open.
template<class Kind>
std::vector<Kind*> shown(QWidget& window) {
  std::vector<Kind*> out;
  for (Kind* one : window.findChildren<Kind*>())
    if (one->isVisible()) out.push_back(one);
  return out;
}

bool takes_focus(const QWidget& widget) {
  return (widget.focusPolicy() & Qt::TabFocus) != 0 && widget.isEnabled() && widget.focusProxy() == nullptr;
}

class Controls : public Desk {
 protected:
  // Opens every page and looks at it; calculators with an answer and with all their blanks.
  template<class Look>
  void on_every_page(Look look) {
    for (const Target& target : all_targets()) {
      window().open(target);
      if (auto* page = qobject_cast<SentencePage*>(window().page())) {
        page->fill_in_example();
        page->show_more(true);
      }
      settle();
      look();
    }
  }
};

TEST_F(Controls, HaveAName) {
  open_demo();
  on_every_page([this] {
    for (QWidget* widget : shown<QWidget>(window())) {
      if (!takes_focus(*widget)) continue;
      QAccessibleInterface* access = QAccessible::queryAccessibleInterface(widget);
      ASSERT_NE(access, nullptr) << told(*widget);
      EXPECT_FALSE(access->text(QAccessible::Name).trimmed().isEmpty()) << told(*widget);
    }
  });
}

// From the find line with Tab alone, through all of it and back; no trap.
TEST_F(Controls, AreReachedByTab) {
  open_demo();
  on_every_page([this] {
    std::set<QWidget*> wanted;
    for (QWidget* widget : shown<QWidget>(window()))
      if (takes_focus(*widget)) wanted.insert(widget);
    window().find_line().setFocus();
    std::set<QWidget*> reached;
    // A page of text stops at each of its links as well.
    const std::size_t k_most = 4 * wanted.size() + 40;
    for (std::size_t i = 0; i < k_most; ++i) {
      reached.insert(window().focusWidget());
      QTest::keyClick(window().focusWidget(), Qt::Key_Tab);
    }
    for (QWidget* widget : wanted)
      EXPECT_TRUE(reached.contains(widget)) << told(*widget);
  });
}

// How much of two pictures of one widget differs, and by three to one: the measure of WCAG 2.2, 2.4.13, for a focus
// that is seen (from memory).
int changed_pixels(const QImage& before, const QImage& after) {
  constexpr double k_seen = 3;
  int changed = 0;
  for (int y = 0; y < before.height(); ++y)
    for (int x = 0; x < before.width(); ++x)
      if (before.pixel(x, y) != after.pixel(x, y) &&
          contrast({before.pixelColor(x, y), after.pixelColor(x, y)}) >= k_seen)
        ++changed;
  return changed;
}

// At least as much as a line of two pixels round it, less its rounded corners.
TEST_F(Controls, ShowTheirFocus) {
  open_demo();
  const auto picture = [](QWidget& widget) { return widget.grab().toImage().convertToFormat(QImage::Format_RGB32); };
  for (const Theme theme : {Theme::light, Theme::dark}) {
    Look look = bench->look();
    look.theme = theme;
    window(); // hears of it
    bench->put_on_look(look);
    std::set<std::string> seen; // one of each kind is enough
    on_every_page([&] {
      for (QWidget* widget : shown<QWidget>(window())) {
        if (!takes_focus(*widget) || !seen.insert(widget->metaObject()->className()).second) continue;
        window().find_line().setFocus();
        if (widget == &window().find_line()) window().found().list().setFocus();
        settle();
        const QImage before = picture(*widget);
        widget->setFocus(Qt::TabFocusReason);
        settle();
        ASSERT_TRUE(widget->hasFocus()) << told(*widget);
        const QImage after = picture(*widget);
        ASSERT_EQ(before.size(), after.size());
        constexpr int k_corners = 32;
        EXPECT_GE(changed_pixels(before, after), 4 * (widget->width() + widget->height()) - 16 - k_corners)
            << told(*widget) << " in look " << static_cast<int>(theme);
      }
    });
    EXPECT_GE(seen.size(), 6U);
  }
}

// Nothing in a page that scrolls is changed or takes the focus from a blank because a wheel passes over it.
TEST_F(Controls, LetTheWheelPass) {
  open_demo();
  on_every_page([this] {
    auto* pane = window().page()->findChild<QScrollArea*>();
    if (pane == nullptr) return;
    for (QWidget* widget : shown<QWidget>(*pane)) {
      EXPECT_NE(widget->focusPolicy() & Qt::WheelFocus, Qt::WheelFocus) << told(*widget);
      auto* list = qobject_cast<QComboBox*>(widget);
      if (list == nullptr) continue;
      const QString before = list->currentText();
      const QPointF middle = list->rect().center();
      QWheelEvent wheel(middle, list->mapToGlobal(middle), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                        Qt::NoScrollPhase, false);
      QApplication::sendEvent(list, &wheel);
      EXPECT_EQ(list->currentText(), before) << told(*widget);
    }
    if (auto* page = qobject_cast<SentencePage*>(window().page()); page != nullptr && page->plot().isVisible()) {
      const QWidget& plot = page->plot();
      EXPECT_EQ(plot.childAt(plot.rect().center()), nullptr) << "the curve keeps the wheel to itself";
    }
  });
}

// MIL-STD-1472E 5.4.3.1.3.3 (read in a scan): 19 mm for mittened fingers, 72 px at 96 dpi; LOOK.md: 32 px otherwise.
TEST_F(Controls, AreAsLargeAsTheModeAsks) {
  open_demo();
  for (const bool bench_mode : {false, true}) {
    Look look = bench->look();
    look.bench = bench_mode;
    bench->put_on_look(look);
    const int least = bench_mode ? 72 : 32;
    window().resize(1400, 1000);
    on_every_page([&, this] {
      for (QWidget* widget : shown<QWidget>(window())) {
        const bool pressed = qobject_cast<QAbstractButton*>(widget) != nullptr ||
                             qobject_cast<QComboBox*>(widget) != nullptr ||
                             (qobject_cast<QLineEdit*>(widget) != nullptr &&
                              qobject_cast<QComboBox*>(widget->parentWidget()) == nullptr);
        // The corner of a table chooses all of it; Ctrl+A does that, and nothing here is done with all.
        if (!pressed || !takes_focus(*widget)) continue;
        EXPECT_GE(widget->height(), least) << told(*widget);
        EXPECT_GE(widget->width(), least) << told(*widget);
      }
    });
  }
}

// Words of a button or label that need more room than they have would be cut.
void expect_whole_words(QWidget& window) {
  for (QAbstractButton* button : shown<QAbstractButton>(window))
    if (!button->text().isEmpty()) {
      EXPECT_GE(button->width(), button->minimumSizeHint().width()) << told(*button) << to_utf8(button->text());
      EXPECT_GE(button->height(), button->fontMetrics().height()) << told(*button);
    }
  for (QLabel* label : shown<QLabel>(window)) {
    if (label->text().isEmpty()) continue;
    const int wanted = label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
    EXPECT_GE(label->height(), wanted) << told(*label) << to_utf8(label->text());
    if (!label->wordWrap()) {
      EXPECT_GE(label->width(), label->sizeHint().width()) << told(*label) << to_utf8(label->text());
    }
  }
}

class SpokenControls : public Controls, public testing::WithParamInterface<const char*> {
 protected:
  void SetUp() override {
    bench->speak_language(QLatin1String(GetParam()));
    open_demo();
  }
};

TEST_P(SpokenControls, ShowAllOfTheirWordsAtTwiceTheSize) {
  for (const double scale : {1.0, 2.0}) {
    Look look = bench->look();
    look.scale = scale;
    bench->put_on_look(look);
    window().resize(1280, 800);
    on_every_page([this] { expect_whole_words(window()); });
  }
}

// The table that a curve becomes (Ctrl+T) says in its headings what its numbers are.
TEST_P(SpokenControls, ShowAllOfTheHeadingsOfATable) {
  for (const double scale : {1.0, 2.0}) {
    window();
    Look look = bench->look();
    look.scale = scale;
    bench->put_on_look(look);
    window().resize(1280, 800);
    on_every_page([this, &look] {
      if (auto* page = qobject_cast<SentencePage*>(window().page()); page != nullptr && page->plot().isVisible()) {
        page->plot().show_table(true);
        settle();
      }
      for (QTableView* view : shown<QTableView>(window())) {
        const QHeaderView& head = *view->horizontalHeader();
        QFont bold = head.font();
        bold.setBold(true); // as the style sheet has it
        for (int i = 0; i < head.count(); ++i) {
          const QString text = view->model()->headerData(i, Qt::Horizontal).toString();
          const QSize wanted = QFontMetrics(bold).size(0, text);
          EXPECT_GE(head.sectionSize(i), wanted.width()) << to_utf8(text);
          // The style sheet pads it by half a gap on each side, and draws a line of two below.
          EXPECT_GE(head.height(), wanted.height() + 2 * (look.gap() / 2) + 2) << to_utf8(text);
        }
      }
    });
  }
}

// GNOME HIG, display compatibility (read): 640 wide for half of a small screen. At 100 %.
TEST_F(Controls, FitASmallScreen) {
  open_demo();
  window().resize(640, 600);
  on_every_page([this] {
    EXPECT_LE(window().minimumSizeHint().width(), 640);
    EXPECT_LE(window().minimumSizeHint().height(), 600);
    EXPECT_TRUE(window().is_narrow());
  });
}

// With Alt and a letter: of two that have the same one, a menu takes it, and neither of two buttons.
void expect_no_two_keys_alike(QMainWindow& window) {
  std::map<QString, std::string> keys;
  const auto add = [&](const QString& text) {
    const QString key = QKeySequence::mnemonic(text).toString();
    if (key.isEmpty()) return;
    EXPECT_TRUE(keys.emplace(key, to_utf8(text)).second)
        << to_utf8(key) << ": " << to_utf8(text) << " and " << keys[key];
  };
  for (const QAction* menu : window.menuBar()->actions())
    add(menu->text());
  for (QAbstractButton* button : shown<QAbstractButton>(window))
    add(button->text());
  for (QLabel* label : shown<QLabel>(window))
    if (label->buddy() != nullptr) add(label->text());
}

TEST_P(SpokenControls, HaveNoTwoKeysAlikeOnAPage) {
  // In the narrow window stands the way back as well.
  for (const QSize size : {QSize(1280, 800), QSize(640, 600)}) {
    window().resize(size);
    on_every_page([this] {
      expect_no_two_keys_alike(window());
      if (auto* page = qobject_cast<SentencePage*>(window().page())) {
        page->show_more(false);
        expect_no_two_keys_alike(window());
      }
    });
  }
}

TEST_P(SpokenControls, HaveNoTwoKeysAlikeInAMenu) {
  std::set<QString> menus;
  for (const QAction* menu : window().menuBar()->actions())
    menus.insert(QKeySequence::mnemonic(menu->text()).toString());
  EXPECT_EQ(menus.size(), static_cast<std::size_t>(window().menuBar()->actions().size()));
  for (const QAction* menu : window().menuBar()->actions()) {
    std::set<QString> keys;
    for (const QAction* line : menu->menu()->actions()) {
      const QString key = QKeySequence::mnemonic(line->text()).toString();
      if (key.isEmpty()) continue;
      EXPECT_TRUE(keys.insert(key).second) << to_utf8(line->text());
    }
  }
}

INSTANTIATE_TEST_SUITE_P(InEachLanguage, SpokenControls, testing::Values("en", "de"));

} // namespace

} // namespace clampwright::desk
