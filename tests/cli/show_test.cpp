// SPDX-License-Identifier: GPL-3.0-or-later
//
// What `show` says beyond the figure of the page: other surfaces, a wrench, figures that differ or gave way, units that
// would fit. The joints are those of the demo workshop.
#include <gmock/gmock.h>

#include "tests/cli/demo_workshop.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::UnorderedElementsAreArray;
using Json = nlohmann::json;

class ShowAsFitted : public DemoWorkshop {
 protected:
  [[nodiscard]] Json answer(const char* joint, const char* surfaces) const {
    return json_here({"show", joint, "--as-fitted", surfaces});
  }
  [[nodiscard]] Json fitted(const char* joint, const char* surfaces) const {
    return answer(joint, surfaces)["result"]["as_fitted"];
  }
};

// The likely nut factors are 0.20 dry and 0.13 with anti-seize: 0.13/0.20 = 0.65, and 22 x 0.65 = 14.3 N.m.
TEST_F(ShowAsFitted, CorrectsOnceByTheRatioOfNutFactors) {
  const Json found = fitted("pump/exhaust-nuts", "anti-seize");
  EXPECT_EQ(found["differs"], true);
  EXPECT_NEAR(found["factor"], 0.65, 1e-12);
  EXPECT_NEAR(found["torque_N_m"], 14.3, 1e-9);
  EXPECT_TRUE(found["no_correction_because"].is_null());
}

// F = T/(K d): the figure dry 22/(0.20 x 0.008) = 13750 N; 22 N.m on anti-seize 22/(0.13 x 0.008) = 21153.85 N; the
// corrected torque 14.3/(0.13 x 0.008) = 13750 N again.
TEST_F(ShowAsFitted, ClampsTheSameAtTheCorrectedTorque) {
  const Json found = answer("pump/exhaust-nuts", "anti-seize")["result"];
  const auto likely = [](const Json& clamp) { return clamp["nut_factor"]["preload_N"]["likely"].get<double>(); };
  EXPECT_NEAR(likely(found["clamp"]), 13750.0, 1e-6);
  EXPECT_NEAR(likely(found["as_fitted"]["clamp_at_figure"]), 21153.846, 1e-3);
  EXPECT_NEAR(likely(found["as_fitted"]["clamp"]), 13750.0, 1e-6);
}

TEST_F(ShowAsFitted, LeavesTheClampLoadOfTheFigureOnItsOwnSurfaces) {
  const Json found = answer("pump/exhaust-nuts", "anti-seize")["result"];
  EXPECT_EQ(found["surfaces"], "dry");
  EXPECT_EQ(found["clamp"]["surfaces"], "dry");
  EXPECT_EQ(found["clamp"]["torque_N_m"], 22.0);
  EXPECT_EQ(found["as_fitted"]["clamp"]["surfaces"], "anti-seize");
}

// TM 55-1520-240-23-1, note 2 (second-hand): lubricated threads take 70 % of the dry torque; 22 x 0.70 = 15.4 N.m.
TEST_F(ShowAsFitted, NamesPublishedReductionsWithSourceAndTorque) {
  const Json published = fitted("pump/exhaust-nuts", "anti-seize")["published"];
  ASSERT_EQ(published.size(), 1U);
  EXPECT_EQ(published[0]["factor"], 0.70);
  EXPECT_NEAR(published[0]["torque_N_m"], 15.4, 1e-9);
  EXPECT_THAT(published[0]["source"]["title"].get<std::string>(), HasSubstr("TM 55-1520-240-23-1"));
  EXPECT_EQ(published[0]["source"]["known"], "second-hand");
}

// Dry to oiled has five rows in the table of published reductions (specdb/data/surface_reductions.csv).
TEST_F(ShowAsFitted, NamesEveryPublishedReductionWhereTheyDiffer) {
  std::vector<double> factors;
  const Json published = fitted("pump/exhaust-nuts", "oiled")["published"];
  for (const Json& one : published)
    factors.push_back(one["factor"]);
  EXPECT_THAT(factors, UnorderedElementsAreArray({0.70, 0.75, 0.75, 0.79, 0.90}));
}

TEST_F(ShowAsFitted, SaysOnceThatItIsNoLongerTheFigure) {
  EXPECT_TRUE(has_code(answer("pump/exhaust-nuts", "anti-seize"), "surfaces-differ"));
  EXPECT_THAT(run_here({"show", "pump/exhaust-nuts", "--as-fitted", "anti-seize"}).out,
              AllOf(HasSubstr("As fitted: anti-seize"), HasSubstr("14.3 N·m = 10.5 lbf·ft"), // 14.3/1.3558179 = 10.55
                    HasSubstr("[surfaces-differ]")));
}

