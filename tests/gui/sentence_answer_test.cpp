// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every sentence against the command line for the same words: the page is the same text, the big figures are the
// numbers of the JSON, the findings are the same.
#include <charconv>
#include <cstdlib>
#include <ctime>
#include <map>
#include <set>

#include <nlohmann/json.hpp>

#include "core/report/text_writer.hpp"
#include "gui/look/utf8.hpp"
#include "specdb/demo/demo_workshop.hpp"
#include "tests/gui/desk.hpp"
#include "tests/gui/sentence_cases.hpp"

namespace clampwright::desk {

namespace {

using namespace testing_support;
using nlohmann::json;

// The day by which the program answers, too.
std::chrono::year_month_day calendar_day() {
  const std::time_t now = std::time(nullptr);
  const std::tm local = *std::localtime(&now);
  return std::chrono::year_month_day{std::chrono::year(local.tm_year + 1900),
                                     std::chrono::month(static_cast<unsigned>(local.tm_mon + 1)),
                                     std::chrono::day(static_cast<unsigned>(local.tm_mday))};
}

// What one of the JSON's unit is in the unit shown. Exact: pound 0.45359237 kg, inch 25.4 mm, gravity 9.80665 m/s².
double shown_in(const std::string& unit) {
  constexpr double k_pound_force = 0.45359237 * 9.80665;
  static const std::map<std::string, double> factors{{"kN", 1e-3},     {"N·m", 1},
                                                     {"mm", 1},        {"h", 1},
                                                     {"per inch", 1},  {"lbf", 1 / k_pound_force},
                                                     {"in", 1 / 25.4}, {"lbf·ft", 1 / (k_pound_force * 12 * 0.0254)}};
  return unit.starts_with('=') ? 1 : factors.at(unit);
}

// The words of the JSON as the desk says them large.
const std::map<std::string, std::string>& said_as() {
  static const std::map<std::string, std::string> words{{"left", "left-hand"},
                                                        {"right", "right-hand"},
                                                        {"adequate", "will do"},
                                                        {"adequate-at-other-torque", "will do at another torque"},
                                                        {"not-adequate", "will not do"},
                                                        {"not-known", "not known"},
                                                        {"bolt", "the bolt"},
                                                        {"bolt-thread", "the bolt's thread"},
                                                        {"part-thread", "the thread in the part"},
                                                        {"with-lock-off", "with the lock off"},
                                                        {"tables-differ", "the tables differ"},
                                                        {"mind", "they go together with care"}};
  return words;
}

void expect_same(const Figure& figure, const json& wanted, const ExpectedFigure& expected) {
  const std::string value = to_utf8(figure.value);
  if (expected.unit.empty()) {
    const auto word = wanted.get<std::string>();
    const auto found = said_as().find(word);
    const std::string usual = found == said_as().end() ? word : found->second;
    EXPECT_EQ(value, expected.says.empty() ? usual : expected.says) << expected.pointer;
    return;
  }
  double number = 0;
  const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), number);
  ASSERT_EQ(error, std::errc()) << value;
  const std::string unit(end + 1, value.data() + value.size());
  // "72 h (3 days)" says it twice.
  EXPECT_EQ(unit.substr(0, unit.find(" (")), expected.unit.substr(expected.unit.starts_with('=') ? 1 : 0)) << value;
  const double exact = wanted.get<double>() * shown_in(expected.unit);
  // Three digits are shown at the least.
  EXPECT_NEAR(number, exact, 5.1e-3 * exact) << expected.pointer;
}

class SentenceAnswer : public testing::TestWithParam<SentenceCase> {
 protected:
  void SetUp() override {
    file = to_utf8(folder.filePath(QStringLiteral("demo.clampwright")));
    ASSERT_TRUE(specdb::make_demo_workshop(file, k_today));
    workshop.emplace(specdb::Workshop::open(file).value());
    place.catalogue = &catalogue;
    place.workshop = &*workshop;
    place.today = calendar_day();
    if (GetParam().imperial) place.units = quantity::DisplayUnits::imperial();
  }

  [[nodiscard]] Finished run(std::vector<std::string> more) const {
    auto all = arguments(sentence, words);
    if (GetParam().imperial) all.insert(all.end(), {"--units", "imperial"});
    all.insert(all.end(), more.begin(), more.end());
    return run_program(std::move(all), file);
  }

