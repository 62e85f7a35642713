// SPDX-License-Identifier: GPL-3.0-or-later
//
// VDI 2230-1, Table A1, RECALLED VALUES: the guideline was not read, the table was written down from memory. What
// speaks for it is that 376 of 378 rows fit one rule. Table A2 (fine threads, with the fitted face of M9) is not part
// of the reference collection and so is not compared.
//
// Faces: ISO 4014 washer face and ISO 273 medium hole from the program's own catalogue, except M7: no face is
// standardised there, and the table's is 10.27 over 7.6 mm, fitted to the very torques below
// (head_and_hole_dimensions.csv), so the torques of M7 prove the lever, not the face.
#include "core/tightening/wanted.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

#include <array>
#include <string>

namespace clampwright {
namespace {

using test::places_off;
using tightening::Aim;

constexpr std::array<const char*, 7> k_frictions{"0.08", "0.10", "0.12", "0.14", "0.16", "0.20", "0.24"};

struct Cell {
  const char* preload_kN;
  const char* torque_N_m;
  bool outlier = false;
};

struct Row {
  const char* thread;
  const char* strength_class;
  std::array<Cell, 7> cells;
};

constexpr Row k_table[] = {
#include "tests/reference/vdi2230_table_a1.inc"
};

// Half of the last printed place is rounding; one whole place is for the guideline's own intermediate roundings
// (diameters to 0.001 mm) and for slips of memory by one.
constexpr double k_tolerance = 0.5 + 1.0;

struct Computed {
  double preload_kN;
  double torque_N_m;
};

Computed computed(const Row& row, std::size_t column) {
  specdb::CaseQuestion question;
  question.thread = row.thread;
  question.strength_class = row.strength_class;
  question.mu = k_frictions[column];
  if (std::string_view(row.thread) == "M7") {
    question.face_outer = "10.27mm";
    question.face_inner = "7.6mm";
  }
  const auto answer = tightening::torque_for(test::resolved(question).asked, {Aim::yield_share, {}, 0.9}).value();
  return {quantity::in_newtons(answer.preload) / 1000.0, quantity::in_newton_metres(answer.clamp.torque)};
}

template<class Visit>
void each_cell(Visit visit) {
  for (const Row& row : k_table)
    for (std::size_t column = 0; column < k_frictions.size(); ++column)
      visit(row, row.cells[column], computed(row, column),
            std::string(row.thread) + " " + row.strength_class + " μ " + k_frictions[column]);
}

struct Count {
  int rows = 0;
  int outliers = 0;
  int rounded = 0;    // both figures inside half a place
  int last_place = 0; // one of them beyond that, inside the tolerance
  int outside = 0;
};

Count counted() {
  Count count;
  each_cell([&](const Row&, const Cell& cell, const Computed& value, const std::string&) {
    ++count.rows;
    if (cell.outlier) {
      ++count.outliers;
      return;
    }
    const double off =
        std::max(places_off(cell.preload_kN, value.preload_kN), places_off(cell.torque_N_m, value.torque_N_m));
    if (off <= test::k_rounding)
      ++count.rounded;
    else if (off <= k_tolerance)
      ++count.last_place;
    else
      ++count.outside;
  });
  return count;
}

} // namespace

TEST(RecalledTableA1, HasThePreloadAtNineTenthsOfYield) {
  each_cell([](const Row&, const Cell& cell, const Computed& value, const std::string& name) {
    if (!cell.outlier) {
      EXPECT_LE(places_off(cell.preload_kN, value.preload_kN), k_tolerance)
          << name << ": " << cell.preload_kN << " kN, computed " << value.preload_kN;
    }
  });
}

TEST(RecalledTableA1, HasTheTorqueForThatPreload) {
  each_cell([](const Row&, const Cell& cell, const Computed& value, const std::string& name) {
    if (!cell.outlier) {
      EXPECT_LE(places_off(cell.torque_N_m, value.torque_N_m), k_tolerance)
          << name << ": " << cell.torque_N_m << " N·m, computed " << value.torque_N_m;
    }
  });
}

// 33 rows are off by more than rounding, by at most one last place. With diameters rounded to 0.001 mm, as the
// guideline takes them, there would be 25 (reckoned outside this program): M8 10.9 at 0.24, M24 12.9 at 0.20, M36 10.9
// at 0.12, M36 12.9 at 0.14, M39 8.8 at 0.12 and 0.16, M39 10.9 at 0.16, M39 12.9 at 0.08 and 0.20 miss it only because
// ours are exact, and M24 12.9 at 0.24 meets it only because of that. No row falls outside the tolerance either way.
TEST(RecalledTableA1, IsComparedInEveryRowButTwoOutliers) {
  const Count count = counted();
  EXPECT_EQ(count.rows, 378);
  EXPECT_EQ(count.outliers, 2);
  EXPECT_EQ(count.rounded, 343);
  EXPECT_EQ(count.last_place, 33);
  EXPECT_EQ(count.outside, 0);
}

// M4 10.9 at 0.12: 4.6 N·m between 3.9 and 4.8, where the rule gives 4.35; M7 10.9 at 0.10: 22.5 kN, rule 22.24.
// Misprints or slips of memory (pitfalls, "Suspect published values").
TEST(RecalledTableA1, HasOutliersThatFitNoRule) {
  each_cell([](const Row&, const Cell& cell, const Computed& value, const std::string& name) {
    if (cell.outlier) {
      EXPECT_GT(std::max(places_off(cell.preload_kN, value.preload_kN), places_off(cell.torque_N_m, value.torque_N_m)),
                k_tolerance)
          << name;
    }
  });
}

} // namespace clampwright
