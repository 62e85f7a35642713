// SPDX-License-Identifier: GPL-3.0-or-later
//
// Spellings are those of the contract, section 1 ("Threads").
#include "specdb/catalogue/threads.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/thread/designation.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;
using thread::Form;
using thread::Hand;

struct Row {
  const char* text;
  const char* designation;
  const char* series;
  Form form;
};

struct SizeRow {
  const char* text;
  double diameter_mm;
  double pitch_mm;
  double tpi; // 0: none
};

struct HandRow {
  const char* text;
  Hand hand;
  const char* written;
};

struct ClassRow {
  const char* text;
  bool has_limits;
};

struct RefusedRow {
  const char* text;
  Trouble trouble;
  const char* code;
  const char* hint; // part of it
};

// clang-format off
constexpr Row k_rows[] = {
    {"M10",              "M10",         "coarse", Form::metric},
    {"M10x1.5",          "M10",         "coarse", Form::metric},
    {"M10x1.50",         "M10",         "coarse", Form::metric},
    {"m10",              "M10",         "coarse", Form::metric},
    {"M10x1.25",         "M10x1.25",    "fine",   Form::metric},
    {"M10X1.25",         "M10x1.25",    "fine",   Form::metric},
    {"M10×1.25",         "M10x1.25",    "fine",   Form::metric},
    {"M10 x 1.25",       "M10x1.25",    "fine",   Form::metric},
    {"m8x1",             "M8x1",        "fine",   Form::metric},
    {"M14x1.5-LH",       "M14x1.5",     "fine",   Form::metric},
    {"M8x1.25-6g",       "M8",          "coarse", Form::metric},
    {"M2.5",             "M2.5",        "coarse", Form::metric},
    {"1/4-20",           "1/4-20 UNC",  "UNC",    Form::unified},
    {"1/4-28 UNF",       "1/4-28 UNF",  "UNF",    Form::unified},
    {"1/4-28",           "1/4-28 UNF",  "UNF",    Form::unified},
    {"1/4 UNF",          "1/4-28 UNF",  "UNF",    Form::unified},
    {"1/4-28 UNF-2A-LH", "1/4-28 UNF",  "UNF",    Form::unified},
    {"1/4-28 unf",       "1/4-28 UNF",  "UNF",    Form::unified},
    {"0.25-28 UNF",      "1/4-28 UNF",  "UNF",    Form::unified},
    {".25-20",           "1/4-20 UNC",  "UNC",    Form::unified},
    {"0.3125-18",        "5/16-18 UNC", "UNC",    Form::unified},
    {"3/8-24",           "3/8-24 UNF",  "UNF",    Form::unified},
    {"2/8-20",           "1/4-20 UNC",  "UNC",    Form::unified},
    {"10-32",            "#10-32 UNF",  "UNF",    Form::unified},
    {"10-32 UNF",        "#10-32 UNF",  "UNF",    Form::unified},
    {"#10-32",           "#10-32 UNF",  "UNF",    Form::unified},
    {"#10-24 UNC",       "#10-24 UNC",  "UNC",    Form::unified},
    {"10 UNC",           "#10-24 UNC",  "UNC",    Form::unified},
    {"1 1/4-7",          "1 1/4-7 UNC", "UNC",    Form::unified},
    {"1-1/4-7",          "1 1/4-7 UNC", "UNC",    Form::unified},
    {"1.25-7",           "1 1/4-7 UNC", "UNC",    Form::unified},
    {"5/4-7",            "1 1/4-7 UNC", "UNC",    Form::unified},
    {"1-8 UNC",          "1-8 UNC",     "UNC",    Form::unified},
    {"1-8",              "1-8 UNC",     "UNC",    Form::unified},
    {"1-64 UNC",         "#1-64 UNC",   "UNC",    Form::unified},
    {"1-12",             "1-12 UNF",    "UNF",    Form::unified},
    {"1-72",             "#1-72 UNF",   "UNF",    Form::unified},
    {"1 UNEF",           "1-20 UNEF",   "UNEF",   Form::unified},
    {"5/16 BSW",         "5/16 BSW",    "BSW",    Form::whitworth},
    {"5/16-18 BSW",      "5/16 BSW",    "BSW",    Form::whitworth},
    {"5/16 bsf",         "5/16 BSF",    "BSF",    Form::whitworth},
    {"1 BSW",            "1 BSW",       "BSW",    Form::whitworth},
    {"1/4 BSC",          "1/4 BSC",     "BSC",    Form::bsc},
    {"2 BA",             "2 BA",        "BA",     Form::ba},
    {"2BA",              "2 BA",        "BA",     Form::ba},
    {"0 BA",             "0 BA",        "BA",     Form::ba},
    {"12 ba",            "12 BA",       "BA",     Form::ba},
};