TEST_F(ShowAsFitted, CorrectsNothingOnTheSurfacesOfTheFigure) {
  const Json found = answer("pump/exhaust-nuts", "dry");
  const Json as_fitted = found["result"]["as_fitted"];
  EXPECT_EQ(as_fitted["differs"], false);
  for (const char* key : {"factor", "torque_N_m", "clamp_at_figure", "clamp"})
    EXPECT_TRUE(as_fitted[key].is_null()) << key;
  EXPECT_THAT(codes_of(found), UnorderedElementsAreArray({"maker-first"}));
}

TEST_F(ShowAsFitted, IsNullUnlessAskedFor) {
  EXPECT_TRUE(json_here({"show", "pump/exhaust-nuts"})["result"]["as_fitted"].is_null());
}

TEST_F(ShowAsFitted, RefusesSurfacesThatAreNoneWithTheList) {
  const Arguments asked{"show", "pump/exhaust-nuts", "--as-fitted", "honey"};
  EXPECT_EQ(run_here(asked).exit, ExitCode::no_such);
  const Json error = json_here(asked)["error"];
  EXPECT_EQ(error["input"], "honey");
  EXPECT_THAT(error["message"].get<std::string>(), HasSubstr("--as-fitted"));
  EXPECT_THAT(error["hint"].get<std::string>(), AllOf(HasSubstr("dry"), HasSubstr("anti-seize")));
}

TEST_F(ShowAsFitted, GivesNoCorrectionWhereThePageDoesNotNameItsSurfaces) {
  const Json found = answer("winch/gearbox-cover", "oiled");
  const Json as_fitted = found["result"]["as_fitted"];
  EXPECT_EQ(as_fitted["differs"], true);
  for (const char* key : {"factor", "torque_N_m", "clamp"})
    EXPECT_TRUE(as_fitted[key].is_null()) << key;
  EXPECT_THAT(as_fitted["no_correction_because"].get<std::string>(), HasSubstr("which surfaces the figure is for"));
  EXPECT_TRUE(has_code(found, "surfaces-differ"));
}

// What the printed number would clamp is still of interest: F = T/(K d) = 17/(0.18 x 0.008) = 11805.6 N.
TEST_F(ShowAsFitted, SaysWhatTheFigureWouldClampWhereItCannotBeCorrected) {
  const Json clamp = fitted("winch/gearbox-cover", "oiled")["clamp_at_figure"];
  EXPECT_NEAR(clamp["nut_factor"]["preload_N"]["likely"], 11805.56, 0.01);
}

// 22 N.m and 2 N.m of running torque, zinc-dry K 0.22, oiled K 0.18: 2 + 22 x 0.18/0.22 = 2 + 18 = 20 N.m.
TEST_F(ShowAsFitted, LeavesTheRunningTorqueOutOfTheCorrection) {
  const Json result = answer("winch/rope-guide", "oiled")["result"];
  EXPECT_NEAR(result["torque"]["set_N_m"], 24.0, 1e-9);
  EXPECT_NEAR(result["as_fitted"]["factor"], 0.18 / 0.22, 1e-12);
  EXPECT_NEAR(result["as_fitted"]["torque_N_m"], 20.0, 1e-9);
}

TEST_F(ShowAsFitted, FillsNothingInWhereThereIsNoFigure) {
  EXPECT_EQ(run_here({"show", "winch/brake-pivot", "--as-fitted", "oiled"}).exit, ExitCode::answered);
  const Json found = answer("winch/brake-pivot", "oiled");
  const Json as_fitted = found["result"]["as_fitted"];
  for (const char* key : {"factor", "torque_N_m", "clamp_at_figure", "clamp"})
    EXPECT_TRUE(as_fitted[key].is_null()) << key;
  EXPECT_TRUE(as_fitted["published"].empty());
  EXPECT_THAT(as_fitted["no_correction_because"].get<std::string>(), HasSubstr("no figure"));
  EXPECT_THAT(codes_of(found), UnorderedElementsAreArray({"no-maker-value", "maker-first"}));
}

struct UncorrectedRow {
  const char* joint;
  const char* because;
};

