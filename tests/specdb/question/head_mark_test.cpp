// SPDX-License-Identifier: GPL-3.0-or-later
//
// What marks stand for: ISO 898-1 clauses 5 and 10, SAE J429, ASTM F3125 and AC 43.13-1B par. 7-36 (second-hand); ISO
// 898-2, ISO 3506-1, stud symbols and ASTM A193 (from memory).
#include "specdb/question/head_mark.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/question/head_mark_report.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using finding::Code;
using test::problem_of;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

struct OneRow {
  const char* text;
  const char* class_name;
  const char* system;
};

struct SeveralRow {
  const char* text;
  std::vector<std::string> classes; // "" where a reading is no class
};

struct MeaningRow {
  const char* text;
  const char* meaning; // of the first reading
};

// clang-format off
constexpr OneRow k_one[] = {
    {"8.8",                      "8.8",            "ISO 898-1"},
    {"88",                       "8.8",            "ISO 898-1"},
    {"8,8",                      "8.8",            "ISO 898-1"},
    {" 8·8 ",                    "8.8",            "ISO 898-1"},
    {"4.6",                      "4.6",            "ISO 898-1"},
    {"10.9",                     "10.9",           "ISO 898-1"},
    {"109",                      "10.9",           "ISO 898-1"},
    {"12.9",                     "12.9",           "ISO 898-1"},
    {"129",                      "12.9",           "ISO 898-1"},
    {"XYZ 8.8",                  "8.8",            "ISO 898-1"},
    {"8.8 XYZ",                  "8.8",            "ISO 898-1"},
    {"08.8",                     "08.8",           "ISO 898-1"},
    {"088",                      "08.8",           "ISO 898-1"},
    {"010.9",                    "010.9",          "ISO 898-1"},
    {"12.9 underlined",          "12.9",           "ISO 898-1"},
    {"_12.9_",                   "12.9",           "ISO 898-1"},
    {"square",                   "10.9",           "ISO 898-1"},
    {"+",                        "9.8",            "ISO 898-1"},
    {"o",                        "8.8",            "ISO 898-1"},
    {"3.6",                      "3.6",            "ISO 898-1"},
    {"A2-70",                    "A2-70",          "ISO 3506-1"},
    {"A2 70",                    "A2-70",          "ISO 3506-1"},
    {"a2-70",                    "A2-70",          "ISO 3506-1"},
    {"A270",                     "A2-70",          "ISO 3506-1"},
    {"A4-80",                    "A4-80",          "ISO 3506-1"},
    {"XYZ A4 80",                "A4-80",          "ISO 3506-1"},
    {"8",                        "8",              "ISO 898-2"},
    {"nut 8",                    "8",              "ISO 898-2"},
    {"10",                       "10",             "ISO 898-2"},
    {"12",                       "12",             "ISO 898-2"},
    {"04",                       "04",             "ISO 898-2"},
    {"05",                       "05",             "ISO 898-2"},
    {"dot 12 bar 8",             "8",              "ISO 898-2"},
    {"dot and bar at 8 o'clock", "8",              "ISO 898-2"},
    {"bar at ten o'clock",       "10",             "ISO 898-2"},
    {"8 o'clock bar",            "8",              "ISO 898-2"},
    {"dash 12",                  "12",             "ISO 898-2"},
    {"dot 12 bar 4",             "4",              "ISO 898-2"},
    {"|8|",                      "|8|",            "DIN 267-4"},
    {"5 lines",                  "SAE 7",          "SAE J429"},
    {"six equally spaced radial lines", "SAE 8",   "SAE J429"},
    {"6 lines 60° apart",        "SAE 8",          "SAE J429"},
    {"6 lines not equally spaced", "SAE 8.2",      "SAE J429"},
    {"A325",                     "ASTM A325",      "ASTM F3125"},
    {"A490",                     "ASTM A490",      "ASTM F3125"},
    {"B7",                       "ASTM A193 B7",   "ASTM A193"},
};

