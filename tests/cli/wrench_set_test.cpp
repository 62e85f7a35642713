// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/demo_workshop.hpp"
#include "tests/cli/refused.hpp"

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
    {"wrench",                                                                     64, "missing",        "wrench set"},
    {"wrench set",                                                                 64, "missing",        "--torque"},
    {"wrench set --arm 300mm",                                                     64, "missing",        "the torque that is to reach the joint is missing"},
    {"wrench set --torque 25Nm",                                                   64, "missing",        "--arm 300mm"},
    {"wrench set --torque 25Nm --adaptor 50mm",                                    64, "missing",        "--arm"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor-angle 45deg",                 64, "missing",        "--adaptor 50mm"},
    {"wrench set --torque 25Nm --arm 300mm --lever-error 2%",                      64, "missing",        "--adaptor"},
    {"wrench set 25Nm --arm 300mm",                                                64, "surplus",        "options only"},
    {"wrench set --torque 25Nm --arm 300mm --tolerance 10% --low 20Nm",            64, "surplus",        "in one way"},
    {"wrench set --torque 25 --arm 300mm",                                         65, "bare-number",    "--torque"},
    {"wrench set --torque 25J --arm 300mm",                                        65, "",               "25J"},
    {"wrench set --torque 0Nm --arm 300mm",                                        65, "out-of-range",   "above zero"},
    {"wrench set --torque -25Nm --arm 300mm",                                      65, "",               "-25Nm"},
    {"wrench set --torque 25Nm --arm 300",                                         65, "bare-number",    "--arm"},
    {"wrench set --torque 25Nm --arm 0mm",                                         65, "out-of-range",   "above zero"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 0mm",                         65, "out-of-range",   "leave it away"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor -50mm",                       65, "",               "-50mm"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle 45",     65, "bare-number",    "--adaptor-angle"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle 45mm",   65, "wrong-kind",     "angle"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle 181deg", 65, "out-of-range",   "180deg"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle -190deg",65, "out-of-range",   "180deg"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 300mm --adaptor-angle 180deg",65, "out-of-range",   "under the hand"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 700mm --adaptor-angle 120deg",65, "out-of-range",   "behind it"},
    {"wrench set --torque 25Nm --arm 300mm --low 26Nm",                            65, "out-of-range",   "--low"},
    {"wrench set --torque 25Nm --arm 300mm --high 24Nm",                           65, "out-of-range",   "--high"},
    {"wrench set --torque 25Nm --arm 300mm --tolerance 0%",                        65, "out-of-range",   "--tolerance"},
    {"wrench set --torque 25Nm --arm 300mm --turn left",                           65, "not-understood", "clockwise or anticlockwise"},
    {"wrench set --torque 25Nm --arm 300mm --range 10-60Nm",                       65, "not-understood", "10..60Nm"},
    {"wrench set --torque 25Nm --arm 300mm --range 60..10Nm",                      65, "out-of-range",   "lowest mark first"},
    {"wrench set --torque 25Nm --arm 300mm --range 0..60Nm",                       65, "out-of-range",   "lowest mark first"},
    {"wrench set --torque 25Nm --arm 300mm --range 10..60",                        65, "bare-number",    "--range"},
    {"wrench set --torque 25Nm --arm 300mm --range 10..60Nm --step 1lbf.ft",       65, "two-units",      "lbf.ft"},
    {"wrench set --torque 25Nm --arm 300mm --step 0Nm",                            65, "out-of-range",   "--step"},
    {"wrench set --torque 25Nm --arm 300mm --wrench-accuracy 100%",                65, "out-of-range",   "4%"},
    {"wrench set --torque 25Nm --arm 300mm --operator 100%",                       65, "out-of-range",   "--operator"},
    {"wrench set --torque 25Nm --arm 300mm --nut-factor-spread -1%",               65, "out-of-range",   "--nut-factor-spread"},
    {"wrench set --torque 25Nm --wrench A",                                        66, "",               "workshop"},
};
// clang-format on

TEST(WrenchSet, RefusesWhatItCannotAnswerAndNamesTheMissingPiece) {
  for (const Refused& refused : k_refused)
    expect_refused(refused);
}

