// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/refused.hpp"

#include <fstream>
#include <sstream>

#include <gmock/gmock.h>

namespace clampwright::cli {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;
using namespace testing_support;

nlohmann::json result_of(const char* line) { return answer_of(words_of(line)).at("result"); }

// clang-format off
const Refused k_refused[] = {
    {"sequence",                                              64, "missing",        "the number of bolts is missing"},
    {"sequence 6",                                            64, "surplus",        "--bolts 6"},
    {"sequence --bolts 1",                                    65, "out-of-range",   "2 to 24"},
    {"sequence --bolts 25",                                   65, "out-of-range",   "2 to 24"},
    {"sequence --bolts -4",                                   65, "out-of-range",   "2 to 24"},
    {"sequence --bolts six",                                  65, "not-a-number",   "whole number"},
    {"sequence --bolts 6.5",                                  65, "out-of-range",   "whole number"},
    {"sequence --bolts 6mm",                                  65, "not-a-number",   "whole number"},
    {"sequence --bolts 99999999999999999999",                 65, "out-of-range",   "2 to 24"},
    {"sequence --bolts 7 --pattern rows",                     65, "out-of-range",   "even"},
    {"sequence --bolts 6 --pattern star",                     65, "not-understood", "circle, row or rows"},
    {"sequence --bolts 6 --passes 75%,50%,100%",              65, "out-of-range",   "do not rise"},
    {"sequence --bolts 6 --passes 50%,75%",                   65, "out-of-range",   "not at 100 %"},
    {"sequence --bolts 6 --passes half",                      65, "",               "--passes 50%,75%,100%"},
    {"sequence --bolts 6 --torque 24",                        65, "bare-number",    "24.5N.m"},
    {"sequence --bolts 6 --torque 24J",                       65, "",               "24J"},
    {"sequence --bolts 6 --torque 0Nm",                       65, "out-of-range",   "nothing"},
    {"sequence --bolts 6 --undo --torque 24Nm",               64, "surplus",        "no torque to set"},
    {"sequence --bolts 6 --undo --passes 100%",               64, "surplus",        "no torque to set"},
    {"sequence --bolts 6 --format png",                       65, "not-understood", "text or svg"},
    {"sequence --bolts 6 --replace",                          64, "missing",        "--output FILE"},
    {"sequence --bolts 6 --output \"\"",                      64, "",               "--output"},
};
// clang-format on

std::string content_of(const std::string& path) {
  std::ifstream file(path);
  std::stringstream all;
  all << file.rdbuf();
  return all.str();
}

class DemoSequence : public testing::Test {
 protected:
  void SetUp() override { ASSERT_EQ(static_cast<int>(run_in(folder_.path(), {"demo"}).exit), 0); }
  [[nodiscard]] Printed run_here(const char* line) const { return run_in(folder_.path(), words_of(line)); }
  [[nodiscard]] nlohmann::json answer(const std::string& line) const {
    return json_of(run_here((line + " --json").c_str()));
  }
  TemporaryFolder folder_;
};

} // namespace

TEST(Sequence, RefusesWhatItCannotAnswerAndSaysWhatToWrite) {
  for (const Refused& refused : k_refused)
    expect_refused(refused);
}

TEST(Sequence, GivesOrderAndPasses) {
  const auto result = result_of("sequence --bolts 6");
  EXPECT_EQ(result["order"], nlohmann::json({1, 4, 2, 5, 3, 6}));
  EXPECT_EQ(result["passes"], nlohmann::json({0.5, 0.75, 1.0}));
  EXPECT_EQ(result["pattern"], "circle");
  for (const char* key : {"torque_N_m", "passes_N_m", "wrench_marks", "wrench_unit", "joint", "page_says", "invented"})
    EXPECT_TRUE(result[key].is_null()) << key;
}

TEST(Sequence, GivesPassesUnroundedAndMarksForTheWrench) {
  const auto result = result_of("sequence --bolts 4 --torque 45Nm");
  EXPECT_EQ(result["passes_N_m"], nlohmann::json({22.5, 33.75, 45.0}));
  EXPECT_EQ(result["wrench_marks"], nlohmann::json({22.5, 33.5, 45.0}));
  EXPECT_EQ(result["wrench_unit"], "N.m");
}

TEST(Sequence, MarksTheWrenchInTheUnitOfTheTorqueOrTheOneAskedFor) {
  EXPECT_EQ(result_of("sequence --bolts 4 --torque \"18 lbf.ft\"")["wrench_unit"], "lbf.ft");
  EXPECT_EQ(result_of("sequence --bolts 4 --torque 24Nm --unit lbf.in")["wrench_unit"], "lbf.in");
  EXPECT_EQ(result_of("sequence --bolts 4 --torque \"18 lbf.ft\"")["wrench_marks"], nlohmann::json({9, 13.4, 18}));
}

TEST(Sequence, TakesFewerRoundsForASmallTorqueAndSaysWhy) {
  const auto result = result_of("sequence --bolts 4 --torque 8Nm");
  EXPECT_EQ(result["passes"], nlohmann::json({0.5, 1.0}));
  EXPECT_THAT(result["passes_because"], HasSubstr("our own rule"));
  EXPECT_EQ(result_of("sequence --bolts 4 --torque 8Nm --passes 50%,75%,100%")["passes"].size(), 3U);
}

