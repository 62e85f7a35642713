// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Not;

// By hand, M10, 8.8, 45 N·m, oiled (μ 0.08/0.12/0.16, K 0.12/0.18/0.22), wrench 4 %: d2 = 9.0257 (ISO 724: 9.026),
// tan φ = 1.5/(π·9.0257) = 0.052901, D_m = (14.63 + 11)/2 = 12.815 (ISO 4014, ISO 273).
//   likely: ρ′ = atan(0.12·1.154701) = 7.8889°, l = 4.51286·tan(10.9171°) + 0.12·6.4075 = 0.87043 + 0.76890 = 1.63933
//   mm
//           F = 45000/1.63933 = 27450 N; F/33700 = 0.8145 (ISO 898-1:2013, proof load of M10 8.8)
//   high:   ρ′ = 5.2778°, l = 4.51286·tan(8.3059°) + 0.5126 = 0.65884 + 0.51260 = 1.17144; F = 46800/1.17144 = 39951 N
//   low:    ρ′ = 10.4675°, l = 4.51286·tan(13.4956°) + 1.0252 = 1.08308 + 1.02520 = 2.10828; F = 43200/2.10828 = 20491
//   N
TEST(ClampCommand, GivesTheBandByThreadFrictionThatAHandCalculationGives) {
  const auto answer = answer_of({"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled"});
  const auto& preload = answer["result"]["thread_friction"]["preload_N"];
  EXPECT_NEAR(preload["low"], 20491, 5);
  EXPECT_NEAR(preload["likely"], 27450, 5);
  EXPECT_NEAR(preload["high"], 39951, 10);
  EXPECT_NEAR(answer["result"]["thread_friction"]["use_of_proof"]["likely"], 0.8145, 0.0002);
}

// F = T/(K·d): 43.2/(0.22·0.010), 45/(0.18·0.010), 46.8/(0.12·0.010).
TEST(ClampCommand, GivesTheBandByNutFactorThatAHandCalculationGives) {
  const auto answer = answer_of({"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled"});
  const auto& preload = answer["result"]["nut_factor"]["preload_N"];
  EXPECT_NEAR(preload["low"], 19636.36, 0.01);
  EXPECT_NEAR(preload["likely"], 25000.0, 0.01);
  EXPECT_NEAR(preload["high"], 39000.0, 0.01);
}

// σ = 27450/57.99 = 473.4; τ = 27450·0.87043/(π/12·8.5927³ = 166.10) = 143.9; √(473.4² + 3·143.9²) = 534.9; /640 =
// 0.8358.
TEST(ClampCommand, GivesTheShareOfYieldThatAHandCalculationGives) {
  const auto answer = answer_of({"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled"});
  EXPECT_NEAR(answer["result"]["thread_friction"]["use_of_yield"]["likely"], 0.8358, 0.0003);
}

TEST(ClampCommand, SaysMayExceedWhereFrictionWasStatedAndNotKnownWhereItWasNot) {
  const auto stated = answer_of({"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled"});
  EXPECT_EQ(stated["result"]["verdict"], "may-exceed");
  EXPECT_EQ(stated["result"]["governed_by"], "yield");
  const auto open = answer_of({"clamp", "M10", "--class", "8.8", "--torque", "45Nm"});
  EXPECT_EQ(open["result"]["verdict"], "not-known");
  EXPECT_THAT(codes_of(open), Contains("surfaces-not-stated"));
}

TEST(ClampCommand, EndsWithOneWhereTheLimitIsLikelyPassed) {
  const Printed over = run_cli({"clamp", "M6", "--class", "8.8", "--torque", "90Nm", "--surfaces", "dry", "--json"});
  EXPECT_EQ(over.exit, ExitCode::check_failed);
  EXPECT_EQ(json_of(over)["result"]["verdict"], "over-limit");
}

TEST(ClampCommand, KnowsNoStrengthWithoutAClass) {
  const auto answer = answer_of({"clamp", "M10", "--torque", "45Nm", "--surfaces", "oiled"});
  const auto& strength = answer["result"]["strength"];
  EXPECT_EQ(strength["class"], "unknown");
  for (const char* key : {"proof_stress_MPa", "yield_MPa", "tensile_MPa", "proof_load_N", "yield_load_N",
                          "tensile_load_N", "proof_load_basis"})
    EXPECT_TRUE(strength[key].is_null()) << key;
  EXPECT_TRUE(answer["result"]["thread_friction"]["use_of_proof"].is_null());
  EXPECT_EQ(answer["result"]["verdict"], "not-known");
  EXPECT_THAT(codes_of(answer), Contains("class-unknown"));
}

