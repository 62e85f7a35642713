// SPDX-License-Identifier: GPL-3.0-or-later
//
// surfaces, lock, cure, running: their keys, exits and refusals. The figures are checked in tests/reference and
// tests/core.
#include <gmock/gmock.h>

#include "specdb/catalogue/catalogue.hpp"
#include "tests/cli/refused.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

nlohmann::json result_of(std::string_view line) { return answer_of(words_of(line))["result"]; }
int exit_of(std::string_view line) { return static_cast<int>(run_cli(words_of(line)).exit); }
std::string text_of(std::string_view line) { return run_cli(words_of(line)).out; }

// clang-format off
const std::vector<Refused> k_refused{
    {"cure",                                                                64, "", "the compound is missing"},
    {"cure --lock compound-medium",                                         64, "", "temperature"},
    {"cure --lock tab-washer --temperature 20degC",                         64, "", "does not cure"},
    {"cure --lock compound --temperature 20degC",                           66, "", "compound-"},
    {"cure --lock compound-medium --temperature 20",                        65, "", "20"},
    {"cure --lock compound-medium --temperature 20Nm",                      65, "", "torque"},
    {"cure --lock compound-medium --temperature 20degC --surface chrome",   66, "", "known are"},
    {"cure --lock compound-medium --temperature 20degC --fitted-at noon",   65, "", "2026-11-26 09:30"},
    {"lock glue",                                                           66, "", "known are"},
    {"lock none",                                                           64, "", "no lock"},
    {"lock --with lock-wire",                                               64, "", "the lock is missing"},
    {"lock lock-wire --with string",                                        66, "", "known are"},
    {"lock lock-wire --thread M8x1.3",                                      66, "", "M8"},
    {"running",                                                             64, "", "missing"},
    {"running 7/16",                                                        65, "", "7/16"},
    {"running M8 --measured 2",                                             65, "", "2"},
    {"running M8 --class 9",                                                66, "", "04"},
    {"surfaces dry",                                                        64, "", "not expected"},
    {"surfaces --torque 25Nm --fitted oiled",                               64, "", "--stated"},
    {"surfaces --stated dry --fitted oiled",                                64, "", "the torque is missing"},
    {"surfaces --stated dry --fitted wet --torque 25Nm",                    66, "", "known are"},
    {"surfaces --stated dry --stated-nut-factor 0.2 --fitted oiled --torque 25Nm", 64, "", "two ways"},
    {"surfaces --stated dry --fitted oiled --torque 25Nm --class 8.8",      64, "", "thread"},
    {"surfaces --stated dry --fitted oiled --torque 2Nm --running-torque 2Nm", 65, "", "running torque"},
};
// clang-format on

TEST(Locking, RefusesWhatItCannotAnswerAndSaysWhatToWrite) {
  for (const Refused& refused : k_refused)
    expect_refused(refused);
}

TEST(Cure, HasNoTimeAboveWhatTheCompoundBears) {
  for (const char* line : {"cure --lock compound-medium --temperature 150degC --surface steel",
                           "cure --lock compound-medium --temperature 400degF"}) {
    const auto answer = answer_of(words_of(line));
    EXPECT_EQ(answer["result"]["course"], "too-hot") << line;
    EXPECT_TRUE(answer["result"]["full_strength_h"].is_null()) << line;
    EXPECT_THAT(codes_of(answer), Contains("heat-limit")) << line;
    EXPECT_EQ(exit_of(line), 1) << line;
    EXPECT_THAT(text_of(line), HasSubstr("hotter than the compound bears")) << line;
  }
}

TEST(Cure, AsksForTheSurfaceWhereNobodySaidIt) {
  EXPECT_THAT(text_of("cure --lock compound-medium --temperature 20degC"), HasSubstr("add --surface steel"));
}

TEST(Lock, SaysHowCompoundsAreCalled) {
  EXPECT_THAT(run_cli(words_of("lock blue")).err, HasSubstr("a compound goes by its strength"));
}

TEST(Cure, SaysWhenTheJointIsReady) {
  const auto result =
      result_of("cure --lock compound-medium --temperature 10degC --surface steel --fitted-at \"2026-11-26 09:30\"");
  EXPECT_EQ(result["course"], "by-itself");
  EXPECT_EQ(result["full_strength_h"], 72.0);
  EXPECT_EQ(result["set_least_h"], 6.0);
  EXPECT_EQ(result["set_most_h"], 24.0);
  EXPECT_EQ(result["ready_at"], "2026-11-29 09:30");
  EXPECT_EQ(result["set_by"], "2026-11-27 09:30");
}

TEST(Cure, ReadsOtherScalesAndTheShortForm) {
  EXPECT_EQ(result_of("cure compound-medium --temperature 50degF --surface steel")["full_strength_h"], 72.0);
  EXPECT_EQ(result_of("cure compound-high --temperature 366.15K --surface steel")["full_strength_h"], 0.75);
}

