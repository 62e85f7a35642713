// SPDX-License-Identifier: GPL-3.0-or-later
//
// headmark as the contract has it.
#include <array>
#include <random>

#include <gmock/gmock.h>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using testing::HasSubstr;

TEST(Headmark, GivesClassSystemAndVerdict) {
  const auto answer = answer_of({"headmark", "8.8"});
  EXPECT_EQ(answer.at("command"), "headmark");
  const auto& classes = answer.at("result").at("classes");
  ASSERT_EQ(classes.size(), 1U);
  EXPECT_EQ(classes[0].at("class"), "8.8");
  EXPECT_EQ(classes[0].at("system"), "ISO 898-1");
  EXPECT_EQ(classes[0].at("verdict"), "means");
  EXPECT_EQ(classes[0].at("in_tables"), true);
}

TEST(Headmark, GivesWhatItUnderstood) {
  const auto result = answer_of({"headmark", "XYZ 08.8 L", "--part", "screw"}).at("result");
  EXPECT_EQ(result.at("reading"), "08.8 and L");
  EXPECT_EQ(result.at("maker_mark"), "XYZ");
  EXPECT_EQ(result.at("part"), "screw");
  EXPECT_EQ(result.at("hand"), "left");
  EXPECT_TRUE(result.at("look_alikes").is_array());
}

TEST(Headmark, GivesNullForWhatIsNotKnown) {
  const auto answer = answer_of({"headmark", "DRIVE"});
  const auto& one = answer.at("result").at("classes").at(0);
  EXPECT_TRUE(one.at("class").is_null());
  EXPECT_TRUE(one.at("system").is_null());
  EXPECT_EQ(one.at("verdict"), "not-known");
  EXPECT_TRUE(answer.at("result").at("hand").is_null());
  EXPECT_TRUE(answer.at("result").at("maker_mark").is_null());
}

TEST(Headmark, EndsWithNothingWrongWhereTheClassIsNotKnown) {
  for (const char* mark : {"DRIVE", "", "none", "7.7", "3 lines"})
    EXPECT_EQ(run_cli({"headmark", mark}).exit, ExitCode::answered) << mark;
}

TEST(Headmark, TakesSeveralWordsForOneMark) {
  EXPECT_EQ(answer_of({"headmark", "six", "radial", "lines"}).at("result"),
            answer_of({"headmark", "6 radial lines"}).at("result"));
}

TEST(Headmark, SaysInWordsWhatTheMarkIs) {
  const std::string text = run_cli({"headmark", "8", "--part", "nut"}).out;
  EXPECT_THAT(text, HasSubstr("nut class 8"));
  EXPECT_THAT(text, HasSubstr("counterfeits"));
  EXPECT_THAT(text, HasSubstr("ISO 898-2"));
}

TEST(Headmark, NamesItsSourceAndHowItIsKnown) {
  const auto sources = answer_of({"headmark", "B7"}).at("sources");
  ASSERT_EQ(sources.size(), 1U);
  EXPECT_THAT(sources[0].at("title").get<std::string>(), HasSubstr("ASTM A193"));
  EXPECT_EQ(sources[0].at("known"), "memory");
}

TEST(Headmark, IsRefusedWithoutAMarkOrWithNoText) {
  EXPECT_EQ(run_cli({"headmark"}).exit, ExitCode::usage);
  EXPECT_EQ(run_cli({"headmark", "8\x01"}).exit, ExitCode::data_error);
  EXPECT_EQ(run_cli({"headmark", "8", "--part", "washer"}).exit, ExitCode::data_error);
}

TEST(Headmark, OfAClassIsOneThatClampTakes) {
  for (const char* mark : {"8.8", "010.9", "A2 70", "129"}) {
    const std::string name = answer_of({"headmark", mark}).at("result").at("classes").at(0).at("class");
    EXPECT_EQ(run_cli({"clamp", "M10", "--torque", "10Nm", "--class", name}).exit, ExitCode::answered) << mark;
  }
}

// Random bytes, and strings of the pieces that marks are made of.
TEST(Headmark, OfAnyTextIsAnsweredOrRefused) {
  constexpr std::array pieces{"8",    ".",    "9",     "0",       "A2",   "-",       " ",
                              "70",   "line", "lines", "dot",     "bar",  "dash",    "three",
                              "no",   "|",    "not",   "equally", "L",    "<-",      "X",
                              "_",    "°",    "12",    "nut",     "stud", "o'clock", ",",
                              "\xff", "\"",   "←",     "arrow",   "none", "deg",     "99999999999999999999",
                              "at",   "\t"};
  constexpr std::mt19937::result_type k_seed = 898;
  std::mt19937 random(k_seed);
  int answered = 0;
  for (int i = 0; i < 6000; ++i) {
    std::string text;
    const bool bytes = i % 4 == 0;
    for (std::size_t n = random() % 9; n > 0; --n) {
      if (bytes)
        text += static_cast<char>(random() % 256);
      else
        text += pieces.at(random() % pieces.size()) + std::string(random() % 2, ' ');
    }
    const Printed printed = run_cli({"headmark", "--json", "--", text});
    const int code = static_cast<int>(printed.exit);
    ASSERT_TRUE(code == 0 || code == 64 || code == 65) << "case " << i << ": " << code;
    const auto document = json_of(printed);
    if (code != 0) continue;
    ++answered;
    ASSERT_FALSE(document.at("result").at("classes").empty()) << "case " << i;
    ASSERT_EQ(run_cli({"headmark", "--", text}).exit, ExitCode::answered) << "case " << i;
  }
  EXPECT_GT(answered, 1000);
}

} // namespace
} // namespace clampwright::cli