TEST(ClampCommand, LeavesOutTheModelForWhichNothingWasSaid) {
  const auto only_mu = answer_of({"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--mu", "0.12"});
  EXPECT_TRUE(only_mu["result"]["nut_factor"].is_null());
  EXPECT_FALSE(only_mu["result"]["thread_friction"].is_null());
  const auto only_k = answer_of({"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--nut-factor", "0.2"});
  EXPECT_TRUE(only_k["result"]["thread_friction"].is_null());
  EXPECT_EQ(only_k["result"]["governed_by"], "proof");
}

TEST(ClampCommand, LeavesOutThreadFrictionWhereNoFaceIsKnown) {
  for (const char* thread : {"M9", "#10-32"}) {
    const auto answer = answer_of({"clamp", thread, "--torque", "5Nm", "--surfaces", "dry"});
    EXPECT_TRUE(answer["result"]["thread_friction"].is_null()) << thread;
    EXPECT_THAT(codes_of(answer), Contains("face-not-stated")) << thread;
  }
}

TEST(ClampCommand, JudgesNothingThatIsNoBolt) {
  for (const auto& [kind, code] : std::vector<std::pair<std::string, std::string>>{
           {"hub", "not-a-bolt"}, {"plug", "not-a-bolt"}, {"union", "not-a-bolt"}, {"stud-set", "seating-torque"}}) {
    const auto answer = answer_of({"clamp", "M8", "--class", "8.8", "--torque", "15Nm", "--surfaces", "dry", "--kind",
                                   kind, "--face-outer", "13mm", "--face-inner", "9mm"});
    const auto& part = answer["result"]["thread_friction"];
    EXPECT_TRUE(part["use_of_proof"].is_null() && part["use_of_yield"].is_null() && part["mu_at_yield"].is_null())
        << kind;
    EXPECT_TRUE(answer["result"]["nut_factor"]["use_of_proof"].is_null()) << kind;
    EXPECT_EQ(answer["result"]["verdict"], "not-known") << kind;
    EXPECT_THAT(codes_of(answer), Contains(code)) << kind;
  }
}

TEST(ClampCommand, NamesTheWrenchAccuracyThatItTook) {
  EXPECT_EQ(answer_of({"clamp", "M10", "--torque", "10.1Nm"})["result"]["wrench_accuracy"]["share"], 0.04);
  EXPECT_EQ(answer_of({"clamp", "M10", "--torque", "10Nm"})["result"]["wrench_accuracy"]["share"], 0.06);
  EXPECT_EQ(
      answer_of({"clamp", "M10", "--torque", "45Nm", "--wrench-accuracy", "2%"})["result"]["wrench_accuracy"]["share"],
      0.02);
}

TEST(ClampCommand, SaysThatAMassWasReadAsAForce) {
  EXPECT_THAT(codes_of(answer_of({"clamp", "M10", "--torque", "4.5mkg"})), Contains("mass-as-force"));
  EXPECT_THAT(codes_of(answer_of({"clamp", "M10", "--torque", "45Nm"})), Not(Contains("mass-as-force")));
}

TEST(ClampCommand, SharesTheTorqueOutToTheLastBit) {
  const auto share =
      answer_of({"clamp", "M10", "--torque", "45Nm", "--surfaces", "oiled"})["result"]["thread_friction"]["share"];
  EXPECT_NEAR(share["lift"].get<double>() + share["thread"].get<double>() + share["head"].get<double>(), 1.0, 1e-12);
  // F·P/2π over T: 27450·1.5/(2π·45000) = 0.1456
  EXPECT_NEAR(share["lift"], 0.1456, 0.0001);
}

TEST(ClampCommand, CarriesTheWorkingOnRequestOnly) {
  EXPECT_FALSE(answer_of({"clamp", "M10", "--torque", "45Nm"}).contains("working"));
  const auto working = answer_of({"clamp", "M10", "--torque", "45Nm", "--explain"})["working"];
  ASSERT_GT(working.size(), 20U);
  for (const auto& step : working)
    for (const char* key : {"symbol", "meaning", "formula", "value", "unit", "source"})
      EXPECT_TRUE(step.contains(key)) << step;
}