// Metric: ISO 261:1998, Table 2 (seen second-hand). Unified: ASME B1.1-2003, standard series (seen second-hand), the
// inch 25.4 mm. Whitworth: BS 84, BA: BS 93, cycle: BS 811 (seen second-hand). Products by hand.
constexpr SizeRow k_sizes[] = {
    {"M10",         10.0,   1.5,      0},
    {"M10x1.25",    10.0,   1.25,     0},
    {"M14x1.5",     14.0,   1.5,      0},
    {"M2.5",        2.5,    0.45,     0},
    {"1/4-20",      6.35,   1.27,    20}, // 25.4/20
    {"3/8-24",      9.525,  25.4 / 24, 24},
    {"#10-32",      4.826,  0.79375, 32}, // 0.190 in; 25.4/32
    {"1 1/4-7",     31.75,  25.4 / 7, 7},
    {"5/16 BSW",    7.9375, 25.4 / 18, 18},
    {"5/16 BSF",    7.9375, 25.4 / 22, 22},
    {"1/4 BSC",     6.35,   25.4 / 26, 26},
    {"2 BA",        4.7,    0.81,     0},
    {"0 BA",        6.0,    1.0,      0},
};

constexpr HandRow k_hands[] = {
    {"M14x1.5-LH",       Hand::left,  "M14x1.5-LH"},
    {"M14x1.5LH",        Hand::left,  "M14x1.5-LH"},
    {"M14x1.5-RH",       Hand::right, "M14x1.5"},
    {"M10-LH",           Hand::left,  "M10-LH"},
    {"M10x1.5 left",     Hand::left,  "M10-LH"},
    {"1/4-28 UNF-LH",    Hand::left,  "1/4-28 UNF-LH"},
    {"1/4-28 UNF-2A-LH", Hand::left,  "1/4-28 UNF-LH"},
    {"10-32-LH",         Hand::left,  "#10-32 UNF-LH"},
    {"5/16 BSW-LH",      Hand::left,  "5/16 BSW-LH"},
    {"2 BA",             Hand::right, "2 BA"},
};

// The limits listed are those of 6g/6H and of 2A/2B.
constexpr ClassRow k_classes[] = {
    {"M8",             true},
    {"M8x1.25-6g",     true},
    {"M8-6H",          true},
    {"M8-6g-LH",       true},
    {"M8-4h",          false},
    {"M8-6h",          false},
    {"M8-6G",          false},
    {"M8-5g6g",        false},
    {"1/4-20",         true},
    {"1/4-20-2A",      true},
    {"1/4-20 UNC-2B",  true},
    {"1/4-20 UNC-3A",  false},
    {"1/4-20 UNC-1B",  false},
    {"5/16 BSW",       false}, // no limits are listed for it
    {"2 BA",           false},
};

constexpr RefusedRow k_refused[] = {
    {"M10x1.3",          Trouble::no_such,        "no-such-thread", "M10x0.75, M10x1, M10x1.25, M10"},
    {"M11.3",            Trouble::no_such,        "no-such-thread", "M11 and M12"},
    {"M500",             Trouble::no_such,        "no-such-thread", "listed are M1 to M68"},
    {"M0.5",             Trouble::no_such,        "no-such-thread", "listed are M1 to M68"},
    {"1/4-21",           Trouble::no_such,        "no-such-thread", "1/4-20 UNC"},
    {"1/4-28 UNC",       Trouble::no_such,        "no-such-thread", "1/4-28 UNF"},
    {"21/64-20",         Trouble::no_such,        "no-such-thread", "5/16 and 3/8"},
    {"1/0-20",           Trouble::no_such,        "no-such-thread", "listed are"},
    {"#11-32",           Trouble::no_such,        "no-such-thread", "listed"},
    {"40 BA",            Trouble::no_such,        "no-such-thread", "listed are"},
    {"23/64 BSW",        Trouble::no_such,        "no-such-thread", "nearest listed sizes"},
    {"1/4",              Trouble::not_understood, "pitch-missing",  "1/4-20"},
    {"10",               Trouble::not_understood, "pitch-missing",  ""},
    {"1 UNC",            Trouble::not_understood, "pitch-missing",  "1-8 UNC"},
    {"1 UNC",            Trouble::not_understood, "pitch-missing",  "#1-64 UNC"},
    {"M10,5",            Trouble::not_understood, "comma",          "M10.5"},
    {"",                 Trouble::not_understood, "empty",          "M10x1.25"},
    {"hexagon",          Trouble::not_understood, "not-understood", "M10x1.25"},
    {"M10x1.5x40",       Trouble::not_understood, "not-understood", "length"},
    {"M10 8.8",          Trouble::not_understood, "not-understood", "--class"},
    {"M10\x01",          Trouble::not_understood, "not-understood", "M10x1.25"},
};
// clang-format on