const SeveralRow k_several[] = {
    {"3 lines",        {"SAE 5", "SAE 5.1", "SAE 5.2"}},
    {"three lines",    {"SAE 5", "SAE 5.1", "SAE 5.2"}},
    {"|||",            {"SAE 5", "SAE 5.1", "SAE 5.2"}},
    {"6 radial lines", {"SAE 8", "SAE 8.2"}},
    {"A2",             {"A2-50", "A2-70", "A2-80"}},
    {"triangle",       {"12.9", ""}},
    {"single dash",    {"5.6", "", ""}},
    {"none",           {"", "SAE 1", "SAE 2", "SAE 4", "SAE 8.1", "ASTM A574", ""}},
    {"8.8 10.9",       {"8.8", "10.9"}},
};

constexpr MeaningRow k_meanings[] = {
    {"X",             "AN standard steel bolt"},
    {"cross",         "AN standard steel bolt"},
    {"asterisk",      "AN standard steel bolt"},
    {"*",             "AN standard steel bolt"},
    {"two raised dashes", "AN bolt of aluminium alloy"},
    {"- -",           "AN bolt of aluminium alloy"},
    {"SPEC",          "special-purpose aircraft bolt"},
    {"L",             "left-hand thread"},
    {"LH",            "left-hand thread"},
    {"left-hand",     "left-hand thread"},
    {"<-",            "left-hand thread"},
    {"arrow",         "left-hand thread"},
    {"←",             "left-hand thread"},
    {"notch",         "left-hand thread"},
    {"",              "nothing about the class"},
    {"  ",            "nothing about the class"},
    {"no mark",       "nothing about the class"},
    {"no lines",      "nothing about the class"},
    {"unmarked",      "nothing about the class"},
    {"nut, no mark",  "nothing about the class"},
};

// Marks that no row has; "8.6" is 9.8 upside down.
constexpr const char* k_unlisted[] = {"8.6", "8.9", "7.7", "14.9", "4 lines", "2 lines", "1 line", "lines", "->", "DRIVE",
                                      "XYZ", "grade 8", "SAE 5", "A9-70", "A2-75", "70", "M10", "dot", "99999999999"};
// clang-format on

HeadMarkAnswer answer_for(std::string_view text, const std::optional<std::string>& part = std::nullopt) {
  auto answer = read_head_mark(Catalogue(), text, part);
  EXPECT_TRUE(answer.has_value()) << text;
  return answer ? *answer : HeadMarkAnswer{};
}

std::vector<std::string> classes_of(const HeadMarkAnswer& answer) {
  std::vector<std::string> names;
  for (const HeadMark& row : answer.readings)
    names.push_back(row.class_name.value_or(""));
  return names;
}

std::vector<Code> codes_of(const HeadMarkAnswer& answer) {
  std::vector<Code> codes;
  for (const auto& found : answer.findings)
    codes.push_back(found.code);
  return codes;
}

TEST(HeadMark, StandsForItsClass) {
  for (const OneRow& row : k_one) {
    const HeadMarkAnswer answer = answer_for(row.text);
    ASSERT_EQ(answer.readings.size(), 1U) << row.text;
    EXPECT_EQ(answer.readings[0].class_name, row.class_name) << row.text;
    EXPECT_EQ(answer.readings[0].system, row.system) << row.text;
  }
}

TEST(HeadMark, GivesEveryClassThatItMayStandForAndIsSureOfNone) {
  for (const SeveralRow& row : k_several) {
    const HeadMarkAnswer answer = answer_for(row.text);
    EXPECT_EQ(classes_of(answer), row.classes) << row.text;
    for (const HeadMark& reading : answer.readings)
      EXPECT_NE(reading.verdict, "means") << row.text << ": " << reading.meaning;
  }
}

TEST(HeadMark, SaysWhatIsNoClass) {
  for (const MeaningRow& row : k_meanings) {
    const HeadMarkAnswer answer = answer_for(row.text);
    ASSERT_FALSE(answer.readings.empty()) << row.text;
    EXPECT_EQ(answer.readings[0].meaning, row.meaning) << row.text;
    EXPECT_FALSE(answer.readings[0].class_name) << row.text;
  }
}