// By a number that cannot be meant, by one of two that differ, or before an angle, nothing is corrected.
constexpr UncorrectedRow k_uncorrected[] = {
    {"pump/base-nuts", "the sources in force differ"},
    {"pump/blower-cover", "the figure cannot be meant as printed"},
    {"winch/motor-plate", "the angle that follows makes the clamp load, whatever the surfaces"},
    {"winch/tensioner", "the figure names its own friction"},
};

TEST_F(ShowAsFitted, GivesNoCorrectionOfAFigureThatCannotBeUsed) {
  for (const UncorrectedRow& row : k_uncorrected) {
    const Json found = answer(row.joint, "anti-seize");
    const Json as_fitted = found["result"]["as_fitted"];
    EXPECT_TRUE(as_fitted["torque_N_m"].is_null()) << row.joint;
    EXPECT_EQ(as_fitted["no_correction_because"], row.because) << row.joint;
    EXPECT_FALSE(as_fitted["clamp_at_figure"].is_null()) << row.joint;
  }
}

TEST_F(ShowAsFitted, KeepsTheSlipOfTheUnitInSight) {
  EXPECT_THAT(codes_of(answer("pump/blower-cover", "oiled")), testing::Contains("unit-slip"));
}

class ShowWithWrench : public DemoWorkshop {
 protected:
  [[nodiscard]] Json answer(const char* joint, const char* wrench) const {
    return json_here({"show", joint, "--wrench", wrench});
  }
};

struct WrenchRow {
  const char* joint;
  const char* wrench;
  double setting; // a mark in N·m; 0 for none
  bool suitable;
  const char* code; // of the stop; empty for none
};

// A: 10 to 60 N.m by 0.5, clockwise only, in date. B: 40 to 200 N.m by 1, due on 1 October, the day of the test being
// 25 November. C: 1 to 12 N.m by 0.1.
// clang-format off
constexpr WrenchRow k_wrenches[] = {
    {"pump/head-nuts",    "A", 17.0, true,  ""},
    {"pump/reed-block",   "C", 10.0, true,  ""},
    {"pump/clutch-hub",   "A", 0.0,  false, "wrench-direction"}, // tightens anticlockwise
    {"pump/clutch-hub",   "B", 42.0, false, "wrench-overdue"},
    {"winch/frame-bolts", "B", 41.0, false, "wrench-overdue"},   // 30 lbf.ft = 40.67 N.m
    {"pump/carburettor",  "A", 0.0,  false, "below-tool-range"}, // 2.8 N.m
    {"pump/carburettor",  "C", 2.8,  true,  ""},
    {"winch/drum-nut",    "A", 0.0,  false, "above-tool-range"}, // 190 N.m
};
// clang-format on

TEST_F(ShowWithWrench, GivesTheMarkToSetOrNone) {
  for (const WrenchRow& row : k_wrenches) {
    const Json wrench = answer(row.joint, row.wrench)["result"]["wrench"];
    EXPECT_EQ(wrench["suitable"], row.suitable) << row.joint << " " << row.wrench;
    if (row.setting > 0) {
      EXPECT_NEAR(wrench["setting"], row.setting, 1e-9) << row.joint << " " << row.wrench;
      EXPECT_NEAR(wrench["setting_N_m"], row.setting, 1e-9) << row.joint << " " << row.wrench;
    } else {
      EXPECT_TRUE(wrench["setting"].is_null() && wrench["setting_N_m"].is_null()) << row.joint << " " << row.wrench;
    }
  }
}

TEST_F(ShowWithWrench, StopsWhereItIsNotForTheJoint) {
  for (const WrenchRow& row : k_wrenches) {
    std::vector<std::string> stops;
    const Json findings = answer(row.joint, row.wrench)["findings"];
    for (const Json& finding : findings)
      if (finding["severity"] == "stop") stops.push_back(finding["code"]);
    const std::vector<std::string> expected =
        *row.code == '\0' ? std::vector<std::string>() : std::vector<std::string>{row.code};
    EXPECT_EQ(stops, expected) << row.joint << " " << row.wrench;
  }
}

TEST_F(ShowWithWrench, IsNotSetByAFigureThatCannotBeUsed) {
  for (const UncorrectedRow& row : {k_uncorrected[0], k_uncorrected[1]}) {
    const Json wrench = answer(row.joint, "A")["result"]["wrench"];
    EXPECT_TRUE(wrench["setting"].is_null()) << row.joint;
    EXPECT_EQ(wrench["suitable"], false) << row.joint;
    EXPECT_EQ(wrench["no_setting_because"], row.because) << row.joint;
  }
}

