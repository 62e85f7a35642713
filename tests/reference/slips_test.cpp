// SPDX-License-Identifier: GPL-3.0-or-later
//
// Figures that pages print wrong, and the right ones, which are those of the catalogue.
#include "core/thread/geometry.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

#include <string_view>

namespace clampwright {
namespace {

struct LoadSlip {
  std::string_view name;
  std::string_view thread;
  bool proof; // else the ultimate load
  double slip_N;
  double right_N;
};

// clang-format off
// strength/README.md, check 3, and second/slips.md: pages that quote ISO 898-1.
constexpr LoadSlip k_slips[] = {
    {"10.9", "M4",  false, 91130,  9130},
    {"9.8",  "M12", false, 75200,  75900},
    {"10.9", "M20", false, 250000, 255000},
    {"4.6",  "M4",  true,  1530,   1980}, // the proof load of M3.5
};
// clang-format on

} // namespace

TEST(Slips, OfLoadsAreNotInTheCatalogue) {
  for (const LoadSlip& row : k_slips) {
    const auto found = test::strength_named(row.name, row.thread);
    const double load = quantity::in_newtons(row.proof ? *found.proof_load : *found.tensile_load);
    EXPECT_NEAR(load, row.right_N, 1e-6) << row.name << ' ' << row.thread << ", printed " << row.slip_N;
    const auto stress = row.proof ? *found.proof_stress : *found.tensile;
    const auto area = *thread::geometry_of(test::thread_named(row.thread).thread).stress_area;
    EXPECT_NEAR(quantity::in_newtons(stress * area), row.right_N, 0.01 * row.right_N) << row.name << ' ' << row.thread;
  }
}

// A page prints 65 000 psi for the proof stress of grade 5; 85 000 is right.
TEST(Slips, OfGradeFiveIsNotInTheCatalogue) {
  EXPECT_NEAR(quantity::in_megapascals(*test::strength_named("SAE 5", "3/8-16").proof_stress), 586.05, 0.01);
}

// A page prints 660 MPa, which is the yield above M16, for the proof stress of 8.8 up to M16; 580 is right.
TEST(Slips, OfEightPointEightIsNotInTheCatalogue) {
  EXPECT_NEAR(quantity::in_megapascals(*test::strength_named("8.8", "M16").proof_stress), 580, 1e-9);
}

} // namespace clampwright