TEST(HeadMark, ThatNobodyListsHasNoReadingAndNoClass) {
  for (const char* text : k_unlisted) {
    const HeadMarkAnswer answer = answer_for(text);
    EXPECT_THAT(answer.readings, IsEmpty()) << text;
    EXPECT_THAT(codes_of(answer), Contains(Code::class_unknown)) << text;
    EXPECT_THAT(head_mark_advice(answer), HasSubstr("--class unknown")) << text;
  }
}

TEST(HeadMark, ThatNobodyListsNamesWhatItMayBeTakenFor) {
  EXPECT_THAT(answer_for("8.6").look_alikes, Contains(HasSubstr("9.8: class 9.8")));
  EXPECT_THAT(answer_for("8.6").look_alikes, Contains(HasSubstr("upside down")));
  EXPECT_THAT(answer_for("4 lines").look_alikes, Contains(HasSubstr("3 lines")));
  EXPECT_THAT(answer_for("A2-75").look_alikes, Contains(HasSubstr("A2-70")));
  EXPECT_THAT(answer_for("->").look_alikes, Contains(HasSubstr("arrow: left-hand thread")));
  EXPECT_THAT(answer_for("SAE 5").look_alikes, Contains(HasSubstr("3 lines: grade 5")));
}

TEST(HeadMark, IsNotTheGradeOfItsFigure) {
  EXPECT_THAT(answer_for("8.8").look_alikes, Contains(HasSubstr("SAE 8 is six lines")));
  EXPECT_THAT(answer_for("8").look_alikes, Contains(HasSubstr("SAE 8 is six lines")));
}

TEST(HeadMark, KeepsTheMakersMarkApart) {
  EXPECT_EQ(answer_for("XYZ 8.8").maker_mark, "XYZ");
  EXPECT_EQ(answer_for("A 8.8").maker_mark, "A");
  EXPECT_EQ(answer_for("X 8.8").maker_mark, "X");
  EXPECT_EQ(answer_for("AB 10.9 CD").maker_mark, "AB CD");
  EXPECT_EQ(answer_for("stamped 8.8 on the head").maker_mark, std::nullopt);
}

TEST(HeadMark, SaysWhatBesideItNobodyLists) {
  const HeadMarkAnswer answer = answer_for("8.8 42 XYZ");
  EXPECT_EQ(answer.not_read, "42");
  EXPECT_EQ(answer.maker_mark, "XYZ");
}

TEST(HeadMark, TellsTheHandOnlyWhereAMarkDoes) {
  for (const char* text : {"8.8 L", "L 8.8", "8.8 <-", "arrow 10.9", "notch"})
    EXPECT_EQ(answer_for(text).hand, thread::Hand::left) << text;
  for (const char* text : {"8.8", "none", "3 lines", "->"})
    EXPECT_FALSE(answer_for(text).hand) << text;
}

TEST(HeadMark, OfALeftHandThreadKeepsItsClass) {
  EXPECT_THAT(classes_of(answer_for("8.8 L")), ElementsAre("8.8", ""));
  EXPECT_EQ(answer_for("8.8 L").readings[0].verdict, "means");
  EXPECT_THAT(codes_of(answer_for("8.8 L")), Contains(Code::left_hand));
  EXPECT_THAT(codes_of(answer_for("8.8")), Not(Contains(Code::left_hand)));
}

TEST(HeadMark, WithALeadingZeroHasAReducedHead) {
  EXPECT_THAT(codes_of(answer_for("08.8")), Contains(Code::reduced_head));
  EXPECT_THAT(codes_of(answer_for("8.8")), Not(Contains(Code::reduced_head)));
  EXPECT_THAT(codes_of(answer_for("04")), Not(Contains(Code::reduced_head))); // a nut
}

TEST(HeadMark, OfStainlessSteelWarnsOfGallingAndHasNoProofStress) {
  EXPECT_THAT(codes_of(answer_for("A2-70")), Contains(Code::galling));
  EXPECT_THAT(answer_for("A2-70").readings[0].rule, HasSubstr("no proof stress"));
  EXPECT_THAT(codes_of(answer_for("8.8")), Not(Contains(Code::galling)));
}