TEST(Thread, HasTheDesignationOfTheContract) {
  const Catalogue catalogue;
  for (const Row& row : k_rows) {
    const auto found = find_thread(catalogue, row.text);
    ASSERT_TRUE(found.has_value()) << row.text << ": " << found.error().message;
    EXPECT_EQ(found->thread.designation, row.designation) << row.text;
    EXPECT_EQ(found->thread.series, row.series) << row.text;
    EXPECT_EQ(found->thread.form, row.form) << row.text;
  }
}

TEST(Thread, HasTheSizeOfItsStandard) {
  const Catalogue catalogue;
  for (const SizeRow& row : k_sizes) {
    const auto found = find_thread(catalogue, row.text);
    ASSERT_TRUE(found.has_value()) << row.text;
    EXPECT_NEAR(quantity::in_millimetres(found->thread.diameter), row.diameter_mm, 1e-9) << row.text;
    EXPECT_NEAR(quantity::in_millimetres(found->thread.pitch), row.pitch_mm, 1e-9) << row.text;
    EXPECT_NEAR(found->thread.tpi.value_or(0), row.tpi, 1e-9) << row.text;
  }
}

TEST(Thread, HasTheHandThatWasAskedFor) {
  const Catalogue catalogue;
  for (const HandRow& row : k_hands) {
    const auto found = find_thread(catalogue, row.text);
    ASSERT_TRUE(found.has_value()) << row.text;
    EXPECT_EQ(found->thread.hand, row.hand) << row.text;
    EXPECT_EQ(thread::write_designation(found->thread), row.written) << row.text;
  }
}

TEST(Thread, IsFoundAgainByWhatItIsWrittenAs) {
  const Catalogue catalogue;
  for (const Row& row : k_rows) {
    const auto again = find_thread(catalogue, row.designation);
    ASSERT_TRUE(again.has_value()) << row.designation;
    EXPECT_EQ(again->thread.designation, row.designation);
  }
}

TEST(Thread, HasLimitsForTheUsualClassesOnly) {
  const Catalogue catalogue;
  for (const ClassRow& row : k_classes) {
    const auto found = find_thread(catalogue, row.text);
    ASSERT_TRUE(found.has_value()) << row.text << ": " << found.error().message;
    EXPECT_EQ(found->limits.has_value(), row.has_limits) << row.text;
  }
}

// A fit of the two listed classes is no other class; small letters cannot be confused in 2A and 2B.
TEST(Thread, KeepsItsLimitsWhereTheClassIsWrittenOtherwise) {
  const Catalogue catalogue;
  for (const char* text : {"M8-6H/6g", "M8-6g6g", "1/4-20 UNC-2a", "1/4-20 UNC-2b"}) {
    const auto found = find_thread(catalogue, text);
    ASSERT_TRUE(found.has_value()) << text << ": " << found.error().message;
    EXPECT_TRUE(found->limits.has_value()) << text;
  }
}

// ISO 965, tolerance classes 6g and 6H, M10: computed from the tolerance tables, agrees with a printed table that was
// read (reference/dimensions/metric_limits_6g_6H.csv).
TEST(Thread, HasTheLimitsOfItsStandard) {
  const auto found = find_thread(Catalogue(), "M10");
  ASSERT_TRUE(found.has_value() && found->limits.has_value());
  const thread::Limits& limits = *found->limits;
  EXPECT_EQ(limits.external_class, "6g");
  EXPECT_EQ(limits.internal_class, "6H");
  EXPECT_NEAR(quantity::in_millimetres(limits.d_max), 9.968, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.d_min), 9.732, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.d2_max), 8.994, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.d2_min), 8.862, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.d3_max), 8.128, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.D_min), 10.0, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.D2_min), 9.026, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.D2_max), 9.206, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.D1_min), 8.376, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(limits.D1_max), 8.676, 1e-9);
}