  const Sentence& sentence = *sentence_named(GetParam().sentence);
  Words words = words_of(GetParam());
  QTemporaryDir folder;
  std::filesystem::path file;
  specdb::Catalogue catalogue;
  std::optional<specdb::Workshop> workshop;
  Place place;
};

TEST_P(SentenceAnswer, IsThePageOfTheCommandLine) {
  const auto reply = sentence.answer(words, place);
  ASSERT_TRUE(reply) << reply.error().message;
  report::Document document = reply->page.document;
  const Finished explained = run({"--explain"});
  EXPECT_EQ(report::write_text(document), explained.out) << explained.err;
  EXPECT_FALSE(explained.out.empty());
}

TEST_P(SentenceAnswer, HasTheNumbersOfTheJson) {
  const auto reply = sentence.answer(words, place);
  ASSERT_TRUE(reply) << reply.error().message;
  const auto& figures = reply->page.figures;
  ASSERT_FALSE(figures.empty());
  for (const Figure& figure : figures) {
    EXPECT_FALSE(figure.value.isEmpty());
    EXPECT_FALSE(figure.says.isEmpty());
  }
  const Finished finished = run({"--json"});
  const json answer = json::parse(finished.out, nullptr, false);
  ASSERT_FALSE(answer.is_discarded()) << finished.err;
  for (const ExpectedFigure& expected : GetParam().figures) {
    const json::json_pointer pointer(expected.pointer);
    ASSERT_LT(expected.figure, figures.size());
    ASSERT_TRUE(answer.contains(pointer)) << expected.pointer;
    expect_same(figures[expected.figure], answer.at(pointer), expected);
  }
  std::multiset<std::string> told;
  for (const auto& finding : answer.at("findings"))
    // The foot line says it on every page.
    if (finding.at("code") != "maker-first") told.insert(finding.at("code").get<std::string>());
  std::multiset<std::string> shown;
  for (const report::Remark& remark : reply->page.document.remarks)
    shown.insert(remark.code);
  EXPECT_EQ(shown, told);
}

INSTANTIATE_TEST_SUITE_P(All, SentenceAnswer, testing::ValuesIn(sentence_cases()),
                         [](const auto& one) { return std::string(one.param.name); });

// A sentence that nobody tries is a sentence that nobody knows to be right.
TEST(Sentences, AreAllTriedOnTheirExample) {
  std::set<std::string> tried;
  for (const SentenceCase& one : sentence_cases())
    if (!one.alone && one.words.empty()) tried.insert(one.sentence);
  std::set<std::string> there;
  for (const Sentence& sentence : sentences())
    there.insert(sentence.id);
  EXPECT_EQ(tried, there);
}

TEST(Sentences, StandInTheListTheBriefNames) {
  for (const char* id :
       {"clamp", "torque",   "angle", "substitute", "thread",  "gauge", "headmark", "strip", "wrench", "hold",
        "hand",  "sequence", "slot",  "workup",     "convert", "chart", "surfaces", "lock",  "cure",   "running"})
    EXPECT_NE(sentence_named(id), nullptr) << id;
}

// Options of the command line that are no question: where the answer goes, and how. The desk prints and copies.
const std::set<std::string> k_for_files{"--format", "--output", "--replace"};

TEST(Sentences, HaveABlankForEveryOption) {
  for (const Sentence& sentence : sentences()) {
    std::vector<std::string> words;
    for (std::size_t begin = 0; begin < sentence.command.size();) {
      const std::size_t end = std::min(sentence.command.find(' ', begin), sentence.command.size());
      words.push_back(sentence.command.substr(begin, end - begin));
      begin = end + 1;
    }
    words.emplace_back("--help");
    const std::string help = run_program(words, "none.clampwright").out;
    const std::size_t begin = help.find("\nOPTIONS\n");
    if (sentence.id == "convert") {
      EXPECT_EQ(begin, std::string::npos) << help;
      continue;
    }
    ASSERT_NE(begin, std::string::npos) << help;
    const std::string own = help.substr(begin, help.find("\n\n", begin) - begin);
    int found = 0;
    for (std::size_t at = own.find("\n  --"); at != std::string::npos; at = own.find("\n  --", at + 1)) {
      const std::string option = own.substr(at + 3, own.find_first_of(" \n", at + 3) - at - 3);
      ++found;
      EXPECT_TRUE(k_for_files.contains(option) || sentence.blank(option) != nullptr)
          << sentence.id << " has no blank for " << option;
    }
    EXPECT_GT(found, 0) << sentence.id;
  }
}

} // namespace

} // namespace clampwright::desk
