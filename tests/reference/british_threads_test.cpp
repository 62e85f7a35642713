// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whitworth and BA threads against printed diameters and the rule of the series.
#include "core/thread/geometry.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

#include <fmt/format.h>

namespace clampwright {
namespace {

using quantity::in_millimetres;
using quantity::in_square_millimetres;
using test::thread_named;

struct Diameters {
  const char* thread;
  std::string_view pitch_in;
  std::string_view minor_in;
};
constexpr Diameters k_whitworth[] = {
#include "tests/reference/bs84_diameters.inc"
};

// dimensions/README.md, "Result of the checks": "Whitworth diameters agree within 0.00015 in".
constexpr double k_whitworth_tolerance_in = 0.00015;

double to_two_figures(double value) {
  const double step = std::pow(10.0, std::floor(std::log10(value)) - 1);
  return std::round(value / step) * step;
}

TEST(Bs84, PitchDiametersAreThosePrinted) {
  for (const Diameters& row : k_whitworth)
    EXPECT_NEAR(in_millimetres(thread::geometry_of(thread_named(row.thread).thread).pitch_diameter) / 25.4,
                test::printed(row.pitch_in).value, k_whitworth_tolerance_in)
        << row.thread;
}

TEST(Bs84, MinorDiametersAreThosePrinted) {
  for (const Diameters& row : k_whitworth)
    EXPECT_NEAR(in_millimetres(thread::geometry_of(thread_named(row.thread).thread).minor_diameter) / 25.4,
                test::printed(row.minor_in).value, k_whitworth_tolerance_in)
        << row.thread;
}

// BS 93: p = 0.9^k mm and D = 6·(0.9^k)^1.2 mm, each to two figures (rule second-hand; it gives all sizes 0 to 16).
TEST(Bs93, HasThePitchesAndDiametersOfItsRule) {
  for (int k = 0; k <= 16; ++k) {
    const auto ba = thread_named(fmt::format("{} BA", k)).thread;
    const double ratio = std::pow(0.9, k);
    EXPECT_NEAR(in_millimetres(ba.pitch), to_two_figures(ratio), 1e-9) << k;
    EXPECT_NEAR(in_millimetres(ba.diameter), to_two_figures(6.0 * std::pow(ratio, 1.2)), 1e-9) << k;
  }
}

// By hand. 0 BA: D 6, P 1: pitch diameter 5.4, minor 4.8, mean 5.1, π/4·5.1² = 20.4282. 1/4 BSW: E = 0.25 -
// 0.640327/20 = 0.2179837, minor 0.1859673, mean 0.2019755 in = 5.130178 mm: 20.6710.
TEST(SectionByAnalogy, IsTheCircleOfTheMeanOfPitchAndMinorDiameter) {
  EXPECT_NEAR(in_square_millimetres(thread::section_by_analogy(thread_named("0 BA").thread).value()), 20.4282, 1e-4);
  EXPECT_NEAR(in_square_millimetres(thread::section_by_analogy(thread_named("1/4 BSW").thread).value()), 20.6710, 5e-4);
}

TEST(SectionByAnalogy, IsNotGivenWhereAStandardGivesAStressArea) {
  EXPECT_FALSE(thread::section_by_analogy(thread_named("M10").thread));
  EXPECT_FALSE(thread::section_by_analogy(thread_named("1/4-20").thread));
}

} // namespace
} // namespace clampwright
