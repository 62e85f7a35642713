// SPDX-License-Identifier: GPL-3.0-or-later
#include <fstream>

#include <gmock/gmock.h>

#include "tests/cli/demo_workshop.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::HasSubstr;
using ::testing::Lt;

class Demo : public DemoWorkshop {
 protected:
  [[nodiscard]] nlohmann::json show(const std::string& joint) const { return json_here({"show", joint}); }
};

TEST_F(Demo, ShowsTheHubWhichWayItTurnsAndSeenFromWhere) {
  const auto result = show("pump/clutch-hub")["result"];
  EXPECT_EQ(result["thread"], "M14x1.5-LH");
  EXPECT_EQ(result["turn_to_tighten"], "anticlockwise");
  EXPECT_EQ(result["turn_to_undo"], "clockwise");
  EXPECT_EQ(result["seen_from"], "looking at the clutch");
}

TEST_F(Demo, ShowsTheHubsTorqueInPoundForceFeet) {
  // 42/1.3558179 = 30.98
  EXPECT_THAT(run_here({"show", "pump/clutch-hub", "--unit", "lbf.ft"}).out, HasSubstr("31.0 lbf·ft"));
}

TEST_F(Demo, PutsThePrintedValueBeforeTheClampLoad) {
  const std::string text = run_here({"show", "pump/clutch-hub"}).out;
  const std::size_t printed = text.find("42 N·m, as printed");
  ASSERT_NE(printed, std::string::npos);
  EXPECT_THAT(printed, Lt(text.find("Tighten")));
  EXPECT_LT(text.find("Tighten"), text.find("Clamp load"));
  EXPECT_LT(text.find("Clamp load"), text.find("left-hand]"));
}

TEST_F(Demo, FillsNothingInWhereTheMakerGivesNoTorque) {
  const auto result = show("winch/brake-pivot")["result"];
  EXPECT_EQ(result["torque"]["printed"], "tighten firmly");
  for (const char* key : {"value", "unit", "low_N_m", "nominal_N_m", "high_N_m"})
    EXPECT_TRUE(result["torque"][key].is_null()) << key;
  EXPECT_TRUE(result["clamp"].is_null());
  EXPECT_EQ(result["status"], "none");
}

TEST_F(Demo, KeepsTheForeignPrintWordForWord) {
  const auto torque = show("pump/mounts")["result"]["torque"];
  EXPECT_EQ(torque["printed"], "3,4 mkg");
  EXPECT_EQ(torque["unit"], "kgf.m");
  EXPECT_NEAR(torque["nominal_N_m"], 33.34261, 1e-9); // 3.4·9.80665
}

TEST_F(Demo, ListsTheKeysOfTheContract) {
  const auto result = show("pump/head-nuts")["result"];
  for (const char* key :
       {"joint", "machine", "assembly", "name", "kind", "thread", "torque", "turn_to_tighten", "turn_to_undo",
        "seen_from", "surfaces", "lock", "sequence", "recheck", "source", "status", "clamp", "wrench"})
    EXPECT_TRUE(result.contains(key)) << key;
}

TEST_F(Demo, FindsAJointByTheBeginningOfItsWords) {
  const auto hits = json_of(run_here({"find", "clu", "hu", "--json"}))["result"]["hits"];
  ASSERT_EQ(hits.size(), 1U);
  EXPECT_EQ(hits[0]["joint"], "pump/clutch-hub");
  EXPECT_EQ(hits[0]["torque_printed"], "42 N·m");
}

TEST_F(Demo, AnswersAnEmptySearchWithNoHits) {
  const Printed printed = run_here({"find", "zeppelin", "--json"});
  EXPECT_EQ(printed.exit, ExitCode::answered);
  EXPECT_TRUE(json_of(printed)["result"]["hits"].empty());
}

TEST_F(Demo, SaysInTheSearchWhatWordsWereTakenFor) {
  const auto result = json_of(run_here({"find", "drive", "plly", "--json"}))["result"];
  EXPECT_EQ(result["read_as"], "drive pulley");
  ASSERT_EQ(result["hits"].size(), 1U);
  EXPECT_EQ(result["hits"][0]["joint"], "winch/pulley-bolt");
  EXPECT_THAT(run_here({"find", "drive", "plly"}).out,
              HasSubstr("Nothing begins with \"plly\"; read as: drive pulley"));
}