TEST_F(ShowWithWrench, IsSetForTheCorrectedTorqueOnWhatIsFitted) {
  const Json wrench =
      json_here({"show", "pump/exhaust-nuts", "--as-fitted", "anti-seize", "--wrench", "A"})["result"]["wrench"];
  EXPECT_EQ(wrench["setting"], 14.5); // 22 N.m x 0.13/0.20 = 14.3 N.m, marks every half
}

TEST_F(ShowWithWrench, SaysInTextWhichWayItIsNotCalibrated) {
  const Printed printed = run_here({"show", "pump/clutch-hub", "--wrench", "A"});
  EXPECT_EQ(printed.exit, ExitCode::answered);
  EXPECT_THAT(printed.out, AllOf(HasSubstr("no setting"), HasSubstr("not calibrated for turning anticlockwise"),
                                 Not(HasSubstr("set 42"))));
}

TEST_F(ShowWithWrench, SaysSinceWhenItIsOverdue) {
  EXPECT_THAT(run_here({"show", "winch/frame-bolts", "--wrench", "B"}).out, HasSubstr("2026-10-01"));
}

TEST_F(ShowWithWrench, ReckonsWithTheAccuracyOfItsSheet) {
  const Json accuracy = answer("pump/head-nuts", "A")["result"]["clamp"]["wrench_accuracy"];
  EXPECT_EQ(accuracy["share"], 0.04);
  EXPECT_THAT(accuracy["basis"].get<std::string>(), HasSubstr("calibration sheet of wrench A"));
}

// 10.5 N.m dry on M6, K up to 0.27. With no wrench named 4 % holds above 10 N.m: 10.5 x 0.96/(0.27 x 0.006) = 6222.2 N
// at the least; with C, which has 6 %: 10.5 x 0.94/(0.27 x 0.006) = 6092.6 N.
TEST_F(ShowWithWrench, WidensTheClampLoadWhereItIsLessAccurate) {
  const auto least = [](const Json& found) {
    return found["result"]["clamp"]["nut_factor"]["preload_N"]["low"].get<double>();
  };
  EXPECT_NEAR(least(json_here({"show", "winch/chain-cover"})), 6222.22, 0.01);
  EXPECT_NEAR(least(answer("winch/chain-cover", "C")), 6092.59, 0.01);
}

// 14.3 N.m on a scale by halves.
TEST_F(ShowWithWrench, IsSetToTheTorqueThatIsCorrectedForWhatIsFitted) {
  const Json wrench =
      json_here({"show", "pump/exhaust-nuts", "--as-fitted", "anti-seize", "--wrench", "A"})["result"]["wrench"];
  EXPECT_EQ(wrench["setting"], 14.5);
}

TEST_F(ShowWithWrench, IsSetWithTheRunningTorqueWhereThePageAddsIt) {
  EXPECT_EQ(answer("winch/rope-guide", "A")["result"]["wrench"]["setting"], 24.0); // 22 and 2 N.m
}

TEST_F(ShowWithWrench, RefusesOneThatIsNotThereWithTheList) {
  const Arguments asked{"show", "pump/head-nuts", "--wrench", "torque stick"};
  EXPECT_EQ(run_here(asked).exit, ExitCode::no_such);
  const Json error = json_here(asked)["error"];
  EXPECT_THAT(error["message"].get<std::string>(), HasSubstr("--wrench"));
  EXPECT_THAT(error["hint"].get<std::string>(), HasSubstr("A, B, C"));
}

class Show : public DemoWorkshop {
 protected:
  [[nodiscard]] Json result(const char* joint) const { return json_here({"show", joint})["result"]; }
};

TEST_F(Show, PutsTheOtherFigureInForceBesideTheFirst) {
  const Json base = result("pump/base-nuts");
  EXPECT_EQ(base["torque"]["printed"], "17 N·m");
  ASSERT_EQ(base["beside"].size(), 1U);
  EXPECT_EQ(base["beside"][0]["torque"]["printed"], "19 N·m");
  EXPECT_EQ(base["beside"][0]["torque"]["nominal_N_m"], 19.0);
  EXPECT_EQ(base["beside"][0]["clamp"]["torque_N_m"], 19.0);
  EXPECT_THAT(base["beside"][0]["source"]["title"].get<std::string>(), HasSubstr("bulletin"));
}

