// SPDX-License-Identifier: GPL-3.0-or-later
//
// The forms are those of the contract, section 1 ("Threads").
#include "core/thread/designation.hpp"

#include "tests/core/cases.hpp"
#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

namespace clampwright::thread {
namespace {

using test::problem_of;

struct MetricRow {
  const char* text;
  const char* size;
  double diameter_mm;
  double pitch_mm; // 0: none written
  const char* tolerance;
  Hand hand;
};

struct InchRow {
  const char* text;
  const char* size;
  double tpi; // 0: none written
  const char* series;
  const char* tolerance;
  Hand hand;
};

// clang-format off
constexpr MetricRow k_metric[] = {
    {"M10",              "M10",  10.0, 0.0,  "",      Hand::right},
    {"m10",              "M10",  10.0, 0.0,  "",      Hand::right},
    {"M10x1.25",         "M10",  10.0, 1.25, "",      Hand::right},
    {"M10X1.25",         "M10",  10.0, 1.25, "",      Hand::right},
    {"M10×1.25",         "M10",  10.0, 1.25, "",      Hand::right},
    {"M10 x 1.25",       "M10",  10.0, 1.25, "",      Hand::right},
    {"M 10x1.25",        "M10",  10.0, 1.25, "",      Hand::right},
    {"m8x1",             "M8",   8.0,  1.0,  "",      Hand::right},
    {"M8x1.0",           "M8",   8.0,  1.0,  "",      Hand::right},
    {"M2.5",             "M2.5", 2.5,  0.0,  "",      Hand::right},
    {"M14x1.5-LH",       "M14",  14.0, 1.5,  "",      Hand::left},
    {"M14x1.5LH",        "M14",  14.0, 1.5,  "",      Hand::left},
    {"M14x1.5 - lh",     "M14",  14.0, 1.5,  "",      Hand::left},
    {"M10-LH",           "M10",  10.0, 0.0,  "",      Hand::left},
    {"M10-RH",           "M10",  10.0, 0.0,  "",      Hand::right},
    {"M10 left",         "M10",  10.0, 0.0,  "",      Hand::left},
    {"M8x1.25-6g",       "M8",   8.0,  1.25, "6g",    Hand::right},
    {"M8x1.25-6H",       "M8",   8.0,  1.25, "6H",    Hand::right},
    {"M8-6H/6g",         "M8",   8.0,  0.0,  "6H/6g", Hand::right},
    {"M8x1-5g6g-LH",     "M8",   8.0,  1.0,  "5g6g",  Hand::left},
    {"M8x1-LH-6g",       "M8",   8.0,  1.0,  "6g",    Hand::left},
    {" M10 ",            "M10",  10.0, 0.0,  "",      Hand::right},
};

constexpr InchRow k_inch[] = {
    {"1/4-20",           "1/4",   20.0, "",     "",   Hand::right},
    {"1/4-28 UNF",       "1/4",   28.0, "UNF",  "",   Hand::right},
    {"1/4-28UNF",        "1/4",   28.0, "UNF",  "",   Hand::right},
    {"1/4-28 unf",       "1/4",   28.0, "UNF",  "",   Hand::right},
    {"1/4 UNF",          "1/4",   0.0,  "UNF",  "",   Hand::right},
    {"1/4-28 UNF-2A",    "1/4",   28.0, "UNF",  "2A", Hand::right},
    {"1/4-28 UNF-2A-LH", "1/4",   28.0, "UNF",  "2A", Hand::left},
    {"1/4-28-LH",        "1/4",   28.0, "",     "",   Hand::left},
    {"1/4-20-2B",        "1/4",   20.0, "",     "2B", Hand::right},
    {"1/4 - 20",         "1/4",   20.0, "",     "",   Hand::right},
    {"1/4\"-20 UNC",     "1/4",   20.0, "UNC",  "",   Hand::right},
    {"1/4in-20",         "1/4",   20.0, "",     "",   Hand::right},
    {"0.25-28",          "0.25",  28.0, "",     "",   Hand::right},
    {"10-32 UNF",        "10",    32.0, "UNF",  "",   Hand::right},
    {"#10-32",           "#10",   32.0, "",     "",   Hand::right},
    {"#10-32 UNF",       "#10",   32.0, "UNF",  "",   Hand::right},
    {"No. 10-32",        "#10",   32.0, "",     "",   Hand::right},
    {"no10-32",          "#10",   32.0, "",     "",   Hand::right},
    {"1-8 UNC",          "1",     8.0,  "UNC",  "",   Hand::right},
    {"1 1/4-7",          "1 1/4", 7.0,  "",     "",   Hand::right},
    {"1-1/4-7 UNC",      "1 1/4", 7.0,  "UNC",  "",   Hand::right},
    {"2-4.5 UNC",        "2",     4.5,  "UNC",  "",   Hand::right},
    {"1/2-28 UNEF",      "1/2",   28.0, "UNEF", "",   Hand::right},
    {"5/16 BSW",         "5/16",  0.0,  "BSW",  "",   Hand::right},
    {"5/16-18 BSW",      "5/16",  18.0, "BSW",  "",   Hand::right},
    {"1/4 BSF-LH",       "1/4",   0.0,  "BSF",  "",   Hand::left},
    {"2 BA",             "2",     0.0,  "BA",   "",   Hand::right},
    {"2BA",              "2",     0.0,  "BA",   "",   Hand::right},
    {"0 ba",             "0",     0.0,  "BA",   "",   Hand::right},
    {"1/4 BSC",          "1/4",   0.0,  "BSC",  "",   Hand::right},
};

struct FormRow {
  const char* text;
  Form form;
};
constexpr FormRow k_forms[] = {
    {"M10", Form::metric},         {"1/4-20", Form::unified}, {"1/4 UNEF", Form::unified}, {"5/16 BSW", Form::whitworth},
    {"1/4 BSF", Form::whitworth},  {"2 BA", Form::ba},        {"1/4 BSC", Form::bsc},      {"#10-32", Form::unified},
};

struct RefusedRow {
  const char* text;
  const char* code;
};
constexpr RefusedRow k_refused[] = {
    {"",              "empty"},          {"   ",            "empty"},          {"M",             "not-understood"},
    {"Mx1",           "not-understood"}, {"M0",             "not-understood"}, {"M-10",          "not-understood"},
    {"MM10",          "not-understood"}, {"M10x",           "not-understood"}, {"M10x0",         "not-understood"},
    {"M10x-1",        "not-understood"}, {"M10x1.25x30",    "not-understood"}, {"M10x1.25 x 30", "not-understood"},
    {"M10 8.8",       "not-understood"}, {"M10-8.8",        "not-understood"}, {"M10x1.5 8.8",   "not-understood"},
    {"M10-",          "not-understood"}, {"M10 foo",        "not-understood"}, {"M10-LH-LH",     "not-understood"},
    {"M10-LH-RH",     "not-understood"}, {"M10-6g-6g",      "not-understood"}, {"M10-LHX",       "not-understood"},
    {"M10*1.25",      "not-understood"}, {"M10-1.25",       "not-understood"}, {"M10x1.2.5",     "not-understood"},
    {"M1e1",          "not-understood"}, {"M٣",             "not-understood"}, {"Mnan",          "not-understood"},
    {"M10x10",        "out-of-range"},   {"M10x12",         "out-of-range"},   {"M10,5",         "comma"},
    {"M10x1,25",      "comma"},          {"1/4",            "pitch-missing"},  {"#10",           "pitch-missing"},
    {"10",            "pitch-missing"},  {"1/4-2A",         "pitch-missing"},  {"1/4-0",         "not-understood"},
    {"1/4-20-20",     "not-understood"}, {"1/4-20 UNF UNC", "not-understood"}, {"1/4-28 NPT",    "not-understood"},
    {"1/4-28 UNFX",   "not-understood"}, {"1/",             "not-understood"}, {"/4-20",         "not-understood"},
    {"foo",           "not-understood"}, {"#-32",           "not-understood"}, {"-1/4-20",       "not-understood"},
    {"1/4-20 x 1",    "not-understood"}, {"M10\x01",        "not-understood"}, {"M10\xFF",       "not-understood"},
};
// clang-format on

} // namespace

TEST(MetricDesignation, IsRead) {
  for (const MetricRow& row : k_metric) {
    const auto read = read_designation(row.text);
    ASSERT_TRUE(read) << row.text << ": " << read.error().message;
    EXPECT_EQ(read->size, row.size) << row.text;
    EXPECT_DOUBLE_EQ(read->diameter_mm, row.diameter_mm) << row.text;
    EXPECT_DOUBLE_EQ(read->pitch_mm.value_or(0.0), row.pitch_mm) << row.text;
    EXPECT_EQ(read->tolerance, row.tolerance) << row.text;
    EXPECT_EQ(read->hand, row.hand) << row.text;
  }
}

TEST(InchDesignation, IsRead) {
  for (const InchRow& row : k_inch) {
    const auto read = read_designation(row.text);
    ASSERT_TRUE(read) << row.text << ": " << read.error().message;
    EXPECT_EQ(read->size, row.size) << row.text;
    EXPECT_DOUBLE_EQ(read->tpi.value_or(0.0), row.tpi) << row.text;
    EXPECT_EQ(read->series, row.series) << row.text;
    EXPECT_EQ(read->tolerance, row.tolerance) << row.text;
    EXPECT_EQ(read->hand, row.hand) << row.text;
  }
}

TEST(Designation, TellsTheForm) {
  for (const FormRow& row : k_forms) {
    const auto read = read_designation(row.text);
    EXPECT_TRUE(read && read->form == row.form) << row.text;
  }
}

TEST(Designation, LeavesThePitchOpenWhereNoneIsWritten) {
  EXPECT_FALSE(read_designation("M10")->pitch_mm);
  EXPECT_FALSE(read_designation("1/4 UNF")->tpi);
}

TEST(Designation, IsRefusedWithItsReason) {
  for (const RefusedRow& row : k_refused)
    EXPECT_EQ(problem_of(read_designation(row.text)).code, row.code) << row.text;
}

TEST(Designation, ThatIsRefusedShowsGoodOnes) {
  for (const RefusedRow& row : k_refused)
    EXPECT_FALSE(problem_of(read_designation(row.text)).hint.empty()) << row.text;
}

TEST(Designation, WithAStrengthClassBehindItSaysHowFarItWasUnderstood) {
  const Problem problem = problem_of(read_designation("M10x1.25 8.8"));
  EXPECT_TRUE(test::says(problem.message, "M10x1.25 was understood")) << problem.message;
  EXPECT_TRUE(test::says(problem.hint, "--class")) << problem.hint;
}

// A length, a torque or a unit behind the thread is trailing text, not a tolerance class: those are a grade and the
// letters of ISO 965-1 or the A and B of ASME B1.1.
TEST(Designation, TakesNoOtherTextForATolerance) {
  for (const char* text : {"M10 8mm", "M10-5Nm", "M8x1 6in", "M10 4x", "1/4-20 2mm", "1/4-28 UNF 3ft"})
    EXPECT_EQ(problem_of(read_designation(text)).code, "not-understood") << text;
}

TEST(Designation, WithACommaSpellsOutBothReadings) {
  const std::string message = problem_of(read_designation("M10x1,25")).message;
  EXPECT_TRUE(test::says(message, "M10x1.25")) << message;
  EXPECT_TRUE(test::says(message, "M10x125")) << message;
}

TEST(Designation, OfSixtyOneCharactersIsRefused) {
  std::string text("M10");
  text.append(58, '0');
  EXPECT_FALSE(read_designation(text));
}

TEST(WrittenDesignation, OfARightHandThreadIsItsName) {
  EXPECT_EQ(write_designation(test::metric_thread("M10x1.25", 10, 1.25)), "M10x1.25");
}

TEST(WrittenDesignation, OfALeftHandThreadEndsInLH) {
  Thread thread = test::metric_thread("M14x1.5", 14, 1.5);
  thread.hand = Hand::left;
  EXPECT_EQ(write_designation(thread), "M14x1.5-LH");
}

TEST(WrittenDesignation, LeavesTheToleranceOut) {
  Thread thread = test::metric_thread("M8", 8, 1.25);
  thread.tolerance = "6g";
  EXPECT_EQ(write_designation(thread), "M8");
}

TEST(FormName, IsThatOfTheContract) {
  EXPECT_EQ(form_name(Form::metric), "metric");
  EXPECT_EQ(form_name(Form::unified), "unified");
  EXPECT_EQ(form_name(Form::whitworth), "whitworth");
  EXPECT_EQ(form_name(Form::ba), "ba");
  EXPECT_EQ(form_name(Form::bsc), "bsc");
}

TEST(HandName, IsRightOrLeft) {
  EXPECT_EQ(hand_name(Hand::right), "right");
  EXPECT_EQ(hand_name(Hand::left), "left");
}

// Only its beginning used to be looked at: a pitch behind many spaces was lost, and M10x1.25 read as M10.
TEST(Designation, IsNeverReadFromItsBeginningAlone) {
  const std::string gap(60, ' ');
  EXPECT_FALSE(read_designation("M10" + gap + "x1.25"));
  EXPECT_FALSE(read_designation("M10" + gap));
  EXPECT_FALSE(read_designation("1/4-20" + gap + "UNJ"));
}

} // namespace clampwright::thread