TEST_F(Demo, SaysNothingOfTheKindWhereTheWordsAreThere) {
  EXPECT_TRUE(json_of(run_here({"find", "drive", "pulley", "--json"}))["result"]["read_as"].is_null());
  EXPECT_TRUE(json_of(run_here({"find", "zeppelin", "--json"}))["result"]["read_as"].is_null());
}

TEST_F(Demo, SuggestsButNeverShowsTheJointThatWordsMayHaveMeant) {
  const Printed printed = run_here({"show", "drive", "plly"});
  EXPECT_EQ(printed.exit, ExitCode::no_such);
  EXPECT_EQ(printed.out, "");
  EXPECT_THAT(printed.err, HasSubstr("winch/pulley-bolt"));
}

TEST_F(Demo, ShowsInTheSearchWhatIsNotToBeUsed) {
  EXPECT_THAT(run_here({"find", "blower"}).out, HasSubstr("the figure cannot be meant as printed"));
  EXPECT_THAT(run_here({"find", "base", "nuts"}).out,
              testing::AllOf(HasSubstr("17 N·m or 19 N·m"), HasSubstr("the sources in force differ")));
  const auto hits = json_of(run_here({"find", "base", "nuts", "--json"}))["result"]["hits"];
  ASSERT_EQ(hits.size(), 1U);
  EXPECT_EQ(hits[0]["torque_printed"], "17 N·m");
  EXPECT_EQ(hits[0]["also_in_force"][0], "19 N·m");
  EXPECT_EQ(hits[0]["not_to_be_used_because"], "the sources in force differ");
}

TEST_F(Demo, NamesTheCandidatesWhereWordsFitSeveralJoints) {
  const Printed printed = run_here({"show", "pump"});
  EXPECT_EQ(printed.exit, ExitCode::no_such);
  EXPECT_THAT(printed.err, HasSubstr("17 joints fit"));
  EXPECT_THAT(printed.err, HasSubstr("and 9 more"));
}

TEST_F(Demo, IsShownAgainWithoutBeingMadeAgain) {
  const auto again = json_of(run_here({"demo", "--json"}));
  EXPECT_EQ(again["input"]["made"], false);
  EXPECT_EQ(again["result"]["joint"], "pump/clutch-hub");
  EXPECT_EQ(again["result"]["invented"], true);
}

TEST_F(Demo, ShowsItsHintsOnStandardErrorUnlessQuiet) {
  EXPECT_THAT(run_here({"demo"}).err, HasSubstr("next:"));
  EXPECT_EQ(run_here({"demo", "--quiet"}).err, "");
}

TEST(DemoCommand, LeavesAnotherFileAlone) {
  const TemporaryFolder folder;
  const std::string file = folder.path() + "/mine.clampwright";
  std::ofstream(file) << "my notes\n";
  const Printed printed = run_in(folder.path(), {"--workshop", file, "demo"});
  EXPECT_EQ(printed.exit, ExitCode::cannot_create);
  EXPECT_THAT(printed.err, HasSubstr("--workshop"));
  std::ifstream in(file);
  EXPECT_EQ(std::string(std::istreambuf_iterator<char>(in), {}), "my notes\n");
}

TEST(DemoCommand, FailsWhereTheFolderCannotBeMade) {
  const TemporaryFolder folder;
  std::ofstream(folder.path() + "/plain") << "a file where a folder would have to be\n";
  EXPECT_EQ(run_in(folder.path() + "/plain", {"demo"}).exit, ExitCode::cannot_create);
}

TEST(Calculators, WorkBesideADamagedWorkshop) {
  const TemporaryFolder folder;
  const std::string file = folder.path() + "/broken";
  std::ofstream(file) << "SQLite format 3\0 and then nothing of the kind";
  EXPECT_EQ(run_in(folder.path(), {"--workshop", file, "clamp", "M10", "--torque", "45Nm"}).exit, ExitCode::answered);
}

} // namespace
} // namespace clampwright::cli
