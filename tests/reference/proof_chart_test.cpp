// SPDX-License-Identifier: GPL-3.0-or-later
//
// A trade chart of metric bolt torques with its basis on it (two copies seen): 75 % of the ISO 898-1 proof load by T =
// K·F·d with K 0.20 dry and 0.15 oiled.
#include "core/quantity/unit.hpp"
#include "core/tightening/wanted.hpp"
#include "specdb/question/chart_question.hpp"
#include "tests/reference/tables.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace clampwright {
namespace {

struct Row {
  const char* thread;
  std::string_view strength_class;
  double dry;
  double oiled;
  const char* unit;
};

constexpr Row k_chart[] = {
#include "tests/reference/proof_chart_75.inc"
};

double torque(const Row& row, const char* nut_factor) {
  specdb::CaseQuestion question;
  question.thread = row.thread;
  question.strength_class = std::string(row.strength_class);
  question.nut_factor = nut_factor;
  const auto answer =
      tightening::torque_for(test::resolved(question).asked, {tightening::Aim::proof_share, {}, 0.75}).value();
  return quantity::from_si(quantity::in_newton_metres(answer.clamp.torque), quantity::unit_named(row.unit));
}

// Our own chart of the same sizes and classes, by nut factor alone as theirs is.
tightening::Chart our_chart(const char* nut_factor) {
  specdb::ChartQuestion question;
  question.classes = "8.8,10.9,12.9";
  question.from = "M5";
  question.to = "M36";
  question.each.nut_factor = nut_factor;
  return specdb::chart_for(test::catalogue(), question).value();
}

double charted(const tightening::Chart& chart, const Row& row) {
  const auto found = std::ranges::find_if(chart.rows, [&](const tightening::ChartRow& own) {
    return own.thread.designation == row.thread && own.class_name == row.strength_class;
  });
  return found == chart.rows.end() ? std::nan("")
                                   : quantity::from_si(quantity::in_newton_metres(found->answer->clamp.torque),
                                                       quantity::unit_named(row.unit));
}

// Slip: the chart keeps the 580 MPa of small 8.8 bolts above M16, where ISO 898-1 has 600 MPa.
bool keeps_small_8_8(const Row& row) {
  const auto entry = test::thread_named(row.thread);
  return row.strength_class == "8.8" && quantity::in_millimetres(entry.thread.diameter) > 16.5;
}

double as_charted(const Row& row, double value) { return keeps_small_8_8(row) ? value * 580.0 / 600.0 : value; }

// Slip: M8 10.9 dry is printed 333 lbf·in, its own basis gives 323 (and its oiled 242 fits that).
bool is_off_its_basis(const Row& row) { return std::string_view(row.thread) == "M8" && row.strength_class == "10.9"; }

// 1 % for the printed proof loads, which are rounded to three figures, and half of the last printed place.
double tolerance(double printed) { return 0.01 * printed + 0.5; }

} // namespace

TEST(ProofChart, HasFortyEightRows) { EXPECT_EQ(std::size(k_chart), 48U); }

TEST(ProofChart, HasTheDryTorques) {
  for (const Row& row : k_chart)
    if (!is_off_its_basis(row)) {
      EXPECT_NEAR(as_charted(row, torque(row, "0.20")), row.dry, tolerance(row.dry))
          << row.thread << ' ' << row.strength_class;
    }
}

TEST(ProofChart, HasTheOiledTorques) {
  for (const Row& row : k_chart)
    EXPECT_NEAR(as_charted(row, torque(row, "0.15")), row.oiled, tolerance(row.oiled))
        << row.thread << ' ' << row.strength_class;
}

TEST(ProofChart, HasTheTorquesOfOurOwnChart) {
  const auto dry = our_chart("0.20");
  const auto oiled = our_chart("0.15");
  for (const Row& row : k_chart) {
    if (!is_off_its_basis(row)) {
      EXPECT_NEAR(as_charted(row, charted(dry, row)), row.dry, tolerance(row.dry)) << row.thread;
    }
    EXPECT_NEAR(as_charted(row, charted(oiled, row)), row.oiled, tolerance(row.oiled)) << row.thread;
  }
}

TEST(ProofChart, KeepsTheStressOfSmallBoltsInEightRows) {
  EXPECT_EQ(std::ranges::count_if(k_chart, keeps_small_8_8), 8);
  for (const Row& row : k_chart)
    if (keeps_small_8_8(row)) {
      EXPECT_NEAR(torque(row, "0.20") / row.dry, 600.0 / 580.0, 0.01) << row.thread;
    }
}

TEST(ProofChart, IsOffItsBasisForADryM8Of109) {
  for (const Row& row : k_chart)
    if (is_off_its_basis(row)) {
      EXPECT_NEAR(torque(row, "0.20") / row.dry, 0.969, 0.002);
    }
}

} // namespace clampwright
