// SPDX-License-Identifier: GPL-3.0-or-later
//
// The register of wrenches: entering, changing, logging and retiring, and what it offers after each.
#include <filesystem>

#include "tests/cli/demo_workshop.hpp"
#include "tests/cli/refused.hpp"

#include <gmock/gmock.h>

namespace clampwright::cli {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;
using namespace testing_support;
using Json = nlohmann::json;

// The day of these tests is 2026-11-25.
class Register : public DemoWorkshop {
 protected:
  [[nodiscard]] Json run_json(const char* line) const { return json_here(words_of(line)); }
  [[nodiscard]] Printed run_line(const char* line) const { return run_here(words_of(line)); }
  [[nodiscard]] Json record(const char* name) const {
    return json_here({"wrench", "list", name})["result"]["wrenches"][0];
  }
  void enter() const {
    const Printed printed = run_line("wrench add D --called \"Yard wrench\" --range 20..100Nm --step 1Nm --turns both "
                                     "--arm 420mm --calibrated 2026-03-02");
    ASSERT_EQ(printed.exit, ExitCode::answered) << printed.err;
  }
};

TEST_F(Register, HoldsWhatWasEntered) {
  enter();
  const Json wrench = record("D");
  EXPECT_EQ(wrench["name"], "Yard wrench");
  EXPECT_EQ(wrench["low"], 20.0);
  EXPECT_EQ(wrench["high"], 100.0);
  EXPECT_EQ(wrench["unit"], "N.m");
  EXPECT_EQ(wrench["step"], 1.0);
  EXPECT_EQ(wrench["turns"], "both");
  EXPECT_EQ(wrench["arm_mm"], 420.0);
  EXPECT_EQ(wrench["accuracy"], 0.04);
  EXPECT_THAT(wrench["accuracy_basis"].get<std::string>(), HasSubstr("ISO 6789"));
  EXPECT_EQ(wrench["due_on"], "2027-03-02"); // twelve months, where the shop rules nothing else
  EXPECT_EQ(wrench["months_assumed"], true);
  EXPECT_EQ(wrench["usable"], true);
}

TEST_F(Register, IsThereByTheFullNameAndInAnyCase) {
  enter();
  EXPECT_EQ(record("yard WRENCH")["wrench"], "D");
  EXPECT_EQ(record("d")["wrench"], "D");
}

TEST_F(Register, KeepsTheScaleInItsOwnUnit) {
  const Json added =
      run_json("wrench add E --range 10..80lbf.ft --step 1lbf.ft --turns clockwise --accuracy 3% --due 2027-01-31");
  EXPECT_EQ(added["result"]["unit"], "lbf.ft");
  EXPECT_EQ(added["result"]["high"], 80.0);
  EXPECT_EQ(added["result"]["accuracy"], 0.03);
  EXPECT_EQ(added["result"]["due_on"], "2027-01-31");
}

// clang-format off
const Refused k_refused[] = {
    {"wrench add",                                                          64, "missing",        "short name"},
    {"wrench add D --turns both",                                           64, "missing",        "--range"},
    {"wrench add D --range 20..100Nm",                                      64, "missing",        "--turns"},
    {"wrench add D E --range 20..100Nm --turns both",                       64, "surplus",        "quotes"},
    {"wrench add \"Yard wrench\" --range 20..100Nm --turns both",           65, "not-understood", "--called"},
    {"wrench add D --range 20..100 --turns both",                           65, "bare-number",    "--range"},
    {"wrench add D --range 20..100Nm --turns left",                         65, "not-understood", "--turns clockwise"},
    {"wrench add D --range 20..100Nm --turns both --step 1lbf.ft",          65, "two-units",      "--step"},
    {"wrench add D --range 20..100Nm --turns both --step 200Nm",            65, "out-of-range",   "--step"},
    {"wrench add D --range 20..100Nm --turns both --calibrated 2026-11-26", 65, "out-of-range",   "2026-11-25"},
    {"wrench add D --range 20..100Nm --turns both --calibrated 02.03.2026", 65, "not-understood", "2026-11-26"},
    {"wrench add D --range 20..100Nm --turns both --due 2026-02-30",        65, "not-understood", "--due"},
    {"wrench add D --range 20..100Nm --turns both --months 0",              65, "out-of-range",   "--months"},
    {"wrench add D --range 20..100Nm --turns both --months 1.5",            65, "out-of-range",   "whole number"},
    {"wrench add D --range 20..100Nm --turns both --cycles many",           65, "not-a-number",   "--cycles"},
    {"wrench add D --range 20..100Nm --turns both --arm 0mm",               65, "out-of-range",   "--arm"},
    {"wrench add D --range 20..100Nm --turns both --accuracy 0%",           65, "out-of-range",   "--accuracy"},
    {"wrench add a --range 20..100Nm --turns both",                         73, "name-taken",     "wrench revise A"},
    {"wrench add D --called \"bench wrench a\" --range 20..100Nm --turns both", 73, "name-taken", "Bench wrench A"},
    {"wrench list Q",                                                       66, "no-such-name",   "A, B, C"},
    {"wrench revise A",                                                     64, "missing",        "--because"},
    {"wrench revise A --because \"\" --step 1Nm",                           64, "missing",        "--because"},
    {"wrench revise A --because \"no change\"",                             64, "nothing-to-change", "wrench list"},
    {"wrench revise A --because same --step 0.5Nm",                         64, "nothing-to-change", "wrench list"},
    {"wrench revise A --because metric --range 10..40lbf.ft",               64, "missing",        "--step"},
    {"wrench revise Q --because x --step 1Nm",                              66, "no-such-name",   "A, B, C"},
    {"wrench revise A --because x --called C",                              73, "name-taken",     "C"},
    {"wrench retire A",                                                     64, "missing",        "--because"},
    {"wrench retire A --because x --on 2026-12-01",                         65, "out-of-range",   "--on"},
    {"wrench retire Q --because x",                                         66, "no-such-name",   "A, B, C"},
    {"wrench log A",                                                        64, "missing",        "--used N"},
    {"wrench log A --drop --overload",                                      64, "surplus",        "--overload"},
    {"wrench log A --note",                                                 64, "missing",        "--words"},
    {"wrench log A --used 5 --due 2027-01-01",                              64, "surplus",        "--calibrated"},
    {"wrench log A --calibrated 2026-11-20 --on 2026-11-21",                64, "surplus",        "--on"},
    {"wrench log A --used 0",                                               65, "out-of-range",   "--used"},
    {"wrench log A --used -5",                                              65, "out-of-range",   "--used"},
    {"wrench log A --drop --on 2026-11-26",                                 65, "out-of-range",   "--on"},
    {"wrench log A --calibrated 2026-11-20 --due 2026-11-20",               65, "out-of-range",   "--due"},
    {"wrench log Q --drop",                                                 66, "no-such-name",   "A, B, C"},
};
// clang-format on

TEST_F(Register, RefusesWhatItCannotKeepAndChangesNothing) {
  const Json before = run_json("wrench list")["result"];
  for (const Refused& refused : k_refused)
    expect_refused(refused, [this](const Arguments& words) { return run_here(words); });
  EXPECT_EQ(run_json("wrench list")["result"], before);
}

TEST_F(Register, KeepsWhatWasAndWhyItWasChanged) {
  const Json revised = run_json("wrench revise A --arm 310mm --step 1Nm --because \"measured again\"");
  EXPECT_EQ(revised["result"]["arm_mm"], 310.0);
  const Json wrench = record("A");
  EXPECT_EQ(wrench["step"], 1.0);
  ASSERT_THAT(wrench["events"], SizeIs(1));
  EXPECT_EQ(wrench["events"][0]["kind"], "revised");
  EXPECT_EQ(wrench["events"][0]["on"], "2026-11-25");
  EXPECT_THAT(wrench["events"][0]["words"].get<std::string>(),
              AllOf(HasSubstr("step: 0.5 -> 1"), HasSubstr("arm in mm: 300 -> 310"), HasSubstr("measured again")));
}

TEST_F(Register, TakesAFieldAwayByNone) {
  EXPECT_TRUE(run_json("wrench revise A --arm none --because \"another handle\"")["result"]["arm_mm"].is_null());
  EXPECT_EQ(run_line("wrench set --torque 25Nm --wrench A --adaptor 50mm").exit, ExitCode::usage);
}

TEST_F(Register, NeverOffersARetiredWrench) {
  EXPECT_EQ(run_line("wrench retire A --because \"its pawl slips\"").exit, ExitCode::answered);
  EXPECT_EQ(record("A")["retired_because"], "its pawl slips");
  EXPECT_EQ(record("A")["usable"], false);
  const Json answer = run_json("wrench set --torque 25Nm --wrench A");
  EXPECT_EQ(answer["result"]["suitable"], false);
  EXPECT_TRUE(has_code(answer, "wrench-retired"));
  EXPECT_EQ(run_line("wrench retire A --because again").exit, ExitCode::usage);
  EXPECT_EQ(run_json("wrench revise A --in-use --because mended")["result"]["usable"], true);
}

TEST_F(Register, WantsAWrenchCalibratedThatWasDropped) {
  EXPECT_EQ(run_line("wrench log A --drop --words \"from the bench\" --on 2026-11-20").exit, ExitCode::answered);
  const Json answer = run_json("wrench set --torque 25Nm --wrench A");
  EXPECT_TRUE(has_code(answer, "wrench-dropped"));
  EXPECT_EQ(answer["result"]["suitable"], false);
  EXPECT_THAT(run_line("wrench set --torque 25Nm --wrench A").out, HasSubstr("was dropped on 2026-11-20"));
  EXPECT_EQ(run_line("wrench log A --calibrated 2026-11-24 --words \"sheet 118\"").exit, ExitCode::answered);
  EXPECT_EQ(run_json("wrench set --torque 25Nm --wrench A")["result"]["suitable"], true);
}

TEST_F(Register, ForgivesADropThatCameBeforeTheLastCalibration) {
  EXPECT_EQ(run_line("wrench log A --calibrated 2026-11-20").exit, ExitCode::answered);
  EXPECT_EQ(run_line("wrench log A --overload --on 2026-11-19").exit, ExitCode::answered);
  EXPECT_EQ(record("A")["usable"], true);
  EXPECT_EQ(run_line("wrench log A --overload --on 2026-11-20").exit, ExitCode::answered); // the same day, after it
  EXPECT_EQ(record("A")["usable"], false);
}

// The demo's wrench B was due on 2026-10-01.
TEST_F(Register, IsInDateAgainAfterACalibration) {
  EXPECT_EQ(record("B")["usable"], false);
  const Json logged = run_json("wrench log B --calibrated 2026-11-20");
  EXPECT_EQ(logged["result"]["usable"], true);
  EXPECT_EQ(logged["result"]["due_on"], "2027-11-20");
  EXPECT_EQ(run_json("wrench log B --calibrated 2026-11-21 --due 2027-05-31")["result"]["due_on"], "2027-05-31");
  EXPECT_EQ(run_json("wrench log B --calibrated 2020-01-01")["result"]["due_on"], "2027-05-31"); // an old sheet
}

TEST_F(Register, CountsPullsUntilTheyAreTooMany) {
  enter();
  EXPECT_EQ(run_json("wrench log D --used 4000")["result"]["cycles_left"], 1000);
  EXPECT_EQ(run_json("wrench log D --used 999")["result"]["usable"], true);
  const Json last = run_json("wrench log D --used 1");
  EXPECT_EQ(last["result"]["cycles_left"], 0);
  EXPECT_EQ(last["result"]["usable"], false);
  EXPECT_TRUE(has_code(last, "wrench-overdue"));
  EXPECT_EQ(run_json("wrench revise D --cycles 10000 --because \"shop rule 4\"")["result"]["usable"], true);
  EXPECT_EQ(run_json("wrench log D --calibrated 2026-11-25")["result"]["cycles_since"], 0);
}

TEST_F(Register, DoesNotKnowAWrenchThatWasNeverCalibrated) {
  const Json added = run_json("wrench add F --range 5..25Nm --turns both");
  EXPECT_TRUE(has_code(added, "calibration-unknown"));
  EXPECT_EQ(added["result"]["usable"], false);
  EXPECT_TRUE(added["result"]["due_on"].is_null());
}

TEST_F(Register, ListsEveryWrenchAndWhetherItMayBeUsed) {
  const Printed printed = run_line("wrench list");
  EXPECT_THAT(printed.out,
              AllOf(HasSubstr("10 to 60"), HasSubstr("no: overdue"), HasSubstr("both ways"), HasSubstr("INVENTED")));
}

// 42 N·m anticlockwise: A is for clockwise alone, B is overdue, C ends at 12 N·m.
TEST_F(Register, SaysOfEveryWrenchWhyItIsNotForAJoint) {
  const Json list = run_json("show pump/clutch-hub --wrenches")["result"]["wrenches"];
  ASSERT_THAT(list, SizeIs(3));
  const auto first_code = [&](std::size_t i) { return list[i]["findings"][0]["code"]; };
  EXPECT_EQ(first_code(0), "wrench-direction");
  EXPECT_EQ(first_code(1), "wrench-overdue");
  EXPECT_EQ(first_code(2), "above-tool-range");
  EXPECT_THAT(run_line("show pump/clutch-hub --wrenches").out, HasSubstr("Bench wrench A is not calibrated"));
}

TEST_F(Register, OffersTheWrenchThatSuitsAJoint) {
  EXPECT_THAT(run_line("show pump/head-nuts --wrenches").out, HasSubstr("set 17"));
  EXPECT_FALSE(run_json("show pump/head-nuts")["result"].contains("wrenches"));
}

TEST(RegisterWithoutAFile, MakesAnEmptyWorkshopForTheFirstWrench) {
  const TemporaryFolder folder;
  const Arguments add = words_of("wrench add A --range 10..60Nm --step 0.5Nm --turns both --calibrated 2026-11-01");
  const Printed printed = run_in(folder.path(), add);
  EXPECT_EQ(printed.exit, ExitCode::answered);
  EXPECT_THAT(printed.err, HasSubstr("made an empty one"));
  EXPECT_THAT(printed.out, Not(HasSubstr("INVENTED")));
  EXPECT_THAT(run_in(folder.path(), {"wrench", "list"}).out, HasSubstr("10 to 60"));
  EXPECT_THAT(json_of(run_in(folder.path(), {"find", "nuts", "--json"}))["result"]["hits"], IsEmpty());
}

TEST(RegisterWithoutAFile, MakesNoneForAWrenchThatIsRefused) {
  const TemporaryFolder folder;
  EXPECT_EQ(run_in(folder.path(), words_of("wrench add A --range 10..60Nm")).exit, ExitCode::usage);
  EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
  for (const char* line : {"wrench list", "wrench log A --drop", "wrench retire A --because x"}) {
    EXPECT_EQ(run_in(folder.path(), words_of(line)).exit, ExitCode::no_such) << line;
    EXPECT_TRUE(std::filesystem::is_empty(folder.path())) << line;
  }
}

} // namespace
} // namespace clampwright::cli