TEST_F(Show, NamesBothFiguresInTextAndChoosesNone) {
  EXPECT_TRUE(has_code(json_here({"show", "pump/base-nuts"}), "sources-conflict"));
  EXPECT_THAT(run_here({"show", "pump/base-nuts"}).out,
              AllOf(HasSubstr("17 N·m, as printed"), HasSubstr("19 N·m, as printed"), HasSubstr("at 17 N·m"),
                    HasSubstr("at 19 N·m"), HasSubstr("None is chosen")));
}

TEST_F(Show, HasNothingBesideAFigureThatStandsAlone) { EXPECT_TRUE(result("pump/head-nuts")["beside"].empty()); }

TEST_F(Show, KeepsTheFigureThatGaveWay) {
  const Json head = result("pump/head-nuts");
  EXPECT_EQ(head["torque"]["printed"], "17 N·m");
  ASSERT_EQ(head["superseded"].size(), 1U);
  EXPECT_EQ(head["superseded"][0]["printed"], "16 N·m");
  EXPECT_EQ(head["superseded"][0]["source"]["edition"], "1st print");
}

TEST_F(Show, SaysInTextWhatTheFigureReplacesAndWhy) {
  EXPECT_THAT(run_here({"show", "pump/head-nuts"}).out,
              AllOf(HasSubstr("Replaces"), HasSubstr("16 N·m"), HasSubstr("1st print"), HasSubstr("new gasket")));
}

TEST_F(Show, UndoesTheLeftHandHubWithTheClock) {
  EXPECT_EQ(result("pump/clutch-hub")["turn_to_undo"], "clockwise");
  EXPECT_THAT(run_here({"show", "pump/clutch-hub"}).out, HasSubstr("Undo                clockwise, looking at"));
}

TEST_F(Show, SaysHowToHoldTheShaft) {
  EXPECT_THAT(result("pump/clutch-hub")["holding"].get<std::string>(), HasSubstr("flats of the crank"));
  EXPECT_THAT(run_here({"show", "pump/clutch-hub"}).out, HasSubstr("flats of the crank"));
}

TEST_F(Show, SaysThatATabWasherServesOnce) {
  EXPECT_TRUE(has_code(json_here({"show", "winch/drum-nut"}), "single-use"));
  EXPECT_THAT(run_here({"show", "winch/drum-nut"}).out,
              AllOf(HasSubstr("washer with tabs"), HasSubstr("[single-use]")));
}

struct FitsRow {
  const char* joint;
  std::vector<std::pair<std::string, double>> fits; // unit, and what the number comes to in N·m
};

// 1 kgf = 9.80665 N; 1 lbf.in = 0.45359237 x 9.80665 x 0.0254 N.m = 0.1129848 N.m.
// clang-format off
const FitsRow k_fits[] = {
    {"pump/blower-cover",    {{"dN.m", 9.0}, {"kgf.cm", 8.825985}, {"lbf.in", 10.168635}}}, // 90
    {"winch/gearbox-flange", {{"daN.m", 22.0}, {"kgf.m", 21.57463}}},                       // 2.2
    {"boat/steering-arm",    {}}, // 33, perhaps lbf.ft: a factor of 1.36 lies within what friction spreads
    {"winch/fairlead",       {}}, // 25, over the proof load of a 4.8 bolt in earnest
};
// clang-format on

TEST_F(Show, ListsEveryUnitInWhichASenselessNumberWouldMakeSense) {
  for (const FitsRow& row : k_fits) {
    const Json fits = result(row.joint)["unit_fits"];
    ASSERT_EQ(fits.size(), row.fits.size()) << row.joint << fits;
    for (const auto& [unit, newton_metres] : row.fits) {
      const auto fit = std::ranges::find_if(fits, [&](const Json& one) { return one["unit"] == unit; });
      ASSERT_NE(fit, fits.end()) << row.joint << " " << unit;
      EXPECT_NEAR((*fit)["torque_N_m"], newton_metres, 1e-5) << row.joint << " " << unit;
    }
  }
}

TEST_F(Show, ChangesNoNumberThatCannotBeMeant) {
  const Json torque = result("pump/blower-cover")["torque"];
  EXPECT_EQ(torque["printed"], "90 N·m");
  EXPECT_EQ(torque["nominal_N_m"], 90.0);
}

} // namespace
} // namespace clampwright::cli