// ASME B1.1-2003, Table 2, 1/4-28 UNF-2A: pitch diameter 0.2258 to 0.2225 in (from memory, agrees with the computed
// ones of reference/dimensions/inch_limits_2A_2B.csv).
TEST(Thread, HasItsLimitsInInchesWhereItsStandardIs) {
  const auto found = find_thread(Catalogue(), "1/4-28 UNF");
  ASSERT_TRUE(found.has_value() && found->limits.has_value());
  EXPECT_NEAR(quantity::in_millimetres(found->limits->d2_max), 0.2258 * 25.4, 1e-9);
  EXPECT_NEAR(quantity::in_millimetres(found->limits->d2_min), 0.2225 * 25.4, 1e-9);
}

// ISO 898-1:2013, Table 4: 58.0 mm2 for M10 (seen second-hand). Shigley, 9th edition, Table 8-2: 0.0318 in2 for 1/4-20
// (seen second-hand); 1 in2 = 645.16 mm2.
TEST(Thread, HasTheStressAreaThatItsStandardPrints) {
  const Catalogue catalogue;
  const auto area = [&](const char* text) {
    return quantity::in_square_millimetres(find_thread(catalogue, text)->stress_area_table.value_or(quantity::Area{}));
  };
  EXPECT_NEAR(area("M10"), 58.0, 1e-9);
  EXPECT_NEAR(area("1/4-20"), 0.0318 * 645.16, 1e-9);
}

TEST(Thread, HasNoStressAreaWhereNoneIsPrinted) {
  const Catalogue catalogue;
  for (const char* text : {"M10x0.75", "5/16 BSW", "2 BA", "1/4 BSC"})
    EXPECT_FALSE(find_thread(catalogue, text)->stress_area_table.has_value()) << text;
}

TEST(Thread, NamesItsSources) {
  const auto found = find_thread(Catalogue(), "M10");
  ASSERT_EQ(found->sources.size(), 2U);
  EXPECT_THAT(found->sources[0].title, HasSubstr("ISO 261"));
  EXPECT_EQ(found->sources[0].known, Known::second_hand);
  EXPECT_THAT(found->sources[1].title, HasSubstr("ISO 898-1"));
}

TEST(Thread, IsRefusedWithWhatIsListed) {
  const Catalogue catalogue;
  for (const RefusedRow& row : k_refused) {
    const Problem problem = problem_of(find_thread(catalogue, row.text));
    EXPECT_EQ(problem.code, row.code) << row.text;
    EXPECT_EQ(problem.trouble, row.trouble) << row.text;
    EXPECT_THAT(problem.hint, HasSubstr(row.hint)) << row.text;
  }
}

// Contract, section 1: "Inch sizes without pitch or series are refused with the choices."
TEST(Thread, IsRefusedWithTheChoicesOfItsInchSize) {
  EXPECT_THAT(problem_of(find_thread(Catalogue(), "3/8")).hint, HasSubstr("3/8-24 UNF"));
}

TEST(Thread, IsRefusedWithItsText) { EXPECT_EQ(problem_of(find_thread(Catalogue(), "M10x1.3")).input, "M10x1.3"); }

TEST(Thread, IsRefusedWhereAFractionHasMoreDigitsThanAnIntegerHolds) {
  const Catalogue catalogue;
  for (const char* text : {"1 99999999999/4-20", "1-99999999999/64 BSW", "1 99999999999999999999999/4-7 UNC"}) {
    Problem problem;
    EXPECT_NO_THROW(problem = problem_of(find_thread(catalogue, text))) << text;
    EXPECT_NE(problem.trouble, Trouble::internal) << text;
  }
}

// 169 metric pairs, 74 Unified, 42 Whitworth, 17 BA, 20 cycle threads; limits for the first two only.
TEST(AllThreads, AreThoseOfTheTablesWithTheirLimits) {
  const Catalogue catalogue;
  const auto all = all_threads(catalogue);
  EXPECT_EQ(all.size(), 322U);
  for (const ThreadEntry& entry : all) {
    const bool has_limits = entry.thread.form == Form::metric || entry.thread.form == Form::unified;
    EXPECT_EQ(entry.limits.has_value(), has_limits) << entry.thread.designation;
    EXPECT_EQ(entry.choice.has_value(), entry.thread.form == Form::metric) << entry.thread.designation;
    EXPECT_TRUE(find_thread(catalogue, entry.thread.designation)) << entry.thread.designation;
  }
}

} // namespace
} // namespace clampwright::specdb
