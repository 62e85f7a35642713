// SPDX-License-Identifier: GPL-3.0-or-later
//
// A bad entry is refused beside its blank, in the words of the command line, and while it stands there is no answer.
// An answer never outlives what it was for.
#include <algorithm>
#include <array>
#include <cstdio>
#include <map>
#include <set>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "core/report/text_writer.hpp"
#include "gui/look/utf8.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/folded_label.hpp"
#include "gui/widgets/page_view.hpp"
#include "tests/gui/desk.hpp"
#include "tests/gui/sentence_cases.hpp"

namespace clampwright::desk {

namespace {

using namespace testing_support;

std::vector<std::string> ids() {
  std::vector<std::string> all;
  for (const Sentence& sentence : sentences())
    all.push_back(sentence.id);
  return all;
}

// Blanks that take any words: what is clamped between may be called by any name.
bool takes_anything(const Blank& blank) { return blank.option == "--soft"; }

std::string bad_entry(const Blank& blank) {
  // A name that nobody knows may be a maker's mark; one without an end is none.
  if (blank.option == "TEXT") return std::string(400, 'x');
  if (blank.kind == &number_blank() || blank.kind == &friction_blank() || blank.kind == &nut_factor_blank() ||
      blank.kind == &share_blank())
    return "0,12";
  return "zzqx";
}

// What else must be said, or must not, for the command line to come to that blank. The desk reads each by itself.
Words around(const Sentence& sentence, const Blank& blank) {
  Words words = example_of(sentence);
  const std::string& option = blank.option;
  const auto is = [&](std::initializer_list<const char*> options) {
    return std::ranges::find(options, option) != options.end();
  };
  const auto drop = [&](std::initializer_list<const char*> options) {
    for (const char* one : options)
      words.erase(one);
  };
  const auto add = [&](std::initializer_list<const char*> options) {
    for (const char* one : options)
      if (const Blank* other = sentence.blank(one)) words[one] = other->example;
  };
  if (is({"--mu", "--mu-thread", "--mu-head"})) drop({"--surfaces"});
  if (option == "--with-mu") drop({"--with-surfaces"});
  if (sentence.id == "hand" && is({"--bore", "--shaft"})) add({"--bore", "--shaft"});
  if (option == "--mu-thread") words["--mu-head"] = "0.12";
  if (option == "--mu-head") words["--mu-thread"] = "0.12";
  if (option == "--face-outer") words["--face-inner"] = "11 mm";
  if (option == "--face-inner") words["--face-outer"] = "16 mm";
  if (option == "--joint" || option == "JOINT")
    words = sentence.id == "substitute" ? Words{{"--with", "M10 10.9"}} : Words{};
  if (sentence.id == "torque" && is({"--proof-fraction", "--yield-fraction"})) drop({"--preload"});
  if (sentence.id == "hold" && is({"--plug-thread", "--plug-material", "--plug-engaged"}))
    add({"--plug-thread", "--plug-engaged", "--plug-material"});
  if (sentence.id == "wrench" && option == "--wrench") drop({"--arm"});
  if (sentence.id == "wrench" && option == "--low") add({"--high"});
  if (sentence.id == "gauge" && option == "--tpi") drop({"--pitch"});
  if (sentence.id == "strip") {
    if (option == "--outer-thread") words["--insert"] = "keyed";
    if (is({"--surfaces", "--mu", "--nut-factor", "--head", "--washer"})) add({"--torque"});
  }
  if (sentence.id == "slot" && option == "--torque") drop({"--low", "--high"});
  if (is({"--part-modulus"})) drop({"--part-material"});
  if (option == "--shank-length") words["--thread-length"] = "15 mm";
  if (option == "--thread-length") words["--shank-length"] = "10 mm";
  if (is({"--shank-length", "--thread-length"})) drop({"--bolt-length"});
  if (sentence.id == "workup") {
    if (is({"--material", "--engagement"})) {
      drop({"--nut"});
      add({"--material", "--engagement"});
    }
    if (option == "--soft-limit") add({"--soft"});
    if (is({"--carry", "--radius", "--face-friction", "--faces"})) add({"--carry", "--radius", "--face-friction"});
    if (option == "--slip") add({"--slip", "--face-friction"});
    if (is({"--pressure", "--sealed-diameter"})) add({"--pressure", "--sealed-diameter"});
  }
  if (sentence.id == "chart" && option == "--yield-fraction") drop({"--proof-fraction"});
  if (sentence.id == "surfaces") {
    if (option == "--stated-nut-factor") drop({"--stated"});
    if (option == "--fitted-nut-factor") drop({"--fitted"});
    if (option == "--class") add({"--thread"});
  }
  words[option] = bad_entry(blank);
  return words;
}

class SentenceRefusal : public Desk, public testing::WithParamInterface<std::string> {
 protected:
  void SetUp() override { open_demo(); }
  const Sentence& sentence = *sentence_named(GetParam());
};

// A list of all classes or materials would push the rest of the form away while it is typed.
TEST_P(SentenceRefusal, TakesThreeLinesUntilMoreAreAskedFor) {
  for (const QSize size : {QSize(1180, 800), QSize(800, 600)}) {
    window().resize(size);
    window().open({Target::To::sentence, sentence.id});
    auto& page = *qobject_cast<SentencePage*>(window().page());
    for (const Blank& blank : sentence.blanks) {
      if (blank.kind->shape() == Shape::tick || takes_anything(blank)) continue;
      SCOPED_TRACE(sentence.id + " " + blank.option);
      page.fill_in({});
      page.show_more(true);
      settle();
      BlankEdit& edit = *page.blank(blank.option);
      const int before = edit.height();
      page.fill_in(around(sentence, blank));
      settle();
      ASSERT_TRUE(edit.is_refused());
      auto& label = *edit.findChild<FoldedLabel*>();
      auto& all = *edit.findChild<QPushButton*>();
      const int line = label.fontMetrics().lineSpacing();
      EXPECT_LE(edit.height(), before + 3 * line + 4) << to_utf8(edit.said_below());
      EXPECT_LE(edit.width(), page.width());
      EXPECT_EQ(label.text(), edit.said_below());
      EXPECT_EQ(edit.field()->accessibleDescription(), edit.said_below());
      EXPECT_EQ(all.isVisible(), label.is_cut());
      if (!label.is_cut()) continue;
      all.click();
      settle();
      EXPECT_FALSE(label.is_cut());
      EXPECT_GE(label.height(), label.heightForWidth(label.width()));
      EXPECT_GT(label.height(), 3 * line);
    }
  }
}

TEST_P(SentenceRefusal, StandsBesideTheBlankInTheWordsOfTheCommandLine) {
  SentencePage page(*bench, sentence);
  for (const Blank& blank : sentence.blanks) {
    if (blank.kind->shape() == Shape::tick || takes_anything(blank)) continue;
    SCOPED_TRACE(sentence.id + " " + blank.option);
    const Words words = around(sentence, blank);
    page.fill_in(words);
    const BlankEdit& edit = *page.blank(blank.option);
    EXPECT_TRUE(edit.is_refused());
    EXPECT_FALSE(page.answer().has_page());
    EXPECT_FALSE(page.printable());
    EXPECT_TRUE(page.to_copy().isEmpty());
    const std::string said = to_utf8(edit.said_below());
    // "clampwright: hold: --stroke: what is wrong (as typed)\n  what to write instead\n"
    const Finished finished = run_program(arguments(sentence, page.words()), file("demo.clampwright"));
    EXPECT_TRUE(finished.out.empty());
    const std::size_t line = finished.err.find("\n  ");
    ASSERT_NE(line, std::string::npos) << finished.err << said;
    const std::string given = finished.err.substr(line + 3, finished.err.size() - line - 4);
    ASSERT_FALSE(given.empty());
    // Its options are the blanks here (blank_names_test.cpp).
    const std::string hint = to_utf8(by_blanks(from_utf8(given), names_for(sentence.blanks), blank.option));
    ASSERT_TRUE(said.ends_with("; " + hint)) << said << "\n" << finished.err;
    const std::string message = said.substr(0, said.size() - hint.size() - 2);
    EXPECT_FALSE(message.empty());
    EXPECT_NE(finished.err.find(message), std::string::npos) << said << "\n" << finished.err;
  }
}

// Either there is no answer, or it is the one to what stands in the blanks now.
void expect_fresh(const SentencePage& page, const Place& place) {
  const auto reply = page.sentence().answer(page.words(), place);
  if (!page.answer().has_page()) {
    const bool refused = std::ranges::any_of(page.blanks(), [](const BlankEdit* edit) { return edit->is_refused(); });
    EXPECT_TRUE(refused || !page.said_instead().isEmpty());
    return;
  }
  ASSERT_TRUE(reply) << reply.error().message;
  EXPECT_EQ(report::write_text(page.answer().content().document), report::write_text(reply->page.document));
}

TEST_P(SentenceRefusal, LeavesNoAnswerThatIsStale) {
  SentencePage page(*bench, sentence);
  page.show();
  for (const Blank& blank : sentence.blanks) {
    SCOPED_TRACE(sentence.id + " " + blank.option);
    page.fill_in_example();
    ASSERT_TRUE(page.answer().has_page()) << to_utf8(page.said_instead());
    BlankEdit& edit = *page.blank(blank.option);
    if (auto* tick = qobject_cast<QCheckBox*>(edit.field())) {
      tick->click();
      EXPECT_TRUE(edit.words());
    } else {
      auto* list = qobject_cast<QComboBox*>(edit.field());
      auto* line = list != nullptr ? list->lineEdit() : qobject_cast<QLineEdit*>(edit.field());
      ASSERT_NE(line, nullptr);
      line->end(false);
      QTest::keyClick(line, Qt::Key_1);
      ASSERT_TRUE(edit.words());
      EXPECT_NE(edit.words()->find('1'), std::string::npos);
    }
    expect_fresh(page, bench->place());
  }
}

TEST_P(SentenceRefusal, IsNoneForAnEmptySentence) {
  const SentencePage page(*bench, sentence);
  EXPECT_FALSE(page.answer().has_page());
  for (const BlankEdit* edit : page.blanks())
    EXPECT_FALSE(edit->is_refused());
  EXPECT_TRUE(page.said_instead().startsWith(QStringLiteral("Still to be filled in: ")))
      << to_utf8(page.said_instead());
}

TEST_P(SentenceRefusal, HasAnExampleThatIsAnswered) {
  SentencePage page(*bench, sentence);
  page.fill_in_example();
  EXPECT_TRUE(page.answer().has_page()) << to_utf8(page.said_instead());
  for (const BlankEdit* edit : page.blanks())
    EXPECT_FALSE(edit->is_refused()) << edit->option() << to_utf8(edit->said_below());
}

INSTANTIATE_TEST_SUITE_P(All, SentenceRefusal, testing::ValuesIn(ids()), [](const auto& one) { return one.param; });

class Blanks : public Desk {};

TEST_F(Blanks, TakeWhatTheyOffer) {
  open_demo();
  const Place place = bench->place();
  std::set<const BlankKind*> seen;
  for (const Sentence& sentence : sentences())
    for (const Blank& blank : sentence.blanks) {
      if (!seen.insert(blank.kind).second) continue;
      for (const Offer& offer : blank.kind->offers(place)) {
        const auto understood = blank.kind->understood(offer.word, place);
        ASSERT_TRUE(understood) << sentence.id << " " << blank.option << ": " << offer.word;
        EXPECT_FALSE(understood->isEmpty()) << offer.word;
      }
    }
  EXPECT_GT(seen.size(), 30U);
}

TEST_F(Blanks, UnderstandTheirExample) {
  open_demo();
  for (const Sentence& sentence : sentences())
    for (const Blank& blank : sentence.blanks) {
      const auto understood = blank.kind->understood(blank.example, bench->place());
      EXPECT_TRUE(understood) << sentence.id << " " << blank.option << ": " << blank.example;
    }
}

// What a shell makes of the line, one argument a line.
std::vector<std::string> by_shell(const std::string& line) {
  const std::string command = "printf '%s\\n' " + line.substr(line.find(' ') + 1);
  std::vector<std::string> words;
  FILE* pipe = ::popen(command.c_str(), "r");
  if (pipe == nullptr) return words;
  std::string text;
  std::array<char, 256> buffer{};
  while (std::fgets(buffer.data(), buffer.size(), pipe) != nullptr)
    text += buffer.data();
  ::pclose(pipe);
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = text.find('\n', begin);
    words.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return words;
}

TEST(CommandLine, SurvivesTheShell) {
  const Words awkward{{"TEXT", "it's \"8.8\" $HOME `x` * \\n ; #"}, {"--part", "bolt"}};
  const Sentence& headmark = *sentence_named("headmark");
  EXPECT_EQ(by_shell(command_line(headmark, awkward)),
            (std::vector<std::string>{"headmark", "it's \"8.8\" $HOME `x` * \\n ; #", "--part", "bolt"}));
  const Sentence& substitute = *sentence_named("substitute");
  const Words words{{"ORIGINAL", "M10 8.8"}, {"--with", "3/8-24 UNF SAE 8"}, {"--lock", "split-pin + second-nut"}};
  EXPECT_EQ(by_shell(command_line(substitute, words)),
            (std::vector<std::string>{"substitute", "M10 8.8", "--with", "3/8-24 UNF SAE 8", "--lock", "split-pin",
                                      "--lock", "second-nut"}));
}

// Run by another program it gives the answer of the page, in its units and from its file.
TEST_F(Blanks, AreTheSameQuestionOnTheCommandLine) {
  open_demo();
  bench->use_imperial(true);
  bench->use_torque_unit(&quantity::unit_named("lbf.in"));
  SentencePage page(*bench, *sentence_named("hold"));
  page.fill_in({{"--joint", "pump/clutch-hub"}});
  ASSERT_TRUE(page.answer().has_page());
  std::vector<std::string> words = by_shell(page.as_command_line());
  EXPECT_EQ(words, (std::vector<std::string>{"hold", "--joint", "pump/clutch-hub", "--units", "imperial", "--unit",
                                             "lbf.in", "--workshop", file("demo.clampwright").string()}));
  words.resize(words.size() - 2); // run_program() says the file itself
  words.emplace_back("--explain");
  const Finished finished = run_program(words, file("demo.clampwright"));
  EXPECT_EQ(finished.out, report::write_text(page.answer().content().document)) << finished.err;
  // Nothing of the workshop, nothing unusual: nothing more to say.
  bench->use_imperial(false);
  bench->use_torque_unit(nullptr);
  page.fill_in({{"--torque", "30 N.m"}, {"--by", "hand"}});
  EXPECT_EQ(page.as_command_line().find("--unit"), std::string::npos) << page.as_command_line();
  EXPECT_EQ(page.as_command_line().find("--workshop"), std::string::npos);
}

} // namespace

} // namespace clampwright::desk
