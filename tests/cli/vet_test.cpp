// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "tests/cli/demo_workshop.hpp"
#include "tests/specdb/small_workshop.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using Json = nlohmann::json;

struct Row {
  const char* joint;
  bool asks; // for a second look: something to stop for or to mind
};

// In the order of the file. What each asks for is in DEMO.md; a note asks for nothing: that a plug is no bolt, a torque
// to seat, a running torque added, a reduced head, a low preload.
// clang-format off
constexpr Row k_joints[] = {
    {"pump/clutch-hub", true},      {"pump/flywheel-nut", false},   {"pump/head-nuts", false},    {"pump/spark-plug", false},
    {"pump/base-nuts", true},       {"pump/exhaust-nuts", false},  {"pump/exhaust-studs", false}, {"pump/mounts", false},
    {"pump/crankcase", false},      {"pump/blower-cover", true},   {"pump/coil", false},         {"pump/carburettor", false},
    {"pump/reed-block", true},      {"pump/volute", true},         {"pump/impeller", false},      {"pump/silencer", true},
    {"pump/seal-plate", false},      {"winch/pulley-bolt", true},   {"winch/drum-nut", true},     {"winch/drum-cap", true},
    {"winch/gearbox-cover", true},  {"winch/gearbox-flange", true}, {"winch/frame-bolts", false}, {"winch/fairlead", true},
    {"winch/rope-guide", false},    {"winch/belt-guard", true},    {"winch/clevis", true},       {"winch/gearbox-foot", true},
    {"winch/anchor-frame", true},   {"winch/chain-cover", false},  {"winch/tensioner", true},    {"winch/brake-pivot", true},
    {"winch/motor-plate", false},    {"boat/propeller-hub", false},  {"boat/cage-clamps", false},  {"boat/steering-arm", false},
};
// clang-format on

class Vet : public DemoWorkshop {
 protected:
  [[nodiscard]] Json specifications() const { return json_here({"vet"})["result"]["specifications"]; }
};

TEST_F(Vet, LooksAtEverySpecificationInTheOrderOfTheFile) {
  std::vector<std::string> expected;
  for (const Row& row : k_joints)
    expected.emplace_back(row.joint);
  std::vector<std::string> found;
  const Json all = specifications();
  for (const Json& one : all)
    found.push_back(one["joint"]);
  EXPECT_EQ(found, expected);
  EXPECT_EQ(found.size(), 36U);
}

// Two figures are over the limit: the 90 N·m of the blower cover and the 25 N·m of the fairlead.
TEST_F(Vet, EndsWithOneWhereAFigureIsOverTheLimit) {
  EXPECT_EQ(run_here({"vet"}).exit, ExitCode::check_failed);
  EXPECT_EQ(run_here({"vet", "--json"}).exit, ExitCode::check_failed);
}

TEST_F(Vet, PutsTheMakerFirstOnceForAll) {
  const Json answer = json_here({"vet"});
  EXPECT_THAT(codes_of(answer), ElementsAre("maker-first"));
  for (const Json& one : answer["result"]["specifications"])
    for (const Json& finding : one["findings"])
      EXPECT_NE(finding["code"], "maker-first") << one["joint"];
}

TEST_F(Vet, HasSomethingToStopForOrToMindWhereItShould) {
  const Json all = specifications();
  ASSERT_EQ(all.size(), std::size(k_joints));
  for (std::size_t i = 0; i < std::size(k_joints); ++i) {
    const Json& findings = all[i]["findings"];
    const bool asks = std::ranges::any_of(findings, [](const Json& finding) { return finding["severity"] != "note"; });
    // A standing caution is to be minded, but asks for no second look.
    EXPECT_TRUE(asks || !k_joints[i].asks) << k_joints[i].joint << findings;
  }
}

TEST_F(Vet, NamesInTextOnlyTheJointsWithSomethingToSay) {
  const std::string text = run_here({"vet"}).out;
  for (const Row& row : k_joints) {
    const bool named = text.find(std::string("\n  ") + row.joint + " ") != std::string::npos;
    EXPECT_EQ(named, row.asks) << row.joint;
  }
}

