// SPDX-License-Identifier: GPL-3.0-or-later
//
// The desk says of its blanks what the command line says of its options.
#include <regex>

#include <QApplication>
#include <QClipboard>
#include <QPushButton>
#include <QTextBlock>
#include <QTextDocument>

#include "gui/look/utf8.hpp"
#include "gui/pages/joint_page.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/text/blank_names.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/page_view.hpp"
#include "specdb/workshop/browse.hpp"
#include "tests/gui/desk.hpp"
#include "tests/gui/sentence_cases.hpp"

namespace clampwright::desk {

namespace {

const BlankNames k_names{{"--stop", QStringLiteral("the stop")}, {"--stop-length", QStringLiteral("its length")}};

TEST(BlankNames, StandForOptions) {
  EXPECT_EQ(to_utf8(by_blanks(QStringLiteral("say --stop, or --stop-length 23mm"), k_names)),
            "say “the stop”, or “its length” 23mm");
}

TEST(BlankNames, LeaveWhatNoBlankSays) {
  for (const char* text : {"12 more with --json", "a -- b", "no option", "--stopped"})
    EXPECT_EQ(to_utf8(by_blanks(from_utf8(text), k_names)), text);
}

TEST(BlankNames, AreNotNeededBesideTheBlankItself) {
  EXPECT_EQ(to_utf8(by_blanks(QStringLiteral("write --stop-length 23mm or say --stop"), k_names, "--stop-length")),
            "write 23mm or say “the stop”");
  // Where nothing follows to be written, the name is the sentence's object.
  EXPECT_EQ(to_utf8(by_blanks(QStringLiteral("leave out --stop"), k_names, "--stop")), "leave out “the stop”");
}

class OnTheDesk : public Desk {
 protected:
  static void expect_no_option(const std::string& text, const std::string& where) {
    static const std::regex k_option("--[a-z][a-z-]*");
    std::smatch match;
    if (std::regex_search(text, match, k_option)) ADD_FAILURE() << where << ": " << text;
  }
  void expect_none_on_page(const std::string& where) {
    for (const PageView* view : window().page()->findChildren<PageView*>())
      for (QTextBlock block = view->document()->begin(); block.isValid(); block = block.next())
        expect_no_option(to_utf8(block.text()), where);
    for (const BlankEdit* edit : window().page()->findChildren<BlankEdit*>())
      expect_no_option(to_utf8(edit->said_below()), where);
  }
};

TEST_F(OnTheDesk, NoAnswerNamesAnOption) {
  open_demo();
  for (const testing_support::SentenceCase& one : testing_support::sentence_cases()) {
    window().open({Target::To::sentence, one.sentence});
    auto& page = dynamic_cast<SentencePage&>(*window().page());
    page.fill_in(testing_support::words_of(one));
    page.answer().unfold_working(true);
    settle();
    expect_none_on_page(one.name);
    expect_no_option(to_utf8(page.said_instead()), one.name);
  }
}

TEST_F(OnTheDesk, NoJointNamesAnOption) {
  open_demo();
  for (const specdb::MachineLine& machine : specdb::machines_with_counts(*bench->workshop()))
    for (const specdb::Hit& joint : specdb::joints_of_machine(*bench->workshop(), machine.slug)) {
      window().open({Target::To::joint, joint.joint});
      settle();
      expect_none_on_page(joint.joint);
    }
}

// What was copied is read without the program: it names blanks, and speaks the language of the desk.
TEST_F(OnTheDesk, TheCopiedAnswerIsThatOfThePage) {
  bench->speak_language(QStringLiteral("de"));
  window().open({Target::To::sentence, "strip"});
  auto& page = dynamic_cast<SentencePage&>(*window().page());
  page.fill_in({{"THREAD", "M10"}, {"--class", "8.8"}, {"--material", "cast-aluminium"}});
  settle();
  const auto buttons = page.findChildren<QPushButton*>();
  const auto copy = std::ranges::find_if(buttons, [](const QPushButton* button) {
    return button->text().remove(QLatin1Char('&')) == QStringLiteral("Antwort kopieren");
  });
  ASSERT_NE(copy, buttons.end());
  (*copy)->click();
  const std::string copied = to_utf8(QApplication::clipboard()->text());
  EXPECT_NE(copied.find("Schraube"), std::string::npos) << copied;
  EXPECT_NE(copied.find("Quellen"), std::string::npos) << copied;
  expect_no_option(copied, "strip");
}

} // namespace

} // namespace clampwright::desk