TEST(Cure, LeavesWhatIsNotKnownEmpty) {
  const auto answer = answer_of(words_of("cure --lock compound-medium --temperature 20degC --surface steel --surface "
                                         "stainless --fitted-at \"2026-11-26 09:30\""));
  for (const char* key : {"set_least_h", "set_most_h", "full_strength_h", "ready_at"})
    EXPECT_TRUE(answer["result"][key].is_null()) << key;
  EXPECT_EQ(answer["result"]["activity"], "inactive");
  EXPECT_THAT(codes_of(answer), Contains("primer-needed"));
  EXPECT_THAT(codes_of(answer), Contains("cure-not-known"));
}

TEST(Cure, IsRefusedOnBrass) {
  EXPECT_EQ(exit_of("cure --lock compound-medium --temperature 20degC --surface brass"), 1);
  EXPECT_EQ(exit_of("cure --lock compound-medium --temperature 20degC --surface steel"), 0);
  EXPECT_EQ(exit_of("cure --lock compound-medium --temperature -30degC --surface steel"), 0);
}

TEST(Lock, SaysNoToCompoundOnALockingNut) {
  const auto result = result_of("lock compound-medium --with locking-nut-insert");
  EXPECT_EQ(result["verdict"], "no");
  EXPECT_EQ(result["together"][0]["verdict"], "no");
  EXPECT_EQ(exit_of("lock compound-medium --with locking-nut-insert"), 1);
  EXPECT_EQ(exit_of("lock second-nut --with split-pin"), 0);
  EXPECT_EQ(exit_of("lock split-pin --with locking-nut-metal"), 0);
}

// Of three the two that were named beside clash.
TEST(Lock, HoldsAllThatAreNamedAgainstEachOther) {
  const auto answer = answer_of(words_of("lock circlip --with tab-washer --with wedge-washer"));
  EXPECT_EQ(answer["result"]["verdict"], "no");
  EXPECT_THAT(codes_of(answer), Contains("lock-conflict"));
}

TEST(Lock, HoldsTheHeatAgainstItsLimit) {
  EXPECT_EQ(result_of("lock locking-nut-insert --temperature 121degC")["bears_temperature"], true);
  EXPECT_EQ(result_of("lock locking-nut-insert --temperature 122degC")["verdict"], "no");
  EXPECT_EQ(exit_of("lock locking-nut-insert --temperature 122degC"), 1);
  EXPECT_TRUE(result_of("lock lock-wire --temperature 300degC")["bears_temperature"].is_null());
}

TEST(Lock, SaysHowMuchCompound) {
  EXPECT_EQ(result_of("lock compound-low --thread M8")["strips"], 1);
  EXPECT_EQ(result_of("lock compound-low --thread 1-8")["strips"], 1);
  EXPECT_EQ(result_of("lock compound-low --thread M30")["strips"], 2);
  EXPECT_EQ(result_of("lock compound-low --thread M64")["strips"], 3);
  EXPECT_TRUE(result_of("lock lock-wire --thread M8")["strips"].is_null());
}

TEST(Lock, HasNoBreakawayTorqueAndSaysSo) {
  const auto answer = answer_of({"lock", "compound-medium"});
  EXPECT_TRUE(answer["result"]["breakaway_torque_N_m"].is_null());
  EXPECT_EQ(answer["result"]["check_by_turning"], "no");
  EXPECT_THAT(codes_of(answer), Contains("breakaway-not-known"));
  EXPECT_THAT(text_of("lock compound-medium"), Not(HasSubstr("N·m")));
}

TEST(Lock, ListsThemAll) {
  EXPECT_EQ(result_of("lock")["locks"].size(), 13U);
  EXPECT_EQ(result_of("lock split pin")["name"], "split-pin");
}

TEST(Running, JudgesAUsedNutByEachTable) {
  const auto result = result_of("running 7/16-20 --measured \"10 lbf.in\"");
  EXPECT_EQ(result["reuse"], "tables-differ");
  EXPECT_EQ(exit_of("running 7/16-20 --measured \"10 lbf.in\""), 1);
  EXPECT_EQ(exit_of("running 7/16-20 --measured \"15 lbf.in\""), 0);
  EXPECT_EQ(result_of("running 7/16-20 --measured \"5 lbf.in\"")["reuse"], "no");
  EXPECT_EQ(result_of("running M8x1 --measured 1Nm")["reuse"], "not-known");
}

TEST(Running, RefusesOneThatDragsMoreThanANewOne) {
  const auto answer = answer_of(words_of("running M8 --measured 9Nm --torque 20Nm"));
  EXPECT_EQ(answer["result"]["reuse"], "no");
  EXPECT_THAT(codes_of(answer), Contains("running-torque-high"));
  EXPECT_EQ(exit_of("running M8 --measured 9Nm --torque 20Nm"), 1);
  EXPECT_THAT(text_of("running M8 --measured 9Nm --torque 20Nm"), Not(HasSubstr("set 29")));
  EXPECT_THAT(text_of("running 1/4-28 --insert --measured \"50 lbf.in\""), HasSubstr("drags more"));
}

