// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "tests/cli/demo_workshop.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using Json = nlohmann::json;

Json link(const Json& answer, const char* name) {
  for (const Json& check : answer["result"]["checks"])
    if (check["link"] == name) return check;
  return nullptr;
}

std::vector<std::string> codes(const Json& answer) {
  std::vector<std::string> codes;
  for (const Json& finding : answer["findings"])
    codes.push_back(finding["code"]);
  return codes;
}

int code_of(const Printed& printed) { return static_cast<int>(printed.exit); }

class SubstituteInWorkshop : public DemoWorkshop {};

// DEMO.md, the tour: "substitute on 28 with a stronger bolt (the torque stays, the nut says no)".
TEST_F(SubstituteInWorkshop, OnTheGearboxFootTheNutSaysNoAndTheTorqueStays) {
  const Json answer =
      json_here({"substitute", "--joint", "winch/gearbox-foot", "--with", "M10 12.9", "--with-surfaces", "zinc-flake"});
  EXPECT_EQ(answer["result"]["verdict"], "not-adequate");
  EXPECT_EQ(answer["result"]["governed_by"], "nut");
  EXPECT_EQ(answer["result"]["torque_N_m"], 64.0);
  EXPECT_THAT(codes(answer), Contains("nut-too-weak"));
  EXPECT_EQ(code_of(run_here({"substitute", "--joint", "winch/gearbox-foot", "--with", "M10 12.9"})), 1);
}

TEST_F(SubstituteInWorkshop, TakesThePartAndTheHoleFromTheJoint) {
  const Json answer = json_here(
      {"substitute", "--joint", "pump/reed-block", "--with", "M6 10.9", "--length", "25mm", "--with-surfaces", "dry"});
  EXPECT_EQ(link(answer, "length")["verdict"], "no"); // 12 mm over 9 mm of thread
  EXPECT_EQ(link(answer, "part-thread")["verdict"], "note");
  EXPECT_EQ(answer["result"]["torque_N_m"], 10.0);
  const Json same = json_here(
      {"substitute", "--joint", "pump/reed-block", "--with", "M6 8.8", "--length", "20mm", "--with-surfaces", "dry"});
  EXPECT_EQ(link(same, "length")["verdict"], "ok");
}

TEST_F(SubstituteInWorkshop, NothingSlipperyGoesOnATaper) {
  const Json answer = json_here(
      {"substitute", "--joint", "winch/pulley-bolt", "--with", "M10x1.25 8.8", "--with-surfaces", "moly-paste"});
  EXPECT_EQ(link(answer, "friction")["verdict"], "no");
}

TEST_F(SubstituteInWorkshop, ATorqueThatCannotBeMeantIsNotTaken) {
  const Json answer = json_here({"substitute", "--joint", "pump/blower-cover", "--with", "M6 10.9"});
  EXPECT_EQ(answer["result"]["torque_N_m"], nullptr);
  EXPECT_FALSE(answer["result"]["torque_not_taken_because"].is_null());
}

// What vet stops is not passed on as a torque to keep.
TEST_F(SubstituteInWorkshop, WhatStopsTheFigureStopsTheSubstitute) {
  struct Row {
    const char* joint;
    const char* with;
    const char* code;
  };
  for (const Row& row :
       {Row{"pump/blower-cover", "M6 10.9", "unit-slip"}, Row{"winch/brake-pivot", "M8 8.8", "no-maker-value"},
        Row{"winch/motor-plate", "M10 10.9", "angle-final"}, Row{"pump/base-nuts", "M8 8.8", "sources-conflict"}}) {
    const Json answer = json_here({"substitute", "--joint", row.joint, "--with", row.with});
    EXPECT_EQ(answer["result"]["verdict"], "not-known") << row.joint;
    EXPECT_EQ(link(answer, "torque")["verdict"], "not-known") << row.joint;
    EXPECT_THAT(codes(answer), Contains(row.code)) << row.joint;
  }
}