TEST(WrenchSet, SpeaksInTheUnitOfTheScale) {
  const std::string out =
      run_cli(words_of("wrench set --torque \"135 in-lb\" --arm 10in --adaptor 1.5in --adaptor-angle 180deg")).out;
  EXPECT_THAT(out, HasSubstr("135 lbf·in reaches the joint"));
  EXPECT_THAT(out, HasSubstr("135 lbf·in = 15.3 N·m"));
}

// By hand: 25·300/350 = 21.428571 N·m; 25 itself would apply 25·350/300 = 29.166667.
TEST(WrenchSet, SaysWhereToSetItAndWhatHappensIfTheAdaptorIsForgotten) {
  const auto result = result_of("wrench set --torque 25Nm --arm 300mm --adaptor 50mm");
  EXPECT_NEAR(result["setting_N_m"].get<double>(), 21.428571, 1e-6);
  EXPECT_NEAR(result["applied_N_m"].get<double>(), 25, 1e-12);
  EXPECT_NEAR(result["applied_if_forgotten_N_m"].get<double>(), 29.166667, 1e-6);
  EXPECT_NEAR(result["levers"]["effective_mm"].get<double>(), 350, 1e-9);
  EXPECT_NEAR(result["levers"]["factor"].get<double>(), 6.0 / 7.0, 1e-12);
}

TEST(WrenchSet, IsNamedByItsTwoWordsInJson) {
  EXPECT_EQ(answer_of(words_of("wrench set --torque 25Nm --arm 300mm"))["command"], "wrench set");
  EXPECT_EQ(answer_of(words_of("wrench set --arm 300mm"))["command"], "wrench set");
}

struct AngleRow {
  const char* angle;
  double setting;
};

// 40 N·m, 400 mm, 100 mm: 16000/(400 + 100·cos a).
// clang-format off
constexpr AngleRow k_angles[] = {
    {"0deg",    32.0},
    {"60deg",   35.5555556},
    {"-60deg",  35.5555556},
    {"90°",     40.0},
    {"180deg",  53.3333333},
    {"-180deg", 53.3333333},
};
// clang-format on

TEST(WrenchSet, TakesTheAngleFromStraightAheadToBackOverTheHandle) {
  for (const AngleRow& row : k_angles) {
    const auto answer = answer_of(
        {"wrench", "set", "--torque", "40Nm", "--arm", "400mm", "--adaptor", "100mm", "--adaptor-angle", row.angle});
    EXPECT_NEAR(answer["result"]["setting_N_m"].get<double>(), row.setting, 1e-6) << row.angle;
  }
}

// By hand, 45°: exactly 22.364338; on half newton-metres 22.5, which applies 22.5·335.355339/300 = 25.151650.
TEST(WrenchSet, TakesTheNearestMarkAndSaysWhatItApplies) {
  const char* line =
      "wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle 45deg --step 0.5Nm --range 10..60Nm";
  const auto result = result_of(line);
  EXPECT_EQ(result["setting"], 22.5);
  EXPECT_EQ(result["unit"], "N.m");
  EXPECT_NEAR(result["exact_setting_N_m"].get<double>(), 22.364338, 1e-6);
  EXPECT_NEAR(result["applied_N_m"].get<double>(), 25.151650, 1e-6);
  EXPECT_NEAR(result["applied_over_wanted"].get<double>(), 1.00606601, 1e-7);
  EXPECT_EQ(result["suitable"], true);
  EXPECT_THAT(run_cli(words_of(line)).out, HasSubstr("Set 22.5"));
}

// By hand: 22.6·300/400 = 16.95 N·m, within 2 % 16.61 to 17.29; the marks beside it are 16 and 18.
TEST(WrenchSet, FindsNoMarkInsideANarrowTolerance) {
  const char* line = "wrench set --torque 22.6Nm --arm 300mm --adaptor 100mm --tolerance 2% --step 2Nm --range 2..60Nm";
  const Printed printed = run_cli(words_of(line));
  EXPECT_EQ(printed.exit, ExitCode::check_failed);
  const auto answer = answer_of(words_of(line));
  EXPECT_TRUE(answer["result"]["setting_N_m"].is_null());
  EXPECT_TRUE(answer["result"]["applied_N_m"].is_null());
  EXPECT_EQ(answer["result"]["suitable"], false);
  EXPECT_TRUE(has_code(answer, "no-mark"));
}

