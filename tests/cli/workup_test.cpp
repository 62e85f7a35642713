// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/demo_workshop.hpp"
#include "tests/cli/refused.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace clampwright::cli {
namespace {

using testing::HasSubstr;
using namespace testing_support;

// clang-format off
const Refused k_refused[] = {
    {"workup",                                                             64, "missing",      "--thread M8"},
    {"workup --class 8.8",                                                 64, "missing",      "--thread M8"},
    {"workup --thread M8 --engagement 12mm",                               64, "missing",      "--material"},
    {"workup --thread M8 --soft-limit 8MPa",                               64, "missing",      "--soft"},
    {"workup --thread M8 --carry 40Nm --face-friction 0.1",                64, "missing",      "--radius"},
    {"workup --thread M8 --carry 40Nm --radius 20mm",                      64, "missing",      "--face-friction"},
    {"workup --thread M8 --slip 2kN",                                      64, "missing",      "--face-friction"},
    {"workup --thread M8 --radius 20mm",                                   64, "surplus",      "--carry"},
    {"workup --thread M8 --pressure 4MPa",                                 64, "missing",      "--sealed-diameter"},
    {"workup --thread M8 --sealed-diameter 54mm",                          64, "missing",      "--pressure"},
    {"workup --thread M8 --nut 8 --material steel",                        64, "surplus",      "both told"},
    {"workup --thread M8 --must-clamp 5",                                  65, "bare-number",  "kN"},
    {"workup --thread M8 --must-clamp 5Nm",                                65, "wrong-kind",   "torque"},
    {"workup --thread M8 --loss 95%",                                      65, "out-of-range", "90 %"},
    {"workup --thread M8 --proof-share 0",                                 65, "out-of-range", "5 %"},
    {"workup --thread M8 --thread-margin 0.5",                             65, "out-of-range", "from 1 to 20"},
    {"workup --thread M8 --bolts 2.5 --pull 1kN",                          65, "out-of-range", "whole number"},
    {"workup --thread M8 --carry 40Nm --radius 20mm --face-friction 3",    65, "out-of-range", "0.10"},
    {"workup --thread M8 --material cast-aluminium --engagement 2mm",      65, "out-of-range", "two turns"},
    {"workup --thread M8 --seat cheese",                                   66, "no-such-name", "known are"},
    {"workup --thread M8 --nut 99",                                        66, "no-such-name", "known are"},
    {"workup --thread M8.3",                                               66, "",             "M8"},
};
// clang-format on

TEST(Workup, RefusesWhatItCannotAnswerAndSaysWhatToWrite) {
  for (const Refused& refused : k_refused)
    expect_refused(refused);
}

// The two ends are answers of `clamp`: at the most the greatest load is 75 % of proof or less, at the least the least
// load is what is needed.
TEST(Workup, AgreesWithClampAtBothEnds) {
  const auto worked = answer_of(words_of("workup --thread M10 --class 8.8 --surfaces oiled --nut 8 --must-clamp 6kN"));
  const auto& result = worked.at("result");
  EXPECT_EQ(result.at("verdict"), "at-most"); // nobody told the seat
  EXPECT_EQ(result.at("status"), "derived");
  EXPECT_NEAR(result.at("needed_N").get<double>(), 6000 / 0.9, 1e-6);
  const auto clamp_at = [](double torque_N_m) {
    return answer_of(
        {"clamp", "M10", "--class", "8.8", "--surfaces", "oiled", "--torque", fmt::format("{:.12g}Nm", torque_N_m)});
  };
  const auto most = clamp_at(result.at("highest_torque_N_m").get<double>());
  const double by_factor = most.at("result").at("nut_factor").at("preload_N").at("high").get<double>();
  const double by_friction = most.at("result").at("thread_friction").at("preload_N").at("high").get<double>();
  EXPECT_NEAR(std::max(by_factor, by_friction), result.at("allowed_N").get<double>(), 1e-3);
  const auto least = clamp_at(result.at("lowest_torque_N_m").get<double>());
  EXPECT_NEAR(std::min(least.at("result").at("nut_factor").at("preload_N").at("low").get<double>(),
                       least.at("result").at("thread_friction").at("preload_N").at("low").get<double>()),
              6000 / 0.9, 1e-3);
}

TEST(Workup, EndsWithOneWhereNoTorqueSatisfiesBoth) {
  const auto words = words_of("workup --thread M8 --class 8.8 --surfaces oiled --nut 8 --must-clamp 15kN");
  const Printed printed = run_cli(words);
  EXPECT_EQ(printed.exit, ExitCode::check_failed);
  EXPECT_THAT(printed.out, HasSubstr("no torque satisfies both"));
  EXPECT_THAT(printed.out, HasSubstr("what would help"));
  const auto document = answer_of(words);
  EXPECT_TRUE(document.at("result").at("set_torque_N_m").is_null());
}

// Nothing is filled in for what was not told: it says that it did not look.
// Twelve millimetres of M6, two turns of 1 mm of them not bearing; what the tables of the materials hold, and where the
// lists of 1986 and 2003 part.
TEST(Workup, ShowsWhatTheLimitsWereWorkedOutFrom) {
  const std::string in_part =
      run_cli(words_of("workup --thread M6 --class 8.8 --surfaces dry --material cast-aluminium "
                       "--engagement 12mm --seat cast-aluminium --explain"))
          .out;
  for (const char* words : {"12 mm engaged, 10 mm of it bear", "shear strength", "factor C3", "on a face from",
                            "Wrench", "p_seat·π/4·(D_seat² - d_seat²)", "τ_B"})
    EXPECT_THAT(in_part, HasSubstr(words));
  EXPECT_THAT(run_cli(words_of("workup --thread M8 --class 8.8 --surfaces oiled --nut 8 --seat steel-s235")).out,
              HasSubstr("lists differ, in MPa: the list of 2003"));
}

TEST(Workup, SaysWhatItDidNotLookAt) {
  const Printed printed = run_cli(words_of("workup --thread M8 --class 8.8 --surfaces oiled"));
  EXPECT_THAT(printed.out, HasSubstr("its thread was NOT looked at"));
  EXPECT_THAT(printed.out, HasSubstr("the seat was NOT looked at"));
  EXPECT_THAT(printed.out, HasSubstr("nobody knows whether"));
}

class WorkupOfAJoint : public DemoWorkshop {};

// Joint 32 of the demo: M8 8.8 with a nut 8 on steel, surfaces not stated, must keep 4 kN. By hand, at μ 0.24: d2
// 7.18810 mm, lever 7.18810/2·tan(3.16829° + 15.4885°) + 0.24·10.315/2 = 2.45123 mm, more than the 2.4 of K 0.30; so
// 4000/0.9 N are sure from 4444.4·2.45123e-3/0.96 = 11.349 N·m on. Steel of 260 MPa under 11.63/9 mm allows 11 079 N,
// which 9.9 N·m may reach at K 0.12 and 6 %: 11079·0.96e-3/1.06 = 10.03 by K, less by μ 0.08.
TEST_F(WorkupOfAJoint, TakesItAsItIsOnRecord) {
  const auto document = json_here({"workup", "winch/brake-pivot"});
  EXPECT_EQ(document.at("input").at("joint"), "winch/brake-pivot");
  EXPECT_TRUE(document.at("result").at("makers_figure").is_null());
  EXPECT_TRUE(document.at("result").at("invented").get<bool>());
  EXPECT_EQ(document.at("result").at("verdict"), "none");
  EXPECT_TRUE(document.at("result").at("scatter_alone").get<bool>());
  EXPECT_NEAR(document.at("result").at("lowest_torque_N_m").get<double>(), 11.349, 2e-3);
  EXPECT_THAT(run_here({"workup", "winch/brake-pivot"}).out, HasSubstr("INVENTED"));
}

TEST_F(WorkupOfAJoint, LeavesTheMakersFigureStanding) {
  EXPECT_EQ(json_here({"workup", "pump/coil"}).at("result").at("makers_figure"), "5.5 N·m");
  EXPECT_THAT(run_here({"workup", "pump/coil"}).out, HasSubstr("it stands"));
}

// What `show` forbids does not stand here: 90 N·m on M6, two sheets that differ, a nut of weaker bolts.
TEST_F(WorkupOfAJoint, RepeatsWhatForbidsTheFigure) {
  for (const char* joint : {"pump/blower-cover", "pump/base-nuts"}) {
    const Printed printed = run_here({"workup", joint});
    EXPECT_THAT(printed.out, HasSubstr("NOT TO BE USED")) << joint;
  }
  EXPECT_EQ(run_here({"workup", "pump/blower-cover"}).exit, ExitCode::check_failed);
  EXPECT_TRUE(has_code(json_here({"workup", "winch/gearbox-foot"}), "nut-too-weak"));
  EXPECT_THAT(run_here({"workup", "winch/gearbox-foot"}).out, HasSubstr("no torque with this nut"));
}

TEST_F(WorkupOfAJoint, PutsWhatIsToldAboveTheRecord) {
  const auto oiled = json_here({"workup", "winch/brake-pivot", "--surfaces", "oiled"});
  EXPECT_EQ(oiled.at("result").at("verdict"), "torque"); // K 0.22: sure from 4444.4·1.76e-3/0.94 = 8.32 N·m on
  EXPECT_NEAR(oiled.at("result").at("lowest_torque_N_m").get<double>(), 8.32, 0.01);
  const auto more = json_here({"workup", "winch/brake-pivot", "--must-clamp", "20kN", "--surfaces", "oiled"});
  EXPECT_EQ(more.at("result").at("verdict"), "none");
  EXPECT_FALSE(more.at("result").at("scatter_alone").get<bool>());
}

} // namespace
} // namespace clampwright::cli
