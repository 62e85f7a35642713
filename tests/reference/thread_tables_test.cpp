// SPDX-License-Identifier: GPL-3.0-or-later
//
// ISO 724, ISO 898-1 and ASME B1.1: printed diameters and areas against the formulas with √3 and π exact.
#include "core/thread/designation.hpp"
#include "core/thread/geometry.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string>

namespace clampwright {
namespace {

using quantity::in_millimetres;
using quantity::in_square_millimetres;
using test::How;
using test::k_rounding;
using test::places_off;
using test::printed;
using test::thread_named;

constexpr double k_inch_mm = 25.4;
constexpr double k_square_inch_mm2 = 645.16;

struct MetricRow {
  const char* thread;
  std::string_view d2;
  std::string_view D1;
  std::string_view d3;
};
constexpr MetricRow k_metric[] = {
#include "tests/reference/iso724_diameters.inc"
};

struct AreaRow {
  const char* thread;
  double mm2;
  How known;
};
constexpr AreaRow k_areas[] = {
#include "tests/reference/iso898_1_areas.inc"
};

struct InchRow {
  std::string_view thread;
  std::string_view pitch_in;
  std::string_view minor_external_in;
  std::string_view minor_internal_in;
  std::string_view area_in2;
  How area_known;
};
constexpr InchRow k_inch[] = {
#include "tests/reference/asme_b1_1_threads.inc"
};

thread::Geometry geometry(std::string_view designation) {
  return thread::geometry_of(thread_named(designation).thread);
}

template<class Rows, class Member>
std::ptrdiff_t filled(const Rows& rows, Member member) {
  return std::ranges::count_if(rows, [&](const auto& row) { return !(row.*member).empty(); });
}

// Compares one printed column, in steps of its last place, and skips the cells that were not read.
template<class Rows, class Member, class Value>
void expect_printed(const Rows& rows, Member member, double steps, Value value) {
  for (const auto& row : rows)
    if (!(row.*member).empty()) {
      EXPECT_LE(places_off(row.*member, value(geometry(row.thread))), steps) << row.thread << ' ' << row.*member;
    }
}

// The half unit of the third figure.
double half_of_third_figure(double value) { return 0.5 * std::pow(10.0, std::floor(std::log10(value)) - 2.0); }

// Slips in the UNR minor diameter (dimensions/README.md, "Known weaknesses"): printed 0.6763 and 0.9001 in, 0.0007 off
// D - 1.190785/n on a column that otherwise keeps to it.
bool is_minor_slip(std::string_view thread) { return thread == "3/4-16 UNF" || thread == "1-12 UNF"; }

// Areas that the standard works out from diameters already rounded to 0.0001 in (dimensions/README.md, "Result of the
// checks"), and 1 3/8-6, which one sheet rounds up from 1.155 to 1.16: off by more than rounding, by at most 1.3 last
// places (#8-36).
constexpr std::array<std::string_view, 11> k_rounded_first{"#1-64 UNC",   "#3-48 UNC",  "#4-40 UNC",  "#2-64 UNF",
                                                           "#4-48 UNF",   "#5-44 UNF",  "#6-40 UNF",  "#8-36 UNF",
                                                           "5/16-24 UNF", "1/2-20 UNF", "1 3/8-6 UNC"};

bool is_rounded_first(std::string_view thread) { return std::ranges::count(k_rounded_first, thread) == 1; }

double area_in2(std::string_view thread) {
  return in_square_millimetres(*geometry(thread).stress_area) / k_square_inch_mm2;
}

} // namespace

TEST(Iso724, HasOneHundredAndSixtyNineThreads) {
  EXPECT_EQ(std::size(k_metric), 169U);
  EXPECT_EQ(filled(k_metric, &MetricRow::d2), 168);
  EXPECT_EQ(filled(k_metric, &MetricRow::D1), 168);
  EXPECT_EQ(filled(k_metric, &MetricRow::d3), 19);
}

TEST(Iso724, PitchDiametersAreThoseOfTheFormula) {
  expect_printed(k_metric, &MetricRow::d2, k_rounding, [](const auto& g) { return in_millimetres(g.pitch_diameter); });
}

TEST(Iso724, MinorDiametersAreThoseOfTheFormula) {
  expect_printed(k_metric, &MetricRow::D1, k_rounding, [](const auto& g) { return in_millimetres(g.minor_diameter); });
}

TEST(Iso724, RootDiametersAreThoseOfTheFormula) {
  expect_printed(k_metric, &MetricRow::d3, k_rounding, [](const auto& g) { return in_millimetres(g.root_diameter); });
}

TEST(Iso898Areas, AreThirtySixOfWhichTwentyWereRead) {
  EXPECT_EQ(std::size(k_areas), 36U);
  EXPECT_EQ(std::ranges::count(k_areas, How::seen, &AreaRow::known), 20);
}

TEST(Iso898Areas, AreThoseOfTheFormulaToThreeFigures) {
  for (const AreaRow& row : k_areas)
    EXPECT_NEAR(in_square_millimetres(*geometry(row.thread).stress_area), row.mm2, half_of_third_figure(row.mm2) + 1e-9)
        << row.thread;
}

TEST(Iso898Areas, AreWhatTheCatalogueHoldsAsPrinted) {
  for (const AreaRow& row : k_areas) {
    const auto area = thread_named(row.thread).stress_area_table;
    ASSERT_TRUE(area) << row.thread;
    EXPECT_NEAR(in_square_millimetres(*area), row.mm2, half_of_third_figure(row.mm2) + 1e-9) << row.thread;
  }
}

TEST(AsmeB11, HasSeventyFourThreadsOfWhichFortyNineDiametersWereRead) {
  EXPECT_EQ(std::size(k_inch), 74U);
  EXPECT_EQ(filled(k_inch, &InchRow::pitch_in), 49);
  EXPECT_EQ(std::ranges::count(k_inch, How::memory, &InchRow::area_known), 25);
}

TEST(AsmeB11, PitchDiametersAreThoseOfTheFormula) {
  expect_printed(k_inch, &InchRow::pitch_in, k_rounding,
                 [](const auto& g) { return in_millimetres(g.pitch_diameter) / k_inch_mm; });
}

TEST(AsmeB11, MinorDiametersOfTheNutAreThoseOfTheFormula) {
  expect_printed(k_inch, &InchRow::minor_internal_in, k_rounding,
                 [](const auto& g) { return in_millimetres(g.minor_diameter) / k_inch_mm; });
}

// One whole place: the standard rounds the depth of thread to 0.0001 in before it takes it off the diameter.
TEST(AsmeB11, MinorDiametersOfTheBoltAreThoseOfTheRoundedRoot) {
  for (const InchRow& row : k_inch) {
    if (row.minor_external_in.empty() || is_minor_slip(row.thread)) continue;
    EXPECT_LE(places_off(row.minor_external_in, in_millimetres(geometry(row.thread).root_diameter) / k_inch_mm), 1.0)
        << row.thread;
  }
}

TEST(AsmeB11Slips, OfTheMinorDiameterAreSevenPlacesOff) {
  for (const InchRow& row : k_inch) {
    if (!is_minor_slip(row.thread)) continue;
    EXPECT_GT(places_off(row.minor_external_in, in_millimetres(geometry(row.thread).root_diameter) / k_inch_mm), 6.0)
        << row.thread;
  }
}

TEST(AsmeB11, AreasAreThoseOfTheFormula) {
  for (const InchRow& row : k_inch)
    if (!is_rounded_first(row.thread)) {
      EXPECT_LE(places_off(row.area_in2, area_in2(row.thread)), k_rounding) << row.thread;
    }
}

TEST(AsmeB11, AreasFromRoundedDiametersAreOffByMoreThanRounding) {
  for (const InchRow& row : k_inch) {
    if (!is_rounded_first(row.thread)) continue;
    EXPECT_GT(places_off(row.area_in2, area_in2(row.thread)), 0.5) << row.thread;
    EXPECT_LT(places_off(row.area_in2, area_in2(row.thread)), 1.3) << row.thread;
  }
}

// 1 3/8-6 is left out: the sheet of this table rounds it up to 1.16, the catalogue holds the 1.155 of another.
TEST(AsmeB11, AreasAreWhatTheCatalogueHoldsAsPrinted) {
  for (const InchRow& row : k_inch) {
    if (row.thread == "1 3/8-6 UNC") continue;
    const auto area = thread_named(row.thread).stress_area_table;
    if (!area) continue;
    EXPECT_LE(places_off(row.area_in2, in_square_millimetres(*area) / k_square_inch_mm2), k_rounding) << row.thread;
  }
}

// Shigley, 9th ed., Table 8-2 prints 0.00880 for No. 5-44 UNF (seen): 5.9 % above the formula's 0.00831.
TEST(ShigleySlip, OfNumberFiveFortyFourIsNotWhatTheCatalogueHolds) {
  EXPECT_NEAR(in_square_millimetres(*thread_named("#5-44 UNF").stress_area_table) / k_square_inch_mm2, 0.00830, 1e-9);
}

// 169 metric and 74 inch threads, right-hand and left-hand: what the catalogue writes, it finds again.
TEST(ListedThread, IsFoundByTheDesignationWeWrite) {
  const auto finds_itself = [](std::string_view designation) {
    auto thread = thread_named(designation).thread;
    EXPECT_EQ(thread::write_designation(thread), designation);
    thread.hand = thread::Hand::left;
    const auto again = thread_named(thread::write_designation(thread)).thread;
    EXPECT_EQ(again.designation, thread.designation);
    EXPECT_EQ(again.hand, thread::Hand::left) << designation;
  };
  for (const MetricRow& row : k_metric)
    finds_itself(row.thread);
  for (const InchRow& row : k_inch)
    finds_itself(row.thread);
}

// The contract, section 1: "Inch sizes without pitch or series are refused with the choices."
TEST(InchSizeWithoutPitch, IsRefusedWithTheChoicesOfThatSize) {
  const auto refusal = specdb::find_thread(test::catalogue(), "1/4");
  ASSERT_FALSE(refusal);
  for (const char* choice : {"1/4-20 UNC", "1/4-28 UNF", "1/4-32 UNEF"})
    EXPECT_NE(refusal.error().hint.find(choice), std::string::npos) << refusal.error().hint;
}

// The rows of practice/examples.csv, GRADE-01 to GRADE-05: computed there with diameters rounded to 0.001 mm, 0.1 %.
TEST(StressArea, OfTheGradeExamplesIsMet) {
  const auto area = [](std::string_view thread) { return in_square_millimetres(*geometry(thread).stress_area); };
  EXPECT_NEAR(area("M6"), 20.120945, 0.001 * 20.1);
  EXPECT_NEAR(area("M8"), 36.605782, 0.001 * 36.6);
  EXPECT_NEAR(area("M8x1"), 39.163708, 0.001 * 39.2);
  EXPECT_NEAR(area("M10x1.25"), 61.195028, 0.001 * 61.2);
}

} // namespace clampwright