// 25 N·m at 335.355339/300: limits of 24 and 25.1 are 21.47 and 22.45 on the scale, so the mark is 22, not 22.5.
TEST(WrenchSet, KeepsTheLimitsOfTheFigureAtTheJoint) {
  const auto result = result_of("wrench set --torque 25Nm --low 24Nm --high 25.1Nm --arm 300mm --adaptor 50mm "
                                "--adaptor-angle 45deg --step 0.5Nm");
  EXPECT_EQ(result["setting"], 22.0);
  EXPECT_GE(result["applied_N_m"].get<double>(), 24);
}

// TM 9-2350-277-40&P, fig. 6 (second-hand): 40 lbf·ft with 12 in and 4 in is 30 lbf·ft.
TEST(WrenchSet, ReadsTheScaleInItsOwnUnit) {
  const auto result = result_of("wrench set --torque \"40 lbf.ft\" --arm 12in --adaptor 4in");
  EXPECT_EQ(result["unit"], "lbf.ft");
  EXPECT_NEAR(result["setting"].get<double>(), 30, 1e-9);
  EXPECT_NEAR(result["setting_N_m"].get<double>(), 30 * 1.3558179483314004, 1e-9);
}

TEST(WrenchSet, HoldsTheSettingAgainstTheScale) {
  for (const auto& [line, code] :
       {std::pair("wrench set --torque 25Nm --arm 300mm --range 30..150Nm", "below-tool-range"),
        std::pair("wrench set --torque 25Nm --arm 300mm --range 2..20Nm", "above-tool-range"),
        std::pair("wrench set --torque 33Nm --arm 300mm --adaptor 50mm --range 30..150Nm", "below-tool-range")}) {
    const auto answer = answer_of(words_of(line));
    EXPECT_TRUE(has_code(answer, code)) << line;
    EXPECT_TRUE(answer["result"]["setting"].is_null()) << line;
    EXPECT_EQ(run_cli(words_of(line)).exit, ExitCode::check_failed) << line;
  }
}

TEST(WrenchSet, MindsTheDirectionOfAWrenchThatNobodyKnows) {
  EXPECT_TRUE(
      has_code(answer_of(words_of("wrench set --torque 25Nm --arm 300mm --turn anticlockwise")), "wrench-direction"));
  EXPECT_FALSE(
      has_code(answer_of(words_of("wrench set --torque 25Nm --arm 300mm --turn clockwise")), "wrench-direction"));
}

// UNC-05 of the reference collection: 10.327956 % with a tool of 4 %; friction is 93.75 % of the variance.
TEST(WrenchSet, SharesOutTheSpreadOfTheClampLoad) {
  const auto budget = result_of("wrench set --torque 25Nm --arm 300mm --adaptor 50mm --range 10..60Nm")["budget"];
  EXPECT_NEAR(budget["load_standard"].get<double>(), 0.10327956, 1e-7);
  const auto& influences = budget["influences"];
  ASSERT_EQ(influences.size(), 4U);
  EXPECT_EQ(influences[3]["name"], "friction");
  EXPECT_NEAR(influences[3]["share_of_variance"].get<double>(), 0.9375, 1e-9);
  EXPECT_THAT(influences[0]["basis"].get<std::string>(), HasSubstr("ISO 6789"));
  for (const std::size_t i : {1U, 2U, 3U})
    EXPECT_THAT(influences[i]["basis"].get<std::string>(), HasSubstr("assumed")) << i;
  EXPECT_EQ(budget["published"][0]["share"], 0.35);
  EXPECT_EQ(budget["published"][1]["share"], 0.25);
}

// By hand: 3 % operator, 4 % friction, a wrench of √3·12 % at the most: 13 %.
TEST(WrenchSet, TakesSharesThatAreSaid) {
  const auto budget = result_of("wrench set --torque 25Nm --arm 300mm --wrench-accuracy 0.2078460969 --operator 3% "
                                "--nut-factor-spread 4%")["budget"];
  EXPECT_NEAR(budget["load_standard"].get<double>(), 0.13, 1e-9);
  EXPECT_EQ(budget["influences"].size(), 3U); // no adaptor, so none of its
}