TEST(Sequence, LoosensBackwards) {
  const auto result = result_of("sequence --bolts 4 --undo");
  EXPECT_EQ(result["order"], nlohmann::json({4, 2, 3, 1}));
  EXPECT_TRUE(result["passes"].is_null());
}

TEST(Sequence, NamesThePublishedRulesWithTheirSources) {
  const auto answer = answer_of(words_of("sequence --bolts 6"));
  EXPECT_EQ(answer["result"]["published"][0]["passes"], nlohmann::json({0.7, 1.0}));
  EXPECT_EQ(answer["result"]["published"][0]["source"]["known"], "second-hand");
  EXPECT_THAT(codes_of(answer), ElementsAre("maker-first"));
}

TEST(Sequence, WritesAPictureToAFileOnce) {
  const TemporaryFolder folder;
  const std::string file = folder.path() + "/order.svg";
  const Arguments line{"sequence", "--bolts", "12", "--output", file};
  const Printed first = run_cli(line);
  EXPECT_EQ(static_cast<int>(first.exit), 0);
  EXPECT_EQ(first.out, "");
  EXPECT_THAT(content_of(file), HasSubstr("<svg"));
  EXPECT_EQ(static_cast<int>(run_cli(line).exit), 73);
  Arguments again = line;
  again.emplace_back("--replace");
  EXPECT_EQ(static_cast<int>(run_cli(again).exit), 0);
}

TEST_F(DemoSequence, TakesWhatTheRecordOfAJointSays) {
  const auto result = answer("sequence --joint pump/head-nuts")["result"];
  EXPECT_EQ(result["order"], nlohmann::json({1, 3, 2, 4}));
  EXPECT_EQ(result["wrench_marks"], nlohmann::json({6, 12, 17}));
  EXPECT_EQ(result["page_says"], "crosswise, then once round until nothing moves");
  EXPECT_EQ(result["seen_from"], "looking at the nut");
  EXPECT_EQ(result["invented"], true);
}

TEST_F(DemoSequence, SaysOnThePictureTooThatTheDemoIsInvented) {
  EXPECT_THAT(run_here("sequence --joint pump/head-nuts --format svg").out, HasSubstr("INVENTED"));
  EXPECT_THAT(run_cli(words_of("sequence --bolts 4 --format svg")).out, Not(HasSubstr("INVENTED")));
}

TEST_F(DemoSequence, SetsNothingByAFigureThatCannotBeUsed) {
  const auto result = answer("sequence --joint pump/base-nuts")["result"];
  EXPECT_TRUE(result["torque_N_m"].is_null());
  EXPECT_EQ(result["order"], nlohmann::json({1, 3, 2, 4}));
}

TEST_F(DemoSequence, AsksHowTheBoltsLieWhereThatIsNotOnRecord) {
  const Printed printed = run_here("sequence --joint winch/motor-plate");
  EXPECT_EQ(static_cast<int>(printed.exit), 64);
  EXPECT_THAT(printed.err, HasSubstr("--pattern"));
  EXPECT_EQ(answer("sequence --joint winch/motor-plate --pattern circle")["result"]["bolts"], 4);
}

// The page has 20 N·m and 60° on.
TEST_F(DemoSequence, EndsWithTheAngleOfThePage) {
  const std::string line = "sequence --joint winch/motor-plate --pattern circle";
  EXPECT_EQ(answer(line.c_str())["result"]["then_angle_deg"], 60.0);
  EXPECT_THAT(run_here(line.c_str()).out, HasSubstr("turn each 60°"));
  EXPECT_THAT(run_here((line + " --format svg").c_str()).out, HasSubstr("60° each"));
  EXPECT_TRUE(answer((line + " --undo").c_str())["result"]["then_angle_deg"].is_null());
}

// "crosswise in two passes" is in words, and words are not counted.
TEST_F(DemoSequence, LeavesTheNumberOfRoundsToTheWordsOfThePage) {
  EXPECT_THAT(run_here("sequence --joint pump/base-nuts --pattern circle").out, HasSubstr("that one holds"));
}

TEST_F(DemoSequence, RefusesAnotherNumberThanTheRecordHas) {
  EXPECT_EQ(static_cast<int>(run_here("sequence --joint pump/head-nuts --bolts 6").exit), 64);
  EXPECT_EQ(static_cast<int>(run_here("sequence --joint pump/clutch-hub").exit), 64);
  EXPECT_EQ(static_cast<int>(run_here("sequence --joint pump/nothing-like-it").exit), 66);
}

TEST_F(DemoSequence, IsInShowByItselfAndMarkedComputed) {
  EXPECT_THAT(run_here("show pump/head-nuts").out, HasSubstr("computed order 1 3 2 4"));
  const auto order = answer("show pump/head-nuts")["result"]["order"];
  EXPECT_EQ(order["order"], nlohmann::json({1, 3, 2, 4}));
  EXPECT_EQ(order["basis"], "computed");
  EXPECT_TRUE(answer("show pump/clutch-hub")["result"]["order"].is_null());
  EXPECT_THAT(run_here("show winch/motor-plate").out, Not(HasSubstr("computed order")));
}

TEST_F(DemoSequence, SaysInShowWhatTheRecordLacksForTheAngle) {
  const auto result = answer("show winch/motor-plate")["result"];
  EXPECT_TRUE(result["turned"].is_null());
  EXPECT_THAT(result["not_turned_because"], HasSubstr("no grip"));
  EXPECT_THAT(run_here("show winch/motor-plate").out, HasSubstr("what that adds is not known"));
}

} // namespace clampwright::cli
