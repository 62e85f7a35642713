// SPDX-License-Identifier: GPL-3.0-or-later
//
// Threads that no table lists, as the contract has them.
#include <gmock/gmock.h>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

TEST(AnyPitch, MarksTheAnswer) {
  for (const Arguments& arguments :
       {Arguments{"thread", "M8x1.3", "--any-pitch"}, Arguments{"clamp", "M8x1.3", "--any-pitch", "--torque", "20Nm"},
        Arguments{"torque", "M8x1.3", "--any-pitch", "--preload", "9kN"}}) {
    const auto answer = answer_of(arguments);
    EXPECT_THAT(codes_of(answer), Contains("thread-not-listed")) << arguments[0];
    EXPECT_EQ(answer.at("input").at("any_pitch"), true) << arguments[0];
  }
}

TEST(AnyPitch, HasNeitherSeriesNorLimits) {
  const auto result = answer_of({"thread", "M8x1.3", "--any-pitch"}).at("result");
  EXPECT_EQ(result.at("designation"), "M8x1.3");
  EXPECT_TRUE(result.at("series").is_null());
  EXPECT_TRUE(result.at("limits").is_null());
  EXPECT_TRUE(result.at("stress_area_table_mm2").is_null());
  EXPECT_NEAR(result.at("stress_area_mm2").get<double>(), 36.10720, 1e-5); // by hand: unlisted_threads_test.cpp
}

// 85 000 psi (SAE J429, second-hand) on π/4·(7.9375 - 9·√3/16·1.27)² = 35.258 27 mm²; 1 psi = 6894.757 Pa. By hand.
TEST(AnyPitch, HasLoadsByStressTimesArea) {
  const auto strength = answer_of({"clamp", "5/16-20", "--any-pitch", "--class", "SAE 5", "--torque", "20Nm"})
                            .at("result")
                            .at("strength");
  EXPECT_EQ(strength.at("proof_load_basis"), "stress-area");
  EXPECT_NEAR(strength.at("proof_load_N").get<double>(), 20663.2, 0.5);
}

TEST(AnyPitch, ChangesNothingForAListedThread) {
  auto with = answer_of({"thread", "M10", "--any-pitch"});
  const auto without = answer_of({"thread", "M10"});
  EXPECT_EQ(with.at("result"), without.at("result"));
  EXPECT_THAT(codes_of(with), Not(Contains("thread-not-listed")));
}

TEST(AnyPitch, IsOfferedWhereItWouldTakeTheThread) {
  const auto hint = [](const Arguments& arguments) {
    return answer_of(arguments).at("error").at("hint").get<std::string>();
  };
  EXPECT_THAT(hint({"thread", "M8x1.3"}), HasSubstr("--any-pitch"));
  EXPECT_THAT(hint({"clamp", "M8x1.3", "--torque", "20Nm"}), HasSubstr("--any-pitch"));
  EXPECT_THAT(hint({"thread", "M13"}), Not(HasSubstr("--any-pitch")));
  EXPECT_THAT(hint({"thread", "M8x5"}), Not(HasSubstr("--any-pitch")));
}

TEST(AnyPitch, IsRefusedBeyondSense) {
  EXPECT_EQ(run_cli({"thread", "M8x5", "--any-pitch"}).exit, ExitCode::data_error);
  EXPECT_EQ(run_cli({"thread", "M8x5"}).exit, ExitCode::no_such);
}

} // namespace
} // namespace clampwright::cli
