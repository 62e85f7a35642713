// SPDX-License-Identifier: GPL-3.0-or-later
//
// What threads are taken for each other is common knowledge of the trade; the pitches over ten turns are 25.4 mm over
// the threads per inch, times ten.
#include <algorithm>

#include <gmock/gmock.h>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using Names = std::vector<std::string>;

nlohmann::json gauge(std::string_view line) {
  Arguments arguments = words_of(line);
  arguments.insert(arguments.begin(), "gauge");
  return answer_of(arguments);
}

nlohmann::json candidates(std::string_view line) { return gauge(line).at("result").at("candidates"); }

Names names(std::string_view line) {
  Names out;
  for (const auto& candidate : candidates(line))
    if (candidate.at("verdict") != "unlikely") out.push_back(candidate.at("designation"));
  return out;
}

// How the first candidate is told from that thread.
std::string told_from(const nlohmann::json& list, const std::string& thread) {
  for (const auto& tell : list.at(0).at("tell_apart"))
    if (tell.at("thread") == thread) return tell.at("words");
  return "not named";
}

struct Measured {
  const char* line;
  Names names; // in this order
};

// clang-format off
const std::vector<Measured> k_measured{
    {"--diameter 7.85mm --pitch 1.25mm",            {"M8"}},
    {"--diameter 7.85mm --tpi 18",                  {"5/16-18 UNC", "5/16 BSW"}},
    {"--diameter 5.9mm --pitch 1mm",                {"M6", "0 BA"}},
    {"--diameter 6mm --pitch 1mm",                  {"M6", "0 BA"}},
    {"--diameter 0.247in --tpi 20",                 {"1/4-20 UNC", "1/4 BSW"}},
    {"--diameter 0.49in --tpi 12",                  {"1/2 BSW"}},
    {"--diameter 0.49in --tpi 13",                  {"1/2-13 UNC"}},
    {"--diameter 12.6mm --tpi 20",                  {"1/2-20 UNF", "1/2-20 BSC"}},
    {"--diameter 11.85mm --pitch 1.25mm",           {"M12x1.25"}},
    {"--diameter 16mm --pitch 2mm",                 {"M16"}},
};
// clang-format on

} // namespace

TEST(Gauge, NamesWhatFitsInOrder) {
  for (const Measured& measured : k_measured)
    EXPECT_EQ(names(measured.line), measured.names) << measured.line;
}

TEST(Gauge, PutsTheCoarseThreadFirstWhereThePitchIsNotKnown) {
  EXPECT_EQ(names("--diameter 16mm").front(), "M16");
  EXPECT_EQ(names("--diameter 10mm").front(), "M10");
  EXPECT_EQ(names("--diameter 24mm").front(), "M24");
}

// M8, 6g: 7.760 to 7.972 mm.
TEST(Gauge, ShowsTheDeviationWithItsSign) {
  EXPECT_EQ(candidates("--diameter 7.85mm --pitch 1.25mm").at(0).at("deviation_mm"), 0.0);
  const auto worn = candidates("--diameter 7.7mm --pitch 1.25mm").at(0);
  EXPECT_NEAR(worn.at("deviation_mm").get<double>(), -0.06, 1e-9);
  EXPECT_EQ(worn.at("verdict"), "worn-or-near");
  EXPECT_NEAR(candidates("--diameter 8mm --pitch 1.25mm").at(0).at("deviation_mm").get<double>(), 0.028, 1e-9);
}

TEST(Gauge, TellsM8FromFiveSixteenthsByThePitch) {
  const auto list = candidates("--diameter 7.85mm");
  EXPECT_EQ(list.at(0).at("designation"), "M8");
  EXPECT_THAT(list.at(0).at("look_alikes"), Contains("5/16-18 UNC"));
  EXPECT_THAT(told_from(list, "5/16-18 UNC"), HasSubstr("pitch over 10 turns: 12.50 mm against 14.11 mm"));
}