TEST(HeadMark, ProvesNothingAndSaysSoOnce) {
  for (const char* text : {"8.8", "none", "DRIVE", "3 lines", "8.8 L"}) {
    const auto codes = codes_of(answer_for(text));
    EXPECT_EQ(std::ranges::count(codes, Code::mark_proves_nothing), 1) << text;
  }
}

TEST(HeadMark, ThatIsMissingLeavesTheClassUnknown) {
  const HeadMarkAnswer answer = answer_for("");
  EXPECT_EQ(answer.reading, "no mark");
  EXPECT_EQ(answer.readings[0].verdict, "not-known");
  EXPECT_THAT(answer.readings[0].rule, HasSubstr("below 5 mm the missing mark says nothing"));
  EXPECT_THAT(codes_of(answer), Contains(Code::class_unknown));
}

TEST(HeadMark, IsReadForThePartThatIsSaid) {
  EXPECT_THAT(classes_of(answer_for("triangle", "stud")), ElementsAre("12.9"));
  EXPECT_THAT(classes_of(answer_for("triangle on a bolt")), ElementsAre(""));
  EXPECT_EQ(answer_for("triangle", "bolt").readings[0].meaning, "NAS close-tolerance bolt");
  EXPECT_EQ(answer_for("8").part, "nut");
  EXPECT_EQ(answer_for("8.8").part, std::nullopt);
  EXPECT_EQ(answer_for("8.8", "screws").part, "screw");
}

TEST(HeadMark, OfAnotherPartIsALookAlikeOnly) {
  const HeadMarkAnswer answer = answer_for("8", "bolt");
  EXPECT_THAT(answer.readings, IsEmpty());
  EXPECT_THAT(answer.look_alikes, Contains(HasSubstr("8: nut class 8, on a nut")));
  EXPECT_THAT(codes_of(answer), Contains(Code::class_unknown));
}

TEST(HeadMark, SaysWhatItReadWhereTheDotIsMissing) {
  EXPECT_EQ(answer_for("88").reading, "8.8, without its dot");
  EXPECT_EQ(answer_for("A2").reading, "A2, a stainless steel without its class");
  EXPECT_EQ(answer_for("dot 12 bar 8").reading, "bar at 8 o'clock");
}

TEST(HeadMark, IsRefusedWhereItIsNoText) {
  const Catalogue catalogue;
  EXPECT_EQ(problem_of(read_head_mark(catalogue, "8.8\x01", std::nullopt)).trouble, Trouble::not_understood);
  EXPECT_EQ(problem_of(read_head_mark(catalogue, "\xff", std::nullopt)).trouble, Trouble::not_understood);
  EXPECT_EQ(problem_of(read_head_mark(catalogue, std::string(101, '8'), std::nullopt)).trouble,
            Trouble::not_understood);
  EXPECT_EQ(problem_of(read_head_mark(catalogue, "8", "washer")).field, "--part");
  EXPECT_EQ(problem_of(read_head_mark(catalogue, "nut 8", "bolt")).trouble, Trouble::not_understood);
}

TEST(HeadMarkAdvice, NamesTheClassForClamp) {
  EXPECT_THAT(head_mark_advice(answer_for("8.8")), HasSubstr("--class 8.8"));
  EXPECT_THAT(head_mark_advice(answer_for("5 lines")), HasSubstr("--class \"SAE 7\""));
  EXPECT_THAT(head_mark_advice(answer_for("triangle")), HasSubstr("until then write --class unknown"));
  EXPECT_THAT(head_mark_advice(answer_for("3 lines")), HasSubstr("--class unknown"));
  EXPECT_THAT(head_mark_advice(answer_for("B7")), HasSubstr("--class unknown"));
  EXPECT_THAT(head_mark_advice(answer_for("8")), HasSubstr("bolt sets the torque"));
}

} // namespace
} // namespace clampwright::specdb
