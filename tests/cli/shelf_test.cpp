// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "tests/cli/demo_workshop.hpp"
#include "tests/cli/refused.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using testing::HasSubstr;
using testing::Not;

// The day of these tests is 2026-11-25.
class Shelf : public ::testing::Test {
 protected:
  [[nodiscard]] Printed here(std::string_view line) const { return run_in(folder_.path(), words_of(line)); }
  [[nodiscard]] Printed run_in_words(const Arguments& words) const { return run_in(folder_.path(), words); }
  [[nodiscard]] int exit_of(std::string_view line) const { return static_cast<int>(here(line).exit); }
  [[nodiscard]] nlohmann::json json_here(std::string_view line) const {
    return json_of(here(std::string(line) + " --json"));
  }
  void add_left() const {
    ASSERT_EQ(exit_of("shelf add --label \"Left bottle\" --grade compound-medium --batch L-204 --expires 2026-11-25"),
              0);
  }

 private:
  TemporaryFolder folder_;
};

TEST_F(Shelf, MakesTheFileWithTheFirstBottle) {
  EXPECT_EQ(exit_of("shelf list"), 66);
  add_left();
  const auto compounds = json_here("shelf list")["result"]["compounds"];
  ASSERT_EQ(compounds.size(), 1U);
  EXPECT_EQ(compounds[0]["compound"], "left-bottle");
  EXPECT_EQ(compounds[0]["label"], "Left bottle");
  EXPECT_EQ(compounds[0]["batch"], "L-204");
  EXPECT_TRUE(compounds[0]["bears_degC"].is_null());
}

TEST_F(Shelf, KeepsABottleThroughItsLastDay) {
  add_left();
  EXPECT_EQ(json_here("shelf list")["result"]["compounds"][0]["state"], "good");
  EXPECT_EQ(exit_of("shelf revise left-bottle --expires 2026-11-24 --because \"misread\""), 0);
  const auto answer = json_here("shelf list");
  EXPECT_EQ(answer["result"]["compounds"][0]["state"], "expired");
  EXPECT_TRUE(has_code(answer, "compound-expired"));
  EXPECT_THAT(here("shelf list").out, HasSubstr("EXPIRED on 2026-11-24"));
  EXPECT_EQ(exit_of("shelf list"), 0);
}

TEST_F(Shelf, KeepsWhatWasAndWhy) {
  add_left();
  EXPECT_EQ(exit_of("shelf revise \"left bottle\" --batch L-205 --bears 175degC --because \"new bottle\""), 0);
  const auto compound = json_here("shelf list")["result"]["compounds"][0];
  EXPECT_EQ(compound["batch"], "L-205");
  EXPECT_EQ(compound["bears_degC"], 175.0);
  ASSERT_EQ(compound["events"].size(), 1U);
  EXPECT_EQ(compound["events"][0]["on"], "2026-11-25");
  EXPECT_EQ(compound["events"][0]["words"], "batch: L-204 → L-205; bears: none → 175 °C; because new bottle");
}

TEST_F(Shelf, TakesABottleAwayAndKeepsItsRecord) {
  add_left();
  EXPECT_EQ(exit_of("shelf retire left-bottle --because empty"), 0);
  EXPECT_TRUE(json_here("shelf list")["result"]["compounds"].empty());
  const auto all = json_here("shelf list --all")["result"]["compounds"];
  EXPECT_EQ(all[0]["state"], "retired");
  EXPECT_EQ(all[0]["retired_because"], "empty");
  EXPECT_EQ(exit_of("shelf retire left-bottle --because again"), 65);
}

TEST_F(Shelf, GivesASecondBottleOfThatNameANumber) {
  add_left();
  add_left();
  const auto compounds = json_here("shelf list")["result"]["compounds"];
  ASSERT_EQ(compounds.size(), 2U);
  EXPECT_EQ(compounds[1]["compound"], "left-bottle-2");
}

TEST_F(Shelf, TakesAwayWhatAnEmptyTextStandsFor) {
  add_left();
  const Printed done = run_in_words({"shelf", "revise", "left-bottle", "--batch", "", "--because", "label lost"});
  EXPECT_EQ(done.exit, ExitCode::answered) << done.err;
  EXPECT_TRUE(json_here("shelf list")["result"]["compounds"][0]["batch"].is_null());
}

