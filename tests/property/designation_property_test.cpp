// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/write.hpp"
#include "core/thread/designation.hpp"
#include "tests/property/random_case.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace clampwright::thread {
namespace {

Hand random_hand() { return *rc::gen::arbitrary<bool>() ? Hand::left : Hand::right; }

// Hundredths of a millimetre, as designations have them.
double hundredths(int low, int high) { return *rc::gen::inRange(low, high) / 100.0; }

} // namespace

TEST(WrittenDesignation, OfAMetricThreadReadsBack) {
  EXPECT_TRUE(rc::check([] {
    const double diameter = hundredths(100, 30000);
    const double pitch = hundredths(10, static_cast<int>(diameter * 100.0));
    Thread thread = test::metric_thread(
        "M" + quantity::write_number(diameter, 6) + "x" + quantity::write_number(pitch, 6), diameter, pitch);
    thread.hand = random_hand();
    const auto read = read_designation(write_designation(thread));
    RC_ASSERT(read.has_value());
    RC_ASSERT(std::abs(read->diameter_mm - diameter) < 1e-9);
    RC_ASSERT(std::abs(*read->pitch_mm - pitch) < 1e-9);
    RC_ASSERT(read->hand == thread.hand);
  }));
}

TEST(WrittenDesignation, OfAnInchThreadReadsBack) {
  EXPECT_TRUE(rc::check([] {
    const std::array sizes{"#10", "1/4", "5/16", "1", "1 1/4", "15/16"};
    const std::array series{"UNC", "UNF", "UNEF", "BSW", "BSF", "BSC"};
    const std::string size = sizes[*rc::gen::inRange<std::size_t>(0, sizes.size())];
    const std::string of = series[*rc::gen::inRange<std::size_t>(0, series.size())];
    const int tpi = *rc::gen::inRange(3, 81);
    Thread thread = test::inch_thread(fmt::format("{}-{} {}", size, tpi, of), Form::unified, 0.25, tpi);
    thread.hand = random_hand();
    const auto read = read_designation(write_designation(thread));
    RC_ASSERT(read.has_value());
    RC_ASSERT(read->size == size);
    RC_ASSERT(read->series == of);
    RC_ASSERT(std::abs(*read->tpi - tpi) < 1e-9);
    RC_ASSERT(read->hand == thread.hand);
  }));
}

TEST(Designation, ReadsAlikeInEitherCase) {
  EXPECT_TRUE(rc::check([] {
    const double diameter = hundredths(200, 10000);
    const std::string size = quantity::write_number(diameter, 6);
    const auto capital = read_designation("M" + size + "X0.5-LH");
    const auto small = read_designation("m" + size + "x0.5-lh");
    RC_ASSERT(capital.has_value() && small.has_value());
    RC_ASSERT(capital->size == small->size);
    RC_ASSERT(capital->hand == small->hand);
  }));
}

} // namespace clampwright::thread