TEST_F(SubstituteInWorkshop, AHotNeighbourLeavesTheTemperatureOpen) {
  const Json answer = json_here({"substitute", "--joint", "pump/silencer", "--with", "M6 8.8"});
  EXPECT_EQ(link(answer, "temperature")["verdict"], "not-known");
}

TEST_F(SubstituteInWorkshop, NothingIsRaisedOnAWoodenHub) {
  const Json answer =
      json_here({"substitute", "--joint", "boat/propeller-hub", "--with", "M8 8.8", "--with-surfaces", "zinc-dry"});
  EXPECT_EQ(answer["result"]["verdict"], "not-known");
  EXPECT_EQ(answer["result"]["other_torque"], nullptr);
}

TEST_F(SubstituteInWorkshop, TheOriginalMayBeToldWhereItAgrees) {
  EXPECT_EQ(code_of(run_here({"substitute", "M10 10.9", "--joint", "winch/gearbox-foot", "--with", "M10 12.9"})), 1);
  EXPECT_EQ(code_of(run_here({"substitute", "M10 8.8", "--joint", "winch/gearbox-foot", "--with", "M10 12.9"})), 64);
}

TEST_F(SubstituteInWorkshop, NoJointIsBorrowed) {
  EXPECT_EQ(code_of(run_here({"substitute", "--joint", "winch/nothing", "--with", "M10 12.9"})), 66);
}

TEST(Substitute, EndsWithZeroOnlyWhereItMayGoIn) {
  EXPECT_EQ(code_of(run_cli({"substitute", "M10 8.8", "--with", "M10 10.9"})), 0);
  EXPECT_EQ(code_of(run_cli({"substitute", "M10 10.9", "--with", "M10 8.8"})), 1);
  EXPECT_EQ(code_of(run_cli({"substitute", "M10 8.8", "--with", "M10 12.9"})), 1); // its coating was not told
  EXPECT_EQ(code_of(run_cli({"substitute", "M8 8.8", "--with", "M8 8.8", "--torque", "22Nm", "--surfaces", "dry",
                             "--with-surfaces", "moly-paste"})),
            0);
}

TEST(Substitute, ChecksStandInTheOrderOfTheChain) {
  const Json answer = json_of(run_cli({"substitute", "M10 8.8", "--with", "M10 10.9", "--json"}));
  std::vector<std::string> links;
  for (const Json& check : answer["result"]["checks"])
    links.push_back(check["link"]);
  EXPECT_EQ(links, (std::vector<std::string>{"identity",    "form",        "diameter", "pitch",  "hand",      "length",
                                             "proof",       "yield",       "tensile",  "nut",    "seat",      "head",
                                             "brittleness", "temperature", "friction", "torque", "corrosion", "galling",
                                             "fatigue",     "reuse",       "approval"}));
  for (const Json& check : answer["result"]["checks"]) {
    EXPECT_THAT(check["verdict"].get<std::string>(), ::testing::AnyOf("ok", "no", "not-known", "note"));
    EXPECT_FALSE(check["text"].get<std::string>().empty());
    EXPECT_FALSE(check["basis"].get<std::string>().empty());
  }
}

TEST(Substitute, ReadsTheOtherWaysToSayIt) {
  EXPECT_EQ(code_of(run_cli({"substitute", "M10", "8.8", "--with", "M10 10.9"})), 64); // quotes are missing
  EXPECT_EQ(code_of(run_cli({"substitute", "M10 8.8"})), 64);
  EXPECT_EQ(code_of(run_cli({"substitute", "--with", "M10 8.8"})), 64);
  EXPECT_EQ(code_of(run_cli({"substitute", "M10 8.8", "--with", "M10 77"})), 66);
  EXPECT_EQ(code_of(run_cli({"substitute", "M10 8.8", "--with", "10 mm bolt"})), 65);
}

} // namespace
} // namespace clampwright::cli