TEST(WrenchSet, SaysWhenAMassStoodForAForce) {
  EXPECT_TRUE(has_code(answer_of({"wrench", "set", "--torque", "2.5mkg", "--arm", "300mm"}), "mass-as-force"));
}

class WrenchSetInTheWorkshop : public DemoWorkshop {};

// The demo's head nuts are 17 N·m; wrench A has marks every half a newton-metre and an arm of 300 mm.
TEST_F(WrenchSetInTheWorkshop, TakesTorqueAndScaleFromTheRecords) {
  const auto answer = json_here({"wrench", "set", "--joint", "pump/head-nuts", "--wrench", "A"});
  EXPECT_EQ(answer["result"]["setting"], 17.0);
  EXPECT_EQ(answer["result"]["turn"], "clockwise");
  EXPECT_EQ(answer["result"]["invented"], true);
  EXPECT_EQ(answer["result"]["wrench"]["turns"], "clockwise");
  EXPECT_THAT(codes_of(answer), Contains("maker-first"));
}

// 17·300/340 = 15 N·m.
TEST_F(WrenchSetInTheWorkshop, TakesTheArmFromTheRecord) {
  const auto answer = json_here({"wrench", "set", "--joint", "pump/head-nuts", "--wrench", "A", "--adaptor", "40mm"});
  EXPECT_EQ(answer["result"]["setting"], 15.0);
  EXPECT_EQ(answer["result"]["levers"]["arm_mm"], 300.0);
}

TEST_F(WrenchSetInTheWorkshop, RefusesAWrenchThatIsNotCalibratedThatWayRound) {
  const Printed printed = run_here({"wrench", "set", "--joint", "pump/clutch-hub", "--wrench", "A"});
  EXPECT_EQ(printed.exit, ExitCode::check_failed);
  EXPECT_THAT(printed.out, HasSubstr("not calibrated for turning anticlockwise"));
}

TEST_F(WrenchSetInTheWorkshop, DoesNotOfferAWrenchThatIsOverdue) {
  const auto answer = json_here({"wrench", "set", "--torque", "80Nm", "--wrench", "B"});
  EXPECT_EQ(answer["result"]["suitable"], false);
  EXPECT_EQ(answer["result"]["setting"], 80.0);
  EXPECT_TRUE(has_code(answer, "wrench-overdue"));
}

TEST_F(WrenchSetInTheWorkshop, SetsNoWrenchByAFigureThatIsNotToBeUsed) {
  for (const auto& [joint, because] : {std::pair("pump/base-nuts", "the sources in force differ"),
                                       std::pair("pump/blower-cover", "the figure cannot be meant as printed")}) {
    const Printed printed = run_here({"wrench", "set", "--joint", joint, "--arm", "300mm"});
    EXPECT_EQ(printed.exit, ExitCode::no_such) << joint;
    EXPECT_THAT(printed.err, HasSubstr(because)) << joint;
    EXPECT_EQ(printed.out, "") << joint;
  }
}

// Joint 24 of the demo: 25 N·m on M8 4.8 is likely past yield.
TEST_F(WrenchSetInTheWorkshop, BeginsWithTheStopThatTheJointHas) {
  for (const Arguments& line : {Arguments{"wrench", "set", "--joint", "winch/fairlead", "--wrench", "A"},
                                Arguments{"sequence", "--joint", "winch/fairlead", "--pattern", "row"}}) {
    const Printed printed = run_here(line);
    EXPECT_TRUE(printed.out.starts_with("STOP")) << printed.out;
    EXPECT_EQ(printed.exit, ExitCode::check_failed);
  }
}

TEST_F(WrenchSetInTheWorkshop, RefusesToBeToldTwice) {
  for (const Arguments& more :
       {Arguments{"--torque", "20Nm"}, Arguments{"--tolerance", "5%"}, Arguments{"--turn", "clockwise"},
        Arguments{"--step", "1Nm"}, Arguments{"--range", "5..60Nm"}}) {
    Arguments line{"wrench", "set", "--joint", "pump/head-nuts", "--wrench", "A"};
    line.insert(line.end(), more.begin(), more.end());
    EXPECT_EQ(run_here(line).exit, ExitCode::usage) << more.front();
  }
}

} // namespace
} // namespace clampwright::cli
