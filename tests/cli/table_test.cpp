// SPDX-License-Identifier: GPL-3.0-or-later
#include <sstream>

#include <gmock/gmock.h>

#include "core/report/text_writer.hpp"
#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

TEST(TableCommand, ListsTheTablesWithWhatTheyHold) {
  const auto answer = answer_of({"table"});
  const auto& tables = answer["result"]["tables"];
  EXPECT_GE(tables.size(), 20U);
  for (const auto& table : tables) {
    EXPECT_THAT(table["holds"].get<std::string>(), Not(IsEmpty()));
    EXPECT_GT(table["rows"], 0);
    EXPECT_EQ(table["table"].get<std::string>().find('_'), std::string::npos);
  }
}

TEST(TableCommand, AnswersWithRowsInTheTablesOwnColumns) {
  // ISO 4014: M8 has 13 mm across flats (second-hand).
  const auto answer = answer_of({"table", "heads", "ISO", "4014", "M8"});
  ASSERT_THAT(answer["result"]["rows"], SizeIs(1));
  const auto& row = answer["result"]["rows"][0];
  EXPECT_EQ(answer["result"]["table"], "heads");
  EXPECT_THAT(answer["result"]["columns"], Contains("across_flats"));
  EXPECT_EQ(row["across_flats"], 13.0);
  EXPECT_TRUE(row["across_flats"].is_number());
  EXPECT_TRUE(row["key"].is_null());
  EXPECT_EQ(row["known"], "second-hand");
  ASSERT_THAT(answer["sources"], SizeIs(1));
  EXPECT_THAT(answer["sources"][0]["title"].get<std::string>(), HasSubstr("ISO 4014"));
}

TEST(TableCommand, AnswersWithAnEmptyListWhereNothingFits) {
  const Printed printed = run_cli({"table", "heads", "zeppelin"});
  EXPECT_EQ(printed.exit, ExitCode::answered);
  EXPECT_THAT(printed.out, HasSubstr("No row of heads has all of \"zeppelin\""));
  EXPECT_THAT(answer_of({"table", "heads", "zeppelin"})["result"]["rows"], IsEmpty());
}

TEST(TableCommand, RefusesAnUnknownTableWithTheNearest) {
  const Printed printed = run_cli({"table", "spark-plug"});
  EXPECT_EQ(static_cast<int>(printed.exit), 66);
  EXPECT_THAT(printed.err, HasSubstr("did you mean spark-plugs?"));
}

TEST(TableCommand, CarriesMakerFirstUnderTorquesOnly) {
  EXPECT_THAT(codes_of(answer_of({"table", "spark-plugs", "M14"})), ElementsAre("maker-first"));
  EXPECT_THAT(codes_of(answer_of({"table", "spark-plugs", "zeppelin"})), IsEmpty());
  EXPECT_THAT(codes_of(answer_of({"table", "hexagon-keys"})), IsEmpty());
}

TEST(TableCommand, KeepsToTheWidthWhateverTheTable) {
  const auto answer = answer_of({"table"});
  for (const auto& table : answer["result"]["tables"]) {
    const Printed printed = run_cli({"table", table["table"]});
    EXPECT_EQ(printed.exit, ExitCode::answered) << table["table"];
    EXPECT_THAT(printed.out, Not(IsEmpty())) << table["table"];
    std::istringstream lines(printed.out);
    for (std::string line; std::getline(lines, line);)
      EXPECT_LE(report::text_width(line), 100U) << line;
  }
}

TEST(ThreadCommand, ShowsWhatGoesWithTheThread) {
  const auto result = answer_of({"thread", "M8"})["result"];
  // ISO 273: 8.4, 9, 10; ISO 4032: 6.8 high (second-hand); tapping hole 8 - 1.25.
  EXPECT_DOUBLE_EQ(result["tapping_hole_mm"], 6.75);
  EXPECT_DOUBLE_EQ(result["clearance_hole"]["fine_mm"], 8.4);
  EXPECT_DOUBLE_EQ(result["clearance_hole"]["medium_mm"], 9.0);
  EXPECT_DOUBLE_EQ(result["clearance_hole"]["coarse_mm"], 10.0);
  EXPECT_EQ(result["nuts"][0]["standard"], "ISO 4032");
  EXPECT_DOUBLE_EQ(result["nuts"][0]["height_mm"], 6.8);
  EXPECT_EQ(result["washers"][0]["standard"], "ISO 7089");
  EXPECT_DOUBLE_EQ(result["washers"][0]["outer_mm"], 16.0);
  EXPECT_EQ(result["hexagon_keys"][0]["fastener"], "socket");
  EXPECT_DOUBLE_EQ(result["hexagon_keys"][0]["key_mm"], 6.0);
  EXPECT_TRUE(result["section_by_analogy_mm2"].is_null());
}

TEST(ThreadCommand, GivesASectionByAnalogyBesideNoStressArea) {
  const auto result = answer_of({"thread", "1/4 BSW"})["result"];
  EXPECT_TRUE(result["stress_area_mm2"].is_null());
  // By hand: mean of 0.2179837 and 0.1859673 in, 5.130178 mm.
  EXPECT_NEAR(result["section_by_analogy_mm2"], 20.6710, 5e-4);
  EXPECT_THAT(result["section_by_analogy_basis"].get<std::string>(), HasSubstr("no standard gives one"));
}

TEST(ClampCommand, TakesAHeadWithoutAFlatFaceAndSaysWhy) {
  for (const auto& [head, reason] :
       std::vector<std::pair<std::string, std::string>>{{"button", "rounded"}, {"countersunk", "on a cone"}}) {
    const auto answer =
        answer_of({"clamp", "M8", "--class", "010.9", "--torque", "20Nm", "--surfaces", "oiled", "--head", head});
    EXPECT_TRUE(answer["result"]["thread_friction"].is_null()) << head;
    EXPECT_THAT(codes_of(answer), Contains("face-not-stated")) << head;
    EXPECT_THAT(answer.dump(), HasSubstr(reason)) << head;
  }
}

} // namespace
} // namespace clampwright::cli
