// SPDX-License-Identifier: GPL-3.0-or-later
//
// Threads that no table lists, and classes that do not exist for a size.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/thread/designation.hpp"
#include "core/thread/geometry.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/case_question.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::HasSubstr;
using testing::Not;

struct SizeRow {
  const char* text;
  const char* written;
  double diameter_mm;
  double pitch_mm;
};

struct RefusedRow {
  const char* text;
  Trouble trouble;
  const char* hint; // part of hint or message
};

struct NearRow {
  const char* text;
  const char* near; // part of the hint
};

struct ClassRow {
  const char* class_name;
  const char* thread;
  const char* hint; // part of it
};

// clang-format off
// Products by hand; #10 is 0.190 in.
constexpr SizeRow k_sizes[] = {
    {"M8x1.3",      "M8x1.3",     8.0,    1.3},
    {"M8x1.3-LH",   "M8x1.3-LH",  8.0,    1.3},
    {"M8x1.3-6g",   "M8x1.3",     8.0,    1.3},
    {"m13 x 1.5",   "M13x1.5",    13.0,   1.5},
    {"5/16-20",     "5/16-20",    7.9375, 1.27},      // 25.4/20
    {"5/16-20-LH",  "5/16-20-LH", 7.9375, 1.27},
    {"10-30",       "#10-30",     4.826,  25.4 / 30},
    {"#10-30",      "#10-30",     4.826,  25.4 / 30},
    {"1 1/4-10",    "1 1/4-10",   31.75,  2.54},
};

constexpr RefusedRow k_refused[] = {
    {"M8x5",         Trouble::not_understood, "from 0.04 to 2.667 mm"},  // 8/200, 8/3
    {"M8x0.001",     Trouble::not_understood, "from 0.04 to 2.667 mm"},
    {"M8x8",         Trouble::not_understood, "not smaller than the diameter"},
    {"M0.1x0.02",    Trouble::not_understood, "from 0.3 to 1000 mm"},
    {"M5000x6",      Trouble::not_understood, "from 0.3 to 1000 mm"},
    {"1/4-2",        Trouble::not_understood, "pitch of 12.7 mm"},
    {"M13",          Trouble::no_such,        "the pitch must be said"},
    {"5/16-20 UNF",  Trouble::no_such,        "takes no series"},
    {"5/16-26 BSW",  Trouble::no_such,        "takes no series"},
    {"40 BA",        Trouble::no_such,        "the pitch must be said"},
    {"1/0-20",       Trouble::no_such,        "the pitch must be said"},
    {"1/4",          Trouble::not_understood, "1/4-20 UNC"},
    {"M8x1,3",       Trouble::not_understood, "M8x1.3"},
    {"hexagon",      Trouble::not_understood, "M10x1.25"},
};

// 5/16 in is 7.938 mm; 18 threads an inch 1.411 mm, 22 threads 1.155 mm, 20 threads 1.27 mm.
constexpr NearRow k_near[] = {
    {"M8x1.3",  "nearest in diameter and pitch: M8 (8 x 1.25 mm)"},
    {"M8x1.3",  "5/16-18 UNC (7.938 x 1.411 mm)"},
    {"M8x1.3",  "5/16 BSF (7.938 x 1.155 mm)"},
    {"M13x1.5", "M12x1.5 (12 x 1.5 mm)"},
    {"M13x1.5", "M14x1.5 (14 x 1.5 mm)"},
    {"5/16-20", "5/16-18 UNC (7.938 x 1.411 mm)"},
    {"5/16-20", "of other systems: M8 (8 x 1.25 mm)"},
};

// ISO 898-1:2013: M1.6 to M39, 9.8 up to M16; SAE J429: inch, 5.1 up to 5/8 in; ISO 3506-1:1997: -70 and -80 up to M24
// (all second-hand).
constexpr ClassRow k_classes[] = {
    {"9.8",       "M18",     "metric threads from 1.6 to 16 mm"},
    {"8.8",       "M1.2",    "metric threads from 1.6 to 16 mm"},
    {"8.8",       "M42",     "metric threads over 16 to 39 mm"},
    {"12.9",      "M1.4",    "metric threads from 1.6 to 39 mm"},
    {"SAE 5",     "M10",     "unified threads from 0.25 to 1 in"},
    {"SAE 5.1",   "3/4-10",  "unified threads from 0.112 to 0.625 in"},
    {"SAE 8",     "#10-32",  "unified threads from 0.25 to 1.5 in"},
    {"8.8",       "1/4-20",  "metric threads"},
    {"8.8",       "5/16 BSW", "metric threads"},
    {"A2-70",     "M27",     "metric threads up to 24 mm"},
    {"A4-80",     "M30",     "metric threads up to 24 mm"},
    {"ASTM A574", "M10",     "unified threads"},
};
// clang-format on

ThreadEntry unlisted(std::string_view text) {
  const Catalogue catalogue;
  auto found = find_thread_of_any_pitch(catalogue, text);
  EXPECT_TRUE(found.has_value()) << text;
  return found ? *found : ThreadEntry{};
}

TEST(UnlistedThread, HasTheSizeThatWasSaid) {
  for (const SizeRow& row : k_sizes) {
    const ThreadEntry found = unlisted(row.text);
    EXPECT_EQ(thread::write_designation(found.thread), row.written);
    EXPECT_NEAR(quantity::in_millimetres(found.thread.diameter), row.diameter_mm, 1e-9) << row.text;
    EXPECT_NEAR(quantity::in_millimetres(found.thread.pitch), row.pitch_mm, 1e-9) << row.text;
    EXPECT_FALSE(found.thread.listed) << row.text;
  }
}