// 8.00 and 7.94 mm over ten turns are too near; 16.00 and 15.88 mm over twenty are not.
TEST(Gauge, TakesTwentyTurnsWhereTenAreTooFew) {
  const auto list = candidates("--diameter 4.85mm --pitch 0.8mm");
  EXPECT_EQ(list.at(0).at("designation"), "M5");
  EXPECT_THAT(list.at(0).at("look_alikes"), Contains("#10-32 UNF"));
  EXPECT_THAT(told_from(list, "#10-32 UNF"), HasSubstr("pitch over 20 turns: 16.00 mm against 15.88 mm"));
}

TEST(Gauge, TellsWhitworthFromUnifiedByTheFlanks) {
  EXPECT_THAT(told_from(candidates("--diameter 0.247in --tpi 20"), "1/4 BSW"), HasSubstr("flank angle 60°"));
  EXPECT_THAT(told_from(candidates("--diameter 0.247in --tpi 20"), "1/4 BSW"), HasSubstr("against 55°"));
  EXPECT_THAT(told_from(candidates("--diameter 5.9mm --pitch 1mm"), "0 BA"), HasSubstr("47.5°"));
}

TEST(Gauge, NamesWhatStartsOnTheOtherThoughTheDiameterTellsThemApart) {
  const auto best = candidates("--diameter 11.85mm --pitch 1.25mm").at(0);
  EXPECT_THAT(best.at("look_alikes"), Contains("1/2-20 UNF"));
  const auto found =
      std::ranges::find_if(best.at("tell_apart"), [](const auto& tell) { return tell.at("thread") == "1/2-20 UNF"; });
  ASSERT_NE(found, best.at("tell_apart").end());
  EXPECT_EQ(found->at("by_measurement"), false);
  EXPECT_THAT(found->at("words"), HasSubstr("outside diameter"));
}

// M8, 6H: 6.647 to 6.912 mm.
TEST(Gauge, TakesTheMinorDiameterOfANut) {
  const auto list = candidates("--diameter 6.8mm --pitch 1.25mm --internal");
  EXPECT_EQ(list.at(0).at("designation"), "M8");
  EXPECT_EQ(list.at(0).at("verdict"), "fits");
  EXPECT_EQ(list.at(0).at("crest").at("class"), "6H");
}

TEST(Gauge, SaysWhatAMeasurementDoesNotTell) {
  EXPECT_THAT(codes_of(gauge("--diameter 47.8mm --pitch 5mm")), ElementsAre("measured-only"));
  EXPECT_THAT(codes_of(gauge("--diameter 47.8mm")), Contains("pitch-not-measured"));
  EXPECT_THAT(codes_of(gauge("--diameter 5.9mm --pitch 1mm")), Contains("look-alikes"));
  EXPECT_THAT(codes_of(gauge("--diameter 5.9mm --pitch 1mm")), Contains("limits-assumed"));
}

TEST(Gauge, TakesAFinerMeasurementAtItsWord) {
  EXPECT_THAT(names("--diameter 4.79mm --pitch 0.794mm"), Contains("M5"));
  EXPECT_THAT(names("--diameter 4.79mm --pitch 0.794mm --pitch-uncertainty 0.2% --diameter-uncertainty 0.01mm"),
              Not(Contains("M5")));
}

TEST(Gauge, HasThreeUnlikelyWhereNothingFits) {
  const auto list = candidates("--diameter 11.5mm --pitch 2.5mm");
  EXPECT_EQ(list.size(), 3U);
  for (const auto& candidate : list)
    EXPECT_EQ(candidate.at("verdict"), "unlikely");
  EXPECT_THAT(codes_of(gauge("--diameter 11.5mm --pitch 2.5mm")), Not(Contains("look-alikes")));
}

TEST(Gauge, IsPlainWithoutAPitch) {
  const auto answer = gauge("--diameter 7.85mm");
  EXPECT_TRUE(answer.at("result").at("measured").at("pitch_mm").is_null());
  EXPECT_TRUE(answer.at("result").at("candidates").at(0).at("pitch_off").is_null());
}

} // namespace clampwright::cli
