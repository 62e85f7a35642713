// SPDX-License-Identifier: GPL-3.0-or-later
//
// In which order the bolts of one joint are tightened, and in how many rounds. A bolt that is tightened unloads its
// neighbours, and one side that is pulled down first leaves the other open; hence opposite bolts in turn, several
// rounds, and a last one until nothing moves.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"
#include "core/source/source.hpp"

namespace clampwright::tightening {

// How the bolts lie. Positions count from 1: in a circle clockwise from the top, in a row from the left, in two rows
// from the left along the upper and then along the lower one.
enum class Pattern { circle, row, two_rows };

// "circle", "row", "rows".
[[nodiscard]] std::string_view pattern_name(Pattern pattern);
[[nodiscard]] Result<Pattern> read_pattern(std::string_view text);

inline constexpr int k_fewest_bolts = 2;
inline constexpr int k_most_bolts = 24;

// Fails with usage for a number that is not answered here, or an odd one in two rows.
[[nodiscard]] Result<void> check_bolts(Pattern pattern, int bolts);

// The positions in the order in which they are tightened.
//   circle, even number: a bolt, then the one opposite; the pairs follow each other as the bolts of a circle of half as
//     many would. That gives the orders of ASME PCC-1 (legacy star pattern) for 4, 8, 12, 16, 20 and 24, and the usual
//     one of 6.
//   circle, odd number n: always on by (n - 1)/2 places, about opposite. No published order of an odd number was found.
//     From 9 up the first bolts of a round lie near one diameter.
//   row: from the middle outwards, left and right in turn.
//   two rows: so by columns, and crosswise within each pair of columns, as for cylinder heads.
// In a circle the loads of those already tightened never add up to more than one bolt's on one side.
// Precondition: check_bolts.
[[nodiscard]] std::vector<int> order_of(Pattern pattern, int bolts);

// Loosening: the same backwards.
[[nodiscard]] std::vector<int> undoing_order(std::vector<int> order);

// "50%,75%,100%": shares of the final torque that rise and end at all of it.
[[nodiscard]] Result<std::vector<double>> read_passes(std::string_view text);

// 50, 75 and 100 %; up to k_small_torque 50 and 100 %: there a quarter of the torque is hardly more than what the
// friction of a running thread and a small wrench leave open (our own figure, common practice).
[[nodiscard]] quantity::Torque small_torque();
[[nodiscard]] std::vector<double> usual_passes(const std::optional<quantity::Torque>& torque);

// What to set the wrench to, in `unit`: below the final torque rounded down to a round number, as an early round may be
// low but not high; the final one is the torque itself.
[[nodiscard]] std::vector<double> wrench_marks(const std::vector<double>& passes, double torque);

// What others have published; in words, with the source.
struct PassRule {
  std::string words;
  std::vector<double> passes;
  Source source;
};
[[nodiscard]] std::vector<PassRule> published_passes();

struct Sequence {
  Pattern pattern = Pattern::circle;
  int bolts = 0;
  std::vector<int> order;
  bool undo = false;                      // `order` is the one of loosening
  std::vector<double> passes;             // empty when loosening
  std::string passes_because;             // why so many
  std::optional<quantity::Torque> torque; // the final one
  const quantity::Unit* unit = nullptr;   // of `marks`; none without a torque
  std::vector<double> marks;              // to set; empty without a torque
  std::optional<quantity::Angle> angle;   // to turn each on by, when the last round is done
};

} // namespace clampwright::tightening