TEST_F(Vet, CountsThoseThatAskForASecondLook) {
  const auto quiet = std::ranges::count_if(k_joints, [](const Row& row) { return !row.asks; });
  EXPECT_EQ(quiet, 18);
  EXPECT_THAT(run_here({"vet"}).out, HasSubstr("36 joints looked at; 18 ask for a second look"));
}

TEST_F(Vet, PutsStopsFirst) {
  const std::string text = run_here({"vet"}).out;
  std::size_t before = 0;
  for (const char* slug : {"pump/blower-cover", "winch/gearbox-flange", "winch/fairlead", "pump/volute"}) {
    const std::size_t at = text.find(std::string("\n  ") + slug);
    EXPECT_GT(at, before) << slug;
    before = at;
  }
  EXPECT_LT(text.rfind("Stop: "), text.find("\n  pump/clutch-hub"));
}

TEST_F(Vet, ListsEveryUnitThatWouldFitASlip) {
  const Json all = specifications();
  const auto blower = std::ranges::find_if(all, [](const Json& one) { return one["joint"] == "pump/blower-cover"; });
  ASSERT_NE(blower, all.end());
  EXPECT_EQ((*blower)["findings"][0]["code"], "unit-slip");
  EXPECT_THAT((*blower)["findings"][0]["text"].get<std::string>(),
              AllOf(HasSubstr("dN·m"), HasSubstr("kgf·cm"), HasSubstr("lbf·in")));
}

TEST_F(Vet, TakesNoWords) {
  EXPECT_EQ(run_here({"vet", "extra"}).exit, ExitCode::usage);
  EXPECT_EQ(json_here({"vet", "extra"})["error"]["code"], "surplus");
}

// A workshop of a test's own: M8 bolts of class 8.8 at 9 N·m.
class VetOf : public ::testing::Test {
 protected:
  Json vet(const std::function<void(SQLite::Database&)>& fill) {
    test::make_small_workshop(folder_.path() + "/w", [&](SQLite::Database& database) {
      specdb::add_machine(database, {.slug = "m", .name = "machine", .kind = "engine"});
      fill(database);
    });
    const Printed printed = run_in(folder_.path(), {"--workshop", folder_.path() + "/w", "vet", "--json"});
    exit_ = printed.exit;
    return json_of(printed)["result"]["specifications"];
  }
  TemporaryFolder folder_;
  ExitCode exit_ = ExitCode::internal;
};

TEST_F(VetOf, AFileWithoutJointsIsAnswered) {
  EXPECT_TRUE(vet([](SQLite::Database&) {}).empty());
  EXPECT_EQ(exit_, ExitCode::answered);
}

TEST_F(VetOf, FiguresWithinTheLimitEndsWithNought) {
  EXPECT_EQ(vet([](SQLite::Database& database) { add_joint(database, test::small_joint("m/j", "m")); }).size(), 1U);
  EXPECT_EQ(exit_, ExitCode::answered);
}

TEST_F(VetOf, AnOverloadedFigureThatStandsBesideAnotherCountsToo) {
  (void)vet([](SQLite::Database& database) {
    specdb::JointRecord joint = test::small_joint("m/j", "m");
    joint.figure.surfaces = "dry";
    joint.beside = {joint.figure};
    joint.beside.front().printed = "90 N·m";
    joint.beside.front().value = 90.0;
    add_joint(database, joint);
  });
  EXPECT_EQ(exit_, ExitCode::check_failed);
}

TEST_F(VetOf, AJointThatCannotBeAnsweredGoesOnWithTheRest) {
  const Json found = vet([](SQLite::Database& database) {
    specdb::JointRecord spoilt = test::small_joint("m/spoilt", "m");
    spoilt.thread = "M8x1.3";
    add_joint(database, spoilt);
    add_joint(database, test::small_joint("m/sound", "m"));
  });
  ASSERT_EQ(found.size(), 2U);
  EXPECT_FALSE(found[0]["error"].get<std::string>().empty());
  EXPECT_TRUE(found[0]["findings"].empty());
  EXPECT_EQ(found[1]["joint"], "m/sound");
  EXPECT_FALSE(found[1].contains("error"));
}

} // namespace
} // namespace clampwright::cli
