// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "tests/cli/demo_workshop.hpp"
#include "tests/cli/refused.hpp"

namespace clampwright::cli {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using namespace testing_support;

nlohmann::json result_of(const char* line) { return answer_of(words_of(line)).at("result"); }

// clang-format off
const Refused k_refused[] = {
    {"hold",                                                                         64, "missing",        "--torque is missing"},
    {"hold --torque 30Nm",                                                           64, "missing",        "--stroke, --rod are missing; understood: torque 30 N·m"},
    {"hold --torque 30Nm --stroke 50mm",                                             64, "missing",        "--rod is missing; understood: torque 30 N·m, stroke 50 mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm",                                 64, "missing",        "one of three ways"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --stop-length 20mm",              64, "missing",        "--crown-depth is missing; understood: torque 30 N·m, stroke 50 mm, rod 100 mm, stop length 20 mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --crown-depth 14mm",              64, "missing",        "--stop-length"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 9deg --below-tdc 1mm",    64, "surplus",        "--angle and --below-tdc each say where the piston stands"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 9deg --stop-length 20mm", 64, "surplus",        "--angle and --stop-length"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --below-tdc 9mm --crown-depth 9mm", 64, "surplus",      "--below-tdc and --crown-depth"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15",                      65, "bare-number",    "60deg"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15mm",                    65, "wrong-kind",     "length"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 181deg",                  65, "out-of-range",   "within 180° of the top"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle -181deg",                 65, "out-of-range",   "within 180° of the top"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle -15deg",                  65, "out-of-range",   "goes down"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 0deg",                    65, "out-of-range",   "has no limit"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 180deg",                  65, "out-of-range",   "has no limit"},
    {"hold --torque 30Nm --stroke 50mm --rod 25mm --angle 15deg",                    65, "out-of-range",   "longer than the crank radius of 25 mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 20mm --angle 15deg",                    65, "out-of-range",   "a rod of 20 mm on a stroke of 50 mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --below-tdc 50mm",                65, "out-of-range",   "the stroke is 50 mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --below-tdc 0mm",                 65, "out-of-range",   "length of nothing"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --stop-length 13mm --crown-depth 14mm", 65, "out-of-range", "ends 1 mm above"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --stop-length 70mm --crown-depth 14mm", 65, "out-of-range", "56 mm below its top position"},
    {"hold --torque 0Nm --stroke 50mm --rod 100mm --angle 15deg",                    65, "out-of-range",   "torque of nothing"},
    {"hold --torque -3Nm --stroke 50mm --rod 100mm --angle 15deg",                   65, "out-of-range",   "not negative"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --tip-limit 60MPa", 64, "missing",        "--tip-diameter"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --plug-margin 3",   64, "missing",        "--plug-thread, --plug-engaged, --plug-material"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --plug-margin 0.5", 65, "out-of-range",   "below 1"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --port-depth 60mm", 65, "out-of-range",   "a port at 60 mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --stop-incline 70deg", 65, "out-of-range", "0 to 60°"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --crown-radius 20mm", 64, "missing",      "--crown-thickness, --tip-diameter"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --plug-thread M14x1.25 --plug-engaged 9mm --plug-material cheese", 66, "no-such-name", "cheese"},
    {"hold --torque 30Nm --tool impact",                                             65, "impact-tool",    "peak torque of its blows is not known"},
    {"hold --torque 30Nm --tool spoon",                                              65, "not-understood", "hand or impact"},
    {"hold --torque 30Nm --by magic",                                                65, "not-understood", "same-end, strap, gear, stop, far-end"},
    {"hold --torque 30Nm --by strap",                                                64, "missing",        "--strap-radius"},
    {"hold --torque 30Nm --by gear",                                                 64, "missing",        "--gear-diameter"},
    {"hold --torque 30Nm --by far-end --pin-diameter 20mm",                          64, "missing",        "--pin-length, --pin-pressure, --pin-friction"},
    {"hold --torque 30Nm --by far-end --pin-diameter 20mm --pin-length 15mm --pin-pressure 120..80MPa --pin-friction 0.1", 65, "out-of-range", "do not rise"},
    {"hold --torque 30Nm --by strap --strap-radius 60mm --rod 100mm",                64, "missing",        "--stroke"},
};
// clang-format on

constexpr const char* k_at_15 = "hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg";

} // namespace

TEST(Hold, RefusesWhatItCannotAnswerAndSaysWhatToWrite) {
  for (const Refused& refused : k_refused)
    expect_refused(refused);
}

// Rows HOLD-02, 08, 10, 11, 13 and 14 of the reference collection (computed there).
TEST(Hold, HasTheKeysOfTheContract) {
  const auto result = result_of(k_at_15);
  EXPECT_NEAR(result["piston_N"].get<double>(), 3733.081071, 0.04);
  EXPECT_NEAR(result["rod_angle_deg"].get<double>(), 3.709902, 1e-4);
  EXPECT_NEAR(result["side_N"].get<double>(), 242.055358, 0.003);
  EXPECT_NEAR(result["below_tdc_mm"].get<double>(), 1.061409, 1e-5);
  EXPECT_NEAR(result["least_angle_deg"].get<double>(), 76.72098, 1e-3);
  EXPECT_NEAR(result["least_piston_N"].get<double>(), 1164.05097, 0.02);
  EXPECT_NEAR(result["rod_N"].get<double>(), 3740.9, 0.1); // √(3733.08² + 242.06²)
  EXPECT_EQ(result["crankpin_N"], 1200.0);
  EXPECT_EQ(result["angle_deg"], 15.0);
  for (const char* key : {"tip_pressure_MPa", "torque_limit_N_m", "governed_by", "plug", "undo", "plug_margin"})
    EXPECT_TRUE(result[key].is_null()) << key;
  EXPECT_EQ(result["ports"], "not-known");
}

TEST(Hold, TakesThreeWaysToSayWhereThePistonStands) {
  const double by_angle = result_of(k_at_15)["piston_N"];
  const auto by_way = result_of("hold --torque 30Nm --stroke 50mm --rod 100mm --below-tdc 1.0614088mm");
  const auto by_stop =
      result_of("hold --torque 30Nm --stroke 50mm --rod 100mm --stop-length 21.0614088mm --crown-depth 20mm");
  for (const auto& result : {by_way, by_stop}) {
    EXPECT_NEAR(result["angle_deg"].get<double>(), 15.0, 1e-5);
    EXPECT_NEAR(result["piston_N"].get<double>(), by_angle, 0.01);
  }
}

// HOLD-19 and 20: 24.24 and 62.89 N·m for 60 MPa under 8 mm.
TEST(Hold, SaysTheMostThatMayBePulled) {
  const auto most = [](const std::string& angle) {
    return result_of(
        ("hold --torque 20Nm --stroke 50mm --rod 100mm --tip-diameter 8mm --tip-limit 60MPa --angle " + angle).c_str());
  };
  EXPECT_NEAR(most("15deg")["torque_limit_N_m"].get<double>(), 24.236781, 0.003);
  EXPECT_NEAR(most("45deg")["torque_limit_N_m"].get<double>(), 62.890179, 0.007);
  EXPECT_EQ(most("15deg")["governed_by"], "tip-pressure");
  EXPECT_EQ(most("15deg")["verdict"], "within");
}

TEST(Hold, EndsWithOneWhereALimitIsPassed) {
  const std::string limited = std::string(k_at_15) + " --tip-diameter 8mm --tip-limit 60MPa";
  EXPECT_EQ(run_cli(words_of(limited)).exit, ExitCode::check_failed);
  EXPECT_EQ(run_cli(words_of(k_at_15)).exit, ExitCode::answered);
  EXPECT_EQ(run_cli(words_of("hold --torque 150Nm --by far-end --pin-diameter 20mm --pin-length 15mm --pin-pressure "
                             "100MPa --pin-friction 0.15"))
                .exit,
            ExitCode::check_failed);
}

// 30 N·m press with 1.43 kN at 40°, 60 N·m with twice that; whichever is greater heads the answer.
TEST(Hold, IsHeadedByTheGreaterTorque) {
  const std::string place = "hold --stroke 50mm --rod 100mm --angle 40deg ";
  const auto title = [&](const char* torques) {
    const std::string out = run_cli(words_of(place + torques)).out;
    return out.substr(0, out.find('\n'));
  };
  EXPECT_THAT(title("--torque 30Nm --undo-torque 60Nm"), HasSubstr("60 N·m"));
  EXPECT_THAT(title("--torque 60Nm --undo-torque 30Nm"), HasSubstr("60 N·m"));
}

TEST(Hold, EndsWithOneWhereTheStopMayMissThePiston) {
  const std::string line = "hold --torque 30Nm --stroke 50mm --rod 100mm --below-tdc 0.3mm";
  EXPECT_THAT(run_cli(words_of(line)).out, HasSubstr("NOT to be held"));
  EXPECT_EQ(run_cli(words_of(line)).exit, ExitCode::check_failed);
}

TEST(Hold, NeverBorrowsALimit) {
  const auto answer = answer_of(words_of(std::string(k_at_15) + " --tip-diameter 8mm --plug-thread M14x1.25 "
                                                                "--plug-engaged 10mm --plug-material cast-aluminium"));
  EXPECT_TRUE(answer["result"]["torque_limit_N_m"].is_null());
  EXPECT_EQ(answer["result"]["verdict"], "not-known");
  EXPECT_THAT(codes_of(answer), Contains("stop-limit-not-stated"));
  EXPECT_NEAR(answer["result"]["plug"]["strip_area_mm2"].get<double>(), 294.409447, 0.03); // HOLD-23
  // 294.409 mm² · 130 MPa · 0.897, the least C3 (VDI 2230-1, step R11, from memory).
  EXPECT_NEAR(answer["result"]["plug"]["strip_N"].get<double>(), 34331, 5);
}

TEST(Hold, SaysThatTheForceRunsAwayNearTheTop) {
  EXPECT_THAT(codes_of(answer_of(words_of(k_at_15))), Contains("near-dead-centre"));
  const auto text = run_cli(words_of("hold --torque 30Nm --stroke 50mm --rod 100mm --below-tdc 0.3mm")).out;
  EXPECT_THAT(text, AllOf(HasSubstr("would not hold the piston at all"), HasSubstr("has no limit")));
  EXPECT_THAT(codes_of(answer_of(words_of("hold --torque 30Nm --stroke 50mm --rod 100mm --angle 60deg"))),
              Not(Contains("near-dead-centre")));
}

TEST(Hold, RanksAllWaysWhateverIsAsked) {
  for (const char* line : {k_at_15, "hold --torque 40Nm --by strap --strap-radius 60mm",
                           "hold --torque 40Nm --by gear --gear-diameter 54mm", "hold --torque 40Nm --by same-end"}) {
    const auto ways = result_of(line)["ways"];
    ASSERT_EQ(ways.size(), 5U) << line;
    EXPECT_EQ(ways[0]["way"], "same-end");
    EXPECT_EQ(ways[4]["way"], "far-end");
    for (const auto& way : ways)
      EXPECT_FALSE(way["load_path"].get<std::string>().empty() || way["reason"].get<std::string>().empty());
  }
}

// HOLD-25: 666.67 N. Beside a stop, a strap is answered as well.
TEST(Hold, AnswersOtherWaysAloneOrBesideAStop) {
  const auto alone = result_of("hold --torque 40Nm --by strap --strap-radius 60mm");
  EXPECT_NEAR(alone["ways"][1]["force_N"].get<double>(), 666.6667, 0.001);
  EXPECT_TRUE(alone["piston_N"].is_null());
  const auto both = result_of("hold --torque 30Nm --stroke 50mm --rod 100mm --angle 15deg --strap-radius 60mm");
  EXPECT_NEAR(both["ways"][1]["force_N"].get<double>(), 500.0, 1e-6);
  EXPECT_NEAR(both["ways"][3]["force_N"].get<double>(), 3733.08, 0.01);
}

TEST(Hold, SpeaksOfMassesTakenForForces) {
  EXPECT_THAT(codes_of(answer_of(words_of("hold --torque 3mkg --by same-end"))), Contains("mass-as-force"));
}

using HoldOfAJoint = DemoWorkshop;

TEST_F(HoldOfAJoint, AsksForNothingThatTheRecordHas) {
  const auto answer = json_here({"hold", "--joint", "pump/clutch-hub"});
  const auto& result = answer["result"];
  EXPECT_EQ(result["torque_N_m"], 42.0);
  EXPECT_EQ(result["stroke_mm"], 44.0);
  EXPECT_EQ(result["rod_mm"], 88.0);
  EXPECT_NEAR(result["below_tdc_mm"].get<double>(), 9.0, 1e-9); // 23 - 14
  EXPECT_EQ(result["ports"], "covered");
  EXPECT_EQ(result["plug"]["material"], "cast-aluminium");
  EXPECT_EQ(result["governed_by"], "tip-pressure");
  EXPECT_EQ(result["turns"]["tighten"], "anticlockwise");
  EXPECT_EQ(result["invented"], true);
}

TEST_F(HoldOfAJoint, LetsOptionsOverrideTheRecord) {
  const auto by_angle = json_here({"hold", "--joint", "pump/clutch-hub", "--angle", "15deg", "--torque", "30Nm"});
  EXPECT_EQ(by_angle["result"]["angle_deg"], 15.0);
  EXPECT_EQ(by_angle["result"]["torque_N_m"], 30.0);
  const auto longer = json_here({"hold", "--joint", "pump/clutch-hub", "--stop-length", "25mm"});
  EXPECT_NEAR(longer["result"]["below_tdc_mm"].get<double>(), 11.0, 1e-9);
}

TEST_F(HoldOfAJoint, AsksByNameForWhatTheRecordLacks) {
  const Printed printed = run_here({"hold", "--joint", "winch/pulley-bolt", "--angle", "30deg"});
  EXPECT_EQ(printed.exit, ExitCode::usage);
  EXPECT_THAT(printed.err, AllOf(HasSubstr("--stroke, --rod"), HasSubstr("Winch Tallisk W1"), HasSubstr("46 N·m")));
  EXPECT_EQ(run_here({"hold", "--joint", "winch/pulley-bolt", "--by", "same-end"}).exit, ExitCode::answered);
}

TEST_F(HoldOfAJoint, RefusesAJointThatIsNotOnTheCrank) {
  const Printed printed = run_here({"hold", "--joint", "pump/head-nuts", "--angle", "30deg"});
  EXPECT_EQ(static_cast<int>(printed.exit), 66);
  EXPECT_THAT(printed.err, HasSubstr("not recorded as sitting on the crank"));
}

TEST_F(HoldOfAJoint, SaysTheSameForceAsShow) {
  const auto hold = json_here({"hold", "--joint", "pump/flywheel-nut"})["result"];
  const auto stop = json_here({"show", "pump/flywheel-nut"})["result"]["stop"];
  EXPECT_EQ(stop["piston_N"], hold["piston_N"]);
  EXPECT_EQ(stop["torque_limit_N_m"], hold["torque_limit_N_m"]);
}

} // namespace clampwright::cli