// The torque for 75 % of proof on 3/8-24 UNF, SAE 5 (SAE J429: 85 000 psi; ASME B1.1: 0.0878 in²): 0.75·85000·0.0878 =
// 5597 lbf = 24.90 kN. By nut factor 0.20: 0.20·0.375/12·5597 = 34.98 lbf·ft.
TEST(TorqueCommand, GivesTheTorqueForThreeQuartersOfProof) {
  const auto answer =
      answer_of({"torque", "3/8-24 UNF", "--class", "SAE 5", "--proof-fraction", "75%", "--nut-factor", "0.20"});
  EXPECT_NEAR(answer["result"]["preload_N"].get<double>() / 4.4482216, 5597, 5);
  EXPECT_NEAR(answer["result"]["set_torque_N_m"].get<double>() / 1.3558179, 34.98, 0.05);
}

TEST(TorqueCommand, IsUndoneByClamp) {
  const auto torque = answer_of({"torque", "M8", "--class", "10.9", "--preload", "18kN", "--surfaces", "oiled"});
  const std::string set = torque["result"]["set_torque_N_m"].dump() + "N.m";
  const auto clamp = answer_of({"clamp", "M8", "--class", "10.9", "--torque", set, "--surfaces", "oiled"});
  EXPECT_NEAR(clamp["result"]["thread_friction"]["preload_N"]["likely"], 18000.0, 1e-6);
}

TEST(TorqueCommand, SaysWhatIsMissingForAShareOfYield) {
  EXPECT_EQ(run_cli({"torque", "M10", "--class", "8.8", "--yield-fraction", "90%"}).exit, ExitCode::usage);
  EXPECT_EQ(run_cli({"torque", "M10", "--yield-fraction", "90%", "--mu", "0.12"}).exit, ExitCode::usage);
  EXPECT_EQ(run_cli({"torque", "M9", "--class", "8.8", "--yield-fraction", "90%", "--mu", "0.12"}).exit,
            ExitCode::usage);
  EXPECT_EQ(run_cli({"torque", "M10", "--class", "A2-70", "--proof-fraction", "75%"}).exit, ExitCode::usage);
}

// VDI 2230-1 table A1, M10 8.8, μ 0.10: 30.3 kN and 43 N·m at 90 % of yield (values from memory, not read).
TEST(TorqueCommand, MeetsTheGuidelineTableAtNinetyPercentOfYield) {
  const auto answer = answer_of({"torque", "M10", "--class", "8.8", "--yield-fraction", "90%", "--mu", "0.10"});
  EXPECT_NEAR(answer["result"]["preload_N"], 30300.0, 100.0);
  EXPECT_NEAR(answer["result"]["set_torque_N_m"], 43.0, 1.0);
}

TEST(ConvertCommand, TurnsAnOldSheetsTorqueIntoNewtonMetres) {
  // 2.5·9.80665, exact (kilogram-force by standard gravity, CGPM 1901).
  EXPECT_DOUBLE_EQ(answer_of({"convert", "2.5 mkg"})["result"]["values"]["N.m"], 24.516625);
  EXPECT_EQ(answer_of({"convert", "2.5 mkg"})["result"]["understood"], "2.5 kgf.m");
}

TEST(ConvertCommand, KeepsToTheUnitsThatWereNamed) {
  const auto values = answer_of({"convert", "30ft-lb", "N.m", "lbf.in"})["result"]["values"];
  EXPECT_EQ(values.size(), 2U);
  EXPECT_DOUBLE_EQ(values["lbf.in"], 360.0);
}

TEST(ThreadCommand, ListsTheKeysOfTheContract) {
  const auto result = answer_of({"thread", "M8x1.25-6g"})["result"];
  for (const char* key :
       {"designation", "form", "d_mm", "pitch_mm", "pitch_diameter_mm", "minor_diameter_mm", "root_diameter_mm",
        "stress_area_mm2", "stress_area_table_mm2", "flank_angle_deg", "hand", "series", "tpi", "limits"})
    EXPECT_TRUE(result.contains(key)) << key;
  EXPECT_EQ(result["designation"], "M8");
  EXPECT_EQ(result["flank_angle_deg"], 30.0);
  EXPECT_TRUE(result["tpi"].is_null());
}

} // namespace
} // namespace clampwright::cli