TEST(UnlistedThread, HasNoLimitsNoSeriesAndNothingPrinted) {
  const ThreadEntry found = unlisted("M8x1.3-6g");
  EXPECT_FALSE(found.limits);
  EXPECT_FALSE(found.stress_area_table);
  EXPECT_EQ(found.thread.series, "");
}

TEST(UnlistedThread, NamesTheStandardOfItsFormAlone) {
  ASSERT_EQ(unlisted("M8x1.3").sources.size(), 1U);
  EXPECT_THAT(unlisted("M8x1.3").sources[0].title, HasSubstr("ISO 68-1"));
  EXPECT_THAT(unlisted("5/16-20").sources[0].title, HasSubstr("ASME B1.1"));
  EXPECT_EQ(unlisted("5/16-20").sources[0].known, Known::computed);
}

// d2 = 8 - 3·√3/8·1.3 = 7.155 625, d3 = 8 - 17·√3/24·1.3 = 6.405 070; As = π/4·6.780 348² = 36.107 20. By hand,
// formulas of ISO 68-1 and ISO 898-1.
TEST(UnlistedThread, HasTheDimensionsOfItsForm) {
  const thread::Geometry geometry = thread::geometry_of(unlisted("M8x1.3").thread);
  EXPECT_NEAR(quantity::in_millimetres(geometry.pitch_diameter), 7.155625, 1e-6);
  EXPECT_NEAR(quantity::in_millimetres(geometry.root_diameter), 6.405070, 1e-6);
  EXPECT_NEAR(quantity::in_square_millimetres(*geometry.stress_area), 36.10720, 1e-5);
}

// ASME B1.1, series 20-UN, 5/16-20: 0.0547 in² (from memory), printed to four places.
TEST(UnlistedThread, HasTheStressAreaOfASeriesThatIsNotHeldHere) {
  const thread::Geometry geometry = thread::geometry_of(unlisted("5/16-20").thread);
  EXPECT_NEAR(quantity::in_square_millimetres(*geometry.stress_area) / 645.16, 0.0547, 0.00005);
}

// 8.8: 580 and 800 MPa (ISO 898-1:2013, table 3, second-hand) on 36.107 20 mm².
TEST(UnlistedThread, BearsStressTimesArea) {
  const auto strength = find_strength(Catalogue(), "8.8", unlisted("M8x1.3").thread);
  ASSERT_TRUE(strength.has_value());
  EXPECT_NEAR(quantity::in_newtons(*strength->proof_load), 20942.2, 0.1);
  EXPECT_NEAR(quantity::in_newtons(*strength->tensile_load), 28885.8, 0.1);
  EXPECT_EQ(strength->proof_load_basis, strength::LoadBasis::stress_area);
}

TEST(UnlistedThread, IsTheListedOneWhereThereIsOne) {
  const ThreadEntry found = unlisted("M8x1.25");
  EXPECT_EQ(found.thread.designation, "M8");
  EXPECT_TRUE(found.thread.listed);
  EXPECT_TRUE(found.limits);
}

TEST(UnlistedThread, IsReadAgainAsItIsWritten) {
  for (const SizeRow& row : k_sizes)
    EXPECT_EQ(thread::write_designation(unlisted(row.written).thread), row.written);
}

TEST(UnlistedThread, IsRefusedWhereNoneCanBeMeant) {
  const Catalogue catalogue;
  for (const RefusedRow& row : k_refused) {
    const Problem problem = problem_of(find_thread_of_any_pitch(catalogue, row.text));
    EXPECT_EQ(problem.trouble, row.trouble) << row.text;
    EXPECT_THAT(problem.message + problem.hint, HasSubstr(row.hint)) << row.text;
  }
}

TEST(UnlistedThread, IsRefusedWithItsNeighboursUnlessItIsAskedFor) {
  const Catalogue catalogue;
  for (const NearRow& row : k_near) {
    const Problem problem = problem_of(find_thread(catalogue, row.text));
    EXPECT_EQ(problem.code, "no-such-thread");
    EXPECT_THAT(problem.hint, HasSubstr(row.near)) << row.text;
  }
}

TEST(UnlistedThread, HasNoNeighbourOfAnotherSystemFarOff) {
  EXPECT_THAT(problem_of(find_thread(Catalogue(), "M68x7")).hint, Not(HasSubstr("of other systems")));
}

TEST(UnlistedThread, IsTakenByACaseThatAsksForIt) {
  CaseQuestion question;
  question.thread = "M8x1.3";
  EXPECT_EQ(problem_of(resolve(Catalogue(), question)).code, "no-such-thread");
  question.any_pitch = true;
  const auto resolved = resolve(Catalogue(), question);
  ASSERT_TRUE(resolved.has_value());
  EXPECT_FALSE(resolved->asked.thread.listed);
  EXPECT_TRUE(resolved->asked.face.has_value()); // of M8
}

TEST(Class, IsRefusedWithTheThreadsThatItIsFor) {
  const Catalogue catalogue;
  for (const ClassRow& row : k_classes) {
    const Problem problem =
        problem_of(find_strength(catalogue, row.class_name, find_thread(catalogue, row.thread)->thread));
    EXPECT_EQ(problem.trouble, Trouble::no_such) << row.class_name << ' ' << row.thread;
    EXPECT_EQ(problem.code, "no-such-class") << row.class_name << ' ' << row.thread;
    EXPECT_THAT(problem.hint, HasSubstr(row.hint)) << row.class_name << ' ' << row.thread;
  }
}

} // namespace
} // namespace clampwright::specdb
