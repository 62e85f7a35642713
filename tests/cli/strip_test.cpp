// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/refused.hpp"

#include <gmock/gmock.h>

namespace clampwright::cli {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using namespace testing_support;

nlohmann::json result_of(const char* line) { return answer_of(words_of(line)).at("result"); }

// clang-format off
const Refused k_refused[] = {
    {"strip",                                                              64, "missing",        "a thread is missing"},
    {"strip M8 --class 8.8",                                               64, "missing",        "--material"},
    {"strip M8 --material cast-aluminium --torque 20Nm",                   64, "missing",        "--length"},
    {"strip M8 --material cast-aluminium --surfaces oiled",                64, "missing",        "--torque"},
    {"strip M8 --material cast-aluminium --insert keyed",                  64, "missing",        "--outer-thread M12x1.25"},
    {"strip M8 --material cast-aluminium --outer-thread M12",              64, "surplus",        "keyed"},
    {"strip M8 --material cast-aluminium --length 12",                     65, "bare-number",    "10mm"},
    {"strip M8 --material cast-aluminium --length 12Nm",                   65, "wrong-kind",     "torque"},
    {"strip M8 --material cast-aluminium --length 2mm",                    65, "out-of-range",   "2.5 mm do not bear"},
    {"strip M8 --material cast-aluminium --incomplete -1",                 65, "out-of-range",   "--incomplete 2"},
    {"strip M8 --material cast-aluminium --incomplete lots",               65, "",               "lots"},
    {"strip M8 --material cast-aluminium --insert glued",                  65, "not-understood", "wire"},
    {"strip M8 --material cast-aluminium --insert keyed --outer-thread M8x1", 65, "out-of-range", "no wall"},
    {"strip M8 --material cast-aluminum",                                  66, "no-such-name",   "did you mean cast-aluminium?"},
    {"strip M8 --class 8.9 --material cast-aluminium",                     66, "no-such-name",   "8.8"},
    {"strip \"5/16 BSW\" --material cast-aluminium",                       66, "no-limits",      "no limits of size are known for 5/16 BSW"},
    {"strip M8-6h --class 8.8 --material cast-aluminium",                  66, "no-limits",      "M8 of class 6h"},
    {"strip \"2 BA\" --material brass",                                    66, "no-limits",      "2A/2B"},
};
// clang-format on

TEST(Strip, RefusesWhatItCannotAnswerAndSaysWhatToWrite) {
  for (const Refused& refused : k_refused)
    expect_refused(refused);
}

// By hand, 0.7 · 185 = 130 MPa: 35144.2 N over 1.055184 · 130 · 16.828527 N/mm, and 2.5 mm.
TEST(Strip, SaysHowMuchMustBeEngaged) {
  const auto result = result_of("strip M8 --class 8.8 --material cast-aluminium");
  EXPECT_NEAR(result["length_needed_mm"].get<double>(), 17.7243, 1e-3);
  EXPECT_NEAR(result["length_needed_bearing_mm"].get<double>(), 15.2243, 1e-3);
  EXPECT_EQ(result["bolt_break_N"], 29200.0); // ISO 898-1:2013, Table 5 (second-hand)
  for (const char* key : {"length_mm", "bearing_mm", "nut_strip_N", "bolt_strip_N", "governed_by", "margin", "insert"})
    EXPECT_TRUE(result[key].is_null()) << key;
}

// By hand: 9.5 mm bear; 1.055184 · 130 · 16.828527 · 9.5 N.
TEST(Strip, SaysWhatGivesFirst) {
  const auto result = result_of("strip M8 --class 8.8 --material cast-aluminium --length 12mm");
  EXPECT_NEAR(result["nut_strip_N"].get<double>(), 21930.1, 0.5);
  EXPECT_EQ(result["governed_by"], "part-thread");
  EXPECT_EQ(result_of("strip M8 --class 8.8 --material cast-aluminium --length 18mm")["governed_by"], "bolt");
  EXPECT_EQ(result_of("strip M8 --class 8.8 --material steel-42crmo4 --length 6mm")["governed_by"], "bolt-thread");
}

TEST(Strip, TakesWhatDoesNotBearInTurnsOrAsALength) {
  const auto bearing = [](const std::string& incomplete) {
    return result_of(("strip M8 --material steel --length 12mm --incomplete " + incomplete).c_str())["bearing_mm"]
        .get<double>();
  };
  EXPECT_NEAR(bearing("2"), 9.5, 1e-9);
  EXPECT_NEAR(bearing("0"), 12.0, 1e-9);
  EXPECT_NEAR(bearing("1.5mm"), 10.5, 1e-9);
}

TEST(Strip, SaysOfAnUnknownClassOnlyWhatThePartBears) {
  for (const char* line : {"strip M8 --material cast-aluminium --length 12mm",
                           "strip M8 --class unknown --material cast-aluminium --length 12mm"}) {
    const auto answer = answer_of(words_of(line));
    for (const char* key : {"bolt_break_N", "bolt_strip_N", "length_needed_mm", "governed_by"})
      EXPECT_TRUE(answer["result"][key].is_null()) << key;
    EXPECT_GT(answer["result"]["nut_strip_N"].get<double>(), 10000.0);
    EXPECT_THAT(codes_of(answer), Contains("class-unknown"));
  }
}

TEST(Strip, FindsWhatMustBeMinded) {
  const auto codes = [](const char* line) { return codes_of(answer_of(words_of(line))); };
  EXPECT_THAT(
      codes("strip M8 --class 8.8 --material magnesium-die --length 12mm"),
      AllOf(Contains("strip-governs"), Contains("creep"), Contains("long-engagement"), Contains("maker-first")));
  EXPECT_THAT(codes("strip M8 --class 8.8 --material steel --length 16mm"),
              AllOf(Contains("value-from-memory"), Not(Contains("strip-governs")), Not(Contains("creep"))));
  EXPECT_THAT(codes("strip M8 --class 8.8 --material wood --length 16mm"), Contains("soft-part"));
}

TEST(Strip, NeverAdvisesMoreTorque) {
  const std::string out = run_cli(words_of("strip M8 --class 8.8 --material cast-aluminium --length 12mm")).out;
  EXPECT_THAT(out, HasSubstr("never"));
  EXPECT_THAT(out, HasSubstr("insert"));
}

TEST(Strip, TellsTheLengthOfAnInsertThatIsEnough) {
  const auto lengths = result_of("strip M8 --class 8.8 --material cast-aluminium --insert wire")["insert"]["lengths"];
  ASSERT_EQ(lengths.size(), 3U);
  // By hand: 35144.2 N over 130 · 20.349934 N/mm and 2.5 mm make 15.78 mm, so 2 d = 16 mm is enough.
  EXPECT_EQ(lengths[1]["governed_by"], "part-thread");
  EXPECT_EQ(lengths[2]["governed_by"], "bolt");
}

// By hand: M12 has π/1.75·11.701·(0.875 + 0.57735·0.638) = 26.117 mm2/mm, as the collection (computed).
TEST(Strip, TakesTheOuterThreadOfAKeyedInsert) {
  const auto result = result_of("strip M8 --class 8.8 --material cast-aluminium --insert keyed --outer-thread M12");
  EXPECT_NEAR(result["nut_strip_area_mm2_per_mm"].get<double>(), 26.117, 1e-3);
  EXPECT_EQ(result["insert"]["outer_thread"], "M12");
}

TEST(Strip, HoldsATorqueAgainstTheThread) {
  const Arguments line =
      words_of("strip M8 --class 8.8 --material cast-aluminium --length 8mm --torque 24Nm --surfaces oiled");
  const auto answer = answer_of(line);
  EXPECT_GT(answer["result"]["clamp"]["use_of_part_thread"]["likely"].get<double>(), 1.0);
  EXPECT_THAT(codes_of(answer), Contains("strip-governs"));
  EXPECT_EQ(run_cli(line).exit, ExitCode::check_failed);
  const Arguments longer =
      words_of("strip M8 --class 8.8 --material cast-aluminium --length 24mm --torque 24Nm --surfaces oiled");
  EXPECT_EQ(run_cli(longer).exit, ExitCode::answered);
  EXPECT_THAT(codes_of(answer_of(longer)), Not(Contains("strip-governs")));
}

TEST(Strip, ShowsThePublishedRulesBesideTheLength) {
  const auto published = result_of("strip M8 --class 8.8 --material cast-aluminium")["published"];
  ASSERT_FALSE(published.empty());
  for (const auto& rule : published)
    for (const char* key : {"rule", "over_d", "length_mm", "note", "source"})
      EXPECT_TRUE(rule.contains(key)) << rule;
  EXPECT_THAT(run_cli(words_of("strip M8 --class 8.8 --material cast-aluminium")).out, HasSubstr("published rules"));
}

} // namespace
} // namespace clampwright::cli