TEST(Running, IsSetInTheUnitOfTheTorque) {
  EXPECT_THAT(text_of("running M8 --measured \"10 lbf.in\" --torque \"60 lbf.in\""),
              HasSubstr("set 70 lbf·in = 7.909 N·m"));
}

TEST(Running, AddsByBothRulesOnlyWhatWasMeasured) {
  const auto result = result_of("running M8 --torque 20Nm --measured 3Nm");
  EXPECT_NEAR(result["rules"][0]["set_torque_N_m"].get<double>(), 23, 1e-9);
  EXPECT_NEAR(result["rules"][1]["set_torque_N_m"].get<double>(), 20, 1e-9);
  const auto unmeasured = result_of("running M8 --torque 20Nm");
  for (const auto& rule : unmeasured["rules"])
    EXPECT_TRUE(rule["set_torque_N_m"].is_null());
}

TEST(Running, KeepsInsertsApart) {
  EXPECT_EQ(result_of("running 1/4-28 --insert")["limits"].size(), 2U);
  const auto result = result_of("running 1/4-28");
  for (const auto& limit : result["limits"])
    EXPECT_THAT(limit["nut"].get<std::string>(), Not(HasSubstr("insert in")));
}

TEST(Surfaces, AreCorrectedOnceAndNeverTwice) {
  // surfaces.csv: dry 0.20, oiled 0.18: 25 · 0.9 = 22.5.
  const auto once = result_of("surfaces --stated dry --fitted oiled --torque 25Nm");
  EXPECT_NEAR(once["corrected_torque_N_m"].get<double>(), 22.5, 1e-9);
  EXPECT_EQ(once["published"].size(), 5U);
  const auto already = answer_of(words_of("surfaces --stated oiled --fitted oiled --torque 25Nm"));
  EXPECT_EQ(already["result"]["differs"], false);
  EXPECT_NEAR(already["result"]["corrected_torque_N_m"].get<double>(), 25, 1e-12);
  EXPECT_THAT(codes_of(already), Not(Contains("surfaces-differ")));
  EXPECT_THAT(text_of("surfaces --stated oiled --fitted oiled --torque 25Nm"), HasSubstr("is taken off again"));
}

// By hand, M8, face 11.63/9 mm: levers 1.9795179 mm at μ 0.19 and 1.3212369 mm at 0.12; 25 · 1.3212369/1.9795179.
TEST(Surfaces, ShowTheTorqueByThreadFrictionBeside) {
  const auto result = result_of("surfaces --stated dry --fitted oiled --torque 25Nm --thread M8 --class 8.8");
  EXPECT_NEAR(result["thread_friction_torque_N_m"].get<double>(), 16.686347, 1e-5);
  EXPECT_TRUE(result_of("surfaces --stated dry --fitted oiled --torque 25Nm")["thread_friction_torque_N_m"].is_null());
}

TEST(Surfaces, NameTheConflictOfThePublishedRules) {
  EXPECT_THAT(codes_of(answer_of(words_of("surfaces --stated dry --fitted oiled --torque 25Nm"))),
              Contains("sources-conflict"));
  EXPECT_THAT(codes_of(answer_of(words_of("surfaces --stated dry --fitted moly-paste --torque 25Nm"))),
              Not(Contains("sources-conflict")));
}

TEST(Surfaces, AreNotCorrectedWhereTheJointLivesByDryOnes) {
  for (const char* place : {"--taper", "--kind plug", "--lock compound-medium"}) {
    const auto result = result_of(std::string("surfaces --stated dry --fitted oiled --torque 25Nm ") + place);
    EXPECT_TRUE(result["corrected_torque_N_m"].is_null()) << place;
    EXPECT_FALSE(result["no_correction_because"].is_null()) << place;
  }
}

// 2 + 0.9 · 23 = 22.7.
TEST(Surfaces, LeaveTheRunningTorqueOut) {
  const auto result = result_of("surfaces --stated dry --fitted oiled --torque 25Nm --running-torque 2Nm");
  EXPECT_NEAR(result["corrected_torque_N_m"].get<double>(), 22.7, 1e-9);
}

// K·F·d: 45/(0.20·0.010) and 29.25/(0.13·0.010) are both 22 500 N.
TEST(Surfaces, ClampTheSameAfterTheCorrection) {
  const auto result =
      result_of("surfaces --stated-nut-factor 0.20 --fitted-nut-factor 0.13 --torque 45Nm --thread M10 --class 8.8");
  EXPECT_NEAR(result["clamp_stated"]["preload_N"]["likely"].get<double>(), 22500, 1e-6);
  EXPECT_NEAR(result["clamp_corrected"]["preload_N"]["likely"].get<double>(), 22500, 1e-6);
  EXPECT_GT(result["clamp_uncorrected"]["preload_N"]["likely"].get<double>(), 34000);
}

TEST(Surfaces, AreListed) { EXPECT_EQ(result_of("surfaces")["surfaces"].size(), 12U); }

} // namespace
} // namespace clampwright::cli
