// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every finding has English and a basis: one of each code and severity, its facts in the order of the place that makes
// it.
#include "core/report/wording.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace clampwright::report {
namespace {

using finding::Code;
using finding::Fact;
using finding::Finding;
using finding::Severity;
using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;

const Fact k_nm = quantity::newton_metres(45);
const Fact k_load = quantity::newtons(27450);
const Fact k_more_load = quantity::newtons(39951);
const Fact k_length = quantity::millimetres(20.5);
const Fact k_pressure = quantity::megapascals(220);
const Fact k_more_pressure = quantity::megapascals(276);

Fact text(const char* words) { return std::string(words); }

std::vector<Finding> one_of_each() {
  using enum Severity;
  const Fact angle = quantity::degrees(15);
  const Fact warm = quantity::degrees_celsius(160);
  const Fact limit = quantity::degrees_celsius(149);
  const Fact share = 0.62;
  const Fact more_share = 1.07;
  return {
      {Code::left_hand, mind, {}},
      {Code::thread_not_listed, mind, {text("M8x1.3"), text("ISO 68-1")}},
      {Code::mark_proves_nothing, note, {}},
      {Code::hand_doubt, mind, {text("left")}},
      {Code::locking_compound, mind, {}},
      {Code::lock_conflict, mind, {text("spring washer")}},
      {Code::lock_conflict, stop, {text("tab washer"), text("wedge washers"), text("the plate must lie solid")}},
      {Code::no_compound_here, stop, {text("brass"), text("the manual excludes it")}},
      {Code::primer_needed, mind, {text("stainless steel")}},
      {Code::cure_by_heat_only, mind, {limit}},
      {Code::cure_not_known, mind, {}},
      {Code::breakaway_not_known, note, {}},
      {Code::compound_expired, stop, {text("bottle on the left"), text("2026-06-30")}},
      {Code::running_torque_low, stop, {k_nm, text("14 lbf·in (a handbook)")}},
      {Code::running_torque_high, stop, {k_nm, text("14 lbf·in (a handbook)")}},
      {Code::surfaces_differ, mind, {text("dry"), text("oiled"), k_nm, k_nm}},
      {Code::heat_limit, mind, {text("silencer"), warm, text("locking compound"), limit}},
      {Code::crank_reaction, mind, {}},
      {Code::crank_reaction, mind, {angle, k_load}},
      {Code::crank_reaction, mind, {angle, k_load, k_length}},
      {Code::near_dead_centre, mind, {k_length, k_more_load, k_load, angle, text("top")}},
      {Code::near_dead_centre, stop, {k_length, k_more_load, k_load, angle, text("bottom")}},
      {Code::stop_over_limit, stop, {k_nm, k_nm, text("plug thread"), text("")}},
      {Code::stop_over_limit, stop, {k_nm, k_nm, text("rod"), text("undoing")}},
      {Code::plug_strips, stop, {k_nm, k_load, k_more_load}},
      {Code::port_open, mind, {k_length, k_length}},
      {Code::stop_limit_not_stated, mind, {}},
      {Code::press_fit_slips, mind, {k_nm, k_nm, k_nm, k_nm}},
      {Code::press_fit_slips, stop, {k_nm, k_nm, k_nm, k_nm}},
      {Code::look_at_thread, mind, {}},
      {Code::derived_torque, mind, {}},
      {Code::not_looked_at, mind, {text("the seat")}},
      {Code::holding_unknown, mind, {}},
      {Code::over_proof, stop, {more_share, more_share, text("nut factor")}},
      {Code::over_proof, mind, {share, more_share, text("thread friction")}},
      {Code::over_yield, stop, {more_share, more_share, text("thread friction")}},
      {Code::over_yield, mind, {share, more_share, text("thread friction")}},
      {Code::near_limit, mind, {share}},
      {Code::low_preload, note, {share}},
      {Code::models_disagree, mind, {k_load, k_more_load}},
      {Code::surfaces_not_stated, mind, {}},
      {Code::surfaces_not_stated, mind, {text("A2-70")}},
      {Code::reduced_head, mind, {text("8.8")}},
      {Code::surfaces_differ, mind, {text("dry"), text("oiled"), k_nm}},
      {Code::surfaces_differ, mind, {text("dry"), text("oiled"), k_nm, k_load, k_more_load}},
      {Code::surfaces_differ, mind, {text("dry"), text("oiled"), k_nm, k_load, k_more_load, k_nm}},
      {Code::surfaces_differ, mind, {text("not-stated"), text("oiled"), k_nm, k_load, k_more_load}},
      {Code::class_unknown, mind, {}},
      {Code::face_not_stated, mind, {}},
      {Code::face_not_stated, mind, {text("a countersunk head bears on a cone")}},
      {Code::reduced_head, note, {text("08.8"), 0.8}},
      {Code::embrittlement, stop, {text("12.9")}},
      {Code::approved_data, stop, {text("160 ksi")}},
      {Code::galling, mind, {text("A2-70")}},
      {Code::galling, note, {text("A2-70")}},
      {Code::strip_governs, stop, {text("crankcase"), k_load, k_load, k_more_load}},
      {Code::strip_governs, mind, {text("crankcase"), k_load, k_load, k_more_load}},
      {Code::strip_governs, mind, {text("thread of the bolt"), k_load, k_more_load, k_length}},
      {Code::long_engagement, note, {k_length, k_length}},
      {Code::seat_pressure, stop, {text("cast aluminium"), k_pressure, k_pressure, k_more_pressure}},
      {Code::seat_pressure, mind, {text("cast aluminium"), k_pressure, k_pressure, k_more_pressure}},
      {Code::nut_too_weak, stop, {text("8"), text("8.8"), text("10.9")}},
      {Code::soft_part, mind, {text("wood")}},
      {Code::creep, note, {text("die-cast magnesium"), limit}},
      {Code::unit_slip, stop, {text("400 N·m"), 5.4, text("lbf·in"), k_nm, text("kgf·cm"), k_nm}},
      {Code::unit_slip, mind, {text("4 N·m"), 0.07, text("kgf·m"), k_nm}},
      {Code::below_tool_range, stop, {text("wrench A"), k_nm, k_nm}},
      {Code::above_tool_range, stop, {text("wrench A"), k_nm, k_nm}},
      {Code::wrench_direction, stop, {text("wrench A"), text("anticlockwise")}},
      {Code::wrench_direction, mind, {text("this wrench"), text("anticlockwise")}},
      {Code::wrench_overdue, stop, {text("wrench A"), text("2026-10-01")}},
      {Code::wrench_overdue, stop, {text("wrench A"), text("5012"), text("5000")}},
      {Code::wrench_dropped, stop, {text("wrench A"), text("dropped"), text("2026-10-01")}},
      {Code::wrench_retired, stop, {text("wrench A"), text("2026-10-01"), text("its pawl slips")}},
      {Code::calibration_unknown, mind, {text("wrench A")}},
      {Code::no_mark, stop, {text("wrench A"), k_nm, k_nm}},
      {Code::coarse_scale, mind, {text("wrench A"), k_nm, k_nm}},
      {Code::wrench_wider_than_limits, mind, {text("wrench A"), k_nm, k_nm}},
      {Code::running_torque_added, note, {k_nm}},
      {Code::running_torque_missing, mind, {text("self-locking nut")}},
      {Code::mass_as_force, note, {}},
      {Code::single_use, note, {text("new each time: split pin")}},
      {Code::single_use, note, {text("Never. New bolts each time.")}},
      {Code::seating_torque, note, {}},
      {Code::not_a_bolt, note, {text("hub")}},
      {Code::angle_final, mind, {}},
      {Code::angle_final, mind, {k_load}},
      {Code::beyond_elastic, mind, {1.1, 1.4, text("yield")}},
      {Code::slot_may_miss, mind, {k_nm, k_nm, quantity::degrees(60), k_length}},
      {Code::measured_only, note, {}},
      {Code::look_alikes, mind, {text("M6"), text("0 BA")}},
      {Code::pitch_not_measured, note, {}},
      {Code::limits_assumed, note, {text("6g, from the nominal size down")}},
      {Code::no_maker_value, mind, {text("tighten firmly")}},
      {Code::sources_conflict, mind, {text("12 N·m (Sheets, 1972, page 4)"), text("14 N·m (Sheets, 1980, page 5)")}},
      {Code::value_from_memory, mind, {text("SAE 4")}},
      {Code::value_from_memory, mind, {text("the shear strength of steel"), k_pressure}},
      {Code::size_chart, mind, {}},
      {Code::maker_first, note, {}},
  };
}

std::string words(const Finding& finding) { return finding_text(finding, quantity::DisplayUnits()); }

std::string name_of(const Finding& finding) { return std::string(finding::code_name(finding.code)); }

TEST(FindingWords, AreTestedForEveryCode) {
  std::set<Code> codes;
  for (const Finding& finding : one_of_each())
    codes.insert(finding.code);
  EXPECT_EQ(codes.size(), static_cast<std::size_t>(Code::maker_first) + 1);
}

TEST(FindingWords, AreWholeSentences) {
  for (const Finding& finding : one_of_each()) {
    const std::string said = words(finding);
    EXPECT_GT(said.size(), 20U) << name_of(finding);
    EXPECT_THAT(said, EndsWith(".")) << name_of(finding);
  }
}

TEST(FindingWords, LeaveNothingToFillIn) {
  for (const Finding& finding : one_of_each())
    for (const char* fault : {"{", "}", "  ", " .", " ,", "..", "()", "\"\""})
      EXPECT_THAT(words(finding), Not(HasSubstr(fault))) << name_of(finding);
}

TEST(FindingWords, NameEveryFactInWords) {
  for (const Finding& finding : one_of_each())
    for (const Fact& fact : finding.facts) {
      if (const auto* said = std::get_if<std::string>(&fact); said && *said != "not-stated" && !said->ends_with('.')) {
        EXPECT_THAT(words(finding), HasSubstr(*said)) << name_of(finding);
      }
    }
}

TEST(FindingWords, AreThoseOfTheCodeItself) {
  const std::string last = words({Code::maker_first, Severity::note, {}});
  for (const Finding& finding : one_of_each())
    if (finding.code != Code::maker_first) {
      EXPECT_NE(words(finding), last) << name_of(finding);
    }
}

TEST(FindingWords, DifferByHowGraveItIs) {
  const auto all = one_of_each();
  for (std::size_t i = 0; i + 1 < all.size(); ++i)
    if (all[i].code == all[i + 1].code && all[i].severity != all[i + 1].severity) {
      EXPECT_NE(words(all[i]), words(all[i + 1])) << name_of(all[i]);
    }
}

TEST(FindingBasis, StandsForEveryCodeWithoutAFullStop) {
  for (const Finding& finding : one_of_each()) {
    const std::string basis(finding_basis(finding.code));
    EXPECT_GT(basis.size(), 5U) << name_of(finding);
    EXPECT_THAT(basis, Not(EndsWith("."))) << name_of(finding);
    EXPECT_THAT(basis, Not(HasSubstr("{"))) << name_of(finding);
  }
}

// What is not stated cannot be said to differ.
TEST(SurfacesDifferWords, DoNotClaimADifferenceThatNobodyKnows) {
  const auto said = [](const char* stated, const char* fitted) {
    return words({Code::surfaces_differ, Severity::mind, {text(stated), text(fitted), k_nm, k_load, k_more_load}});
  };
  EXPECT_THAT(said("dry", "oiled"), HasSubstr("no longer the figure"));
  EXPECT_THAT(said("not-stated", "oiled"), Not(HasSubstr("no longer the figure")));
  EXPECT_THAT(said("dry", "not-stated"), Not(HasSubstr("no longer the figure")));
  EXPECT_THAT(said("not-stated", "oiled"), HasSubstr("No correction"));
}

TEST(SurfacesDifferWords, NameTheCorrectedTorqueOnlyWhereThereIsOne) {
  const Finding with{Code::surfaces_differ,
                     Severity::mind,
                     {text("dry"), text("oiled"), k_nm, k_load, k_more_load, quantity::newton_metres(31)}};
  EXPECT_THAT(words(with), HasSubstr("31 N·m"));
  EXPECT_THAT(words(with), Not(HasSubstr("No correction")));
}

TEST(SingleUseWords, TakeThePagesOwnFullStop) {
  EXPECT_EQ(words({Code::single_use, Severity::note, {text("new nut each time.")}}), "Single use: new nut each time.");
}

} // namespace
} // namespace clampwright::report