// The label is the user's: whatever stands in it, the grade alone says what it is.
TEST_F(Shelf, ReadsNothingIntoALabel) {
  EXPECT_EQ(exit_of("shelf add --label \"compound-high for studs\" --grade compound-low"), 0);
  EXPECT_EQ(json_here("shelf list")["result"]["compounds"][0]["grade"], "compound-low");
}

// clang-format off
const std::vector<Refused> k_refused{
    {"shelf add --grade compound-low",                                             64, "", "label"},
    {"shelf add --label x",                                                        64, "", "grade"},
    {"shelf add --label x --grade lock-wire",                                      65, "", "no compound"},
    {"shelf add --label x --grade strong",                                         66, "", "known are"},
    {"shelf add --label x --grade compound-low --expires 30.6.2027",               65, "", "2026-11-26"},
    {"shelf add --label x --grade compound-low --expires 2027-02-30",              65, "", "no such day"},
    {"shelf add --label x --grade compound-low --bears 175",                       65, "", "175"},
    {"shelf add --label x --grade compound-low --opened 2027-01-01",               65, "", "still to come"},
    {"shelf revise left-bottle --opened 2026-11-26 --because x",                   65, "", "2026-11-25"},
    {"shelf revise left-bottle --batch L-9",                                       64, "", "reason"},
    {"shelf revise left-bottle --because idle",                                    64, "", "nothing would change"},
    {"shelf revise right-bottle --batch L-9 --because x",                          66, "", "left-bottle"},
    {"shelf retire --because x",                                                   64, "", "missing"},
    {"shelf retire left-bottle",                                                   64, "", "reason"},
};
// clang-format on

TEST_F(Shelf, RefusesWhatItCannotKeep) {
  add_left();
  for (const Refused& refused : k_refused)
    expect_refused(refused, [this](const Arguments& words) { return run_in_words(words); });
  EXPECT_EQ(json_here("shelf list")["result"]["compounds"].size(), 1U);
}

class Renew : public DemoWorkshop {
 protected:
  [[nodiscard]] nlohmann::json parts(const Arguments& words) const { return json_here(words)["result"]["parts"]; }
};

TEST_F(Renew, ListsTheMachineTheJointsAndTheWhole) {
  const auto pump = parts({"renew", "pump"});
  EXPECT_FALSE(pump.empty());
  for (const auto& part : pump)
    EXPECT_THAT(part["joint"].get<std::string>(), testing::StartsWith("pump/"));
  EXPECT_GT(parts({"renew"}).size(), pump.size());
  EXPECT_EQ(run_here({"renew", "zeppelin"}).exit, ExitCode::no_such);
}

// What a page allows to be used again is not on the list.
TEST_F(Renew, LeavesOutWhatMayServeAgain) {
  for (const auto& part : parts({"renew"}))
    EXPECT_THAT(part["part"].get<std::string>(), Not(HasSubstr("wedge")));
}

TEST_F(Renew, AddsUpEqualParts) {
  const auto result = json_here({"renew"})["result"];
  int by_joint = 0;
  for (const auto& part : result["parts"])
    by_joint += part["count"].get<int>();
  int all = 0;
  for (const auto& total : result["totals"])
    all += total["count"].get<int>();
  EXPECT_EQ(by_joint, all);
}

class LockOfAJoint : public DemoWorkshop {};

TEST_F(LockOfAJoint, IsShownWithWhatComesOffFirst) {
  bool compound = false;
  const auto found = json_here({"find", "pump"});
  for (const auto& hit : found["result"]["hits"]) {
    const auto result = json_here({"show", hit["joint"].get<std::string>()})["result"];
    const std::string lock = result["lock"];
    const bool is_compound = lock.find("compound") != std::string::npos;
    compound = compound || is_compound;
    // A tab, pin or wire comes off first too.
    EXPECT_EQ(is_compound, result["check_lock"].dump().find("never by movement") != std::string::npos) << lock;
    EXPECT_EQ(is_compound, !result["cure"].is_null()) << lock;
    EXPECT_EQ(is_compound, !result["off_first"].empty()) << lock;
  }
  EXPECT_TRUE(compound);
}

} // namespace
} // namespace clampwright::cli
